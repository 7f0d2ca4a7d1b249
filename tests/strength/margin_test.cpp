#include "strength/margin.h"

#include <limits>
#include <vector>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::Contains;

namespace {
constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
}  // namespace

TEST_CASE("margin: the ratio is capacity over demand", "[margin]") {
  const Margin m = make_margin("cord at knot", 90, 60, "N");
  CHECK(m.check == "cord at knot");
  CHECK(m.unit == "N");
  CHECK(m.ratio() == 1.5);
  CHECK(m.holds());
}

TEST_CASE("margin: a demand as large as the capacity still holds and anything above does not",
          "[limits][margin]") {
  CHECK(make_margin("pin", 60, 60, "N").holds());
  CHECK_FALSE(make_margin("pin", 60, 60.001, "N").holds());
}

TEST_CASE("margin: without demand nothing fails unless the capacity is already negative",
          "[limits][margin]") {
  CHECK(make_margin("pin", 60, 0, "N").ratio() == infinity);
  CHECK(make_margin("pin", 0, 0, "N").ratio() == infinity);
  CHECK(make_margin("housing temperature", -5, 0, "K").ratio() == -infinity);
  CHECK_FALSE(make_margin("housing temperature", -5, 0, "K").holds());
}

TEST_CASE("margin: an infinite capacity bears any demand", "[limits][margin]") {
  CHECK(make_margin("pin", infinity, 1e300, "N").ratio() == infinity);
}

TEST_CASE("margin: numbers that are none are refused by the name of the check", "[errors][margin]") {
  CHECK_THROWS_WITH(make_margin("cord at knot", not_a_number, 1, "N"),
                    Contains("capacity of cord at knot") && Contains("needed: a number"));
  CHECK_THROWS_WITH(make_margin("cord at knot", 1, -2, "N"),
                    Contains("demand of cord at knot = -2 N is not allowed"));
  CHECK_THROWS_AS(make_margin("cord at knot", 1, infinity, "N"), InvalidInput);
  CHECK_THROWS_AS(make_margin("cord at knot", 1, not_a_number, "N"), InvalidInput);
}

TEST_CASE("margin: the weakest one has the smallest ratio", "[margin]") {
  const std::vector<Margin> margins{make_margin("a", 10, 2, "N"), make_margin("b", 9e6, 6e6, "Pa"),
                                    make_margin("c", 3, 2, "N m"), make_margin("d", 1, 0, "N")};
  CHECK(weakest(margins).check == "b");  // before c, which is equal
  CHECK(&weakest(margins) == &margins[1]);
  CHECK_THROWS_AS(weakest({}), InvalidInput);
}
