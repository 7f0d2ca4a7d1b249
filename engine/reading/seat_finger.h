#pragma once

#include "reading/written.h"

namespace sinewright::reading {

/// Seats a finger in a hand: puts what its file says beside what the hand's own file says. Its names carry its scope already.
/// @throws InvalidInput if the hand asks for something that the finger's file does not have or cannot do without.
void seat_finger(const Entry<WrittenFinger>& seat, ModelFile finger, ModelFile& hand);

}  // namespace sinewright::reading
