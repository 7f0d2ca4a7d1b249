#include "simulation/tip_estimate.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "simulation/monotone_cubic.h"

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
  last_angle_error_.resize(system.hinges.size());
  for (Moment* moment : {&now_moment_, &now_rate_, &before_moment_, &before_rate_, &between_}) moment->angle.resize(system.hinges.size());

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

void TipEstimate::see(const Stage& stage, const State& state, Moment& moment, Moment& rate) const {
  const auto link = at(system_.link_of_body[at(tip_.body)]);
  moment.tip = stage.kinematics.pose[link] * tip_.at;
  rate.tip = stage.kinematics.velocity[link].at(moment.tip);
  const Shaft& s = system_.shafts[drive_];
  moment.shaft = state.q[s.q_output];
  rate.shaft = state.v[s.v_output];
  double way = 0, way_rate = 0;
  for (double l : stage.path[cord_].length) way += l;
  for (const geometry::Pull& pull : stage.path[cord_].pulls)
    way_rate += pull.direction.dot(stage.kinematics.velocity[at(system_.link_of_body[at(pull.body)])].at(pull.point));
  moment.drawn = firmware_.start_way() - way;
  rate.drawn = -way_rate;
  for (std::size_t i = 0; i < moment.angle.size(); ++i) {
    moment.angle[i] = state.q[system_.tree.links[at(system_.hinges[i].link)].q];
    rate.angle[i] = state.v[system_.hinges[i].v];
  }
}

void TipEstimate::interpolate(double share, double step) {
  const auto here = [&](double a, double rate_a, double b, double rate_b) {
    return monotone_cubic(a, step * rate_a, b, step * rate_b, share);
  };
  const Moment &a = before_moment_, &ra = before_rate_, &b = now_moment_, &rb = now_rate_;
  for (int axis = 0; axis < 3; ++axis) between_.tip[axis] = here(a.tip[axis], ra.tip[axis], b.tip[axis], rb.tip[axis]);
  between_.shaft = here(a.shaft, ra.shaft, b.shaft, rb.shaft);
  between_.drawn = here(a.drawn, ra.drawn, b.drawn, rb.drawn);
  for (std::size_t i = 0; i < between_.angle.size(); ++i)
    between_.angle[i] = here(a.angle[i], ra.angle[i], b.angle[i], rb.angle[i]);
}

TipEstimate::Parts TipEstimate::parts(const AngleReadout& sensed, const Moment& moment) const {
  const drive::AngleSample& sample = sensed.sample;
  const Parts without = {
      firmware_.tip(drawn(sample.signal)),
      firmware_.tip(drawn(sample.track)),
      firmware_.tip(drawn(sample.rotor)),
      firmware_.tip(drawn(sensed.shaft)),
      firmware_.tip(drawn(moment.shaft)),
      firmware_.tip(moment.drawn),
      weighed_.tip(moment.drawn),
      moment.tip};
  Parts parts;
  Vector3d before = firmware_.tip(drawn(sample.reading));
  for (std::size_t i = 0; i < tip_cause_count; ++i) {
    parts[i] = before - without[i];
    before = without[i];
  }
  return parts;
}

void TipEstimate::add_errors(const DueReadout& due) {
  const double passed = due.time - last_.time;
  const Parts late = parts(last_.readout, between_), fresh = parts(due.readout, between_);
  Vector3d first = Vector3d::Zero(), last = Vector3d::Zero(), next = Vector3d::Zero();
  for (std::size_t i = 0; i < tip_cause_count; ++i) {
    part_[i].add_line(last_parts_[i], late[i], passed);
    part_[i].add_line(fresh[i], fresh[i], 0);
    first += last_parts_[i];
    last += late[i];
    next += fresh[i];
  }
  whole_.add_line(first, last, passed);
  whole_.add_line(next, next, 0);
  const double told_before = drawn(last_.readout.sample.reading), told = drawn(due.readout.sample.reading);
  for (std::size_t i = 0; i < angle_error_.size(); ++i) {
    const double error = firmware_.angle(told, i) - between_.angle[i];
    angle_error_[i].add_line(last_angle_error_[i], firmware_.angle(told_before, i) - between_.angle[i], passed);
    angle_error_[i].add_line(error, error, 0);
    last_angle_error_[i] = error;
  }
  last_ = due;
  last_parts_ = fresh;
}

void TipEstimate::tell(const AngleReadout& sensed) {
  const double told = drawn(sensed.sample.reading);
  now_.told = firmware_.tip(told);
  now_.truth = now_moment_.tip;
  const Vector3d direction = firmware_.tip_slope(now_moment_.drawn).normalized();
  const Parts wrong = parts(sensed, now_moment_);
  for (std::size_t i = 0; i < tip_cause_count; ++i) now_.along[i] = wrong[i].dot(direction);
  for (std::size_t i = 0; i < now_.angle.size(); ++i) now_.angle[i] = firmware_.angle(told, i);
}

void TipEstimate::begin(const Stage& stage, const State& state, const AngleReadout& sensed) {
  see(stage, state, now_moment_, now_rate_);
  tell(sensed);
  time_ = state.time;
  between_ = now_moment_;
  last_ = {state.time, sensed};
  last_parts_ = parts(sensed, between_);
  for (std::size_t i = 0; i < last_angle_error_.size(); ++i) last_angle_error_[i] = now_.angle[i] - between_.angle[i];
  add_errors(last_);
}

void TipEstimate::look(const Stage& stage, const State& state, const AngleReadout& sensed, const std::vector<DueReadout>& due) {
  std::swap(before_moment_, now_moment_);
  std::swap(before_rate_, now_rate_);
  see(stage, state, now_moment_, now_rate_);
  const double step = state.time - time_;
  for (const DueReadout& one : due) {
    interpolate(step > 0 ? (one.time - time_) / step : 1, step);
    add_errors(one);
  }
  time_ = state.time;
  tell(sensed);
  watch_reversal(now_moment_.shaft, now_.truth, firmware_.tip_slope(now_moment_.drawn).normalized());
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

bool tells_tip(const System& system, std::size_t drive) {
  const std::size_t cord = cord_of(system, drive);
  if (!system.model().drives[drive].sensor || cord == system.cords.size()) return false;
  for (int s = 0; s < system.cords[cord].path.span_count(); ++s)
    if (rides_on_slide(system.model(), system.cords[cord].path.span_bodies(s).second)) return false;
  const std::vector<std::size_t> moved = hinges_moved_by(system, cord);
  if (moved.empty()) return false;  // tied to the palm: there is no fingertip
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    if (c == cord || system.cords[c].drive < 0) continue;
    for (const std::size_t hinge : hinges_moved_by(system, c))
      if (std::find(moved.begin(), moved.end(), hinge) != moved.end()) return false;
  }
  return true;
}

std::vector<TipEstimate> tip_estimates(const System& system) {
  std::vector<TipEstimate> list;
  for (std::size_t d = 0; d < system.shafts.size(); ++d)
    if (tells_tip(system, d)) list.emplace_back(system, d);
  return list;
}

}  // namespace sinewright::simulation
