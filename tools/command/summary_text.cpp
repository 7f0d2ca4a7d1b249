#include "summary_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <vector>

#include "mesh_text.h"
#include "quantity/quantity.h"
#include "simulation/observe.h"
#include "simulation/summary.h"

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

// Stresses in MPa, torques in N·mm, all else as it is.
std::string shown(double si, const std::string& unit) {
  if (unit == "Pa") return show(si, "Pa", "MPa");
  if (unit == "Pa.m/s") return fmt::format("{:.4g} MPa·m/s", 1e-6 * si);
  if (unit == "N m") return show(si, "N m", "N·mm");
  return unit == "1" ? fmt::format("{:.4g}", si) : fmt::format("{:.4g} {}", si, unit);
}

// Without any demand a margin is infinite; below 0 it was lost before anything was asked (an ambient above the limit).
std::string ratio_text(double ratio) {
  return std::isfinite(ratio) ? fmt::format("{:.3g}", ratio) : ratio > 0 ? "no load" : "lost";
}

std::string margins_text(const simulation::Margins& margins, double asked, const std::vector<strength::NeededSize>& sizes) {
  std::string text;
  if (margins.values.empty()) {
    text += "  what breaks first: unknown, no part is described well enough to be checked\n";
  } else {
    const simulation::MarginValue& first = margins.values.front();
    text += fmt::format("  what breaks first: {}: margin {} at t = {:.4g} s under {}\n", first.check, ratio_text(first.ratio),
                        first.time, first.load);
    std::string posture;
    for (std::size_t j = 0; j < margins.joints.size(); ++j)
      posture += fmt::format("{}{} {:.3g} deg", j ? ", " : "", margins.joints[j], from_si(first.posture[j], "deg"));
    if (!posture.empty()) text += fmt::format("  in the posture {}\n", posture);
    const simulation::MarginValue* gone = nullptr;
    for (const auto& value : margins.values)
      if (!std::isnan(value.lost_at) && (gone == nullptr || value.lost_at < gone->lost_at)) gone = &value;
    if (gone != nullptr)
      text += fmt::format("  first below 1: {}, from t = {:.4g} s on, under {}; what follows in this run would not happen so\n",
                          gone->check, gone->lost_at, gone->lost_load);
    constexpr double plenty = 10;  // such margins are only counted
    text += fmt::format("  {:>7}  {:<48} {:>13} / {:<13}  {}\n", "margin", "of", "capacity", "demand", "at");
    std::size_t large = 0;
    for (const auto& value : margins.values)
      if (&value == &first || value.ratio <= plenty)
        text += fmt::format("  {:>7}  {:<48} {:>13} / {:<13}  {:.4g} s, {}\n", ratio_text(value.ratio), value.check,
                            shown(value.capacity, value.unit), shown(value.demand, value.unit), value.time, value.load);
      else
        ++large;
    if (large > 0) text += fmt::format("  {} more above {:g}; --json, the record and its plot have them\n", large, plenty);
  }
  for (const std::string& caution : margins.cautions) text += fmt::format("  CAUTION  {}\n", caution);
  // Margins that lack the same keys share a line.
  for (std::size_t i = 0; i < margins.not_checked.size();) {
    std::string names;
    std::size_t j = i;
    for (; j < margins.not_checked.size() && margins.not_checked[j].missing == margins.not_checked[i].missing; ++j)
      names += fmt::format("{}{}", j > i ? ", " : "", margins.not_checked[j].name);
    text += fmt::format("  not checked: {}; needs {}\n", names, fmt::join(margins.not_checked[i].missing, ", "));
    i = j;
  }
  if (asked > 0) {
    text += fmt::format("\nSmallest size for a margin of {:g} under this run's loads\n", asked);
    std::size_t enough = 0;
    for (const auto& size : sizes)
      if (size.needed <= size.present) ++enough;
    const auto in_its_unit = [](double value, const std::string& unit) {
      return std::isnan(value) ? std::string("none found") : fmt::format("{:.4g} {}", from_si(value, unit), unit);
    };
    for (const auto& size : sizes)
      if (!(size.needed <= size.present))
        text += fmt::format("  {:<34} {:<44} {:>12}, now {}\n", size.name, size.key, in_its_unit(size.needed, size.unit),
                            in_its_unit(size.present, size.unit));
    text += fmt::format("  {} other sizes are enough\n", enough);
  }
  return text;
}

nlohmann::ordered_json finite_or_null(double value) {
  return std::isfinite(value) ? nlohmann::ordered_json(value) : nlohmann::ordered_json(nullptr);
}

void add_margins(nlohmann::ordered_json& json, const simulation::Margins& margins, double asked,
                 const std::vector<strength::NeededSize>& sizes) {
  json["margins"] = nlohmann::ordered_json::array();
  for (const auto& value : margins.values) {
    nlohmann::ordered_json entry;
    entry["name"] = value.name;
    entry["check"] = value.check;
    entry["ratio"] = finite_or_null(value.ratio);
    entry["capacity"] = value.capacity;
    entry["demand"] = value.demand;
    entry["unit"] = value.unit;
    entry["time"] = value.time;
    entry["load"] = value.load;
    entry["lost_at"] = finite_or_null(value.lost_at);
    entry["lost_load"] = value.lost_load;
    entry["posture"] = nlohmann::ordered_json::object();
    for (std::size_t j = 0; j < margins.joints.size(); ++j) entry["posture"][margins.joints[j]] = value.posture[j];
    json["margins"].push_back(entry);
  }
  json["not_checked"] = nlohmann::ordered_json::array();
  for (const auto& unknown : margins.not_checked)
    json["not_checked"].push_back({{"name", unknown.name}, {"check", unknown.check}, {"missing", unknown.missing}});
  json["cautions"] = margins.cautions;
  if (asked == 0) return;
  json["sizes"] = nlohmann::ordered_json::array();
  for (const auto& size : sizes)
    json["sizes"].push_back({{"margin", size.name}, {"for", asked}, {"key", size.key}, {"present", size.present},
                             {"needed", finite_or_null(size.needed)}, {"unit", size.unit == "mm" ? "m" : size.unit}});
}

// What the sensors said, and what it was wrong by.
std::string sensing_text(const simulation::System& system, const Lookup& of) {
  std::string text;
  const auto largest_and_rms = [&](const std::string& key, const char* unit) {
    const auto dot = key.find('.');
    return fmt::format("{:>9.4g} {:>10.4g}", from_si(of(key), unit), from_si(of(key.substr(0, dot) + "_rms" + key.substr(dot)), unit));
  };
  for (const auto& drive : system.model().drives) {
    const std::string& name = drive.name;
    if (drive.sensor) {
      text += fmt::format("\nSensor of {}: what its reading is wrong by   [deg]  largest        rms\n", name);
      const std::pair<const char*, const char*> rows[] = {{"", "whole"},
                                                          {".fit", "play and twist between shaft and sensor"},
                                                          {".track", "track: linearity, load, ends, lost zero"},
                                                          {".noise", "noise and ripple"},
                                                          {".quantisation", "steps of the converter"}};
      for (const auto& [leaf, words] : rows) text += fmt::format("  {:<46}{}\n", words, largest_and_rms("sensor_error." + name + leaf, "deg"));
      if (!std::isnan(of("tip_error." + name))) {
        text += fmt::format("Fingertip by this reading and free closing     [mm]  largest        rms\n");
        const std::pair<const char*, const char*> parts[] = {{"", "whole: distance from the true fingertip"},
                                                             {".quantisation", "steps of the converter"},
                                                             {".noise", "noise and ripple"},
                                                             {".track", "track: linearity, load, ends, lost zero"},
                                                             {".fit", "play and twist between shaft and sensor"},
                                                             {".age", "age of the sample"},
                                                             {".stretch", "stretch and slack of the cord"},
                                                             {".weight", "weight"},
                                                             {".friction", "friction, contact, momentum, give of the stops"}};
        for (const auto& [leaf, words] : parts) text += fmt::format("  {:<46}{}\n", words, largest_and_rms("tip_error." + name + leaf, "mm"));
        text += fmt::format("  smallest motion of the tip that it can tell: {} to {}; after a reversal up to {}\n",
                            show(of("tip_step_smallest." + name), "m", "mm"), show(of("tip_step." + name), "m", "mm"),
                            show(of("tip_step_reversed." + name), "m", "mm"));
        text += fmt::format("  after a reversal the shaft turned up to {} before the tip followed\n", show(of("lost_turn." + name), "rad", "deg"));
      }
    }
    if (drive.current_sense)
      text += fmt::format("\nCurrent sense of {}: wrong by                [mA]  largest        rms\n  {:<46}{}\n", name, "whole",
                          largest_and_rms("current_error." + name, "mA"));
  }
  return text;
}

std::string percent(double share) { return std::isnan(share) ? "—" : fmt::format("{:.1f} %", 100 * share); }

// How the controllers' moves went, and how often the supply lasts for the like.
std::string control_text(const simulation::System& system, const Lookup& of) {
  std::string text;
  for (const auto& controller : system.scenario.controllers) {
    const std::string& name = system.model().drives[static_cast<std::size_t>(controller.drive)].name;
    text += fmt::format("\nController of {}, a sample every {}\n", name, show(controller.period, "s", "ms"));
    const auto line = [&](const char* label, const std::string& value) { text += fmt::format("  {:<36}{}\n", label, value); };
    const auto* loops = std::get_if<model::Loops>(&controller.program);
    if (!std::holds_alternative<model::HoldRoutine>(controller.program)) {
      line("slowest move settled after", show(of("control_settling." + name), "s", "s"));
      line("overshoot of a move, at most", percent(of("control_overshoot." + name)));
      line("tracking error, largest / rms", fmt::format("{} / {}", show(of("tracking_error." + name), "rad", "deg"), show(of("tracking_error_rms." + name), "rad", "deg")));
      if (loops && loops->force)
        line("cord tension less wanted, end / rms", fmt::format("{} / {}", percent(of("force_error." + name)), show(of("force_error_rms." + name), "N", "N")));
    } else {
      line("current that it keeps at the end", show(of("kept_current." + name), "A", "mA"));
      line("slips seen and tightened", fmt::format("{:g}", of("tightened." + name)));
    }
    if (controller.stall || controller.heat) {
      const double trip = of("trip_time." + name);
      line("a guard switched off at", std::isnan(trip) ? "never" : show(trip, "s", "s"));
      if (!std::isnan(trip)) line("from rest under current to safe", show(of("safe_time." + name), "s", "s"));
    }
  }
  for (const auto& supply : system.model().supplies)
    if (supply.charge > 0)
      text += fmt::format("\nSupply {}\n  {:<36}{}\n  {:<36}{:.4g}\n  {:<36}{:.4g}, {} each\n", supply.name, "charge used", show(of("charge." + supply.name), "A.s", "mA·h"),
                          "runs like this from one charge", of("runs_per_charge." + supply.name), "grasps from one charge", of("grasps_per_charge." + supply.name),
                          show(of("energy_per_grasp"), "J", "J"));
  return text;
}

}  // namespace

std::string show(double si, const char*, const char* shown_unit) {
  if (std::isnan(si)) return "—";
  return fmt::format("{:.4g} {}", from_si(si, shown_unit), shown_unit);
}

std::string summary_text(const simulation::System& system, const simulation::RunResult& result,
                         const simulation::Margins& margins, double asked, const std::vector<strength::NeededSize>& sizes) {
  const auto& m = system.model();
  const Lookup of(result.summary);
  std::string text;
  const auto line = [&](const std::string& label, const std::string& value) {
    text += fmt::format("  {:<35} {}\n", label, value);
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
  for (const auto& joint : system.slides) {
    const std::string& name = m.bodies[static_cast<std::size_t>(joint.body)].slide->name;
    line(name + " closed / at the end",
         fmt::format("{} / {}", show(of("slide_position." + name), "m", "mm"), show(of("final_position." + name), "m", "mm")));
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
      if (std::holds_alternative<model::HeldFree>(object.hold))
        line("out of balance, " + object.name, fmt::format("{} and {} at the end", show(of("net_force." + object.name), "N", "N"),
                                                           show(of("net_moment." + object.name), "N.m", "N·mm")));
      if (std::holds_alternative<model::HeldOnPath>(object.hold))
        line("held with at most, " + object.name, show(of("peak_contact_force." + object.name), "N", "N"));
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

  text += sensing_text(system, of);
  text += control_text(system, of);
  if (!system.scenario.faults.empty()) {
    heading("Faults");
    for (const auto& event : result.events)
      if (event.kind == "fault" || event.kind == "fault-over") text += fmt::format("  {:.4g} s  {} {}\n", event.time, event.subject, event.detail);
    const double safe = of("safe_after_fault");
    line("safe after the first one", std::isnan(safe) ? "not by the end of the run" : show(safe, "s", "s"));
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
  for (const auto& joint : system.slides) {
    const std::string& name = m.bodies[static_cast<std::size_t>(joint.body)].slide->name;
    line("slideway of " + name, percent(of("loss_share." + name)));
  }
  line("contacts", percent(of("loss_share.contact")));

  heading("Margins (capacity / demand)");
  text += margins_text(margins, asked, sizes);

  if (const std::string meshes = mesh_text(system.scenario); !meshes.empty()) {
    heading("Parts from STL files");
    text += meshes;
  }

  heading("Check");
  line("energy residual", fmt::format("{:.3g} % of the energy turned over", 100 * of("energy_residual")));
  line("steps", fmt::format("{} ({} of second order, {} rejected)", result.counters.steps, result.counters.second_order,
                            result.counters.rejected + result.counters.unsolved));
  if (result.counters.held > 0)
    line("steps without a solution of their own", fmt::format("{} (friction limits of the step before; see docs/numerics.md)", result.counters.held));
  if (!result.verdicts.empty()) {
    heading("Requirements");
    for (const auto& verdict : result.verdicts)
      text += fmt::format("  {:<7}{} {}: {}\n", verdict.met ? "met" : "FAILED", verdict.quantity, verdict.demand, simulation::reached_text(verdict));
  }
  text += "\nDesign prediction, not certification. Moving fingers pinch, stretched cords store energy, stalled motors get hot.\n";
  return text;
}

std::string summary_json(const simulation::System& system, const simulation::RunResult& result,
                         const simulation::Margins& margins, double asked, const std::vector<strength::NeededSize>& sizes,
                         const std::string& record) {
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
  add_margins(json, margins, asked, sizes);
  if (nlohmann::ordered_json meshes = mesh_json(system.scenario); !meshes.empty()) json["stl_parts"] = std::move(meshes);
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
