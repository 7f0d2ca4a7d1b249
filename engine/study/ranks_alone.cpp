// In the place of ranks.cpp for an engine built without MPI.

#include "study/ranks.h"

#include <cstdlib>

namespace sinewright::study {

Ranks::Ranks() = default;
Ranks::~Ranks() = default;
void Ranks::send(int, int, std::string_view) {}
std::optional<Ranks::Message> Ranks::receive() { return std::nullopt; }
void Ranks::abandon() { std::abort(); }

}  // namespace sinewright::study
