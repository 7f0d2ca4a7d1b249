#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace sinewright::exporting {

/// A text of comma-separated values as RFC 4180 has it: UTF-8, CRLF, a cell in quotes where it must be.
class Csv {
 public:
  /// @param delimiter  ',', ';' or a tab.
  explicit Csv(char delimiter) : delimiter_(delimiter) {}

  /// A text. One that a spreadsheet would run as a formula (it begins with = + - @, a tab or a carriage return) gets a '
  /// in front, which shows it as text.
  void text(std::string_view cell);

  /// The shortest decimal number that reads back to the same bits; NaN is an empty cell, an infinity inf or -inf.
  void number(double value);
  /// Twelve digits, for values that were converted.
  void rounded(double value);

  void end_row();

  /// Everything so far. A byte order mark leads it if any character is beyond ASCII: some spreadsheets need it to read UTF-8.
  [[nodiscard]] std::string take();

 private:
  void begin_cell();

  char delimiter_;
  bool row_begun_ = false;
  std::string content_;
};

/// Puts a file in place whole or not at all: written beside it under a name of its own, then renamed.
/// @throws record::RecordError if that fails; nothing is left then, and what was there before still is.
void write_whole(const std::filesystem::path& file, std::string_view content);

}  // namespace sinewright::exporting
