#include "simulation/sensing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "drive/noise.h"
#include "drive/play.h"
#include "simulation/monotone_cubic.h"

namespace sinewright::simulation {

namespace {

double seat_ratio(const model::Drive& drive) {
  return drive.sensor->seat == model::Sensor::Seat::rotor ? drive.gearhead.ratio : 1;
}

}  // namespace

double sensor_turns(const model::Drive& drive) { return drive.sensor->turns * seat_ratio(drive); }
double sensor_half_play(const model::Drive& drive) { return drive::half_play(drive.sensor->fit) / seat_ratio(drive); }

void ErrorSize::add(double error, double by) {
  worst = std::max(worst, std::abs(error));
  squares += by * error * error;
  weight += by;
}

void ErrorSize::add_line(double first, double last, double by) {
  worst = std::max({worst, std::abs(first), std::abs(last)});
  squares += by * (first * first + first * last + last * last) / 3;
  weight += by;
}

void ErrorSize::add_line(const Vector3d& first, const Vector3d& last, double by) {
  worst = std::max({worst, first.norm(), last.norm()});
  squares += by * (first.squaredNorm() + first.dot(last) + last.squaredNorm()) / 3;
  weight += by;
}

double ErrorSize::rms() const { return weight > 0 ? std::sqrt(squares / weight) : 0; }

Sensing::Sensing(const System& system)
    : system_(system),
      before_(system.shafts.size()),
      sensor_rotor_(system.shafts.size()),
      filtered_(system.shafts.size()),
      memory_(system.shafts.size()),
      fault_(system.shafts.size()),
      next_angle_(system.shafts.size()),
      next_current_(system.shafts.size()),
      angles_(system.shafts.size()),
      due_(system.shafts.size()),
      currents_(system.shafts.size()),
      angle_errors_(system.shafts.size()),
      current_errors_(system.shafts.size()) {}

Sensing::Before Sensing::look(std::size_t d, const Stage& stage, const State& state) const {
  const Shaft& s = system_.shafts[d];
  return {state.q[s.q_output], state.v[s.v_output], state.q[s.q_rotor], state.v[s.v_rotor], stage.shaft[d].electric.current};
}

void Sensing::set_fault(std::size_t d, const SensorFault& fault) {
  if (fault_[d] == fault) return;
  const auto& sensor = system_.model().drives[d].sensor;
  const auto* relative = sensor ? std::get_if<model::RelativeEncoder>(&sensor->kind) : nullptr;
  if (relative && fault_[d].kind != SensorFault::Kind::none)
    memory_[d].zero += drive::sample(*relative, sensor_turns(system_.model().drives[d]), sensor_rotor_[d], memory_[d]).count - angles_[d].sample.count;
  fault_[d] = fault;
}

double Sensing::forced_count(std::size_t d) const {
  const model::Drive& drive = system_.model().drives[d];
  const double counts = drive::counts(*drive.sensor);
  switch (fault_[d].kind) {
    case SensorFault::Kind::low: return 0;
    case SensorFault::Kind::high: return counts - 1;
    case SensorFault::Kind::floating:
      return std::floor(counts * drive::random_share(drive::seed_of(*drive.sensor), drive::NoiseOf::floating_angle, d, next_angle_[d]));
    default: break;
  }
  return fault_[d].reading ? drive::count_of(*drive.sensor, sensor_turns(drive), *fault_[d].reading) : angles_[d].sample.count;
}

void Sensing::take_angle(std::size_t d, double time, double shaft, double sensor_rotor) {
  const model::Drive& drive = system_.model().drives[d];
  const double turns = sensor_turns(drive);
  AngleReadout& now = angles_[d];
  now.time = time;
  now.shaft = shaft;
  now.fresh = true;
  if (fault_[d].kind != SensorFault::Kind::none) {
    now.sample = drive::sample_of_count(*drive.sensor, turns, sensor_rotor, forced_count(d), memory_[d]);
  } else if (const auto* p = std::get_if<model::Potentiometer>(&drive.sensor->kind)) {
    const double noise = drive::noise_of(p->noise, drive::NoiseOf::angle, d, next_angle_[d]);
    const double ripple = p->ripple.amplitude * std::sin(2 * std::numbers::pi * p->ripple.frequency * time);
    now.sample = drive::sample(*p, turns, sensor_rotor, noise, ripple);
  } else if (const auto* relative = std::get_if<model::RelativeEncoder>(&drive.sensor->kind)) {
    now.sample = drive::sample(*relative, turns, sensor_rotor, memory_[d]);
  } else {
    now.sample = drive::sample(std::get<model::AbsoluteEncoder>(drive.sensor->kind), turns, sensor_rotor, memory_[d]);
  }
  ++next_angle_[d];
  const drive::AngleSample& sample = now.sample;
  AngleErrors& errors = angle_errors_[d];
  errors.fit.add(sample.rotor - shaft);
  errors.track.add(sample.track - sample.rotor);
  errors.noise.add(sample.signal - sample.track);
  errors.quantisation.add(sample.reading - sample.signal);
  errors.whole.add(sample.reading - shaft);
}

void Sensing::take_current(std::size_t d, double time, double current, double filtered) {
  const model::CurrentSense& sense = *system_.model().drives[d].current_sense;
  const double noise = drive::noise_of(sense.noise, drive::NoiseOf::current, d, next_current_[d]++);
  currents_[d] = {time, current, filtered, drive::sample(sense, filtered, noise)};
  current_errors_[d].add(currents_[d].sample.reading - current);
}

void Sensing::begin(const Stage& stage, const State& state) {
  time_ = state.time;
  for (std::size_t d = 0; d < before_.size(); ++d) {
    const model::Drive& drive = system_.model().drives[d];
    if (drive.sensor) due_[d].reserve(static_cast<std::size_t>(system_.scenario.solver.max_step / drive.sensor->period) + 2);
    const Before now = before_[d] = look(d, stage, state);
    sensor_rotor_[d] = now.rotor;  // in the middle of its play
    filtered_[d] = now.current;
    if (drive.current_sense) take_current(d, state.time, now.current, now.current);
    if (!drive.sensor || drive.sensor->power == model::Sensor::Power::with_drive) continue;
    angles_[d].powered = true;
    if (const auto* absolute = std::get_if<model::AbsoluteEncoder>(&drive.sensor->kind))
      memory_[d] = drive::power_on(*absolute, sensor_turns(drive), sensor_rotor_[d]);
    take_angle(d, state.time, now.output, sensor_rotor_[d]);
    due_[d].push_back({state.time, angles_[d]});
  }
}

void Sensing::advance(const Stage& stage, const State& state, const std::vector<bool>& off) {
  const double h = state.time - time_;
  for (std::size_t d = 0; d < before_.size(); ++d) {
    const model::Drive& drive = system_.model().drives[d];
    const Before from = before_[d], to = look(d, stage, state);
    before_[d] = to;
    due_[d].clear();
    if (drive.sensor) {
      const bool powered = drive.sensor->power == model::Sensor::Power::always || !off[d];
      const double turns = sensor_turns(drive), half = sensor_half_play(drive);
      if (powered && !angles_[d].powered) {
        if (const auto* relative = std::get_if<model::RelativeEncoder>(&drive.sensor->kind))
          memory_[d] = drive::power_on(*relative, turns, sensor_rotor_[d]);
        if (const auto* absolute = std::get_if<model::AbsoluteEncoder>(&drive.sensor->kind))
          memory_[d] = drive::power_on(*absolute, turns, sensor_rotor_[d]);
      }
      angles_[d].powered = powered;
      if (!powered) angles_[d].fresh = false;
      const bool on_rotor = drive.sensor->seat == model::Sensor::Seat::rotor;
      for (;;) {
        const double time = static_cast<double>(next_angle_[d]) * drive.sensor->period;
        if (time > state.time) break;
        if (!powered || time <= time_) {  // the second: time 0 of a sensor that had no power then
          ++next_angle_[d];
          due_[d].push_back({time, angles_[d]});
          continue;
        }
        const double share = (time - time_) / h;
        const double rotor = monotone_cubic(from.rotor, h * from.rotor_speed, to.rotor, h * to.rotor_speed, share);
        const double output = monotone_cubic(from.output, h * from.output_speed, to.output, h * to.output_speed, share);
        sensor_rotor_[d] = drive::play(sensor_rotor_[d], on_rotor ? rotor : output, half);
        take_angle(d, time, output, sensor_rotor_[d]);
        due_[d].push_back({time, angles_[d]});
      }
      sensor_rotor_[d] = drive::play(sensor_rotor_[d], on_rotor ? to.rotor : to.output, half);
    }
    if (drive.current_sense) {
      const double tau = drive.current_sense->time_constant;
      for (;;) {
        const double time = static_cast<double>(next_current_[d]) * drive.current_sense->period;
        if (time > state.time) break;
        const double current = from.current + (time - time_) / h * (to.current - from.current);
        take_current(d, time, current, drive::low_pass(filtered_[d], from.current, current, time - time_, tau));
      }
      filtered_[d] = drive::low_pass(filtered_[d], from.current, to.current, h, tau);
    }
  }
  time_ = state.time;
}

}  // namespace sinewright::simulation
