#pragma once

#include <span>

#include "model/body.h"

namespace sinewright::geometry {

/// Mass, centre of mass and inertia of a primitive filled with one density ρ, in the body frame.
///
///     sphere    m = ρ 4/3 π r³,       I = 2/5 m r²
///     capsule   cylinder of length L and two half spheres; about the axis m_c r²/2 + m_s 2r²/5,
///               across m_c (r²/4 + L²/12) + m_s (2r²/5 + 3rL/8 + L²/4), m_s both half spheres together
///     cylinder  m = ρ π r² L,         I = m r²/2 about the axis, m (r²/4 + L²/12) across
///     box       m = ρ a b c,          I_x = m (b² + c²)/12 and so on
///     hull      sum over the tetrahedra between an inner point and the triangles of the convex hull of the
///     points
///     mesh      the volume properties that it carries (geometry/mesh_volume.h), times ρ
///
/// Elementary; derivations in docs/theory/mass-properties.md. Exact but for rounding.
/// Checked by tests/geometry/mass_properties_test.cpp.
///
/// @param solid  shape [m] and density [kg/m³] > 0.
/// @returns mass > 0 [kg], centre [m], inertia about the centre of mass in body axes [kg m²].
/// @throws InvalidInput if the density or a size is not positive and finite, an axis is no unit vector, a
/// rotation
///         is not orthonormal, or a hull has no volume.
[[nodiscard]] model::MassProperties mass_of(const model::Solid& solid);

/// Rigidly joined parts as one: masses add, centres average by mass, inertias add after the parallel-axis
/// shift
///
///     I = Σ Iᵢ + mᵢ (|dᵢ|² 1 − dᵢ dᵢᵀ),  dᵢ from the common centre of mass to the centre of part i
///
/// @param parts  all in the same frame, each mass ≥ 0, their sum > 0.
/// @throws InvalidInput if there is no part, a number is not finite, or the masses do not allow it.
[[nodiscard]] model::MassProperties combine(std::span<const model::MassProperties> parts);

}  // namespace sinewright::geometry
