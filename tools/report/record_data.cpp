#include "report/record_data.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

#include <fmt/format.h>

#include "drive/sinewright_firmware.h"
#include "geometry/convex_hull.h"
#include "model/names.h"
#include "plot/scene.h"
#include "quantity/quantity.h"
#include "reading/reading.h"
#include "report/arrays.h"
#include "report/thinning.h"
#include "simulation/control.h"
#include "simulation/detour.h"
#include "simulation/summary.h"
#include "simulation/system.h"

namespace sinewright::report {

namespace {

using Json = nlohmann::ordered_json;
using Eigen::Vector3d;
constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double kBound = 0.002;       // of a column's range
constexpr double kBoundOfNet = 0.01;   // of the largest net force and moment
constexpr std::size_t kMostRows = 3000;
constexpr double kDegree = 180 / std::numbers::pi;

// All numbers of the page in full, from which rows are then chosen; an array of the JSON names its columns.
class Tables {
 public:
  explicit Tables(const record::Record& record) : record_(record), n_(record.time.size()) {}

  // @returns the number of the table.
  std::size_t add(std::size_t width, double least_bound) {
    tables_.push_back({columns_.size(), width});
    columns_.resize(columns_.size() + width, {std::vector<double>(n_, nan), least_bound});
    return tables_.size() - 1;
  }
  [[nodiscard]] double& at(std::size_t table, std::size_t row, std::size_t column = 0) {
    return columns_[tables_[table].first + column].values[row];
  }
  // A channel's column in display units.
  std::size_t add(const std::string& path, int column, double factor, double offset = 0, double least_bound = 0) {
    const std::size_t table = add(1, least_bound);
    fill(table, 0, path, column, factor, offset);
    return table;
  }
  void fill(std::size_t table, int into, const std::string& path, int column, double factor, double offset = 0) {
    const std::vector<double> values = record_.column(path, column);
    for (std::size_t i = 0; i < n_; ++i) at(table, i, static_cast<std::size_t>(into)) = factor * values[i] + offset;
  }
  [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }

  [[nodiscard]] Json array(std::size_t table, const std::vector<std::size_t>& rows) const {
    const auto [first, width] = tables_[table];
    std::vector<float> values;
    values.reserve(rows.size() * width);
    for (const std::size_t row : rows)
      for (std::size_t c = 0; c < width; ++c) values.push_back(static_cast<float>(columns_[first + c].values[row]));
    return packed(values, width);
  }

 private:
  const record::Record& record_;
  std::size_t n_;
  std::vector<Column> columns_;
  std::vector<std::pair<std::size_t, std::size_t>> tables_;  // first column, width
};

Json mm(const Vector3d& v) { return {1e3 * v.x(), 1e3 * v.y(), 1e3 * v.z()}; }
Json plain(const Vector3d& v) { return {v.x(), v.y(), v.z()}; }

Json hull_data(const std::vector<Vector3d>& points) {
  Json json = {{"kind", "hull"}, {"points", Json::array()}, {"faces", Json::array()}};
  for (const Vector3d& point : points) json["points"].push_back(mm(point));
  for (const geometry::Triangle& face : geometry::convex_hull(points)) json["faces"].push_back({face[0], face[1], face[2]});
  return json;
}

Json shape_data(const model::Shape& shape, const char* role) {
  Json json;
  if (const auto* s = std::get_if<model::Sphere>(&shape)) json = {{"kind", "sphere"}, {"center", mm(s->center)}, {"radius", 1e3 * s->radius}};
  if (const auto* s = std::get_if<model::Capsule>(&shape)) json = {{"kind", "capsule"}, {"from", mm(s->from)}, {"to", mm(s->to)}, {"radius", 1e3 * s->radius}};
  if (const auto* s = std::get_if<model::Cylinder>(&shape))
    json = {{"kind", "cylinder"}, {"center", mm(s->center)}, {"axis", plain(s->axis)}, {"radius", 1e3 * s->radius}, {"length", 1e3 * s->length}};
  if (const auto* s = std::get_if<model::Box>(&shape)) {
    json = {{"kind", "box"}, {"center", mm(s->center)}, {"size", mm(s->size)}, {"rotation", Json::array()}};
    for (int r = 0; r < 3; ++r)
      for (int c = 0; c < 3; ++c) json["rotation"].push_back(s->rotation(r, c));
  }
  if (const auto* s = std::get_if<model::Hull>(&shape)) json = hull_data(s->points);
  if (const auto* s = std::get_if<model::Mesh>(&shape)) json = hull_data(s->points);
  json["role"] = role;
  return json;
}

std::string number(double value) { return std::isfinite(value) ? fmt::format("{:.4g}", value) : "—"; }

const record::SummaryValue* find(const Run& run, const std::string& key) {
  for (const auto& value : run.record.summary)
    if (value.key == key) return &value;
  return nullptr;
}
double summary(const Run& run, const std::string& key) {
  const auto* value = find(run, key);
  return value ? value->value : nan;
}
const record::Verdict* verdict_on(const Run& run, const std::string& key) {
  for (const auto& verdict : run.record.verdicts)
    if (verdict.quantity == key) return &verdict;
  return nullptr;
}

// The finger of a hand that a part belongs to, or else its palm.
std::string whose(const Run& run, const std::string& name) {
  const std::vector<std::string> fingers = plot::fingers_of(run.scenario.model);
  const std::string finger = model::finger_of(name);
  return std::find(fingers.begin(), fingers.end(), finger) == fingers.end() ? "palm" : finger;
}

// What the page calls what it shows: several chains of one model are fingers, though its file names no hand.
const char* shown_as(const Run& run) {
  if (!plot::fingers_of(run.scenario.model).empty()) return "hand";
  const auto& bodies = run.scenario.model.bodies;
  const auto is_tip = [&](std::size_t b) {
    return bodies[b].hinge && !bodies[b].shapes.empty() &&
           std::none_of(bodies.begin(), bodies.end(), [&](const auto& other) { return other.hinge && other.hinge->parent == static_cast<int>(b); });
  };
  std::size_t tips = 0;
  for (std::size_t b = 0; b < bodies.size(); ++b) tips += is_tip(b);
  return tips > 1 ? "fingers" : "finger";
}

std::string body_name(const Run& run, int index) { return run.scenario.model.bodies[static_cast<std::size_t>(index)].name; }

// --- what was asked, and what came of it

struct Ask {
  double time;
  std::string what;
  std::vector<std::string> drives;
};

std::vector<std::string> in_words(const model::Command& command) {
  if (const auto* v = std::get_if<model::CommandVoltage>(&command)) return {fmt::format("at {:.4g} V", v->voltage) + (v->over > 0 ? fmt::format(", rising over {:.4g} s", v->over) : "")};
  if (const auto* c = std::get_if<model::CommandCurrentLimit>(&command)) return {fmt::format("limited to {:.4g} A", c->current)};
  if (const auto* a = std::get_if<model::CommandAngle>(&command)) return {fmt::format("to {:.4g}° of its shaft", a->angle * kDegree)};
  if (const auto* o = std::get_if<model::CommandOff>(&command)) return {o->leads == model::Leads::open ? "off, leads open" : "off, leads shorted"};
  if (simulation::for_controller(command)) return {simulation::asked_of_controller(command)};
  return {};
}

std::vector<std::string> asked(const Run& run) {
  const model::Scenario& s = run.scenario;
  std::vector<std::string> list;
  // What several drives are told at the same time is one line.
  std::vector<Ask> asks;
  for (const auto& entry : s.timeline) {
    const std::string& drive = s.model.drives[static_cast<std::size_t>(entry.drive)].name;
    for (const std::string& what : in_words(entry.command)) {
      const auto same = std::find_if(asks.begin(), asks.end(), [&](const Ask& ask) { return ask.time == entry.time && ask.what == what; });
      if (same == asks.end()) asks.push_back({entry.time, what, {drive}});
      else same->drives.push_back(drive);
    }
  }
  for (const Ask& ask : asks)
    list.push_back(fmt::format("at {:.4g} s: drive{} {} {}", ask.time, ask.drives.size() > 1 ? "s" : "", fmt::join(ask.drives, ", "), ask.what));
  for (const auto& event : run.record.events)
    if (event.kind == "fault") list.push_back(fmt::format("at {:.4g} s: fault of {}: {}", event.time, event.subject, event.detail));
  for (const auto& load : s.loads) {
    const double most = load.force.value.empty() ? 0 : *std::max_element(load.force.value.begin(), load.force.value.end());
    list.push_back(fmt::format("load {}: up to {:.4g} N on {}", load.name, most, load.body));
  }
  for (const auto& twist : s.twists) {
    const double most = twist.torque.value.empty() ? 0 : *std::max_element(twist.torque.value.begin(), twist.torque.value.end());
    list.push_back(fmt::format("twist {}: up to {:.4g} N·mm on {}", twist.name, 1e3 * most,
                               twist.body_index >= 0 ? s.model.bodies[static_cast<std::size_t>(twist.body_index)].name
                                                     : s.objects[static_cast<std::size_t>(twist.object_index)].name));
  }
  for (const auto& object : s.objects) list.push_back(fmt::format("object {}: {}", object.name,
        std::visit([](const auto& hold) -> const char* {
          using T = std::decay_t<decltype(hold)>;
          if constexpr (std::is_same_v<T, model::HeldFixed>) return "held fixed";
          if constexpr (std::is_same_v<T, model::HeldFree>) return "free";
          if constexpr (std::is_same_v<T, model::HeldBySpring>) return "held by springs";
          if constexpr (std::is_same_v<T, model::HeldByString>) return "hung on a string";
          return "led on a path";
        }, object.hold)));
  return list;
}

Json requirements(const Run& run) {
  Json list = Json::array();
  for (const auto& verdict : run.record.verdicts) {
    Json row = {{"title", title_of(verdict.quantity)}, {"demand", verdict.demand}, {"value", simulation::reached_text(verdict)}, {"met", verdict.met}};
    // "at least 5 N": how many times over.
    const bool least = verdict.demand.starts_with("at least");
    const std::string text = verdict.demand.substr(least ? 9 : 8);
    double margin = nan;
    try {
      const double bound = parse_any_quantity(text).si;
      margin = least ? verdict.value / bound : bound / verdict.value;
    } catch (const InvalidInput&) {
    }
    const bool shown = std::isfinite(margin) && margin > 0 && verdict.unit != "K";
    row["margin"] = shown ? Json(margin) : Json(nullptr);
    row["margin_text"] = shown ? (margin < 1000 ? fmt::format("{:.3g}×", margin) : "over 1000×") : "—";
    row["time"] = nullptr;
    list.push_back(row);
  }
  return list;
}

// As the limit file that the record holds says, with what the command line changed in it.
bool ends_where_a_shaft_turns(const record::LimitRecord& limit) {
  std::vector<std::string> own;
  for (const std::string& change : limit.inputs.overrides)
    if (!change.starts_with("scenario.")) own.push_back(change);
  reading::Source source(limit.inputs.files);
  const model::LimitStudy study = reading::read_limit(source, limit.inputs.scenario_path, own);
  const auto* ramp = std::get_if<model::Ramp>(&study.task);
  return ramp != nullptr && ramp->until.event == model::EndEvent::shaft_turns;
}

// The load that drives the shaft back: from a limit that was looked for, or from this run if that happens in it.
Json back_drive(const Run& run, const std::vector<record::LimitRecord>& limits) {
  Json json = {{"id", "back_drive"}, {"title", "Back-drive load"}, {"text", "—"}, {"unit", "N"}, {"threshold", "none asked"}, {"state", "unknown"}, {"time", nullptr}};
  for (const auto& limit : limits) {
    if (!ends_where_a_shaft_turns(limit) || limit.unit != "N" || limit.limits.empty() || !limit.limits.front().found) continue;
    const auto& one = limit.limits.front();
    json["text"] = number(one.value);
    json["state"] = "plain";
    json["detail"] = limit.name;
    json["sure"] = fmt::format("± {:.2g} N by the search; the gearhead's backward efficiency decides it", one.error);
    return json;
  }
  for (std::size_t d = 0; d < run.scenario.model.drives.size(); ++d) {
    double off = nan;
    for (const auto& entry : run.scenario.timeline)
      if (entry.drive == static_cast<int>(d) && std::holds_alternative<model::CommandOff>(entry.command)) off = entry.time;
    if (std::isnan(off) || run.scenario.loads.empty()) continue;
    const auto angle = run.record.column("/drives/" + run.scenario.model.drives[d].name + "/shaft_angle");
    double start = nan;
    for (std::size_t i = 0; i < angle.size(); ++i) {
      if (run.record.time[i] < off) continue;
      if (std::isnan(start)) start = angle[i];
      if (std::abs(angle[i] - start) * kDegree < 1) continue;
      double load = 0;
      for (const auto& one : run.scenario.loads) load += simulation::value_at(one.force, run.record.time[i]);
      if (load <= 0) break;
      json["text"] = number(load);
      json["state"] = "plain";
      json["detail"] = "load in this run when the shaft had turned by 1° with the power off";
      json["sure"] = "the load rises fast here, which reads a little high; a limit file finds it at rest";
      json["time"] = run.record.time[i];
      return json;
    }
  }
  json["detail"] = "not determined in this run";
  json["sure"] = "add the record of 'sinewright limit scenarios/limits/back-drive.yaml' to the report";
  return json;
}

Json headline(const Run& run, const std::vector<record::LimitRecord>& limits) {
  const std::string numerics = std::isfinite(summary(run, "energy_residual"))
                                   ? fmt::format("energy balance closes to {:.2g} %", 100 * summary(run, "energy_residual"))
                                   : "the run was cut off";
  const auto asked_of = [&](const char* key) {
    const auto* verdict = verdict_on(run, key);
    return verdict ? "asked: " + verdict->demand : std::string("none asked");
  };
  const auto state_of = [&](const char* key) {
    const auto* verdict = verdict_on(run, key);
    return std::isnan(summary(run, key)) ? (verdict ? "bad" : "unknown") : !verdict ? "plain" : verdict->met ? "good" : "bad";
  };
  const simulation::Phases phases = simulation::phases(run.scenario);
  Json list = Json::array();
  const double closing = summary(run, "closing_time");
  list.push_back({{"id", "closing_time"}, {"title", "Closing time"}, {"text", number(closing)}, {"unit", "s"}, {"threshold", asked_of("closing_time")},
                  {"state", state_of("closing_time")}, {"detail", "from the first command to the last entry into the 95 % band"},
                  {"sure", numerics + "; motor and friction data decide it"},
                  {"time", std::isfinite(closing) && std::isfinite(phases.command) ? Json(phases.command + closing) : Json(nullptr)}});
  std::vector<std::pair<std::string, double>> by;  // of a hand by finger: its places are too many to read
  for (const auto& value : run.record.summary) {
    if (!value.key.starts_with("grip_force.") || !std::isfinite(value.value)) continue;
    const std::string place = value.key.substr(11);
    // The sum is of the phalanges: what presses against a palm's pads is not in it.
    if (std::none_of(run.scenario.model.bodies.begin(), run.scenario.model.bodies.end(), [&](const auto& body) {
          return body.moves() && (place == body.name || place.starts_with(body.name + ".") || place.starts_with(body.name + "@"));
        }))
      continue;
    const std::string name = plot::fingers_of(run.scenario.model).empty() ? place : whose(run, place);
    const auto found = std::find_if(by.begin(), by.end(), [&](const auto& one) { return one.first == name; });
    if (found == by.end()) by.emplace_back(name, value.value);
    else found->second += value.value;
  }
  std::string shares;
  for (const auto& [name, force] : by) shares += fmt::format("{}{} {:.3g} N", shares.empty() ? "" : ", ", name, force);
  list.push_back({{"id", "grip_force"}, {"title", "Grip force"}, {"text", number(summary(run, "grip_force"))}, {"unit", "N"}, {"threshold", asked_of("grip_force")},
                  {"state", state_of("grip_force")}, {"detail", shares.empty() ? "nothing was gripped" : "sum of the phalanges' normal forces: " + shares},
                  {"sure", numerics + "; friction coefficients scatter by tens of percent"},
                  {"time", std::isfinite(phases.close_end) ? Json(std::min(phases.close_end, run.record.time.back())) : Json(nullptr)}});
  Json first = {{"id", "breaks_first"}, {"title", "Breaks first"}, {"text", "—"}, {"unit", "×"}, {"threshold", "below 1 it is lost"}, {"state", "unknown"},
                {"detail", "no part is described well enough to be checked"}, {"sure", fmt::format("{} not checked", run.record.margins.not_checked.size())}, {"time", nullptr}};
  for (const auto& margin : run.record.margins.values)
    if (std::isfinite(margin.ratio)) {
      first["text"] = fmt::format("{:.3g}", margin.ratio);
      first["state"] = margin.ratio >= 1 ? "good" : "bad";
      first["detail"] = margin.check + (std::isfinite(margin.lost_at) ? ", lost under " + margin.lost_load : ", under " + margin.load);
      first["sure"] = fmt::format("elementary statics; strengths of prints scatter; {} not checked", run.record.margins.not_checked.size());
      first["time"] = std::isfinite(margin.lost_at) ? margin.lost_at : margin.time;
      break;
    }
  list.push_back(first);
  list.push_back(back_drive(run, limits));
  Json touch = {{"id", "touch_temperature"}, {"title", "Touch temperature"}, {"text", "—"}, {"unit", "°C"}, {"threshold", "touch not described"}, {"state", "unknown"},
                {"detail", "no drive"}, {"sure", "two-node heat model"}, {"time", nullptr}};
  double hottest = -1e9;
  for (const auto& drive : run.scenario.model.drives) {
    const auto path = "/drives/" + drive.name + "/housing_temperature";
    if (run.record.find(path) < 0) continue;
    const auto temperature = run.record.column(path);
    const auto most = std::max_element(temperature.begin(), temperature.end());
    if (*most <= hottest) continue;
    hottest = *most;
    touch["text"] = number(*most - 273.15);
    touch["threshold"] = "touch not described";
    touch["state"] = "plain";
    touch["detail"] = "housing of " + drive.name + (run.scenario.model.drives.size() > 1 ? ", the hottest, highest in this run" : ", highest in this run");
    touch["sure"] = "two-node heat model over the run's length; longer use gets warmer";
    touch["time"] = run.record.time[static_cast<std::size_t>(most - temperature.begin())];
    for (const auto& margin : run.record.margins.values)
      if (margin.name == "touch_temperature." + drive.name) {
        touch["threshold"] = fmt::format("burns at {:.3g} °C", margin.capacity + run.scenario.ambient - 273.15);
        touch["state"] = margin.ratio >= 1 ? "good" : "bad";
      }
  }
  list.push_back(touch);
  return list;
}

Json margins_data(const Run& run) {
  const auto& margins = run.record.margins;
  // A temperature here is a rise over the surroundings: its kelvins stay.
  const auto shown = [](double si, const std::string& unit) { return unit == "K" ? fmt::format("{:.4g} K", si) : value_text(si, unit); };
  const std::vector<std::string> fingers = plot::fingers_of(run.scenario.model);
  Json values = Json::array(), unloaded = Json::array(), unknown = Json::array();
  for (const auto& margin : margins.values) {
    if (!std::isfinite(margin.ratio)) {
      unloaded.push_back(margin.check);
      continue;
    }
    // Of a hand the joints of the finger that the part belongs to.
    const auto named = [&](const std::string& finger) { return margin.name.find(finger + ".") != std::string::npos; };
    const auto own = std::find_if(fingers.begin(), fingers.end(), named);
    std::string posture;
    for (std::size_t j = 0; j < margins.joints.size() && j < margin.posture.size(); ++j) {
      if (own != fingers.end() && model::finger_of(margins.joints[j]) != *own) continue;
      posture += fmt::format("{}{} {:.1f}°", posture.empty() ? "" : ", ", margins.joints[j], margin.posture[j] * kDegree);
    }
    values.push_back({{"name", margin.name}, {"check", margin.check}, {"ratio", margin.ratio}, {"ratio_text", fmt::format("{:.3g}", margin.ratio)},
                      {"capacity", shown(margin.capacity, margin.unit)}, {"demand", shown(margin.demand, margin.unit)}, {"time", margin.time}, {"load", margin.load},
                      {"posture", posture}, {"lost_at", std::isfinite(margin.lost_at) ? Json(margin.lost_at) : Json(nullptr)}, {"lost_load", margin.lost_load}});
  }
  for (const auto& one : margins.not_checked) unknown.push_back({{"check", one.check}, {"missing", one.missing}});
  return {{"values", values}, {"unloaded", unloaded}, {"not_checked", unknown}, {"cautions", margins.cautions}};
}

// --- where the energy went while closing

Json losses(const Run& run) {
  const simulation::Phases phases = simulation::phases(run.scenario);
  if (!std::isfinite(phases.command) || run.scenario.model.drives.empty() || run.record.summary.empty()) return nullptr;
  const auto& time = run.record.time;
  const double closing = summary(run, "closing_time");
  const double end = std::isfinite(closing) ? phases.command + closing : phases.close_end;
  const auto row = [&](double t) { return std::min<std::size_t>(static_cast<std::size_t>(std::lower_bound(time.begin(), time.end(), t) - time.begin()), time.size() - 1); };
  const std::size_t from = row(phases.command), to = row(end);
  const auto moved = [&](const char* account) {
    const std::string path = std::string("/energy/") + account;
    if (run.record.find(path) < 0) return 0.0;
    const auto values = run.record.column(path);
    return 1e3 * (values[to] - values[from]);
  };
  const double total = moved("supply") + moved("loads") + moved("prescribed_motion");
  if (!(total > 0)) return nullptr;
  const bool hand = !plot::fingers_of(run.scenario.model).empty();
  Json flows = Json::array();
  double lost = 0;
  const double shaft_work = 1e3 * summary(run, "shaft_work");
  const auto add = [&](const char* words, std::initializer_list<const char*> accounts, const std::string& part_prefix = "") {
    double value = 0;
    for (const char* account : accounts) value += moved(account);
    lost += value;
    if (value == 0) return;
    Json flow = {{"name", words}, {"value", value}, {"share", value / total}, {"parts", Json::array()}};
    if (!part_prefix.empty() && std::isfinite(shaft_work))
      for (const auto& item : run.record.summary) {
        const bool bend = item.key.starts_with("loss_share.") && item.key.find(" bend ") != std::string::npos;
        const bool hinge = item.key.starts_with("loss_share.") && std::any_of(run.scenario.model.bodies.begin(), run.scenario.model.bodies.end(),
                                                                              [&](const auto& b) { return b.hinge && item.key == "loss_share." + b.hinge->name; });
        const bool slide = item.key.starts_with("loss_share.") && std::any_of(run.scenario.model.bodies.begin(), run.scenario.model.bodies.end(),
                                                                              [&](const auto& b) { return b.slide && item.key == "loss_share." + b.slide->name; });
        if ((part_prefix == "bend" && !bend) || (part_prefix == "hinge" && !hinge) || (part_prefix == "slide" && !slide) || !(item.value > 0)) continue;
        // Of a hand by finger: its bends and pins are too many to read.
        const std::string part = hand ? whose(run, item.key.substr(11)) : item.key.substr(11);
        const auto found = std::find_if(flow["parts"].begin(), flow["parts"].end(), [&](const Json& one) { return one["name"] == part; });
        Json& into = found == flow["parts"].end() ? flow["parts"].emplace_back(Json{{"name", part}, {"value", 0.0}, {"share", 0.0}}) : *found;
        into["value"] = into["value"].get<double>() + item.value * shaft_work;
        into["share"] = into["share"].get<double>() + item.value * shaft_work / total;
      }
    flows.push_back(flow);
  };
  add("supply and leads", {"supply_resistance"});
  add("copper of the winding", {"winding"});
  add("brushes and bearings of the motor", {"motor_drag"});
  add("gearhead", {"gear_cone", "gear_drag"});
  add("bends of the cords", {"cord_bends"}, "bend");
  add("inside the cords", {"cord_hysteresis"});
  add("let go by broken cords", {"cord_faults"});
  add("pins and washers", {"hinge_friction", "hinge_viscous"}, "hinge");
  add("slideways", {"slide_friction", "slide_viscous"}, "slide");
  add("end stops", {"end_stops"});
  add("contacts", {"contact_damping", "contact_friction", "object_damping"});
  const double useful = total - lost;
  return {{"title", fmt::format("from the supply to the grip, {:.3g} s to {:.3g} s", time[from], time[to])}, {"unit", "mJ"}, {"total", total}, {"flows", flows},
          {"useful", Json::array({{{"name", "stored in cords, pads, lifted weight and motion"}, {"value", useful}, {"share", useful / total}, {"parts", Json::array()}}})}};
}

// --- the drawing and the facts

Json drawing(const Run& run) {
  const auto& m = run.scenario.model;
  const plot::Subject subject{run.record, run.scenario, "", run.record.time.front(), run.record.time.back()};
  std::vector<plot::Placed> poses;
  for (const auto& body : m.bodies) poses.push_back(plot::placed(run.record, "/bodies/" + body.name + "/", 0));
  // The second view looks from the palm: y away from the reader, z across.
  const Eigen::Matrix3d turn = Eigen::AngleAxisd(-std::numbers::pi / 2, Vector3d::UnitX()).toRotationMatrix();
  Json views = Json::array();
  for (const bool palm : {false, true}) {
    const auto seen = [&](const Vector3d& p) { return palm ? Vector3d(turn * p) : p; };
    const auto point = [&](const Vector3d& p) {
      const Vector3d q = 1e3 * seen(p);
      return Json{q.x(), q.y()};
    };
    Json view = {{"name", palm ? "from the palm" : "from the side"}, {"polygons", Json::array()}, {"circles", Json::array()}, {"cords", Json::array()}, {"dimensions", Json::array()}, {"notes", Json::array()}, {"names", Json::array()}};
    std::map<std::string, std::array<double, 2>> ends;  // how far each finger of a hand reaches
    double tip = -1e9;
    for (std::size_t b = 0; b < m.bodies.size(); ++b) {
      const plot::Placed pose{palm ? Eigen::Matrix3d(turn * poses[b].R) : poses[b].R, seen(poses[b].p)};
      const auto polygon = [&](const model::Shape& shape, const char* role) {
        Json points = Json::array();
        for (const auto& [x, y] : plot::outline(shape, pose)) {
          points.push_back({1e3 * x, 1e3 * y});
          if (auto [end, first] = ends.try_emplace(model::finger_of(m.bodies[b].name), std::array{1e3 * x, 1e3 * y}); !first && 1e3 * x > end->second[0]) end->second = {1e3 * x, 1e3 * y};
          if (m.bodies[b].hinge && !simulation::rides_on_slide(m, static_cast<int>(b))) tip = std::max(tip, 1e3 * x);
        }
        view["polygons"].push_back({{"role", role}, {"points", points}});
      };
      for (const auto& solid : m.bodies[b].solids) polygon(solid.shape, "solid");
      for (const auto& shape : m.bodies[b].shapes) polygon(shape.shape, "contact");
    }
    Vector3d before = Vector3d::Zero();
    bool any = false, hand = false;
    for (std::size_t b = 0; b < m.bodies.size(); ++b) {
      if (!m.bodies[b].hinge) continue;
      const auto& hinge = *m.bodies[b].hinge;
      hand = hand || !model::finger_of(hinge.name).empty();
      if (!palm) {
        if (hinge.pin) {
          view["circles"].push_back({{"role", "pin"}, {"at", point(poses[b].p)}, {"radius", 500 * hinge.pin->diameter}});
          view["notes"].push_back({{"at", point(poses[b].p)}, {"text", fmt::format("{} ⌀{:.3g}", hinge.name, 1e3 * hinge.pin->diameter)}});
        }
        // Of a hand from pin to pin within each finger, where the two stand apart in this view.
        const auto parent = static_cast<std::size_t>(hinge.parent);
        const bool apart = m.bodies[parent].hinge && std::abs(poses[b].p.x() - poses[parent].p.x()) > 1e-4;
        if (hand) before = poses[parent].p;
        if (hand ? apart : any) view["dimensions"].push_back({{"from", point(before)}, {"to", point(poses[b].p)}, {"axis", "x"}, {"text", fmt::format("{:.4g}", 1e3 * (hand ? (poses[b].p - before).norm() : poses[b].p.x() - before.x()))}});
      }
      before = poses[b].p;
      any = true;
    }
    if (!palm && any && !hand) {
      const Json end = {tip, 1e3 * before.y()};
      view["dimensions"].push_back({{"from", point(before)}, {"to", end}, {"axis", "x"}, {"text", fmt::format("{:.4g}", tip - 1e3 * before.x())}});
    }
    if (!palm) {
      for (const auto& cord : m.cords) {
        for (const auto& way : cord.path)
          if (const auto* end = std::get_if<model::PulleyEnd>(&way)) {
            const auto& drive = m.drives[static_cast<std::size_t>(end->drive)];
            const Vector3d at = poses[static_cast<std::size_t>(drive.body)] * Vector3d(end->at + Vector3d(0, drive.pulley.radius, 0));
            view["circles"].push_back({{"role", "pulley"}, {"at", point(at)}, {"radius", 1e3 * drive.pulley.radius}});
            if (!hand) view["notes"].push_back({{"at", point(at)}, {"text", fmt::format("pulley R{:.3g}", 1e3 * drive.pulley.radius)}});
          } else if (const auto* guide = std::get_if<model::Guide>(&way)) {
            view["circles"].push_back({{"role", "guide"}, {"at", point(poses[static_cast<std::size_t>(guide->body)] * guide->at)}, {"radius", 1e3 * guide->radius}});
          }
      }
    }
    for (const auto& cord : m.cords) {
      Json points = Json::array();
      for (const auto& piece : plot::pieces_of(subject, cord, poses, 0))
        for (const Vector3d& corner : piece.corners) points.push_back(point(corner));
      const bool rubber = !std::holds_alternative<model::LinearLaw>(m.lines[static_cast<std::size_t>(cord.line)].law);
      view["cords"].push_back({{"kind", rubber ? "rubber" : "cord"}, {"points", points}});
    }
    if (palm)
      for (const auto& [finger, end] : ends)
        if (!finger.empty()) view["names"].push_back({{"at", end}, {"text", finger}});
    if (hand && !palm) view["name"] = "from the side, lengths from pin to pin along each finger";
    views.push_back(view);
  }
  return {{"views", views}};
}

Json facts(const Run& run) {
  const auto& m = run.scenario.model;
  Json list = Json::array();
  const auto add = [&](const std::string& group, const char* title, const std::string& text) { list.push_back({{"group", group}, {"title", title}, {"text", text}}); };
  for (const auto& supply : m.supplies) add("Supply " + supply.name, "voltage", fmt::format("{:.4g} V behind {:.3g} Ω{}", supply.voltage, supply.resistance,
                                                                                                              supply.current_limit > 0 ? fmt::format(", at most {:.3g} A", supply.current_limit) : std::string()));
  for (const auto& drive : m.drives) {
    const std::string group = "Drive " + drive.name;
    add(group, "motor", fmt::format("{}: {:.3g} Ω, {:.3g} mN·m/A", drive.motor.name, drive.motor.resistance, 1e3 * drive.motor.torque_constant));
    add(group, "gearhead", fmt::format("{}, {:.4g} : 1", drive.gearhead.name, drive.gearhead.ratio));
    add(group, "efficiency", fmt::format("{:.0f} % forward, {:.0f} % backward", 100 * drive.gearhead.forward_efficiency, 100 * drive.gearhead.backward_efficiency));
    add(group, "pulley radius", fmt::format("{:.4g} mm", 1e3 * drive.pulley.radius));
    add(group, "current limit", drive.current_limit > 0 ? fmt::format("{:.4g} A", drive.current_limit) : "none");
  }
  for (const auto& cord : m.cords) {
    const auto& line = m.lines[static_cast<std::size_t>(cord.line)];
    add("Cord " + cord.name, "line", fmt::format("{}, ⌀{:.3g} mm", line.name, 1e3 * line.diameter));
    add("Cord " + cord.name, "friction in its channel", fmt::format("{:.3g}", cord.channel.kinetic));
  }
  std::vector<double> last_posture;
  for (const auto& body : m.bodies)
    if (body.hinge) last_posture.push_back(run.record.column("/joints/" + body.hinge->name + "/angle").back());
  const simulation::System system(run.scenario);
  for (const simulation::Detour& detour : simulation::detours(system, last_posture)) {
    if (std::abs(detour.gain() - 1) < 5e-4 && std::abs(detour.led.path_length - detour.in_line.path_length) < 5e-5) continue;  // it is in line
    const std::string group = "Cord " + m.cords[static_cast<std::size_t>(system.cords[detour.cord].cord)].name;
    add(group, "lost before the finger", fmt::format("{:.1f} % (drive in line: {:.1f} %)", 100 * (1 - detour.led.ratio), 100 * (1 - detour.in_line.ratio)));
    add(group, "grip against a drive in line", fmt::format("{:.1f} % for the same tension at the pulley", 100 * detour.gain()));
    add(group, "longer than in line", fmt::format("{:.1f} mm; stretches {:.2f} mm more at stall", 1e3 * (detour.led.path_length - detour.in_line.path_length),
                                                  1e3 * (detour.led.stretch - detour.in_line.stretch)));
  }
  for (const auto& body : m.bodies) {
    if (const auto& slide = body.slide) {
      const std::string group = "Slide " + slide->name;
      if (slide->slideway)
        add(group, "slideway", fmt::format("{:.3g} mm long, friction {:.3g}, preload {:.3g} N", 1e3 * slide->slideway->length, slide->slideway->friction.kinetic_coefficient, slide->slideway->preload));
      if (slide->stops) add(group, "range", fmt::format("{:.4g} mm to {:.4g} mm", 1e3 * slide->stops->lower, 1e3 * slide->stops->upper));
    }
    if (!body.hinge) continue;
    const std::string group = "Joint " + body.hinge->name;
    if (body.hinge->pin) add(group, "pin", fmt::format("⌀{:.3g} mm", 1e3 * body.hinge->pin->diameter));
    if (body.hinge->washers) add(group, body.hinge->bushings ? "flanges of bushings" : "washers", fmt::format("⌀{:.3g} / {:.3g} mm, friction {:.3g}", 1e3 * body.hinge->washers->outer_diameter, 1e3 * body.hinge->washers->inner_diameter, body.hinge->washers->friction.kinetic_coefficient));
    if (body.hinge->bushings) add(group, "bushings", body.hinge->bushings->name);
    if (body.hinge->stops) add(group, "range", fmt::format("{:.4g}° to {:.4g}°", body.hinge->stops->lower * kDegree, body.hinge->stops->upper * kDegree));
  }
  return list;
}

int weight_of(const record::Event& event) {
  const std::string& kind = event.kind;
  if (kind == "control" && event.time > 0) return 3;  // a guard switches off, a controller browns out; at the start it only says which it is
  if (kind == "command" || kind == "contact" || kind == "caution" || kind == "fault" || kind == "fault-over") return 3;
  if (kind == "slack" || kind == "lift-off" || kind == "stop") return 2;
  return 1;
}

}  // namespace

std::string value_text(double si, const std::string& unit) {
  if (!std::isfinite(si)) return "—";
  if (unit == "rad") return fmt::format("{:.4g}°", si * kDegree);
  if (unit == "K") return fmt::format("{:.4g} °C", si - 273.15);
  if (unit == "N m") return fmt::format("{:.4g} N·mm", 1e3 * si);
  if (unit == "m") return fmt::format("{:.4g} mm", 1e3 * si);
  if (unit == "J") return fmt::format("{:.4g} mJ", 1e3 * si);
  if (unit == "Pa") return fmt::format("{:.4g} MPa", 1e-6 * si);
  return unit == "1" ? fmt::format("{:.4g}", si) : fmt::format("{:.4g} {}", si, unit);
}

std::string title_of(const std::string& key) {
  std::string title = key;
  const std::size_t dot = title.find('.');
  for (std::size_t i = 0; i < std::min(dot, title.size()); ++i)
    if (title[i] == '_') title[i] = ' ';
  if (dot != std::string::npos) title.replace(dot, 1, ", ");
  return title;
}

std::string group_of(const std::string& key) {
  const std::string stem = key.substr(0, key.find('.'));
  if (stem == "margin") return "Margins";
  if (stem == "loss_share" || stem.find("energy") != std::string::npos || stem == "shaft_work") return "Energy";
  if (stem.find("tension") != std::string::npos || stem.find("slack") != std::string::npos || stem.find("stretch") != std::string::npos) return "Cords";
  if (stem.find("force") != std::string::npos || stem.find("object") != std::string::npos || stem.find("contact") != std::string::npos) return "Grip";
  if (stem.find("current") != std::string::npos || stem.find("temperature") != std::string::npos || stem.find("shaft") != std::string::npos || stem.find("turn") != std::string::npos || stem == "stalled") return "Drive";
  if (stem.find("closing") != std::string::npos || stem.find("settling") != std::string::npos || stem.find("joint") != std::string::npos) return "Closing";
  return "Opening";
}

Run read_run(const std::filesystem::path& file) {
  Run run{file, record::read_record(file), {}};
  if (run.record.time.size() < 2)
    throw InvalidInput(fmt::format("{}: the record holds {} sample{}; needed to show: two", file.string(), run.record.time.size(), run.record.time.size() == 1 ? "" : "s"));
  reading::Source source(run.record.inputs.files);
  run.scenario = reading::read_scenario(source, run.record.inputs.scenario_path, run.record.inputs.overrides);
  return run;
}

Json record_data(const Run& run, const std::string& label, const std::vector<record::LimitRecord>& limits) {
  const auto& record = run.record;
  const auto& m = run.scenario.model;
  const std::size_t n = record.time.size();
  const plot::Subject subject{record, run.scenario, "", record.time.front(), record.time.back()};
  Tables tables(record);

  // Everything over time first; which rows are kept follows from all of it.
  struct Series {
    std::string name, description;
    std::size_t table;
    bool shown;
  };
  struct Chart {
    std::size_t kind;
    std::string id, title, unit;
    std::vector<Series> series;
  };
  struct ChartKind {
    const char *id, *title, *unit;
    bool of_finger;  // a hand has one for each finger
  };
  enum Kind : std::size_t { angles, tensions, contact_forces, shafts, speeds, currents, voltages, temperatures, torques, told, tips, energy, load_forces, net_forces, net_moments, slides };
  constexpr std::array<ChartKind, slides + 1> kinds{{{"angles", "Joint angles", "deg", true}, {"tensions", "Cord tensions", "N", true},
                                                     {"contacts", "Contact forces, normal", "N", true}, {"shaft", "Shaft, as asked, read and true", "deg", false},
                                                     {"speed", "Speed of the shaft", "deg/s", false}, {"currents", "Currents", "A", false},
                                                     {"voltages", "Voltages", "V", false}, {"temperatures", "Temperatures", "°C", false},
                                                     {"torques", "Load on the shafts", "N·mm", false}, {"told", "Told by the firmware", "", false},
                                                     {"tip", "Fingertip, told from true", "mm", false}, {"energy", "Energy since the start", "mJ", false},
                                                     {"loads", "Loads", "N", false}, {"net_force", "Net force on what is free: 0 in balance", "N", false},
                                                     {"net_moment", "Net moment on what is free: 0 in balance", "N·mm", false}, {"slides", "Positions of slides", "mm", false}}};
  std::vector<Chart> charts;
  const std::vector<std::string> fingers = plot::fingers_of(run.scenario.model);
  const bool hand = !fingers.empty();
  const auto chart_for = [&](std::size_t kind, const std::string& finger) -> Chart& {
    const std::string id = finger.empty() ? kinds[kind].id : fmt::format("{}.{}", kinds[kind].id, finger);
    auto found = std::find_if(charts.begin(), charts.end(), [&](const Chart& chart) { return chart.id == id; });
    if (found != charts.end()) return *found;
    const auto after = std::find_if(charts.begin(), charts.end(), [&](const Chart& chart) { return chart.kind > kind; });
    const std::string title = finger.empty() ? kinds[kind].title : fmt::format("{}, {}", kinds[kind].title, finger);
    return *charts.insert(after, Chart{kind, id, title, kinds[kind].unit, {}});
  };
  const auto description = [&](const std::string& path) { return record.channels[static_cast<std::size_t>(record.find(path))].description; };
  const auto add = [&](std::size_t kind, std::string name, const std::string& path, double factor, double offset = 0, bool shown = true, int column = 0) {
    if (record.find(path) < 0) return;
    std::string finger;
    if (hand && kinds[kind].of_finger) {
      finger = whose(run, name);
      for (auto at = name.find(finger + "."); at != std::string::npos; at = name.find(finger + ".", at)) name.erase(at, finger.size() + 1);
    }
    chart_for(kind, finger).series.push_back({name, description(path), tables.add(path, column, factor, offset), shown});
  };
  for (const auto& body : m.bodies)
    if (body.hinge) add(angles, body.hinge->name, "/joints/" + body.hinge->name + "/angle", kDegree);
  for (const auto& body : m.bodies)
    if (body.slide) add(slides, body.slide->name, "/joints/" + body.slide->name + "/position", 1e3);
  for (const auto& cord : m.cords) {
    const std::string path = "/cords/" + cord.name + "/tension";
    const int channel = record.find(path);
    if (channel < 0) continue;
    const auto& names = record.channels[static_cast<std::size_t>(channel)].columns;
    const int width = record.channels[static_cast<std::size_t>(channel)].width();
    for (int c = 0; c < width; ++c)
      add(tensions, fmt::format("{}, span {}", cord.name, names.empty() ? std::to_string(c + 1) : names[static_cast<std::size_t>(c)]), path, 1, 0, c == 0 || c == width - 1, c);
  }
  for (const auto& channel : record.channels)
    if (channel.path.starts_with("/contacts/") && channel.path.ends_with("/normal_force"))
      add(contact_forces, channel.path.substr(10, channel.path.size() - 10 - 13), channel.path, 1);
  const bool shared = m.drives.size() > 1;  // the supply speaks for itself then
  for (const auto& drive : m.drives) {
    const std::string base = "/drives/" + drive.name + "/";
    add(currents, "motor of " + drive.name, base + "current", 1);
    if (!shared) add(currents, "supply of " + drive.name, base + "supply_current", 1);
    add(voltages, "motor of " + drive.name, base + "motor_voltage", 1);
    if (!shared) add(voltages, "supply of " + drive.name, base + "supply_voltage", 1);
    add(temperatures, "winding of " + drive.name, base + "winding_temperature", 1, -273.15);
    add(temperatures, "housing of " + drive.name, base + "housing_temperature", 1, -273.15, m.drives.size() <= 4);  // more than eight curves have no colour of their own
    add(torques, drive.name, base + "load_torque", 1e3);
  }
  if (shared)
    for (const auto& supply : m.supplies) {
      add(currents, "supply " + supply.name, "/supplies/" + supply.name + "/current", 1);
      add(voltages, "supply " + supply.name, "/supplies/" + supply.name + "/voltage", 1);
    }
  // What a controller reads and asks for stands beside what is true.
  for (std::size_t d = 0; d < m.drives.size(); ++d) {
    const std::string &name = m.drives[d].name, base = "/drives/" + name + "/", of = shared ? name : "";
    const auto own = [&](std::size_t kind, const char* words, const std::string& path, double factor, double offset = 0, int column = 0) {
      if (record.find(path) >= 0) chart_for(kind, of).series.push_back({words, description(path), tables.add(path, column, factor, offset), true});
    };
    const bool controlled = std::any_of(run.scenario.controllers.begin(), run.scenario.controllers.end(), [&](const auto& one) { return one.drive == static_cast<int>(d); });
    if (!controlled) continue;
    // A loop that is not there asks for nothing.
    const auto asks = [&](const char* leaf) {
      if (record.find(base + leaf) < 0) return false;
      const auto values = record.column(base + leaf);
      return std::any_of(values.begin(), values.end(), [](double value) { return std::isfinite(value) && value != 0; });
    };
    if (asks("control/set_point")) own(shafts, "set point", base + "control/set_point", kDegree);
    own(shafts, "reading", base + "control/reading", kDegree);
    own(shafts, "true", base + "shaft_angle", kDegree);
    if (asks("control/speed_set_point")) {
      own(speeds, "set point", base + "control/speed_set_point", kDegree);
      own(speeds, "made of readings", base + "control/speed_reading", kDegree);
      own(speeds, "true", base + "shaft_speed", kDegree);
    }
    if (asks("control/current_set_point")) add(currents, "asked of " + name, base + "control/current_set_point", 1);
    if (asks("control/current_limit")) add(currents, "limit asked of " + name, base + "control/current_limit", 1);
    add(currents, "reading of " + name, base + "control/current_reading", 1);
    add(voltages, "asked of " + name, base + "control/command", 1);
    if (asks("control/winding_estimate")) add(temperatures, "winding of " + name + ", estimated", base + "control/winding_estimate", 1, -273.15);
    for (int i = 0; i < SINEWRIGHT_TOLD && record.find(base + "control/told") >= 0; ++i) {
      const auto values = record.column(base + "control/told", i);
      if (std::any_of(values.begin(), values.end(), [](double value) { return value != 0; })) own(told, fmt::format("told[{}]", i).c_str(), base + "control/told", 1, 0, i);
    }
    if (record.find(base + "fingertip/told") >= 0) {
      const std::size_t table = tables.add(1, 0.01);
      for (std::size_t i = 0; i < n; ++i) {
        const auto said = plot::row_of(record, base + "fingertip/told", i), true_place = plot::row_of(record, base + "fingertip/true", i);
        tables.at(table, i) = 1e3 * std::hypot(said[0] - true_place[0], said[1] - true_place[1], said[2] - true_place[2]);
      }
      chart_for(tips, of).series.push_back({"distance", "between the fingertip that the sensor tells and the true one", table, true});
    }
  }
  // A grasp holds where what acts on the object adds up to nothing.
  for (const auto& object : run.scenario.objects) {
    if (!std::holds_alternative<model::HeldFree>(object.hold)) continue;
    const auto size = [&](Kind kind, const char* leaf, double factor) {
      const std::string path = "/objects/" + object.name + "/" + leaf;
      if (record.find(path) < 0) return;
      std::vector<double> sizes(n);
      for (std::size_t i = 0; i < n; ++i) {
        const auto v = plot::row_of(record, path, i);
        sizes[i] = factor * std::hypot(v[0], v[1], v[2]);
      }
      // It trembles for as long as anything moves: held as closely as the rest it alone would keep most rows.
      const std::size_t table = tables.add(1, kBoundOfNet * *std::max_element(sizes.begin(), sizes.end()));
      for (std::size_t i = 0; i < n; ++i) tables.at(table, i) = sizes[i];
      chart_for(kind, "").series.push_back({object.name, description(path), table, true});
    };
    size(net_forces, "net_force", 1);
    size(net_moments, "net_moment", 1e3);
  }
  for (const auto& channel : record.channels)
    if (channel.path.starts_with("/energy/")) {
      std::string name = channel.path.substr(8);
      const bool shown = name == "supply" || name == "winding" || name == "gear_cone" || name == "stored" || name == "motor_drag";
      std::replace(name.begin(), name.end(), '_', ' ');
      add(energy, name, channel.path, 1e3, 0, shown);
    }
  std::vector<std::size_t> load_sizes;
  for (const auto& load : run.scenario.loads) {
    const std::size_t table = tables.add(1, 0);
    for (std::size_t i = 0; i < n; ++i) tables.at(table, i) = simulation::value_at(load.force, record.time[i]);
    chart_for(load_forces, "").series.push_back({load.name, "force of the load", table, true});
    load_sizes.push_back(table);
  }

  struct Body {
    std::string name, base;
    const char* role;
    std::size_t table;
  };
  std::vector<Body> bodies;
  const auto add_body = [&](const std::string& name, const std::string& base, const char* role) {
    const std::size_t table = tables.add(7, 1e-3);  // of the quaternion, below 0.1 degree; what is in mm is bounded by its range
    for (int c = 0; c < 3; ++c) tables.fill(table, c, base + "position", c, 1e3);
    for (int c = 0; c < 4; ++c) tables.fill(table, 3 + c, base + "orientation", c, 1);
    bodies.push_back({name, base, role, table});
  };
  for (const auto& body : m.bodies) add_body(body.name, "/bodies/" + body.name + "/", body.moves() ? "phalanx" : "palm");
  for (const auto& object : run.scenario.objects) add_body(object.name, "/objects/" + object.name + "/", "object");

  Vector3d low = Vector3d::Constant(1e9), high = -low;
  const auto grow = [&](const Vector3d& p) { low = low.cwiseMin(p), high = high.cwiseMax(p); };

  struct CordTables {
    std::size_t points, tension, slack;
    std::vector<std::size_t> spans;
    double most = 0;
  };
  std::vector<CordTables> cords;
  std::vector<std::vector<plot::Placed>> poses(n);
  for (std::size_t i = 0; i < n; ++i)
    for (const auto& body : m.bodies) poses[i].push_back(plot::placed(record, "/bodies/" + body.name + "/", i));
  for (const auto& cord : m.cords) {
    CordTables made;
    std::size_t count = 0;
    const auto first = plot::pieces_of(subject, cord, poses[0], 0);
    for (const auto& piece : first) {
      for (std::size_t k = 1; k < piece.corners.size(); ++k) made.spans.push_back(piece.span + (piece.corners.size() > 2 && 2 * k > piece.corners.size()));
      count += piece.corners.size() - 1;
    }
    made.points = tables.add(3 * (count + 1), 0.05);
    const std::string base = "/cords/" + cord.name + "/";
    const int width = record.channels[static_cast<std::size_t>(record.find(base + "tension"))].width();
    made.tension = tables.add(static_cast<std::size_t>(width), 0.01);
    made.slack = tables.add(base + "slack", 0, 1e3, 0, 0.01);
    for (std::size_t i = 0; i < n; ++i) {
      std::size_t k = 0;
      const auto put = [&](const Vector3d& p) {
        for (int c = 0; c < 3; ++c) tables.at(made.points, i, 3 * k + static_cast<std::size_t>(c)) = 1e3 * p[c];
        grow(1e3 * p);
        ++k;
      };
      const auto pieces = plot::pieces_of(subject, cord, poses[i], i);
      put(pieces.front().corners.front());
      for (const auto& piece : pieces)
        for (std::size_t corner = 1; corner < piece.corners.size(); ++corner) put(piece.corners[corner]);
      const auto tension = plot::row_of(record, base + "tension", i);
      for (std::size_t c = 0; c < tension.size(); ++c) {
        tables.at(made.tension, i, c) = tension[c];
        made.most = std::max(made.most, tension[c]);
      }
    }
    cords.push_back(std::move(made));
  }

  struct Arrow {
    std::string name;
    std::size_t point, force;
    double most = 0;
  };
  std::vector<Arrow> contacts, loads;
  for (const auto& channel : record.channels) {
    if (!channel.path.starts_with("/contacts/") || !channel.path.ends_with("/force")) continue;
    const std::string base = channel.path.substr(0, channel.path.size() - 5);
    Arrow arrow{base.substr(10, base.size() - 11), tables.add(3, 0.1), tables.add(3, 0.01)};
    for (std::size_t i = 0; i < n; ++i) {
      const auto p = plot::row_of(record, base + "point", i), f = plot::row_of(record, base + "force", i);
      for (std::size_t c = 0; c < 3; ++c) tables.at(arrow.point, i, c) = 1e3 * p[c], tables.at(arrow.force, i, c) = f[c];
      const double size = std::hypot(f[0], f[1], f[2]);
      if (std::isfinite(size)) arrow.most = std::max(arrow.most, size);
    }
    contacts.push_back(std::move(arrow));
  }
  for (std::size_t l = 0; l < run.scenario.loads.size(); ++l) {
    const model::Load& load = run.scenario.loads[l];
    Arrow arrow{load.name, tables.add(3, 0.1), tables.add(3, 0.01)};
    for (std::size_t i = 0; i < n; ++i) {
      const std::string base = load.body_index >= 0 ? "/bodies/" + body_name(run, load.body_index) + "/"
                                                    : "/objects/" + run.scenario.objects[static_cast<std::size_t>(load.object_index)].name + "/";
      const plot::Placed pose = plot::placed(record, base, i);
      const Vector3d p = 1e3 * (pose * load.at), f = tables.at(load_sizes[l], i) * (load.follows_body ? Vector3d(pose.R * load.direction) : load.direction);
      for (int c = 0; c < 3; ++c) tables.at(arrow.point, i, static_cast<std::size_t>(c)) = p[c], tables.at(arrow.force, i, static_cast<std::size_t>(c)) = f[c];
      arrow.most = std::max(arrow.most, f.norm());
    }
    loads.push_back(std::move(arrow));
  }
  std::vector<std::size_t> shaft_angles;
  for (const auto& drive : m.drives) shaft_angles.push_back(tables.add("/drives/" + drive.name + "/shaft_angle", 0, kDegree, 0, 0.5));

  // Rows of the moments that the page jumps to.
  const auto row_at = [&](double t) { return std::min<std::size_t>(static_cast<std::size_t>(std::lower_bound(record.time.begin(), record.time.end(), t) - record.time.begin()), n - 1); };
  std::vector<std::size_t> wanted;
  const auto instants = plot::instants(subject);
  for (const auto& instant : instants) wanted.push_back(instant.row);
  for (const auto& event : record.events)
    if (weight_of(event) == 3) wanted.push_back(row_at(event.time));
  for (const auto& margin : record.margins.values)
    if (std::isfinite(margin.time)) wanted.push_back(row_at(margin.time));
  const Thinned kept = thin_out(record.time, tables.columns(), wanted, kBound, kMostRows);
  const auto& rows = kept.rows;

  Json json = {{"label", label}, {"name", run.scenario.name}, {"model", m.name}, {"description", run.scenario.about}, {"file", run.file.filename().string()}, {"outcome", record.outcome},
               {"shown_as", shown_as(run)}, {"fingers", fingers}};
  const bool invented = run.scenario.about.find("nvented") != std::string::npos || m.about.find("nvented") != std::string::npos;
  json["demo_data"] = invented ? Json("The data of this design are invented for demonstration and stand for no product or person.") : Json(nullptr);
  json["asked"] = asked(run);
  json["requirements"] = requirements(run);
  json["headline"] = headline(run, limits);
  const bool has_net = std::any_of(charts.begin(), charts.end(), [](const Chart& chart) { return chart.kind == net_forces; });
  json["rows"] = {{"kept", rows.size()}, {"of", n}, {"bound", kept.found},
                  {"bound_text", kept.bound == 0 ? "all rows of the record"
                                                 : fmt::format("lines between the kept rows stay within {:.2g} % of each curve's range (or 0.05 mm and 0.1° of what is drawn{}); every curve's extremes are kept", 100 * kept.bound, has_net ? ", 1 % of net forces and moments" : "")}};
  {
    std::vector<float> time;
    for (const std::size_t row : rows) time.push_back(static_cast<float>(record.time[row]));
    json["time"] = packed(time);
  }
  json["instants"] = Json::array();
  for (const auto& instant : instants) json["instants"].push_back({{"time", instant.time}, {"what", instant.what}});
  json["events"] = Json::array();
  std::size_t small = 0;
  for (const auto& event : record.events) {
    const int weight = weight_of(event);
    if (weight == 1 && ++small > 300) continue;  // a list longer than that nobody reads; the record has them all
    std::string subject_of = event.subject;
    if (event.kind == "command") {
      // The same command to several drives at once is one event.
      const auto same = [&](const auto& other) { return other.kind == "command" && other.time == event.time && other.detail == event.detail; };
      if (&*std::find_if(record.events.begin(), record.events.end(), same) != &event) continue;
      const auto together = static_cast<std::size_t>(std::count_if(record.events.begin(), record.events.end(), same));
      if (together > 1) subject_of = together == m.drives.size() ? "all drives" : fmt::format("{} drives", together);
    }
    json["events"].push_back({{"time", event.time}, {"kind", event.kind}, {"text", subject_of + " " + event.detail}, {"weight", weight}});
  }
  json["charts"] = Json::array();
  for (const Chart& chart : charts) {
    if (chart.series.empty()) continue;
    Json made = {{"id", chart.id}, {"title", chart.title}, {"unit", chart.unit}, {"series", Json::array()}};
    for (const Series& series : chart.series)
      made["series"].push_back({{"name", series.name}, {"shown", series.shown}, {"description", series.description}, {"data", tables.array(series.table, rows)}});
    json["charts"].push_back(made);
  }

  Json& scene = json["scene"];
  scene["bodies"] = Json::array();
  for (std::size_t b = 0; b < bodies.size(); ++b) {
    Json made = {{"name", bodies[b].name}, {"role", bodies[b].role}, {"poses", tables.array(bodies[b].table, rows)}, {"shapes", Json::array()}};
    const auto see = [&](const model::Shape& shape, const char* role) {
      made["shapes"].push_back(shape_data(shape, role));
      for (std::size_t i = 0; i < n; i += std::max<std::size_t>(1, n / 50)) {
        const plot::Placed pose = plot::placed(record, bodies[b].base, i);
        for (const auto& [x, y] : plot::outline(shape, pose)) grow({1e3 * x, 1e3 * y, 1e3 * pose.p.z()});
        // Turned so that z lies where y was: the outline then gives the extent across the hand.
        const Eigen::Matrix3d turn = Eigen::AngleAxisd(-std::numbers::pi / 2, Vector3d::UnitX()).toRotationMatrix();
        for (const auto& [x, y] : plot::outline(shape, {turn * pose.R, turn * pose.p})) grow({1e3 * x, 1e3 * pose.p.y(), -1e3 * y});
      }
    };
    if (b < m.bodies.size()) {
      for (const auto& solid : m.bodies[b].solids) see(solid.shape, "solid");
      for (const auto& shape : m.bodies[b].shapes) see(shape.shape, "contact");
    } else {
      see(run.scenario.objects[b - m.bodies.size()].shape.shape, "contact");
    }
    scene["bodies"].push_back(made);
  }
  scene["pins"] = Json::array();
  scene["guides"] = Json::array();
  scene["pulleys"] = Json::array();
  for (std::size_t b = 0; b < m.bodies.size(); ++b) {
    const auto& hinge = m.bodies[b].hinge;
    if (!hinge || !hinge->pin) continue;
    const model::Pin& pin = *hinge->pin;
    const double width = pin.eye_width > 0 ? pin.eye_width + 2 * (pin.cheek_width + std::max(0.0, pin.gap)) : 12e-3;
    scene["pins"].push_back({{"joint", hinge->name}, {"body", b}, {"at", Json{0, 0, 0}}, {"axis", plain(hinge->seat.transpose() * hinge->pin_axis)},
                             {"radius", 500 * pin.diameter}, {"length", 1e3 * width}});
  }
  scene["cords"] = Json::array();
  for (std::size_t c = 0; c < m.cords.size(); ++c) {
    const model::Cord& cord = m.cords[c];
    const auto& line = m.lines[static_cast<std::size_t>(cord.line)];
    for (const auto& way : cord.path) {
      if (const auto* guide = std::get_if<model::Guide>(&way))
        scene["guides"].push_back({{"body", guide->body}, {"at", mm(guide->at)}, {"axis", plain(guide->axis)}, {"radius", 1e3 * guide->radius - 500 * line.diameter}, {"length", 4}});
      if (const auto* end = std::get_if<model::PulleyEnd>(&way)) {
        const auto d = static_cast<std::size_t>(end->drive);
        scene["pulleys"].push_back({{"drive", m.drives[d].name}, {"body", m.drives[d].body}, {"at", mm(end->at + Vector3d(0, m.drives[d].pulley.radius, 0))},
                                    {"axis", Json{0, 0, 1}}, {"radius", 1e3 * m.drives[d].pulley.radius}, {"length", 5}, {"angle", tables.array(shaft_angles[d], rows)}});
      }
    }
    scene["cords"].push_back({{"name", cord.name}, {"kind", std::holds_alternative<model::LinearLaw>(line.law) ? "cord" : "rubber"}, {"radius", 500 * line.diameter},
                              {"points", tables.array(cords[c].points, rows)}, {"span_of", cords[c].spans}, {"tension", tables.array(cords[c].tension, rows)},
                              {"slack", tables.array(cords[c].slack, rows)}, {"most_tension", cords[c].most}});
  }
  const auto arrows = [&](const std::vector<Arrow>& list) {
    Json made = Json::array();
    for (const Arrow& arrow : list) made.push_back({{"name", arrow.name}, {"point", tables.array(arrow.point, rows)}, {"force", tables.array(arrow.force, rows)}, {"most", arrow.most}});
    return made;
  };
  scene["contacts"] = arrows(contacts);
  scene["loads"] = arrows(loads);
  scene["box"] = {{"low", plain(low)}, {"high", plain(high)}};

  json["losses"] = losses(run);
  json["margins"] = margins_data(run);
  json["drawing"] = drawing(run);
  json["facts"] = facts(run);
  json["summary"] = Json::array();
  for (const auto& value : record.summary) json["summary"].push_back({{"group", group_of(value.key)}, {"title", title_of(value.key)}, {"text", value_text(value.value, value.unit)}});
  json["inputs"] = {{"engine_version", record.inputs.engine_version}, {"seed", record.inputs.seed}, {"scenario", record.inputs.scenario_path}, {"overrides", record.inputs.overrides}, {"files", Json::array()}};
  for (const auto& [path, text] : record.inputs.files) json["inputs"]["files"].push_back({{"path", path}, {"text", text}});
  return json;
}

}  // namespace sinewright::report
