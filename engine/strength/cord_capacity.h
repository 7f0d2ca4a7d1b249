#pragma once

#include <span>
#include <string_view>

namespace sinewright::strength {

/// Force at which a cord breaks in or beside its knot: breaking force × efficiency of the knot [N].
///
/// @param breaking_force   of the straight cord [N], > 0.
/// @param knot_efficiency  share of it that the knotted cord bears, in (0, 1].
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double knotted_capacity(double breaking_force, double knot_efficiency);

/// Share of the breaking force that a tensioned cord bears over a round guide, from D/d.
///
///     η = max(0, 1 − 0.5 / √(D/d))
///
/// Rule of thumb of rigging; common practice, no source. It gives one half at D = d, about what a knot (a
/// bend of the cord over itself) leaves. At and below D = d/4 it promises nothing.
/// Limits: docs/theory/strength/cord.md.
/// @param guide_diameter  D, twice the bend radius at the cord's inner side [m], ≥ 0.
/// @param cord_diameter   d [m], > 0.
/// @throws InvalidInput if a diameter is out of range.
[[nodiscard]] double bend_efficiency(double guide_diameter, double cord_diameter);

/// Force at which a cord breaks over a round guide: breaking force × bend_efficiency [N], ≥ 0.
[[nodiscard]] double bent_capacity(double breaking_force, double guide_diameter, double cord_diameter);

/// A published range of the efficiency of a knot.
struct KnotFigure {
  std::string_view knot;
  std::string_view cord;
  double low = 0;   ///< [–]; 0: only an upper bound is published
  double high = 0;  ///< [–]
  std::string_view source;
};

/// Published knot efficiencies. None is of a stopper knot in thin high-modulus braid: no such value was
/// found, so there is no default. Tie and pull some.
[[nodiscard]] std::span<const KnotFigure> published_knots() noexcept;

}  // namespace sinewright::strength
