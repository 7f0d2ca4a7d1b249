#pragma once

namespace sinewright::strength {

/// What the skin touches. Ceramic includes glass, plastic includes wood.
enum class TouchSurface { bare_metal, ceramic, plastic };

/// Surface temperature below which a touch of a given time does not burn healthy adult skin [K].
///
/// ISO 13732-1 (and EN 563), burn thresholds, from memory; the 48 °C of bare metal at 10 min was seen in a
/// secondary copy. Between the listed times the threshold of the next longer one holds. Below 1 min only
/// metal (1 and 10 s) and plastic (1 s) are known, each from a band whose lower end is taken; the others use
/// the value of 1 min.
/// @param contact_time  [s], > 0; beyond 10 min the value for 8 h (and longer) holds.
/// @throws InvalidInput if the time is out of range.
[[nodiscard]] double burn_threshold(TouchSurface surface, double contact_time);

/// Surface temperature that medical electrical equipment may reach where it is touched [K].
///
/// IEC 60601-1, table 23: plastic 86 °C below 1 s and 71 °C below 10 s seen in a secondary copy, the rest
/// from memory. Not for parts worn on the skin.
/// @param surface  bare_metal or plastic; the reference gives no value for ceramic.
/// @throws InvalidInput if the time is out of range or the surface has no value.
[[nodiscard]] double medical_touch_limit(TouchSurface surface, double contact_time);

}  // namespace sinewright::strength
