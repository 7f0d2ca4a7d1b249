#include "out_folder.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>

#include "quantity/invalid_input.h"
#include "record/writer.h"

namespace sinewright::tool {

void make_folder_of(const std::filesystem::path& out) {
  if (!out.has_parent_path()) return;
  std::error_code error;
  std::filesystem::create_directories(out.parent_path(), error);
  if (error)
    throw record::RecordError(fmt::format("{}: the folder cannot be made: {}", out.parent_path().string(), error.message()));
}

void refuse_to_replace(const std::filesystem::path& out, const std::string& option, const std::vector<std::filesystem::path>& inputs,
                       const std::string& meaning, const std::string& example) {
  std::error_code none;
  if (!std::filesystem::exists(out, none)) return;
  if (std::any_of(inputs.begin(), inputs.end(), [&](const auto& input) { return std::filesystem::equivalent(out, input, none); }))
    throw InvalidInput(fmt::format("{} '{}' is {}\n  needed: another name, such as '{}'", option, out.string(), meaning, example));
  if (!std::filesystem::is_regular_file(out, none)) throw InvalidInput(fmt::format("{} '{}' is there and no file", option, out.string()));
  std::string head(8, '\0');
  std::ifstream(out, std::ios::binary).read(head.data(), 8);
  if (head == "\x89HDF\r\n\x1a\n")
    throw InvalidInput(fmt::format("{} '{}' is another record (HDF5)\n  needed: a name whose file may be replaced", option, out.string()));
}

}  // namespace sinewright::tool
