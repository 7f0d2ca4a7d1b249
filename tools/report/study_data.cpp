#include "report/study_data.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <optional>

#include <fmt/format.h>

#include "plot/study_map.h"
#include "plot/study_view.h"
#include "plot/yield_curve.h"
#include "quantity/quantity.h"
#include "report/arrays.h"
#include "report/drawn_keys.h"
#include "study/findings.h"

namespace sinewright::report {

namespace {

using Json = nlohmann::ordered_json;
using plot::counted;
using plot::StudyView;
using record::RowState;
using record::StudyColumn;
using record::StudyRecord;

constexpr std::size_t kMostRows = 2000;  // of designs, and of the chosen one as made
constexpr std::size_t kMostBest = 100;

Json finite(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

std::string percent(double share) { return fmt::format("{:.1f} %", 100 * share); }

// A difference as shown: of temperatures, too, without their zero.
std::string difference_text(const StudyColumn& column, double si) {
  if (std::isnan(si)) return "—";
  const bool bare = column.shown_in.empty() || column.shown_in == "1";
  return fmt::format("{:.3g}{}{}", plot::scale_of(column).factor * si, bare ? "" : " ", bare ? "" : column.shown_in);
}

std::string change_text(const StudyColumn& column, double from, double to) {
  if (!std::isfinite(from) || !std::isfinite(to)) return "—";
  if (from == to) return "same";
  if (column.unit != "K" && from != 0 && std::abs(to / from - 1) < 10) return fmt::format("{:+.3g} %", 100 * (to / from - 1));
  return (to > from ? "+" : "") + difference_text(column, to - from);
}

std::string kind_text(const StudyRecord& table) {
  const std::string points = table.points == "sobol" ? "scrambled Sobol points" : table.points == "latin_hypercube" ? "a Latin hypercube" : "random points";
  if (table.kind == "grid") return "grid: every combination of the values";
  if (table.kind == "sample") return "sample: designs spread over all that varies, by " + points;
  if (table.kind == "tolerance") return "tolerances: the same design made many times, by " + points;
  if (table.kind == "sensitivity") return fmt::format("sensitivity: shares of variance, from {} base points", counted(table.base));
  if (table.kind == "screening") return fmt::format("screening: elementary effects, from {} paths", counted(table.base));
  return table.goals.size() > 1 ? "search for the best compromises" : "search for the best design";
}

// ---- what there is: columns and rows

Json column_json(const StudyColumn& column, const char* role, const std::string& title, const std::vector<plot::Bound>& bounds) {
  Json json = {{"role", role},       {"name", column.name},   {"title", title}, {"unit", column.shown_in == "1" ? "" : column.shown_in}, {"description", column.description},
               {"options", Json()}, {"bounds", Json::array()}};
  if (!column.options.empty()) json["options"] = column.options;
  for (const auto& bound : bounds) json["bounds"].push_back({{"at_least", bound.at_least}, {"value", bound.value}, {"text", bound.text}});
  return json;
}

std::string range_text(const StudyColumn& column) {
  if (!column.options.empty()) return fmt::format("{}", fmt::join(column.options, ", "));
  const std::vector<double> values = plot::different_values(column.values);
  if (values.empty()) return "—";
  return fmt::format("{} to {}{}", plot::shown_text(column, values.front()), plot::shown_text(column, values.back()), values.size() <= 50 ? fmt::format(", {} values", values.size()) : "");
}

// Rows that the page holds: all, or of many some by chance with those that matter among them.
std::vector<std::uint64_t> rows_shown(const StudyRecord& table) {
  std::vector<std::uint64_t> always = table.best;
  if (table.chosen) always.push_back(*table.chosen);
  if (!table.goals.empty()) {
    const std::size_t goal = plot::outcome_of_goal(table, 0);
    const double sign = table.goals[0].second ? -1 : 1;
    std::vector<std::uint64_t> passing;
    for (std::uint64_t row = 0; row < table.designs; ++row)
      if (plot::passes(table, row) && !std::isnan(table.outcomes[goal].values[row])) passing.push_back(row);
    const std::size_t n = std::min(kMostBest, passing.size());
    std::partial_sort(passing.begin(), passing.begin() + static_cast<std::ptrdiff_t>(n), passing.end(), [&](std::uint64_t a, std::uint64_t b) {
      const double x = sign * table.outcomes[goal].values[a], y = sign * table.outcomes[goal].values[b];
      return x != y ? x < y : a < b;
    });
    always.insert(always.end(), passing.begin(), passing.begin() + static_cast<std::ptrdiff_t>(n));
  }
  std::vector<std::uint64_t> rows = plot::rows_to_draw(0, table.designs, kMostRows, always);
  for (const std::uint64_t row : plot::rows_to_draw(table.designs, table.rows(), kMostRows)) rows.push_back(row);
  return rows;
}

Json rows_json(const StudyRecord& table) {
  const std::vector<std::uint64_t> rows = rows_shown(table);
  Json json = {{"of", table.rows()}, {"kept", rows.size()}};
  json["text"] = rows.size() == table.rows() ? fmt::format("All {} rows of the table.", counted(table.rows()))
                                             : fmt::format("{} of {} rows, chosen by chance{}. Findings are of all rows; the table and its CSV file have them all.", counted(rows.size()), counted(table.rows()),
                                                           table.goals.empty() ? "" : ", with the front and the hundred best by the first goal among them");
  json["row"] = rows;
  std::vector<int> states;
  std::vector<std::uint32_t> reasons;
  std::map<std::uint32_t, std::uint32_t> places;  // only reasons that the rows have
  json["reasons"] = Json::array();
  for (const std::uint64_t row : rows) {
    states.push_back(static_cast<int>(table.states[row]));
    const auto [place, is_new] = places.try_emplace(table.reasons[row], static_cast<std::uint32_t>(places.size()));
    if (is_new) json["reasons"].push_back(table.reason_texts[table.reasons[row]]);
    reasons.push_back(place->second);
  }
  json["state"] = states;
  json["reason"] = reasons;
  json["values"] = Json::array();
  for (const auto* columns : {&table.varied, &table.made, &table.outcomes})
    for (const StudyColumn& column : *columns) {
      const plot::Scale scale = plot::scale_of(column);
      std::vector<float> values;
      for (const std::uint64_t row : rows) values.push_back(static_cast<float>(scale(column.values[row])));
      json["values"].push_back(packed(values));
    }
  return json;
}

// ---- what it says

std::string yield_text(const StudyView& view) {
  const study::Yield& yield = *view.findings.yield;
  return fmt::format("yield {} ({:.3g} % interval {} to {}; {} of {})", percent(static_cast<double>(yield.met) / static_cast<double>(yield.of)), 100 * view.table.confidence,
                     percent(yield.interval.low), percent(yield.interval.high), counted(yield.met), counted(yield.of));
}

Json verdict_json(const StudyView& view) {
  const StudyRecord& table = view.table;
  const auto& findings = view.findings;
  if (table.kind == "optimise") {
    std::uint64_t met = 0;
    for (std::uint64_t row = 0; row < table.designs; ++row) met += plot::passes(table, row);
    if (table.best.empty()) return {{"state", "bad"}, {"text", fmt::format("None of {} designs tried meets all requirements.", counted(table.designs))}};
    const std::string tried = fmt::format("{} designs tried, {} meet all requirements", counted(table.designs), counted(met));
    return {{"state", "good"},
            {"text", table.best.size() > 1 ? fmt::format("A front of {} designs, none of which beats another in every goal; {}.", table.best.size(), tried)
                                           : fmt::format("The best design found is row {}; {}.", counted(table.best[0]), tried)}};
  }
  const std::uint64_t n = findings.last - findings.first;
  if (findings.yield)
    return {{"state", "plain"}, {"text", "Made as the files say: " + yield_text(view) + "."}};
  return {{"state", findings.states[0] == 0 ? "bad" : "plain"},
          {"text", table.requirements.empty() ? fmt::format("{} designs, none of which is asked anything.", counted(n)) : fmt::format("{} of {} designs meet all requirements.", counted(findings.states[0]), counted(n))}};
}

Json reasons_json(const StudyView& view) {
  const StudyRecord& table = view.table;
  std::map<std::uint32_t, std::uint64_t> count;
  for (std::uint64_t row = 0; row < table.rows(); ++row)
    if (!plot::ran(table, row)) ++count[table.reasons[row]];
  std::vector<std::pair<std::uint64_t, std::uint32_t>> order;
  for (const auto& [reason, n] : count) order.emplace_back(n, reason);
  std::sort(order.rbegin(), order.rend());
  Json list = Json::array();
  for (std::size_t i = 0; i < std::min<std::size_t>(8, order.size()); ++i) list.push_back({{"count", order[i].first}, {"text", table.reason_texts[order[i].second]}});
  return list;
}

Json spread_json(const StudyView& view) {
  const StudyRecord& table = view.table;
  Json list = Json::array();
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) {
    const StudyColumn& outcome = table.outcomes[c];
    const study::OutcomeSpread& spread = view.findings.outcomes[c];
    const plot::Scale scale = plot::scale_of(outcome);
    std::vector<double> values;
    for (std::uint64_t row = view.findings.first; row < view.findings.last; ++row) values.push_back(scale(outcome.values[row]));
    const study::Histogram histogram = study::histogram(values);
    Json one = {{"outcome", c},
                {"drawn", finite(scale(table.drawn[c]))},
                {"texts",
                 {plot::shown_text(outcome, table.drawn[c]), plot::shown_text(outcome, spread.moments.mean), difference_text(outcome, spread.moments.deviation), plot::shown_text(outcome, spread.moments.least),
                  plot::shown_text(outcome, spread.quantiles[0]), plot::shown_text(outcome, spread.quantiles[1]), plot::shown_text(outcome, spread.quantiles[2]),
                  plot::shown_text(outcome, spread.moments.greatest)}},
                {"missing", spread.moments.missing},
                {"histogram", {{"low", finite(histogram.low)}, {"high", finite(histogram.high)}, {"counts", histogram.counts}}}};
    list.push_back(one);
  }
  return list;
}

// Of a grid over two keys or more what each pair of values of two of them gives; from all rows, though the page may hold only some.
Json map_json(const StudyRecord& table) {
  if (table.kind != "grid") return nullptr;
  const std::optional<plot::StudyMap> map = plot::map_of(table);
  if (!map) return nullptr;
  const auto axis = [&](std::size_t key, const std::vector<double>& values, std::size_t all) {
    Json shown = Json::array();
    for (const double value : values) shown.push_back(plot::scale_of(table.varied[key])(value));
    return Json{{"column", key}, {"values", shown}, {"all", all}};
  };
  Json json = {{"x", axis(map->key_x, map->x, map->all_x)}, {"y", axis(map->key_y, map->y, map->all_y)}, {"over", Json::array()}, {"rows", Json::array()}, {"met", Json::array()}, {"means", Json::array()}};
  for (std::size_t k = 0; k < table.varied.size(); ++k)
    if (k != map->key_x && k != map->key_y) json["over"].push_back(table.varied[k].name);
  for (const plot::StudyMap::Cell& cell : map->cells) {
    json["rows"].push_back(cell.rows);
    json["met"].push_back(cell.met);
  }
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) {
    Json means = Json::array();
    for (const plot::StudyMap::Cell& cell : map->cells) means.push_back(finite(plot::scale_of(table.outcomes[c])(cell.sum[c] / cell.count[c])));
    json["means"].push_back(means);
  }
  return json;
}

Json yield_json(const StudyView& view) {
  if (!view.findings.yield) return nullptr;
  const study::Yield& yield = *view.findings.yield;
  const StudyRecord& table = view.table;
  Json json = {{"met", yield.met},
               {"of", yield.of},
               {"text", yield_text(view)},
               {"share", static_cast<double>(yield.met) / static_cast<double>(yield.of)},
               {"low", yield.interval.low},
               {"high", yield.interval.high},
               {"confidence", table.confidence},
               {"note", table.points == "random" ? "" : "The interval is that of random points; for the evener ones it is too wide."},
               {"curves", Json::array()},
               {"causes", Json::array()}};
  for (const plot::Bound& bound : plot::all_bounds(table)) {
    std::vector<float> values;
    for (const plot::YieldPoint& point : plot::yield_curve(view, bound, 120))
      for (const double value : {point.bound, point.alone, point.all, point.interval.low, point.interval.high}) values.push_back(static_cast<float>(value));
    json["curves"].push_back({{"outcome", bound.outcome}, {"at_least", bound.at_least}, {"value", bound.value}, {"text", bound.text}, {"points", packed(values, 5)}});
  }
  if (yield.met == 0 || yield.met == yield.of) return json;
  const auto& keys = study::making_of(table);
  std::vector<std::size_t> order(keys.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return yield.causes[a].distance > yield.causes[b].distance; });
  for (const std::size_t k : order) {
    const study::FailureCause& cause = yield.causes[k];
    Json shares = Json::array();
    for (const double share : cause.fail_share) shares.push_back(finite(share));
    json["causes"].push_back({{"key", keys[k].name},
                              {"distance", finite(cause.distance)},
                              {"chance_text", fmt::format("{:.2g}", cause.chance)},
                              {"sure", cause.chance <= 0.05},
                              {"side", cause.chance > 0.05 ? "no sign of it" : cause.side > 0.1 ? "high values fail" : cause.side < -0.1 ? "low values fail" : "both ends or the middle fail"},
                              {"shares", shares}});
  }
  return json;
}

Json indices_json(const StudyView& view) {
  Json list = Json::array();
  const StudyRecord& table = view.table;
  for (std::size_t c = 0; c < view.findings.sensitivity.size(); ++c) {
    const study::SensitivityResult& result = view.findings.sensitivity[c];
    Json one = {{"outcome", c}, {"note", ""}, {"keys", Json::array()}};
    if (!(result.variance > 0)) {
      one["note"] = result.used > 0 ? "does not vary" : "too few rows have it";
      list.push_back(one);
      continue;
    }
    if (result.dropped > 0)
      one["note"] = fmt::format("{} of {} base points have a row without it and are left out: the shares speak of the region where it exists", counted(result.dropped), counted(result.dropped + result.used));
    std::vector<std::size_t> order(table.varied.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return result.keys[a].total > result.keys[b].total; });
    for (const std::size_t k : order) {
      const study::SensitivityIndex& index = result.keys[k];
      const auto share = [](double value, const study::Interval& interval) {
        return Json{{"value", finite(value)}, {"low", finite(interval.low)}, {"high", finite(interval.high)}, {"text", std::isnan(value) ? "—" : fmt::format("{:.3f} ({:.2f} to {:.2f})", value, interval.low, interval.high)}};
      };
      one["keys"].push_back({{"key", table.varied[k].name}, {"first", share(index.first, index.first_interval)}, {"total", share(index.total, index.total_interval)}});
    }
    list.push_back(one);
  }
  return list;
}

Json effects_json(const StudyView& view) {
  Json list = Json::array();
  const StudyRecord& table = view.table;
  for (std::size_t c = 0; c < view.findings.screening.size(); ++c) {
    const auto& effects = view.findings.screening[c];
    const StudyColumn& outcome = table.outcomes[c];
    const double factor = plot::scale_of(outcome).factor;
    std::vector<std::size_t> order(effects.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto size = [&](std::size_t k) { return std::isnan(effects[k].magnitude) ? -1.0 : effects[k].magnitude; };
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return size(a) > size(b); });
    Json one = {{"outcome", c}, {"keys", Json::array()}};
    for (const std::size_t k : order)
      one["keys"].push_back({{"key", table.varied[k].name},
                             {"size", finite(factor * effects[k].magnitude)},
                             {"mean", finite(factor * effects[k].mean)},
                             {"texts", {difference_text(outcome, effects[k].magnitude), difference_text(outcome, effects[k].mean), difference_text(outcome, effects[k].deviation)}},
                             {"dropped", effects[k].dropped}});
    list.push_back(one);
  }
  return list;
}

// Where the best so far became better, goal by goal.
Json progress_json(const StudyRecord& table) {
  Json list = Json::array();
  for (std::size_t g = 0; g < table.goals.size(); ++g) {
    const std::size_t c = plot::outcome_of_goal(table, g);
    const plot::Scale scale = plot::scale_of(table.outcomes[c]);
    const bool more = table.goals[g].second;
    Json steps = Json::array();
    double so_far = std::nan("");
    for (std::uint64_t row = 0; row < table.designs; ++row) {
      const double value = scale(table.outcomes[c].values[row]);
      if (!plot::passes(table, row) || std::isnan(value) || (more ? value <= so_far : value >= so_far)) continue;
      steps.push_back({row, so_far = value});
    }
    list.push_back({{"outcome", c}, {"more", more}, {"steps", Json::array()}});
    // More steps than a picture can show: every so many-th, and the last.
    const std::size_t stride = steps.size() / 500 + 1;
    for (std::size_t i = 0; i < steps.size(); ++i)
      if (i % stride == 0 || i + 1 == steps.size()) list.back()["steps"].push_back(steps[i]);
  }
  return list;
}

// A design beside the files as they are.
Json design_json(const StudyRecord& table, const std::vector<std::optional<double>>& drawn_keys, std::uint64_t row) {
  Json json = {{"row", row}, {"keys", Json::array()}, {"outcomes", Json::array()}, {"missed", Json::array()}};
  for (std::size_t k = 0; k < table.varied.size(); ++k) {
    const StudyColumn& key = table.varied[k];
    const double to = key.values[row], from = drawn_keys[k].value_or(std::nan(""));
    json["keys"].push_back({{"title", key.name}, {"drawn", plot::shown_text(key, from)}, {"text", plot::shown_text(key, to)},
                            {"change", !drawn_keys[k] ? "—" : key.options.empty() ? change_text(key, from, to) : from == to ? "same" : "other"}});
  }
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) {
    const StudyColumn& outcome = table.outcomes[c];
    json["outcomes"].push_back({{"title", plot::outcome_title(table, c)}, {"drawn", plot::shown_text(outcome, table.drawn[c])}, {"text", plot::shown_text(outcome, outcome.values[row])},
                                {"change", change_text(outcome, table.drawn[c], outcome.values[row])}});
  }
  for (const auto& requirement : table.requirements)
    if (requirement.shortfalls[row] > 0)
      json["missed"].push_back(fmt::format("{} {}{}", requirement.quantity, requirement.demand, std::isfinite(requirement.shortfalls[row]) ? fmt::format(", by {:.2g} of it", requirement.shortfalls[row]) : ": no value"));
  return json;
}

// The design to look at first: the one that was checked, the best, the middle of the front; without one the nearest.
std::optional<std::uint64_t> design_shown(const StudyRecord& table) {
  if (table.kind != "optimise") return std::nullopt;
  if (table.chosen) return table.chosen;
  if (!table.best.empty()) return table.best[table.best.size() / 2];
  std::optional<std::uint64_t> nearest;
  double least = std::numeric_limits<double>::infinity();
  for (std::uint64_t row = 0; row < table.designs; ++row) {
    double sum = 0;
    for (const auto& requirement : table.requirements) sum += requirement.shortfalls[row];
    if (plot::ran(table, row) && sum < least) least = sum, nearest = row;
  }
  return nearest;
}

}  // namespace

Json study_data(const StudyRecord& table, const std::filesystem::path& file) {
  if (table.rows() == 0) throw InvalidInput(fmt::format("{}: the table has no rows, so there is nothing to show", file.string()));
  const study::Findings findings = study::findings_of(table);
  const StudyView view{table, findings, plot::identity_of(table)};
  const std::vector<std::optional<double>> drawn = drawn_keys(table);

  Json json = {{"name", table.name}, {"about", table.about}, {"file", file.filename().string()}, {"kind", table.kind}, {"kind_text", kind_text(table)}};
  json["facts"] = Json::array();
  const auto fact = [&](const char* title, const std::string& text) { json["facts"].push_back({{"title", title}, {"text", text}}); };
  fact("designs", counted(table.designs));
  if (table.rows() > table.designs) fact("of the chosen one as made", counted(table.rows() - table.designs));
  if (table.kind != "grid") fact("seed", std::to_string(table.seed));
  if (findings.yield || table.kind == "sensitivity") fact("confidence of intervals", fmt::format("{:.4g} %", 100 * table.confidence));
  json["goals"] = Json::array();
  for (std::size_t g = 0; g < table.goals.size(); ++g) {
    json["goals"].push_back({{"outcome", plot::outcome_of_goal(table, g)}, {"more", table.goals[g].second}});
    fact(table.goals[g].second ? "made large" : "made small", plot::outcome_title(table, plot::outcome_of_goal(table, g)));
  }

  json["columns"] = Json::array();
  for (std::size_t k = 0; k < table.varied.size(); ++k) {
    Json column = column_json(table.varied[k], "key", table.varied[k].name, {});
    column["range"] = range_text(table.varied[k]);
    column["drawn"] = drawn[k] ? Json(plot::scale_of(table.varied[k])(*drawn[k])) : Json();
    column["drawn_text"] = drawn[k] ? plot::shown_text(table.varied[k], *drawn[k]) : "—";
    json["columns"].push_back(column);
  }
  for (const StudyColumn& made : table.made) {
    Json column = column_json(made, "made", made.name + ", as made", {});
    column["range"] = range_text(made);
    json["columns"].push_back(column);
  }
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) {
    Json column = column_json(table.outcomes[c], "outcome", plot::outcome_title(table, c), plot::bounds_on(table, c));
    column["drawn"] = finite(plot::scale_of(table.outcomes[c])(table.drawn[c]));
    json["columns"].push_back(column);
  }
  json["rows"] = rows_json(table);
  json["best"] = table.best;
  json["chosen"] = table.chosen ? Json(*table.chosen) : Json();
  json["designs"] = table.designs;

  json["verdict"] = verdict_json(view);
  json["states"] = findings.states;
  json["of"] = findings.last - findings.first;
  json["requirements"] = Json::array();
  for (std::size_t r = 0; r < table.requirements.size(); ++r) {
    const std::string& quantity = table.requirements[r].quantity;
    const auto outcome = std::find_if(table.outcomes.begin(), table.outcomes.end(), [&](const auto& one) { return one.name == quantity; });
    json["requirements"].push_back({{"title", outcome == table.outcomes.end() ? quantity : plot::outcome_title(table, static_cast<std::size_t>(outcome - table.outcomes.begin()))}, {"demand", table.requirements[r].demand}, {"missed", findings.missed[r]}});
  }
  json["reasons"] = reasons_json(view);
  json["spread"] = spread_json(view);
  json["map"] = map_json(table);
  json["yield"] = yield_json(view);
  json["indices"] = indices_json(view);
  json["effects"] = effects_json(view);
  json["progress"] = progress_json(table);
  const std::optional<std::uint64_t> design = design_shown(table);
  json["design"] = design ? design_json(table, drawn, *design) : Json();

  json["inputs"] = {{"engine_version", table.inputs.engine_version}, {"seed", table.seed}, {"scenario", table.inputs.scenario_path}, {"overrides", table.inputs.overrides}, {"files", Json::array()}};
  for (const auto& [path, text] : table.inputs.files) json["inputs"]["files"].push_back({{"path", path}, {"text", text}});
  return json;
}

}  // namespace sinewright::report
