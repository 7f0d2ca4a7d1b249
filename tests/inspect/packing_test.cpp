#include "simulation/packing.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>
#include <set>

#include "fingers.h"
#include "geometry/reach.h"
#include "simulation/hand_size.h"

using namespace sinewright;
using namespace sinewright::inspected;
using contact::Containment;
using model::Box;
using model::Capsule;
using model::Cylinder;
using model::PartName;
using model::Sphere;
using simulation::Closeness;
using simulation::packing;
using simulation::PackingReport;
using simulation::System;
using Catch::Matchers::WithinAbs;

namespace {

// Bullet's part in a gap of flat or crossed round shapes (docs/theory/contact.md); all else is rounding.
constexpr double exact = 1e-9;  // [m]

// One fixed body with things in it that stand free. Every pair is listed.
model::Scenario bench(const std::vector<model::Shape>& shapes, double clearance = 1) {
  model::Scenario scenario;
  scenario.duration = 1;
  scenario.model.bodies = {parts::fixed_body("bench")};
  for (std::size_t i = 0; i < shapes.size(); ++i)
    scenario.model.bodies[0].occupies.push_back({std::string(1, static_cast<char>('a' + i % 26)) + std::to_string(i / 26), shapes[i], std::vector<int>{}});
  scenario.model.packing.clearance = clearance;
  return scenario;
}

model::Scenario moved_as_a_whole(model::Scenario scenario) {
  for (model::Body& body : scenario.model.bodies)
    if (body.fixed) {
      const model::Matrix3d turn = Eigen::AngleAxisd(2.2, Vector3d(3, 1, -1).normalized()).toRotationMatrix();
      body.fixed->at = turn * body.fixed->at + Vector3d(0.3, -0.2, 0.1);
      body.fixed->rotation = turn * body.fixed->rotation;
    }
  return scenario;
}

std::vector<Closeness> all_of(const PackingReport& report) {
  std::vector<Closeness> list = report.collisions;
  list.insert(list.end(), report.narrow.begin(), report.narrow.end());
  return list;
}

// The smallest gap of the only pair; the same wherever the bench stands.
double only_gap(const model::Scenario& scenario) {
  const std::vector<Closeness> here = all_of(packing(System(scenario), 2)), there = all_of(packing(System(moved_as_a_whole(scenario)), 2));
  REQUIRE(here.size() == 1);
  REQUIRE(there.size() == 1);
  CHECK_THAT(there[0].smallest, WithinAbs(here[0].smallest, exact));
  CHECK(here[0].straight == here[0].smallest);
  return here[0].smallest;
}

const Closeness* find(const std::vector<Closeness>& list, const std::string& a, const std::string& b) {
  for (const Closeness& pair : list) {
    const bool one = pair.a.starts_with(a) && pair.b.starts_with(b), other = pair.a.starts_with(b) && pair.b.starts_with(a);
    if (one || other) return &pair;
  }
  return nullptr;
}

// A cord of 1 mm between two anchors, each in a body of its own, past a thing of a third body. All fixed.
model::Scenario cord_past(const Vector3d& from, const Vector3d& to, const model::Shape& shape) {
  model::Scenario scenario = bench({shape});
  auto& m = scenario.model;
  m.lines = {parts::stiff_line()};
  m.lines[0].diameter = 1e-3;
  model::Cord cord;
  cord.name = "pull";
  cord.line = 0;
  cord.path = {model::Anchor{0, from}, model::Anchor{0, to}};
  m.cords = {cord};
  return scenario;
}

class Random {
 public:
  explicit Random(unsigned seed) : engine_(seed) {}
  double between(double low, double high) { return low + (high - low) * (static_cast<double>(engine_() >> 11) / 9007199254740992.0); }
  Vector3d within(double half) {
    const double x = between(-half, half), y = between(-half, half);
    return {x, y, between(-half, half)};
  }

 private:
  std::mt19937_64 engine_;
};

}  // namespace

TEST_CASE("packing: gaps of two blocks, face to face and edge to edge, and their overlap", "[analytic]") {
  const Box block{{0, 0, 0}, {12e-3, 10e-3, 24e-3}};
  const auto beside = [&](const Vector3d& at) { return bench({block, Box{at, {8e-3, 6e-3, 10e-3}}}); };
  CHECK_THAT(only_gap(beside({13e-3, 1e-3, 2e-3})), WithinAbs(3e-3, exact));
  CHECK_THAT(only_gap(beside({13e-3, 12e-3, 2e-3})), WithinAbs(std::hypot(3e-3, 4e-3), exact));
  CHECK_THAT(only_gap(beside({13e-3, 12e-3, 29e-3})), WithinAbs(std::sqrt(9e-6 + 16e-6 + 144e-6), exact));
  CHECK_THAT(only_gap(beside({9e-3, 1e-3, 2e-3})), WithinAbs(-1e-3, exact));  // 10 mm of half widths, 9 mm apart
}

TEST_CASE("packing: gaps of two cans, side by side and crossed", "[analytic]") {
  const Cylinder can{{0, 0, 0}, Vector3d::UnitZ(), 6e-3, 15e-3};
  CHECK_THAT(only_gap(bench({can, Cylinder{{9e-3, 12e-3, 1e-3}, Vector3d::UnitZ(), 4e-3, 20e-3}})), WithinAbs(15e-3 - 10e-3, 50e-9));
  // Axes crossed at a right angle, 11 mm apart: 11 − 6 − 4 = 1 mm.
  CHECK_THAT(only_gap(bench({can, Cylinder{{0, 11e-3, 2e-3}, Vector3d::UnitX(), 4e-3, 20e-3}})), WithinAbs(1e-3, 50e-9));
  CHECK_THAT(only_gap(bench({can, Cylinder{{0, 9e-3, 2e-3}, Vector3d::UnitX(), 4e-3, 20e-3}})), WithinAbs(-1e-3, 50e-9));
}

TEST_CASE("packing: the gap of a ball and a block's face, edge and corner", "[analytic]") {
  const Box block{{0, 0, 0}, {12e-3, 10e-3, 24e-3}};
  CHECK_THAT(only_gap(bench({block, Sphere{{11e-3, 1e-3, 0}, 3e-3}})), WithinAbs(2e-3, exact));
  CHECK_THAT(only_gap(bench({block, Sphere{{9e-3, 9e-3, 0}, 3e-3}})), WithinAbs(2e-3, exact));
  CHECK_THAT(only_gap(bench({block, Sphere{{8e-3, 8e-3, 18e-3}, 3e-3}})), WithinAbs(4e-3, exact));
  CHECK_THAT(only_gap(bench({block, Sphere{{8e-3, 1e-3, 0}, 3e-3}})), WithinAbs(-1e-3, exact));
}

TEST_CASE("packing: a cord's span keeps the distance of two skew lines from a can", "[analytic]") {
  Random random(7);
  for (int i = 0; i < 50; ++i) {
    // A long can along z and a long span that passes it half-way up: the nearest points lie inside both.
    const double away = random.between(-12e-3, 12e-3), slope = random.between(-0.5, 0.5), height = random.between(-20e-3, 20e-3);
    const Vector3d middle(0, away, height), along = Vector3d(1, 0, slope).normalized();
    CAPTURE(away, slope, height);
    const double gap = only_gap(cord_past(middle - 40e-3 * along, middle + 40e-3 * along, Cylinder{{0, 0, 0}, Vector3d::UnitZ(), 4e-3, 100e-3}));
    // Lines (0, 0, z) and middle + t along: both directions at a right angle to y, so their distance is |away|.
    if (std::abs(away) > 4e-3) CHECK_THAT(gap, WithinAbs(std::abs(away) - 4e-3 - 0.5e-3, exact));
    else CHECK(gap < -0.5e-3);  // the span's middle line itself is in the can
  }
}

TEST_CASE("packing: a cord through the middle of a block is found with half the block's thickness", "[analytic]") {
  const model::Scenario scenario = cord_past({-40e-3, 0, 0}, {40e-3, 0, 0}, Box{{0, 1e-3, 0}, {12e-3, 10e-3, 24e-3}});
  const PackingReport report = packing(System(scenario), 2);
  REQUIRE(report.collisions.size() == 1);
  CHECK(report.collisions[0].a == "cord pull, path 0 to 1");
  CHECK(report.collisions[0].b == "bench.a0");
  // Out on the side of y = −4 mm: 4 mm for its middle line, 0.5 mm for its radius.
  CHECK_THAT(-report.collisions[0].smallest, WithinAbs(4.5e-3, exact));
  CHECK_THAT(only_gap(scenario), WithinAbs(-4.5e-3, exact));
}

TEST_CASE("packing: balls thrown at random collide where their centres are nearer than their radii", "[analytic]") {
  Random random(GENERATE(1u, 2u, 3u));
  std::vector<model::Shape> balls;
  for (int i = 0; i < 40; ++i) balls.emplace_back(Sphere{random.within(30e-3), random.between(2e-3, 7e-3)});
  const model::Scenario scenario = bench(balls, 0);
  const auto& things = scenario.model.bodies[0].occupies;
  std::set<std::pair<std::string, std::string>> wanted, found;
  for (std::size_t i = 0; i < balls.size(); ++i)
    for (std::size_t j = i + 1; j < balls.size(); ++j) {
      const auto &a = std::get<Sphere>(balls[i]), &b = std::get<Sphere>(balls[j]);
      if ((a.center - b.center).norm() < a.radius + b.radius) wanted.emplace("bench." + things[i].name, "bench." + things[j].name);
    }
  const PackingReport report = packing(System(scenario), 2);
  for (const Closeness& pair : report.collisions) {
    found.emplace(pair.a, pair.b);
    const auto ball = [&](const std::string& name) {
      for (std::size_t i = 0; i < balls.size(); ++i)
        if ("bench." + things[i].name == name) return std::get<Sphere>(balls[i]);
      return Sphere{};
    };
    const Sphere a = ball(pair.a), b = ball(pair.b);
    CHECK_THAT(pair.smallest, WithinAbs((a.center - b.center).norm() - a.radius - b.radius, 1e-12));
  }
  CHECK(wanted.size() > 5);
  CHECK(found == wanted);
  CHECK(std::is_sorted(report.collisions.begin(), report.collisions.end(), [](const auto& a, const auto& b) { return a.smallest < b.smallest; }));
}

TEST_CASE("packing: blocks thrown at random overlap as their edges say", "[analytic]") {
  Random random(GENERATE(4u, 5u));
  std::vector<model::Shape> blocks;
  for (int i = 0; i < 30; ++i)
    blocks.emplace_back(Box{random.within(30e-3), Vector3d(random.between(4e-3, 14e-3), random.between(4e-3, 14e-3), random.between(4e-3, 14e-3))});
  const model::Scenario scenario = bench(blocks, 0);
  const PackingReport report = packing(System(scenario), 2);
  std::size_t overlaps = 0;
  for (std::size_t i = 0; i < blocks.size(); ++i)
    for (std::size_t j = i + 1; j < blocks.size(); ++j) {
      const auto &a = std::get<Box>(blocks[i]), &b = std::get<Box>(blocks[j]);
      // Parallel blocks: past each other along one axis is free; else the shortest way out goes along one.
      const double gap = ((a.center - b.center).cwiseAbs() - (a.size + b.size) / 2).maxCoeff();
      const auto& things = scenario.model.bodies[0].occupies;
      const Closeness* found = find(report.collisions, "bench." + things[i].name, "bench." + things[j].name);
      if (std::abs(gap) < 1e-8) continue;
      CHECK((found != nullptr) == (gap < 0));
      if (found == nullptr) continue;
      ++overlaps;
      CHECK_THAT(found->smallest, WithinAbs(gap, exact));
    }
  CHECK(overlaps > 5);
}

TEST_CASE("packing: a moving part meets a post at the angle where it must", "[analytic]") {
  // A ball at the end of an arm of 40 mm, a post of radius 3 mm where the ball is at 60 degrees.
  model::Scenario scenario = bench({});
  auto& m = scenario.model;
  m.bodies.push_back(parts::rod("arm", 0, {0, 0, 0}, 0.01, 40e-3));
  m.bodies[1].hinge->stops = model::EndStops{0, pi / 2, 1, 0};
  m.bodies[1].occupies.push_back({"ball", Sphere{{40e-3, 0, 0}, 5e-3}, std::vector<int>{}});
  const double at = 60 * degree;
  m.bodies[0].occupies.push_back({"post", Cylinder{{40e-3 * std::cos(at), -40e-3 * std::sin(at), 0}, Vector3d::UnitZ(), 3e-3, 20e-3}, std::vector<int>{}});
  for (const bool moved : {false, true}) {
    const PackingReport report = packing(System(moved ? moved_as_a_whole(scenario) : scenario), 10);  // every 10 degrees
    REQUIRE(report.postures.size() == 10);  // straight and nine more
    REQUIRE(report.collisions.size() == 1);
    const Closeness& pair = report.collisions[0];
    CHECK(pair.posture == "arm 60 deg");
    CHECK_FALSE(pair.when_straight);
    CHECK_THAT(pair.straight, WithinAbs(2 * 40e-3 * std::sin(at / 2) - 8e-3, exact));
    CHECK_THAT(pair.smallest, WithinAbs(-8e-3, exact));  // the ball's centre on the post's axis
  }
  // With steps of 45 degrees the post is passed by: what is not looked at is not known, and the gap at 45 degrees says so.
  const PackingReport coarse = packing(System(scenario), 3);
  CHECK(coarse.collisions.empty());
  REQUIRE(coarse.narrow.size() == 1);
  CHECK_THAT(coarse.narrow[0].smallest, WithinAbs(2 * 40e-3 * std::sin(7.5 * degree) - 8e-3, exact));
}

TEST_CASE("packing: postures are the straight one, each joint, each finger and all together") {
  model::Scenario scenario = chain({45e-3, 25e-3});
  for (auto& body : scenario.model.bodies)
    if (body.hinge) body.hinge->stops = model::EndStops{-10 * degree, 80 * degree, 1, 0};
  PackingReport report = packing(System(scenario), 4);
  // One finger: straight, 4 postures of each of 3 joints, 3 of all together (the first, all at their lower stops, is none of closing).
  CHECK(report.postures.size() == 1 + 3 * 4 + 3);
  CHECK(report.postures[0].q.head(3).isZero());
  CHECK(report.postures.back().name == "finger closing 100 %");
  for (int i = 0; i < 3; ++i) CHECK_THAT(report.postures.back().q[i], WithinAbs(80 * degree, 1e-12));
  auto& m = scenario.model;
  m.bodies.push_back(parts::rod("second", 0, {0, 0, 20e-3}, 0.01, 40e-3));
  m.bodies.push_back(parts::rod("its tip", 4, {40e-3, 0, 0}, 0.01, 40e-3));
  report = packing(System(scenario), 4);
  // Two fingers; those joints range from 0 to 90 degrees, and their 0 is the straight posture.
  CHECK(report.postures.size() == 1 + 3 * 4 + 2 * 3 + 2 * 3 + 3);
  CHECK(report.postures.back().name == "all closing 100 %");
}

TEST_CASE("packing: motors in a row stand apart by their pitch less their width", "[analytic]") {
  model::Scenario scenario = bench({}, 10e-3);
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  const double pitch = GENERATE(14e-3, 12.3e-3, 11e-3);
  const bool lying = GENERATE(true, false);
  for (int i = 0; i < 4; ++i) {
    model::Drive drive = parts::plain_drive();
    drive.name = "drive" + std::to_string(i);
    drive.motor.outline = model::Outline{15e-3, 12e-3, 12e-3, true};
    drive.gearhead.outline = model::Outline{9e-3, 12e-3, 10e-3, false};
    // Side by side along z, shafts along x; heights along y, or along z, where the gearhead is 10 mm and the round motor 12 mm.
    drive.shaft = model::ShaftSeat{{0, 0, pitch * i}, -Vector3d::UnitX(), lying ? Vector3d::UnitY() : Vector3d::UnitZ(), 0.5e-3};
    m.drives.push_back(drive);
  }
  const PackingReport report = packing(System(scenario), 2);
  const auto list = all_of(report);
  for (int i = 0; i < 3; ++i) {
    const std::string one = "drive" + std::to_string(i), next = "drive" + std::to_string(i + 1);
    const Closeness* motors = find(list, one + ".motor", next + ".motor");
    REQUIRE(motors != nullptr);
    CHECK_THAT(motors->smallest, WithinAbs(pitch - 12e-3, 50e-9));
    const Closeness* gears = find(list, one + ".gearhead", next + ".gearhead");
    REQUIRE(gears != nullptr);
    CHECK_THAT(gears->smallest, WithinAbs(pitch - (lying ? 12e-3 : 10e-3), exact));
    CHECK(find(list, one + ".motor", one + ".gearhead") == nullptr);  // on one shaft
  }
  CHECK(report.collisions.empty() == (pitch > 12e-3));
}

TEST_CASE("packing: the parts of a drive stand in line on its shaft", "[analytic]") {
  model::Scenario scenario = bench({});
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  model::Drive drive = parts::plain_drive();
  drive.pulley.radius = 4e-3;
  drive.pulley.bore = model::Bore{3e-3, 0.5e-3, 10e-3};
  drive.pulley.flange = model::Flange{1e-3, 1.5e-3, 3e-3, 0.1};
  drive.gearhead.outline = model::Outline{9e-3, 12e-3, 10e-3, false};
  drive.motor.outline = model::Outline{15e-3, 12e-3, 10e-3, true};
  drive.sensor.emplace();
  drive.sensor->kind = model::AbsoluteEncoder{12, 0};
  drive.sensor->outline = model::Outline{6e-3, 14e-3, 14e-3, true};
  const Vector3d axis = Vector3d(1, 2, 2) / 3, up = Vector3d(2, 1, -2) / 3, at(5e-3, 6e-3, 7e-3);
  drive.shaft = model::ShaftSeat{at, axis, up, 0.5e-3};
  drive.occupies.push_back({"clip", Box{{1e-3, 2e-3, 3e-3}, {1e-3, 1e-3, 1e-3}}, {}});
  m.drives = {drive};
  const auto along = [&](const simulation::PackedPart& part, const Vector3d& n) {
    return std::pair{-geometry::reach(part.shapes.front(), -n) - n.dot(at), geometry::reach(part.shapes.front(), n) - n.dot(at)};
  };
  const auto stands = [&](const std::string& name, double from, double to, double width, double height) {
    const auto all = simulation::packed_parts(m);
    for (const auto& part : all.parts) {
      if (part.name != "flexor." + name) continue;
      const auto [near, far] = along(part, axis);
      CHECK_THAT(near, WithinAbs(from, 1e-12));
      CHECK_THAT(far, WithinAbs(to, 1e-12));
      const auto [low, high] = along(part, up);
      CHECK_THAT(high - low, WithinAbs(height, 1e-12));
      const auto [left, right] = along(part, up.cross(axis));
      CHECK(right - left >= width - 1e-12);
      CHECK(right - left <= width * 1.0022);
      return;
    }
    FAIL("no part " + name);
  };
  CHECK(simulation::packed_parts(m).not_described == std::vector<std::string>{"bodies.bench.solids"});
  stands("pulley", -5e-3, 5e-3, 11e-3, 11e-3);  // 4 mm of groove and 1.5 mm of flange
  stands("gearhead", 5.5e-3, 14.5e-3, 12e-3, 10e-3);
  stands("motor", 14.5e-3, 29.5e-3, 12e-3, 10e-3);  // a can of 12 mm with flats 10 mm apart
  stands("sensor", -11.5e-3, -5.5e-3, 14e-3, 14e-3);
  stands("clip", 2.5e-3, 3.5e-3, 1e-3, 1e-3);
  m.drives[0].sensor->seat = model::Sensor::Seat::rotor;
  stands("sensor", 29.5e-3, 35.5e-3, 14e-3, 14e-3);
  m.drives[0].motor.outline.reset();
  m.drives[0].shaft.reset();
  CHECK(simulation::packed_parts(m).not_described == std::vector<std::string>{"bodies.bench.solids", "drives.flexor.shaft"});
}

TEST_CASE("packing: a can with flats is a prism between its circle and 0.22 % more", "[analytic]") {
  const model::Shape shape = simulation::outline_shape({15e-3, 12e-3, 10e-3, true}, 2e-3);
  for (int k = 0; k < 720; ++k) {
    const double a = k * pi / 360;
    const double reach = geometry::reach(shape, {std::cos(a), std::sin(a), 0});
    // The can reaches a radius, or to the edge between arc and flat.
    const double edge = std::asin(10.0 / 12), up = std::atan2(std::abs(std::sin(a)), std::abs(std::cos(a)));
    const double wanted = up <= edge ? 6e-3 : 6e-3 * std::cos(up - edge);
    CHECK(reach >= wanted - 1e-12);
    CHECK(reach <= wanted * 1.0022 + 1e-12);
  }
  CHECK_THAT(geometry::reach(shape, Vector3d::UnitZ()), WithinAbs(17e-3, 1e-15));
  CHECK(std::holds_alternative<Cylinder>(simulation::outline_shape({15e-3, 12e-3, 12e-3, true}, 0)));
}

TEST_CASE("packing: prints are hollowed out for what sits in them, and for nothing else") {
  model::Scenario scenario = bench({}, 0.5e-3);
  auto& m = scenario.model;
  m.bodies.push_back(parts::fixed_body("palm"));
  m.bodies[1].fixed->at = {0, 0, 5e-3};
  m.bodies[1].solids = {{Box{{0, 0, 0}, {80e-3, 20e-3, 60e-3}}, 930}};
  m.bodies[0].occupies.push_back({"battery", Box{{0, 0, 5e-3}, {40e-3, 12e-3, 30e-3}}, {}});
  // Both stand still: the palm is around the battery, with (20 − 12) / 2 mm of wall.
  PackingReport report = packing(System(scenario), 2);
  CHECK(report.collisions.empty());
  REQUIRE(report.walls.size() == 1);
  CHECK(report.walls[0].inside == std::vector<std::string>{"palm"});
  CHECK(report.walls[0].lies.place == Containment::Place::within);
  CHECK_THAT(report.walls[0].lies.way, WithinAbs(4e-3, 2e-9));
  // It stands free: then it is in the palm's way.
  m.bodies[0].occupies[0].inside = std::vector<int>{};
  report = packing(System(scenario), 2);
  REQUIRE(report.collisions.size() == 1);
  CHECK(report.walls.empty());
  CHECK_THAT(report.collisions[0].smallest, WithinAbs(-16e-3, exact));  // (20 + 12) / 2: the shortest way out
  // Named as its surroundings again.
  m.bodies[0].occupies[0].inside = std::vector<int>{1};
  report = packing(System(scenario), 2);
  CHECK(report.collisions.empty());
  CHECK_THAT(report.walls.at(0).lies.way, WithinAbs(4e-3, 2e-9));
  // Sticking out by 5 mm.
  std::get<Box>(m.bodies[0].occupies[0].shape).center.x() = 25e-3;
  report = packing(System(scenario), 2);
  CHECK(report.walls.at(0).lies.place == Containment::Place::out);
  CHECK_THAT(report.walls.at(0).lies.way, WithinAbs(5e-3, 2e-9));
  // Without any solids nothing can be said.
  m.bodies[1].solids.clear();
  CHECK(packing(System(scenario), 2).walls.at(0).inside.empty());
}

TEST_CASE("packing: a phalanx on its parent is no collision, on the next but one it is") {
  model::Scenario scenario = chain({45e-3, 25e-3});
  auto& m = scenario.model;
  for (auto& body : m.bodies)
    if (body.hinge) {
      body.solids = {{Capsule{{0, 0, 0}, {24e-3, 0, 0}, 7e-3}, 930}};
      body.hinge->stops = model::EndStops{0, 120 * degree, 1, 0};
    }
  m.packing.clearance = 2e-3;
  const PackingReport report = packing(System(scenario), 11);
  // The third folds back onto the first: pins 25 mm apart, turned by 240 degrees in all.
  REQUIRE(report.collisions.size() == 1);
  CHECK(find(report.collisions, "phalanx 1", "phalanx 3") != nullptr);
  CHECK(report.collisions[0].posture == "finger closing 100 %");
}

TEST_CASE("packing: what may touch is left out, whole or in part, either way round") {
  model::Scenario scenario = cord_past({-40e-3, 0, 0}, {40e-3, 0, 0}, Box{{0, 0, 0}, {12e-3, 10e-3, 24e-3}});
  auto& m = scenario.model;
  const PartName cord{PartName::Of::cord, 0, ""}, body{PartName::Of::body, 0, ""}, part{PartName::Of::body, 0, "a0"}, other{PartName::Of::body, 0, "b0"};
  CHECK(packing(System(scenario), 2).collisions.size() == 1);
  for (const auto& pair : std::vector<std::pair<PartName, PartName>>{{cord, body}, {body, cord}, {cord, part}, {part, cord}}) {
    m.packing.may_touch = {pair};
    CHECK(packing(System(scenario), 2).collisions.empty());
  }
  m.packing.may_touch = {{cord, other}, {part, body}, {cord, cord}};
  CHECK(packing(System(scenario), 2).collisions.size() == 1);
}

TEST_CASE("packing: a cord runs in the prints that move with its ends, not in others, nor in parts") {
  model::Scenario scenario = flexed_chain({5e-3, 4e-3}, {45e-3, 25e-3});
  auto& m = scenario.model;
  m.lines[0].diameter = 0.5e-3;
  m.packing.clearance = 0;
  for (auto& body : m.bodies)
    if (body.hinge) body.hinge->stops = model::EndStops{0, 60 * degree, 1, 0};
  // Each phalanx is a thick rod, the cord well inside.
  for (std::size_t b = 1; b < m.bodies.size(); ++b) m.bodies[b].solids = {{Capsule{{2e-3, 0, 0}, {20e-3, 0, 0}, 8e-3}, 930}};
  CHECK(packing(System(scenario), 5).collisions.empty());
  // A board in the first phalanx where its cord runs.
  m.bodies[1].occupies.push_back({"board", Box{{22e-3, 0, 0}, {10e-3, 20e-3, 6e-3}}, {}});
  PackingReport report = packing(System(scenario), 5);
  REQUIRE(report.collisions.size() == 1);
  CHECK(find(report.collisions, "cord flexor", "phalanx 1.board") != nullptr);
  CHECK(report.collisions[0].when_straight);
  m.bodies[1].occupies.clear();
  // A print of a finger beside it, in the way of the same cord.
  m.bodies.push_back(parts::rod("beside", 0, {0, 0, 0}, 0.01, 40e-3));
  m.bodies.back().solids = {{Sphere{{22e-3, 0, 0}, 3e-3}, 930}};
  report = packing(System(scenario), 5);
  CHECK(find(report.collisions, "cord flexor", "beside") != nullptr);
}

TEST_CASE("packing: round a guide a cord keeps its arc") {
  // A quarter turn round a guide of 10 mm: a ball just inside the arc, where a straight chord would not pass.
  const double inside = 8e-3 * std::sqrt(0.5);
  model::Scenario scenario = bench({Sphere{{inside, inside, 0}, 1e-3}});
  auto& m = scenario.model;
  m.lines = {parts::stiff_line()};
  m.lines[0].diameter = 0.5e-3;
  model::Cord cord;
  cord.name = "pull";
  cord.line = 0;
  cord.path = {model::Anchor{0, {-40e-3, 10e-3, 0}}, model::Guide{0, {0, 0, 0}, Vector3d::UnitZ(), 10e-3, {1, 1, 0}, 1}, model::Anchor{0, {10e-3, -40e-3, 0}}};
  m.cords = {cord};
  // Centre to arc 2 mm, less both radii; the chords cut inside by 0.22 % of 10 mm at most.
  CHECK_THAT(only_gap(scenario), WithinAbs(2e-3 - 1e-3 - 0.25e-3, 0.0022 * 10e-3));
}

TEST_CASE("packing: a pulley's groove and the cord's first point are set beside each other", "[analytic]") {
  model::Scenario scenario = bench({});
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line()};
  m.lines[0].diameter = 0.5e-3;
  m.drives = {parts::plain_drive(30, 4e-3)};
  m.drives[0].shaft = model::ShaftSeat{{0, 0, 0}, Vector3d::UnitZ(), Vector3d::UnitY(), 0.5e-3};
  m.drives[0].pulley.bore = model::Bore{3e-3, 0.5e-3, 6e-3};
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = {model::PulleyEnd{0, {0, -4.25e-3, 0}}, model::Anchor{0, {40e-3, -4.25e-3, 0}}};
  m.cords = {cord};
  auto exit = packing(System(scenario), 2).exits.at(0);
  CHECK_THAT(exit.radius, WithinAbs(4.25e-3, 1e-12));
  CHECK_THAT(exit.wanted, WithinAbs(4.25e-3, 1e-12));
  CHECK_THAT(exit.off_middle, WithinAbs(0, 1e-12));
  CHECK_THAT(exit.half_length, WithinAbs(3e-3, 1e-12));
  CHECK_THAT(exit.fleet_angle, WithinAbs(0, 1e-9));
  CHECK_THAT(exit.off_tangent, WithinAbs(0, 1e-9));
  // The own pulley is where the cord begins: no collision. Another's is one.
  CHECK(packing(System(scenario), 2).collisions.empty());
  m.drives.push_back(m.drives[0]);
  m.drives[1].name = "other";
  m.drives[1].shaft->at = {20e-3, -6e-3, 0};
  CHECK(find(packing(System(scenario), 2).collisions, "cord flexor", "other.pulley") != nullptr);
  m.drives.pop_back();
  // 1 mm too far out, leaving 3 mm down and 4 mm aside of 40 mm.
  m.cords[0].path = {model::PulleyEnd{0, {0, -5.25e-3, 1e-3}}, model::Anchor{0, {40e-3, -8.25e-3, 5e-3}}};
  exit = packing(System(scenario), 2).exits.at(0);
  CHECK_THAT(exit.radius, WithinAbs(5.25e-3, 1e-12));
  CHECK_THAT(exit.off_middle, WithinAbs(1e-3, 1e-12));
  CHECK_THAT(exit.fleet_angle, WithinAbs(std::atan2(4, std::hypot(40, 3)), 1e-9));
  CHECK_THAT(exit.off_tangent, WithinAbs(std::atan2(3, 40), 1e-9));
}

TEST_CASE("hand size: from what it is built of, along the axes", "[analytic]") {
  model::Scenario scenario = chain({45e-3, 25e-3});
  auto& m = scenario.model;
  m.bodies[0].solids = {{Box{{-30e-3, 1e-3, 2e-3}, {60e-3, 20e-3, 84e-3}}, 930}};
  for (std::size_t b = 1; b < m.bodies.size(); ++b) m.bodies[b].solids = {{Capsule{{0, 0, 0}, {14e-3, 0, 0}, 8e-3}, 930}};
  const auto measured = [&] {
    const System system(scenario);
    return simulation::hand_size(system, simulation::packed_parts(system.model()).parts, system.start_q);
  };
  auto size = measured();
  CHECK_THAT(size.low.x(), WithinAbs(-60e-3, 1e-12));
  CHECK_THAT(size.high.x(), WithinAbs(45e-3 + 25e-3 + 22e-3, 1e-12));
  CHECK_THAT(size.length, WithinAbs(152e-3, 1e-12));
  CHECK_THAT(*size.breadth, WithinAbs(84e-3, 1e-12));
  CHECK_THAT(*size.thickness, WithinAbs(20e-3, 1e-12));
  REQUIRE(size.fingers.size() == 1);
  REQUIRE(size.fingers[0].phalanges.size() == 3);
  CHECK_THAT(size.fingers[0].phalanges[1].length, WithinAbs(25e-3, 1e-12));
  CHECK_THAT(size.fingers[0].phalanges[2].length, WithinAbs(22e-3, 1e-12));
  CHECK_THAT(size.fingers[0].phalanges[2].breadth, WithinAbs(16e-3, 1e-12));
  CHECK_THAT(size.fingers[0].length, WithinAbs(92e-3, 1e-12));
  // From a wrist inside, the palm one of the phalanges, a battery that sticks out.
  m.packing.wrist = -50e-3;
  m.packing.palm = {1};
  m.bodies[1].occupies.push_back({"battery", Box{{0, 0, 10e-3}, {1e-3, 1e-3, 1e-3}}, {}});
  size = measured();
  CHECK_THAT(size.length, WithinAbs(142e-3, 1e-12));
  CHECK_THAT(*size.breadth, WithinAbs(18.5e-3, 1e-12));
  // Turned by a right angle about y the lengths change places.
  scenario.model.bodies[0].fixed->rotation = Eigen::AngleAxisd(pi / 2, Vector3d::UnitY()).toRotationMatrix();
  scenario.model.packing = {};
  size = measured();
  CHECK_THAT(*size.breadth, WithinAbs(60e-3, 1e-9));
  CHECK_THAT((size.high - size.low).z(), WithinAbs(152e-3, 1e-9));
}

TEST_CASE("hand size: shares of people follow the normal law") {
  using namespace simulation;
  CHECK_THAT(share_below(hand_length_men, hand_length_men.mean), WithinAbs(0.5, 1e-15));
  // 5 % and 95 % points of the normal law: mean ± 1.6449 deviations (tables of the normal distribution, from memory). The survey's own
  // 5th and 95th percentiles of men's hand lengths are 178.7 and 210.6 mm, of women's hand breadths 73.4 and 85.6 mm (as the values,
  // from memory): the law must come near them.
  CHECK_THAT(share_below(hand_length_men, hand_length_men.mean + 1.6448536 * hand_length_men.deviation), WithinAbs(0.95, 1e-7));
  CHECK_THAT(share_below(hand_length_men, 178.7e-3), WithinAbs(0.05, 0.015));
  CHECK_THAT(share_below(hand_length_men, 210.6e-3), WithinAbs(0.95, 0.015));
  CHECK_THAT(share_below(hand_breadth_women, 73.4e-3), WithinAbs(0.05, 0.015));
  CHECK_THAT(share_below(hand_breadth_women, 85.6e-3), WithinAbs(0.95, 0.015));
  CHECK(std::string(human_finger("ring").name) == "ring");
  CHECK(std::string(human_finger("proximal").name) == "index");
  CHECK_THAT(human_finger("index").length(), WithinAbs(81.82e-3, 1e-9));
}
