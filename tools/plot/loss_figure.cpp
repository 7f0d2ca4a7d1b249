// Where the work of the motor's shaft went while the finger closed.

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "plot/figures.h"

namespace sinewright::plot {

namespace {

enum Kind : std::size_t { drive, bends, joints, cords, contacts, stored, kinds };
constexpr std::array<const char*, kinds> kind_names = {
    "motor and gearhead", "bends of the cords", "joints",
    "inside the cords",   "contacts",           "stored: cords, springs, contacts, motion"};

struct Share {
  std::string name;
  double share = 0;
  Kind kind = drive;
};

// What a key of the summary's loss shares means, in words.
Share in_words(const Subject& subject, const std::string& key, double share) {
  if (key == "motor_drag") return {"brushes and bearings of the motor", share, drive};
  if (key == "gear") return {"gearhead", share, drive};
  if (key == "contact") return {"contacts", share, contacts};
  if (key == "cord_hysteresis") return {"inside the cords", share, cords};
  if (key == "hinge_viscous") return {"viscous drag of the joints", share, joints};
  if (key == "slide_viscous") return {"viscous drag of the slides", share, joints};
  if (key == "end_stops") return {"end stops", share, joints};
  for (const auto& body : subject.scenario.model.bodies)
    if (body.hinge && body.hinge->name == key) return {"pin and washers of " + key, share, joints};
  for (const auto& body : subject.scenario.model.bodies)
    if (body.slide && body.slide->name == key) return {"slideway of " + key, share, joints};
  for (const auto& cord : subject.scenario.model.cords)
    if (key.starts_with(cord.name + "."))
      return {cord.name + ", " + key.substr(cord.name.size() + 1), share, bends};
  return {key, share, bends};
}

}  // namespace

Script loss_figure(const Subject& subject) {
  constexpr double least = 5e-4;  // a share below this is one of the "others"
  std::vector<Share> shares;
  double work = std::nan(""), sum = 0, others = 0;
  int n_others = 0;
  const std::string prefix = "loss_share.";
  for (const auto& value : subject.record.summary) {
    if (value.key == "shaft_work") work = value.value;
    if (!value.key.starts_with(prefix) || std::isnan(value.value)) continue;
    sum += value.value;
    if (std::abs(value.value) >= least)
      shares.push_back(in_words(subject, value.key.substr(prefix.size()), value.value));
    else if (value.value != 0)
      others += value.value, ++n_others;
  }
  const bool any = std::isfinite(work) && work > 0 && !shares.empty();
  if (any) shares.push_back({"stored", 1 - sum, stored});
  std::stable_sort(shares.begin(), shares.end(),
                   [](const Share& a, const Share& b) { return a.share > b.share; });
  if (n_others)
    shares.push_back({fmt::format("{} others, each below {:g} %", n_others, 100 * least), others, kinds});

  constexpr double width = 11, bar = 0.3;
  constexpr std::size_t least_rows = 6;  // the legend needs as much
  const double height = 1.75 + bar * static_cast<double>(std::max(least_rows, shares.size()));
  std::size_t longest = 10;
  for (const Share& share : shares)
    longest = std::max(longest, std::min<std::size_t>(44, character_count(share.name)));
  const double left = 0.4 + 0.07 * static_cast<double>(longest);

  Script script("losses", "Where the shaft's work went while the finger closed", subject.identity, width,
                height);
  double low = 0, high = 1;
  const double n = static_cast<double>(shares.size());
  std::string command;
  for (std::size_t kind = 0; kind <= kinds; ++kind) {
    std::vector<std::vector<double>> rows;
    for (std::size_t i = 0; i < shares.size(); ++i) {
      if (shares[i].kind != kind) continue;
      rows.push_back({100 * shares[i].share, n - 1 - static_cast<double>(i)});
      low = std::min(low, 100 * shares[i].share), high = std::max(high, 100 * shares[i].share);
    }
    if (rows.empty()) continue;
    const std::string name = "kind" + std::to_string(kind + 1);
    script.block(name, {"share of the shaft's work [%]", "place"}, rows);
    command += fmt::format(
        ", \\\n     ${0} using (0.5*$1):2:(0):1:($2-0.34):($2+0.34) with boxxyerror {1} lc rgb '{2}' "
        "fillstyle solid 1 noborder, \\\n"
        "     ${0} using ($1 > 0 ? $1 : 0):2:(sprintf('%.1f %%', $1)) with labels left offset 0.7,0 font "
        "',11' notitle",
        name, kind < kinds ? "title " + gnuplot_text(kind_names[kind]) : "notitle",
        kind < kinds ? color(kind == stored ? 6 : kind) : "#b8b8b8");
  }
  // Names go in as labels: gnuplot reads the text of a tic as a format, in which '%' has a meaning.
  for (std::size_t i = 0; i < shares.size(); ++i)
    label_row(script, i + 1, shares[i].name, 44, n - 1 - static_cast<double>(i));
  script.line(
      fmt::format("set lmargin at screen {:.5f}\nset rmargin at screen 0.96\nset tmargin at screen "
                  "{:.5f}\nset bmargin at screen {:.5f}",
                  left / width, 1 - 0.8 / height, 0.75 / height));
  script.line(fmt::format("set xrange [{:.4g}:{:.4g}]\nset yrange [{:.4g}:{:.4g}]", low < 0 ? 1.15 * low : 0,
                          1.14 * high, std::min(0.0, n - static_cast<double>(least_rows)) - 0.7, n - 0.3));
  script.line(
      fmt::format("set xlabel {} noenhanced",
                  gnuplot_text(any ? fmt::format("share of the shaft's work of {:.1f} mJ [%]", 1e3 * work)
                                   : std::string("share of the shaft's work [%]"))));
  script.line(
      "unset ytics\nset grid xtics\nset key right bottom Right samplen 1.5 spacing 1.2 noenhanced opaque");
  if (!any) {
    script.line(
        "set label 1 'the motor did no work on its shaft while the finger closed' at graph 0.5, graph 0.5 "
        "center");
    command = ", \\\n     NaN notitle";
  }
  script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
  return script;
}

}  // namespace sinewright::plot
