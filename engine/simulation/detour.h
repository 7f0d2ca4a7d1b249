#pragma once

#include <optional>
#include <vector>

#include "simulation/system.h"

namespace sinewright::simulation {

/// One way of a cord from its drive to the first moving body, the finger's mouth.
struct WayToFinger {
  double turning = 0;      ///< sum of its turning angles up to the mouth [rad]
  double ratio = 1;        ///< tension at the mouth / tension at the pulley, while the cord is wound in [–]
  double path_length = 0;  ///< of the whole cord [m]
  double stretch = 0;      ///< by how much the whole cord is longer under `Detour::tension` at the pulley than at rest [m]
};

/// What it costs that a drive sits elsewhere in the hand than in line with its finger. Law: docs/theory/static-analysis.md.
struct Detour {
  std::size_t cord = 0;   ///< index into System::cords
  double tension = 0;     ///< at the pulley, with the drive at stall [N]
  WayToFinger led;        ///< as the hand has it
  WayToFinger in_line;    ///< as the finger's own file has it

  /// Tension at the mouth, and with it the grip, per tension at the pulley: of the led cord against the one in line [–].
  [[nodiscard]] double gain() const { return led.ratio / in_line.ratio; }
};

/// Of every cord that is led, in system order. @param angles  of the hinges, for both ways [rad].
[[nodiscard]] std::vector<Detour> detours(const System& system, const std::vector<double>& angles);

}  // namespace sinewright::simulation
