#include "summary_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <vector>

#include "quantity/quantity.h"
#include "simulation/observe.h"

namespace sinewright::tool {

namespace {

// Numbers of the summary by key.
class Lookup {
 public:
  explicit Lookup(const std::vector<simulation::SummaryValue>& summary) {
    for (const auto& value : summary) values_[value.key] = value.value;
  }
  double operator()(const std::string& key) const {
    const auto found = values_.find(key);
    return found == values_.end() ? std::nan("") : found->second;
  }

 private:
  std::map<std::string, double> values_;
};

std::string percent(double share) { return std::isnan(share) ? "—" : fmt::format("{:.1f} %", 100 * share); }

}  // namespace

std::string show(double si, const char*, const char* shown_unit) {
  if (std::isnan(si)) return "—";
  return fmt::format("{:.4g} {}", from_si(si, shown_unit), shown_unit);
}

std::string summary_text(const simulation::System& system, const simulation::RunResult& result) {
  const auto& m = system.model();
  const Lookup of(result.summary);
  std::string text;
  const auto line = [&](const std::string& label, const std::string& value) {
    text += fmt::format("  {:<36}{}\n", label, value);
  };
  const auto heading = [&](const std::string& title) { text += fmt::format("\n{}\n", title); };

  text += fmt::format("{}: {}, {:g} s simulated\n", system.scenario.name, m.name, result.end.time);
  if (!result.complete) text += fmt::format("STOPPED EARLY: {}\n", result.outcome);
  for (const auto& event : result.events)
    if (event.kind == "caution") text += fmt::format("CAUTION, from {:.4g} s on: {} {}\n", event.time, event.subject, event.detail);

  heading("Closing");
  line("closing time", show(of("closing_time"), "s", "s"));
  line("first contact after", show(of("first_contact_time"), "s", "s"));
  std::vector<std::pair<double, std::string>> order;
  for (const auto& joint : system.hinges) {
    const std::string& name = m.bodies[static_cast<std::size_t>(joint.body)].hinge->name;
    const double t = of("settling_time." + name);
    if (!std::isnan(t)) order.emplace_back(t, name);
  }
  std::sort(order.begin(), order.end());
  std::string names;
  for (const auto& [time, name] : order) names += fmt::format("{}{} ({:.3f} s)", names.empty() ? "" : ", ", name, time);
  line("order of closing (95 % of angle)", names.empty() ? "—" : names);
  for (const auto& joint : system.hinges) {
    const std::string& name = m.bodies[static_cast<std::size_t>(joint.body)].hinge->name;
    line(name + " closed / at the end",
         fmt::format("{} / {}", show(of("joint_angle." + name), "rad", "deg"), show(of("final_angle." + name), "rad", "deg")));
  }

  if (!system.contacts.empty()) {
    heading("Grip");
    line("sum of normal forces, closed", show(of("grip_force"), "N", "N"));
    line("  peak / at the end of the run", fmt::format("{} / {}", show(of("grip_force_peak"), "N", "N"), show(of("held_force"), "N", "N")));
    for (const auto& contact : system.contacts)
      line("  " + contact.name, fmt::format("{} closed, {} at the end, first touch after {}",
                                            show(of("grip_force." + contact.name), "N", "N"),
                                            show(of("held_force." + contact.name), "N", "N"),
                                            show(of("contact_time." + contact.name), "s", "s")));
    for (const auto& object : system.scenario.objects) {
      line("split-cylinder reading, " + object.name, show(of("split_force." + object.name), "N", "N"));
      if (!std::holds_alternative<model::HeldFixed>(object.hold))
        line("shift of " + object.name, fmt::format("{}, speed at the end {}, {:g} contacts", show(of("object_shift." + object.name), "m", "mm"),
                                                    show(of("object_speed." + object.name), "m/s", "mm/s"), of("object_contacts." + object.name)));
    }
  }

  heading("Cords (closed)");
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const std::string& name = m.cords[static_cast<std::size_t>(system.cords[c].cord)].name;
    line(name + " tension, first / last span", fmt::format("{} / {}", show(of("tension." + name), "N", "N"), show(of("tip_tension." + name), "N", "N")));
    line("  peak tension / peak slack", fmt::format("{} / {}", show(of("peak_tension." + name), "N", "N"), show(of("peak_slack." + name), "m", "mm")));
    if (of("stretch_beyond_law." + name) > 0)
      line("  CAUTION", fmt::format("stretched by {:.3g} beyond the data of its law", of("stretch_beyond_law." + name)));
  }

  for (const auto& drive : m.drives) {
    heading("Drive " + drive.name);
    line("current closed / peak", fmt::format("{} / {}", show(of("current." + drive.name), "A", "A"), show(of("peak_current." + drive.name), "A", "A")));
    line("load on the shaft, closed", fmt::format("{}{}", show(of("shaft_torque." + drive.name), "N m", "N·mm"),
                                                   of("stalled." + drive.name) > 0 ? ", standing still" : ", turning"));
    line("shaft angle closed", show(of("shaft_angle." + drive.name), "rad", "deg"));
    line("shaft turn while power was off", show(of("off_turn." + drive.name), "rad", "deg"));
    line("highest winding / housing temp.", fmt::format("{} / {}", show(of("winding_temperature." + drive.name), "K", "degC"),
                                                         show(of("housing_temperature." + drive.name), "K", "degC")));
  }

  if (!std::isnan(of("release_time")) || !std::isnan(of("remaining_flexion"))) {
    heading("After closing");
    line("95 % open after", show(of("release_time"), "s", "s"));
    line("flexion left at the end", percent(of("remaining_flexion")));
    for (const auto& joint : system.hinges) {
      const std::string& name = m.bodies[static_cast<std::size_t>(joint.body)].hinge->name;
      const double ratio = of("opening_ratio." + name);
      line("least return / friction torque " + name, std::isnan(ratio) ? "—" : fmt::format("{:.3g}", ratio));
    }
  }

  heading("Where the shaft's work went while closing");
  line("shaft work", show(of("shaft_work"), "J", "mJ"));
  line("brushes and bearings", percent(of("loss_share.motor_drag")));
  line("gearhead", percent(of("loss_share.gear")));
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const std::string& cord = m.cords[static_cast<std::size_t>(system.cords[c].cord)].name;
    double sum = 0;
    std::string detail;
    for (const std::string& node : simulation::node_names(system, c)) {
      const double share = of(fmt::format("loss_share.{}.{}", cord, node));
      sum += share;
      if (share >= 5e-4) detail += fmt::format("{}{} {}", detail.empty() ? "  (" : ", ", node, percent(share));
    }
    line("bends of " + cord, percent(sum) + (detail.empty() ? "" : detail + ")"));
  }
  line("inside the cords", percent(of("loss_share.cord_hysteresis")));
  for (const auto& joint : system.hinges) {
    const std::string& name = m.bodies[static_cast<std::size_t>(joint.body)].hinge->name;
    line("pin and washers of " + name, percent(of("loss_share." + name)));
  }
  line("contacts", percent(of("loss_share.contact")));

  heading("Check");
  line("energy residual", fmt::format("{:.3g} % of the energy turned over", 100 * of("energy_residual")));
  line("steps", fmt::format("{} ({} of second order, {} rejected)", result.counters.steps, result.counters.second_order,
                            result.counters.rejected + result.counters.unsolved));
  if (result.counters.held > 0)
    line("steps without a solution of their own", fmt::format("{} (friction limits of the step before; see docs/numerics.md)", result.counters.held));
  if (!result.verdicts.empty()) {
    heading("Requirements");
    for (const auto& verdict : result.verdicts) {
      const auto value = std::find_if(result.summary.begin(), result.summary.end(), [&](const auto& v) { return v.key == verdict.quantity; });
      const std::string unit = value->unit == "1" ? "" : value->unit == "K" ? " degC" : " " + value->unit;
      const double shown = value->unit == "K" ? from_si(verdict.value, "degC") : verdict.value;
      text += fmt::format("  {:<7}{} {}: {}\n", verdict.met ? "met" : "FAILED", verdict.quantity, verdict.demand,
                          std::isnan(shown) ? "did not occur" : fmt::format("{:.5g}{}", shown, unit));
    }
  }
  text += "\nDesign prediction, not certification. Moving fingers pinch, stretched cords store energy, stalled motors get hot.\n";
  return text;
}

std::string summary_json(const simulation::System& system, const simulation::RunResult& result, const std::string& record) {
  nlohmann::ordered_json json;
  json["scenario"] = system.scenario.name;
  json["model"] = system.model().name;
  json["engine"] = "sinewright " SINEWRIGHT_VERSION;
  json["record"] = record;
  json["outcome"] = result.outcome;
  json["simulated"] = {{"value", result.end.time}, {"unit", "s"}};
  auto& values = json["summary"];
  for (const auto& value : result.summary) {
    nlohmann::ordered_json entry;
    if (std::isfinite(value.value)) {
      entry["value"] = value.value;
    } else {
      entry["value"] = nullptr;  // did not occur
    }
    entry["unit"] = value.unit;
    values[value.key] = entry;
  }
  json["requirements"] = nlohmann::ordered_json::array();
  for (const auto& verdict : result.verdicts) {
    nlohmann::ordered_json entry;
    entry["quantity"] = verdict.quantity;
    entry["demand"] = verdict.demand;
    entry["met"] = verdict.met;
    json["requirements"].push_back(entry);
  }
  json["events"] = nlohmann::ordered_json::array();
  for (const auto& event : result.events)
    json["events"].push_back({{"time", event.time}, {"kind", event.kind}, {"subject", event.subject}, {"detail", event.detail}});
  return json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace sinewright::tool
