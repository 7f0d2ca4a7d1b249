#include "record/limit_file.h"

#include <algorithm>

#include <fmt/format.h>

#include "record/layout.h"
#include "record/small_data.h"

namespace sinewright::record {
namespace {

constexpr int kLimitVersion = 1;

void write_run(hid_t place, std::size_t index, const KeptRun& run, const std::string& unit) {
  const Handle group = make_group(place, fmt::format("run_{:03}", index));
  const hid_t id = group.id();
  write_attribute(id, "overrides", run.overrides);
  write_attribute(id, "outcome", run.outcome);
  write_attribute(id, "subject", run.subject);
  write_attribute(id, "holds", static_cast<long long>(run.holds));
  number(id, "value", run.value, unit, "value of the run, or at the event; NaN: the event did not come");
  number(id, "rate", run.rate, "1", "of a ramp, SI units per second; 0: a search");
  number(id, "end_time", run.end_time, "s", "event, or end of the run");
  {
    const Handle posture = make_group(id, "posture");
    for (const auto& [joint, angle] : run.posture) number(posture.id(), encode_name(joint), angle, "radian", "angle at the end");
  }
  {
    const Handle summary = make_group(id, "summary");
    for (const auto& item : run.summary) number(summary.id(), encode_name(item.key), item.value, item.unit, item.description);
  }
  {
    const Handle verdicts = make_group(id, "requirements");
    for (std::size_t i = 0; i < run.verdicts.size(); ++i) {
      const Verdict& verdict = run.verdicts[i];
      const std::string name = fmt::format("requirement_{:03}", i);
      number(verdicts.id(), name, verdict.value, verdict.unit, fmt::format("{}: {}", verdict.quantity, verdict.demand));
      const Handle dataset = open_dataset(verdicts.id(), name);
      write_attribute(dataset.id(), "met", static_cast<long long>(verdict.met));
    }
  }
  write_events(id, run.events);
  std::vector<double> time, rose;
  for (const auto& [t, value] : run.course) {
    time.push_back(t);
    rose.push_back(value);
  }
  column(id, {"time", "s", "times of the course", {}}, time);
  column(id, {"course", unit, "what rose (or held against it) at those times, of a ramp", {}}, rose);
}

KeptRun read_run(hid_t place, const std::string& name) {
  const Handle group = open_group(place, name);
  KeptRun run;
  run.overrides = read_texts_attribute(group.id(), "overrides");
  run.outcome = read_text_attribute(group.id(), "outcome");
  run.subject = read_text_attribute(group.id(), "subject");
  run.holds = read_number_attribute(group.id(), "holds") != 0;
  run.value = number_at(group.id(), "value");
  run.rate = number_at(group.id(), "rate");
  run.end_time = number_at(group.id(), "end_time");
  const auto time = column_at(group.id(), "time"), rose = column_at(group.id(), "course");
  if (time.size() != rose.size()) throw CallFailure(name + ": course and time differ in length");
  for (std::size_t i = 0; i < time.size(); ++i) run.course.emplace_back(time[i], rose[i]);
  return run;
}

void write_all(hid_t file, const LimitRecord& record) {
  write_attribute(file, "format", kLimitFormat);
  write_attribute(file, "format_version", static_cast<long long>(kLimitVersion));
  write_attribute(file, "name", record.name);
  write_attribute(file, "quantity", record.quantity);
  write_attribute(file, "units", record.unit.empty() ? "1" : record.unit);
  write_attribute(file, "method", record.method);
  write_attribute(file, "logarithmic", static_cast<long long>(record.logarithmic));
  const bool directions = record.method == "directions";
  if (directions) write_attribute(file, "in_plane", static_cast<long long>(record.in_plane));
  write_inputs(file, record.inputs);
  {
    const Handle axes = make_group(file, "axes");
    write_attribute(axes.id(), "count", static_cast<long long>(record.axes.size()));
    for (std::size_t i = 0; i < record.axes.size(); ++i) {
      const Handle axis = make_group(axes.id(), fmt::format("axis_{}", i));
      write_attribute(axis.id(), "name", record.axes[i].first);
      write_attribute(axis.id(), "values", record.axes[i].second);
    }
  }
  {
    const Handle limits = make_group(file, "limits");
    write_attribute(limits.id(), "count", static_cast<long long>(record.limits.size()));
    for (std::size_t i = 0; i < record.limits.size(); ++i) {
      const KeptLimit& limit = record.limits[i];
      const Handle group = make_group(limits.id(), fmt::format("limit_{:03}", i));
      const hid_t id = group.id();
      write_attribute(id, "place", limit.place);
      write_attribute(id, "note", limit.note);
      write_attribute(id, "found", static_cast<long long>(limit.found));
      write_attribute(id, "settled", static_cast<long long>(limit.settled));
      write_attribute(id, "monotone", static_cast<long long>(limit.monotone));
      write_attribute(id, "runs", static_cast<long long>(limit.runs.size()));
      const std::string unit = record.unit.empty() ? "1" : record.unit;
      number(id, "value", limit.value, unit, "the limit; NaN: none was found");
      number(id, "error", limit.error, unit, "its estimated error");
      number(id, "time", limit.time, "s", "of the event, or end of the last run that holds");
      if (directions) {
        column(id, {"direction", "1", "of the pull, world axes", {}}, {limit.direction.begin(), limit.direction.end()});
        write_attribute(id, "gave", limit.gave);
        number(id, "gave_at", limit.gave_at, unit, "the pull at which the first contact of a finger gave; NaN: none did");
      }
      for (std::size_t k = 0; k < limit.runs.size(); ++k) write_run(id, k, limit.runs[k], unit);
    }
  }
}

}  // namespace

void write_limit(const std::filesystem::path& path, const LimitRecord& record) {
  write_at_once(path, [&](hid_t file) { write_all(file, record); });
}

bool is_limit(const std::filesystem::path& path) {
  return has_format(path, kLimitFormat);
}

LimitRecord read_limit(const std::filesystem::path& path) {
  LimitRecord record;
  guarded(path, "read", [&] {
    const Handle file = open_to_read(path);
    require_format(file.id(), kLimitFormat, kLimitVersion, "the record of a limit");
    record.inputs = read_inputs(file.id());
    record.name = read_text_attribute(file.id(), "name");
    record.quantity = read_text_attribute(file.id(), "quantity");
    record.unit = read_text_attribute(file.id(), "units");
    record.method = read_text_attribute(file.id(), "method");
    record.logarithmic = read_number_attribute(file.id(), "logarithmic") != 0;
    const bool directions = record.method == "directions";
    record.in_plane = directions && read_number_attribute(file.id(), "in_plane") != 0;
    const Handle axes = open_group(file.id(), "axes");
    for (long long i = 0; i < read_number_attribute(axes.id(), "count"); ++i) {
      const Handle axis = open_group(axes.id(), fmt::format("axis_{}", i));
      record.axes.emplace_back(read_text_attribute(axis.id(), "name"), read_texts_attribute(axis.id(), "values"));
    }
    const Handle limits = open_group(file.id(), "limits");
    for (long long i = 0; i < read_number_attribute(limits.id(), "count"); ++i) {
      const Handle group = open_group(limits.id(), fmt::format("limit_{:03}", i));
      KeptLimit limit;
      limit.place = read_texts_attribute(group.id(), "place");
      limit.note = read_text_attribute(group.id(), "note");
      limit.found = read_number_attribute(group.id(), "found") != 0;
      limit.settled = read_number_attribute(group.id(), "settled") != 0;
      limit.monotone = read_number_attribute(group.id(), "monotone") != 0;
      limit.value = number_at(group.id(), "value");
      limit.error = number_at(group.id(), "error");
      limit.time = number_at(group.id(), "time");
      if (directions) {
        const auto direction = column_at(group.id(), "direction");
        if (direction.size() != 3) throw CallFailure("direction: three numbers are needed");
        std::copy(direction.begin(), direction.end(), limit.direction.begin());
        limit.gave = read_text_attribute(group.id(), "gave");
        limit.gave_at = number_at(group.id(), "gave_at");
      }
      for (long long k = 0; k < read_number_attribute(group.id(), "runs"); ++k)
        limit.runs.push_back(read_run(group.id(), fmt::format("run_{:03}", k)));
      record.limits.push_back(std::move(limit));
    }
  });
  return record;
}

}  // namespace sinewright::record
