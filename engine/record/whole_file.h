#pragma once

#include <filesystem>

#include "record/partial_file.h"

namespace sinewright::record {

/// Writes the final form of a record, compressed, from its partial file and what is known only at the end. Its bytes
/// depend on the record alone, not on when the partial file was flushed.
/// @throws CallFailure; the file may then be there, unfinished.
void write_whole_file(const std::filesystem::path& path, const PartialFile& partial, const std::vector<Channel>& channels,
                      const Inputs& inputs, const std::vector<SummaryValue>& summary,
                      const std::vector<Verdict>& verdicts, const Margins& margins, const std::string& outcome);

}  // namespace sinewright::record
