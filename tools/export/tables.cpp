#include "export/tables.h"

#include <fmt/format.h>
#include <fnmatch.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "quantity/nearest.h"
#include "quantity/quantity.h"

namespace sinewright::exporting {

namespace {

// A unit as a column shows it; every conversion, °C too, is a factor and an offset.
struct Shown {
  std::string unit;
  double factor = 1, offset = 0;
  bool converted = false;
};

Shown shown(const std::string& unit, Units units) {
  static const std::vector<std::pair<std::vector<std::string>, std::string>> display = {
      {{"rad", "radian"}, "deg"}, {{"rad/s", "radian s-1"}, "deg/s"}, {{"m"}, "mm"},    {{"m/s", "m s-1"}, "mm/s"},
      {{"N m"}, "N·mm"},          {{"Pa"}, "MPa"},                    {{"J"}, "mJ"},    {{"K"}, "°C"},
  };
  if (units == Units::si) return {unit};
  for (const auto& [names, to] : display)
    if (std::find(names.begin(), names.end(), unit) != names.end()) {
      const std::string parsed = to == "°C" ? "degC" : to;
      const double offset = from_si(0, parsed);
      return {to, from_si(1, parsed) - offset, offset, true};
    }
  return {unit};
}

void put(Csv& csv, double value, const Shown& as) {
  as.converted ? csv.rounded(value * as.factor + as.offset) : csv.number(value);
}

std::string heading(const std::string& name, const std::string& unit) { return fmt::format("{} [{}]", name, unit); }

void row(Csv& csv, const std::vector<std::string>& cells) {
  for (const auto& cell : cells) csv.text(cell);
  csv.end_row();
}

}  // namespace

std::vector<std::size_t> chosen_channels(const record::Record& record, const std::vector<std::string>& chosen) {
  std::vector<char> taken(record.channels.size(), chosen.empty());
  for (const std::string& choice : chosen) {
    const std::string path = choice.substr(0, 1) == "/" ? choice : "/" + choice;
    const std::string group = path.back() == '/' ? path : path + "/";
    bool any = false;
    for (std::size_t i = 0; i < record.channels.size(); ++i) {
      const std::string& name = record.channels[i].path;
      if (name != path && name.compare(0, group.size(), group) != 0 && fnmatch(path.c_str(), name.c_str(), 0) != 0) continue;
      taken[i] = any = true;
    }
    if (any) continue;
    std::vector<std::string> names;
    for (const auto& channel : record.channels) names.push_back(channel.path);
    const std::string close = nearest(path, names);
    throw InvalidInput(fmt::format("--data '{}' names no data set of the record\n  needed: a path, the group of one, or a pattern "
                                   "such as '*/tension'\n  hint:   {}",
                                   choice, close.empty() ? "without --data all are written, their names in the first row"
                                                         : "the nearest is '" + close + "'"));
  }
  std::vector<std::size_t> channels;
  for (std::size_t i = 0; i < taken.size(); ++i)
    if (taken[i]) channels.push_back(i);
  return channels;
}

void write_series(Csv& csv, const record::Record& record, const std::vector<std::size_t>& channels, Units units) {
  csv.text(heading("time", "s"));
  std::vector<Shown> as;
  for (const std::size_t i : channels) {
    const record::Channel& channel = record.channels[i];
    as.push_back(shown(channel.unit, units));
    if (channel.columns.empty()) csv.text(heading(channel.path, as.back().unit));
    for (const auto& column : channel.columns) csv.text(heading(channel.path + ":" + column, as.back().unit));
  }
  csv.end_row();
  for (std::size_t r = 0; r < record.time.size(); ++r) {
    csv.number(record.time[r]);
    for (std::size_t c = 0; c < channels.size(); ++c) {
      const auto width = static_cast<std::size_t>(record.channels[channels[c]].width());
      for (std::size_t k = 0; k < width; ++k) put(csv, record.data[channels[c]][r * width + k], as[c]);
    }
    csv.end_row();
  }
}

void write_events(Csv& csv, const record::Record& record) {
  row(csv, {"time [s]", "kind", "subject", "detail"});
  for (const auto& event : record.events) {
    csv.number(event.time);
    row(csv, {event.kind, event.subject, event.detail});
  }
}

void write_summary(Csv& csv, const record::Record& record, Units units) {
  row(csv, {"key", "value", "unit", "description"});
  for (const auto& value : record.summary) {
    const Shown as = shown(value.unit, units);
    csv.text(value.key);
    put(csv, value.value, as);
    row(csv, {as.unit, value.description});
  }
}

void write_requirements(Csv& csv, const record::Record& record, Units units) {
  row(csv, {"quantity", "demand", "value", "unit", "met"});
  for (const auto& verdict : record.verdicts) {
    const Shown as = shown(verdict.unit, units);
    csv.text(verdict.quantity);
    csv.text(verdict.demand);
    put(csv, verdict.value, as);
    row(csv, {as.unit, verdict.met ? "yes" : "no"});
  }
}

void write_margins(Csv& csv, const record::Record& record, Units units) {
  const Shown angle = shown("rad", units);
  const auto& margins = record.margins;
  for (const char* name : {"name", "check", "margin", "capacity", "demand", "unit", "time [s]", "load", "first below 1 [s]",
                           "load then"})
    csv.text(name);
  for (const auto& joint : margins.joints) csv.text(heading("posture " + joint, angle.unit));
  row(csv, {"not checked: missing keys"});
  for (const auto& margin : margins.values) {
    // A temperature here is a rise over the surroundings: its kelvins stay.
    const Shown as = margin.unit == "K" ? Shown{margin.unit} : shown(margin.unit, units);
    csv.text(margin.name);
    csv.text(margin.check);
    csv.number(margin.ratio);
    put(csv, margin.capacity, as);
    put(csv, margin.demand, as);
    csv.text(as.unit);
    csv.number(margin.time);
    csv.text(margin.load);
    csv.number(margin.lost_at);
    csv.text(margin.lost_load);
    for (const double q : margin.posture) put(csv, q, angle);
    row(csv, {""});
  }
  for (const auto& unknown : margins.not_checked) {
    csv.text(unknown.name);
    csv.text(unknown.check);
    for (std::size_t i = 0; i < 8 + margins.joints.size(); ++i) csv.text("");
    row(csv, {fmt::format("{}", fmt::join(unknown.missing, "; "))});
  }
}

void write_study(Csv& csv, const record::StudyRecord& table, Units units) {
  struct Place {
    const record::StudyColumn* column;
    Shown as;
  };
  std::vector<Place> places;
  csv.text("row");
  csv.text("state");
  for (const auto* list : {&table.varied, &table.made, &table.outcomes})
    for (const auto& column : *list) {
      Shown as{column.unit};
      if (units == Units::display && column.shown_in != column.unit) {
        const double offset = from_si(0, column.shown_in);
        as = {column.shown_in, from_si(1, column.shown_in) - offset, offset, true};
      }
      csv.text(column.options.empty() ? heading(list == &table.made ? column.name + " as made" : column.name, as.unit) : column.name);
      places.push_back({&column, as});
    }
  csv.text("reason");
  csv.end_row();
  static constexpr std::array<const char*, 4> kStates = {"met", "missed", "invalid", "stopped"};
  for (std::size_t row = 0; row < table.rows(); ++row) {
    csv.number(static_cast<double>(row));
    csv.text(kStates.at(static_cast<std::size_t>(table.states[row])));
    for (const auto& [column, as] : places) {
      const double value = column->values[row];
      if (column->options.empty() || std::isnan(value))
        put(csv, value, as);
      else
        csv.text(column->options.at(static_cast<std::size_t>(value)));
    }
    csv.text(table.reason_texts[table.reasons[row]]);
    csv.end_row();
  }
}

}  // namespace sinewright::exporting
