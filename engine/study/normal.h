#pragma once

namespace sinewright::study {

/// Φ(z), the share of a standard normal below z.
[[nodiscard]] double normal_cumulative(double z);

/// Φ⁻¹(u) for 0 < u < 1.
[[nodiscard]] double normal_quantile(double u);

}  // namespace sinewright::study
