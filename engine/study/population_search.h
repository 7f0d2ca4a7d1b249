#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "study/assessment.h"
#include "study/search_variable.h"

namespace sinewright::study {

struct Member {
  Design design;
  Assessment assessment;
};

struct PopulationOptions {
  std::size_t objectives = 1;
  std::size_t population = 0;   ///< 0: 8 times the variables, at least 24; with several objectives at least 48
  std::size_t generations = 100;
  /// With one objective the search ends early when all members are feasible and their objectives differ by less than this share of
  /// the best, or each variable by less than this share of its range.
  double tolerance = 1e-6;
  std::uint64_t seed = 1;
};

/// Search by a population, for continuous and discrete variables, constraints, and one objective or a Pareto front. It asks for
/// designs and is told what became of them, a generation at a time: those of one generation can be tried on any number of
/// machines, and a search that was stopped goes on by telling it again what is on file. The same seed and the same answers give
/// the same questions, to the bit.
///
///     while (!search.done()) search.tell(assess_all(search.ask()));
///
/// Moves: differential evolution, rand/1/bin (Storn and Price, J. Glob. Optim. 11 (1997) 341, from memory). Selection: feasibility
/// first; with several objectives non-dominated fronts, then crowding (Deb et al. 2002, from memory), each trial against its own
/// parent first. No promise of a global optimum; several seeds show how far to trust one. Details: docs/theory/studies.md.
class PopulationSearch {
 public:
  PopulationSearch(std::vector<SearchVariable> variables, const PopulationOptions& options);

  [[nodiscard]] bool done() const { return done_; }
  /// The designs of the next generation; empty when done.
  [[nodiscard]] const std::vector<Design>& ask() const { return asked_; }
  /// What became of them, in the order asked. A run that failed has NaN objectives.
  void tell(std::vector<Assessment> assessments);

  [[nodiscard]] const std::vector<SearchVariable>& variables() const { return variables_; }
  [[nodiscard]] std::size_t generation() const { return generation_; }
  [[nodiscard]] std::uint64_t told() const { return told_; }
  /// After the first generation.
  [[nodiscard]] const std::vector<Member>& members() const { return members_; }
  /// With one objective: the best, feasible or not.
  [[nodiscard]] const Member& best() const;
  /// The feasible members that no other dominates, by rising first objective; each objective vector once.
  [[nodiscard]] std::vector<Member> front() const;

 private:
  void ask_first();
  void ask_next();
  [[nodiscard]] Design trial(std::size_t parent) const;
  void keep_best();
  [[nodiscard]] bool converged() const;

  std::vector<SearchVariable> variables_;
  PopulationOptions options_;
  std::size_t generation_ = 0;
  std::uint64_t told_ = 0;
  bool done_ = false;
  std::vector<Design> asked_;
  std::vector<Member> members_;
};

}  // namespace sinewright::study
