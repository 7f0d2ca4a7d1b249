#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace sinewright::plot {

/// A gnuplot script under construction, with the project's look: sober lines, light grid, colours that a colour-blind reader
/// can tell apart by lightness as well.
class Script {
 public:
  /// @param title  shown above the figure; any text.
  explicit Script(std::string name, const std::string& title, double width = 10.5, double height = 7);

  Script& line(const std::string& text);  ///< one line of gnuplot, as it is
  /// A block of rows that plot commands can name as $NAME.
  Script& block(const std::string& name, const std::vector<std::vector<double>>& rows);
  /// The same for rows with breaks between polylines: an empty row breaks.
  [[nodiscard]] const std::string& name() const { return name_; }
  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  std::string name_, text_;
};

/// Text as a single-quoted gnuplot string: nothing in it is expanded or executed, line breaks become spaces.
[[nodiscard]] std::string gnuplot_text(const std::string& text);

/// Colour number i of the project's palette.
[[nodiscard]] const char* color(std::size_t i);

/// Writes NAME.gp into the folder and lets gnuplot draw it in every format ("png", "svg", "pdf").
/// @returns the files written, pictures first.
/// @throws InvalidInput if gnuplot is not installed or refuses the script.
std::vector<std::filesystem::path> draw(const Script& script, const std::filesystem::path& folder,
                                        const std::vector<std::string>& formats);

}  // namespace sinewright::plot
