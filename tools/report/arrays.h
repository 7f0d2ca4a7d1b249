#pragma once

#include <vector>

#include <nlohmann/json.hpp>

namespace sinewright::report {

/// Numbers as the page takes them: {"n": rows, "width": columns, "base64": little-endian float32, row-major}; NaN: no value.
[[nodiscard]] nlohmann::ordered_json packed(const std::vector<float>& values, std::size_t width = 1);

}  // namespace sinewright::report
