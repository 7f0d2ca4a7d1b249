#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "study/axis.h"
#include "study/design_runs.h"
#include "study/journal.h"
#include "study/plan.h"
#include "study/work.h"

namespace sinewright::study {

struct StudyOptions {
  std::vector<std::string> overrides;  ///< from the command line, for the runs: "model.…" or "<run>.…"
  int threads = 0;                     ///< 0: as many as the machine has
  std::filesystem::path journal;       ///< what is finished so far, so that a killed study can go on
  bool resume = false;
  std::string fingerprint;             ///< added to that of the files and values: what the command line changed in the study file
  std::function<void(std::uint64_t done, std::uint64_t of)> progress;  ///< from any thread, one at a time
  const std::atomic<bool>* stop = nullptr;  ///< set: no further design is begun
  Followers* followers = nullptr;           ///< other processes that help; null: alone
};

/// All rows of a study. Values come again from the plan, outcomes from the journal, so that a million rows need little memory.
class StudyTable {
 public:
  std::vector<Axis> axes;    ///< of all rows
  std::vector<Axis> making;  ///< of an optimisation's robustness: what the making varies
  Bench bench;

  [[nodiscard]] std::uint64_t rows() const { return rows_; }
  [[nodiscard]] std::uint64_t designs() const { return designs_; }  ///< rows that are designs; those after them are the best one, as made
  /// A number for each axis, then one for each of `making`; NaN where a row has none.
  [[nodiscard]] std::vector<double> values(std::uint64_t row) const;
  [[nodiscard]] DesignResult result(std::uint64_t row) const { return journal_->read(static_cast<long long>(row)); }

  /// The table is kept elsewhere: what was finished so far need not be on the disk any more. No row can be read after it.
  void remove_journal() { journal_->remove(); }

  /// Of an optimisation: the row of the best design, or of each design of the front, by rising first goal. Empty: none meets all
  /// requirements.
  std::vector<std::uint64_t> best;
  /// The row whose robustness was checked.
  std::optional<std::uint64_t> chosen;
  bool complete = false;  ///< false: stopped before its end

 private:
  friend StudyTable run_study(reading::Source&, const model::Study&, const StudyOptions&);
  std::uint64_t rows_ = 0, designs_ = 0;
  std::shared_ptr<Journal> journal_;
  std::optional<Plan> plan_, made_;
  std::vector<std::vector<double>> searched_;  // values of an optimisation's designs
};

/// Runs a study on all threads, and on the processes that help. The table does not depend on how many there are of either, nor on how
/// often it was stopped and resumed.
/// @throws InvalidInput as set_up; std::system_error if the journal cannot be written.
[[nodiscard]] StudyTable run_study(reading::Source& source, const model::Study& study, const StudyOptions& options);

/// What a process does that helps the one that leads: returns when the study is over, also when it could not begin (the leader says why).
/// @param options  journal, progress and stop are the leader's.
/// @throws InvalidInput as set_up, for `decline` to tell.
void help_study(reading::Source& source, const model::Study& study, const StudyOptions& options, Ranks& ranks);

}  // namespace sinewright::study
