#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "check.h"
#include "drive/angle_sensor.h"
#include "drive/noise.h"
#include "drive/play.h"
#include "drive/quantiser.h"

using namespace sinewright;
using namespace sinewright::drive;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

TEST_CASE("sensing: error of an evenly spread value through a converter", "[external][sensing]") {
  const Quantiser converter(0, 3.3, 10);
  const int n = 2000003;  // prime: no multiple of the steps
  double worst = 0, squares = 0, sum = 0;
  for (int i = 0; i < n; ++i) {
    const double x = 3.3 * (i + 0.5) / n;
    const double error = converter.reading(converter.count(x)) - x;
    worst = std::max(worst, std::abs(error));
    squares += error * error;
    sum += error;
  }
  const std::string source = "Widrow and Kollár, Quantization Noise, 2008 (from memory)";
  check_relative("largest error / step", "1", worst / converter.step(), 0.5, {source, 1e-3});
  check_relative("standard deviation / step", "1", std::sqrt(squares / n) / converter.step(), 1 / std::sqrt(12.0), {source, 1e-5});
  check_absolute("mean error / step", "1", sum / n / converter.step(), 0, {source, 1e-6});
}

TEST_CASE("sensing: area of the loop of a play operator over a closed swing", "[external][sensing]") {
  const double r = 0.08, swing = 0.5;
  const int n = 40000;
  double area = 0, before_seat = 0, before_rotor = 0;
  for (int i = 0; i <= 2 * n; ++i) {  // the first round brings it into its loop
    const double seat = swing * std::sin(2 * std::numbers::pi * i / n);
    const double rotor = play(before_rotor, seat, r);
    if (i > n) area += 0.5 * (seat + before_seat) * (rotor - before_rotor);
    before_seat = seat;
    before_rotor = rotor;
  }
  check_relative("loop area of play", "rad2", std::abs(area), 4 * r * (swing - r),
                 {"4 r (A - r), Krasnosel'skii and Pokrovskii, Systems with Hysteresis, 1989 (from memory)", 1e-6});
}

TEST_CASE("sensing: largest error of a loaded potentiometer", "[external][sensing]") {
  model::Potentiometer p;
  p.range = 1;
  p.feed = 1;
  p.resistance = 10e3;
  p.load = 10e6;
  double worst = 0, place = 0;
  for (int i = 0; i <= 100000; ++i) {
    const double share = i / 100000.0, error = share - track_share(p, share);
    if (error > worst) worst = error, place = share;
  }
  const std::string source = "loaded voltage divider, textbook: 4/27 R/R_L at 2/3 for R << R_L";
  check_relative("largest error × R_L/R", "1", worst * 1000, 4.0 / 27, {source, 1e-3});
  check_relative("where on the track", "1", place, 2.0 / 3, {source, 1e-3});
}

TEST_CASE("sensing: counted noise is normal", "[external][sensing]") {
  const model::Noise noise{1, 3};
  const int n = 400000;
  double sum = 0, squares = 0, fourth = 0, pairs = 0, before = 0;
  int beyond = 0;
  for (int i = 0; i < n; ++i) {
    const double x = noise_of(noise, NoiseOf::angle, 0, static_cast<std::uint64_t>(i));
    sum += x;
    squares += x * x;
    fourth += x * x * x * x;
    pairs += x * before;
    before = x;
    if (std::abs(x) > 1.959963985) ++beyond;
  }
  // Four standard errors of each estimate, from n.
  const double root = std::sqrt(static_cast<double>(n));
  const std::string source = "normal distribution, textbook";
  check_absolute("mean", "1", sum / n, 0, {source, 4 / root});
  check_absolute("standard deviation", "1", std::sqrt(squares / n), 1, {source, 4 / (std::sqrt(2.0) * root)});
  check_absolute("fourth moment", "1", fourth / n, 3, {source, 4 * std::sqrt(96.0) / root});
  check_absolute("share beyond 1.96", "1", static_cast<double>(beyond) / n, 0.05, {source, 4 * std::sqrt(0.05 * 0.95) / root});
  check_absolute("product of neighbours", "1", pairs / n, 0, {source, 4 / root});
}
