#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/study.h"
#include "reading/reading.h"
#include "simulation/recording.h"
#include "study/design_result.h"

namespace sinewright::study {

/// A column of outcomes.
struct OutcomeColumn {
  std::string name;  ///< "<run>.<key of the summary>", "<run>" of a limit, or "cost"
  std::string unit;  ///< SI, in the notation of quantity/
  std::string description;
};

/// Whose model is costed for the outcome "cost": that of the first scenario among the runs, or of the first limit's scenario if
/// there is none. Runs may change their models each in its own way; the others' do not count.
struct Costing {
  std::size_t run = 0;
  Place place;  ///< for the message where a part has no price
};

/// What all designs of a study have in common; made once, then only read.
struct Bench {
  std::vector<model::StudyRun> runs;
  std::vector<std::string> overrides;                    ///< from the command line, for all designs
  std::vector<std::pair<std::string, std::string>> texts;  ///< every file that a design may need
  std::optional<Costing> costing;                        ///< none: nothing asks for "cost"
  std::vector<OutcomeColumn> columns;
  std::vector<model::Requirement> requirements;          ///< on columns: the study's own, then the scenarios'
  DesignResult drawn;                                    ///< the files as they are, nothing varied
};

/// Puts the design as drawn through all runs, and reads each option once, so that what is wrong with the study shows before
/// thousands of designs are run.
///
/// @param overrides  from the command line, as 'change' of a run: "<run>.…" or "model.…".
/// @throws InvalidInput where the design as drawn cannot be run, or an outcome, requirement or key names nothing, or "cost" is asked
///         for and a part of it or of an option has no price.
[[nodiscard]] Bench set_up(const model::Study& study, reading::Source& source, const std::vector<std::string>& overrides);

/// The changes that concern one run: "model.…" all runs, "<run>.…" that one, without its name before it.
[[nodiscard]] std::vector<std::string> changes_for(const model::StudyRun& run, const std::vector<std::string>& changes);

/// What a design's values set: "key.path=value" each.
[[nodiscard]] std::vector<std::string> changes_of(const std::vector<model::Variable>& vary, const std::vector<double>& values);

/// Puts one design through all runs. Never throws for what the values cause: that is a row with its reason.
/// @param source  knows the bench's texts; one for each thread.
[[nodiscard]] DesignResult run_design(const Bench& bench, reading::Source& source, long long index,
                                      const std::vector<std::string>& changes);

}  // namespace sinewright::study
