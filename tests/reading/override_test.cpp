#include <catch2/catch.hpp>

#include "good_files.h"
#include "reading/reading.h"

using namespace sinewright;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

namespace {

model::Scenario read_with(const std::vector<std::string>& overrides) {
  reading::Source source(good_files::all());
  return reading::read_scenario(source, "scenario.yaml", overrides);
}

std::string message_with(const std::string& override_text) {
  try {
    (void)read_with({override_text});
  } catch (const InvalidInput& error) {
    return error.what();
  }
  return "";
}

struct Wrong {
  const char* text;
  const char* what;
  const char* phrase;
};

}  // namespace

TEST_CASE("override: a value of the scenario, a list item, a whole list") {
  CHECK(read_with({"duration=3 s"}).duration == 3);
  CHECK(read_with({" duration = 3 s "}).duration == 3);
  CHECK(std::get<model::CommandVoltage>(read_with({"timeline.1.voltage=5 V"}).timeline[0].command).voltage ==
        5);
  CHECK(read_with({"gravity=[0 m/s², 0 m/s², 5 m/s²]"}).gravity.norm() == 5);
  CHECK(read_with({"timeline.1={at: 0.2 s, drive: flexor, off: open}"}).timeline[0].time == 0.2);
}

TEST_CASE("override: what one reading changes, the next reading of the same source does not see") {
  reading::Source source(good_files::all());
  const auto resistance = [&](const std::vector<std::string>& overrides) {
    return reading::read_scenario(source, "scenario.yaml", overrides).model.drives[0].motor.resistance;
  };
  const double as_written = resistance({});
  CHECK(resistance({"model.motors.micro.resistance=10 Ohm"}) == 10);
  CHECK(resistance({}) == as_written);
  CHECK(as_written != 10);
}

TEST_CASE("override: keys that the file leaves out can be given") {
  const model::Scenario scenario =
      read_with({"start.PIP=3 deg", "model.bodies.tip.hinge.viscous=1e-5 N·m·s/rad",
                 "model.bodies.tip.hinge.spring.stiffness=1 N·m/rad"});
  CHECK(scenario.model.bodies[2].hinge->viscous == 1e-5);
  CHECK(scenario.model.bodies[2].hinge->spring_stiffness == 1);
}

TEST_CASE("override: a scenario reaches into its model and the model's parts") {
  CHECK(read_with({"model.drives.flexor.current_limit=0.5 A"}).model.drives[0].current_limit == 0.5);
  CHECK(read_with({"model.cords.flexor.channel.friction=0.2"}).model.cords[0].channel.kinetic == 0.2);
  CHECK(read_with({"model.cords.flexor.path.1.radius=3 mm"}).model.cords[0].path.size() == 4);
  CHECK(read_with({"model.motors.micro.resistance=10 Ohm"}).model.drives[0].motor.resistance == 10);
  CHECK(read_with({"model.friction_pairs.pad_on_shell.friction=0.3"}).model.pairs[0].friction == 0.3);
  reading::Source source(good_files::all());
  CHECK(reading::read_model(source, "model.yaml", {"lines.braid.axial_stiffness=5 kN"}).lines.size() == 3);
}

TEST_CASE("override: the last of two wins") {
  CHECK(read_with({"duration=3 s", "duration=4 s"}).duration == 4);
}

TEST_CASE("override: a scenario's own changes to its model come before those of the command line") {
  good_files::Texts texts = good_files::all();
  texts[2].second +=
      "change:\n  - drives.flexor.current_limit=0.3 A\n  - cords.flexor.channel.friction=0.2\n";
  reading::Source source(texts);
  const model::Scenario scenario =
      reading::read_scenario(source, "scenario.yaml", {"model.cords.flexor.channel.friction=0.25"});
  CHECK(scenario.model.drives[0].current_limit == 0.3);
  CHECK(scenario.model.cords[0].channel.kinetic == 0.25);
  texts[2].second += "  - cords.flexr.slack=1 mm\n";
  reading::Source wrong(texts);
  CHECK_THROWS_WITH(
      reading::read_scenario(wrong, "scenario.yaml"),
      StartsWith("scenario.yaml: change cords.flexr.slack=1 mm: cords.flexr: there is no such cord"));
}

TEST_CASE("override: a value that is no YAML is refused", "[errors]") {
  CHECK_THAT(message_with("duration=[3 s"),
             StartsWith("--set duration=[3 s:1:1: ") && Contains("is a bracket not closed?"));
}

TEST_CASE("override: what cannot be meant is refused and names the override", "[errors]") {
  const auto wrong = GENERATE(values<Wrong>({
      {"duration", "there is no '='", "key.path=value"},
      {"=3 s", "a key is empty", "key.path=value"},
      {"a..b=3", "a key is empty", "key.path=value"},
      {"duration=", "the value is empty", "key.path=value"},
      {"duration=3", "duration = 3 is not allowed", "the unit is missing"},
      {"start.PPI=3 deg", "start.PPI: there is no such joint", "nearest known joint is 'PIP'"},
      {"duratoin=3 s", "duratoin is not a known key", "nearest known key is 'duration'"},
      {"solvr.tolerance=1e-4", "solvr is not a known key", "nearest known key is 'solver'"},
      {"solver.tolerence=1e-4", "solver.tolerence is not a known key", "nearest known key is 'tolerance'"},
      {"duration.x=3 s", "duration = 2 s has no key 'x' below it", "one step too far"},
      {"timeline.9.voltage=5 V", "timeline has no item '9'", "a number from 0 to 8"},
      {"timeline.first.voltage=5 V", "timeline has no item 'first'", "a number from 0 to 8"},
      {"timeline.0.voltage=5 V", "timeline.0.voltage is not allowed beside", "exactly one of"},
      {"objects.cylindr.surface=pad", "objects.cylindr: there is no such object",
       "nearest known object is 'cylinder'"},
      {"model.drives.flexr.current_limit=1 A", "drives.flexr: there is no such drive",
       "nearest known drive is 'flexor'"},
      {"model.drives.flexor.curent_limit=1 A", "drives.flexor.curent_limit is not a known key",
       "'current_limit'"},
      {"model.motors.mikro.resistance=1 Ohm", "motors has no 'mikro'", "nearest known one is 'micro'"},
      {"model.motors.micro.resistence=1 Ohm", "motors.micro.resistence is not a known key", "'resistance'"},
  }));
  CAPTURE(wrong.text);
  const std::string text = wrong.text;
  const std::string shown = text.rfind("model.", 0) == 0 ? text.substr(6) : text;
  CHECK_THAT(message_with(text), StartsWith("--set " + shown + ": " + wrong.what) && Contains(wrong.phrase));
}
