#include "plot/gnuplot.h"

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>

#include <fcntl.h>
#include <fmt/format.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include "quantity/invalid_input.h"

extern char** environ;

namespace sinewright::plot {

namespace {

namespace fs = std::filesystem;

bool continues_character(char c) {
  return (static_cast<unsigned char>(c) & 0xc0) == 0x80;
}

std::string without_controls(const std::string& text) {
  std::string out = text;
  for (char& c : out)
    if (static_cast<unsigned char>(c) < 32 || c == 127) c = ' ';
  return out;
}

void add_row(std::string& text, const std::vector<double>& row) {
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (i) text += ' ';
    text += std::isfinite(row[i]) ? fmt::format("{:.7g}", row[i]) : std::string("NaN");
  }
  text += '\n';
}

// Lines that begin with # are comments inside a block too, so that no text in them can end it.
void add_columns(std::string& text, const std::vector<std::string>& columns) {
  for (std::size_t i = 0; i < columns.size(); ++i)
    text += fmt::format("# column {}: {}\n", i + 1, without_controls(columns[i]));
}

// Runs gnuplot on a script in a folder; gives back what it had to say.
struct Ran {
  bool started = false;
  int status = 0;
  std::string said;
};

Ran run_gnuplot(const std::string& script, const std::string& format, const fs::path& folder) {
  Ran ran;
  std::array<int, 2> ends{};
  if (pipe2(ends.data(), O_CLOEXEC) != 0) return ran;
  // Option -d: the user's own gnuplot settings must not change the figures.
  std::string program = "gnuplot", plain = "-d", option = "-e", setting = fmt::format("format='{}'", format),
              source = script;
  const std::array<char*, 6> arguments = {program.data(), plain.data(),  option.data(),
                                          setting.data(), source.data(), nullptr};
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addchdir_np(&actions, folder.c_str());
  posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
  posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
  posix_spawn_file_actions_adddup2(&actions, ends[1], STDERR_FILENO);
  pid_t child = 0;
  ran.started = posix_spawnp(&child, "gnuplot", &actions, nullptr, arguments.data(), environ) == 0;
  posix_spawn_file_actions_destroy(&actions);
  close(ends[1]);
  if (ran.started) {
    std::array<char, 4096> buffer{};
    for (ssize_t n = 0; (n = read(ends[0], buffer.data(), buffer.size())) > 0;)
      ran.said.append(buffer.data(), static_cast<std::size_t>(n));
    ran.started =
        waitpid(child, &ran.status, 0) == child && !(WIFEXITED(ran.status) && WEXITSTATUS(ran.status) == 127);
  }
  close(ends[0]);
  return ran;
}

// cairo writes the time of drawing into a PDF; blanks of the same length keep its table of offsets right, and
// figures of equal records equal.
void blank_date(const fs::path& file) {
  std::stringstream content;
  content << std::ifstream(file, std::ios::binary).rdbuf();
  std::string bytes = content.str();
  const std::string key = "/CreationDate (";
  const auto begin = bytes.find(key);
  const auto end = begin == std::string::npos ? begin : bytes.find(')', begin);
  if (end == std::string::npos) return;
  std::fill(bytes.begin() + static_cast<std::ptrdiff_t>(begin),
            bytes.begin() + static_cast<std::ptrdiff_t>(end) + 1, ' ');
  std::ofstream(file, std::ios::binary) << bytes;
}

}  // namespace

std::string gnuplot_text(const std::string& text) {
  std::string out = "'";
  for (const char c : without_controls(text))
    if (c == '\'')
      out += "’";
    else
      out += c;
  return out + "'";
}

std::size_t character_count(const std::string& text) {
  std::size_t n = 0;
  for (const char c : text) n += !continues_character(c);
  return n;
}

std::string shortened(const std::string& text, std::size_t longest) {
  if (character_count(text) <= longest) return text;
  std::size_t n = 0;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (!continues_character(text[i]) && n++ == longest - 1) return text.substr(0, i) + "…";
  return text;
}

void label_row(Script& script, std::size_t number, const std::string& name, std::size_t longest, double height, int size) {
  script.line(fmt::format("set label {} {} at graph 0, first {} right offset -1,0 font ',{}' noenhanced", number, gnuplot_text(shortened(name, longest)), height, size));
}

std::string color(std::size_t i) {
  // Chosen so that any two stay apart (CIELAB distance 36 or more, 27 for tritanopes) under the usual models
  // of colour-blind sight, whose matrices are from memory, and stand out from white.
  static constexpr std::array palette = {"#14507a", "#ffa100", "#982a00", "#1670e3",
                                         "#77ca6f", "#501a1e", "#74887f", "#cfacf2"};
  return palette[i % palette.size()];
}

std::string ramp_color(std::size_t i, std::size_t n) {
  // Lightness rises all the way, so that the order shows without colour as well.
  static constexpr std::array<std::array<double, 3>, 4> stops = {
      {{28, 34, 96}, {134, 42, 122}, {216, 88, 66}, {228, 172, 58}}};
  const double place = n < 2 ? 0 : 3.0 * static_cast<double>(i) / static_cast<double>(n - 1);
  const auto k = std::min<std::size_t>(2, static_cast<std::size_t>(place));
  const double share = place - static_cast<double>(k);
  const auto mix = [&](std::size_t part) {
    return static_cast<int>(std::lround(stops[k][part] + share * (stops[k + 1][part] - stops[k][part])));
  };
  return fmt::format("#{:02x}{:02x}{:02x}", mix(0), mix(1), mix(2));
}

Script::Script(std::string name, const std::string& title, const std::string& identity, double width,
               double height)
    : name_(std::move(name)) {
  // The scales make letters and lines alike in all three formats, which count sizes differently; SVG knows no
  // ':Bold'.
  text_ = fmt::format(
      "# Change what you like and draw again: gnuplot -d -e \"format='png'\" {0}.gp (or svg, pdf)\n"
      "if (!exists('format')) format = 'png'\n"
      "set encoding utf8\n"
      "if (format eq 'png') set terminal pngcairo noenhanced size {1:.0f},{2:.0f} font 'DejaVu Sans,13' "
      "fontscale 1.1 linewidth 1.5\n"
      "if (format eq 'svg') set terminal svg noenhanced size {3:.0f},{4:.0f} font 'DejaVu Sans,13' "
      "fontscale 1.1 linewidth 1.1\n"
      "if (format eq 'pdf') set terminal pdfcairo noenhanced size {5:.4f}in,{6:.4f}in font 'DejaVu Sans,13' "
      "fontscale 0.53 linewidth 1.6\n"
      "heading = format eq 'svg' ? 'DejaVu Sans,16' : 'DejaVu Sans:Bold,15'\n"
      "set output '{0}.'.format\n"
      "set border 3 lc rgb '#404040' lw 0.8\n"
      "set tics nomirror textcolor rgb '#202020'\n"
      "set grid lt 1 lc rgb '#e0e0e0' lw 0.6\n"
      "set style data lines\n"
      "title = {7}\n"
      "identity = {8}\n"
      "set label 1001 title at screen {9:.5f}, screen {10:.5f} left font heading noenhanced\n"
      "set label 1002 identity at screen {9:.5f}, screen {11:.5f} left font ',11' textcolor rgb '#505050' "
      "noenhanced\n",
      name_, width * 150, height * 150, width * 110, height * 110, width, height, gnuplot_text(title),
      gnuplot_text(identity), 0.25 / width, 1 - 0.25 / height, 1 - 0.48 / height);
}

Script& Script::line(const std::string& text) {
  text_ += text + "\n";
  return *this;
}

Script& Script::block(const std::string& name, const std::vector<std::string>& columns,
                      const std::vector<std::vector<double>>& rows) {
  return lines(name, columns, {rows});
}

Script& Script::lines(const std::string& name, const std::vector<std::string>& columns,
                      const std::vector<std::vector<std::vector<double>>>& list) {
  text_ += fmt::format("${} << EOD\n", name);
  add_columns(text_, columns);
  bool empty = true;
  for (const auto& rows : list) {
    if (rows.empty()) continue;
    if (!empty) text_ += "\n";
    for (const auto& row : rows) add_row(text_, row);
    empty = false;
  }
  // gnuplot refuses to plot a block without rows.
  if (empty) add_row(text_, std::vector<double>(columns.size(), std::nan("")));
  text_ += "EOD\n";
  return *this;
}

std::vector<fs::path> draw(const Script& script, const fs::path& folder,
                           const std::vector<std::string>& formats) {
  std::vector<fs::path> written;
  const fs::path file = folder / (script.name() + ".gp");
  std::ofstream stream(file, std::ios::binary);
  stream << script.text();
  stream.close();
  if (!stream)
    throw InvalidInput(fmt::format(
        "{}: cannot be written\n  needed: a folder with room that you may write to", file.string()));
  for (const std::string& format : formats) {
    const fs::path picture = folder / (script.name() + "." + format);
    std::error_code ignored;
    fs::remove(picture, ignored);
    const Ran ran = run_gnuplot(script.name() + ".gp", format, folder);
    if (!ran.started)
      throw InvalidInput(
          "gnuplot cannot be started; it draws the figures\n"
          "  needed: gnuplot 5.4 or later with its cairo terminals on the PATH\n"
          "  try:    apt-get install gnuplot-nox fonts-dejavu-core");
    if (!WIFEXITED(ran.status) || WEXITSTATUS(ran.status) != 0 || !fs::exists(picture) ||
        fs::file_size(picture) == 0)
      throw InvalidInput(fmt::format("{}: gnuplot {} on drawing it as {}\n{}", file.string(),
                                     WIFEXITED(ran.status) ? "gave up" : "crashed", format, ran.said));
    if (format == "pdf") blank_date(picture);
    written.push_back(picture);
  }
  written.push_back(file);
  return written;
}

}  // namespace sinewright::plot
