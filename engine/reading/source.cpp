#include "reading/source.h"

#include <algorithm>
#include <cstdint>
#include <fstream>
#include <sstream>
#include <system_error>

#include <fmt/format.h>

#include "reading/complaint.h"
#include "geometry/stl.h"
#include "reading/document.h"
#include "reading/mesh_file.h"

namespace sinewright::reading {
namespace {

constexpr std::size_t kLargest = 4'000'000;  // bytes; the largest sensible file has some hundred lines

constexpr std::size_t kLargestMesh = 600'000'000;  // bytes: two million triangles in the ASCII form

std::string read_from_disk(const std::string& path, const std::string& what, std::size_t largest) {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  const Place place{path, 0, 0};
  if (status.type() == fs::file_type::not_found)
    throw complaint(place, "there is no such file", "",
                    "paths inside a file are relative to the folder of that file");
  if (status.type() == fs::file_type::directory)
    throw complaint(place, "this is a folder", what, "");
  if (status.type() != fs::file_type::regular && status.type() != fs::file_type::fifo)
    throw complaint(place, "this is not a readable file", what, "");
  std::ifstream in(path, std::ios::binary);
  std::string text;
  std::vector<char> block(1 << 16);
  while (in && text.size() <= largest) {
    in.read(block.data(), static_cast<std::streamsize>(block.size()));
    text.append(block.data(), static_cast<std::size_t>(in.gcount()));
  }
  if (!in.eof() && text.size() <= largest)
    throw complaint(place, "the file cannot be read", "", "check that it may be read by you");
  return text;
}

// Length of the UTF-8 character that begins at `at`, or 0 if none does.
std::size_t character_length(const std::string& text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char first = byte(at);
  if (first < 0x80) return 1;
  const std::size_t length = first >= 0xf0 ? 4 : first >= 0xe0 ? 3 : 2;
  if (first < 0xc2 || first > 0xf4 || at + length > text.size()) return 0;
  std::uint32_t code = first & (0x7fu >> length);
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(at + i) & 0xc0) != 0x80) return 0;
    code = (code << 6) | (byte(at + i) & 0x3fu);
  }
  const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
  const bool surrogate = code >= 0xd800 && code <= 0xdfff;
  return overlong || surrogate || code > 0x10ffff ? 0 : length;
}

// The YAML library lets broken UTF-8, NUL and control characters pass.
void check_characters(const std::string& path, const std::string& text) {
  Place place{path, 1, 1};
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = character_length(text, at);
    const auto byte = static_cast<unsigned char>(text[at]);
    if (length == 0)
      throw complaint(place, fmt::format("byte 0x{:02x} is not UTF-8", byte), "a text file in UTF-8",
                      "save the file as UTF-8; binary files cannot be read");
    const bool control = (byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7f;
    if (control)
      throw complaint(place, fmt::format("control character 0x{:02x}", byte), "a text file in UTF-8",
                      "binary files and UTF-16 cannot be read");
    if (byte == '\n') {
      ++place.line;
      place.column = 1;
    } else {
      ++place.column;
    }
    at += length;
  }
}

}  // namespace

Source::Source(const std::vector<std::pair<std::string, std::string>>& texts) : from_disk_(false) {
  for (const auto& [path, text] : texts)
    known_.push_back({std::filesystem::path(path).lexically_normal().generic_string(), text});
}

std::string Source::content(const std::string& name, const std::string& what, std::size_t largest) const {
  if (from_disk_) return read_from_disk(name, what, largest);
  const auto found = std::find_if(known_.begin(), known_.end(), [&](const File& file) { return file.path == name; });
  if (found == known_.end())
    throw complaint({name, 0, 0}, "there is no such text among the recorded inputs", "", "");
  return found->text;
}

const Source::File& Source::text(const std::filesystem::path& path) {
  const std::string name = path.lexically_normal().generic_string();
  for (const File& file : handed_out_)
    if (file.path == name) return file;
  std::string text = content(name, "a YAML file", kLargest);
  if (text.size() > kLargest)
    throw complaint({name, 0, 0}, fmt::format("the file is larger than {} MB", kLargest / 1'000'000),
                    "a model, parts or scenario file", "");
  check_characters(name, text);
  return handed_out_.emplace_back(File{name, std::move(text)});
}

std::unique_ptr<Node> Source::document(const std::filesystem::path& path) {
  const File& file = text(path);
  auto known = documents_.find(file.path);
  if (known == documents_.end()) known = documents_.emplace(file.path, parse_document(file.path, file.text)).first;
  return copy_of(*known->second);
}

const geometry::MeshDigest& Source::mesh(const std::filesystem::path& path) {
  const std::string name = path.lexically_normal().generic_string();
  if (const auto known = meshes_.find(name); known != meshes_.end()) return known->second;
  const std::string bytes = content(name, "an STL file", kLargestMesh);
  if (bytes.size() > kLargestMesh)
    throw complaint({name, 0, 0}, fmt::format("the file is larger than {} MB", kLargestMesh / 1'000'000),
                    fmt::format("an STL file of at most {} million triangles", geometry::most_triangles / 1'000'000),
                    "export the part with a coarser tolerance, as binary STL");
  const geometry::MeshDigest digest =
      !from_disk_ && is_digest(bytes) ? read_digest(*parse_document(name, bytes)) : geometry::digest_mesh(bytes);
  handed_out_.emplace_back(File{name, written_digest(digest)});
  return meshes_.emplace(name, digest).first->second;
}

}  // namespace sinewright::reading
