// Tensions, angles, forces, drive and energy over time.

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "model/names.h"
#include "plot/scene.h"
#include "plot/time_figure.h"
#include "quantity/quantity.h"

namespace sinewright::plot {

namespace {

const std::string grey = "#808080";

// SI values in the unit that an axis shows. Every unit, degC too, is a factor and an offset.
std::vector<double> in_unit(std::vector<double> values, const std::string& unit) {
  const double offset = from_si(0, unit), factor = from_si(1, unit) - offset;
  for (double& value : values) value = value * factor + offset;
  return values;
}

double largest(const std::vector<double>& values) {
  double size = 0;
  for (const double value : values) size = std::max(size, std::abs(value));
  return size;
}

bool is_phalanx(const Subject& subject, const std::string& contact) {
  const auto& bodies = subject.scenario.model.bodies;
  return std::any_of(bodies.begin(), bodies.end(), [&](const auto& b) {
    return b.moves() && (contact == b.name || contact.starts_with(b.name + ".") || contact.starts_with(b.name + "@"));
  });
}

// Names by the finger that they belong to, fingers in the order in which they come; one group without a name where there are none.
struct OfFinger {
  std::string finger;
  std::vector<std::string> names;
};
std::vector<OfFinger> by_finger(const std::vector<std::string>& names, const std::vector<std::string>& fingers) {
  std::vector<OfFinger> groups;
  for (const std::string& name : names) {
    std::string finger = model::finger_of(name);
    if (std::find(fingers.begin(), fingers.end(), finger) == fingers.end()) finger.clear();
    auto found = std::find_if(groups.begin(), groups.end(), [&](const OfFinger& group) { return group.finger == finger; });
    if (found == groups.end()) found = groups.insert(groups.end(), {finger, {}});
    found->names.push_back(name);
  }
  return groups;
}

// A name as the finger's own panel shows it.
std::string shown_in(const std::string& finger, std::string name) {
  if (finger.empty()) return name;
  const std::string prefix = finger + ".";
  for (auto at = name.find(prefix); at != std::string::npos; at = name.find(prefix, at)) name.erase(at, prefix.size());
  return name;
}

// Names of /contacts/NAME, in the record's order.
std::vector<std::string> contacts_of(const record::Record& record) {
  const std::string prefix = "/contacts/", suffix = "/normal_force";
  std::vector<std::string> names;
  for (const auto& channel : record.channels)
    if (channel.path.starts_with(prefix) && channel.path.ends_with(suffix))
      names.push_back(
          channel.path.substr(prefix.size(), channel.path.size() - prefix.size() - suffix.size()));
  return names;
}

// Stretches of time in which a flag is set. A row tells of the step that ended at its time.
std::vector<std::pair<double, double>> stretches(const Subject& subject, const std::vector<double>& flag) {
  const auto& time = subject.record.time;
  std::vector<std::pair<double, double>> list;
  for (std::size_t i = 1; i < time.size(); ++i) {
    const double from = std::max(time[i - 1], subject.from), to = std::min(time[i], subject.to);
    if (flag[i] == 0 || from >= to) continue;
    if (!list.empty() && list.back().second == from)
      list.back().second = to;
    else
      list.emplace_back(from, to);
  }
  return list;
}

int dash_of(std::size_t i) {
  return i < 8 ? 1 : 2;
}

std::string spaced(std::string name) {
  std::replace(name.begin(), name.end(), '_', ' ');
  return name;
}

}  // namespace

Script tension_figure(const Subject& subject) {
  const record::Record& record = subject.record;
  std::vector<Panel> panels;
  Panel slack{"slack [mm]", {}, true, 0.1};
  bool any_slack = false;
  for (std::size_t c = 0; c < subject.scenario.model.cords.size(); ++c) {
    const auto& cord = subject.scenario.model.cords[c];
    const std::string base = "/cords/" + cord.name + "/";
    // Each cord has its own panel: a flexor may carry twenty times what a return cord does.
    Panel panel{shortened(cord.name, 20) + " tension [N]", {}, true, 0.1};
    const int channel = record.find(base + "tension");
    const auto columns =
        channel < 0 ? std::vector<std::string>() : record.channels[static_cast<std::size_t>(channel)].columns;
    const std::size_t spans = std::max<std::size_t>(1, columns.size());
    for (std::size_t s = 0; s < spans; ++s)
      panel.curves.push_back({columns.empty() ? cord.name : shown_in(model::finger_of(cord.name), columns[s]),
                              record.column(base + "tension", static_cast<int>(s)), ramp_color(s, spans)});
    panels.push_back(std::move(panel));
    slack.curves.push_back({cord.name, in_unit(record.column(base + "slack"), "mm"), color(c), dash_of(c)});
    any_slack = any_slack || largest(slack.curves.back().values) > 1e-3;
  }
  if (any_slack) panels.push_back(std::move(slack));
  return time_figure(subject, "tensions",
                     "Tension of each span of each cord, from the drive or first anchor on", panels);
}

Script angle_figure(const Subject& subject) {
  const record::Record& record = subject.record;
  std::vector<std::string> names;
  for (const auto& body : subject.scenario.model.bodies)
    if (body.hinge) names.push_back(body.hinge->name);
  const auto stops_of = [&](const std::string& name) {
    for (const auto& body : subject.scenario.model.bodies)
      if (body.hinge && body.hinge->name == name) return body.hinge->stops;
    return std::optional<model::EndStops>();
  };
  const auto groups = by_finger(names, fingers_of(subject.scenario.model));
  std::vector<Panel> angles, rates;
  Panel ways{"slide position [mm]", {}, false, 0.1}, held{"", {}};
  for (const OfFinger& group : groups) {
    const std::string of = group.finger.empty() ? "joint" : group.finger;
    Panel angle{of + " angle [deg]", {}, false, 1}, rate{of + " rate [deg/s]", {}, false, 1};
    for (std::size_t i = 0; i < group.names.size(); ++i) {
      const std::string& name = group.names[i];
      const std::string shown = shown_in(group.finger, name), base = "/joints/" + name + "/";
      angle.curves.push_back({shown, in_unit(record.column(base + "angle"), "deg"), color(i), dash_of(i)});
      rate.curves.push_back({shown, in_unit(record.column(base + "rate"), "deg/s"), color(i), dash_of(i)});
      const auto mark_stop = [&](double at) {
        const double degrees = from_si(at, "deg");
        angle.levels.push_back({fmt::format("{} stop at {:.3g}°", shown, degrees), degrees, color(i)});
      };
      if (const auto stops = stops_of(name)) {
        mark_stop(stops->upper);
        if (stops->lower != 0) mark_stop(stops->lower);  // most joints share a lower stop at zero, on the axis
      }
      held.rows.push_back(
          {name,
           {{"held by dry friction", "#7f93a3", stretches(subject, record.column(base + "sticks"))},
            {"against an end stop", "#501a1e", stretches(subject, record.column(base + "stop_torque"))}}});
    }
    angles.push_back(std::move(angle));
    rates.push_back(std::move(rate));
  }
  for (const auto& body : subject.scenario.model.bodies) {
    if (!body.slide) continue;
    const std::size_t i = ways.curves.size();
    const std::string &name = body.slide->name, base = "/joints/" + name + "/";
    ways.curves.push_back({name, in_unit(record.column(base + "position"), "mm"), color(i), dash_of(i)});
    if (const auto& stops = body.slide->stops) {
      const double shown = from_si(stops->upper, "mm");
      ways.levels.push_back({fmt::format("{} stop at {:.3g} mm", name, shown), shown, color(i)});
    }
    held.rows.push_back({name,
                         {{"held by dry friction", "#7f93a3", stretches(subject, record.column(base + "sticks"))},
                          {"against an end stop", "#501a1e", stretches(subject, record.column(base + "stop_force"))}}});
  }
  // Of a hand the rates are left out: its angles take a panel for each finger.
  if (groups.size() == 1) angles.push_back(rates.front());
  if (!ways.curves.empty()) angles.push_back(std::move(ways));
  angles.push_back(std::move(held));
  return time_figure(subject, "angles",
                     groups.size() == 1 ? "Joint angles, rates, and what holds the joints" : "Joint angles by finger, and what holds the joints",
                     angles);
}

Script force_figure(const Subject& subject) {
  const record::Record& record = subject.record;
  const auto fingers = fingers_of(subject.scenario.model);
  const auto groups = by_finger(contacts_of(record), fingers);
  const bool hand = !fingers.empty();
  Panel sums{hand ? "normal force, sums [N]" : "normal force [N]", {}, true, 0.1}, split{"split force [N]", {}, true, 0.1};
  std::vector<Panel> panels, frictions;
  std::vector<double> whole(record.time.size(), 0.0);
  for (std::size_t g = 0; g < groups.size(); ++g) {
    const OfFinger& group = groups[g];
    const std::string of = group.finger.empty() ? (hand ? "palm" : "normal") : group.finger;
    Panel normal{hand ? of + " normal, friction [N]" : of + " force [N]", {}, true, 0.1}, friction{"friction force [N]", {}, true, 0.1};
    std::vector<double> sum(record.time.size(), 0.0);
    for (std::size_t i = 0; i < group.names.size(); ++i) {
      const std::string& name = group.names[i];
      const std::string base = "/contacts/" + name + "/";
      auto force = record.column(base + "normal_force");
      for (std::size_t r = 0; r < whole.size(); ++r) {
        sum[r] += force[r];
        if (is_phalanx(subject, name)) whole[r] += force[r];
      }
      const std::string shown = shown_in(group.finger, name);
      normal.curves.push_back({shown, std::move(force), color(i), hand ? 1 : dash_of(i)});
      const Curve rubbing{hand ? shown + " friction" : shown, record.column(base + "friction_force"), color(i), hand ? 2 : dash_of(i)};
      (hand ? normal : friction).curves.push_back(rubbing);
    }
    if (hand) sums.curves.push_back({of, std::move(sum), color(g), 1});
    panels.push_back(std::move(normal));
    if (!hand) frictions.push_back(std::move(friction));
  }
  Curve all{"sum over the phalanges", std::move(whole), "#202020", 1};
  if (hand) {
    sums.curves.push_back(std::move(all));
    panels.insert(panels.begin(), std::move(sums));
  } else {
    if (panels.empty()) panels.push_back(sums), frictions.push_back({"friction force [N]", {}, true, 0.1});
    panels.front().curves.push_back(std::move(all));
    panels.push_back(std::move(frictions.front()));
  }
  const auto& objects = subject.scenario.objects;
  for (std::size_t o = 0; o < objects.size(); ++o)
    split.curves.push_back({"halves of " + objects[o].name,
                            record.column("/objects/" + objects[o].name + "/split_force"), color(o),
                            dash_of(o)});
  panels.push_back(std::move(split));
  return time_figure(subject, "forces", "Contact forces, and the force between the two halves of a split object", panels);
}

Script drive_figure(const Subject& subject) {
  const record::Record& record = subject.record;
  const auto& drives = subject.scenario.model.drives;
  const bool several = drives.size() > 1;
  Panel current{"motor current [A]", {}, true, 0.01}, voltage{several ? "motor voltage [V]" : "voltage [V]", {}, true, 0.1},
      supply{"supply voltage [V]", {}, true, 0.1}, given{"supply current [A]", {}, true, 0.01},
      torque{"output torque [N·mm]", {}, true, 0.1}, shaft{"shaft angle [deg]", {}, false, 1},
      heat{"temperature [°C]", {}, false, 1};
  std::size_t i = 0;
  for (const auto& drive : drives) {
    const std::string base = "/drives/" + drive.name + "/";
    const auto take = [&](const char* leaf, const char* unit) {
      return in_unit(record.column(base + leaf), unit);
    };
    // One drive has two colours; several have one each, and a dash for the second curve.
    const std::string first = color(i), second = several ? first : color(i + 1);
    const int dash = several ? 1 : dash_of(i), second_dash = several ? 2 : dash;
    current.curves.push_back({drive.name, take("current", "A"), first, dash});
    const auto same = [&](const Level& level) { return level.value == drive.current_limit; };
    if (drive.current_limit > 0 && std::none_of(current.levels.begin(), current.levels.end(), same))
      current.levels.push_back(
          {several ? fmt::format("limit {:g} A", drive.current_limit)
                   : fmt::format("{} limit {:g} A", shortened(drive.name, 16), drive.current_limit),
           drive.current_limit, grey});
    if (!several) voltage.curves.push_back({drive.name + " supply", take("supply_voltage", "V"), second, dash});
    voltage.curves.push_back({drive.name + (several ? "" : " motor"), take("motor_voltage", "V"), first, dash});
    torque.curves.push_back({drive.name + " motor × gear ratio", take("motor_torque", "N·mm"), first, second_dash});
    torque.curves.push_back({drive.name + " load", take("load_torque", "N·mm"), second, dash});
    shaft.curves.push_back({drive.name, take("shaft_angle", "deg"), first, dash});
    heat.curves.push_back({drive.name + " winding", take("winding_temperature", "degC"), first, dash});
    heat.curves.push_back({drive.name + " housing", take("housing_temperature", "degC"), second, second_dash});
    i += several ? 1 : 2;
  }
  if (!several)
    return time_figure(subject, "drive", "Drive: current, voltage, torque, shaft angle, temperature",
                       {current, voltage, torque, shaft, heat});
  const auto& supplies = subject.scenario.model.supplies;
  for (std::size_t s = 0; s < supplies.size(); ++s) {
    const std::string base = "/supplies/" + supplies[s].name + "/";
    supply.curves.push_back({supplies[s].name, record.column(base + "voltage"), color(s), dash_of(s)});
    given.curves.push_back({supplies[s].name, record.column(base + "current"), color(s), dash_of(s)});
    if (supplies[s].current_limit > 0)
      given.levels.push_back({fmt::format("{} limit {:g} A", shortened(supplies[s].name, 16), supplies[s].current_limit),
                              supplies[s].current_limit, grey});
  }
  return time_figure(subject, "drive", "Drives and their supply: voltages, currents, torque, shaft angle, temperature",
                     {supply, given, current, voltage, torque, shaft, heat});
}

Script energy_figure(const Subject& subject) {
  const record::Record& record = subject.record;
  struct Account {
    std::string name;
    std::vector<double> values;
  };
  std::vector<Account> in, lost;
  std::vector<double> stored, residual;
  double most_in = 0, most_lost = 0;
  for (const auto& channel : record.channels) {
    const std::string prefix = "/energy/";
    if (!channel.path.starts_with(prefix)) continue;
    const std::string name = channel.path.substr(prefix.size());
    std::vector<double> values = record.column(channel.path);
    const double size = largest(values);
    if (name == "stored")
      stored = std::move(values);
    else if (name == "residual")
      residual = std::move(values);
    else if (size < 1e-9)
      continue;  // an account that was never used
    else if (channel.description.find("brought in") != std::string::npos)
      most_in = std::max(most_in, size), in.push_back({name, std::move(values)});
    else
      most_lost = std::max(most_lost, size), lost.push_back({name, std::move(values)});
  }
  std::stable_sort(lost.begin(), lost.end(),
                   [](const Account& a, const Account& b) { return largest(a.values) > largest(b.values); });

  std::vector<Panel> panels;
  // Below a joule, millijoules.
  const auto add = [&](const char* what, const std::vector<Account>& accounts, bool from_zero) {
    if (accounts.empty()) return;
    double size = 0;
    for (const Account& account : accounts) size = std::max(size, largest(account.values));
    const std::string unit = size < 1 ? "mJ" : "J";
    Panel panel{fmt::format("{} [{}]", what, unit), {}, from_zero, 1e-6};
    for (std::size_t i = 0; i < accounts.size(); ++i)
      panel.curves.push_back(
          {spaced(accounts[i].name), in_unit(accounts[i].values, unit), color(i), dash_of(i)});
    panels.push_back(std::move(panel));
  };
  add("brought in", in, true);
  const auto small = std::find_if(lost.begin(), lost.end(),
                                  [&](const Account& a) { return largest(a.values) < 0.1 * most_lost; });
  add("lost", {lost.begin(), small}, true);
  const bool both = small != lost.begin() && small != lost.end();
  add(both ? "lost, smaller" : "lost", {small, lost.end()}, true);
  add("stored", {{"stored since the start", stored}}, true);
  const double turned_over = std::max(most_in, largest(stored));
  std::string name = "brought in − stored − lost";
  if (turned_over > 0)
    name = fmt::format("in − stored − lost, up to {:.2g} %", 100 * largest(residual) / turned_over);
  add("imbalance", {{name, residual}}, true);
  return time_figure(subject, "energy", "Energy ledger and its imbalance", panels);
}

}  // namespace sinewright::plot
