#pragma once

#include <span>

namespace sinewright::study {

/// Members of one group ("all holes of one print") that vary together: a Gaussian copula with one shared factor f,
///
///     z_i = √r f + √(1−r) e_i,        u_i = Φ(z_i),
///
/// f and e_i independent standard normals. Each u_i stays uniform on (0, 1), so every member keeps its own distribution; any two
/// of the z have the correlation r, any two of the u (so any two members, by rank) the rank correlation 6/π asin(r/2).
///
/// @param factor       the shared coordinate, in (0, 1).
/// @param correlation  r, 0 … 1.
/// @param members      in: a coordinate of its own for each, in (0, 1); out: the coordinates that vary together.
/// @throws InvalidInput for another r or coordinate.
void share_factor(double factor, double correlation, std::span<double> members);

/// Spearman's rank correlation that goes with r, and back.
[[nodiscard]] double rank_correlation(double correlation);
[[nodiscard]] double correlation_for_rank(double rank_correlation);

}  // namespace sinewright::study
