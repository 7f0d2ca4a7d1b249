#include "simulation/sensor_watch.h"

#include <fmt/format.h>

namespace sinewright::simulation {

SensorWatch::SensorWatch(const System& system) : system_(system), sensing_(system), tips_(tip_estimates(system)) {}

void SensorWatch::begin(const Stage& stage, const State& state) {
  sensing_.begin(stage, state);
  for (TipEstimate& tip : tips_) tip.begin(stage, state, sensing_.angles()[tip.drive()]);
}

void SensorWatch::look(const Stage& stage, const State& state, const std::vector<bool>& off) {
  sensing_.advance(stage, state, off);
  for (TipEstimate& tip : tips_) tip.look(stage, state, sensing_.angles()[tip.drive()], sensing_.due()[tip.drive()]);
}

const TipEstimate* SensorWatch::tip(std::size_t drive) const {
  for (const TipEstimate& tip : tips_)
    if (tip.drive() == drive) return &tip;
  return nullptr;
}

void SensorWatch::add_to(std::vector<SummaryValue>& summary) const {
  const auto& m = system_.model();
  const auto both = [&](const std::string& key, const ErrorSize& error, const char* unit, const std::string& what) {
    summary.push_back({key, error.worst, unit, "largest " + what});
    const auto dot = key.find('.');
    summary.push_back({key.substr(0, dot) + "_rms" + key.substr(dot), error.rms(), unit, "root mean square " + what});
  };
  for (std::size_t d = 0; d < m.drives.size(); ++d) {
    const std::string& name = m.drives[d].name;
    if (m.drives[d].sensor) {
      const AngleErrors& errors = sensing_.angle_errors()[d];
      both("sensor_error." + name, errors.whole, "rad", "difference of the sensor's reading from the shaft angle, over its samples");
      both("sensor_error." + name + ".fit", errors.fit, "rad", "part of it by play and twist between shaft and sensor");
      both("sensor_error." + name + ".track", errors.track, "rad", "part of it by linearity, load, ends of the track, lost zero");
      both("sensor_error." + name + ".noise", errors.noise, "rad", "part of it by noise and ripple");
      both("sensor_error." + name + ".quantisation", errors.quantisation, "rad", "part of it by the converter's steps");
    }
    if (const TipEstimate* tip = this->tip(d)) {
      both("tip_error." + name, tip->whole(), "m", "distance of the fingertip by the sensor from the true one");
      for (std::size_t i = 0; i < tip_cause_count; ++i)
        both(fmt::format("tip_error.{}.{}", name, tip_cause_names[i]), tip->part(static_cast<TipCause>(i)), "m",
             fmt::format("part of it by {}", tip_cause_names[i]));
      for (const std::size_t i : tip->hinges()) {
        const std::string& joint = m.bodies[static_cast<std::size_t>(system_.hinges[i].body)].hinge->name;
        both(fmt::format("angle_error.{}.{}", name, joint), tip->angle_error()[i], "rad",
             "difference of the joint's angle by the sensor from the true one");
      }
      const TipSteps& steps = tip->steps();
      summary.push_back({"tip_step." + name, steps.largest, "m", "fingertip travel for one step of the sensor, largest over free closing"});
      summary.push_back({"tip_step_smallest." + name, steps.smallest, "m", "the same, smallest over free closing"});
      summary.push_back({"tip_step_reversed." + name, steps.largest_reversed, "m",
                         "fingertip travel that the sensor may not notice after the shaft turned round, largest over free closing"});
      summary.push_back({"lost_turn." + name, tip->lost_turn(), "rad",
                         "largest turn of the shaft after a reversal before the fingertip had gone back by the smallest motion told"});
    }
    if (m.drives[d].current_sense)
      both("current_error." + name, sensing_.current_errors()[d], "A", "difference of the current reading from the motor current, over its samples");
  }
}

}  // namespace sinewright::simulation
