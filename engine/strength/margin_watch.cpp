#include "strength/margin_watch.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "quantity/invalid_input.h"
#include "quantity/quantity.h"
#include "strength/argument.h"
#include "strength/margin.h"

namespace sinewright::strength {

namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
const std::string prefix = "margin.";

Margin margin_of(const PartCheck& check, double size, const PartLoad& load) {
  return {{}, check.capacity(size) * load.share, check.demand(size, load.value), {}};
}

// A value as it is read: torques in N·mm, temperatures in °C, lengths in µm (those that load a part are interferences).
std::string shown(double si, const std::string& unit) {
  if (unit == "K") return fmt::format("{:.4g} degC", from_si(si, "degC"));
  if (unit == "N m") return fmt::format("{:.4g} N·mm", 1e3 * si);
  if (unit == "m") return fmt::format("{:.4g} µm", 1e6 * si);
  return unit == "1" ? fmt::format("{:.4g}", si) : fmt::format("{:.4g} {}", si, unit);
}

void require_checked(const model::Scenario& scenario, const PartChecks& parts) {
  for (const model::Requirement& r : scenario.requirements)
    for (const simulation::NotChecked& unknown : parts.not_checked) {
      if (r.quantity != prefix + unknown.name) continue;
      const auto place = r.place.line > 0 ? fmt::format("{}:{}:{}: ", r.place.file, r.place.line, r.place.column) : std::string();
      throw InvalidInput(fmt::format("{}require.quantity = '{}' cannot be checked, its part is not described\n  needed: {}",
                                     place, r.quantity, fmt::join(unknown.missing, ", ")));
    }
}

}  // namespace

MarginWatch::MarginWatch(const simulation::System& system) : system_(system), parts_(part_checks(system)) {
  require_checked(system.scenario, parts_);
  Moment moment;
  moment.posture.resize(system.hinges.size());
  moment.outside.resize(system.scenario.loads.size());
  worst_.assign(parts_.checks.size(), moment);
  lost_.assign(parts_.checks.size(), moment);
  now_.assign(parts_.checks.size(), std::numeric_limits<double>::infinity());
}

void MarginWatch::note(Moment& moment, double ratio, const PartLoad& load, const simulation::State& state) const {
  moment.any = true;
  moment.ratio = ratio;
  moment.load = load;
  moment.time = state.time;
  for (std::size_t j = 0; j < moment.posture.size(); ++j)
    moment.posture[j] = state.q[system_.tree.links[static_cast<std::size_t>(system_.hinges[j].link)].q];
  for (std::size_t i = 0; i < moment.outside.size(); ++i)
    moment.outside[i] = simulation::value_at(system_.scenario.loads[i].force, state.time);
}

void MarginWatch::look(const simulation::Stage& stage, const simulation::State& state) {
  for (std::size_t i = 0; i < parts_.checks.size(); ++i) {
    const PartCheck& check = parts_.checks[i];
    const PartLoad load = check.load(stage, state);
    const double ratio = now_[i] = margin_of(check, check.size, load).ratio();
    if (!worst_[i].any || ratio < worst_[i].ratio) note(worst_[i], ratio, load, state);
    if (ratio < 1 && !lost_[i].any) note(lost_[i], ratio, load, state);
  }
}

std::string MarginWatch::load_text(const PartCheck& check, const Moment& moment) const {
  std::string text = fmt::format("{} {}", check.load_name, shown(moment.load.value, check.load_unit));
  if (!check.places.empty()) text += " at " + check.places[static_cast<std::size_t>(moment.load.place)];
  for (std::size_t i = 0; i < moment.outside.size(); ++i)
    if (moment.outside[i] != 0) text += fmt::format(", {} {:.4g} N", system_.scenario.loads[i].name, moment.outside[i]);
  return text;
}

std::vector<std::pair<std::string, std::string>> MarginWatch::names() const {
  std::vector<std::pair<std::string, std::string>> names;
  for (const PartCheck& check : parts_.checks) names.emplace_back(check.name, check.check);
  return names;
}

simulation::Margins MarginWatch::report() const {
  simulation::Margins report;
  report.not_checked = parts_.not_checked;
  report.cautions = parts_.cautions;
  for (const auto& joint : system_.hinges)
    report.joints.push_back(system_.model().bodies[static_cast<std::size_t>(joint.body)].hinge->name);
  for (std::size_t i = 0; i < parts_.checks.size(); ++i) {
    const PartCheck& check = parts_.checks[i];
    const Moment &worst = worst_[i], &lost = lost_[i];
    if (!worst.any) continue;
    const Margin margin = margin_of(check, check.size, worst.load);
    report.values.push_back({check.name, check.check, margin.capacity, margin.demand, check.unit, worst.ratio, worst.time,
                             load_text(check, worst), lost.any ? lost.time : nan,
                             lost.any ? load_text(check, lost) : std::string(), worst.posture});
  }
  std::stable_sort(report.values.begin(), report.values.end(), [](const auto& a, const auto& b) { return a.ratio < b.ratio; });
  return report;
}

void MarginWatch::add_to(std::vector<simulation::SummaryValue>& summary) const {
  double least = nan;
  for (std::size_t i = 0; i < parts_.checks.size(); ++i) {
    if (!worst_[i].any) continue;
    summary.push_back(
        {prefix + parts_.checks[i].name, worst_[i].ratio, "1", "least capacity / demand: " + parts_.checks[i].check});
    if (!(least <= worst_[i].ratio)) least = worst_[i].ratio;
  }
  summary.push_back({prefix + "least", least, "1", "the smallest margin of those that are checked"});
}

std::vector<NeededSize> MarginWatch::sizes_for(double ratio) const {
  require_positive(ratio, "margin asked for", "");
  std::vector<NeededSize> sizes;
  for (std::size_t i = 0; i < parts_.checks.size(); ++i) {
    const PartCheck& check = parts_.checks[i];
    if (check.size_key.empty() || !worst_[i].any) continue;
    const auto reaches = [&](double size) {
      try {
        return margin_of(check, size, worst_[i].load).ratio() >= ratio;
      } catch (const InvalidInput&) {
        return false;  // too small for the law: a lug no wider than its hole, a wall that is not there
      }
    };
    // Every law here gains with its dimension, so the smallest one that will do is found by halving.
    constexpr double most = 100;
    double low = check.size / most, high = check.size * most;
    NeededSize needed{check.name, check.size_key, check.size_unit, check.size, nan};
    if (reaches(high)) {
      while (high - low > 1e-9 * high) {
        const double middle = 0.5 * (low + high);
        (reaches(middle) ? high : low) = middle;
      }
      needed.needed = high;
    }
    sizes.push_back(std::move(needed));
  }
  return sizes;
}

void attach(MarginWatch& watch, simulation::RunListener& listener) {
  listener.step = [&watch, before = std::move(listener.step)](const simulation::Stage& stage, const simulation::State& state) {
    watch.look(stage, state);
    return before && before(stage, state);
  };
  listener.summary = [&watch, before = std::move(listener.summary)](std::vector<simulation::SummaryValue>& summary) {
    if (before) before(summary);
    watch.add_to(summary);
  };
}

}  // namespace sinewright::strength
