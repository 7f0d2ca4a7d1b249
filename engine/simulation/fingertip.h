#pragma once

#include <optional>

#include "model/body.h"

namespace sinewright::simulation {

/// The fingertip's place on the body's x axis: where its shapes and solids end [m]; none: it has neither.
[[nodiscard]] std::optional<double> fingertip(const model::Body& body);

}  // namespace sinewright::simulation
