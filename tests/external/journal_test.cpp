#include "friction/journal.h"

#include <cmath>
#include <numbers>
#include <string>

#include <catch2/catch.hpp>

#include "check.h"
#include "friction/hinge_limit.h"

using namespace sinewright;
using namespace sinewright::friction;
using sinewright::external::check_relative;

TEST_CASE("journal: the friction circle has radius r sin(phi), not r tan(phi)", "[external][journal]") {
  check_relative("friction circle, r = 1, tan phi = 3/4", "m", friction_circle_radius(0.75, 1), 0.6,
                 {"friction circle, statics question bank (competitive-exam.in); 3-4-5 triangle", 1e-14});
}

TEST_CASE("journal: Hibbeler's loose pulley is raised and lowered with the forces of the book",
          "[external][journal]") {
  // Hibbeler, Statics, Example 8.11 (from memory): pulley 100 mm on a loose 10 mm shaft, mu = 0.4, 100 kg.
  // The vertical reaction passes the shaft's axis at the friction circle: P (50 - r_f) = W (50 + r_f).
  const std::string source = "Hibbeler, Statics, Example 8.11 (from memory)";
  const double weight = 100 * 9.81, arm = 0.05;
  const double exact = friction_circle_radius(0.4, 0.005);
  check_relative("friction circle", "mm", 1e3 * exact, 1.856953382, {source + ", exact", 1e-9});
  check_relative("force to raise", "N", weight * (arm + exact) / (arm - exact), 1056.67744,
                 {source + ", exact", 1e-9});
  check_relative("force to lower", "N", weight * (arm - exact) / (arm + exact), 910.7424492,
                 {source + ", exact", 1e-9});
  // The book takes mu r for the radius; that is the form of `journal_torque_from_normal`.
  const double book = journal_torque_from_normal(0.4, 0.005, 1);
  check_relative("force to raise, with mu r", "N", weight * (arm + book) / (arm - book), 1063,
                 {source, 1e-3});
  check_relative("force to lower, with mu r", "N", weight * (arm - book) / (arm + book), 906, {source, 1e-3});
}

TEST_CASE("journal: Beer and Johnston's pulley on a fixed shaft needs the pulls of the book",
          "[external][journal]") {
  // Sample Problem 8.6 (from memory): pulley 4 in on a shaft 2 in, mu = 0.20, 500 lb. Inches and pounds as
  // there.
  const std::string source = "Beer and Johnston, Vector Mechanics: Statics, Sample Problem 8.6 (from memory)";
  const double r_f = friction_circle_radius(0.2, 1);
  const double raise = 500 * (2 + r_f) / (2 - r_f), hold = 500 * (2 - r_f) / (2 + r_f);
  // Horizontal pull: the reaction goes through the corner of weight and pull and touches the friction circle.
  const double theta = std::asin(r_f / (2 * std::numbers::sqrt2));
  const double horizontal = 500 / std::tan(std::numbers::pi / 4 - theta);
  check_relative("pull that raises", "lb", raise, 608.7188255, {source + ", exact", 1e-9});
  check_relative("pull that just holds", "lb", hold, 410.6986502, {source + ", exact", 1e-9});
  check_relative("horizontal pull", "lb", horizontal, 574.6965756, {source + ", exact", 1e-9});
  // The book's figures, with mu r = 0.20 in.
  const double book = journal_torque_from_normal(0.2, 1, 1);
  check_relative("pull that raises, with mu r", "lb", 500 * (2 + book) / (2 - book), 611, {source, 2e-3});
  check_relative("pull that just holds, with mu r", "lb", 500 * (2 - book) / (2 + book), 409, {source, 2e-3});
  check_relative("horizontal pull, with mu r", "lb",
                 500 / std::tan(std::numbers::pi / 4 - std::asin(book / (2 * std::numbers::sqrt2))), 577,
                 {source, 2e-3});
}

TEST_CASE("journal: hinge pins of a finger give both textbook forms", "[external][journal]") {
  const std::string source = "friction circle, r sin phi and mu r, evaluated apart";
  struct Row {
    const char* name;
    double diameter, mu, force, simple, exact;  // [m, –, N, N mm, N mm]
  };
  const Row r = GENERATE(Row{"pin 2 mm, mu = 0.2, 30 N", 0.002, 0.2, 30, 6.0, 5.8834840541455},
                         Row{"pin 3 mm, mu = 0.25, 50 N", 0.003, 0.25, 50, 18.75, 18.190171877725});
  const std::string name = r.name;
  check_relative("mu N r, " + name, "N mm", 1e3 * journal_torque_from_normal(r.mu, r.diameter / 2, r.force),
                 r.simple, {source, 1e-12});
  // What a hinge of the engine puts up, from the model's data.
  model::Pin pin;
  pin.diameter = r.diameter;
  pin.friction = {r.mu, r.mu};
  const Vector3d force = r.force * Vector3d(0.6, -0.8, 0);
  check_relative("R r sin phi, " + name, "N mm",
                 1e3 * hinge_limit(pin, {}, Vector3d::UnitZ(), {force, 0, Vector3d::Zero()}).kinetic, r.exact,
                 {source, 1e-12});
}
