#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <numbers>

#include "commands.h"
#include "fits_text.h"
#include "mesh_text.h"
#include "packing_text.h"
#include "parts_text.h"
#include "plot/figures.h"
#include "plot/packing_figure.h"
#include "quantity/quantity.h"
#include "reading/reading.h"
#include "model/names.h"
#include "simulation/detour.h"
#include "simulation/free_closing.h"
#include "simulation/observe.h"
#include "simulation/sensor_watch.h"
#include "simulation/static_analysis.h"

namespace sinewright::tool {

namespace {

using Eigen::VectorXd;
using simulation::System;

constexpr double degree = std::numbers::pi / 180;

std::size_t at(int index) { return static_cast<std::size_t>(index); }

// A model alone, as a scenario in which nothing happens.
model::Scenario idle(model::Model m) {
  model::Scenario scenario;
  scenario.name = m.name;
  scenario.model = std::move(m);
  scenario.duration = 1;
  return scenario;
}

struct Report {
  std::string text;
  nlohmann::ordered_json json;

  void line(const std::string& s) { text += s + "\n"; }
};

std::string hinge_name(const System& system, std::size_t i) {
  return system.model().bodies[at(system.hinges[i].body)].hinge->name;
}

// A bar that shares a pull is turned by its cords and closes no finger.
bool rides(const System& system, std::size_t i) { return simulation::rides_on_slide(system.model(), system.hinges[i].body); }

std::pair<double, double> range_of(const System& system, std::size_t i) {
  const auto& stops = system.model().bodies[at(system.hinges[i].body)].hinge->stops;
  return stops ? std::pair{stops->lower, stops->upper} : std::pair{0.0, 90 * degree};
}

void parts(const System& system, Report& report) {
  const model::Model& m = system.model();
  report.line(fmt::format("{}\n\nBodies", m.name));
  double whole = 0;
  for (std::size_t b = 0; b < m.bodies.size(); ++b) {
    const model::Body& body = m.bodies[b];
    const auto& mass = system.tree.links[at(system.link_of_body[b])].mass;
    whole += mass.mass;
    auto& entry = report.json["bodies"][body.name];
    if (body.slide) {
      report.line(fmt::format("  {:<14} on {} by {}, slides, {:.2f} g", body.name, m.bodies[at(body.slide->parent)].name, body.slide->name,
                              1e3 * mass.mass));
      entry["mass"] = {{"value", mass.mass}, {"unit", "kg"}};
      continue;
    }
    if (!body.hinge) {
      report.line(fmt::format("  {:<14} fixed", body.name));
      continue;
    }
    report.line(fmt::format("  {:<14} on {} by {}, pin {:.1f} mm from the parent's origin, {:.2f} g, centre of mass at {:.1f} mm",
                            body.name, m.bodies[at(body.hinge->parent)].name, body.hinge->name, 1e3 * body.hinge->at.norm(),
                            1e3 * mass.mass, 1e3 * mass.center.x()));
    entry["mass"] = {{"value", mass.mass}, {"unit", "kg"}};
    entry["pin_distance"] = {{"value", body.hinge->at.norm()}, {"unit", "m"}};
  }
  report.line(fmt::format("  moving mass    {:.2f} g", 1e3 * whole));
  const std::string meshes = mesh_text(system.scenario);
  if (meshes.empty()) return;
  report.text += "\nParts from STL files\n" + meshes;
  report.json["stl_parts"] = mesh_json(system.scenario);
}

void drives(const System& system, Report& report) {
  for (std::size_t d = 0; d < system.shafts.size(); ++d) {
    const model::Drive& drive = system.model().drives[d];
    const auto s = simulation::drive_statics(system, d);
    report.line(fmt::format("\nDrive {} (cold motor)", drive.name));
    const bool at_limit = s.driven_current < s.stall_current * (1 - 1e-9);
    const bool by_driver = drive.current_limit > 0 && s.driven_current >= drive.current_limit * (1 - 1e-9);
    const char* limited = !at_limit ? "" : by_driver ? " (the driver's limit)" : " (the supply's limit)";
    report.line(fmt::format("  stall current {:.3f} A, driven with {:.3f} A{}", s.stall_current, s.driven_current,
                            limited));
    report.line(fmt::format("  at the output: no load {:.2f} rad/s ({:.1f} mm/s of cord), stall {:.1f} N·mm = {:.2f} N of cord tension",
                            s.no_load_speed, 1e3 * s.closing_speed, 1e3 * s.stall_torque, s.stall_tension));
    report.line(std::isinf(s.back_drive_torque)
                    ? std::string("  power off: the gearhead locks, no load turns the shaft back")
                    : fmt::format("  power off, leads open: the shaft holds up to {:.1f} N·mm = {:.2f} N of cord tension",
                                  1e3 * s.back_drive_torque, s.back_drive_tension));
    report.json["drives"][drive.name] = {{"stall_current_A", s.stall_current},
                                         {"driven_current_A", s.driven_current},
                                         {"no_load_speed_rad_s", s.no_load_speed},
                                         {"stall_torque_N_m", s.stall_torque},
                                         {"stall_tension_N", s.stall_tension},
                                         {"closing_speed_m_s", s.closing_speed}};
    auto& json = report.json["drives"][drive.name];
    if (std::isinf(s.back_drive_torque)) {
      json["back_drive_torque_N_m"] = nullptr;
      json["back_drive_tension_N"] = nullptr;
    } else {
      json["back_drive_torque_N_m"] = s.back_drive_torque;
      json["back_drive_tension_N"] = s.back_drive_tension;
    }
  }
}

// What the sensors can tell apart, and whether they see the whole motion.
void sensors(const System& system, Report& report) {
  for (const simulation::TipEstimate& tip : simulation::tip_estimates(system)) {
    const model::Drive& drive = system.model().drives[tip.drive()];
    const model::Sensor& sensor = *drive.sensor;
    const double turns = simulation::sensor_turns(drive), step = drive::angle_step(sensor, turns),
                 play = 2 * simulation::sensor_half_play(drive);
    const simulation::TipSteps& tell = tip.steps();
    report.line(fmt::format("\nSensor of {}", drive.name));
    report.line(fmt::format("  one step {:.3g} deg of the shaft, noise {:.3g} deg (rms), play and twist {:.3g} deg in all", step / degree,
                            drive::angle_noise(sensor, turns) / degree, play / degree));
    report.line(fmt::format("  smallest motion of the fingertip that it can tell: {:.3g} to {:.3g} mm, after a reversal {:.3g} to {:.3g} mm",
                            1e3 * tell.smallest, 1e3 * tell.largest, 1e3 * tell.smallest_reversed, 1e3 * tell.largest_reversed));
    const double closed = tip.closed_shaft();
    report.line(fmt::format("  free closing turns the shaft by {:.1f} deg", closed / degree));
    auto& json = report.json["sensors"][drive.name];
    json = {{"step_rad", step}, {"noise_rms_rad", drive::angle_noise(sensor, turns)}, {"play_rad", play},
            {"tip_step_smallest_m", tell.smallest}, {"tip_step_largest_m", tell.largest},
            {"tip_step_reversed_smallest_m", tell.smallest_reversed}, {"tip_step_reversed_largest_m", tell.largest_reversed},
            {"closed_shaft_rad", closed}};
    if (const auto* p = std::get_if<model::Potentiometer>(&sensor.kind)) {
      const double end = (p->range - p->at_zero) / turns;
      json["range_end_rad"] = end;
      if (closed > end)
        report.line(fmt::format("    CAUTION: its track ends at {:.1f} deg of the shaft; give it more range or fewer turns", end / degree));
    } else if (const auto* absolute = std::get_if<model::AbsoluteEncoder>(&sensor.kind)) {
      const double end = (2 * std::numbers::pi - absolute->at_zero) / turns;
      json["range_end_rad"] = end;
      if (closed > end)
        report.line(fmt::format("    CAUTION: its turn ends at {:.1f} deg of the shaft; after a power loss it may be wrong by whole turns", end / degree));
    } else {
      report.line("    note: it loses its zero with its power");
    }
  }
}

// One table over a joint's range, or over a closing of all joints together.
void sweep(const System& system, const std::string& title, const std::vector<std::vector<double>>& postures,
           const std::vector<std::size_t>& shown, std::size_t cord, Report& report) {
  const std::string& name = system.model().cords[at(system.cords[cord].cord)].name;
  std::string head = "    angle [deg]";
  for (std::size_t j : shown) head += fmt::format("  {:>9}", hinge_name(system, j));
  report.line(fmt::format("  {}", title));
  report.line(head + "   way [mm]   last/first tension   turning angle of each bend [deg]");
  auto& rows = report.json["cords"][name]["sweeps"][title] = nlohmann::ordered_json::array();
  std::vector<double> least(shown.size(), INFINITY), most(shown.size(), -INFINITY);
  for (const auto& angles : postures) {
    const auto p = simulation::cord_posture(system, simulation::posture(system, angles), cord);
    const double angle = angles[shown.front()];
    std::string row = fmt::format("    {:11.1f}", angle / degree);
    nlohmann::ordered_json entry;
    entry["angle_rad"] = angle;
    for (std::size_t k = 0; k < shown.size(); ++k) {
      const double arm = p.arm[static_cast<int>(shown[k])];
      least[k] = std::min(least[k], arm);
      most[k] = std::max(most[k], arm);
      row += fmt::format("  {:6.2f} mm", 1e3 * arm);
      entry["arm_m"][hinge_name(system, shown[k])] = arm;
      entry["torque_per_tension_m"][hinge_name(system, shown[k])] = p.torque[static_cast<int>(shown[k])];
    }
    row += fmt::format("  {:9.3f}   {:18.4f}  ", 1e3 * p.path_length, p.ratio.back() / p.ratio.front());
    for (double turn : p.turning_angle) row += fmt::format(" {:5.1f}", turn / degree);
    entry["path_length_m"] = p.path_length;
    entry["tension_ratio"] = p.ratio;
    entry["turning_angle_rad"] = p.turning_angle;
    rows.push_back(entry);
    report.line(row);
  }
  for (std::size_t k = 0; k < shown.size(); ++k) {
    const double size = std::max(std::abs(least[k]), std::abs(most[k]));
    if (least[k] * most[k] < 0)
      report.line(fmt::format("    CAUTION: the arm at {} changes its sign within the range", hinge_name(system, shown[k])));
    else if (size > 0 && std::min(std::abs(least[k]), std::abs(most[k])) < 0.1 * size)
      report.line(fmt::format("    CAUTION: the arm at {} falls below a tenth of its largest value", hinge_name(system, shown[k])));
  }
}

std::vector<std::vector<double>> closing_postures(const System& system, int steps) {
  std::vector<std::vector<double>> list;
  for (int s = 0; s < steps; ++s) {
    std::vector<double> angles;
    for (std::size_t i = 0; i < system.hinges.size(); ++i) {
      const auto [low, high] = range_of(system, i);
      angles.push_back(rides(system, i) ? 0.0 : low + (high - low) * s / (steps - 1));
    }
    list.push_back(angles);
  }
  return list;
}

void cords(const System& system, int steps, Report& report) {
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const model::Cord& cord = system.model().cords[at(system.cords[c].cord)];
    report.line(fmt::format("\nCord {} ({}): moment arm −dL/dq at each joint, positive flexes; tension ratio while it is wound in",
                            cord.name, system.model().lines[at(cord.line)].name));
    const auto p = simulation::cord_posture(system, system.start_q, c);
    for (std::size_t i = 0; i < system.slides.size(); ++i)
      if (p.draw[static_cast<int>(i)] != 0) {
        const std::string& slide = system.model().bodies[at(system.slides[i].body)].slide->name;
        report.line(fmt::format("  pulls {} along its axis with {:.4f} of its tension", slide, p.draw[static_cast<int>(i)]));
        report.json["cords"][cord.name]["draw"][slide] = p.draw[static_cast<int>(i)];
      }
    std::vector<std::size_t> all;  // of the fingers' joints, those that the cord moves
    for (std::size_t i = 0; i < system.hinges.size(); ++i) {
      std::vector<std::vector<double>> postures;
      const auto [low, high] = range_of(system, i);
      for (int s = 0; s < steps; ++s) {
        std::vector<double> angles(system.hinges.size(), 0.0);
        angles[i] = low + (high - low) * s / (steps - 1);
        postures.push_back(angles);
      }
      const bool moved = std::any_of(postures.begin(), postures.end(), [&](const auto& angles) {
        return simulation::cord_posture(system, simulation::posture(system, angles), c).arm[static_cast<int>(i)] != 0;
      });
      if (!moved) continue;
      if (!rides(system, i)) all.push_back(i);
      sweep(system, fmt::format("{} alone, other joints straight", hinge_name(system, i)), postures, {i}, c, report);
    }
    if (all.size() > 1)
      sweep(system, "all joints together over their ranges (angle of the first)", closing_postures(system, steps), all, c, report);
    const auto names = simulation::node_names(system, c);
    for (std::size_t k = 0; k < names.size(); ++k) {
      bool touched = false;
      for (const auto& angles : closing_postures(system, steps))
        touched = touched || simulation::cord_posture(system, simulation::posture(system, angles), c).guide_touched[k];
      if (!touched) report.line(fmt::format("    note: the cord never turns at {}", names[k]));
    }
  }
}

// Joints by the finger they belong to, in order; one group without a name where there are no fingers.
std::vector<std::vector<std::size_t>> joints_by_finger(const System& system) {
  std::vector<std::string> fingers;
  std::vector<std::vector<std::size_t>> groups;
  for (std::size_t i = 0; i < system.hinges.size(); ++i) {
    const std::string finger = model::finger_of(hinge_name(system, i));
    const auto found = std::find(fingers.begin(), fingers.end(), finger);
    if (found == fingers.end()) {
      fingers.push_back(finger);
      groups.push_back({i});
    } else {
      groups[static_cast<std::size_t>(found - fingers.begin())].push_back(i);
    }
  }
  return groups;
}

void opening(const System& system, int steps, Report& report) {
  bool any = false;
  for (std::size_t c = 0; c < system.cords.size(); ++c) any = any || simulation::returns(system, c);
  if (!any) return;
  report.line("\nOpening by the return cords alone: torque / static friction of pin and washers (least: with channel friction)");
  std::vector<double> worst(system.hinges.size(), INFINITY), worst_angle(system.hinges.size());
  const auto postures = closing_postures(system, steps);
  std::vector<simulation::OpeningPosture> openings;
  auto& rows = report.json["opening"] = nlohmann::ordered_json::array();
  for (const auto& angles : postures) {
    openings.push_back(simulation::opening_posture(system, simulation::posture(system, angles)));
    const auto& o = openings.back();
    nlohmann::ordered_json entry;
    for (std::size_t i = 0; i < system.hinges.size(); ++i) {
      const int k = static_cast<int>(i);
      if (!o.returned[i]) continue;
      entry[hinge_name(system, i)] = {{"angle_rad", angles[i]}, {"torque_N_m", o.torque[k]}, {"least_torque_N_m", o.least_torque[k]},
                                      {"friction_N_m", o.friction[k]}};
    }
    rows.push_back(entry);
  }
  for (const auto& joints : joints_by_finger(system)) {
    std::string head = "    angle [deg]";
    for (std::size_t i : joints) head += fmt::format("  {:>18}", hinge_name(system, i));
    report.line(head);
    for (std::size_t p = 0; p < postures.size(); ++p) {
      std::string row = fmt::format("    {:11.1f}", postures[p][joints.front()] / degree);
      for (std::size_t i : joints) {
        const int k = static_cast<int>(i);
        if (!openings[p].returned[i]) {
          row += fmt::format("  {:>18}", "not returned");
          continue;
        }
        const double ratio = openings[p].torque[k] / openings[p].friction[k], least = openings[p].least_torque[k] / openings[p].friction[k];
        row += fmt::format("  {:6.2f} ({:6.2f})   ", ratio, least);
        if (least < worst[i]) {
          worst[i] = least;
          worst_angle[i] = postures[p][i];
        }
      }
      report.line(row);
    }
    for (std::size_t i : joints) {
      // A cord that passes a pin on its axis leaves a rounding's worth of torque.
      const bool pulled = std::any_of(openings.begin(), openings.end(), [&](const auto& o) {
        return o.returned[i] && std::abs(o.torque[static_cast<int>(i)]) > 1e-6 * o.friction[static_cast<int>(i)];
      });
      if (!pulled) {
        report.line(fmt::format("    {}: no return cord turns it", hinge_name(system, i)));
        continue;
      }
      report.line(fmt::format("    {}: least {:.2f}, at {:.0f} deg{}", hinge_name(system, i), worst[i], worst_angle[i] / degree,
                              worst[i] < 1 ? "  CAUTION: may not open" : ""));
    }
  }
}

// What it costs that drives do not sit in line with their fingers.
void leads(const System& system, const std::vector<double>& angles, Report& report) {
  const auto list = simulation::detours(system, angles);
  if (list.empty()) return;
  report.line("\nDrives that sit elsewhere than in their fingers' own files, against those in line, in the posture below");
  report.line("    cord              turned before the finger   tension lost there   gain     longer by   stretches more, at stall");
  for (const simulation::Detour& d : list) {
    const std::string& name = system.model().cords[at(system.cords[d.cord].cord)].name;
    const double longer = d.led.path_length - d.in_line.path_length, more = d.led.stretch - d.in_line.stretch;
    report.line(fmt::format("    {:<16}  {:5.1f} (in line {:5.1f}) deg  {:4.1f} (in line {:4.1f}) %  {:5.3f}  {:7.1f} mm   {:6.3f} mm at {:.1f} N", name,
                            d.led.turning / degree, d.in_line.turning / degree, 100 * (1 - d.led.ratio), 100 * (1 - d.in_line.ratio),
                            d.gain(), 1e3 * longer, 1e3 * more, d.tension));
    report.json["detours"][name] = {{"turning_rad", d.led.turning},       {"in_line_turning_rad", d.in_line.turning},
                                    {"tension_ratio", d.led.ratio},       {"in_line_tension_ratio", d.in_line.ratio},
                                    {"gain", d.gain()},                   {"longer_m", longer},
                                    {"stretches_more_m", more},           {"stall_tension_N", d.tension}};
  }
  report.line("    (gain: tension at the finger's mouth, and with it the grip, for the same tension at the pulley)");
}

void grip(const System& system, const std::vector<double>& angles, Report& report) {
  std::string at_posture;
  for (std::size_t i = 0; i < angles.size(); ++i)
    at_posture += fmt::format("{}{} {:.0f} deg", i ? ", " : "", hinge_name(system, i), angles[i] / degree);
  const auto q = simulation::posture(system, angles);
  VectorXd ideal = VectorXd::Zero(static_cast<int>(system.hinges.size()));
  VectorXd real = ideal;
  std::vector<double> stall;
  for (std::size_t d = 0; d < system.shafts.size(); ++d) stall.push_back(simulation::drive_statics(system, d).stall_tension);
  const auto tension = simulation::shared_tensions(system, q, stall);
  if (!tension) {
    report.line("\nStatic grip at stall: not computed. The balance of the sliding bodies does not determine the pull of their cords at the"
                " start;\n  'sinewright run' finds how it is shared.");
    return;
  }
  std::string slack;  // cords of drives that open
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const auto p = simulation::cord_posture(system, q, c);
    if (system.cords[c].drive >= 0 && p.arm.size() > 0 && p.arm.minCoeff() < 0 && p.arm.maxCoeff() <= 0) {
      slack += fmt::format("{}{}", slack.empty() ? "" : ", ", system.model().cords[at(system.cords[c].cord)].name);
      continue;
    }
    ideal += (*tension)[c] * p.arm;
    real += (*tension)[c] * p.torque;
  }
  const auto o = simulation::opening_posture(system, q);
  ideal -= o.torque;
  real -= o.torque;
  if (!slack.empty()) slack = fmt::format("; {} pays out", slack);
  report.line(fmt::format("\nStatic grip at stall, contacts in the middle of the phalanges, at {}", at_posture));
  report.line(fmt::format("  (moment balance; no friction at contacts and hinges, no weight, no rotor momentum{}: negative = lifts off)", slack));
  for (std::size_t i = 0; i < angles.size(); ++i) report.json["static_grip_posture"][hinge_name(system, i)]["angle_rad"] = angles[i];
  const auto free = simulation::grip_estimate(system, q, ideal), rubbed = simulation::grip_estimate(system, q, real);
  for (std::size_t f = 0; f < free.size(); ++f)
    for (std::size_t i = 0; i < free[f].hinge.size(); ++i) {
      const int k = static_cast<int>(i);
      const std::string& body = system.model().bodies[at(system.hinges[at(free[f].hinge[i])].body)].name;
      report.line(fmt::format("    {:<14} {:8.2f} N without channel friction, {:8.2f} N with it", body, free[f].force[k], rubbed[f].force[k]));
      report.json["static_grip"][body] = {{"frictionless_N", free[f].force[k]}, {"with_channel_friction_N", rubbed[f].force[k]}};
    }
}

void print(const Report& report, const CommonOptions& options) {
  if (options.json) {
    fmt::print("{}\n", report.json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace));
  } else if (!options.quiet) {
    fmt::print("{}", report.text);
  }
}

}  // namespace

int inspect_command(const std::string& path, const InspectOptions& inspect, const CommonOptions& options) {
  reading::Source source;
  model::Model read = reading::read_model(source, path, options.set);
  if (inspect.fits) {
    const FitsPage page = fits_page(read);
    print({page.text, {{"model", read.name}, {"fits", page.json}}}, options);
    return done;
  }
  if (inspect.parts) {
    const PartsPage page = parts_page(read);
    print({page.text, page.json}, options);
    return done;
  }
  const System system(idle(std::move(read)));
  if (inspect.packing) {
    const simulation::PackingReport packed = simulation::packing(system, inspect.steps);
    PackingPage page = packing_page(system, packed);
    if (!inspect.plot.empty()) {
      plot::make_folder(inspect.plot);
      for (const auto& file : plot::draw(plot::packing_figure(system, packed), inspect.plot, {"png", "svg", "pdf"})) {
        page.json["files"].push_back(file.string());
        if (file.extension() != ".gp") page.text += file.string() + "\n";
      }
    }
    print({page.text, page.json}, options);
    return done;
  }
  Report report;
  report.json["model"] = system.model().name;
  parts(system, report);
  drives(system, report);
  sensors(system, report);
  cords(system, inspect.steps, report);
  opening(system, inspect.steps, report);

  std::vector<double> angles;
  for (std::size_t i = 0; i < system.hinges.size(); ++i) angles.push_back(std::min(30 * degree, range_of(system, i).second));
  for (const std::string& entry : inspect.posture) {
    const auto equals = entry.find('=');
    const std::string name = entry.substr(0, equals);
    const auto found = [&] {
      for (std::size_t i = 0; i < system.hinges.size(); ++i)
        if (hinge_name(system, i) == name) return i;
      std::string known;
      for (std::size_t i = 0; i < system.hinges.size(); ++i) known += (i ? ", " : "") + hinge_name(system, i);
      throw InvalidInput(fmt::format("--posture {}: the model has no joint '{}'\n  known: {}", entry, name, known));
    }();
    if (equals == std::string::npos)
      throw InvalidInput(fmt::format("--posture {}: an angle is missing\n  needed: JOINT=ANGLE, for instance {}=30deg", entry, name));
    angles[found] = parse_quantity(entry.substr(equals + 1), "rad").si;
  }
  leads(system, angles, report);
  if (!system.hinges.empty()) grip(system, angles, report);
  report.line("\nDesign prediction from geometry and data alone, not certification. 'sinewright run' simulates what friction and momentum do.");

  print(report, options);
  return done;
}

}  // namespace sinewright::tool
