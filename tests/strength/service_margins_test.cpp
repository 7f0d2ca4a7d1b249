#include "strength/service_margins.h"

#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

TEST_CASE("temperature margin: allowed rise over rise, not absolute temperatures", "[margin]") {
  const Margin m = temperature_margin("winding temperature", 398.15, 348.15, 298.15);
  CHECK(m.check == "winding temperature");
  CHECK(m.unit == "K");
  CHECK_THAT(m.capacity, WithinRel(100, 1e-14));
  CHECK_THAT(m.demand, WithinRel(50, 1e-14));
  CHECK_THAT(m.ratio(), WithinRel(2, 1e-14));
}

TEST_CASE("temperature margin: a part no warmer than the air demands nothing", "[limits][margin]") {
  CHECK(temperature_margin("housing", 320, 290, 295).demand == 0);
  CHECK(temperature_margin("housing", 320, 290, 295).holds());
}

TEST_CASE("temperature margin: air hotter than the limit has lost before anything runs", "[limits][margin]") {
  CHECK_FALSE(temperature_margin("housing", 320, 330, 330).holds());
  CHECK(temperature_margin("housing", 320, 331, 330).ratio() < 0);
}

TEST_CASE("temperature margin: temperatures below absolute zero and others are refused", "[errors][margin]") {
  CHECK_THROWS_AS(temperature_margin("housing", -1, 300, 300), InvalidInput);
  CHECK_THROWS_AS(temperature_margin("housing", 320, 0, 300), InvalidInput);
  CHECK_THROWS_AS(temperature_margin("housing", 320, 300, std::nan("")), InvalidInput);
}

TEST_CASE("stretch margin: strains are compared and not lengths", "[margin]") {
  const Margin m = stretch_margin(7, 3);
  CHECK(m.capacity == 6);
  CHECK(m.demand == 2);
  CHECK(m.ratio() == 3);
  CHECK(stretch_margin(7, 7).ratio() == 1);
  CHECK(stretch_margin(7, 0.9).ratio() == std::numeric_limits<double>::infinity());  // slack
}

TEST_CASE("stretch margin: a rubber that breaks unstretched and bad stretches are refused",
          "[errors][margin]") {
  CHECK_THROWS_AS(stretch_margin(1, 1.5), InvalidInput);
  CHECK_THROWS_AS(stretch_margin(7, 0), InvalidInput);
  CHECK_THROWS_AS(stretch_margin(7, std::nan("")), InvalidInput);
}

TEST_CASE("gear torque margin: the sense of the torque does not matter", "[margin]") {
  CHECK(gear_torque_margin(0.3, 0.1).ratio() == gear_torque_margin(0.3, -0.1).ratio());
  CHECK_THAT(gear_torque_margin(0.3, -0.1).ratio(), WithinRel(3, 1e-14));
  CHECK_THROWS_AS(gear_torque_margin(0, 0.1), InvalidInput);
  CHECK_THROWS_AS(gear_torque_margin(0.3, std::nan("")), InvalidInput);
}
