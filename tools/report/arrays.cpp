#include "report/arrays.h"

#include <bit>
#include <cstdint>
#include <string>

namespace sinewright::report {

namespace {

std::string base64(const std::vector<float>& values) {
  static_assert(std::endian::native == std::endian::little, "the page reads little-endian numbers");
  static const char* digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  const auto* bytes = reinterpret_cast<const unsigned char*>(values.data());
  const std::size_t n = values.size() * sizeof(float);
  std::string text;
  text.reserve((n + 2) / 3 * 4);
  for (std::size_t i = 0; i < n; i += 3) {
    const std::size_t left = n - i;
    const std::uint32_t word = (std::uint32_t{bytes[i]} << 16) | (left > 1 ? std::uint32_t{bytes[i + 1]} << 8 : 0u) | (left > 2 ? std::uint32_t{bytes[i + 2]} : 0u);
    text += digits[word >> 18];
    text += digits[(word >> 12) & 63];
    text += left > 1 ? digits[(word >> 6) & 63] : '=';
    text += left > 2 ? digits[word & 63] : '=';
  }
  return text;
}

}  // namespace

nlohmann::ordered_json packed(const std::vector<float>& values, std::size_t width) {
  return {{"n", values.size() / width}, {"width", width}, {"base64", base64(values)}};
}

}  // namespace sinewright::report
