#pragma once

#include <span>

#include "model/drive.h"

namespace sinewright::friction {

/// Friction of a gearhead, as a torque on the output shaft that opposes its motion.
struct GearFriction {
  double winding = 0;            ///< limit while the shaft turns in + direction [N m], >= 0
  double unwinding = 0;          ///< limit while it turns in − direction [N m], >= 0
  double winding_by_load = 0;    ///< ∂winding/∂τ [–]
  double unwinding_by_load = 0;  ///< ∂unwinding/∂τ [–]
};

/// The cone of a gearhead: at rest the friction lies anywhere in [−winding, +unwinding].
///
///     τ ≥ 0:  winding   = (1/η_f − 1) τ + drag      (the motor lifts the load)
///             unwinding = (1 − η_b) τ + drag        (the load drives the motor back)
///     τ < 0:  the two factors change places, with |τ|
///
/// With η_b = 2 − 1/η_f both factors are equal: the loss belongs to the transmitted load, whichever side
/// drives. η_b = 0 locks: no load turns the shaft back, however large. See docs/theory/gearhead.md.
/// @param load_torque  τ of the load on the output shaft, positive when it opposes winding [N m].
[[nodiscard]] GearFriction gear_friction(const model::Gearhead& gearhead, double load_torque) noexcept;

/// Backward efficiency of one gear stage from its forward one: max(0, 2 − 1/η).
///
/// Same friction in both directions for the same transmitted load. 0 at and below η = 0.5: self-locking.
/// Source: worm-gear chapters of machine-element textbooks (Niemann; Roloff and Matek), from memory.
/// @param forward  η, in (0, 1].
/// @throws InvalidInput if out of range.
[[nodiscard]] double backward_efficiency(double forward);

/// Of a train of stages: the product of the stages' own. Putting the train's overall efficiency into the
/// one-stage formula gives a far too low value.
/// @param forward  each stage's forward efficiency, in (0, 1].
[[nodiscard]] double backward_efficiency(std::span<const double> forward);

/// Of `stages` equal stages with a given forward efficiency of the whole train.
[[nodiscard]] double backward_efficiency_of_equal_stages(double overall_forward, int stages);

/// Torque at the output when the motor drives: η_f (ratio · rotor torque − drag), not below 0 [N m].
/// @param rotor_torque  net torque of the rotor after its own drag, >= 0 [N m].
[[nodiscard]] double forward_output_torque(const model::Gearhead& gearhead, double rotor_torque) noexcept;

/// Smallest torque at the output that turns the rotor backward against its drag; infinite if the gearhead
/// locks [N m].
///
///     τ = (ratio · rotor drag + drag) / η_b
[[nodiscard]] double back_drive_torque(const model::Gearhead& gearhead, double rotor_drag) noexcept;

/// @throws InvalidInput, naming the field, if a gearhead's data cannot be used.
void check_gearhead(const model::Gearhead& gearhead);

}  // namespace sinewright::friction
