#include "out_folder.h"

#include <fmt/format.h>

#include "record/writer.h"

namespace sinewright::tool {

void make_folder_of(const std::filesystem::path& out) {
  if (!out.has_parent_path()) return;
  std::error_code error;
  std::filesystem::create_directories(out.parent_path(), error);
  if (error)
    throw record::RecordError(fmt::format("{}: the folder cannot be made: {}", out.parent_path().string(), error.message()));
}

}  // namespace sinewright::tool
