// Everything over time, and the loss budget.

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plot/figures.h"

namespace sinewright::plot {

namespace {

constexpr double degree = std::numbers::pi / 180;

// One curve: column of the record, factor to the shown unit, offset, name, colour and dash.
struct Curve {
  std::string path;
  int column = 0;
  double factor = 1, offset = 0;
  std::string name;
  std::size_t color = 0;
  int dash = 1;
};

struct Panel {
  std::string label;  // of the y axis, with the unit
  std::vector<Curve> curves;
  bool from_zero = false;
};

// Marks of commands and first contacts, drawn in every panel, named in the first.
void marks(const Subject& subject, Script& script, bool named) {
  script.line("unset arrow\nunset label");
  std::vector<std::pair<double, std::string>> list;
  for (const auto& event : subject.record.events) {
    if (event.kind == "command") list.emplace_back(event.time, event.detail);
    if (event.kind == "contact") {
      const std::string text = event.subject + " touches";
      const bool known = std::any_of(list.begin(), list.end(), [&](const auto& m) { return m.second == text; });
      if (!known) list.emplace_back(event.time, text);
    }
  }
  const double span = subject.record.time.back() - subject.record.time.front();
  double last = -1e9;
  for (const auto& [time, text] : list) {
    script.line(fmt::format("set arrow from first {0:.6g}, graph 0 to first {0:.6g}, graph 1 nohead lc rgb '#909090' lw 0.7 dt 3", time));
    // Labels that would run into each other are left to the event list.
    if (named && time - last > 0.018 * span) {
      script.line(fmt::format("set label {} at first {:.6g}, graph 1.02 rotate by 35 left font ',9' textcolor rgb '#505050' noenhanced",
                              gnuplot_text(text), time));
      last = time;
    }
  }
}

Script time_figure(const Subject& subject, const std::string& name, const std::string& title, const std::vector<Panel>& panels) {
  Script script(name, title + " — " + subject.identity, 10.5, 3.0 + 2.4 * static_cast<double>(panels.size()));
  // Only one row in so many goes into the picture: more than a few thousand points a curve cannot be seen.
  const auto& time = subject.record.time;
  std::vector<std::size_t> rows;
  const double least = (time.back() - time.front()) / 4000;
  for (std::size_t i = 0; i < time.size(); ++i)
    if (rows.empty() || time[i] - time[rows.back()] >= least || i + 1 == time.size()) rows.push_back(i);

  std::vector<std::vector<double>> data(rows.size());
  for (std::size_t r = 0; r < rows.size(); ++r) data[r].push_back(time[rows[r]]);
  std::vector<std::vector<std::string>> commands;
  int column = 1;
  for (const Panel& panel : panels) {
    commands.emplace_back();
    for (const Curve& curve : panel.curves) {
      const std::vector<double> values = subject.record.column(curve.path, curve.column);
      for (std::size_t r = 0; r < rows.size(); ++r) data[r].push_back(values[rows[r]] * curve.factor + curve.offset);
      ++column;
      commands.back().push_back(fmt::format("$data using 1:{} title {} lc rgb '{}' lw 1.6 dt {}", column, gnuplot_text(curve.name),
                                            color(curve.color), curve.dash));
    }
  }
  script.block("data", data);
  const double whole = 3.0 + 2.4 * static_cast<double>(panels.size());
  const double top = 1 - 1.35 / whole, bottom = 0.75 / whole;
  const double each = (top - bottom) / static_cast<double>(panels.size());
  script.line("set multiplot");
  script.line("set label 100 head at screen 0.02, screen 1 offset 0,-1.2 left font ',13' noenhanced");
  script.line(fmt::format("set xrange [{:.6g}:{:.6g}]\nset lmargin at screen 0.09\nset rmargin at screen 0.78", time.front(), time.back()));
  for (std::size_t p = 0; p < panels.size(); ++p) {
    const double high = top - each * static_cast<double>(p), low = high - each + 0.28 / whole;
    script.line(fmt::format("set tmargin at screen {:.4f}\nset bmargin at screen {:.4f}", high, low));
    marks(subject, script, p == 0);
    if (p == 0) script.line("set label 100 head at screen 0.02, screen 1 offset 0,-1.2 left font ',13' noenhanced");
    script.line("set ylabel " + gnuplot_text(panels[p].label) + " offset 0.5");
    script.line(p + 1 == panels.size() ? "set format x '%g'\nset xlabel 'time [s]'" : "set format x ''\nunset xlabel");
    // An empty range would make gnuplot complain.
    bool flat = true;
    for (const Curve& curve : panels[p].curves)
      for (const double value : subject.record.column(curve.path, curve.column)) flat = flat && std::abs(value) < 1e-9;
    script.line(flat ? "set yrange [-1:1]" : panels[p].from_zero ? "set yrange [0:*]" : "set yrange [*:*]");
    std::string command = "plot ";
    for (std::size_t i = 0; i < commands[p].size(); ++i) command += (i ? ", \\\n     " : "") + commands[p][i];
    script.line(command);
  }
  script.line("unset multiplot");
  return script;
}

}  // namespace

Script tension_figure(const Subject& subject) {
  std::vector<Panel> panels;
  for (const auto& cord : subject.scenario.model.cords) {
    const std::string path = "/cords/" + cord.name + "/tension";
    const int channel = subject.record.find(path);
    if (channel < 0) continue;
    Panel panel{cord.name + " tension [N]", {}, true};
    const auto& columns = subject.record.channels[static_cast<std::size_t>(channel)].columns;
    // A span inside a body differs from its neighbours by one bend only; all are shown, dashes tell equal colours apart.
    for (std::size_t s = 0; s < std::max<std::size_t>(1, columns.size()); ++s)
      panel.curves.push_back({path, static_cast<int>(s), 1, 0, columns.empty() ? cord.name : columns[s], s, s < 8 ? 1 : 2});
    panels.push_back(panel);
  }
  Panel slack{"slack [mm]", {}, true};
  for (std::size_t c = 0; c < subject.scenario.model.cords.size(); ++c) {
    const auto& cord = subject.scenario.model.cords[c];
    slack.curves.push_back({"/cords/" + cord.name + "/slack", 0, 1e3, 0, cord.name, c, 1});
  }
  panels.push_back(slack);
  return time_figure(subject, "tensions", "Cord tensions", panels);
}

Script angle_figure(const Subject& subject) {
  Panel angles{"joint angle [deg]", {}, false}, rates{"joint rate [deg/s]", {}, false}, held{"held by friction (1 = yes)", {}, false};
  std::size_t i = 0;
  for (const auto& body : subject.scenario.model.bodies) {
    if (!body.hinge) continue;
    const std::string base = "/joints/" + body.hinge->name + "/";
    angles.curves.push_back({base + "angle", 0, 1 / degree, 0, body.hinge->name, i, 1});
    rates.curves.push_back({base + "rate", 0, 1 / degree, 0, body.hinge->name, i, 1});
    held.curves.push_back({base + "sticks", 0, 0.8, static_cast<double>(i), body.hinge->name + fmt::format(" (+{})", i), i, 1});
    ++i;
  }
  return time_figure(subject, "angles", "Joint angles", {angles, rates, held});
}

Script force_figure(const Subject& subject) {
  Panel normal{"normal force [N]", {}, true}, split{"split-cylinder reading [N]", {}, false}, friction{"friction force [N]", {}, true};
  std::size_t i = 0;
  for (const auto& channel : subject.record.channels) {
    const std::string prefix = "/contacts/", suffix = "/normal_force";
    if (channel.path.rfind(prefix, 0) != 0 || !channel.path.ends_with(suffix)) continue;
    const std::string name = channel.path.substr(prefix.size(), channel.path.size() - prefix.size() - suffix.size());
    normal.curves.push_back({channel.path, 0, 1, 0, name, i, i < 8 ? 1 : 2});
    friction.curves.push_back({prefix + name + "/friction_force", 0, 1, 0, name, i, i < 8 ? 1 : 2});
    ++i;
  }
  i = 0;
  for (const auto& object : subject.scenario.objects) split.curves.push_back({"/objects/" + object.name + "/split_force", 0, 1, 0, object.name, i++, 1});
  return time_figure(subject, "forces", "Contact forces", {normal, friction, split});
}

Script drive_figure(const Subject& subject) {
  Panel current{"motor current [A]", {}, false}, voltage{"voltage [V]", {}, false}, torque{"output torque [N·mm]", {}, false},
      shaft{"shaft angle [deg]", {}, false}, heat{"temperature [°C]", {}, false};
  std::size_t i = 0;
  for (const auto& drive : subject.scenario.model.drives) {
    const std::string base = "/drives/" + drive.name + "/";
    current.curves.push_back({base + "current", 0, 1, 0, drive.name, i, 1});
    voltage.curves.push_back({base + "motor_voltage", 0, 1, 0, drive.name + " motor", i, 1});
    voltage.curves.push_back({base + "supply_voltage", 0, 1, 0, drive.name + " supply", i + 1, 2});
    torque.curves.push_back({base + "motor_torque", 0, 1e3, 0, drive.name + " motor × ratio", i, 1});
    torque.curves.push_back({base + "load_torque", 0, 1e3, 0, drive.name + " load", i + 1, 1});
    shaft.curves.push_back({base + "shaft_angle", 0, 1 / degree, 0, drive.name, i, 1});
    heat.curves.push_back({base + "winding_temperature", 0, 1, -273.15, drive.name + " winding", i, 1});
    heat.curves.push_back({base + "housing_temperature", 0, 1, -273.15, drive.name + " housing", i + 1, 1});
    i += 2;
  }
  return time_figure(subject, "drive", "Drive", {current, voltage, torque, shaft, heat});
}

Script energy_figure(const Subject& subject) {
  Panel in{"brought in [J]", {}, false}, lost{"lost [J]", {}, true}, stored{"stored [J]", {}, false}, residual{"imbalance [mJ]", {}, false};
  std::size_t i = 0, j = 0;
  for (const auto& channel : subject.record.channels) {
    const std::string prefix = "/energy/";
    if (channel.path.rfind(prefix, 0) != 0) continue;
    const std::string name = channel.path.substr(prefix.size());
    if (name == "stored") {
      stored.curves.push_back({channel.path, 0, 1, 0, "stored", 0, 1});
    } else if (name == "residual") {
      residual.curves.push_back({channel.path, 0, 1e3, 0, "in − stored − lost", 6, 1});
    } else if (channel.description.find("brought in") != std::string::npos) {
      in.curves.push_back({channel.path, 0, 1, 0, name, i++, 1});
    } else {
      const std::vector<double> values = subject.record.column(channel.path);
      if (std::any_of(values.begin(), values.end(), [](double v) { return std::abs(v) > 1e-6; }))
        lost.curves.push_back({channel.path, 0, 1, 0, name, j, j < 8 ? 1 : 2}), ++j;
    }
  }
  if (lost.curves.empty()) lost.curves.push_back({"/energy/winding", 0, 1, 0, "winding", 0, 1});
  return time_figure(subject, "energy", "Energy ledger", {in, lost, stored, residual});
}

namespace {

// What a key of the summary's loss shares means, in words.
std::string in_words(const Subject& subject, const std::string& key) {
  if (key == "motor_drag") return "brushes and bearings of the motor";
  if (key == "gear") return "gearhead";
  if (key == "contact") return "contacts";
  if (key == "cord_hysteresis") return "inside the cords";
  if (key == "hinge_viscous") return "viscous drag of the joints";
  if (key == "end_stops") return "end stops";
  for (const auto& body : subject.scenario.model.bodies)
    if (body.hinge && body.hinge->name == key) return "pin and washers of " + key;
  const auto dot = key.find('.');
  return dot == std::string::npos ? key : key.substr(0, dot) + ", " + key.substr(dot + 1);
}

}  // namespace

Script loss_figure(const Subject& subject) {
  struct Bar {
    std::string name;
    double share;
  };
  std::vector<Bar> bars;
  double work = NAN, sum = 0;
  const std::string prefix = "loss_share.";
  for (const auto& value : subject.record.summary) {
    if (value.key == "shaft_work") work = value.value;
    if (value.key.rfind(prefix, 0) != 0 || std::isnan(value.value)) continue;
    sum += value.value;
    if (value.value >= 5e-4) bars.push_back({in_words(subject, value.key.substr(prefix.size())), value.value});
  }
  Script script("losses", "Where the shaft's work went while closing — " + subject.identity, 10.5, 2.4 + 0.36 * static_cast<double>(bars.size() + 1));
  if (std::isfinite(work) && !bars.empty()) bars.push_back({"stored (cords, springs, motion)", std::max(0.0, 1 - sum)});
  std::stable_sort(bars.begin(), bars.end(), [](const Bar& a, const Bar& b) { return a.share < b.share; });
  std::vector<std::vector<double>> rows;
  std::string tics;
  for (std::size_t i = 0; i < bars.size(); ++i) {
    rows.push_back({static_cast<double>(i), 100 * bars[i].share});
    tics += fmt::format("{}{} {}", i ? ", " : "", gnuplot_text(bars[i].name), i);
  }
  if (rows.empty()) {
    rows.push_back({0, 0});
    tics = "'no shaft work while closing' 0";
  }
  script.block("data", rows);
  double highest = 1;
  for (const auto& row : rows) highest = std::max(highest, row[1]);
  script.line("set label 100 head at screen 0.02, screen 1 offset 0,-1.2 left noenhanced\nset tmargin 3\nset lmargin at screen 0.3\nset rmargin at screen 0.95");
  script.line(fmt::format("set ytics ({})\nset yrange [-0.6:{}]\nset xrange [0:{:.4g}]", tics, static_cast<double>(rows.size()) - 0.4, 1.15 * highest));
  script.line(fmt::format("set xlabel {}", gnuplot_text(std::isfinite(work) ? fmt::format("share of the shaft work of {:.1f} mJ [%]", 1e3 * work) : "share of the shaft work [%]")));
  script.line("unset key\nset grid noytics\nset style fill solid 0.85 noborder");
  script.line(fmt::format("plot $data using (0):1:(0):2:($1-0.35):($1+0.35) with boxxyerror lc rgb '{}', \\\n     $data using 2:1:(sprintf(' %.1f %%', $2)) with labels left font ',11'", color(0)));
  return script;
}

}  // namespace sinewright::plot
