#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "commands.h"
#include "export/csv.h"
#include "out_folder.h"
#include "quantity/invalid_input.h"
#include "report/page_data.h"

namespace sinewright::tool {

namespace {

namespace fs = std::filesystem;

std::string browser() {
  const char* path = std::getenv("PATH");
  for (const char* name : {"chromium", "chromium-headless-shell", "chromium-browser", "google-chrome", "chrome"}) {
    std::string rest = path ? path : "";
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find(':'), rest.size());
      const fs::path candidate = fs::path(rest.substr(0, end)) / name;
      if (::access(candidate.c_str(), X_OK) == 0) return candidate.string();
      rest.erase(0, std::min(end + 1, rest.size()));
    }
  }
  return "";
}

// Lets the browser print the page; started without a shell, so that no name is taken for a command.
void print_pdf(const fs::path& page, const fs::path& pdf) {
  const std::string program = browser();
  if (program.empty())
    throw InvalidInput(fmt::format("--pdf needs a Chromium on the PATH, and there is none\n  needed: the Debian package chromium, or open {} in any browser and print it to a file",
                                   page.string()));
  const fs::path profile = fs::temp_directory_path() / fmt::format("sinewright-print-{}", ::getpid());
  const fs::path whole = pdf.string() + ".part";
  std::vector<std::string> words = {program, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                                    "--disable-component-update", "--disable-sync", "--user-data-dir=" + profile.string(), "--no-pdf-header-footer",
                                    "--virtual-time-budget=8000", "--print-to-pdf=" + fs::absolute(whole).string(), "file://" + fs::absolute(page).string()};
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  const pid_t child = ::fork();
  if (child == 0) {
    ::alarm(120);  // a browser that hangs is ended
    if (std::freopen("/dev/null", "w", stdout) == nullptr || std::freopen("/dev/null", "w", stderr) == nullptr) ::_exit(127);
    ::execv(arguments[0], arguments.data());
    ::_exit(127);
  }
  int status = 1;
  if (child > 0) ::waitpid(child, &status, 0);
  std::error_code none;
  fs::remove_all(profile, none);
  if (child < 0 || status != 0 || !fs::exists(whole, none)) {
    fs::remove(whole, none);
    throw std::runtime_error(fmt::format("{} could not print the page; {} is whole and can be printed by hand", program, page.string()));
  }
  fs::rename(whole, pdf);
}

}  // namespace

int report_command(const std::vector<std::string>& files, const ReportOptions& wanted, const CommonOptions& options) {
  if (!options.set.empty()) throw InvalidInput("report shows what records hold; --set belongs to 'sinewright run'");
  std::vector<fs::path> records(files.begin(), files.end());
  fs::path out = options.out;
  if (out.empty()) out = fs::path(records.front()).replace_extension(".html");
  const auto refuse = [&](const fs::path& file, const char* option, const char* example) {
    if (!file.empty()) refuse_to_replace(file, option, records, "a record that the report is made from", example);
  };
  refuse(out, "--out", "review.html");
  refuse(wanted.pdf, "--pdf", "review.pdf");
  refuse(wanted.data, "--data", "review.json");
  const report::PageData data = report::page_data(records, {wanted.title});
  make_folder_of(out);
  exporting::write_whole(out, report::page(data.json, data.title));
  if (!wanted.data.empty()) {
    make_folder_of(wanted.data);
    exporting::write_whole(wanted.data, data.json);
  }
  if (!wanted.pdf.empty()) {
    make_folder_of(wanted.pdf);
    print_pdf(out, wanted.pdf);
  }
  if (options.json)
    fmt::print("{}\n", nlohmann::ordered_json{{"page", out.string()}, {"pdf", wanted.pdf}}.dump(2));
  else if (!options.quiet)
    fmt::print("{}{}\n", out.string(), wanted.pdf.empty() ? "" : "\n" + wanted.pdf);
  return done;
}

}  // namespace sinewright::tool
