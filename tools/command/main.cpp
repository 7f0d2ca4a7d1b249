// The command line: reads the arguments, calls one command, turns what went wrong into a message and an exit code.

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <csignal>
#include <cstdio>

#include "commands.h"
#include "quantity/invalid_input.h"
#include "quantity/nearest.h"
#include "record/writer.h"

namespace {

using sinewright::tool::CommonOptions;

void add_common(CLI::App* command, CommonOptions& options) {
  command->add_flag("--json", options.json, "print a machine-readable summary (SI units) on standard output");
  command->add_option("--set", options.set, "change a value of the input: key.path=value, for instance "
                                            "'model.drives.flexor.current_limit=0.3 A'; may be given again")
      ->allow_extra_args(false);  // else it takes the file that follows, too
  command->add_flag("--quiet", options.quiet, "print nothing but errors");
  command->add_option("--threads", options.threads, "number of threads, 0: all; a single run uses one")
      ->check(CLI::NonNegativeNumber);
}

// What to say when no command was understood.
std::string which_command(const CLI::App& app, const char* given) {
  std::vector<std::string> names;
  for (const CLI::App* command : app.get_subcommands({})) names.push_back(command->get_name());
  const std::string needed = fmt::format("needed: a command, one of: {}\n  hint:   ", fmt::join(names, ", "));
  const std::string help = "'sinewright --help' tells more";
  if (given == nullptr) return needed + help;
  const std::string close = sinewright::nearest(given, names);
  const char* kind = given[0] == '-' ? "option that stands before a command" : "command";
  return fmt::format("'{}' is no {}\n  {}{}", given, kind, needed, close.empty() ? help : "the nearest is '" + close + "'");
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app{"sinewright: physics of tendon-driven fingers.\n"
               "The numbers are design predictions, not certification. Moving fingers pinch, stretched cords store\n"
               "energy, stalled motors get hot."};
  app.set_version_flag("--version", "sinewright " SINEWRIGHT_VERSION);
  app.require_subcommand(1);
  app.footer("Exit codes: 0 done; 1 a stated requirement failed; 2 bad input; 3 the simulation could not go on.\n"
             "'sinewright COMMAND --help' tells more about a command.");

  CommonOptions options;
  std::string input;
  int code = sinewright::tool::done;

  CLI::App* run = app.add_subcommand("run", "simulate a scenario, write its record and print a summary");
  run->add_option("SCENARIO", input, "scenario file (YAML), or a record (.h5) to run again")->required();
  run->add_option("--out", options.out, "the record to write (default: out/<scenario file name>.h5)");
  sinewright::tool::RunOptions run_options;
  run->add_option("--for", run_options.for_margin, "also print the size that each weaker part needs: --for margin=2")
      ->expected(1);
  add_common(run, options);
  run->footer("Example: sinewright run scenarios/grasp-medium.yaml --set 'model.supplies.battery.voltage=5 V'");
  run->callback([&] { code = sinewright::tool::run_command(input, run_options, options); });

  sinewright::tool::InspectOptions inspect_options;
  CLI::App* inspect = app.add_subcommand("inspect", "print what follows from a model's geometry and data alone");
  inspect->add_option("MODEL", input, "model file (YAML)")->required();
  add_common(inspect, options);
  inspect->add_option("--steps", inspect_options.steps, "postures over each joint's range (2 to 181)")->check(CLI::Range(2, 181));
  inspect->add_option("--posture", inspect_options.posture, "posture of the static grip: JOINT=ANGLE, may be given again (default 30 deg)")
      ->allow_extra_args(false);
  inspect->add_flag("--fits", inspect_options.fits, "print fits of the pins and play at the fingertip, instead of the rest");
  inspect->add_flag("--parts", inspect_options.parts, "print the bill of materials and what it costs, instead of the rest")->excludes("--fits");
  CLI::Option* packing = inspect->add_flag("--packing", inspect_options.packing, "print what collides or is narrow, and the outer size, instead of the rest")->excludes("--fits")->excludes("--parts");
  inspect->add_option("--plot", inspect_options.plot, "with --packing: also draw it from three sides into this folder")->needs(packing);
  inspect->footer("Example: sinewright inspect models/demo-finger.yaml --posture MCP=20deg --posture PIP=45deg\n"
                  "         sinewright inspect models/demo-finger.yaml --fits\n"
                  "         sinewright inspect models/demo-finger.yaml --parts\n"
                  "         sinewright inspect models/demo-finger.yaml --packing --plot out/packing");
  inspect->callback([&] { code = sinewright::tool::inspect_command(input, inspect_options, options); });

  CLI::App* limit = app.add_subcommand("limit", "find the load or value at which something gives way");
  limit->add_option("FILE", input, "limit file (YAML)")->required();
  limit->add_option("--out", options.out, "the record of all probing runs (default: out/<file name>.limit.h5)");
  add_common(limit, options);
  limit->footer("--set reaches the limit file; 'scenario.…' its scenario, 'scenario.model.…' the model.\n"
                "Exit code 1: no limit was found within the range.\n"
                "Example: sinewright limit scenarios/limits/back-drive.yaml --set 'scenario.model.cords.flexor.channel.friction=0.2'");
  limit->callback([&] { code = sinewright::tool::limit_command(input, options); });

  sinewright::tool::StudyCommandOptions study_options;
  CLI::App* study = app.add_subcommand("study", "run many designs: grids, samples, tolerances, sensitivities, the best design");
  study->add_option("FILE", input, "study file (YAML)")->required();
  study->add_option("--out", options.out, "the table of all designs (default: out/<file name>.study.h5); a CSV is written beside it");
  study->add_flag("--resume", study_options.resume, "go on with what a stopped or killed study of the same files has finished");
  add_common(study, options);
  study->footer("--set reaches the study file; 'model.…' the model of all runs, '<run>.…' one run.\n"
                "Ctrl-C stops after the designs under way; what is finished is kept for --resume.\n"
                "Exit code 1: no design meets all requirements (optimise).\n"
                "Example: sinewright study scenarios/studies/choose-drive.yaml --threads 2");
  study->callback([&] { code = sinewright::tool::study_command(input, study_options, options); });

  std::vector<std::string> plotted;
  sinewright::tool::PlotOptions plot_options;
  CLI::App* plot = app.add_subcommand("plot", "draw the figures of a record for a design review");
  plot->add_option("RECORD", plotted, "record (.h5) that 'sinewright run', 'limit' or 'study' wrote, whole or partial; several runs are laid over each other")->required();
  plot->add_option("--out", options.out, "folder for the figures (default: the record's path without .h5)");
  plot->add_option("--format", plot_options.formats, "png, svg, pdf; separated by commas (default: all three)")
      ->delimiter(',')
      ->allow_extra_args(false)
      ->check(CLI::IsMember({"png", "svg", "pdf"}));
  plot->add_option("--from", plot_options.from, "show the record from this time on, for instance '0.1 s'");
  plot->add_option("--to", plot_options.to, "show the record up to this time");
  add_common(plot, options);
  plot->footer("Each figure's gnuplot script, data included, stands beside it.\nExample: sinewright plot out/grasp-medium.h5 --format png\n         sinewright plot out/forced-open.h5 out/forced-open-strong.h5 --out out/compared\n"
               "         sinewright plot out/gear-choice.study.h5");
  plot->callback([&] { code = sinewright::tool::plot_command(plotted, plot_options, options); });

  sinewright::tool::ExportOptions export_options;
  CLI::App* exporting = app.add_subcommand("export", "write a record's numbers as a table for a spreadsheet (CSV)");
  exporting->add_option("RECORD", input, "record (.h5) that 'sinewright run' wrote, whole or partial")->required();
  exporting->add_option("--out", options.out, "the table to write (default: the record's path with .csv, or .events.csv and so on)");
  exporting->add_option("--data", export_options.data, "only these time series: a path such as /cords/flexor/tension, a group such as "
                                                       "/joints, or a pattern such as '*/tension'; may be given again")
      ->allow_extra_args(false);
  exporting->add_option("--table", export_options.table, "series (default), events, summary, requirements or margins")
      ->check(CLI::IsMember({"series", "events", "summary", "requirements", "margins"}));
  exporting->add_flag("--display", export_options.display, "deg, mm, N·mm, MPa, mJ, °C instead of SI units and radians");
  exporting->add_option("--delimiter", export_options.delimiter, "comma (default), semicolon or tab")
      ->check(CLI::IsMember({"comma", "semicolon", "tab"}));
  add_common(exporting, options);
  exporting->footer("Example: sinewright export out/grasp-medium.h5 --data '*/tension' --display --out tensions.csv");
  exporting->callback([&] { code = sinewright::tool::export_command(input, export_options, options); });

  std::vector<std::string> reported;
  sinewright::tool::ReportOptions report_options;
  CLI::App* report = app.add_subcommand("report", "make a design review of one or more records: one page that shows the finger moving");
  report->add_option("RECORD", reported, "records (.h5) that 'sinewright run' wrote, and any that 'limit' or 'study' wrote; a study also makes a page of its own")->required();
  report->add_option("-o,--out", options.out, "the page to write (default: the first record's path with .html)");
  report->add_option("--title", report_options.title, "what the review is called (default: the scenarios' names)");
  report->add_option("--pdf", report_options.pdf, "also print the page to this file; needs a Chromium");
  report->add_option("--data", report_options.data, "also write the page's data to this file, as JSON");
  add_common(report, options);
  report->footer("The page needs no network and opens in any current browser.\n"
                 "Example: sinewright report out/forced-open.h5 out/forced-open-strong.h5 out/back-drive.limit.h5 -o review.html\n"
                 "         sinewright report out/gear-choice.study.h5");
  report->callback([&] { code = sinewright::tool::report_command(reported, report_options, options); });

  // A file that reaches the limit of its size is then a failed write with a message, not a silent end.
  std::signal(SIGXFSZ, SIG_IGN);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() == static_cast<int>(CLI::ExitCodes::RequiredError) && app.get_subcommands().empty()) {
      fmt::print(stderr, "{}\n", which_command(app, argc > 1 ? argv[1] : nullptr));
      return sinewright::tool::bad_input;
    }
    const int parsed = app.exit(error);
    return parsed == 0 ? sinewright::tool::done : sinewright::tool::bad_input;
  } catch (const sinewright::InvalidInput& error) {
    fmt::print(stderr, "{}\n", error.what());
    return sinewright::tool::bad_input;
  } catch (const sinewright::record::RecordError& error) {
    fmt::print(stderr, "{}\n", error.what());
    return sinewright::tool::bad_input;
  } catch (const std::bad_alloc&) {
    fmt::print(stderr, "there is not enough memory for this\n");
    return sinewright::tool::could_not_go_on;
  } catch (const std::exception& error) {
    fmt::print(stderr, "sinewright stopped on something it did not expect: {}\n", error.what());
    return sinewright::tool::could_not_go_on;
  }
  return code;
}
