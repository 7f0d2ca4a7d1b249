#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "commands.h"
#include "export/tables.h"
#include "out_folder.h"
#include "quantity/invalid_input.h"
#include "record/limit_file.h"

namespace sinewright::tool {

namespace {

namespace fs = std::filesystem;

// Where the table goes must not be a record, least of all the one it is made from.
void refuse_to_replace_a_record(const fs::path& out, const fs::path& record) {
  std::error_code none;
  if (!fs::exists(out, none)) return;
  if (fs::equivalent(out, record, none))
    throw InvalidInput(fmt::format("--out '{}' is the record itself\n  needed: another name, such as '{}'", out.string(),
                                   fs::path(record).replace_extension(".csv").string()));
  if (!fs::is_regular_file(out, none)) throw InvalidInput(fmt::format("--out '{}' is there and no file", out.string()));
  std::string head(8, '\0');
  std::ifstream(out, std::ios::binary).read(head.data(), 8);
  if (head == "\x89HDF\r\n\x1a\n")
    throw InvalidInput(fmt::format("--out '{}' is another record (HDF5)\n  needed: a name whose file may be replaced", out.string()));
}

}  // namespace

int export_command(const std::string& file, const ExportOptions& wanted, const CommonOptions& options) {
  if (!options.set.empty()) throw InvalidInput("export writes what a record holds; --set belongs to 'sinewright run'");
  if (!wanted.data.empty() && wanted.table != "series") throw InvalidInput("--data chooses time series; leave --table out");
  const fs::path input = file;
  fs::path out = options.out;
  if (out.empty()) out = fs::path(input).replace_extension(wanted.table == "series" ? ".csv" : "." + wanted.table + ".csv");
  refuse_to_replace_a_record(out, input);
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
