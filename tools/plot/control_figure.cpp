// What the controllers were asked for, what they saw, and what they did.

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "drive/sinewright_firmware.h"
#include "plot/time_figure.h"
#include "quantity/quantity.h"

namespace sinewright::plot {

namespace {

std::vector<double> degrees(std::vector<double> values) {
  const double factor = from_si(1, "deg");
  for (double& value : values) value *= factor;
  return values;
}

std::vector<double> less(std::vector<double> a, const std::vector<double>& b) {
  for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
  return a;
}

// Set point and reading belong to the last sample; so does this, but for the shaft, which goes on.
void add_position(const Subject& subject, const std::string& name, std::vector<Panel>& panels) {
  const record::Record& record = subject.record;
  const std::string drive = "/drives/" + name + "/", base = drive + "control/";
  const auto take = [&](const char* leaf) { return record.column(base + leaf); };
  const auto shaft = record.column(drive + "shaft_angle");
    panels.push_back({fmt::format("{} shaft [deg]", shortened(name, 12)),
                    {{"set point", degrees(take("set_point")), "#202020", 2}, {"true", degrees(shaft), "#909090", 1}, {"reading", degrees(take("reading")), color(0), 1}},
                    false, 1});
  panels.push_back({"set point less shaft [deg]",
                    {{"by the reading", degrees(take("error")), color(0), 1}, {"true", degrees(less(take("set_point"), shaft)), "#909090", 1}},
                    false, 0.1});
}

// What firmware of the user's own tells, if it tells anything.
void add_told(const record::Record& record, const std::string& name, std::vector<Panel>& panels) {
  Panel told{"told by the firmware", {}, false, 0};
  for (int i = 0; i < SINEWRIGHT_TOLD; ++i) {
    auto values = record.column("/drives/" + name + "/control/told", i);
    if (std::any_of(values.begin(), values.end(), [](double value) { return value != 0; }))
      told.curves.push_back({fmt::format("told[{}]", i), std::move(values), color(static_cast<std::size_t>(i)), 1});
  }
  if (!told.curves.empty()) panels.push_back(std::move(told));
}

void add_loops(const Subject& subject, const std::string& name, const model::Loops& loops, std::vector<Panel>& panels) {
  const record::Record& record = subject.record;
  const std::string drive = "/drives/" + name + "/", base = drive + "control/";
  const auto take = [&](const char* leaf) { return record.column(base + leaf); };
  if (loops.position) add_position(subject, name, panels);
  if (loops.speed)
    panels.push_back({"shaft speed [deg/s]",
                      {{"set point", degrees(take("speed_set_point")), "#202020", 2},
                       {"true", degrees(record.column(drive + "shaft_speed")), "#909090", 1},
                       {"made of readings", degrees(take("speed_reading")), color(0), 1}},
                      false, 1});
}

// When the hold routine was in which phase.
Panel phases(const Subject& subject, const std::string& name) {
  const auto phase = subject.record.column("/drives/" + name + "/control/phase");
  const auto& time = subject.record.time;
  const std::array<const char*, 6> names = {"open", "closing", "squeezing", "easing", "holding", "opening"};
  BarRow row{shortened(name, 12), {}};
  for (std::size_t k = 1; k < names.size(); ++k) {
    Bar bar{names[k], color(k - 1), {}};
    for (std::size_t i = 0; i + 1 < time.size(); ++i) {
      if (phase[i] != static_cast<double>(k)) continue;
      if (!bar.when.empty() && bar.when.back().second == time[i])
        bar.when.back().second = time[i + 1];
      else
        bar.when.emplace_back(time[i], time[i + 1]);
    }
    if (!bar.when.empty()) row.bars.push_back(std::move(bar));
  }
  Panel panel{"hold routine", {}, false, 0};
  panel.rows.push_back(std::move(row));
  return panel;
}

}  // namespace

Script control_figure(const Subject& subject) {
  std::vector<Panel> panels;
  for (const model::Controller& controller : subject.scenario.controllers) {
    const std::string& name = subject.scenario.model.drives[static_cast<std::size_t>(controller.drive)].name;
    const record::Record& record = subject.record;
    const std::string drive = "/drives/" + name + "/", base = drive + "control/";
    const auto* loops = std::get_if<model::Loops>(&controller.program);
    const bool own = std::holds_alternative<model::OwnFirmware>(controller.program);
    if (loops) {
      add_loops(subject, name, *loops, panels);
    } else if (own) {
      add_position(subject, name, panels);
    } else {
      panels.push_back(phases(subject, name));
      panels.push_back({fmt::format("{} shaft [deg]", shortened(name, 12)),
                        {{"true", degrees(record.column(drive + "shaft_angle")), "#909090", 1}, {"reading", degrees(record.column(base + "reading")), color(0), 1}},
                        false, 1});
    }
    if (loops && loops->force)
      for (const model::Cord& cord : subject.scenario.model.cords)
        if (const auto* end = std::get_if<model::PulleyEnd>(&cord.path.front()); end && end->drive == controller.drive)
          panels.push_back({fmt::format("{} tension [N]", shortened(cord.name, 12)),
                            {{"wanted", record.column(base + "tension_set_point"), "#202020", 2}, {"true, at the pulley", record.column("/cords/" + cord.name + "/tension"), "#909090", 1}},
                            false, 1});
    Panel current{fmt::format("{} current [A]", shortened(name, 12)), {}, false, 0.05};
    if (loops && loops->current) current.curves.push_back({"set point", record.column(base + "current_set_point"), "#202020", 2});
    // Zero asks for none.
    auto limit = loops ? std::vector<double>() : record.column(base + "current_limit");
    if (std::any_of(limit.begin(), limit.end(), [](double value) { return value > 0; })) current.curves.push_back({"limit asked for", std::move(limit), "#202020", 2});
    current.curves.push_back({"true", record.column(drive + "current"), "#909090", 1});
    current.curves.push_back({"reading", record.column(base + "current_reading"), color(0), 1});
    panels.push_back({fmt::format("{} voltage [V]", shortened(name, 12)),
                      {{"asked for", record.column(base + "command"), color(0), 1}, {"at the motor", record.column(drive + "motor_voltage"), "#909090", 1}},
                      false, 0.5});
    panels.push_back(std::move(current));
    if (own) add_told(record, name, panels);
    if (controller.heat) {
      Panel winding{fmt::format("{} winding [°C]", shortened(name, 12)), {}, false, 1};
      const auto celsius = [](std::vector<double> values) {
        for (double& value : values) value -= 273.15;
        return values;
      };
      winding.curves.push_back({"true", celsius(record.column(drive + "winding_temperature")), "#909090", 1});
      winding.curves.push_back({"estimate", celsius(record.column(base + "winding_estimate")), color(0), 1});
      winding.levels.push_back({"switches off", controller.heat->highest - 273.15, "#c03020"});
      panels.push_back(std::move(winding));
    }
  }
  return time_figure(subject, "control", "What the controller asks for and what comes of it", panels);
}

}  // namespace sinewright::plot
