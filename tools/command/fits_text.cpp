#include "fits_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "strength/finger_play.h"
#include "strength/hinge_fits.h"

namespace sinewright::tool {

namespace {

using nlohmann::ordered_json;
using namespace strength;

constexpr double degree = std::numbers::pi / 180;

double micro(double si) { return 1e6 * si; }
double milli(double si) { return 1e3 * si; }
double mega(double si) { return 1e-6 * si; }

std::string celsius(double kelvin) { return fmt::format("{:.0f} °C", kelvin - 273.15); }

// "m6 (2.002 … 2.008 mm)"
std::string shown(const model::TolerancedSize& given, const SizeLimits& limits) {
  const std::string sizes = fmt::format("{:.3f} … {:.3f} mm", milli(limits.lower), milli(limits.upper));
  const auto* iso = std::get_if<model::IsoClass>(&given);
  return iso != nullptr ? fmt::format("{} ({})", iso->name, sizes) : sizes;
}

std::string shown(const FitRange& range) {
  const double low = micro(range.smallest_clearance), high = micro(range.largest_clearance);
  if (low >= 0) return fmt::format("clearance {:.1f} … {:.1f} µm", low, high);
  if (high <= 0) return fmt::format("interference {:.1f} … {:.1f} µm", -high, -low);
  return fmt::format("from {:.1f} µm of clearance to {:.1f} µm of interference", high, -low);
}

bool by_class(const model::TolerancedSize& size) { return std::holds_alternative<model::IsoClass>(size); }

std::vector<std::string> press_cautions(const PressFitReport& press, const model::Fit& fit) {
  std::vector<std::string> cautions;
  if (press.is_loose()) {
    cautions.push_back("this is no press fit: the pin is loose whatever the sizes");
    return cautions;
  }
  if (press.may_be_loose())
    cautions.push_back(fmt::format("the pin may come out loose, by up to {:.1f} µm{}", micro(press.range.largest_clearance),
                                   by_class(fit.pin) && by_class(fit.press->hole)
                                       ? fmt::format(": at this diameter {} in {} is a transition fit",
                                                     std::get<model::IsoClass>(fit.pin).name,
                                                     std::get<model::IsoClass>(fit.press->hole).name)
                                       : ": these sizes make a transition fit"));
  for (const auto& [name, end] : {std::pair{"smallest", &press.loosest}, std::pair{"largest", &press.tightest}}) {
    if (end->states.front().interference <= 0) continue;  // said above
    for (const PressState& state : end->states) {
      if (state.interference <= 0)
        cautions.push_back(fmt::format("with the {} interference the pin is loose at {}", name, celsius(state.temperature)));
      else if (state.crept_pressure && *state.crept_pressure <= 0)
        cautions.push_back(fmt::format("with the {} interference the pin is loose at {} once the lug has crept", name,
                                       celsius(state.temperature)));
    }
  }
  if (press.hub_strength && press.largest_stress() > *press.hub_strength)
    cautions.push_back(fmt::format("the equivalent stress reaches {:.1f} MPa where the lug bears {:.1f} MPa: it yields or "
                                   "splits, and the table above does not hold there",
                                   mega(press.largest_stress()), mega(*press.hub_strength)));
  return cautions;
}

std::vector<std::string> press_notes(const PressFitReport& press) {
  std::vector<std::string> notes;
  for (const std::string& key : press.missing) {
    if (key == "hub_strength") notes.push_back("not checked: the stress in the lug (neither hub_strength nor the material's strength is given)");
    else if (key == "remaining_share") notes.push_back("not described: what creep leaves (remaining_share is not given)");
    else if (key == "temperature") notes.push_back("not described: warm and cold (temperature is not given)");
    else notes.push_back(fmt::format("not described: warm and cold ({} is not given)", key));
  }
  return notes;
}

// "12.3 → 6.2", or "12.3" if creep is not described.
std::string before_and_after(double fresh, const std::optional<double>& crept, double unit) {
  return crept ? fmt::format("{:.1f} → {:.1f}", unit * fresh, unit * *crept) : fmt::format("{:.1f}", unit * fresh);
}

ordered_json sizes_json(const model::TolerancedSize& given, const SizeLimits& limits) {
  ordered_json json{{"lower_m", limits.lower}, {"upper_m", limits.upper}};
  if (const auto* iso = std::get_if<model::IsoClass>(&given)) json["class"] = iso->name;
  return json;
}

ordered_json optional_json(const std::optional<double>& value) { return value ? ordered_json(*value) : ordered_json(nullptr); }

ordered_json end_json(const PressEnd& end) {
  ordered_json json{{"press_in_force_N", end.press_in_force}};
  for (const PressState& s : end.states)
    json["states"].push_back({{"temperature_K", s.temperature},
                              {"interference_m", s.interference},
                              {"pressure_Pa", s.pressure},
                              {"hoop_stress_Pa", s.hoop_stress},
                              {"equivalent_stress_Pa", s.equivalent_stress},
                              {"pull_out_force_N", s.pull_out_force},
                              {"slip_torque_N_m", s.slip_torque},
                              {"crept_pressure_Pa", optional_json(s.crept_pressure)},
                              {"crept_pull_out_force_N", optional_json(s.crept_pull_out_force)},
                              {"crept_slip_torque_N_m", optional_json(s.crept_slip_torque)}});
  return json;
}

void press_fit(const HingeFits& hinge, const model::Fit& fit, std::string& text, ordered_json& json) {
  const PressFitReport& press = *hinge.press;
  text += fmt::format("  {}: {} pin {} in {} lug {}: {}\n", hinge.hinge, press.pin_material, shown(fit.pin, *hinge.pin),
                      press.hub_material, shown(fit.press->hole, press.hole), shown(press.range));
  text += "    made with     temperature   interference   pressure   hoop / equiv. stress   press in       pull out    turn in lug\n"
          "                                       [µm]      [MPa]                  [MPa]        [N]            [N]        [N·mm]\n";
  json["hole"] = sizes_json(fit.press->hole, press.hole);
  json["smallest_interference_m"] = press.range.smallest_interference();
  json["largest_interference_m"] = press.range.largest_interference();
  json["may_be_loose"] = press.may_be_loose();
  for (const auto& [name, end] : {std::pair{"loosest", &press.loosest}, std::pair{"tightest", &press.tightest}}) {
    for (std::size_t i = 0; i < end->states.size(); ++i) {
      const PressState& s = end->states[i];
      text += fmt::format("    {:<12} {:>12} {:14.1f} {:10.2f} {:>22} {:>10} {:>14} {:>14}\n",
                          i == 0 ? fmt::format("{} fit", name) : "", celsius(s.temperature), micro(s.interference),
                          mega(s.pressure), fmt::format("{:.1f} / {:.1f}", mega(s.hoop_stress), mega(s.equivalent_stress)),
                          i == 0 ? fmt::format("{:.1f}", end->press_in_force) : "",
                          before_and_after(s.pull_out_force, s.crept_pull_out_force, 1),
                          before_and_after(s.slip_torque, s.crept_slip_torque, 1e3));
    }
    json[name] = end_json(*end);
  }
  json["hub_strength_Pa"] = optional_json(press.hub_strength);
  json["cautions"] = press_cautions(press, fit);
  json["not_described"] = press.missing;
  for (const std::string& caution : press_cautions(press, fit)) text += fmt::format("    CAUTION: {}\n", caution);
  for (const std::string& note : press_notes(press)) text += fmt::format("    {}\n", note);
}

void press_fits(const std::vector<HingeFits>& hinges, const std::vector<const model::Hinge*>& given, std::string& text,
                ordered_json& json) {
  text += "\nPress fits: the pin in each of the two outer lugs. Forces and torques are those of one lug; → after creep.\n";
  for (std::size_t i = 0; i < hinges.size(); ++i) {
    auto& entry = json["hinges"][hinges[i].hinge]["press"];  // null if it stays empty
    if (hinges[i].press)
      press_fit(hinges[i], *given[i]->pin->fit, text, entry);
    else
      text += fmt::format("  {}: not described (pin.fit.press)\n", hinges[i].hinge);
  }
}

void running_fits(const std::vector<HingeFits>& hinges, const std::vector<const model::Hinge*>& given, std::string& text,
                  ordered_json& json) {
  text += "\nRunning fits: the pin in the inner lug, clearance on the diameter\n";
  for (std::size_t i = 0; i < hinges.size(); ++i) {
    const HingeFits& hinge = hinges[i];
    auto& entry = json["hinges"][hinge.hinge];
    entry["diameter_m"] = hinge.diameter > 0 ? ordered_json(hinge.diameter) : ordered_json(nullptr);
    entry["pin"] = hinge.pin ? sizes_json(given[i]->pin->fit->pin, *hinge.pin) : ordered_json(nullptr);
    if (!hinge.running) {
      entry["running"] = nullptr;
      const double clearance = given[i]->pin ? given[i]->pin->radial_clearance : 0;
      text += fmt::format("  {}: not described (pin.fit.running_hole){}\n", hinge.hinge,
                          clearance > 0 ? fmt::format("; pin.radial_clearance gives {:.1f} µm", micro(clearance)) : "");
      continue;
    }
    const auto& hole = *given[i]->pin->fit->running_hole;
    text += fmt::format("  {}: pin {} in hole {}: {}\n", hinge.hinge, shown(given[i]->pin->fit->pin, *hinge.pin),
                        shown(hole, *hinge.running_hole), shown(*hinge.running));
    auto& running = entry["running"];
    running["hole"] = sizes_json(hole, *hinge.running_hole);
    running["smallest_clearance_m"] = hinge.running->smallest_clearance;
    running["largest_clearance_m"] = hinge.running->largest_clearance;
    running["cautions"] = ordered_json::array();
    if (hinge.running->smallest_clearance > 0) continue;
    const std::string caution = hinge.running->smallest_clearance < 0
                                    ? fmt::format("the pin may bind in the inner lug, with up to {:.1f} µm of interference",
                                                  -micro(hinge.running->smallest_clearance))
                                    : "the pin may fill the inner lug's hole without any clearance";
    running["cautions"].push_back(caution);
    text += fmt::format("    CAUTION: {}\n", caution);
  }
}

std::string shown(const PlayRange& range, double unit, int digits) {
  if (range.tightest == range.loosest) return fmt::format("{:.{}f}", unit * range.loosest, digits);
  return fmt::format("{:.{}f} … {:.{}f}", unit * range.tightest, digits, unit * range.loosest, digits);
}

ordered_json range_json(const std::optional<PlayRange>& range) {
  return range ? ordered_json{{"tightest", range->tightest}, {"loosest", range->loosest}} : ordered_json(nullptr);
}

ordered_json sum_json(const std::optional<PlaySum>& sum) {
  if (!sum) return nullptr;
  return {{"worst_case_m", {{"tightest", sum->tightest.worst_case}, {"loosest", sum->loosest.worst_case}}},
          {"root_sum_square_m", {{"tightest", sum->tightest.root_sum_square}, {"loosest", sum->loosest.root_sum_square}}},
          {"without", sum->without}};
}

void fingertip(const FingertipPlay& tip, std::string& text, ordered_json& json) {
  text += fmt::format("\nPlay at the tip of {}, finger straight, from the middle to either side: tightest … loosest sizes\n", tip.body);
  json["tip_m"] = optional_json(tip.tip);
  if (!tip.tip) {
    text += "  not described: the body has neither shapes nor solids that say where it ends\n";
    return;
  }
  constexpr const char* row = "  {:<14} {:>10} {:>16} {:>10} {:>16} {:>16} {:>16}\n";
  text += fmt::format(row, "", "to the tip", "radial clearance", "axial", "tilt sideways", "sideways", "in flexion");
  text += fmt::format(row, "", "[mm]", "[µm]", "[µm]", "[deg]", "[mm]", "[mm]");
  const std::string none = "not described";
  for (const HingeShare& h : tip.hinges) {
    text += fmt::format(row, h.hinge, fmt::format("{:.1f}", milli(h.reach)), h.radial ? shown(*h.radial, 1e6, 1) : none,
                        h.axial ? fmt::format("{:.1f}", micro(*h.axial)) : "—",
                        h.tilt ? shown(*h.tilt, 1 / degree, 3) : none, h.sideways ? shown(*h.sideways, 1e3, 3) : none,
                        h.flexion ? shown(*h.flexion, 1e3, 3) : none);
    json["hinges"][h.hinge] = {{"reach_m", h.reach},
                               {"radial_clearance_m", range_json(h.radial)},
                               {"axial_clearance_m", optional_json(h.axial)},
                               {"tilt_rad", range_json(h.tilt)},
                               {"sideways_m", range_json(h.sideways)},
                               {"flexion_m", range_json(h.flexion)},
                               {"not_described", h.missing}};
  }
  const auto line = [&](const char* name, auto value) {
    const auto cell = [&](const std::optional<PlaySum>& sum) {
      return sum ? shown(PlayRange{value(sum->tightest), value(sum->loosest)}, 1e3, 3) : none;
    };
    text += fmt::format("  {:<72} {:>16} {:>16}\n", name, cell(tip.sideways), cell(tip.flexion));
  };
  line("worst case: every hinge at its stop on the same side", [](const TipPlay& play) { return play.worst_case; });
  line("root sum square: hinges independent of each other", [](const TipPlay& play) { return play.root_sum_square; });
  json["sideways"] = sum_json(tip.sideways);
  json["flexion"] = sum_json(tip.flexion);
  for (const HingeShare& h : tip.hinges)
    if (!h.missing.empty())
      text += fmt::format("  {}: not described: {}\n", h.hinge, fmt::join(h.missing, "; "));
  for (const auto& [name, sum] : {std::pair{"sideways", &tip.sideways}, std::pair{"in flexion", &tip.flexion}})
    if (*sum && !(*sum)->without.empty())
      text += fmt::format("  CAUTION: the sums {} lack {}: the real play is larger\n", name, fmt::join((*sum)->without, ", "));
}

}  // namespace

FitsPage fits_page(const model::Model& model) {
  FitsPage page;
  page.text = fmt::format("{}: fits and play. Sizes hold at {}.\n", model.name, celsius(size_temperature));
  page.json["size_temperature_K"] = size_temperature;
  std::vector<const model::Hinge*> given;
  for (const model::Body& body : model.bodies)
    if (body.hinge) given.push_back(&*body.hinge);
  const std::vector<HingeFits> hinges = hinge_fits(model);
  running_fits(hinges, given, page.text, page.json);
  press_fits(hinges, given, page.text, page.json);
  for (const FingertipPlay& tip : finger_play(model)) fingertip(tip, page.text, page.json["tips"][tip.body]);
  if (hinges.empty()) page.text += "  the model has no hinge\n";
  page.text += "\nDesign prediction from sizes and data alone, not certification.\n";
  return page;
}

}  // namespace sinewright::tool
