#pragma once

#include <span>
#include <vector>

namespace sinewright::study {

/// What became of a design that was tried.
struct Assessment {
  std::vector<double> objectives;  ///< to be made small; the caller turns the sign of what is to be made large
  /// For each constraint by how much it is missed; 0 or less: it holds. They are summed, so scale them alike.
  std::vector<double> violations;
};

/// Sum of what is missed: 0 for a feasible design, infinite if any number is not finite (the run failed).
[[nodiscard]] double violation(const Assessment& a);

/// Feasibility first (Deb, Pratap, Agarwal and Meyarivan, IEEE Trans. Evol. Comput. 6 (2002) 182, from memory): of two designs the
/// one that misses less is better; of two feasible ones the one that is nowhere worse and somewhere better.
[[nodiscard]] bool dominates(const Assessment& a, const Assessment& b);

/// The front number of each design: 0 for those that no other dominates, 1 for those that only designs of front 0 dominate, ….
[[nodiscard]] std::vector<std::size_t> front_numbers(std::span<const Assessment> designs);

/// How alone each design stands among these (same source): the sum over objectives of the distance between its neighbours, in parts of
/// the objective's range; infinite at the ends.
[[nodiscard]] std::vector<double> crowding_distances(std::span<const Assessment> designs);

}  // namespace sinewright::study
