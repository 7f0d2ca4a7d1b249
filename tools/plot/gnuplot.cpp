#include "plot/gnuplot.h"

#include <fmt/format.h>
#include <spawn.h>
#include <sys/wait.h>

#include <cmath>
#include <fstream>

#include "quantity/invalid_input.h"

extern char** environ;

namespace sinewright::plot {

std::string gnuplot_text(const std::string& text) {
  std::string out = "'";
  for (const char c : text) {
    if (c == '\'') {
      out += "''";
    } else if (c == '`') {
      out += "''";  // a back-quote would run a command, were it ever to stand outside quotes
    } else if (static_cast<unsigned char>(c) < 32 || c == 127) {
      out += ' ';
    } else {
      out += c;
    }
  }
  return out + "'";
}

const char* color(std::size_t i) {
  static const char* const palette[] = {"#14507a", "#c8641e", "#2c8c74", "#8b3f8f", "#a58a24", "#59646c", "#b33a5b", "#62a0d0"};
  return palette[i % (sizeof palette / sizeof *palette)];
}

Script::Script(std::string name, const std::string& title, double width, double height) : name_(std::move(name)) {
  text_ = fmt::format(
      "# Drawn with gnuplot; change it and run: gnuplot -e \"format='png'\" {0}.gp\n"
      "if (!exists('format')) format = 'png'\n"
      "set encoding utf8\n"
      "if (format eq 'png') set terminal pngcairo noenhanced size {1},{2} font 'DejaVu Sans,13' fontscale 1.0 linewidth 1.5\n"
      "if (format eq 'svg') set terminal svg noenhanced size {3},{4} font 'DejaVu Sans,13' dynamic\n"
      "if (format eq 'pdf') set terminal pdfcairo noenhanced size {5}in,{6}in font 'DejaVu Sans,11'\n"
      "set output '{0}.'.format\n"
      "set border 3 lc rgb '#404040'\n"
      "set tics nomirror textcolor rgb '#202020'\n"
      "set grid lt 1 lc rgb '#dcdcdc' lw 0.6\n"
      "set key at screen 0.8, graph 1 left top Left reverse samplen 2 spacing 1.1 noenhanced\n"
      "set style data lines\n"
      "head = {7}\n",
      name_, static_cast<int>(width * 150), static_cast<int>(height * 150), static_cast<int>(width * 110),
      static_cast<int>(height * 110), width, height, gnuplot_text(title));
}

Script& Script::line(const std::string& text) {
  text_ += text + "\n";
  return *this;
}

Script& Script::block(const std::string& name, const std::vector<std::vector<double>>& rows) {
  text_ += fmt::format("${} << EOD\n", name);
  for (const auto& row : rows) {
    std::string out;
    for (const double value : row) out += std::isfinite(value) ? fmt::format("{:.7g} ", value) : std::string("NaN ");
    text_ += out + "\n";
  }
  text_ += "EOD\n";
  return *this;
}

std::vector<std::filesystem::path> draw(const Script& script, const std::filesystem::path& folder,
                                        const std::vector<std::string>& formats) {
  namespace fs = std::filesystem;
  std::vector<fs::path> written;
  const fs::path file = folder / (script.name() + ".gp");
  std::ofstream(file) << script.text();
  if (!fs::exists(file)) throw InvalidInput(fmt::format("{}: cannot be written", file.string()));
  for (const std::string& format : formats) {
    std::string program = "gnuplot", option = "-e", setting = fmt::format("format='{}'", format), source = script.name() + ".gp";
    char* arguments[] = {program.data(), option.data(), setting.data(), source.data(), nullptr};
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addchdir_np(&actions, folder.c_str());
    pid_t child = 0;
    const int failed = posix_spawnp(&child, "gnuplot", &actions, nullptr, arguments, environ);
    posix_spawn_file_actions_destroy(&actions);
    int status = 0;
    if (failed != 0 || waitpid(child, &status, 0) < 0 || !WIFEXITED(status) || WEXITSTATUS(status) == 127)
      throw InvalidInput("gnuplot cannot be started\n  needed: the Debian packages gnuplot-nox and fonts-dejavu-core");
    if (WEXITSTATUS(status) != 0)
      throw InvalidInput(fmt::format("gnuplot could not draw {} as {}", file.string(), format));
    written.push_back(folder / (script.name() + "." + format));
  }
  written.push_back(file);
  return written;
}

}  // namespace sinewright::plot
