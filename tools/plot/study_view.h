#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "record/study_file.h"
#include "study/findings.h"

namespace sinewright::plot {

/// A study's table with what it says, as figures and pages need it.
struct StudyView {
  const record::StudyRecord& table;
  const study::Findings& findings;
  std::string identity;  ///< study, kind and rows, engine version, and that the numbers are predictions
};

[[nodiscard]] std::string identity_of(const record::StudyRecord& table);

/// A column's name as a reader wants it: of outcomes "closing time" or "grip force, distal", with the run before it where the study
/// has several; of keys the name that the study gives.
[[nodiscard]] std::string outcome_title(const record::StudyRecord& table, std::size_t outcome);
/// With the unit: "closing time [s]".
[[nodiscard]] std::string outcome_label(const record::StudyRecord& table, std::size_t outcome);
[[nodiscard]] std::string key_label(const record::StudyColumn& key);

/// SI → the unit in which a column is shown: value = factor × SI + offset. Options stay indices.
struct Scale {
  double factor = 1, offset = 0;
  [[nodiscard]] double operator()(double si) const { return factor * si + offset; }
};
[[nodiscard]] Scale scale_of(const record::StudyColumn& column);
[[nodiscard]] std::vector<double> shown_values(const record::StudyColumn& column);
/// With its unit, or the option's name; "—" for none.
[[nodiscard]] std::string shown_text(const record::StudyColumn& column, double si);

/// One side of a requirement on an outcome.
struct Bound {
  std::size_t requirement = 0, outcome = 0;
  bool at_least = false;
  double value = 0;   ///< as shown
  std::string text;   ///< "at least 10 N"
};
/// All bounds on an outcome, or on all.
[[nodiscard]] std::vector<Bound> bounds_on(const record::StudyRecord& table, std::size_t outcome);
[[nodiscard]] std::vector<Bound> all_bounds(const record::StudyRecord& table);

/// Whether a row ran to its end and meets all requirements; whether it ran at all.
[[nodiscard]] inline bool passes(const record::StudyRecord& table, std::uint64_t row) { return table.states[row] == record::RowState::met; }
[[nodiscard]] inline bool ran(const record::StudyRecord& table, std::uint64_t row) {
  return table.states[row] == record::RowState::met || table.states[row] == record::RowState::missed;
}

/// A number in (0, 1) by chance, always the same for a row and purpose, and with nothing in common with the points of any study.
[[nodiscard]] double chance_of_row(std::uint64_t row, std::uint64_t purpose);

/// The rows [first, last), or of more than `most` about that many, chosen by chance with a fixed seed: as many as a picture can show.
/// Those in `always` are among them.
[[nodiscard]] std::vector<std::uint64_t> rows_to_draw(std::uint64_t first, std::uint64_t last, std::size_t most, std::span<const std::uint64_t> always = {});

/// Different numbers of a column among rows [first, last), sorted.
[[nodiscard]] std::vector<double> different_values(std::span<const double> values);

/// Outcome number of a goal.
[[nodiscard]] std::size_t outcome_of_goal(const record::StudyRecord& table, std::size_t goal);

/// What the number of rows says: "1,000,000".
[[nodiscard]] std::string counted(std::uint64_t n);

/// What an axis shows.
struct Extent {
  double low = 0, high = 1;
};
/// Of finite numbers with a little room on both sides; bounds are taken in unless they lie so far off that the numbers would be squeezed
/// into less than a quarter.
[[nodiscard]] Extent extent_of(std::span<const double> values, std::span<const Bound> bounds = {});

}  // namespace sinewright::plot
