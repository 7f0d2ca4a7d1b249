#include <fmt/format.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "commands.h"
#include "export/tables.h"
#include "out_folder.h"
#include "quantity/invalid_input.h"
#include "record/limit_file.h"

namespace sinewright::tool {

namespace fs = std::filesystem;

int export_command(const std::string& file, const ExportOptions& wanted, const CommonOptions& options) {
  if (!options.set.empty()) throw InvalidInput("export writes what a record holds; --set belongs to 'sinewright run'");
  if (!wanted.data.empty() && wanted.table != "series") throw InvalidInput("--data chooses time series; leave --table out");
  const fs::path input = file;
  fs::path out = options.out;
  if (out.empty()) out = fs::path(input).replace_extension(wanted.table == "series" ? ".csv" : "." + wanted.table + ".csv");
  refuse_to_replace(out, "--out", {input}, "the record itself", fs::path(input).replace_extension(".csv").string());
  std::error_code none;
  if (fs::is_regular_file(input, none) && record::is_limit(input))
    throw InvalidInput(fmt::format("{} is the record of a limit\n  needed: the record of a run (.h5), which has time series\n"
                                   "  hint:   'sinewright limit ... --json' prints what a limit found",
                                   file));
  const record::Record record = record::read_record(input);

  exporting::Csv csv(wanted.delimiter == "semicolon" ? ';' : wanted.delimiter == "tab" ? '\t' : ',');
  const exporting::Units units = wanted.display ? exporting::Units::display : exporting::Units::si;
  const std::string& table = wanted.table;
  if (table == "events") exporting::write_events(csv, record);
  else if (table == "summary") exporting::write_summary(csv, record, units);
  else if (table == "requirements") exporting::write_requirements(csv, record, units);
  else if (table == "margins") exporting::write_margins(csv, record, units);
  else exporting::write_series(csv, record, exporting::chosen_channels(record, wanted.data), units);
  make_folder_of(out);
  exporting::write_whole(out, csv.take());
  if (options.json)
    fmt::print("{}\n", nlohmann::ordered_json{{"file", out.string()}, {"table", table}, {"outcome", record.outcome}}.dump(2));
  else if (!options.quiet)
    fmt::print("{}{}\n", out.string(), record.outcome == "complete" ? "" : fmt::format("  (the run: {})", record.outcome));
  return done;
}

}  // namespace sinewright::tool
