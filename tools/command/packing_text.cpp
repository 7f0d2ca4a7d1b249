#include "packing_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace sinewright::tool {

namespace {

using contact::Containment;
using nlohmann::ordered_json;
using simulation::Closeness;
using simulation::CordExit;
using simulation::FingerSize;
using simulation::HandMeasure;
using simulation::HandSize;
using simulation::HumanFinger;
using simulation::PackingReport;
using simulation::PhalanxSize;
using simulation::Wall;

constexpr double degree = std::numbers::pi / 180;

double milli(double length) { return 1e3 * length; }

std::string gap_text(double gap, double seen) {
  return std::isfinite(gap) ? fmt::format("{:.2f}", milli(gap)) : fmt::format("> {:.3g}", milli(seen));
}

std::size_t name_width(const std::vector<const std::vector<Closeness>*>& lists) {
  std::size_t width = 12;
  for (const auto* list : lists)
    for (const Closeness& pair : *list) width = std::max({width, pair.a.size(), pair.b.size()});
  return width;
}

std::string pairs_text(const std::vector<Closeness>& pairs, std::size_t width, double seen) {
  std::string text = fmt::format("  {:<{}}  {:<{}}  {:>13}  {:>13}  {}\n", "", width, "", width, "straight [mm]", "smallest [mm]", "in posture");
  for (const Closeness& pair : pairs)
    text += fmt::format("  {:<{}}  {:<{}}  {:>13}  {:>13}  {}\n", pair.a, width, pair.b, width, gap_text(pair.straight, seen),
                        gap_text(pair.smallest, seen), pair.posture);
  return text;
}

ordered_json pair_json(const Closeness& pair) {
  return {{"a", pair.a},
          {"b", pair.b},
          {"gap_straight_m", std::isfinite(pair.straight) ? ordered_json(pair.straight) : ordered_json(nullptr)},
          {"gap_smallest_m", pair.smallest},
          {"posture", pair.posture},
          {"at_m", {pair.where.x(), pair.where.y(), pair.where.z()}}};
}

void gaps(const PackingReport& report, std::string& text, ordered_json& json) {
  const std::size_t width = name_width({&report.collisions, &report.narrow});
  text += fmt::format("\nCollisions: {}\n", report.collisions.empty() ? "none" : "gap below 0, the depth of the overlap");
  if (!report.collisions.empty()) text += pairs_text(report.collisions, width, report.seen);
  text += fmt::format("\nNearer than {:.3g} mm: {}\n", milli(report.clearance), report.narrow.empty() ? "none" : "");
  text.erase(text.find_last_not_of(" \n") + 1);
  text += "\n";
  if (!report.narrow.empty()) text += pairs_text(report.narrow, width, report.seen);
  if (report.nearest)
    text += fmt::format("  next: {} and {}, {:.2f} mm at {}\n", report.nearest->a, report.nearest->b, milli(report.nearest->smallest),
                        report.nearest->posture);
  else
    text += fmt::format("  all else is more than {:.3g} mm apart\n", milli(report.seen));
  for (const auto& [key, list] : {std::pair{"collisions", &report.collisions}, std::pair{"narrow", &report.narrow}}) {
    json[key] = ordered_json::array();
    for (const Closeness& pair : *list) json[key].push_back(pair_json(pair));
  }
  json["nearest_of_the_rest"] = report.nearest ? pair_json(*report.nearest) : ordered_json(nullptr);
}

void walls(const PackingReport& report, std::string& text, ordered_json& json) {
  json["walls"] = ordered_json::array();
  if (report.walls.empty()) return;
  text += "\nIn the prints around: wall left, straight\n";
  std::size_t width = 12;
  for (const Wall& wall : report.walls) width = std::max(width, wall.part.size());
  for (const Wall& wall : report.walls) {
    ordered_json entry = {{"part", wall.part}, {"inside", wall.inside}};
    std::string what = "not checked: no solids around it are described";
    const std::string prints = fmt::format("{}", fmt::join(wall.inside, ", "));
    if (!wall.inside.empty()) {
      const double way = wall.lies.way;
      switch (wall.lies.place) {
        case Containment::Place::within:
          what = fmt::format("{:8.2f} mm  in {}", milli(way), prints);
          entry["wall_m"] = way;
          break;
        case Containment::Place::across:
          what = fmt::format("           in {}, across several solids: the wall is not known", prints);
          entry["across"] = true;
          break;
        case Containment::Place::out:
          what = fmt::format("{:8.2f} mm  CAUTION: sticks out of {}", milli(-way), prints);
          entry["sticks_out_m"] = way;
          break;
      }
    }
    text += fmt::format("  {:<{}}  {}\n", wall.part, width, what);
    json["walls"].push_back(entry);
  }
}

void exits(const PackingReport& report, std::string& text, ordered_json& json) {
  json["pulleys"] = ordered_json::array();
  if (report.exits.empty()) return;
  text += "\nCords at their pulleys, as the path and the shaft are drawn\n";
  for (const CordExit& exit : report.exits) {
    text += fmt::format("  cord {}: leaves at {:.2f} mm from the shaft, the groove's cord lies at {:.2f} mm; {:.2f} mm beside the middle; "
                        "{:.1f} deg out of the plane\n",
                        exit.cord, milli(exit.radius), milli(exit.wanted), milli(exit.off_middle), exit.fleet_angle / degree);
    std::vector<std::string> cautions;
    constexpr double drawn = 0.1e-3;  // [m], of a drawing
    if (std::abs(exit.radius - exit.wanted) > drawn)
      cautions.push_back(fmt::format("the path begins {:.2f} mm {} the groove: move the shaft or the path's first point",
                                     milli(std::abs(exit.radius - exit.wanted)), exit.radius > exit.wanted ? "outside" : "inside"));
    if (exit.off_tangent > 2 * degree)
      cautions.push_back(fmt::format("the first span departs from the groove's tangent by {:.1f} deg", exit.off_tangent / degree));
    if (exit.half_length > 0 && exit.off_middle > exit.half_length)
      cautions.push_back(fmt::format("the cord runs {:.2f} mm beside the pulley", milli(exit.off_middle - exit.half_length)));
    if (exit.allowed_fleet_angle && exit.fleet_angle > *exit.allowed_fleet_angle)
      cautions.push_back(fmt::format("the flange is made for {:.1f} deg", *exit.allowed_fleet_angle / degree));
    for (const std::string& caution : cautions) text += fmt::format("    CAUTION: {}\n", caution);
    json["pulleys"].push_back({{"cord", exit.cord},
                               {"drive", exit.drive},
                               {"radius_m", exit.radius},
                               {"groove_radius_m", exit.wanted},
                               {"off_middle_m", exit.off_middle},
                               {"fleet_angle_rad", exit.fleet_angle},
                               {"off_tangent_rad", exit.off_tangent},
                               {"cautions", cautions}});
  }
}

std::string among(const HandMeasure& measure, double value) {
  return fmt::format("{}: {:.1f} ± {:.1f} mm, {:.3g} % are smaller", measure.what, milli(measure.mean), milli(measure.deviation),
                     100 * share_below(measure, value));
}

void human_hand(const char* what, double value, const HandMeasure& men, const HandMeasure& women, std::string& text, ordered_json& json) {
  text += fmt::format("  {:<9} {:6.1f} mm   {}\n", what, milli(value), among(men, value));
  text += fmt::format("  {:<9} {:6}      {}\n", "", "", among(women, value));
  json[what] = {{"value_m", value}, {"share_of_men_below", share_below(men, value)}, {"share_of_women_below", share_below(women, value)}};
}

void finger(const FingerSize& finger, std::string& text, ordered_json& json) {
  const HumanFinger& human = simulation::human_finger(finger.name);
  const std::array<double, 3> bones = {human.distal + human.pulp, human.middle, human.proximal};  // from the tip back
  text += fmt::format("  {} (beside a human {} finger)\n", finger.name, human.name);
  auto& entry = json["fingers"][finger.name];
  const std::size_t n = finger.phalanges.size();
  for (std::size_t i = 0; i < n; ++i) {
    const PhalanxSize& phalanx = finger.phalanges[i];
    const std::size_t back = n - 1 - i;
    const std::string breadth = phalanx.breadth > 0 ? fmt::format("{:.1f} mm broad", milli(phalanx.breadth)) : "breadth not described";
    text += fmt::format("    {:<16} {:6.1f} mm long, {}{}\n", phalanx.body, milli(phalanx.length), breadth,
                        back < bones.size() ? fmt::format("; human {:.1f} mm", milli(bones[back])) : "");
    entry["phalanges"].push_back({{"body", phalanx.body}, {"length_m", phalanx.length}, {"breadth_m", phalanx.breadth}});
    if (back < bones.size()) entry["phalanges"].back()["human_m"] = bones[back];
  }
  text += fmt::format("    {:<16} {:6.1f} mm{}{}\n", "whole", milli(finger.length), finger.tip ? "" : " without the last, whose tip is not described",
                      n == 3 ? fmt::format("; human {:.1f} mm, ratio {:.2f}", milli(human.length()), finger.length / human.length()) : "");
  entry["length_m"] = finger.length;
  entry["beside_human"] = human.name;
  if (n == 3) entry["human_m"] = human.length();
}

void outer_size(const HandSize& size, std::string& text, ordered_json& all) {
  auto& json = all["size"];
  const Eigen::Vector3d whole = size.high - size.low;
  text += fmt::format("\nOuter size, straight: {:.1f} mm along x, {:.1f} mm along y (back to front), {:.1f} mm along z (across)\n",
                      milli(whole.x()), milli(whole.y()), milli(whole.z()));
  json["low_m"] = {size.low.x(), size.low.y(), size.low.z()};
  json["high_m"] = {size.high.x(), size.high.y(), size.high.z()};
  const bool hand = size.fingers.size() > 1;
  json["thickness_m"] = size.thickness ? ordered_json(*size.thickness) : ordered_json(nullptr);
  if (hand) {
    human_hand("length", size.length, simulation::hand_length_men, simulation::hand_length_women, text, json);
    if (size.breadth) human_hand("breadth", *size.breadth, simulation::hand_breadth_men, simulation::hand_breadth_women, text, json);
    else text += "  breadth   not described: no solids of what does not move\n";
    if (size.thickness) text += fmt::format("  thickness {:6.1f} mm\n", milli(*size.thickness));
  }
  for (const FingerSize& one : size.fingers) finger(one, text, json);
  if (size.fingers.empty()) return;
  text += "  human: ";
  if (hand)
    text += "hand from the 1988 Anthropometric Survey of U.S. Army Personnel (Gordon et al. 1989, values from memory), taken as normal;\n         ";
  text += "mean bones of 66 adults and the soft tip (Buryanov and Kotiuk 2010)\n";
}

}  // namespace

PackingPage packing_page(const simulation::System& system, const PackingReport& report) {
  PackingPage page;
  const model::Model& model = system.model();
  std::size_t prints = 0;
  for (const simulation::PackedPart& part : report.parts.parts) prints += part.kind == simulation::PackedPart::Kind::print;
  page.text = fmt::format("{}: packing. {} printed bodies, {} parts in them, {} cords; {} postures looked at\n", model.name, prints,
                          report.parts.parts.size() - prints, system.cords.size(), report.postures.size());
  page.json["model"] = model.name;
  page.json["clearance_m"] = report.clearance;
  page.json["seen_m"] = report.seen;
  for (const simulation::PackingPosture& posture : report.postures) page.json["postures"].push_back(posture.name);
  page.json["not_described"] = report.parts.not_described;
  if (!report.parts.not_described.empty())
    page.text += fmt::format("  takes up nothing because it is not described: {}\n", fmt::join(report.parts.not_described, ", "));
  gaps(report, page.text, page.json);
  walls(report, page.text, page.json);
  exits(report, page.text, page.json);
  outer_size(hand_size(system, report.parts.parts, report.postures.front().q), page.text, page.json);
  page.text += "\nLooked at: straight; each joint alone, each finger and all together in equal steps over their ranges (--steps). Other postures are not.\n"
               "Design prediction from sizes alone, not certification. Moving fingers pinch: a gap is no guard.\n";
  return page;
}

}  // namespace sinewright::tool
