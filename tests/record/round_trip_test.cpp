#include <fcntl.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <limits>
#include <thread>

#include "record/reader.h"
#include "record/writer.h"
#include "sample.h"

using namespace sinewright::record;

namespace {

const std::vector<SummaryValue> kSummary = {
    {"grip_force.distal", 5.25, "N", "normal force of the distal phalanx"},
    {"closure_time", std::numeric_limits<double>::quiet_NaN(), "s", "did not occur"},
    {"a/b 100%", -0.0, "1", "a key with signs that a path cannot have"},
    {".", 1e-300, "1", "a lone dot"}};
const std::vector<Verdict> kVerdicts = {{"grip_force.distal", "at least 5 N", 5.25, true, "N"},
                                        {"closure_time", "at most 0.8 s", 0.9, false, "s"}};

const Margins kMargins = {{{"seat_punching.flexor.pulley", "knot seat", 24e6, 36e6, "Pa", 2.0 / 3, 2.27, "tension 86 N", 2.09, "tension 57 N", {-0.1, 0.7}},
                           {"person_force", "force on a person", 140, 0, "N", std::numeric_limits<double>::infinity(), 0, "",
                            std::numeric_limits<double>::quiet_NaN(), "", {0, 1e-3}}},
                          {{"cord_knot.return", "cord", {"cords.return.knot", "lines.rubber.breaking_force"}}, {"a/b", "none", {}}},
                          {"a wall of 0.5 mm"},
                          {"MCP", "a/b"}};

void write(const std::filesystem::path& file, std::size_t n_rows, int pauses = 0) {
  Writer writer(file, sample::channels(), sample::inputs());
  std::vector<double> values(sample::width());
  for (std::size_t row = 0; row < n_rows; ++row) {
    sample::fill(row, values);
    if (sample::has_event(row)) writer.event(sample::event_of(row));
    writer.append(sample::time_of(row), values);
    if (pauses > 0 && row % (n_rows / static_cast<std::size_t>(pauses)) == 3) writer.flush();
  }
  writer.finish(kSummary, kVerdicts, "complete", kMargins);
}

}  // namespace

TEST_CASE("record: all that was written is read back", "[round-trip]") {
  const std::size_t n_rows = GENERATE(0, 1, 1023, 1024, 1025, 40000);
  CAPTURE(n_rows);
  const sample::Folder folder;
  const auto file = folder / "run.h5";
  write(file, n_rows);
  CHECK_FALSE(std::filesystem::exists(partial_path(file)));
  CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 1);

  const auto record = read_record(file);
  CHECK(record.outcome == "complete");
  REQUIRE(record.time.size() == n_rows);
  CHECK(record.events.size() == (n_rows + 99) / 100);
  CHECK(sample::count_wrong(record) == 0);

  const auto channels = sample::channels();
  REQUIRE(record.channels.size() == channels.size());
  for (std::size_t i = 0; i < channels.size(); ++i) {
    CHECK(record.channels[i].path == channels[i].path);
    CHECK(record.channels[i].unit == channels[i].unit);
    CHECK(record.channels[i].description == channels[i].description);
    CHECK(record.channels[i].columns == channels[i].columns);
    CHECK(record.data[i].size() == n_rows * static_cast<std::size_t>(channels[i].width()));
  }

  const auto inputs = sample::inputs();
  CHECK(record.inputs.engine_version == inputs.engine_version);
  CHECK(record.inputs.scenario_path == inputs.scenario_path);
  CHECK(record.inputs.files == inputs.files);
  CHECK(record.inputs.overrides == inputs.overrides);
  CHECK(record.inputs.seed == inputs.seed);

  REQUIRE(record.summary.size() == kSummary.size());
  for (std::size_t i = 0; i < kSummary.size(); ++i) {
    CHECK(record.summary[i].key == kSummary[i].key);
    CHECK((record.summary[i].value == kSummary[i].value ||
           (std::isnan(record.summary[i].value) && std::isnan(kSummary[i].value))));
    CHECK(record.summary[i].unit == kSummary[i].unit);
    CHECK(record.summary[i].description == kSummary[i].description);
  }
  REQUIRE(record.verdicts.size() == kVerdicts.size());
  for (std::size_t i = 0; i < kVerdicts.size(); ++i) {
    CHECK(record.verdicts[i].quantity == kVerdicts[i].quantity);
    CHECK(record.verdicts[i].demand == kVerdicts[i].demand);
    CHECK(record.verdicts[i].value == kVerdicts[i].value);
    CHECK(record.verdicts[i].met == kVerdicts[i].met);
    CHECK(record.verdicts[i].unit == kVerdicts[i].unit);
  }
}

TEST_CASE("record: margins are read back with posture, gaps and cautions, and a record without any has none", "[round-trip]") {
  const sample::Folder folder;
  write(folder / "run.h5", 3);
  const Margins margins = read_record(folder / "run.h5").margins;
  CHECK(margins.joints == kMargins.joints);
  CHECK(margins.cautions == kMargins.cautions);
  REQUIRE(margins.values.size() == kMargins.values.size());
  const auto same = [](double a, double b) { return a == b || (std::isnan(a) && std::isnan(b)); };
  for (std::size_t i = 0; i < margins.values.size(); ++i) {
    const auto &read = margins.values[i], &written = kMargins.values[i];
    CHECK(read.name == written.name);
    CHECK(read.check == written.check);
    CHECK(read.capacity == written.capacity);
    CHECK(read.demand == written.demand);
    CHECK(read.unit == written.unit);
    CHECK(read.ratio == written.ratio);
    CHECK(read.time == written.time);
    CHECK(read.load == written.load);
    CHECK(same(read.lost_at, written.lost_at));
    CHECK(read.lost_load == written.lost_load);
    CHECK(read.posture == written.posture);
  }
  REQUIRE(margins.not_checked.size() == 2);
  for (std::size_t i = 0; i < 2; ++i) {
    CHECK(margins.not_checked[i].name == kMargins.not_checked[i].name);
    CHECK(margins.not_checked[i].check == kMargins.not_checked[i].check);
    CHECK(margins.not_checked[i].missing == kMargins.not_checked[i].missing);
  }
  {
    Writer writer(folder / "none.h5", {}, sample::inputs());
    writer.finish({}, {}, "complete");
  }
  CHECK(read_record(folder / "none.h5").margins.values.empty());
}

TEST_CASE("record: a column is found by path and number", "[round-trip]") {
  const sample::Folder folder;
  write(folder / "run.h5", 10);
  const auto record = read_record(folder / "run.h5");
  CHECK(record.find("/nothing") == -1);
  REQUIRE(record.find("/cords/flexor/tension") == 6);
  CHECK(record.column("/cords/flexor/tension", 2)[9] == sample::value(9, 8));
  CHECK(record.column("/joints/PIP/angle").size() == 10);
  CHECK_THROWS_WITH(record.column("/nothing"), Catch::Contains("no channel /nothing"));
  CHECK_THROWS_WITH(record.column("/cords/flexor/tension", 4), Catch::Contains("no column 4"));
}

TEST_CASE("record: equal runs give equal bytes, whenever they were flushed", "[golden]") {
  const sample::Folder folder;
  write(folder / "a.h5", 5000);
  std::this_thread::sleep_for(std::chrono::milliseconds(1100));  // time stamps count in seconds
  write(folder / "b.h5", 5000, 17);
  const auto a = sample::bytes_of(folder / "a.h5");
  CHECK(a.size() > 10000);
  CHECK((a == sample::bytes_of(folder / "b.h5")));
}

TEST_CASE("record: a run that ended early keeps its reason", "[round-trip]") {
  const sample::Folder folder;
  {
    Writer writer(folder / "run.h5", {}, sample::inputs());
    writer.append(0.5, {});
    writer.finish({}, {}, "the step at t = 0.5 s could not be solved");
    CHECK_THROWS_WITH(writer.append(0.6, {}), Catch::Contains("finished already"));
  }
  const auto record = read_record(folder / "run.h5");
  CHECK(record.outcome == "the step at t = 0.5 s could not be solved");
  CHECK(record.time == std::vector<double>{0.5});
}

TEST_CASE("record: a writer that goes without finish leaves a partial file with every row", "[round-trip]") {
  const sample::Folder folder;
  const auto file = folder / "run.h5";
  std::vector<double> values(sample::width());
  {
    Writer first(file, sample::channels(), sample::inputs());
    Writer writer(std::move(first));
    for (std::size_t row = 0; row < 1500; ++row) {
      sample::fill(row, values);
      if (sample::has_event(row)) writer.event(sample::event_of(row));
      writer.append(sample::time_of(row), values);
    }
  }
  CHECK_FALSE(std::filesystem::exists(file));
  const auto record = read_record(partial_path(file));
  CHECK(record.outcome == "partial");
  CHECK(record.time.size() == 1500);
  CHECK(record.events.size() == 15);
  CHECK(sample::count_wrong(record) == 0);

  write(file, 3);  // the next run takes the partial file's place
  CHECK_FALSE(std::filesystem::exists(partial_path(file)));
  CHECK(read_record(file).time.size() == 3);
}

TEST_CASE("record: slow rows reach the file within the second, without a full buffer", "[round-trip]") {
  const sample::Folder folder;
  Writer writer(folder / "run.h5", {}, {});
  writer.append(1.0, {});
  std::this_thread::sleep_for(std::chrono::milliseconds(510));
  writer.append(2.0, {});
  // The file is locked while it is written; a copy is what a kill would leave.
  std::filesystem::copy_file(partial_path(folder / "run.h5"), folder / "copy.h5");
  CHECK(read_record(folder / "copy.h5").time == std::vector<double>{1.0, 2.0});
  const int other = open((folder / "copy.h5").c_str(), O_RDONLY);
  REQUIRE(flock(other, LOCK_EX) == 0);  // as a run in another process does
  CHECK_THROWS_WITH(read_record(folder / "copy.h5"), Catch::Contains("a run is writing it just now"));
  close(other);
  CHECK_THROWS_WITH(Writer(folder / "run.h5", {}, {}), Catch::Contains("another run is writing it"));
}

TEST_CASE("record: channels that clash are refused", "[errors]") {
  const sample::Folder folder;
  const auto refusal = [&](std::vector<std::string> paths) {
    std::vector<Channel> channels;
    for (const auto& path : paths) channels.push_back({path, "1", "", {}});
    try {
      const Writer writer(folder / "run.h5", channels, {});
    } catch (const RecordError& error) {
      return std::string(error.what());
    }
    return std::string();
  };
  CHECK(refusal({"/a/b", "/a/c"}).empty());
  CHECK_THAT(refusal({"/a", "/a"}), Catch::Contains("channel '/a' is there twice"));
  CHECK_THAT(refusal({"/a/b/c", "/a/b"}), Catch::Contains("'/a/b/c' lies below another channel '/a/b'"));
  CHECK_THAT(refusal({"/time"}), Catch::Contains("/time is kept for the layout"));
  CHECK_THAT(refusal({"/summary/x"}), Catch::Contains("/summary is kept for the layout"));
  for (const std::string path : {"", "a", "/", "/a/", "/a//b"})
    CHECK_THAT(refusal({path}), Catch::Contains("a path such as"));
}

TEST_CASE("record: a row of the wrong length is refused", "[errors]") {
  const sample::Folder folder;
  Writer writer(folder / "run.h5", sample::channels(), {});
  CHECK_THROWS_AS(writer.append(0, std::vector<double>(3)), std::invalid_argument);
}

TEST_CASE("record: h5py sees units and descriptions of every data set", "[python]") {
  std::string python;
  for (const std::string candidate : {"python3", "/usr/bin/python3"})
    if (python.empty() && std::system((candidate + " -c 'import h5py' 2>/dev/null").c_str()) == 0) python = candidate;
  if (python.empty()) {
    WARN("h5py is not installed: not checked");
    return;
  }
  const sample::Folder folder;
  write(folder / "run.h5", 1200);
  std::ofstream(folder / "look.py") << R"(
import h5py, sys
with h5py.File(sys.argv[1]) as f:
    assert f.attrs['format'] == 'sinewright record' and f.attrs['format_version'] == 1
    assert f.attrs['outcome'] == 'complete'
    seen = []
    def look(name, item):
        if isinstance(item, h5py.Dataset):
            seen.append(name)
            assert isinstance(item.attrs['units'], str) and item.attrs['units'], name
            assert isinstance(item.attrs['description'], str) and item.attrs['description'], name
    f.visititems(look)
    assert len(seen) == 1 + 10 + 4 + 4 + 3 + 4 + 2 + 16, seen
    assert f['time'].shape == (1200,) and f['time'].maxshape == (None,) and f['time'].attrs['units'] == 's'
    tension = f['cords/flexor/tension']
    assert tension.shape == (1200, 4) and list(tension.attrs['columns']) == ['pulley', 'proximal', 'middle', 'tip']
    assert f['drives/thumb motor/winding'].attrs['units'] == 'degree_Celsius'
    assert 'µ and °' in f['drives/thumb motor/winding'].attrs['description']
    assert list(f['summary'])[0] == 'grip_force.distal' and f['summary/grip_force.distal'][()] == 5.25
    assert f['events/kind'].asstr()[1] == 'stick'
    assert f['inputs/files/file_000'].asstr()[()].endswith('µ = 0.12\n')
    assert f['requirements/requirement_001'].attrs['met'] == 0
)";
  const auto status = std::system((python + " " + (folder / "look.py").string() + " " + (folder / "run.h5").string()).c_str());
  CHECK(WEXITSTATUS(status) == 0);
}
