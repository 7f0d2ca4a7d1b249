// Fingers of files of their own, seated on a palm.

#include <catch2/catch.hpp>

#include "good_files.h"
#include "reading/reading.h"

using namespace sinewright;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;
using Catch::Matchers::WithinAbs;

namespace {

const std::string kHand = R"(sinewright: model
name: hand of the reading tests
currency: crown
supplies:
  pack: {voltage: 5 V, current_limit: 1.5 A}
bodies:
  palm: {fixed: {at: [0 mm, 0 mm, -5 mm]}}
fingers:
  index:
    model: model.yaml
    at: [10 mm, 0 mm, 20 mm]
    turned: {by: 90 deg, about: [0, 1, 0]}
    supply: pack
    drives:
      flexor:
        body: palm
        lead:
          - {pulley: flexor, at: [-60 mm, 0 mm, 0 mm]}
          - {bend: [-40 mm, 0 mm, 0 mm], in: palm, friction_factor: 2}
  middle:
    model: model.yaml
    at: [10 mm, 0 mm, 0 mm]
)";

good_files::Texts with_hand(const std::string& hand = kHand) {
  good_files::Texts texts = good_files::all();
  texts.emplace_back("hand.yaml", hand);
  return texts;
}

model::Model read_hand(const std::string& hand = kHand, const std::vector<std::string>& overrides = {}) {
  reading::Source source(with_hand(hand));
  return reading::read_model(source, "hand.yaml", overrides);
}

std::string changed(const std::string& old_text, const std::string& new_text) {
  std::string hand = kHand;
  const auto at = hand.find(old_text);
  REQUIRE(at != std::string::npos);
  return hand.replace(at, old_text.size(), new_text);
}

std::string message(const std::string& hand, const std::vector<std::string>& overrides = {}) {
  try {
    (void)read_hand(hand, overrides);
  } catch (const InvalidInput& error) {
    return error.what();
  }
  return "";
}

std::size_t surfaces_of_finger() {
  reading::Source source(good_files::all());
  return reading::read_model(source, "model.yaml").surfaces.size();
}

template <class T>
const T& named(const std::vector<T>& list, const std::string& name) {
  for (const T& one : list)
    if (one.name == name) return one;
  FAIL("there is no " << name);
  return list.front();
}

}  // namespace

TEST_CASE("fingers: their bodies, joints, drives, cords and supplies get the finger's name, parts of catalogues do not") {
  const model::Model hand = read_hand();
  CHECK(hand.bodies.size() == 1 + 2 * 4);
  CHECK(hand.drives.size() == 2);
  CHECK(hand.cords.size() == 4);
  CHECK(hand.surfaces.size() == surfaces_of_finger());  // of parts.yaml, once
  CHECK(hand.lines.size() == 3);
  CHECK(named(hand.bodies, "index.phalanx").hinge->name == "index.MCP");
  CHECK(named(hand.bodies, "middle.tip").hinge->name == "middle.PIP");
  const int parent = named(hand.bodies, "middle.tip").hinge->parent;
  CHECK(hand.bodies[static_cast<std::size_t>(parent)].name == "middle.phalanx");
  CHECK(named(hand.cords, "index.flexor").line == named(hand.cords, "middle.flexor").line);
  CHECK(hand.bill.size() == 4);
  CHECK(hand.bill[0].used_for == "index motor");
}

TEST_CASE("fingers: what is fixed in a finger's world goes where the finger is seated") {
  const model::Model hand = read_hand();
  // The knuckle stands at (1, 2, 3) mm; a quarter turn about y takes x to -z and z to x.
  const model::Fixed& knuckle = *named(hand.bodies, "index.knuckle").fixed;
  CHECK((knuckle.at - model::Vector3d(13e-3, 2e-3, 19e-3)).norm() < 1e-15);
  CHECK((knuckle.rotation * model::Vector3d::UnitX() + model::Vector3d::UnitZ()).norm() < 1e-15);
  CHECK((named(hand.bodies, "middle.knuckle").fixed->at - model::Vector3d(11e-3, 2e-3, 3e-3)).norm() < 1e-15);
}

TEST_CASE("fingers: a supply of the hand takes the place of the finger's own, which is gone then") {
  const model::Model hand = read_hand();
  REQUIRE(hand.supplies.size() == 2);
  CHECK(hand.supplies[static_cast<std::size_t>(named(hand.drives, "index.flexor").supply)].name == "pack");
  CHECK(hand.supplies[static_cast<std::size_t>(named(hand.drives, "middle.flexor").supply)].name == "middle.battery");
  CHECK(named(hand.supplies, "pack").current_limit == 1.5);
}

TEST_CASE("fingers: a lead takes the place of the pulley at the start of the cord's path") {
  const model::Model hand = read_hand();
  const model::Cord& led = named(hand.cords, "index.flexor");
  const model::Cord& straight = named(hand.cords, "middle.flexor");
  CHECK(led.path.size() == straight.path.size() + 1);
  CHECK(hand.bodies[static_cast<std::size_t>(named(hand.drives, "index.flexor").body)].name == "palm");
  CHECK(std::get<model::PulleyEnd>(led.path[0]).at.x() == -60e-3);
  CHECK(std::get<model::Bend>(led.path[1]).friction_factor == 2);
  REQUIRE(led.lead);
  CHECK(led.lead->points == 2);
  CHECK(hand.bodies[static_cast<std::size_t>(led.lead->body)].name == "index.knuckle");
  CHECK(led.lead->at.x() == -30e-3);
  CHECK_FALSE(straight.lead);
}

TEST_CASE("fingers: where a drive's parts sit is said anew when it moves, and stays what it was when it stays") {
  const model::Model hand = read_hand();
  CHECK_FALSE(named(hand.drives, "index.flexor").shaft);
  CHECK_FALSE(named(hand.drives, "index.flexor").inside);
  REQUIRE(named(hand.drives, "middle.flexor").shaft);
  CHECK(named(hand.drives, "middle.flexor").shaft->at.x() == -30e-3);
  REQUIRE(named(hand.drives, "middle.flexor").inside);
  CHECK(named(hand.drives, "middle.flexor").inside->empty());

  const std::string lead = "        lead:\n";
  const model::Model placed = read_hand(changed(lead, "        shaft: {at: [-60 mm, 3 mm, 0 mm], axis: [0, 0, -2]}\n        inside: [palm]\n" + lead));
  const model::Drive& drive = named(placed.drives, "index.flexor");
  REQUIRE(drive.shaft);
  CHECK((drive.shaft->at - model::Vector3d(-60e-3, 3e-3, 0)).norm() == 0);  // of the palm's frame, as it stands there
  CHECK((drive.shaft->axis + model::Vector3d::UnitZ()).norm() == 0);
  REQUIRE(drive.inside);
  REQUIRE(drive.inside->size() == 1);
  CHECK(placed.bodies[static_cast<std::size_t>(drive.inside->front())].name == "palm");
}

TEST_CASE("fingers: what may touch in a finger's file may touch in every such finger, but for what is left out") {
  const model::Model hand = read_hand();
  REQUIRE(hand.packing.may_touch.size() == 6);
  const auto body = [&](const model::PartName& name) { return hand.bodies[static_cast<std::size_t>(name.index)].name; };
  CHECK(body(hand.packing.may_touch[0].first) == "index.tip");
  CHECK(hand.packing.may_touch[0].first.part == "weight");
  CHECK(hand.drives[static_cast<std::size_t>(hand.packing.may_touch[0].second.index)].name == "index.flexor");
  CHECK(hand.cords[static_cast<std::size_t>(hand.packing.may_touch[4].first.index)].name == "middle.return");
  CHECK(body(hand.packing.may_touch[5].second) == "middle.phalanx");
  CHECK(hand.packing.clearance == 0.5e-3);  // that, the wrist and the palm the hand says itself
  CHECK_FALSE(hand.packing.wrist);
  CHECK(hand.packing.palm.empty());
}

TEST_CASE("fingers: overrides reach into a finger alone, its seat, and the parts that all share") {
  const auto drive = [](const model::Model& hand, const char* name) { return named(hand.drives, name); };
  const model::Model one = read_hand(kHand, {"fingers.index.drives.flexor.current_limit=0.3 A"});
  CHECK(drive(one, "index.flexor").current_limit == 0.3);
  CHECK(drive(one, "middle.flexor").current_limit == 0.6);
  CHECK(named(read_hand(kHand, {"fingers.middle.at=[0 mm, 0 mm, 1 mm]"}).bodies, "middle.knuckle").fixed->at.z() == Approx(4e-3));
  const model::Model all = read_hand(kHand, {"motors.micro.resistance=12 Ohm"});
  CHECK(drive(all, "index.flexor").motor.resistance == 12);
  CHECK(drive(all, "middle.flexor").motor.resistance == 12);
  // Where the hand's file speaks of the drive its own word is changed, else the finger's.
  const std::string placed = changed("        lead:\n", "        shaft: {at: [-60 mm, 3 mm, 0 mm], axis: [0, 0, 1]}\n        lead:\n");
  CHECK(drive(read_hand(placed, {"fingers.index.drives.flexor.shaft.at=[-61 mm, 3 mm, 0 mm]"}), "index.flexor").shaft->at.x() == -61e-3);
  CHECK(drive(read_hand(placed, {"fingers.index.drives.flexor.inside=[palm]"}), "index.flexor").inside->size() == 1);
  const model::Model own = read_hand(kHand, {"fingers.middle.drives.flexor.shaft.at=[-31 mm, 3 mm, 0 mm]"});
  CHECK(drive(own, "middle.flexor").shaft->at.x() == -31e-3);
  const std::string lead = "fingers.index.drives.flexor.lead.1.friction_factor=3";
  CHECK(std::get<model::Bend>(named(read_hand(kHand, {lead}).cords, "index.flexor").path[1]).friction_factor == 3);
}

TEST_CASE("fingers: wrong overrides say why") {
  CHECK_THAT(message(kHand, {"fingers.thumb.drives.flexor.current_limit=1 A"}),
             StartsWith("--set fingers.thumb.drives.flexor.current_limit=1 A: there is no finger 'thumb'") &&
                 Contains("one of: index, middle"));
  CHECK_THAT(message(kHand, {"fingers.index.motors.micro.resistance=12 Ohm"}), Contains("leave out the finger's name"));
  CHECK_THAT(message(kHand, {"fingers.index.drives.flexer.current_limit=1 A"}), Contains("there is no such drive"));
}

TEST_CASE("fingers: a scenario speaks of them with a dot, nested or not, also in overrides") {
  const std::string text = R"(sinewright: scenario
name: hand
model: hand.yaml
duration: 1 s
start: {index.MCP: 5 deg, middle: {PIP: 7 deg}}
timeline: [{at: 0 s, drive: index.flexor, voltage: 3 V}]
loads: {tip: {on: middle.tip, direction: [1, 0, 0], force: 1 N}}
)";
  good_files::Texts texts = with_hand();
  texts.emplace_back("hand-scenario.yaml", text);
  const auto read = [&](const std::vector<std::string>& overrides) {
    reading::Source source(texts);
    return reading::read_scenario(source, "hand-scenario.yaml", overrides);
  };
  const auto start_of = [](const model::Scenario& scenario, const std::string& joint) {
    for (const auto& [body, angle] : scenario.start_angles)
      if (scenario.model.bodies[static_cast<std::size_t>(body)].hinge->name == joint) return angle * 180 / 3.14159265358979323846;
    return 0.0;
  };
  const model::Scenario plain = read({});
  CHECK_THAT(start_of(plain, "index.MCP"), WithinAbs(5, 1e-12));
  CHECK_THAT(start_of(plain, "middle.PIP"), WithinAbs(7, 1e-12));
  const model::Scenario set = read({"start.index.MCP=6 deg", "start.middle.MCP=8 deg", "start.index.PIP=9 deg",
                                    "model.fingers.index.cords.flexor.channel.friction=0.3"});
  CHECK_THAT(start_of(set, "index.MCP"), WithinAbs(6, 1e-12));
  CHECK_THAT(start_of(set, "middle.MCP"), WithinAbs(8, 1e-12));
  CHECK_THAT(start_of(set, "middle.PIP"), WithinAbs(7, 1e-12));
  CHECK_THAT(start_of(set, "index.PIP"), WithinAbs(9, 1e-12));
  CHECK(named(set.model.cords, "index.flexor").channel.kinetic == 0.3);

  reading::Source source(texts);
  const auto written = reading::written_quantity(source, "hand-scenario.yaml", {}, "model.fingers.middle.drives.flexor.current_limit");
  REQUIRE(written);
  CHECK(written->si == 0.6);
  // The record keeps every file that was read.
  std::vector<std::string> kept;
  reading::Source again(texts);
  (void)reading::read_scenario(again, "hand-scenario.yaml");
  for (const auto& file : again.handed_out()) kept.push_back(file.path);
  CHECK(kept == std::vector<std::string>{"hand-scenario.yaml", "hand.yaml", "model.yaml", "parts.yaml", "box.stl"});
}

TEST_CASE("fingers: what a hand cannot have is refused where it stands") {
  struct Wrong {
    std::string old_text, new_text, place, phrase;
  };
  const Wrong wrong = GENERATE(values<Wrong>({
      {"model: model.yaml\n    at: [10 mm, 0 mm, 0 mm]", "model: hand.yaml", "hand.yaml:21:12: ", "go round in a circle"},
      {"model: model.yaml\n    at: [10 mm, 0 mm, 0 mm]", "model: none.yaml", "none.yaml: there is no such text", "used by: hand.yaml:21:12"},
      {"supply: pack\n    d", "supply: puck\n    d", "hand.yaml:13:13: ", "the nearest known supply is 'pack'"},
      {"flexor:\n        body", "flexer:\n        body", "hand.yaml:15:7: ", "there is no such drive"},
      {"{pulley: flexor, at", "{pulley: return, at", "hand.yaml:18:22: ", "'flexor', the drive whose cord is led here"},
      {"{pulley: flexor, at: [-60 mm, 0 mm, 0 mm]}", "{anchor: [-60 mm, 0 mm, 0 mm], in: palm}", "hand.yaml:18:13: ", "the pulley at the start"},
      {"{bend: [-40 mm, 0 mm, 0 mm], in: palm, friction_factor: 2}", "{anchor: [-60 mm, 0 mm, 0 mm], in: palm}", "hand.yaml:19:13: ",
       "bends and guides after the pulley"},
      {"in: palm, fr", "in: plam, fr", "hand.yaml:19:46: ", "the nearest known body is 'palm'"},
      {"        lead:\n          - {pulley: flexor, at: [-60 mm, 0 mm, 0 mm]}\n          - {bend: [-40 mm, 0 mm, 0 mm], in: palm, friction_factor: 2}\n", "",
       "hand.yaml:15:7: ", "the cord 'flexor' is wound on it"},
      {"supply: pack\n    d", "supply: pack\n    leave_out: [palm]\n    d", "hand.yaml:14:17: ", "the name of a body: tip, phalanx, knuckle"},
      {"supply: pack\n    d", "supply: pack\n    leave_out: [phalanx]\n    d", "hand.yaml:14:17: ", "the body 'tip' needs it"},
      {"supply: pack\n    d", "supply: pack\n    leave_out: [knuckle]\n    d", "hand.yaml:14:17: ", "the body 'phalanx' needs it"},
      {"currency: crown", "currency: ducat", "hand.yaml:10:12: ", "prices are in 'crown'"},
      {"  palm: {f", "  index.palm: {f", "hand.yaml:7:3: ", "the name is not allowed"},
      {"model: model.yaml\n    at: [10 mm, 0 mm, 0 mm]", "at: [10 mm, 0 mm, 0 mm]", "hand.yaml:20:3: ", "fingers.middle.model is missing"},
  }));
  const std::string said = message(changed(wrong.old_text, wrong.new_text));
  CAPTURE(wrong.new_text);
  CHECK_THAT(said, StartsWith(wrong.place) && Contains(wrong.phrase));
}

TEST_CASE("fingers: parts of one name that differ are refused, the same ones are one") {
  good_files::Texts texts = with_hand();
  const auto add_surface = [&](const std::string& file, const std::string& modulus) {
    for (auto& [name, text] : texts)
      if (name == file) text += "surfaces:\n  gel: {modulus: " + modulus + ", poisson: 0.4, damping: 1 s/m, source: invented}\n";
  };
  add_surface("model.yaml", "1 MPa");
  reading::Source same(texts);
  CHECK(reading::read_model(same, "hand.yaml").surfaces.size() == surfaces_of_finger() + 1);
  add_surface("hand.yaml", "2 MPa");
  reading::Source different(texts);
  CHECK_THROWS_WITH(reading::read_model(different, "hand.yaml"), Contains("surfaces.gel is a surface that exists already"));
}
