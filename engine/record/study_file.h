#pragma once

#include <cstdint>
#include <filesystem>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "record/channel.h"

/// The table of a study: every design, what it was made of and what became of it. Layout: docs/record.md.
namespace sinewright::record {

/// One number for each row.
struct StudyColumn {
  std::string name;
  std::string unit;                  ///< SI, in the notation of quantity/; "1" for options
  std::string shown_in;              ///< unit that the study file uses, or the best one for a reader
  std::string description;
  std::vector<std::string> options;  ///< not empty: the number is an index into these
  std::vector<double> values;        ///< NaN: the row has none
};

struct StudyRequirement {
  std::string quantity;  ///< name of an outcome
  std::string demand;    ///< in words with a unit
  double at_least = std::numeric_limits<double>::quiet_NaN();  ///< SI; NaN: no such bound
  double at_most = std::numeric_limits<double>::quiet_NaN();
  std::vector<double> shortfalls;  ///< what is missing as a share of the bound, 0: met; infinite: the outcome has no value
};

/// Row states in the file.
enum class RowState : std::int8_t { met = 0, missed = 1, invalid = 2, stopped = 3 };

struct StudyRecord {
  Inputs inputs;                 ///< the first file is the study
  std::string name, about;
  std::string kind;              ///< "grid", "sample", "tolerance", "sensitivity", "screening" or "optimise"
  std::string points;            ///< of a sample or tolerances: "random", "sobol", "latin_hypercube"; else empty
  double confidence = 0.95;      ///< of all intervals
  std::uint64_t seed = 1;
  std::uint64_t base = 0;        ///< base rows of a sensitivity study, paths of a screening
  std::uint64_t levels = 0;      ///< of a screening
  std::vector<std::pair<std::string, bool>> goals;  ///< of an optimisation: outcome, and whether more is better

  std::vector<StudyColumn> varied;    ///< what the study varies
  std::vector<StudyColumn> made;      ///< what the making varies about an optimum; NaN in rows of designs
  std::vector<StudyColumn> outcomes;
  std::vector<StudyRequirement> requirements;
  std::vector<RowState> states;
  std::vector<std::uint32_t> reasons;     ///< index into reason_texts, whose first is empty
  std::vector<std::string> reason_texts = {""};

  std::uint64_t designs = 0;              ///< rows that are designs; those after them are the chosen one, as made
  std::vector<std::uint64_t> best;        ///< rows: the optimum, or the front
  std::optional<std::uint64_t> chosen;    ///< the row whose robustness was checked
  std::vector<double> drawn;              ///< outcomes of the files as they are
  std::vector<SummaryValue> findings;     ///< what the table says

  [[nodiscard]] std::size_t rows() const { return states.size(); }
};

/// Writes the whole file; it gets its name only when it is on the disk. @throws RecordError
void write_study(const std::filesystem::path& file, const StudyRecord& record);

/// Whether the file is the table of a study; false for anything else, readable or not.
[[nodiscard]] bool is_study(const std::filesystem::path& file);

/// @throws RecordError
[[nodiscard]] StudyRecord read_study(const std::filesystem::path& file);

}  // namespace sinewright::record
