#pragma once

#include <string>
#include <vector>

#include "export/csv.h"
#include "record/reader.h"
#include "record/study_file.h"

namespace sinewright::exporting {

enum class Units {
  si,       ///< and radians; numbers read back to the same bits
  display,  ///< deg, mm, N·mm, MPa, mJ, °C; twelve digits
};

/// Channels that a choice names, in the order of the record.
/// @param chosen  paths ("/cords/flexor/tension"), groups ("/cords/flexor") or patterns ("*/tension"; * ? [...]), each with or without
///                the first slash. Empty: all channels.
/// @throws InvalidInput if one names no channel.
[[nodiscard]] std::vector<std::size_t> chosen_channels(const record::Record& record, const std::vector<std::string>& chosen);

/// One row an instant: time, then every column of the channels.
void write_series(Csv& csv, const record::Record& record, const std::vector<std::size_t>& channels, Units units);
void write_events(Csv& csv, const record::Record& record);
void write_summary(Csv& csv, const record::Record& record, Units units);
void write_requirements(Csv& csv, const record::Record& record, Units units);
/// The margins, smallest first, then those that are not checked, with what they lack.
void write_margins(Csv& csv, const record::Record& record, Units units);

/// One row a design: its number, how it ended, what it was made of, what came of it, why.
/// @param units  display: as the study file has them.
void write_study(Csv& csv, const record::StudyRecord& table, Units units);

}  // namespace sinewright::exporting
