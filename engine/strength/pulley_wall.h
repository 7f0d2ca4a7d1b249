#pragma once

namespace sinewright::strength {

/// The ring of a printed pulley between its bore on the shaft and the bottom of its groove.
struct PulleyWall {
  double bore_diameter = 0;    ///< 2a [m], > 0
  double groove_diameter = 0;  ///< 2b, at the groove's bottom [m]; above the bore's
  double length = 0;           ///< L, loaded length of the ring along the shaft [m], > 0
  double eccentricity = 0;  ///< of bore and groove, or how much else thins the ring at one place [m], ≥ 0
};

/// Thinnest wall: t = b − a − eccentricity [m].
/// @throws InvalidInput if a dimension is out of range, or nothing is left of the wall.
[[nodiscard]] double remaining_wall(const PulleyWall& wall);

/// Pressure of a wound cord on the bottom of its groove: p = n T / (b w) [Pa].
///
/// Half a hoop of cord: two ends pull with T each, the pressure on the projected area 2 b w holds them. Every
/// turn is taken at the full tension T; friction would let the inner turns bear less.
/// @param tension        T of the cord [N], ≥ 0.
/// @param groove_radius  b [m], > 0.
/// @param pitch          w, width of the groove that one turn takes, the cord's diameter at least [m], > 0.
/// @param layers         n, turns lying over each other, ≥ 0.
[[nodiscard]] double winding_pressure(double tension, double groove_radius, double pitch, int layers);

/// Hoop stress at the bore under the winding's pressure, taken as compressive and positive [Pa].
///
///     σ = 2 p b² / (b² − a²)
///
/// Lamé's thick ring, free at the bore; a shaft that fills the bore takes part of it, so this is the cautious
/// side. The ring is taken round, with the thinnest wall all round.
/// @param pressure  p on the groove [Pa], ≥ 0.
[[nodiscard]] double wall_hoop_compression(const PulleyWall& wall, double pressure);

/// Tension that splits the ring: S / (2 t L) [Pa].
///
/// A force S that pulls one side of the ring away from the shaft is carried by the two sections of the wall
/// beside the shaft. The flat's force does so: it drives the bore open between flat and round side. The
/// cord's pull does so where its knot holds with little wrap; a wound cord presses the ring onto the shaft
/// instead. S is the sum of both, in one line: the worst case.
/// @param splitting_force  S [N], ≥ 0: cord pull + flat_force (d_flat.h).
[[nodiscard]] double wall_splitting_stress(const PulleyWall& wall, double splitting_force);

/// Bending stress at the root of a flange that the cord presses outward: 6 F h / (B t²) [Pa].
///
/// The flange as a cantilever plate of width B; the ring shape, which helps, is left out.
/// @param force      F, sideways push of the cord [N], ≥ 0.
/// @param height     h, from the groove's bottom to where the cord pushes [m], > 0.
/// @param thickness  t of the flange at its root [m], > 0.
/// @param width      B, length of the rim that shares the push [m], > 0.
[[nodiscard]] double flange_root_stress(double force, double height, double thickness, double width);

}  // namespace sinewright::strength
