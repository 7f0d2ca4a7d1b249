// The figures of short runs: what is written, what it says, and that no text of the user's can do more than
// be shown.

#include "plot/figures.h"

#include <chrono>
#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <thread>

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <stdlib.h>
#include <unistd.h>

#include "quantity/invalid_input.h"
#include "reading/reading.h"
#include "record/writer.h"
#include "simulation/observe.h"
#include "simulation/run.h"

namespace {

using namespace sinewright;
namespace fs = std::filesystem;
using Catch::Matchers::Contains;

// A folder of its own for each test, gone afterwards.
struct Folder {
  fs::path path;
  Folder() {
    std::string name = (fs::temp_directory_path() / "sinewright-plot-XXXXXX").string();
    REQUIRE(mkdtemp(name.data()) != nullptr);
    path = name;
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() { fs::remove_all(path); }
};

std::string content_of(const fs::path& file) {
  std::stringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

// The demo finger closes on a cylinder; by 0.4 s it holds it.
const std::vector<std::string> short_run = {"duration=0.4 s", "timeline.1.at=0.38 s", "require=[]"};

// Runs the scenario and records it under `file`. @param whole  false: as if the run had been killed before
// its end.
void record_run(const fs::path& file, std::vector<std::string> overrides = short_run, bool whole = true) {
  record::Inputs inputs;
  inputs.engine_version = "0.0-test";
  inputs.scenario_path = SINEWRIGHT_SOURCE_DIR "/scenarios/grasp-medium.yaml";
  inputs.overrides = std::move(overrides);
  reading::Source source;
  const simulation::System system(reading::read_scenario(source, inputs.scenario_path, inputs.overrides));
  for (const auto& read : source.handed_out()) inputs.files.emplace_back(read.path, read.text);
  record::Writer writer(file, simulation::channels(system), inputs);
  simulation::RunListener listener;
  listener.row = [&](double time, std::span<const double> row) { writer.append(time, row); };
  listener.event = [&](const simulation::Event& event) { writer.event(event); };
  const simulation::RunResult result = simulation::run(system, listener);
  if (whole) writer.finish(result.summary, result.verdicts, result.outcome);
}

// The rows of the block $NAME in a script; lines between polylines are left out.
std::vector<std::vector<double>> block_of(const std::string& script, const std::string& name) {
  const auto begin = script.find("$" + name + " << EOD\n");
  REQUIRE(begin != std::string::npos);
  std::istringstream lines(script.substr(begin));
  std::string line;
  std::getline(lines, line);
  std::vector<std::vector<double>> rows;
  while (std::getline(lines, line) && line != "EOD") {
    if (line.empty() || line[0] == '#') continue;
    std::istringstream words(line);
    rows.emplace_back();
    for (std::string word; words >> word;) rows.back().push_back(std::stod(word));
  }
  return rows;
}

// One recorded run serves the tests that only read it.
const fs::path& shared_record() {
  static const Folder folder;
  static const fs::path file = [] {
    record_run(folder.path / "grasp.h5");
    return folder.path / "grasp.h5";
  }();
  return file;
}

struct Read {
  record::Record record;
  model::Scenario scenario;
  explicit Read(const fs::path& file) : record(record::read_record(file)) {
    reading::Source source(record.inputs.files);
    scenario = reading::read_scenario(source, record.inputs.scenario_path, record.inputs.overrides);
  }
  [[nodiscard]] plot::Subject subject() const {
    return {record, scenario, "test", record.time.front(), record.time.back()};
  }
};

}  // namespace

TEST_CASE("figures: a short run gives every figure in every format, with its script, none of them empty") {
  const Folder folder;
  const auto files = plot::draw_all(shared_record(), folder.path);
  const std::map<std::string, std::string> beginnings = {
      {"png", "\x89PNG"}, {"svg", "<?xml"}, {"pdf", "%PDF-"}, {"gp", "# Change what you like"}};
  for (const char* name : {"posture", "angles", "tensions", "forces", "drive", "sensing", "losses", "energy"})
    for (const auto& [extension, beginning] : beginnings) {
      const fs::path file = folder.path / fmt::format("{}.{}", name, extension);
      INFO(file.string());
      CHECK(std::count(files.begin(), files.end(), file) == 1);
      const std::string content = content_of(file);
      CHECK(content.size() > 1000);
      CHECK(content.starts_with(beginning));
    }
  CHECK(files.size() == 32);
  CHECK(static_cast<std::size_t>(std::distance(fs::directory_iterator(folder.path), {})) == files.size());
}

TEST_CASE("figures: axes carry their units, and every figure says whose run it is") {
  const Folder folder;
  plot::draw_all(shared_record(), folder.path, {.formats = {"svg"}});
  const std::map<std::string, std::vector<std::string>> needed = {
      {"posture",
       {"x [mm]", "y [mm]", "cord tension [N]", "mm per N", "force of an object on phalanx or palm"}},
      {"angles", {"time [s]", "joint angle [deg]", "joint rate [deg/s]", "MCP stop at 85°"}},
      {"tensions", {"time [s]", "flexor tension [N]", "return tension [N]"}},
      {"forces", {"time [s]", "normal force [N]", "friction force [N]", "split force [N]"}},
      {"drive",
       {"time [s]", "current [A]", "voltage [V]", "torque [N·mm]", "shaft angle [deg]", "temperature [°C]"}},
      {"losses", {"share of the shaft's work of", "mJ [%]", "gearhead", "flexor, knuckle bend 1"}},
      {"energy", {"time [s]", "brought in [mJ]", "stored [mJ]", "imbalance [mJ]"}}};
  for (const auto& [name, texts] : needed) {
    INFO(name);
    const std::string script = content_of(folder.path / (name + ".gp"));
    for (const std::string& text : texts) {
      std::string quoted = plot::gnuplot_text(text);
      CHECK_THAT(script, Contains(quoted.substr(1, quoted.size() - 2)));
    }
    CHECK_THAT(content_of(folder.path / (name + ".svg")),
               Contains("grasp a medium cylinder · demo finger · sinewright 0.0-test"));
  }
}

TEST_CASE("figures: a hostile name is shown as text and does nothing") {
  const Folder folder;
  const fs::path marker = folder.path / "executed";
  const std::vector<std::string> names = {
      fmt::format("a'b\"c $(touch {0}) `touch {0}` 100%s @title _x^2 {{/Bold y}} \\", marker.string()),
      fmt::format("'; system('touch {0}'); print '", marker.string()),
      fmt::format("x\nsystem 'touch {0}'\n!touch {0}\nEOD\n!touch {0}", marker.string()),
      "'",
      "''`",
      "\\'",
      "𝛼 finger 🖐 名"};
  for (const std::string& name : names) {
    INFO(name);
    std::string quoted;  // as a YAML double-quoted string
    for (const char c : name)
      quoted += c == '\n' ? "\\n" : c == '"' || c == '\\' ? std::string("\\") + c : std::string(1, c);
    auto overrides = short_run;
    overrides[0] = "duration=0.06 s", overrides[1] = "timeline.1.at=0.06 s";
    overrides.push_back("name=\"" + quoted + "\"");
    const fs::path record = folder.path / "run.h5";
    record_run(record, overrides);
    REQUIRE(Read(record).scenario.name == name);
    plot::draw_all(record, folder.path / "figures", {.formats = {"svg"}});
    CHECK_FALSE(fs::exists(marker));
    std::string svg = content_of(folder.path / "figures" / "angles.svg"), shown = plot::shortened(name, 60);
    std::replace(shown.begin(), shown.end(), '\n', ' ');
    for (const auto& [mark, character] : std::map<std::string, std::string>{
             {"&#39;", "'"}, {"&apos;", "'"}, {"&quot;", "\""}, {"&lt;", "<"}, {"&gt;", ">"}, {"&amp;", "&"}})
      for (std::size_t at; (at = svg.find(mark)) != std::string::npos;)
        svg.replace(at, mark.size(), character);
    for (std::size_t at; (at = shown.find('\'')) != std::string::npos;) shown.replace(at, 1, "’");
    CHECK_THAT(svg, Contains(shown + " · demo finger"));
  }
}

TEST_CASE("figures: names of contacts, cords and joints are shown as text too") {
  Read read(shared_record());
  const std::string hostile = "100%s 'x' `false` @title";
  for (auto& body : read.scenario.model.bodies)
    if (body.hinge && body.hinge->name == "MCP") body.hinge->name = hostile;
  for (auto& channel : read.record.channels)
    if (channel.path.starts_with("/joints/MCP/")) channel.path.replace(8, 3, hostile);
  for (auto& value : read.record.summary)
    if (value.key == "loss_share.MCP") value.key = "loss_share." + hostile, value.value = 0.3;
  for (auto& event : read.record.events) event.subject = event.detail = hostile;
  const Folder folder;
  for (const auto& script : {plot::angle_figure(read.subject()), plot::loss_figure(read.subject())}) {
    INFO(script.name());
    plot::draw(script, folder.path, {"svg"});
    CHECK_THAT(content_of(folder.path / (script.name() + ".svg")), Contains("100%s"));
  }
}

TEST_CASE("figures: the same record gives the same bytes, whenever it is drawn") {
  const Folder folder;
  const auto first = plot::draw_all(shared_record(), folder.path / "first");
  std::this_thread::sleep_for(std::chrono::milliseconds(1100));  // a time stamp would count seconds
  for (const fs::path& file : plot::draw_all(shared_record(), folder.path / "second")) {
    INFO(file.string());
    CHECK(content_of(file) == content_of(folder.path / "first" / file.filename()));
  }
  CHECK(first.size() == 32);
}

TEST_CASE("figures: the record of a killed run is drawn as far as it goes, and says so") {
  const Folder folder;
  record_run(folder.path / "run.h5", short_run, false);
  const auto files =
      plot::draw_all(folder.path / "run.partial.h5", folder.path / "figures", {.formats = {"svg"}});
  CHECK(files.size() == 14);  // no summary, so no losses
  for (const fs::path& file : files) {
    INFO(file.string());
    CHECK_THAT(content_of(file), Contains("PARTIAL RECORD"));
  }
}

TEST_CASE("figures: a stretch of time limits what is drawn, one without samples is refused") {
  const Folder folder;
  plot::draw_all(shared_record(), folder.path, {.formats = {"svg"}, .from = 0.1, .to = 0.2});
  const auto rows = block_of(content_of(folder.path / "angles.gp"), "panel1");
  REQUIRE(rows.size() > 50);
  // One more sample on either side, so that curves reach the frame.
  CHECK(rows[0][0] < 0.1);
  CHECK(rows[1][0] >= 0.1);
  CHECK(rows[rows.size() - 2][0] <= 0.2);
  CHECK(rows.back()[0] > 0.2);
  CHECK_THROWS_WITH(plot::draw_all(shared_record(), folder.path, {.from = 0.5}),
                    Contains("no two samples") && Contains("0.4 s"));
  CHECK_THROWS_AS(plot::draw_all(shared_record(), folder.path, {.from = 0.2, .to = 0.1}), InvalidInput);
  CHECK_THROWS_AS(plot::draw_all(shared_record(), folder.path, {.from = std::nan("")}), InvalidInput);
}

TEST_CASE("posture: phalanges, pins and forces are drawn to scale where the record has them") {
  const Read read(shared_record());
  const std::string script = plot::posture_figure(read.subject()).text();
  // At the start the finger lies along x. Its proximal phalanx is a capsule of radius 8 mm from x = 4 mm to
  // 41 mm.
  double low_x = 1e9, high_x = -1e9, low_y = 1e9, high_y = -1e9;
  const auto solids = block_of(script, "solids1_1");
  REQUIRE(solids.size() > 20);
  for (std::size_t i = 0; i < solids.size() && (i < 2 || solids[i] != solids[0]); ++i) {
    low_x = std::min(low_x, solids[i][0]), high_x = std::max(high_x, solids[i][0]);
    low_y = std::min(low_y, solids[i][1]), high_y = std::max(high_y, solids[i][1]);
  }
  CHECK(low_x == Approx(-4).margin(0.1));
  CHECK(high_x == Approx(49).margin(0.1));
  CHECK(low_y == Approx(-8).margin(0.1));
  CHECK(high_y == Approx(8).margin(0.1));

  std::size_t last = 1;
  while (script.find(fmt::format("$pins{} <<", last + 1)) != std::string::npos) ++last;
  CHECK(last >= 4);
  CHECK(last <= 6);
  const auto pins = block_of(script, fmt::format("pins{}", last));
  REQUIRE(pins.size() == 3);
  const auto at = [&](const std::string& path, int column) {
    return read.record.column(path, column).back();
  };
  std::size_t k = 0;
  for (const char* body : {"proximal", "middle", "distal"}) {
    CHECK(pins[k][0] == Approx(1e3 * at(fmt::format("/bodies/{}/position", body), 0)).margin(1e-3));
    CHECK(pins[k][1] == Approx(1e3 * at(fmt::format("/bodies/{}/position", body), 1)).margin(1e-3));
    ++k;
  }

  const auto words = script.find(" mm per N'");
  REQUIRE(words != std::string::npos);
  const double scale = std::stod(script.substr(script.rfind(' ', words - 1)));
  const auto arrows = block_of(script, fmt::format("arrows{}", last));
  REQUIRE(arrows.size() == 3);
  k = 0;
  for (const char* contact : {"proximal", "middle", "distal"}) {
    const double fx = at(fmt::format("/contacts/{}/force", contact), 0),
                 fy = at(fmt::format("/contacts/{}/force", contact), 1);
    CHECK(arrows[k][2] == Approx(scale * fx).epsilon(1e-5));
    CHECK(arrows[k][3] == Approx(scale * fy).epsilon(1e-5));
    CHECK(arrows[k][6] == Approx(std::hypot(fx, fy)).epsilon(1e-5));
    ++k;
  }
}

TEST_CASE(
    "posture: each stretch of a cord has the tension of its span, round a guide the way keeps its radius") {
  const Read read(shared_record());
  const std::string script = plot::posture_figure(read.subject()).text();
  std::size_t last = 1;
  while (script.find(fmt::format("$cords{} <<", last + 1)) != std::string::npos) ++last;
  const auto rows = block_of(script, fmt::format("cords{}", last));
  // The flexor comes first: ten spans between eleven points, two rows each.
  REQUIRE(rows.size() > 20);
  for (int span = 0; span < 10; ++span) {
    INFO(span);
    CHECK(rows[static_cast<std::size_t>(2 * span)][2] ==
          Approx(read.record.column("/cords/flexor/tension", span).back()).epsilon(1e-5));
  }
  // The return cord follows: a stretch, then the arc round the guide of 5 mm at the knuckle, whose axis is
  // the world's z.
  for (std::size_t i = 22; i < 22 + 17; ++i) {
    INFO(i);
    CHECK(std::hypot(rows[i][0], rows[i][1]) == Approx(5).epsilon(1e-4));
    const double before = read.record.column("/cords/return/tension", 0).back(),
                 after = read.record.column("/cords/return/tension", 1).back();
    CHECK(rows[i][2] == Approx(0.5 * (before + after)).epsilon(1e-5));
  }
}

TEST_CASE("posture: bends lumped to one for each body still give every stretch the tension of its span") {
  const Folder folder;
  auto overrides = short_run;
  overrides.push_back("model.cords.flexor.lump_bends=true");
  record_run(folder.path / "run.h5", overrides);
  const Read read(folder.path / "run.h5");
  const std::string script = plot::posture_figure(read.subject()).text();
  std::size_t last = 1;
  while (script.find(fmt::format("$cords{} <<", last + 1)) != std::string::npos) ++last;
  const auto rows = block_of(script, fmt::format("cords{}", last));
  // Two bends in the knuckle, three in the proximal, three in the middle, one in the distal phalanx: five
  // spans. Behind its first bend a body's stretches belong to the span that leaves it.
  const std::vector<int> spans = {0, 1, 1, 2, 2, 2, 3, 3, 3, 4};
  for (std::size_t i = 0; i < spans.size(); ++i) {
    INFO(i);
    CHECK(rows[2 * i][2] ==
          Approx(read.record.column("/cords/flexor/tension", spans[i]).back()).epsilon(1e-5));
  }
}

TEST_CASE("forces: the sum is that of the phalanges") {
  const Read read(shared_record());
  const auto rows = block_of(plot::force_figure(read.subject()).text(), "panel1");
  REQUIRE(rows.back().size() == 5);
  CHECK(rows.back()[4] > 5);
  for (const auto& row : rows) CHECK(row[4] == Approx(row[1] + row[2] + row[3]).margin(1e-5));
}

TEST_CASE("drive: temperatures are shown in degrees Celsius, torques in N·mm") {
  const Read read(shared_record());
  const std::string script = plot::drive_figure(read.subject()).text();
  const auto heat = block_of(script, "panel5"), torque = block_of(script, "panel3");
  CHECK(heat.back()[1] ==
        Approx(read.record.column("/drives/flexor/winding_temperature").back() - 273.15).margin(1e-4));
  CHECK(torque.back()[2] ==
        Approx(1e3 * read.record.column("/drives/flexor/load_torque").back()).epsilon(1e-5));
}

TEST_CASE("losses: the shares shown and what is stored make up the whole work of the shaft") {
  const Read read(shared_record());
  const std::string script = plot::loss_figure(read.subject()).text();
  double sum = 0;
  for (int kind = 1; kind <= 7; ++kind)
    if (script.find(fmt::format("$kind{} <<", kind)) != std::string::npos)
      for (const auto& row : block_of(script, fmt::format("kind{}", kind))) sum += row[0];
  CHECK(sum == Approx(100).margin(1e-3));
}

TEST_CASE("losses: a run in which the motor does no work says so") {
  Read read(shared_record());
  for (auto& value : read.record.summary)
    if (value.key.starts_with("loss_share.") || value.key == "shaft_work") value.value = std::nan("");
  const Folder folder;
  plot::draw(plot::loss_figure(read.subject()), folder.path, {"svg"});
  CHECK_THAT(content_of(folder.path / "losses.svg"), Contains("the motor did no work"));
}

TEST_CASE("margins: one bar a margin with the smallest on top, those below 1 apart, and what is not checked counted") {
  Read read(shared_record());
  auto& margins = read.record.margins;
  margins = {};
  const double never = std::nan("");
  margins.values = {{"a", "knot 'seat' 100%s", 24e6, 36e6, "Pa", 0.67, 2, "", 1, "", {}},
                    {"b", "gearhead", 0.25, 0.2, "N m", 1.25, 2, "", never, "", {}},
                    {"c", "washer", 40e6, 4, "Pa", 1e7, 2, "", never, "", {}},
                    {"d", "touch", 40, 0, "K", std::numeric_limits<double>::infinity(), 0, "", never, "", {}}};
  margins.not_checked = {{"e", "pin", {"a.key"}}};
  const plot::Script script = plot::margin_figure(read.subject());
  const auto lost = block_of(script.text(), "lost"), held = block_of(script.text(), "held");
  REQUIRE(lost.size() == 1);
  REQUIRE(held.size() == 2);
  CHECK(lost[0] == std::vector<double>{0.67, 2, 0.67});
  CHECK(held[0] == std::vector<double>{1.25, 1, 1.25});
  CHECK(held[1][2] == 1e7);  // its bar ends at the frame, its number does not
  const Folder folder;
  plot::draw(script, folder.path, {"svg"});
  CHECK_THAT(content_of(folder.path / "margins.svg"),
             Contains("1 not checked") && Contains("1 without any load") && Contains("100%s") && Contains("gearhead"));
}

TEST_CASE("long records: the picture has fewer points, but keeps a peak of one sample") {
  Read read(shared_record());
  constexpr std::size_t samples = 200000, peak = 123457;
  read.record.time.clear();
  for (std::size_t i = 0; i < samples; ++i) read.record.time.push_back(1e-3 * static_cast<double>(i));
  for (std::size_t c = 0; c < read.record.channels.size(); ++c)
    if (read.record.channels[c].path.starts_with("/joints/")) {
      read.record.data[c].assign(samples, 0.0);
      if (read.record.channels[c].path == "/joints/PIP/rate") read.record.data[c][peak] = 77;
    }
  const std::string script = plot::angle_figure(read.subject()).text();
  const auto rates = block_of(script, "panel2");
  CHECK(rates.size() < 10000);
  const auto highest =
      std::max_element(rates.begin(), rates.end(), [](const auto& a, const auto& b) { return a[2] < b[2]; });
  CHECK((*highest)[0] == Approx(123.457));
  CHECK((*highest)[2] == Approx(77 * 180 / 3.14159265358979));
}

TEST_CASE("gnuplot: when it is missing, the message says what to install, a refused script shows why") {
  const Folder folder;
  const std::string path = getenv("PATH");
  setenv("PATH", folder.path.c_str(), 1);
  CHECK_THROWS_WITH(plot::draw_all(shared_record(), folder.path),
                    Contains("gnuplot-nox") && Contains("fonts-dejavu-core"));
  setenv("PATH", path.c_str(), 1);

  plot::Script script("wrong", "title", "identity", 5, 4);
  script.line("plot no_such_function(x)");
  CHECK_THROWS_WITH(plot::draw(script, folder.path, {"svg"}),
                    Contains("wrong.gp") && Contains("no_such_function"));
}

TEST_CASE("records: one that is missing or foreign is refused by name") {
  const Folder folder;
  CHECK_THROWS_WITH(plot::draw_all(folder.path / "none.h5", folder.path), Contains("none.h5"));
  std::ofstream(folder.path / "text.h5") << "no record";
  CHECK_THROWS_WITH(plot::draw_all(folder.path / "text.h5", folder.path), Contains("text.h5"));
}

TEST_CASE("text: quotes become apostrophes, control characters blanked, and nothing else changes") {
  CHECK(plot::gnuplot_text("'it's'") == "'’it’s’'");
  CHECK(plot::gnuplot_text("a\nb\tc\x7f") == "'a b c '");
  CHECK(plot::gnuplot_text("`x` \"y\" \\") == "'`x` \"y\" \\'");
  CHECK(plot::shortened("🖐🖐🖐🖐", 3) == "🖐🖐…");
  CHECK(plot::shortened("abc", 3) == "abc");
  CHECK(plot::character_count("µm°") == 3);
}

namespace {

// Flexion 3 × direction 2, one of the six not found.
record::LimitRecord small_map() {
  record::LimitRecord map;
  map.inputs.engine_version = "0.0-test";
  map.name = "load \"over\" `posture`";
  map.quantity = "force of pull";
  map.unit = "N";
  map.method = "ramp";
  map.axes = {{"flexion", {"10 deg", "20 deg", "30 deg"}}, {"direction", {"open", "it's along"}}};
  for (int r = 0; r < 3; ++r)
    for (int c = 0; c < 2; ++c) {
      record::KeptLimit limit;
      limit.place = {map.axes[0].second[static_cast<std::size_t>(r)], map.axes[1].second[static_cast<std::size_t>(c)]};
      limit.found = r != 2 || c != 1;
      limit.value = limit.found ? 10 * r + c + 1 : std::nan("");
      limit.error = 0.1;
      limit.runs.push_back({});
      map.limits.push_back(limit);
    }
  return map;
}

}  // namespace

TEST_CASE("limit figures: a map is drawn as curves over its longer axis and as fields with every value that was found") {
  const record::LimitRecord map = small_map();
  const plot::Script curves = plot::limit_figure(map), fields = plot::limit_map_figure(map);
  const auto first = block_of(curves.text(), "curve1"), second = block_of(curves.text(), "curve2");
  CHECK(first == std::vector<std::vector<double>>{{0, 1, 0.1}, {1, 11, 0.1}, {2, 21, 0.1}});
  CHECK(second == std::vector<std::vector<double>>{{0, 2, 0.1}, {1, 12, 0.1}});
  const auto cells = block_of(fields.text(), "fields");
  CHECK(cells == std::vector<std::vector<double>>{{0, 0, 1}, {1, 0, 2}, {0, 1, 11}, {1, 1, 12}, {0, 2, 21}});
  CHECK_THAT(fields.text(), Contains("no limit found (1 of 6)") && !Contains("it's"));
  const Folder folder;
  CHECK(plot::draw(curves, folder.path, {"png"}).size() == 2);
  CHECK(plot::draw(fields, folder.path, {"png"}).size() == 2);
}

TEST_CASE("limit figures: directions of a plane make a closed curve with its worst point, those of the sphere two halves") {
  record::LimitRecord round = small_map();
  round.method = "directions";
  round.in_plane = true;
  round.axes = {{"direction", {"0 deg", "90 deg", "180 deg", "270 deg"}}};
  round.limits.resize(4);
  const double values[] = {5, 3, 4, 6};
  for (std::size_t i = 0; i < 4; ++i) {
    round.limits[i].found = i != 3;
    round.limits[i].value = i == 3 ? std::nan("") : values[i];
    round.limits[i].place = {round.axes[0].second[i]};
    round.limits[i].direction = {i == 0 ? 1. : i == 2 ? -1. : 0., i == 1 ? 1. : i == 3 ? -1. : 0., 0};
  }
  const plot::Script polar = plot::limit_figure(round);
  const auto curve = block_of(polar.text(), "curve1");
  REQUIRE(curve.size() == 5);
  CHECK(curve[0] == std::vector<double>{5, 0, 5});
  CHECK(curve[1][1] == Approx(3));
  CHECK(curve[2][0] == Approx(-4));
  CHECK(std::isnan(curve[3][2]));
  CHECK(curve[4] == curve[0]);
  CHECK(block_of(polar.text(), "worst1")[0][2] == 3);
  CHECK(block_of(polar.text(), "beyond").size() == 1);
  CHECK_THAT(polar.text(), Contains("worst: 3 N at 90 deg") && Contains("90° +y"));
  round.in_plane = false;
  round.limits[2].direction = {0, 0, 1};
  const plot::Script sphere = plot::limit_figure(round);
  const auto points = block_of(sphere.text(), "directions");
  REQUIRE(points.size() == 3);
  CHECK(points[2] == std::vector<double>{-1.48, 0, 4});            // the pole in the middle of its half
  CHECK(points[0][0] == Approx(-1.48 + std::sqrt(2)));             // the equator on its rim
  const Folder folder;
  CHECK(plot::draw(polar, folder.path, {"png"}).size() == 2);
  CHECK(plot::draw(sphere, folder.path, {"png"}).size() == 2);
  // Nothing found at all is still a figure.
  for (auto& limit : round.limits) limit.found = false;
  CHECK(plot::draw(plot::limit_figure(round), folder.path, {"png"}).size() == 2);
  round.in_plane = true;
  CHECK(plot::draw(plot::limit_figure(round), folder.path, {"png"}).size() == 2);
}

TEST_CASE("limit figures: a ramp shows every rate, a search every value with its verdict") {
  record::LimitRecord ramp = small_map();
  ramp.axes.clear();
  ramp.limits.resize(1);
  auto& runs = ramp.limits[0].runs;
  runs.clear();
  for (const double rate : {8.0, 4.0, 2.0}) {
    record::KeptRun run;
    run.rate = rate;
    run.value = 20 + rate / 4;
    run.holds = true;
    runs.push_back(run);
  }
  CHECK(block_of(plot::limit_figure(ramp).text(), "runs") == std::vector<std::vector<double>>{{1, 22}, {0.5, 21}, {0.25, 20.5}});
  ramp.method = "search";
  runs[2].holds = false;
  const std::string search = plot::limit_figure(ramp).text();
  CHECK(block_of(search, "holds") == std::vector<std::vector<double>>{{22, 1}, {21, 1}});
  CHECK(block_of(search, "fails") == std::vector<std::vector<double>>{{20.5, 0}});
}

TEST_CASE("overlay: every record keeps its own times, and each panel shows all of them") {
  const Folder folder;
  record_run(folder.path / "other.h5", {"duration=0.3 s", "timeline.1.at=0.28 s", "require=[]", "model.supplies.battery.voltage=5 V"});
  const plot::Overlaid a{"grasp", record::read_record(shared_record())}, b{"other", record::read_record(folder.path / "other.h5")};
  const plot::Script script = plot::overlay_figure({a, b}, 0, 1e300);
  const auto first = block_of(script.text(), "record1"), second = block_of(script.text(), "record2");
  CHECK(first.size() == a.record.time.size());
  CHECK(second.size() == b.record.time.size());
  // time, three joints, grip, two cords, one current
  REQUIRE(first[0].size() == 1 + 3 + 1 + 2 + 1);
  CHECK(second.back()[1] == Approx(b.record.column("/joints/MCP/angle").back() * 180 / std::acos(-1.0)).epsilon(1e-6));
  CHECK(first.back()[5] == Approx(a.record.column("/cords/flexor/tension").back()).epsilon(1e-6));
  CHECK_THAT(script.text(), Contains("title 'grasp'") && Contains("title 'other'"));
  CHECK(plot::draw_overlay({shared_record(), folder.path / "other.h5"}, folder.path / "drawn", {{"png"}}).size() == 2);
  record::Record nothing = a.record;
  nothing.channels.clear();
  CHECK_THROWS_AS(plot::overlay_figure({a, {"empty", nothing}}, 0, 1e300), InvalidInput);
}
