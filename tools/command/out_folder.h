#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace sinewright::tool {

/// Makes the folder that a record goes into, if it is missing.
/// @throws record::RecordError if that cannot be done.
void make_folder_of(const std::filesystem::path& out);

/// Refuses an output that would take the place of one of the inputs, of another record, or of what is no file.
/// @param option   that named the output, for the message.
/// @param meaning  of an input, completing "'x' is …": "the record itself".
/// @param example  a name that would do.
/// @throws InvalidInput
void refuse_to_replace(const std::filesystem::path& out, const std::string& option, const std::vector<std::filesystem::path>& inputs,
                       const std::string& meaning, const std::string& example);

}  // namespace sinewright::tool
