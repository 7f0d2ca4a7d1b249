#pragma once

#include <filesystem>

namespace sinewright::tool {

/// Makes the folder that a record goes into, if it is missing.
/// @throws record::RecordError if that cannot be done.
void make_folder_of(const std::filesystem::path& out);

}  // namespace sinewright::tool
