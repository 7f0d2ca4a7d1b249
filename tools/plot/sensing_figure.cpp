// What the sensors say, and what lies between a reading and the fingertip.

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "plot/time_figure.h"
#include "quantity/quantity.h"

namespace sinewright::plot {

namespace {

std::vector<double> scaled(std::vector<double> values, const char* unit) {
  const double factor = from_si(1, unit);
  for (double& value : values) value *= factor;
  return values;
}

// A cause has one colour in every panel.
std::string color_of(const std::string& cause) {
  if (cause == "friction") return color(2);  // never beside the track's
  const std::array<const char*, 7> order = {"fit", "noise", "track", "stretch", "quantisation", "age", "weight"};
  return color(static_cast<std::size_t>(std::find(order.begin(), order.end(), cause) - order.begin()));
}

std::vector<double> less(std::vector<double> a, const std::vector<double>& b) {
  for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
  return a;
}

// Distance of the told fingertip from the true one.
std::vector<double> distance(const record::Record& record, const std::string& base) {
  std::vector<double> sum(record.time.size(), 0.0);
  for (int axis = 0; axis < 3; ++axis) {
    const auto between = less(record.column(base + "told", axis), record.column(base + "true", axis));
    for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += between[i] * between[i];
  }
  for (double& value : sum) value = std::sqrt(value);
  return sum;
}

void add_angle_panels(const Subject& subject, const std::string& name, std::vector<Panel>& panels) {
  const record::Record& record = subject.record;
  const std::string base = "/drives/" + name + "/sensor/";
  const auto take = [&](const char* leaf) { return record.column(base + leaf); };
  Panel shaft{fmt::format("{} shaft [deg]", shortened(name, 12)), {}, false, 1};
  shaft.curves.push_back({"true", scaled(record.column("/drives/" + name + "/shaft_angle"), "deg"), "#909090", 1});
  shaft.curves.push_back({"reading", scaled(take("reading"), "deg"), color(0), 1});
  panels.push_back(std::move(shaft));
  Panel error{"error of the reading [deg]", {}, false, 0.01};
  const std::array<std::array<const char*, 3>, 4> parts = {{{"fit", "rotor_angle", "shaft_angle"},
                                                            {"track", "track_angle", "rotor_angle"},
                                                            {"noise", "signal_angle", "track_angle"},
                                                            {"quantisation", "reading", "signal_angle"}}};
  for (const auto& [cause, to, from] : parts)
    error.curves.push_back({cause, scaled(less(take(to), take(from)), "deg"), color_of(cause), 1});
  error.curves.push_back({"whole", scaled(less(take("reading"), take("shaft_angle")), "deg"), "#202020", 1});
  panels.push_back(std::move(error));
}

// Sensor and finger apart: their parts differ in what can be done about them.
void add_tip_panels(const Subject& subject, const std::string& name, std::vector<Panel>& panels) {
  const record::Record& record = subject.record;
  const std::string base = "/drives/" + name + "/fingertip/";
  const int channel = record.find(base + "error_along");
  if (channel < 0) return;
  const auto& causes = record.channels[static_cast<std::size_t>(channel)].columns;
  Panel sensor{"tip error by the sensor [mm]", {}, false, 0.01}, finger{"tip error by the finger [mm]", {}, false, 0.01};
  for (std::size_t i = 0; i < causes.size(); ++i) {
    Panel& panel = causes[i] == "stretch" || causes[i] == "weight" || causes[i] == "friction" ? finger : sensor;
    panel.curves.push_back({causes[i], scaled(record.column(base + "error_along", static_cast<int>(i)), "mm"), color_of(causes[i]), 1});
  }
  Panel whole{"told from true tip [mm]", {{"distance", scaled(distance(record, base), "mm"), "#202020", 1}}, true, 0.01};
  panels.push_back(std::move(sensor));
  panels.push_back(std::move(finger));
  panels.push_back(std::move(whole));
  Panel angles{"joint angles told − true [deg]", {}, false, 0.1};
  std::size_t joint = 0;
  for (const auto& body : subject.scenario.model.bodies) {
    if (!body.hinge) continue;
    const auto told = record.column(base + "angle_told", static_cast<int>(joint));
    angles.curves.push_back({body.hinge->name, scaled(less(told, record.column("/joints/" + body.hinge->name + "/angle")), "deg"), color(joint), 1});
    ++joint;
  }
  panels.push_back(std::move(angles));
}

}  // namespace

Script sensing_figure(const Subject& subject) {
  std::vector<Panel> panels;
  for (const auto& drive : subject.scenario.model.drives) {
    if (drive.sensor) {
      add_angle_panels(subject, drive.name, panels);
      add_tip_panels(subject, drive.name, panels);
    }
    if (drive.current_sense) {
      const std::string base = "/drives/" + drive.name + "/";
      Panel current{fmt::format("{} current [A]", shortened(drive.name, 12)), {}, true, 0.01};
      current.curves.push_back({"true", subject.record.column(base + "current"), "#909090", 1});
      current.curves.push_back({"reading", subject.record.column(base + "current_sense/reading"), color(0), 1});
      panels.push_back(std::move(current));
    }
  }
  return time_figure(subject, "sensing", "What the sensors say: told less true, closing positive, along the tip's way", panels);
}

}  // namespace sinewright::plot
