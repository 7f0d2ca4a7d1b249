#include <fcntl.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <random>
#include <thread>

#include "record/reader.h"
#include "record/writer.h"
#include "sample.h"
#include "stamps.h"

using namespace sinewright::record;

namespace {

struct Victim {
  pid_t process = 0;
  std::filesystem::path record, stamps;
  double kill_at = 0, killed = 0;  // wall time [s]
};

/// No victim outlives the test, whichever line of it fails.
struct Victims : std::vector<Victim> {
  Victims() = default;
  Victims(const Victims&) = delete;
  Victims& operator=(const Victims&) = delete;
  ~Victims() {
    for (const auto& victim : *this)
      if (victim.killed == 0 && kill(victim.process, SIGKILL) == 0) waitpid(victim.process, nullptr, 0);
  }
};

/// The stamps up to the first that was not set; the rest of the file is a hole.
std::vector<double> read_stamps(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::vector<double> stamps;
  double stamp = 0;
  while (in.read(reinterpret_cast<char*>(&stamp), sizeof stamp) && stamp > 0) stamps.push_back(stamp);
  return stamps;
}

Victim start(const sample::Folder& folder, int number, int pause) {
  Victim victim;
  victim.record = folder / ("run" + std::to_string(number) + ".h5");
  victim.stamps = folder / ("stamps" + std::to_string(number));
  const int descriptor = open(victim.stamps.c_str(), O_RDWR | O_CREAT | O_TRUNC, 0600);
  REQUIRE(descriptor >= 0);
  REQUIRE(ftruncate(descriptor, kMaxStamps * sizeof(double)) == 0);
  close(descriptor);
  const std::string pause_text = std::to_string(pause);
  const std::string record = victim.record.string(), stamps = victim.stamps.string();
  victim.process = fork();
  if (victim.process == 0) {
    execl(SINEWRIGHT_ENDLESS_WRITER, SINEWRIGHT_ENDLESS_WRITER, record.c_str(), stamps.c_str(), pause_text.c_str(),
          static_cast<char*>(nullptr));
    _exit(9);
  }
  REQUIRE(victim.process > 0);
  return victim;
}

/// Kills `count` runs of different pace at random moments and looks at what each left.
void kill_and_read(int count, unsigned seed) {
  constexpr int at_once = 4;
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> moment(0.0, 1.8);  // [s] after the start; the first ms make the file
  int with_rows = 0, past_a_chunk = 0, number = 0;
  while (number < count) {
    const sample::Folder folder;
    Victims victims;
    for (int i = 0; i < at_once && number < count; ++i, ++number) {
      constexpr std::array<int, at_once> pauses = {0, 50, 1000, 30000};  // [us] between rows
      victims.push_back(start(folder, number, pauses[static_cast<std::size_t>(i)]));
      victims.back().kill_at = wall_time() + moment(random);
    }
    std::sort(victims.begin(), victims.end(), [](const auto& a, const auto& b) { return a.kill_at < b.kill_at; });
    for (auto& victim : victims) {
      std::this_thread::sleep_for(std::chrono::duration<double>(std::max(0.0, victim.kill_at - wall_time())));
      victim.killed = wall_time();
      REQUIRE(kill(victim.process, SIGKILL) == 0);
      int status = 0;
      REQUIRE(waitpid(victim.process, &status, 0) == victim.process);
      INFO("it ended by itself: exit code " << WEXITSTATUS(status));
      REQUIRE(WIFSIGNALED(status));
    }
    for (const auto& victim : victims) {
      const auto stamps = read_stamps(victim.stamps);
      CAPTURE(seed, victim.record, stamps.size());
      CHECK_FALSE(std::filesystem::exists(victim.record));
      const auto partial = partial_path(victim.record);
      if (!std::filesystem::exists(partial)) {
        CHECK(stamps.empty());  // killed before there was a run
        continue;
      }
      const auto record = read_record(partial);
      CHECK(record.outcome == "partial");
      CHECK(record.inputs.files == sample::inputs().files);
      CHECK(sample::count_wrong(record) == 0);
      const auto n = record.time.size();
      // The first row that is missing was handed over less than a second before the kill.
      if (n < stamps.size()) CHECK(stamps[n] > victim.killed - 1.0);
      with_rows += n > 0 ? 1 : 0;
      past_a_chunk += n > 16384 ? 1 : 0;
    }
  }
  // Else the moments were too early to say anything.
  CHECK(with_rows > count / 3);
  CHECK(past_a_chunk > count / 20);
}

}  // namespace

TEST_CASE("killed run: the partial file opens, is right and lacks less than a second", "[kill]") {
  kill_and_read(20, 20240611);
}

TEST_CASE("killed run: so it does at sixty moments more", "[kill][slow][.]") { kill_and_read(60, 7); }
