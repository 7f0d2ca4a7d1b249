#include "study_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <numeric>

#include "quantity/quantity.h"

namespace sinewright::tool {

namespace {

using record::StudyRecord;

std::string bare(const record::StudyColumn& column, double si) {
  return std::isnan(si) ? "—" : fmt::format("{:.4g}", from_si(si, column.shown_in));
}

std::string unit_of(const record::StudyColumn& column) {
  return column.shown_in == "1" ? "" : " [" + column.shown_in + "]";
}

// A difference: of temperatures, too, without their zero.
std::string bare_difference(const record::StudyColumn& column, double si) {
  return std::isnan(si) ? "—" : fmt::format("{:.3g}", from_si(si, column.shown_in) - from_si(0, column.shown_in));
}

// Characters, not bytes, count for the width of a column.
std::string padded(const std::string& text, std::size_t width) {
  const auto characters = static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
  return text + std::string(width > characters ? width - characters : 0, ' ');
}
std::string right(const std::string& text, std::size_t width) {
  const auto characters = static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
  return std::string(width > characters ? width - characters : 0, ' ') + text;
}

template <class List, class Name>
std::size_t widest(const List& list, const Name& name, std::size_t least) {
  for (const auto& one : list) least = std::max(least, name(one).size());
  return least;
}

void add_states(std::string& text, const StudyRecord& table, const study::Findings& findings, const char* what) {
  text += fmt::format("  {} {}: {} meet all requirements, {} miss one, {} make no valid model, {} could not go on\n", findings.last - findings.first, what,
                      findings.states[0], findings.states[1], findings.states[2], findings.states[3]);
  for (std::size_t i = 0; i < findings.missed.size(); ++i)
    if (findings.missed[i] > 0)
      text += fmt::format("    missed by {}: {} {}\n", findings.missed[i], table.requirements[i].quantity, table.requirements[i].demand);
  // The commonest reasons of what could not be run.
  std::map<std::uint32_t, std::uint64_t> count;
  for (std::uint64_t row = findings.first; row < findings.last; ++row)
    if (table.states[row] == record::RowState::invalid || table.states[row] == record::RowState::stopped) ++count[table.reasons[row]];
  std::vector<std::pair<std::uint64_t, std::uint32_t>> order;
  for (const auto& [reason, n] : count) order.emplace_back(n, reason);
  std::sort(order.rbegin(), order.rend());
  for (std::size_t i = 0; i < std::min<std::size_t>(3, order.size()); ++i)
    text += fmt::format("    {} times: {}\n", order[i].first, table.reason_texts[order[i].second]);
  if (order.size() > 3) text += fmt::format("    and {} other reasons; the table has them all\n", order.size() - 3);
}

void add_outcomes(std::string& text, const StudyRecord& table, const study::Findings& findings) {
  const auto label = [](const record::StudyColumn& column) { return column.name + unit_of(column); };
  const std::size_t width = widest(table.outcomes, label, 10) + 2;
  text += fmt::format("\n  {}{}{}{}{}{}{}{}{}\n", padded("", width), right("as drawn", 11), right("mean", 11), right("deviation", 11), right("least", 11),
                      right("5 %", 11), right("50 %", 11), right("95 %", 11), right("greatest", 11));
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) {
    const auto& column = table.outcomes[c];
    const study::OutcomeSpread& spread = findings.outcomes[c];
    text += "  " + padded(label(column), width) + right(bare(column, table.drawn[c]), 11) + right(bare(column, spread.moments.mean), 11) +
            right(bare_difference(column, spread.moments.deviation), 11) + right(bare(column, spread.moments.least), 11);
    for (const double quantile : spread.quantiles) text += right(bare(column, quantile), 11);
    text += right(bare(column, spread.moments.greatest), 11);
    if (spread.moments.missing > 0) text += fmt::format("   ({} without it)", spread.moments.missing);
    text += '\n';
  }
}

void add_yield(std::string& text, const StudyRecord& table, const study::Yield& yield) {
  text += fmt::format("\n  yield {:.1f} %  ({:.0f} % interval {:.1f} to {:.1f} %; {} of {})\n", 100.0 * static_cast<double>(yield.met) / static_cast<double>(yield.of),
                      100 * table.confidence, 100 * yield.interval.low, 100 * yield.interval.high, yield.met, yield.of);
  if (table.points != "random") text += "  the interval is that of random points; for the evener ones it is too wide\n";
  if (yield.met == yield.of) {
    text += "  no failure, so no cause to be found\n";
    return;
  }
  if (yield.met == 0) {
    text += "  nothing passes, so no cause can be told from the rest\n";
    return;
  }
  const auto& keys = study::making_of(table);
  std::vector<std::size_t> order(keys.size());
  std::iota(order.begin(), order.end(), 0u);
  std::sort(order.begin(), order.end(), [&](auto a, auto b) { return yield.causes[a].distance > yield.causes[b].distance; });
  const std::size_t width = widest(keys, [](const auto& key) { return key.name; }, 4) + 2;
  text += fmt::format("  what goes with failing   {}{}{}   share that fails in each fifth of the key's values, low to high\n", padded("", width > 12 ? width - 12 : 0),
                      right("distance", 10), right("by chance", 11));
  for (const std::size_t k : order) {
    const study::FailureCause& cause = yield.causes[k];
    text += fmt::format("    {}{:>10.2f}{:>11.2g}  ", padded(keys[k].name, std::max<std::size_t>(21, width)), cause.distance, cause.chance);
    for (const double share : cause.fail_share) text += right(std::isnan(share) ? "—" : fmt::format("{:.0f} %", 100 * share), 7);
    text += cause.chance > 0.05 ? "   no sign of it\n" : cause.side > 0.1 ? "   high values fail\n" : cause.side < -0.1 ? "   low values fail\n" : "   both ends or the middle\n";
  }
}

void add_sensitivity(std::string& text, const StudyRecord& table, const study::Findings& findings) {
  const std::size_t width = widest(table.varied, [](const auto& key) { return key.name; }, 4) + 2;
  for (std::size_t c = 0; c < findings.sensitivity.size(); ++c) {
    const study::SensitivityResult& result = findings.sensitivity[c];
    if (!(result.variance > 0)) {
      text += fmt::format("\n  {}: {}\n", table.outcomes[c].name, result.used > 0 ? "does not vary" : "too few rows have it");
      continue;
    }
    text += fmt::format("\n  {}: shares of its variance, with {:.0f} % intervals\n    {}{}{}\n", table.outcomes[c].name, 100 * table.confidence, padded("", width),
                        right("by itself", 22), right("in all", 22));
    for (std::size_t k = 0; k < result.keys.size(); ++k) {
      const auto share = [](double value, const study::Interval& interval) {
        return std::isnan(value) ? std::string("—") : fmt::format("{:.3f} ({:.2f} to {:.2f})", value, interval.low, interval.high);
      };
      text += "    " + padded(table.varied[k].name, width) + right(share(result.keys[k].first, result.keys[k].first_interval), 22) +
              right(share(result.keys[k].total, result.keys[k].total_interval), 22) + "\n";
    }
    if (result.dropped > 0)
      text += fmt::format("    {} of {} base points have a row without this outcome and are left out: the shares speak of the region where it exists\n",
                          result.dropped, result.dropped + result.used);
  }
}

void add_screening(std::string& text, const StudyRecord& table, const study::Findings& findings) {
  const std::size_t width = widest(table.varied, [](const auto& key) { return key.name; }, 4) + 2;
  for (std::size_t c = 0; c < findings.screening.size(); ++c) {
    const auto& column = table.outcomes[c];
    std::vector<std::size_t> order(table.varied.size());
    std::iota(order.begin(), order.end(), 0u);
    const auto& effects = findings.screening[c];
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return effects[a].magnitude > effects[b].magnitude; });
    text += fmt::format("\n  {}{}: change over the whole spread of a key\n    {}{}{}{}\n", column.name, unit_of(column), padded("", width), right("size", 12),
                        right("with sign", 12), right("deviation", 12));
    for (const std::size_t k : order) {
      text += "    " + padded(table.varied[k].name, width) + right(bare_difference(column, effects[k].magnitude), 12) + right(bare_difference(column, effects[k].mean), 12) +
              right(bare_difference(column, effects[k].deviation), 12);
      text += effects[k].dropped > 0 ? fmt::format("   ({} steps without it)\n", effects[k].dropped) : "\n";
    }
  }
}

void add_design(std::string& text, const StudyRecord& table, std::uint64_t row) {
  for (const auto& key : table.varied) text += fmt::format("    {} {}\n", padded(key.name, 28), cell(key, key.values[row]));
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) {
    const auto& outcome = table.outcomes[c];
    text += fmt::format("    {} {}   (as drawn {})\n", padded(outcome.name, 28), cell(outcome, outcome.values[row]), cell(outcome, table.drawn[c]));
  }
}

void add_best(std::string& text, const StudyRecord& table) {
  if (table.best.empty()) {
    text += "\n  NO DESIGN MEETS ALL REQUIREMENTS\n";
    // The nearest one shows what stands in the way.
    std::uint64_t nearest = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::uint64_t row = 0; row < table.designs; ++row) {
      double sum = 0;
      for (const auto& requirement : table.requirements) sum += requirement.shortfalls[row];
      if (table.states[row] == record::RowState::missed && sum < least) least = sum, nearest = row;
    }
    if (std::isfinite(least)) {
      text += fmt::format("  the nearest, row {}, which misses bounds by {:.2g} of them in sum:\n", nearest, least);
      add_design(text, table, nearest);
      for (const auto& requirement : table.requirements)
        if (requirement.shortfalls[nearest] > 0) text += fmt::format("    missed: {} {}, by {:.2g} of it\n", requirement.quantity, requirement.demand, requirement.shortfalls[nearest]);
    }
    return;
  }
  if (table.best.size() == 1) {
    text += fmt::format("\n  the best design, row {}:\n", table.best[0]);
    add_design(text, table, table.best[0]);
    return;
  }
  text += fmt::format("\n  front of {} designs, none of which beats another in every goal{}\n", table.best.size(), table.chosen ? " (*: the one that was made)" : "");
  std::vector<const record::StudyColumn*> shown;
  for (const auto& [goal, more] : table.goals)
    for (const auto& outcome : table.outcomes)
      if (outcome.name == goal) shown.push_back(&outcome);
  for (const auto& key : table.varied) shown.push_back(&key);
  std::vector<std::size_t> widths;
  std::string line = "    row     ";
  for (const auto* column : shown) {
    std::size_t width = column->name.size();
    for (const std::uint64_t row : table.best) width = std::max(width, cell(*column, column->values[row]).size());
    widths.push_back(width + 2);
    line += right(column->name, widths.back());
  }
  text += line + "\n";
  for (const std::uint64_t row : table.best) {
    text += fmt::format("    {:<7}{}", row, table.chosen == row ? "*" : " ");
    for (std::size_t i = 0; i < shown.size(); ++i) text += right(cell(*shown[i], shown[i]->values[row]), widths[i]);
    text += "\n";
  }
}

nlohmann::ordered_json finite(double value) {
  return std::isfinite(value) ? nlohmann::ordered_json(value) : nlohmann::ordered_json(nullptr);
}

}  // namespace

std::string cell(const record::StudyColumn& column, double si) {
  if (std::isnan(si)) return "—";
  if (!column.options.empty()) return column.options.at(static_cast<std::size_t>(si));
  return fmt::format("{:.4g}{}{}", from_si(si, column.shown_in), column.shown_in == "1" ? "" : " ", column.shown_in == "1" ? "" : column.shown_in);
}

std::string study_text(const StudyRecord& table, const study::Findings& findings) {
  std::string text = fmt::format("{}\n", table.name);
  if (table.kind == "optimise") {
    std::uint64_t met = 0;
    for (std::uint64_t row = 0; row < table.designs; ++row) met += table.states[row] == record::RowState::met;
    text += fmt::format("  {} designs tried, {} of them meet all requirements\n", table.designs, met);
    add_best(text, table);
    if (!findings.yield) {
      text += "\nDesign predictions, not certification.\n";
      return text;
    }
    text += fmt::format("\n  row {} as it would be made:\n", *table.chosen);
    add_states(text, table, findings, "made");
  } else {
    add_states(text, table, findings, table.kind == "tolerance" ? "made" : "designs");
  }
  if (findings.yield) add_yield(text, table, *findings.yield);
  add_outcomes(text, table, findings);
  add_sensitivity(text, table, findings);
  add_screening(text, table, findings);
  text += "\nDesign predictions, not certification.\n";
  return text;
}

std::string study_json(const StudyRecord& table, const std::string& record, const std::string& csv) {
  nlohmann::ordered_json json;
  json["study"] = table.name;
  json["engine"] = "sinewright " SINEWRIGHT_VERSION;
  json["kind"] = table.kind;
  json["record"] = record;
  json["csv"] = csv;
  json["rows"] = table.rows();
  json["designs"] = table.designs;
  for (std::size_t c = 0; c < table.outcomes.size(); ++c)
    json["drawn"][table.outcomes[c].name] = {{"value", finite(table.drawn[c])}, {"unit", table.outcomes[c].unit}};
  for (const auto& value : table.findings) json["findings"][value.key] = {{"value", finite(value.value)}, {"unit", value.unit}};
  json["best"] = nlohmann::ordered_json::array();
  for (const std::uint64_t row : table.best) {
    nlohmann::ordered_json design = {{"row", row}, {"made", table.chosen == row}};
    for (const auto& key : table.varied)
      design["varied"][key.name] = key.options.empty() ? nlohmann::ordered_json{{"value", finite(key.values[row])}, {"unit", key.unit}}
                                                        : nlohmann::ordered_json{{"value", cell(key, key.values[row])}};
    for (const auto& outcome : table.outcomes) design["outcomes"][outcome.name] = {{"value", finite(outcome.values[row])}, {"unit", outcome.unit}};
    json["best"].push_back(design);
  }
  return json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace sinewright::tool
