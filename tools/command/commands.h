#pragma once

#include <string>
#include <vector>

namespace sinewright::tool {

/// Exit codes of every command.
enum ExitCode : int {
  done = 0,
  requirement_failed = 1,
  bad_input = 2,
  could_not_go_on = 3,
};

/// Options that every command understands.
struct CommonOptions {
  std::string out;
  bool json = false;
  bool quiet = false;
  int threads = 0;
  std::vector<std::string> set;
};

struct InspectOptions {
  bool fits = false;                 ///< print fits and play instead of the rest
  bool parts = false;                ///< print the bill of materials instead of the rest
  bool packing = false;              ///< print what collides, what is narrow and the outer size instead of the rest
  std::string plot;                  ///< folder for the drawing of the packing; empty: none
  int steps = 7;                     ///< postures over each range
  std::vector<std::string> posture;  ///< JOINT=ANGLE for the static grip
};

struct PlotOptions {
  std::vector<std::string> formats = {"png", "svg", "pdf"};
  std::string from, to;  ///< times as written, such as "0.1 s"; empty: the whole record
};

struct RunOptions {
  std::vector<std::string> for_margin;  ///< "margin=2": also print the sizes that reach it
};

struct ExportOptions {
  std::vector<std::string> data;       ///< channels; empty: all
  std::string table = "series";        ///< series, events, summary, requirements or margins
  std::string delimiter = "comma";     ///< comma, semicolon or tab
  bool display = false;                ///< deg, mm, °C … instead of SI
};

struct ReportOptions {
  std::string title;  ///< empty: the scenarios' names
  std::string pdf;    ///< also printed here; empty: not
  std::string data;   ///< the page's data as JSON; empty: not
};

struct StudyCommandOptions {
  bool resume = false;  ///< go on with what a stopped study of the same files has finished
};

int run_command(const std::string& scenario, const RunOptions& run, const CommonOptions& options);
int inspect_command(const std::string& model, const InspectOptions& inspect, const CommonOptions& options);
int limit_command(const std::string& file, const CommonOptions& options);
int study_command(const std::string& file, const StudyCommandOptions& wanted, const CommonOptions& options);
int plot_command(const std::vector<std::string>& records, const PlotOptions& shown, const CommonOptions& options);
int export_command(const std::string& record, const ExportOptions& wanted, const CommonOptions& options);
int report_command(const std::vector<std::string>& records, const ReportOptions& wanted, const CommonOptions& options);

}  // namespace sinewright::tool
