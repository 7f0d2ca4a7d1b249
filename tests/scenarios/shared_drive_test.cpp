// The pair on one drive: its shares are those of a bar on a rubbing pin, in every row.

#include <cmath>
#include <string>

#include <catch2/catch.hpp>

#include "friction/journal.h"
#include "reading/reading.h"
#include "simulation/run.h"

using namespace sinewright;

TEST_CASE("shared drive: one finger stands while the other goes on, and both tensions stay within what the bar's pin holds", "[scenarios]") {
  reading::Source source;
  const simulation::System system(reading::read_scenario(source, SINEWRIGHT_SOURCE_DIR "/scenarios/shared-drive.yaml"));
  const auto& m = system.model();
  const auto joint = [&](const std::string& name) {
    for (std::size_t i = 0; i < system.hinges.size(); ++i)
      if (m.bodies[static_cast<std::size_t>(system.hinges[i].body)].hinge->name == name) return i;
    FAIL("no " << name);
    return std::size_t{0};
  };
  const auto cord = [&](const std::string& name) {
    for (std::size_t c = 0; c < system.cords.size(); ++c)
      if (m.cords[c].name == name) return c;
    FAIL("no " << name);
    return std::size_t{0};
  };
  const std::size_t bar = joint("BAR"), index = joint("index_IP"), middle = joint("middle_IP"), one = cord("index"), two = cord("middle"), draw = cord("draw");
  const auto& pin = *m.bodies[static_cast<std::size_t>(system.hinges[bar].body)].hinge->pin;
  const double circle = friction::friction_circle_radius(pin.friction.static_coefficient, pin.diameter / 2);
  const int bar_link = system.hinges[bar].link;

  int looked = 0;
  double index_before = 0, middle_before = 0, index_after = 0, middle_after = 0;
  simulation::RunListener listener;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    const auto angle = [&](std::size_t i) { return state.q[system.tree.links[static_cast<std::size_t>(system.hinges[i].link)].q]; };
    if (state.time < 0.28) index_before = angle(index), middle_before = angle(middle);
    if (state.time < 0.33) index_after = angle(index), middle_after = angle(middle);
    if (state.time < 0.6) return false;
    ++looked;
    // Moments about the pivot: levers from the geometry, friction from the load on the pin (tilting adds to it, so twice is room enough).
    const auto& pivot = stage.kinematics.pose[static_cast<std::size_t>(bar_link)];
    const auto moment = [&](std::size_t c) {
      const auto& way = stage.path[c].vertices;
      const Eigen::Vector3d pull = stage.chain[c].tension.front() * (way[1] - way[0]).normalized();
      return pivot.R.col(1).dot((way[0] - pivot.p).cross(pull));
    };
    const double sum = stage.chain[one].tension.front() + stage.chain[two].tension.front();
    CHECK(std::abs(moment(one) + moment(two)) <= 2 * circle * sum);
    CHECK(std::abs(moment(one)) > 0.1);
    // Along the slide: the pull less the slideway's friction.
    const double along = stage.slide[0].friction_force;
    const auto part = [&](std::size_t c) {
      const auto& way = stage.path[c].vertices;
      return stage.chain[c].tension.front() * (way[1] - way[0]).normalized().x();
    };
    CHECK_THAT(stage.chain[draw].tension.back() + along, Catch::Matchers::WithinRel(part(one) + part(two), 1e-6));
    return false;
  };
  const auto result = simulation::run(system, listener);
  REQUIRE(result.complete);
  CHECK(looked > 50);
  CHECK(std::abs(index_after - index_before) < 0.02);
  CHECK(middle_after - middle_before > 0.3);
}
