// What lies between a shaft and the number that the firmware has, each against its closed form.

#include <cmath>
#include <numbers>
#include <vector>

#include <catch2/catch.hpp>

#include "drive/angle_sensor.h"
#include "drive/current_sense.h"
#include "drive/noise.h"
#include "drive/play.h"
#include "drive/quantiser.h"

using namespace sinewright;
using namespace sinewright::drive;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double turn = 2 * std::numbers::pi;

model::Potentiometer plain(int bits = 12) {
  model::Potentiometer p;
  p.range = 5;
  p.at_zero = 1;
  p.feed = 3.3;
  p.bits = bits;
  return p;
}

model::Sensor with(const model::Potentiometer& p) {
  model::Sensor sensor;
  sensor.kind = p;
  return sensor;
}

}  // namespace

TEST_CASE("sensor: play stands still within its gap and follows at its edge", "[sensor]") {
  CHECK(play(0.3, 0.35, 0.1) == 0.3);
  CHECK_THAT(play(0.3, 0.5, 0.1), WithinRel(0.4, 1e-15));
  CHECK_THAT(play(0.3, 0.1, 0.1), WithinRel(0.2, 1e-15));
  CHECK(play(0.3, 0.7, 0) == 0.7);
}

TEST_CASE("sensor: a way in one direction may be cut into any steps, and a rest never creeps", "[sensor]") {
  const double r = 0.07, from = -0.4, to = 0.9;
  double fine = -0.35;
  for (int i = 1; i <= 1000; ++i) fine = play(fine, from + (to - from) * i / 1000, r);
  CHECK(fine == play(-0.35, to, r));
  double rest = 0.02;
  for (int i = 0; i < 1000000; ++i) rest = play(rest, 0.05, r);
  CHECK(rest == 0.02);
}

TEST_CASE("sensor: gap, spring and slider in series are one wider play", "[sensor]") {
  model::SensorFit fit{0.02, 5, 1e-3};
  CHECK_THAT(half_play(fit), WithinRel(0.01 + 2e-4, 1e-14));
  // Statics of the three parts, step by step: the slider gives way when the spring beyond the gap carries its friction.
  double slider = 0, operated = 0;
  for (int i = 0; i < 20000; ++i) {
    const double seat = 0.05 * std::sin(turn * i / 5000.0) + 0.02 * std::sin(turn * i / 1234.0);
    const double offset = seat - slider, beyond = std::max(0.0, std::abs(offset) - 0.01);
    if (5 * beyond > 1e-3) slider = seat - std::copysign(0.01 + 1e-3 / 5, offset);
    operated = play(operated, seat, half_play(fit));
    REQUIRE_THAT(operated, WithinAbs(slider, 1e-14));
    REQUIRE(std::abs(collar_torque(fit, seat, operated)) <= 1e-3 * (1 + 1e-9));
  }
  CHECK(half_play({0.02, 0, 1e-3}) == 0.01);  // a rigid collar does not twist
}

TEST_CASE("sensor: quantisation is off by half a step at most, and what lies outside is cut", "[sensor]") {
  const Quantiser converter(-1, 3, 6);
  CHECK(converter.step() == 0.0625);
  double worst = 0;
  for (int i = 0; i < 10000; ++i) {
    const double x = -1 + 4 * (i + 0.5) / 10000;
    worst = std::max(worst, std::abs(converter.reading(converter.count(x)) - x));
  }
  CHECK(worst <= 0.03125);
  CHECK(worst > 0.0312);
  CHECK(converter.count(-7) == 0);
  CHECK(converter.count(7) == 63);
}

TEST_CASE("sensor: a plain potentiometer reads its angle to half a step, geared or not", "[sensor]") {
  const double turns = GENERATE(1.0, 0.25, 3.0);
  const auto p = plain();
  const double step = 5 / 4096.0 / turns;
  double worst = 0;
  for (int i = 0; i < 3000; ++i) {
    const double angle = (-0.9 + 4.8 * i / 3000) / turns;
    const auto s = sample(p, turns, angle, 0, 0);
    CHECK_THAT(s.track, WithinAbs(angle, 1e-13));
    worst = std::max(worst, std::abs(s.reading - angle));
  }
  CHECK(worst <= step / 2 * (1 + 1e-9));
  CHECK(worst > step / 2 * 0.99);
  CHECK_THAT(angle_step(with(p), turns), WithinRel(step, 1e-14));
}

TEST_CASE("sensor: beyond the track's ends the reading stays on the end", "[sensor]") {
  const auto p = plain();
  CHECK(sample(p, 1, 4.5, 0, 0).count == 4095);
  CHECK_THAT(sample(p, 1, 4.5, 0, 0).track, WithinRel(4.0, 1e-14));
  CHECK(sample(p, 1, -2, 0, 0).count == 0);
  CHECK_FALSE(sample(p, 1, 4.5, 0, 0).off_track);
}

TEST_CASE("sensor: in the dead band of an endless potentiometer the count is 0 and says so, beyond it the track begins again", "[sensor]") {
  auto p = plain();
  p.dead_band = turn - 5;
  for (double angle = -12; angle < 12; angle += 0.01) {
    const double wiper = angle + 1 - turn * std::floor((angle + 1) / turn);
    const auto s = sample(p, 1, angle, 0, 0);
    CAPTURE(angle, wiper);
    REQUIRE(s.off_track == (wiper > 5));
    if (s.off_track) REQUIRE(s.count == 0);
    if (!s.off_track) REQUIRE_THAT(s.track, WithinAbs(wiper - 1, 1e-12));
  }
}

TEST_CASE("sensor: a sine of two waves is its own independent linearity error", "[sensor]") {
  auto p = plain();
  p.linearity = model::SineLinearity{0.004, 2, 0};
  // The least largest deviation from any straight line, by looking at many.
  double best = 1;
  for (double slope = -0.02; slope <= 0.02; slope += 2e-4)
    for (double offset = -0.004; offset <= 0.004; offset += 1e-4) {
      double worst = 0;
      for (int i = 0; i <= 400; ++i) {
        const double share = i / 400.0;
        worst = std::max(worst, std::abs(track_share(p, share) - share - offset - slope * (share - 0.5)));
      }
      best = std::min(best, worst);
    }
  CHECK_THAT(best, WithinRel(0.004, 1e-3));
}

TEST_CASE("sensor: a measured table of linearity is met at its points and straight between", "[sensor]") {
  auto p = plain();
  p.linearity = model::TableLinearity{{0.2, 0.6}, {0.01, -0.03}};
  CHECK_THAT(track_share(p, 0.1), WithinRel(0.11, 1e-14));
  CHECK_THAT(track_share(p, 0.2), WithinRel(0.21, 1e-14));
  CHECK_THAT(track_share(p, 0.4), WithinRel(0.39, 1e-14));
  CHECK_THAT(track_share(p, 0.9), WithinRel(0.87, 1e-14));
}

TEST_CASE("sensor: the track's resistance matters with a load only", "[sensor]") {
  auto p = plain();
  const double at_half = sample(p, 1, 1.5, 0, 0).track;
  p.resistance = 10e3;
  CHECK(sample(p, 1, 1.5, 0, 0).track == at_half);
  p.load = 100e3;
  // Thevenin: half the feed behind a quarter of the track's resistance.
  CHECK_THAT(track_share(p, 0.5), WithinRel(0.5 * 100e3 / (100e3 + 2.5e3), 1e-14));
}

TEST_CASE("sensor: ripple cancels in a ratiometric converter and shows against a reference of its own", "[sensor]") {
  auto p = plain();
  CHECK(sample(p, 1, 1.5, 0, 0.3).signal == sample(p, 1, 1.5, 0, 0).signal);
  p.reference = 4.096;
  const auto quiet = sample(p, 1, 1.5, 0, 0), rough = sample(p, 1, 1.5, 0, 0.033);
  CHECK_THAT(quiet.signal, WithinAbs(1.5, 1e-13));
  CHECK_THAT(rough.signal - rough.track, WithinRel(2.5 * 0.01, 1e-10));  // 1 % of where the wiper stands
  CHECK_THAT(angle_step(with(p), 1), WithinRel(5 / 4096.0 * 4.096 / 3.3, 1e-14));
  p.reference = 2.048;  // below the feed: the upper part of the track cannot be read
  CHECK(sample(p, 1, 3.9, 0, 0).count == 4095);
}

TEST_CASE("sensor: noise belongs to seed, drive, kind and number of the sample", "[sensor]") {
  const model::Noise noise{1e-3, 7};
  CHECK(noise_of(noise, NoiseOf::angle, 0, 5) == noise_of(noise, NoiseOf::angle, 0, 5));
  CHECK(noise_of(noise, NoiseOf::angle, 0, 5) != noise_of(noise, NoiseOf::angle, 0, 6));
  CHECK(noise_of(noise, NoiseOf::angle, 0, 5) != noise_of(noise, NoiseOf::angle, 1, 5));
  CHECK(noise_of(noise, NoiseOf::angle, 0, 5) != noise_of(noise, NoiseOf::current, 0, 5));
  CHECK(noise_of(noise, NoiseOf::angle, 0, 5) != noise_of({1e-3, 8}, NoiseOf::angle, 0, 5));
  CHECK(noise_of({0, 7}, NoiseOf::angle, 0, 5) == 0);
}

TEST_CASE("sensor: a relative encoder counts its edges from where its power came on", "[sensor]") {
  const model::RelativeEncoder encoder{48};
  const double step = turn / 48 / 10;
  EncoderMemory memory = power_on(encoder, 10, 0);
  CHECK(sample(encoder, 10, 2.5 * step, memory).count == 2);
  CHECK(sample(encoder, 10, -0.5 * step, memory).count == -1);
  memory = power_on(encoder, 10, 100.5 * step);
  const auto s = sample(encoder, 10, 103.5 * step, memory);
  CHECK(s.count == 3);
  CHECK_THAT(s.reading, WithinRel(3.5 * step, 1e-12));
  CHECK_THAT(s.track - s.rotor, WithinRel(-100 * step, 1e-12));
}

TEST_CASE("sensor: an absolute encoder follows whole turns while it has power and then knows one turn only", "[sensor]") {
  const model::AbsoluteEncoder encoder{10, std::numbers::pi};
  const double step = turn / 1024;
  EncoderMemory memory = power_on(encoder, 1, 0);
  for (double angle = 0; angle > -20; angle -= 0.4) CHECK_THAT(sample(encoder, 1, angle, memory).reading, WithinAbs(angle, step / 2 * 1.001));
  for (double angle = -20; angle < 20; angle += 0.4) CHECK_THAT(sample(encoder, 1, angle, memory).reading, WithinAbs(angle, step / 2 * 1.001));
  memory = power_on(encoder, 1, 2 * turn + 1);
  const auto s = sample(encoder, 1, 2 * turn + 1, memory);
  CHECK_THAT(s.reading, WithinAbs(1, step / 2 * 1.001));
  CHECK_THAT(s.track, WithinAbs(1, 1e-12));
}

TEST_CASE("sensor: an absolute encoder that turns more than half a turn between two samples loses a turn", "[sensor]") {
  const model::AbsoluteEncoder encoder{10, 0.1};
  EncoderMemory memory = power_on(encoder, 1, 0);
  CHECK_THAT(sample(encoder, 1, 0.6 * turn, memory).reading, WithinAbs(-0.4 * turn, 0.01));
}

TEST_CASE("sensor: the current's low-pass is exact for a step, a ramp and any cutting of them", "[sensor]") {
  const double tau = 2e-3;
  CHECK_THAT(low_pass(0, 1, 1, 3e-3, tau), WithinRel(1 - std::exp(-1.5), 1e-14));
  // A ramp of slope s from rest: s (t − τ (1 − exp(−t/τ))).
  CHECK_THAT(low_pass(0, 0, 0.5, 5e-3, tau), WithinRel(100 * (5e-3 - tau * (1 - std::exp(-2.5))), 1e-13));
  const double half = low_pass(0.2, 0, 0.25, 2.5e-3, tau);
  CHECK_THAT(low_pass(half, 0.25, 0.5, 2.5e-3, tau), WithinRel(low_pass(0.2, 0, 0.5, 5e-3, tau), 1e-13));
  CHECK(low_pass(0.2, 0, 0.5, 5e-3, 0) == 0.5);
  CHECK(low_pass(0.2, 0.1, 0.5, 0, tau) == 0.2);
}

TEST_CASE("sensor: a current reading has gain, offset, noise and steps, and ends at its range", "[sensor]") {
  model::CurrentSense sense;
  sense.low = 0;
  sense.high = 1.024;
  sense.bits = 10;
  sense.gain_error = 0.02;
  sense.offset = 0.003;
  CHECK_THAT(sample(sense, 0.5, 0.001).reading, WithinAbs(0.51 + 0.003 + 0.001, 0.0005 * 1.001));
  CHECK(sample(sense, 2, 0).count == 1023);
  CHECK(sample(sense, -2, 0).count == 0);
}
