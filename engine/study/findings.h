#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "record/study_file.h"
#include "study/failure_cause.h"
#include "study/proportion_interval.h"
#include "study/sample_statistics.h"
#include "study/screening.h"
#include "study/sensitivity.h"

namespace sinewright::study {

/// How an outcome is spread over the rows that have it.
struct OutcomeSpread {
  SampleMoments moments;
  std::array<double, 3> quantiles{};  ///< 5 %, 50 %, 95 %
};

/// What share of the made things meets all requirements.
struct Yield {
  std::uint64_t met = 0, of = 0;
  Interval interval;
  std::vector<FailureCause> causes;  ///< per key of what the making varies
};

/// What the table of a study says; a function of the table alone, so that a plot made a year later says the same.
struct Findings {
  std::uint64_t first = 0, last = 0;           ///< rows [first, last) of which the rest speaks: all, or the making of an optimum
  std::array<std::uint64_t, 4> states{};       ///< rows of each state, among these
  std::vector<std::uint64_t> missed;           ///< per requirement, rows that do not meet it
  std::vector<OutcomeSpread> outcomes;
  std::optional<Yield> yield;                  ///< of tolerances, and of a checked optimum
  std::vector<SensitivityResult> sensitivity;  ///< per outcome, of a sensitivity study
  std::vector<std::vector<ElementaryEffects>> screening;  ///< per outcome, of a screening
};

[[nodiscard]] Findings findings_of(const record::StudyRecord& table);

/// The same as single numbers with names, for records and other programs: "yield", "first_index.<outcome>.<key>", ….
[[nodiscard]] std::vector<record::SummaryValue> listed(const Findings& findings, const record::StudyRecord& table);

/// What the making varies: the varied keys of a tolerance study, those of `robustness` of an optimisation.
[[nodiscard]] const std::vector<record::StudyColumn>& making_of(const record::StudyRecord& table);

}  // namespace sinewright::study
