// Every limit file that ships finds its answer, and the answer lies where a hand estimate says.

#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <string>

#include "study/limit.h"

namespace {

using namespace sinewright;

struct Expected {
  const char* file;
  std::size_t point;  ///< of the map
  double low, high;
  bool settled, monotone;
  const char* estimate;  ///< by hand
};

const Expected kExpected[] = {
    {"back-drive", 0, 18.9, 23.0, true, true,
     "gear and brushes hold (150·0.35 + 2) mN·m / 0.29 / 3.5 mm = 53.7 N of cord; about PIP its arm is 6 mm against a lever of "
     "25 cos 75° + 10 = 16.4 mm: 19.6 N, less 0.7 N for the return cord; the channel adds up to exp(0.12·1.3) = 17 %"},
    {"back-drive", 1, 18.9, 23.0, true, true, "the same: a rotor at rest induces no voltage"},
    {"first-break", 0, 20.2, 23.6, true, true,
     "the knot's seat shears off at 42/sqrt(3) MPa · pi · 1.5 mm · 0.5 mm = 57.1 N of cord; about PIP, as for back-drive: 20.9 N less "
     "0.7 N for the return cord; the channel adds up to 17 %"},
    {"first-motion", 0, 3.3, 8.2, true, true,
     "at least what the cord of a stalled motor, 17 N less the channel's loss, holds about PIP: 13 N·7 mm / 28 mm; at most the "
     "grip of the tip, 8.2 N, at which it lifts off"},
    {"first-motion", 1, 3.3, 8.2, true, true, "the same"},
    {"pull-out-along", 0, 10.6, 11.8, true, true, "friction of the pads: 0.8 · 13.99 N of grip = 11.2 N, within 5 %"},
    {"pull-out-across", 0, 11, 46, true, true,
     "until the gear yields, 53.7 N of cord come out by some 1.7 mm while the bar goes 8 mm: 11.4 N without friction; pads add at "
     "most 0.8 of the grip, 14 N · 53.7 / 17"},
    {"largest-cylinder", 0, 24.0, 24.9, true, true,
     "lying on the pads its top is at -58.25 + 0.923 √((r + 6)² - 16.25²) + r mm, the open finger at -10: r = 24.47, within 2 %"},
    {"smallest-cylinder", 0, 9.7, 10.8, true, true, "falls between the pads, which are 32.5 mm apart, for r + 6 < 16.25, within 5 %"},
    {"weakest-return-cord", 0, 0.77, 1.9, true, true,
     "MCP's washers take 0.33 N·mm, so 0.066 N over 5 mm are wanted with 15° to go (stretch 0.012): 1.24 mm; the momentum of the "
     "way back and the pin are left out, a factor of 1.6"},
    {"strongest-return-cord", 0, 6.7, 11.1, true, true,
     "17 N of cord, 0.7 of it behind the bends, 2.5 mm at the straight DIP against 3 mm of the return cord: 9.9 N, of which 1 N by "
     "stretching: 8.9 N, within a quarter"},
    {"lowest-voltage", 0, 3.87, 4.73, true, true,
     "31.6 mm of cord are 9.1 rad of pulley in 0.99 s, 1370 rad/s of rotor or 3.3 V, and 0.135 A for drags and return cord over "
     "7.4 ohm: 4.3 V, within a tenth"},
    {"channel-friction", 0, 0.14, 0.56, true, false,
     "(0.05 + 0.0235) N · 5 mm exp(-0.4 mu) = 0.33 N·mm of the washers: 0.28, within a factor of two"},
    {"worst-direction", 6, 7.1, 17, true, true,
     "lifted off the palm the bottle pushes the proximal phalanx back: 34 N of cord at 9.7 mm, less 15 N·mm of return cord, over 19 mm: "
     "16.5 N, of which the fingertip pushes 4.8 N the same way, while the bottle weighs 1.2 N: 13 N; joints that trade motion at the same "
     "length of cord take off up to 45 %, friction of pads and pins adds up to 30 %"},
    {"fingertip-stall", 30, 1.8, 3.9, true, true,
     "flexed by 40° and pulled square to the tip: 17 N of cord, 0.75 behind the bends, 7 mm at PIP, less 14 N·mm of return cord, "
     "over 29 mm: 2.6 N; friction and the rotor's momentum add up to a half, the channel takes off up to a third"},
};

TEST_CASE("limits: every shipped file finds its answer within a band that is estimated by hand", "[slow]") {
  std::size_t files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(SINEWRIGHT_SOURCE_DIR "/scenarios/limits")) {
    ++files;
    const std::string name = entry.path().stem().string();
    CAPTURE(name);
    reading::Source source;
    const auto study = reading::read_limit(source, entry.path());
    const auto result = study::find_limit(source, study, {}, 2);
    int compared = 0;
    for (const Expected& expected : kExpected) {
      if (name != expected.file) continue;
      ++compared;
      CAPTURE(expected.point, expected.estimate);
      const auto& answer = result.points.at(expected.point).answer;
      CHECK(answer.found);
      CHECK(answer.settled == expected.settled);
      CHECK(answer.monotone == expected.monotone);
      CHECK(answer.value > expected.low);
      CHECK(answer.value < expected.high);
    }
    CHECK(compared > 0);
  }
  CHECK(files == 13);
}

}  // namespace
