#include "simulation/tip_estimate.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sinewright::simulation {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

// Peak to peak of normal noise: steps below it cannot be told apart (common practice).
constexpr double noise_width = 6.6;

std::size_t cord_of(const System& system, std::size_t drive) {
  for (std::size_t c = 0; c < system.cords.size(); ++c)
    if (system.cords[c].drive == static_cast<int>(drive)) return c;
  return system.cords.size();
}

// Shaft angle at which so much cord is wound in.
double shaft_at(const drive::CordPulley& pulley, double wound) {
  double angle = wound / pulley.radius(0);
  for (int i = 0; i < 20; ++i) angle -= (pulley.wound_length(0, angle) - wound) / pulley.radius(angle);
  return angle;
}

}  // namespace

TipEstimate::TipEstimate(const System& system, std::size_t drive)
    : system_(system), drive_(drive), cord_(cord_of(system, drive)), firmware_(system, cord_, false), weighed_(system, cord_, true),
      tip_(tip_place(system, cord_)), lost_turn_(std::numeric_limits<double>::quiet_NaN()) {
  const model::Cord& cord = system.model().cords[at(system.cords[cord_].cord)];
  slack_ = cord.pretension > 0 ? 0 : cord.slack;
  now_.angle.resize(system.hinges.size());
  angle_error_.resize(system.hinges.size());

  const model::Drive& data = system.model().drives[drive];
  const double turns = sensor_turns(data);
  const double step = std::max(drive::angle_step(*data.sensor, turns), noise_width * drive::angle_noise(*data.sensor, turns));
  const double play = 2 * sensor_half_play(data);
  const drive::CordPulley& pulley = *system.cords[cord_].pulley;
  steps_.smallest = steps_.smallest_reversed = std::numeric_limits<double>::infinity();
  const auto& table = firmware_.drawn();
  for (std::size_t i = 1; i < table.size(); ++i) {
    const double middle = 0.5 * (table[i - 1] + table[i]);
    const double travel = firmware_.tip_slope(middle).norm() * pulley.radius(shaft_at(pulley, middle + slack_));
    steps_.smallest = std::min(steps_.smallest, travel * step);
    steps_.largest = std::max(steps_.largest, travel * step);
    steps_.smallest_reversed = std::min(steps_.smallest_reversed, travel * (step + play));
    steps_.largest_reversed = std::max(steps_.largest_reversed, travel * (step + play));
  }
}

double TipEstimate::drawn(double shaft) const { return system_.cords[cord_].pulley->wound_length(0, shaft) - slack_; }

double TipEstimate::closed_shaft() const { return shaft_at(*system_.cords[cord_].pulley, firmware_.end() + slack_); }

void TipEstimate::look(const Stage& stage, const State& state, const AngleReadout& sensed, double step) {
  const drive::AngleSample& sample = sensed.sample;
  double way = 0;
  for (double l : stage.path[cord_].length) way += l;
  const double drawn_in = firmware_.start_way() - way;
  const double told = drawn(sample.reading);
  now_.told = firmware_.tip(told);
  now_.truth = stage.kinematics.pose[at(system_.link_of_body[at(tip_.body)])] * tip_.at;
  const std::array<Vector3d, tip_cause_count> without = {
      firmware_.tip(drawn(sample.signal)),
      firmware_.tip(drawn(sample.track)),
      firmware_.tip(drawn(sample.rotor)),
      firmware_.tip(drawn(sensed.shaft)),
      firmware_.tip(drawn(state.q[system_.shafts[drive_].q_output])),
      firmware_.tip(drawn_in),
      weighed_.tip(drawn_in),
      now_.truth};
  const Vector3d direction = firmware_.tip_slope(drawn_in).normalized();
  watch_reversal(state.q[system_.shafts[drive_].q_output], now_.truth, direction);
  Vector3d before = now_.told;
  for (std::size_t i = 0; i < tip_cause_count; ++i) {
    const Vector3d part = before - without[i];
    now_.along[i] = part.dot(direction);
    part_[i].add(part.norm(), step);
    before = without[i];
  }
  whole_.add((now_.told - now_.truth).norm(), step);
  for (std::size_t i = 0; i < now_.angle.size(); ++i) {
    now_.angle[i] = firmware_.angle(told, i);
    angle_error_[i].add(now_.angle[i] - state.q[system_.tree.links[at(system_.hinges[i].link)].q], step);
  }
}

void TipEstimate::watch_reversal(double shaft, const Vector3d& tip, const Vector3d& direction) {
  if (way_ == 0) way_ = shaft > 0 ? 1 : shaft < 0 ? -1 : 0;
  if (way_ * (shaft - farthest_) >= 0) {
    farthest_ = shaft;
    tip_there_ = tip;
    return;
  }
  if (-way_ * (tip - tip_there_).dot(direction) < steps_.smallest) return;
  const double lost = std::abs(shaft - farthest_);
  if (!(lost_turn_ >= lost)) lost_turn_ = lost;
  way_ = -way_;
  farthest_ = shaft;
  tip_there_ = tip;
}

std::vector<TipEstimate> tip_estimates(const System& system) {
  std::vector<TipEstimate> list;
  for (std::size_t d = 0; d < system.shafts.size(); ++d)
    if (system.model().drives[d].sensor && cord_of(system, d) < system.cords.size()) list.emplace_back(system, d);
  return list;
}

}  // namespace sinewright::simulation
