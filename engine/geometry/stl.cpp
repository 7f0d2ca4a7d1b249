#include "geometry/stl.h"

#include <algorithm>
#include <bit>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>

#include <fmt/format.h>

namespace sinewright::geometry {

namespace {

constexpr std::size_t kHeader = 84;
constexpr std::size_t kRecord = 50;
const char* const kExport = "export the part anew, as binary STL";

static_assert(std::endian::native == std::endian::little, "the binary form is little-endian");

struct Corner {
  std::array<float, 3> at{};
  bool operator==(const Corner&) const = default;
};

// Numbers the different corners in the order in which they come, by an open table of the numbers given so far.
class Welder {
 public:
  explicit Welder(std::size_t triangles) : table_(std::bit_ceil(std::max<std::size_t>(16, 2 * triangles)), kNone) {
    mesh_.triangles.reserve(triangles);
    corners_.reserve(triangles / 2 + 2);
  }

  void add(const std::array<Corner, 3>& corners) {
    Triangle triangle{};
    for (std::size_t k = 0; k < 3; ++k) triangle[k] = number_of(corners[k]);
    mesh_.triangles.push_back(triangle);
  }

  [[nodiscard]] TriangleMesh take() {
    mesh_.points.reserve(corners_.size());
    for (const Corner& c : corners_) mesh_.points.emplace_back(c.at[0], c.at[1], c.at[2]);
    return std::move(mesh_);
  }

 private:
  static constexpr std::uint32_t kNone = 0xffffffff;

  static std::size_t hash(const Corner& corner) {
    std::uint64_t h = 0;
    for (const float x : corner.at) h = (h ^ std::bit_cast<std::uint32_t>(x)) * 0x9e3779b97f4a7c15ull;
    return h ^ (h >> 32);
  }

  std::size_t number_of(const Corner& corner) {
    if (2 * corners_.size() >= table_.size()) grow();
    const std::size_t mask = table_.size() - 1;
    std::size_t slot = hash(corner) & mask;
    while (table_[slot] != kNone && corners_[table_[slot]] != corner) slot = (slot + 1) & mask;
    if (table_[slot] == kNone) {
      table_[slot] = static_cast<std::uint32_t>(corners_.size());
      corners_.push_back(corner);
    }
    return table_[slot];
  }

  void grow() {
    table_.assign(2 * table_.size(), kNone);
    const std::size_t mask = table_.size() - 1;
    for (std::size_t i = 0; i < corners_.size(); ++i) {
      std::size_t slot = hash(corners_[i]) & mask;
      while (table_[slot] != kNone) slot = (slot + 1) & mask;
      table_[slot] = static_cast<std::uint32_t>(i);
    }
  }

  std::vector<std::uint32_t> table_;
  std::vector<Corner> corners_;
  TriangleMesh mesh_;
};

MeshProblem too_many(std::size_t n) {
  return {fmt::format("it has {} triangles", n), fmt::format("at most {} million triangles", most_triangles / 1'000'000),
          "export the part with a coarser tolerance; 0.05 mm is plenty for mass and touch"};
}

// ---- binary

TriangleMesh read_binary(std::string_view bytes) {
  const std::size_t size = bytes.size();
  if (size < kHeader)
    throw MeshProblem(fmt::format("the file has only {} bytes", size),
                      "an STL file: binary, of at least 84 bytes, or ASCII, beginning with 'solid'", kExport);
  std::uint32_t count = 0;
  std::memcpy(&count, bytes.data() + kHeader - sizeof count, sizeof count);
  const std::size_t expected = kHeader + kRecord * std::size_t{count};
  if (size != expected) {
    const std::string trouble = fmt::format(
        "as binary STL its header announces {} triangles, which make {} bytes, but the file has {}", count, expected, size);
    throw MeshProblem(trouble, "an STL file, binary or ASCII, that is whole",
                      size < expected ? "the file is cut off, or no STL file: copy or export it anew"
                                      : "something follows its triangles, or it is no STL file: export it anew");
  }
  if (count == 0) throw MeshProblem("it has no triangle", "a closed surface of triangles", kExport);
  if (count > most_triangles) throw too_many(count);
  Welder welder(count);
  for (std::size_t i = 0; i < count; ++i) {
    std::array<Corner, 3> corners;
    std::memcpy(corners.data(), bytes.data() + kHeader + kRecord * i + 3 * sizeof(float), sizeof corners);
    for (Corner& corner : corners)
      for (float& x : corner.at) {
        if (!std::isfinite(x))
          throw MeshProblem(fmt::format("triangle {} of {} has a corner whose coordinate is not a finite number", i + 1, count),
                            "finite coordinates", kExport);
        x += 0.0F;  // -0 and 0 are one place
      }
    welder.add(corners);
  }
  return welder.take();
}

// ---- ASCII

bool is_space(char c) { return c == ' ' || (c >= '\t' && c <= '\r'); }

class AsciiReader {
 public:
  explicit AsciiReader(std::string_view bytes) : bytes_(bytes) {}

  TriangleMesh read() {
    Welder welder(bytes_.size() / 200);  // a triangle takes some 250 characters
    std::string_view word = next();
    while (!word.empty()) {
      if (!is(word, "solid")) throw wrong(word, "solid");
      to_end_of_line();
      for (word = next(); is(word, "facet"); word = next()) {
        if (++triangles_ > most_triangles) throw too_many(triangles_);
        welder.add(facet());
      }
      if (!is(word, "endsolid")) throw wrong(word, "facet or endsolid");
      to_end_of_line();
      word = next();
    }
    if (triangles_ == 0) throw MeshProblem("it has no triangle", "a closed surface of triangles", kExport);
    return welder.take();
  }

 private:
  std::string_view next() {
    while (at_ < bytes_.size() && is_space(bytes_[at_])) ++at_;
    begin_ = at_;
    while (at_ < bytes_.size() && !is_space(bytes_[at_])) ++at_;
    return bytes_.substr(begin_, at_ - begin_);
  }

  void to_end_of_line() {  // past a name
    while (at_ < bytes_.size() && bytes_[at_] != '\n' && bytes_[at_] != '\r') ++at_;
  }

  static bool is(std::string_view word, std::string_view wanted) {
    return word.size() == wanted.size() && std::equal(word.begin(), word.end(), wanted.begin(), [](char a, char b) {
             return (a >= 'A' && a <= 'Z' ? static_cast<char>(a - 'A' + 'a') : a) == b;
           });
  }

  void need(std::string_view wanted) {
    const std::string_view word = next();
    if (!is(word, wanted)) throw wrong(word, wanted);
  }

  std::array<Corner, 3> facet() {
    need("normal");
    for (int k = 0; k < 3; ++k)
      if (next().empty()) throw wrong({}, "a number");
    need("outer");
    need("loop");
    std::array<Corner, 3> corners;
    for (Corner& corner : corners) {
      need("vertex");
      for (float& x : corner.at) x = number();
    }
    need("endloop");
    need("endfacet");
    return corners;
  }

  float number() {
    const std::string_view word = next();
    const std::string_view digits = word.starts_with('+') ? word.substr(1) : word;
    double value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    const bool two_signs = word.starts_with('+') && digits.starts_with('-');
    if (word.empty() || two_signs || error == std::errc::invalid_argument || end != digits.data() + digits.size())
      throw wrong(word, "a number");
    // What is out of the range of double is below or above; either way from_chars leaves the value alone.
    if (error == std::errc::result_out_of_range && digits.find("e-") == std::string_view::npos &&
        digits.find("E-") == std::string_view::npos)
      throw wrong(word, "a finite number");
    if (!(std::abs(value) <= std::numeric_limits<float>::max())) throw wrong(word, "a finite number");
    return static_cast<float>(value) + 0.0F;
  }

  [[nodiscard]] MeshProblem wrong(std::string_view word, std::string_view wanted) const {
    const auto line = 1 + std::count(bytes_.begin(), bytes_.begin() + static_cast<std::ptrdiff_t>(begin_), '\n');
    if (word.empty())
      return {fmt::format("as ASCII STL it ends in line {}, where {} is needed (triangle {})", line, wanted,
                          std::max<std::size_t>(1, triangles_)),
              "a whole file, down to 'endsolid'", "the file is cut off: copy or export it anew"};
    std::string found;
    for (const char c : word.substr(0, 40)) found += c >= ' ' && c <= '~' ? c : '?';
    return {fmt::format("as ASCII STL its line {} has '{}' where {} is needed (triangle {})", line, found, wanted,
                        std::max<std::size_t>(1, triangles_)),
            fmt::format("{} at this place", wanted), kExport};
  }

  std::string_view bytes_;
  std::size_t at_ = 0;
  std::size_t begin_ = 0;  // of the last word
  std::size_t triangles_ = 0;
};

}  // namespace

bool is_ascii_stl(std::string_view bytes) {
  std::size_t begin = 0;
  while (begin < bytes.size() && is_space(bytes[begin])) ++begin;
  if (!bytes.substr(begin).starts_with("solid") && !bytes.substr(begin).starts_with("SOLID")) return false;
  return bytes.substr(0, kHeader).find('\0') == std::string_view::npos;
}

TriangleMesh read_stl(std::string_view bytes) {
  if (bytes.empty()) throw MeshProblem("the file is empty", "an STL file", kExport);
  return is_ascii_stl(bytes) ? AsciiReader(bytes).read() : read_binary(bytes);
}

}  // namespace sinewright::geometry
