#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace sinewright::plot {

/// A gnuplot script under construction, with the project's look: sober lines, a light grid, and colours that
/// a colour-blind reader tells apart by lightness as well.
class Script {
 public:
  /// @param name      of the files, without extension: letters and hyphens.
  /// @param title     what the figure shows; any text.
  /// @param identity  whose run it is; any text.
  /// @param width,height  of the page [inch].
  Script(std::string name, const std::string& title, const std::string& identity, double width,
         double height);

  Script& line(const std::string& text);  ///< one or more lines of gnuplot, as they are
  /// Rows that plot commands can name as $NAME. @param columns  what each column holds, with its unit; any
  /// text.
  Script& block(const std::string& name, const std::vector<std::string>& columns,
                const std::vector<std::vector<double>>& rows);
  /// Polylines or polygons as such a block, with a break between two.
  Script& lines(const std::string& name, const std::vector<std::string>& columns,
                const std::vector<std::vector<std::vector<double>>>& list);

  [[nodiscard]] const std::string& name() const { return name_; }
  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  std::string name_, text_;
};

/// Text as a single-quoted gnuplot string. Nothing in it is expanded or executed: between single quotes
/// gnuplot knows neither back-quotes nor macros. A quote in the text becomes an apostrophe ’, since
/// gnuplot 5.4 reads a doubled quote at the beginning of a string as its end. Control characters become
/// blanks.
[[nodiscard]] std::string gnuplot_text(const std::string& text);

/// At most `longest` characters of UTF-8 text; what is cut is shown as "…".
[[nodiscard]] std::string shortened(const std::string& text, std::size_t longest);
/// Number of characters (code points) of UTF-8 text.
[[nodiscard]] std::size_t character_count(const std::string& text);

/// Writes the name of a row of bars left of the frame, at its height on the axis. As a label, not a tic: gnuplot reads a tic's text as a
/// format, in which '%' has a meaning. @param longest  characters that have room. @param size  of the letters.
void label_row(Script& script, std::size_t number, const std::string& name, std::size_t longest, double height, int size = 13);

/// Colour number i of the project's palette, for things of different kinds.
[[nodiscard]] std::string color(std::size_t i);
/// Colour number i of n from dark to light, for things that follow each other along a line.
[[nodiscard]] std::string ramp_color(std::size_t i, std::size_t n);

/// Writes NAME.gp into the folder and lets gnuplot draw it in every format ("png", "svg", "pdf").
/// @returns the files written, pictures first.
/// @throws InvalidInput if gnuplot is not installed or refuses the script, or a file cannot be written.
std::vector<std::filesystem::path> draw(const Script& script, const std::filesystem::path& folder,
                                        const std::vector<std::string>& formats);

}  // namespace sinewright::plot
