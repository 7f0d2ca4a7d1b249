// Broken files, each made from a good one by one change. The place where the message must point is marked
// with "@@" in the new text; the mark is taken out before the file is read.

#include <algorithm>

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include "good_files.h"
#include "reading/reading.h"

using namespace sinewright;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

namespace {

struct Break {
  const char* file;
  const char* old_text;
  const char* new_text;
  const char* what;    // the first line after the place begins with this
  const char* phrase;  // stands somewhere in the message
};

const std::string kMark = "@@";

struct Broken {
  good_files::Texts texts;
  std::string place;
};

Broken broken(const Break& change) {
  Broken made{good_files::all(), ""};
  for (auto& [name, text] : made.texts) {
    if (name != change.file) continue;
    const std::string old_text = change.old_text;
    const std::size_t at = text.find(old_text);
    REQUIRE(at != std::string::npos);
    REQUIRE(text.find(old_text, at + 1) == std::string::npos);
    text.replace(at, old_text.size(), change.new_text);
    const std::size_t mark = text.find(kMark);
    if (mark == std::string::npos) {
      made.place = name + ": ";
      continue;
    }
    text.erase(mark, kMark.size());
    const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(mark), '\n');
    const std::size_t before = mark == 0 ? std::string::npos : text.rfind('\n', mark - 1);
    const std::size_t begin = before == std::string::npos ? 0 : before + 1;
    // Columns count characters: bytes that continue a UTF-8 character are none.
    const auto column = 1 + std::count_if(text.begin() + static_cast<std::ptrdiff_t>(begin),
                                          text.begin() + static_cast<std::ptrdiff_t>(mark), [](char c) {
                                            return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
                                          });
    made.place = fmt::format("{}:{}:{}: ", name, line, column);
  }
  return made;
}

std::string message_of(const good_files::Texts& texts, const std::vector<std::string>& overrides = {}) {
  reading::Source source(texts);
  try {
    (void)reading::read_scenario(source, "scenario.yaml", overrides);
    (void)reading::read_limit(source, "limit.yaml");
    (void)reading::read_study(source, "study.yaml");
  } catch (const InvalidInput& error) {
    return error.what();
  }
  return "";
}

// clang-format off
const Break kBreaks[] = {
  // keys
  {"scenario.yaml", "duration: 2 s", "@@duratoin: 2 s", "duratoin is not a known key", "nearest known key is 'duration'"},
  {"scenario.yaml", "duration: 2 s", "duration: 2 s\n@@duration: 3 s", "duration stands twice", "each key once"},
  {"scenario.yaml", "sinewright: scenario\nname: scenario of the reading tests\nmodel: model.yaml\nduration: 2 s\n", "@@sinewright: scenario\nname: x\nmodel: model.yaml\n", "duration is missing", "a time, such as"},
  {"scenario.yaml", "duration: 2 s", "@@duration: ", "duration = (nothing) is not allowed", "after the ':'"},
  {"model.yaml", "in: knuckle, radius: 2 mm}", "in: knuckle, @@radus: 2 mm}", "cords.flexor.path.1.radus is not a known key", "nearest known key is 'radius'"},
  {"model.yaml", "hinge:\n      name: MCP", "@@hnige:\n      name: MCP", "bodies.phalanx.hnige is not a known key", "nearest known key is 'hinge'"},
  {"model.yaml", "knuckle: {fixed: {at: [1 mm, 2 mm, 3 mm]}, price: 0}", "knuckle: @@{}", "bodies.knuckle: a key is missing", "exactly one of: hinge, slide, fixed"},
  {"model.yaml", "knuckle: {fixed: {at: [1 mm, 2 mm, 3 mm]}, price: 0}", "knuckle: {fixed: {}, @@hinge: {}}", "bodies.knuckle.hinge is not allowed beside fixed", "exactly one of: hinge, slide, fixed"},
  {"model.yaml", "knuckle: {fixed: {at: [1 mm, 2 mm, 3 mm]}, price: 0}", "knuckle: {fixed: {}, ? @@[a] : 1}", "a list or map stands where a key belongs", "plain key"},
  {"model.yaml", "battery: {voltage", "@@big battery: {voltage", "supplies.big battery: the name is not allowed", "a letter, then letters"},
  {"model.yaml", "battery: {voltage", "@@9volt: {voltage", "supplies.9volt: the name is not allowed", "a letter, then letters"},
  {"model.yaml", "battery: {voltage", "@@a.b: {voltage", "supplies.a.b: the name is not allowed", "a letter, then letters"},
  {"parts.yaml", "sinewright: parts", "sinewright: @@scenario", "sinewright = scenario is not allowed", "this is a scenario file where a parts file is wanted"},
  {"parts.yaml", "sinewright: parts", "sinewright: @@part", "sinewright = part is not allowed", "needed: sinewright: parts"},
  {"scenario.yaml", "sinewright: scenario\n", "@@", "sinewright is missing", "sinewright: scenario"},
  // quantities
  {"scenario.yaml", "duration: 2 s", "duration: @@2", "duration = 2 is not allowed", "the unit is missing"},
  {"scenario.yaml", "duration: 2 s", "duration: @@2 m", "duration = 2 m is not allowed", "measures something else: a length"},
  {"scenario.yaml", "duration: 2 s", "duration: @@-2 s", "duration = -2 s is not allowed", "> 0"},
  {"scenario.yaml", "duration: 2 s", "duration: @@0 s", "duration = 0 s is not allowed", "> 0"},
  {"scenario.yaml", "duration: 2 s", "duration: @@.inf s", "duration = .inf s is not allowed", "begins with a number"},
  {"scenario.yaml", "duration: 2 s", "duration: @@1e999 s", "duration = 1e999 s is not allowed", "too large"},
  {"scenario.yaml", "duration: 2 s", "duration: @@2 seconds", "duration = 2 seconds is not allowed", "'seconds' is not a known unit"},
  {"scenario.yaml", "duration: 2 s", "duration: @@1,5 s", "duration = 1,5 s is not allowed", "point as decimal sign"},
  {"scenario.yaml", "duration: 2 s", "duration: @@[2 s]", "duration = (a list of 1) is not allowed", "a time"},
  {"scenario.yaml", "ambient: 25 degC", "ambient: @@25 degF", "ambient = 25 degF is not allowed", "nearest known one is 'deg"},
  {"scenario.yaml", "ambient: 25 degC", "ambient: @@-300 degC", "ambient = -300 degC is not allowed", "> 0"},
  {"scenario.yaml", "gravity: [0 m/s², -9.81 m/s², 0 m/s²]", "gravity: [0 m/s², @@-9.81, 0 m/s²]", "gravity.1 = -9.81 is not allowed", "the unit is missing"},
  {"scenario.yaml", "gravity: [0 m/s², -9.81 m/s², 0 m/s²]", "gravity: @@[0 m/s², 1 m/s²]", "gravity = (a list of 2) is not allowed", "a list of 3"},
  {"model.yaml", "viscous: 1e-6 N·m·s/rad", "viscous: @@1e-6 N·m·s", "bodies.phalanx.hinge.viscous = 1e-6 N·m·s is not allowed", "a rotary viscous coefficient"},
  {"model.yaml", "stiffness: 20 N·m/rad", "stiffness: @@20 N·m", "bodies.phalanx.hinge.stops.stiffness = 20 N·m is not allowed", "measures something else: a torque"},
  {"model.yaml", "friction: 12 %", "friction: @@-0.2", "cords.flexor.channel.friction = -0.2 is not allowed", ">= 0"},
  {"model.yaml", "friction: 12 %", "friction: @@nan", "cords.flexor.channel.friction = nan is not allowed", "infinite and undefined"},
  {"model.yaml", "lump_bends: true", "lump_bends: @@yes", "cords.return.lump_bends = yes is not allowed", "true, false"},
  {"scenario.yaml", "tolerance: 1e-4", "tolerance: @@1x", "solver.tolerance = 1x is not allowed", "'x' is not a known unit"},
  {"scenario.yaml", "tolerance: 1e-4", "tolerance: @@0.5", "solver.tolerance = 0.5 is not allowed", "up to 0.1"},
  // prices
  {"model.yaml", "price: 0.05", "price: @@-0.05", "bodies.phalanx.hinge.washers.price = -0.05 is not allowed", ">= 0"},
  {"model.yaml", "price: 1.5", "price: @@1.5 crown", "drives.flexor.pulley.price = 1.5 crown is not allowed", "'crown' is not a known unit"},
  {"parts.yaml", "price: 0.12 1/m", "price: @@0.12", "lines.braid.price = 0.12 is not allowed", "a number per length, such as \"0.12 1/m\""},
  {"parts.yaml", "price: 0.12 1/m", "price: @@0.12 m", "lines.braid.price = 0.12 m is not allowed", "measures something else: a length"},
  {"parts.yaml", "price: 0.5 1/cm³", "price: @@0.5 1/m", "materials.nylon.price = 0.5 1/m is not allowed", "a number per volume, such as \"0.4 1/cm³\""},
  {"model.yaml", "count: 4", "count: @@2.5", "bill.screw.count = 2.5 is not allowed", "a whole number"},
  {"model.yaml", "sensor: {}", "sensor: {@@cost: 3}", "bill.sensor.cost is not a known key", "one of: count, used_for, price"},
  {"model.yaml", "allowance: 60 mm", "allowance: @@-60 mm", "cords.flexor.allowance = -60 mm is not allowed", ">= 0"},
  // bushings
  {"parts.yaml", "outer_diameter: 3.5 mm", "outer_diameter: @@2 mm", "bushings.flanged.outer_diameter = 2 mm is not allowed", "outer_diameter > bore"},
  {"parts.yaml", "flange_diameter: 5.5 mm", "flange_diameter: @@3.5 mm", "bushings.flanged.flange_diameter = 3.5 mm is not allowed", "flange_diameter > outer_diameter"},
  {"parts.yaml", "material: nylon\n    price: 4.5", "material: @@brass\n    price: 4.5", "bushings.flanged.material = brass is not allowed: there is no such material", "metal"},
  {"model.yaml", "      washers:\n", "      bushings: @@flangd\n      washers:\n", "bodies.phalanx.hinge.bushings = flangd is not allowed: there is no such bushing", "nearest known bushing is 'flanged'"},
  {"model.yaml", "      at: [40 mm, 0 mm, 0 mm]\n", "      at: [40 mm, 0 mm, 0 mm]\n      bushings: @@flanged\n", "bodies.tip.hinge.bushings = flanged is not allowed", "a pin that runs in the bushings"},
  {"model.yaml", "      pin:\n        diameter: 2 mm\n", "      bushings: @@flanged\n      pin:\n        diameter: 2.1 mm\n", "bodies.phalanx.hinge.bushings = flanged is not allowed", "a bore of at least 2.1 mm"},
  {"model.yaml", "      washers:\n", "      bushings: @@flanged\n      lug: {width: 3.4 mm, edge: 3 mm}\n      washers:\n", "bodies.phalanx.hinge.bushings = flanged is not allowed", "is 3.5 mm thick outside"},
  // what parts are made of, for margins
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, price: 1.5, bore: {diameter: 3 mm, flat_depth: @@2 mm, length: 8 mm}}", "drives.flexor.pulley.bore.flat_depth = 2 mm is not allowed", "half the diameter"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, price: 1.5, bore: {diameter: @@6 mm, flat_depth: 1 mm, length: 8 mm}}", "drives.flexor.pulley.bore.diameter = 6 mm is not allowed", "radius > diameter / 2"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, wall_eccentricity: @@1.5 mm, bore: {diameter: 3 mm, flat_depth: 1 mm, length: 8 mm}}", "drives.flexor.pulley.wall_eccentricity = 1.5 mm is not allowed", "radius > diameter / 2"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, @@bore: {diameter: 3 mm, flat_depth: 1 mm}}", "drives.flexor.pulley.bore.length is missing", "engaged along the shaft"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, knot_seat: {knot: @@0.7 mm, hole: 0.7 mm, wall: 1 mm}}", "drives.flexor.pulley.knot_seat.knot = 0.7 mm is not allowed", "slips through"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, knot_seat: {knot: 1.2 mm, hole: 0.7 mm, wall: 1 mm, edge: @@0.3 mm}}", "drives.flexor.pulley.knot_seat.edge = 0.3 mm is not allowed", "cuts the edge"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, knot_seat: {knot: 1.2 mm, hole: 0.7 mm, wall: 1 mm, material: @@nylno}}", "drives.flexor.pulley.knot_seat.material = nylno is not allowed", "nearest known material is 'nylon'"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, layers: @@diagonal}", "drives.flexor.pulley.layers = diagonal is not allowed", "along, across"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, material: @@nylno}", "drives.flexor.pulley.material = nylno is not allowed", "nearest known material is 'nylon'"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, collar: {outer_diameter: @@3 mm, inner_diameter: 3 mm, torque: 1 mN·m}}", "drives.flexor.pulley.collar.outer_diameter = 3 mm is not allowed", "outer_diameter > inner_diameter"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, flange: {thickness: 1 mm, height: 1 mm, width: 3 mm, fleet_angle: @@0 deg}}", "drives.flexor.pulley.flange.fleet_angle = 0 deg is not allowed", "above 0 deg"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, price: 1.5}, touch: {surface: @@wood, time: 1 s}", "drives.flexor.touch.surface = wood is not allowed", "metal, plastic"},
  // sensing
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: @@{period: 1 ms}", "drives.flexor.sensor: a key is missing", "potentiometer, encoder"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10}, @@encoder: {bits: 12}, period: 1 ms}", "drives.flexor.sensor.encoder is not allowed beside potentiometer", "exactly one of"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {@@encodr: {bits: 12}, period: 1 ms}", "drives.flexor.sensor.encodr is not a known key", "nearest known key is 'encoder'"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, @@sensor: {encoder: {bits: 12}}", "drives.flexor.sensor.period is missing", "between two samples"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12}, period: @@1 ns}", "drives.flexor.sensor.period = 1 ns is not allowed", "at least 1 µs"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12, @@counts_per_turn: 12}, period: 1 ms}", "drives.flexor.sensor.encoder.counts_per_turn is not allowed beside bits", "exactly one of"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: @@25}, period: 1 ms}", "drives.flexor.sensor.encoder.bits = 25 is not allowed", "from 1 to 24"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {counts_per_turn: @@0}, period: 1 ms}", "drives.flexor.sensor.encoder.counts_per_turn = 0 is not allowed", "from 1"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12, at_zero: @@361 deg}, period: 1 ms}", "drives.flexor.sensor.encoder.at_zero = 361 deg is not allowed", "below 360 deg"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12}, seat: @@pulley, period: 1 ms}", "drives.flexor.sensor.seat = pulley is not allowed", "shaft, rotor"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12}, power: @@sometimes, period: 1 ms}", "drives.flexor.sensor.power = sometimes is not allowed", "always, with_drive"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12}, turns: @@0, period: 1 ms}", "drives.flexor.sensor.turns = 0 is not allowed", "> 0"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12}, fit: {backlash: @@1 mm}, period: 1 ms}", "drives.flexor.sensor.fit.backlash = 1 mm is not allowed", "an angle"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {encoder: {bits: 12}, fit: {torsional_stiffness: @@0 N·m/rad}, period: 1 ms}", "drives.flexor.sensor.fit.torsional_stiffness = 0 N·m/rad is not allowed", "> 0"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: @@0 deg, feed: 3.3 V, bits: 10}, period: 1 ms}", "drives.flexor.sensor.potentiometer.range = 0 deg is not allowed", "> 0"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {@@potentiometer: {range: 300 deg, bits: 10}, period: 1 ms}", "drives.flexor.sensor.potentiometer.feed is missing", "voltage over the track"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, at_zero: @@301 deg}, period: 1 ms}", "drives.flexor.sensor.potentiometer.at_zero = 301 deg is not allowed", "at most the range"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, dead_band: @@0 deg}, period: 1 ms}", "drives.flexor.sensor.potentiometer.dead_band = 0 deg is not allowed", "> 0"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {@@potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, load: 100 kOhm}, period: 1 ms}", "drives.flexor.sensor.potentiometer.resistance is missing", "because a load is given"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, reference: @@3 A}, period: 1 ms}", "drives.flexor.sensor.potentiometer.reference = 3 A is not allowed", "a voltage"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, noise: {rms: @@1 mA}}, period: 1 ms}", "drives.flexor.sensor.potentiometer.noise.rms = 1 mA is not allowed", "a voltage"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, ripple: {amplitude: 1 mV, frequency: @@100 rpm}}, period: 1 ms}", "drives.flexor.sensor.potentiometer.ripple.frequency = 100 rpm is not allowed", "a frequency"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, linearity: @@{waves: 2}}, period: 1 ms}", "drives.flexor.sensor.potentiometer.linearity: a key is missing", "error, table"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, linearity: {error: @@60 %}}, period: 1 ms}", "drives.flexor.sensor.potentiometer.linearity.error = 60 % is not allowed", "from -50 %"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, sensor: {potentiometer: {range: 300 deg, feed: 3.3 V, bits: 10, linearity: {table: [[0 %, 1 %], [@@0 %, 2 %]]}}, period: 1 ms}", "drives.flexor.sensor.potentiometer.linearity.table.1.0 = 0 % is not allowed", "above the one before"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm, collar: {outer_diameter: 4 mm, inner_diameter: 3 mm, torque: 1 mN·m}}, sensor: {encoder: {bits: 12}, fit: {friction_torque: @@2 mN·m}, period: 1 ms}", "drives.flexor.sensor.fit.friction_torque = 2 mN·m is not allowed", "pulley.collar.torque"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, current_sense: {range: [0 A, @@0 A], bits: 10, period: 1 ms}", "drives.flexor.current_sense.range.1 = 0 A is not allowed", "above the lowest"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, current_sense: {range: @@[1 A], bits: 10, period: 1 ms}", "drives.flexor.current_sense.range", "lowest, highest"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, current_sense: {range: [0 A, 1 A], bits: 10, period: 1 ms, gain_error: @@-1}", "drives.flexor.current_sense.gain_error = -1 is not allowed", "from -90 %"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, current_sense: {range: [0 A, 1 A], bits: 10, period: 1 ms, time_constant: @@-1 ms}", "drives.flexor.current_sense.time_constant = -1 ms is not allowed", ">= 0"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, current_sense: {range: [0 A, 1 A], bits: 10, period: 1 ms, noise: {rms: 1 mA, seed: @@-1}}", "drives.flexor.current_sense.noise.seed = -1 is not allowed", "from 0"},
  {"model.yaml", "pulley: {radius: 3 mm, price: 1.5}", "pulley: {radius: 3 mm}, current_sense: {range: [0 A, 1 A], @@bit: 10, period: 1 ms}", "drives.flexor.current_sense.bit is not a known key", "nearest known key is 'bits'"},
  {"model.yaml", "slack: 0.5 mm", "slack: 0.5 mm\n    knot: {name: stopper, efficiency: @@1.2}", "cords.flexor.knot.efficiency = 1.2 is not allowed", "above 0, up to 1"},
  {"model.yaml", "{anchor: [10 mm, -3 mm, 0 mm], in: tip}", "{anchor: [10 mm, -3 mm, 0 mm], in: tip, seat: {knot: 1 mm, hole: 0.6 mm, wall: 1 mm, material: @@stone}}", "cords.flexor.path.3.seat.material = stone is not allowed", "the name of a material"},
  {"model.yaml", "radial_clearance: 0.05 mm", "radial_clearance: 0.05 mm\n        eye_width: @@0 mm", "bodies.phalanx.hinge.pin.eye_width = 0 mm is not allowed", "> 0"},
  {"model.yaml", "washers:\n        inner_diameter", "lug: {width: @@2.05 mm, edge: 4 mm}\n      washers:\n        inner_diameter", "bodies.phalanx.hinge.lug.width = 2.05 mm is not allowed", "the pin's diameter and clearance"},
  {"model.yaml", "washers:\n        inner_diameter", "lug: {width: 8 mm, edge: @@1 mm}\n      washers:\n        inner_diameter", "bodies.phalanx.hinge.lug.edge = 1 mm is not allowed", "half the pin's diameter"},
  {"model.yaml", "at: [40 mm, 0 mm, 0 mm]", "at: [40 mm, 0 mm, 0 mm]\n      lug: @@{width: 8 mm, edge: 4 mm}", "bodies.tip.hinge.lug = (a map) is not allowed", "a pin that goes through"},
  {"model.yaml", "preload: 1 N", "preload: 1 N\n        material: @@nylno", "bodies.phalanx.hinge.washers.material = nylno is not allowed", "nearest known material is 'nylon'"},
  {"parts.yaml", "nylon: {density", "@@nylon: {strength_across: 40 MPa, density", "materials.nylon.strength is missing", "the one across them is given"},
  {"parts.yaml", "nylon: {density", "nylon: {strength: @@48 N, density", "materials.nylon.strength = 48 N is not allowed", "measures something else"},
  {"parts.yaml", "braid: {diameter: 0.5 mm", "braid: {breaking_force: @@20 kg, diameter: 0.5 mm", "lines.braid.breaking_force = 20 kg is not allowed", "measures something else"},
  {"parts.yaml", "gum:\n    diameter: 2 mm", "gum:\n    breaking_stretch: @@1\n    diameter: 2 mm", "lines.gum.breaking_stretch = 1 is not allowed", "> 1"},
  // packing
  {"parts.yaml", "diameter: 12 mm, flats: 10 mm", "diameter: 12 mm, flats: @@12.5 mm", "motors.micro.outline.flats = 12.5 mm is not allowed", "at most the diameter"},
  {"parts.yaml", "diameter: 12 mm, flats: 10 mm", "diameter: 12 mm, @@height: 10 mm", "motors.micro.outline.height is not allowed beside diameter", "'flats' of a can"},
  {"parts.yaml", "{length: 9 mm, width: 12 mm}", "{length: 9 mm, width: 12 mm, @@flats: 10 mm}", "gearheads.train.outline.flats is not allowed beside width", "'height' of a block"},
  {"parts.yaml", "{length: 9 mm, width: 12 mm}", "@@{length: 9 mm}", "gearheads.train.outline: a key is missing", "exactly one of: width, diameter"},
  {"parts.yaml", "{length: 9 mm, width: 12 mm}", "{length: @@0 mm, width: 12 mm}", "gearheads.train.outline.length = 0 mm is not allowed", "> 0"},
  {"model.yaml", "up: [1, 0, 1]", "up: @@[0, 0, -1]", "drives.flexor.shaft.up = (a list of 3) is not allowed", "away from the axis"},
  {"model.yaml", "shaft: {at: [-30 mm, -2.75 mm, 0 mm], axis: [0, 0, 3], up: [1, 0, 1]}", "@@shaft: {at: [-30 mm, -2.75 mm, 0 mm]}", "drives.flexor.shaft.axis is missing", "towards gearhead and motor"},
  {"model.yaml", "flexor: {body: knuckle, shaft: {at: [-30 mm, -2.75 mm, 0 mm], axis: [0, 0, 3], up: [1, 0, 1]}", "@@flexor: {body: knuckle, occupies: {board: {sphere: {radius: 1 mm}}}", "drives.flexor.shaft is missing", "because 'occupies' counts from there"},
  {"model.yaml", "inside: [], supply", "inside: [], occupies: {@@motor: {sphere: {radius: 1 mm}}}, supply", "drives.flexor.occupies.motor has the name of a part of every drive", "'outline'"},
  {"model.yaml", "inside: [], supply", "inside: [@@plam], supply", "drives.flexor.inside.0 = plam is not allowed: there is no such body", "the name of a body: knuckle, phalanx, tip"},
  {"model.yaml", "weight: {sphere: {radius: 2 mm}", "@@print: {sphere: {radius: 2 mm}", "bodies.tip.occupies.print has the name of the body's own solids", "another name"},
  {"model.yaml", "weight: {sphere: {radius: 2 mm}, inside: [phalanx]}", "weight: @@{inside: [phalanx]}", "bodies.tip.occupies.weight: a key is missing", "exactly one of: sphere, capsule, cylinder, box, hull, stl"},
  {"model.yaml", "clearance: 0.3 mm", "clearance: @@-0.3 mm", "packing.clearance = -0.3 mm is not allowed", ">= 0"},
  {"model.yaml", "[bodies.tip.weight, drives.flexor.motor]", "@@[bodies.tip.weight]", "packing.may_touch.0 = (a list of 1) is not allowed", "a list of 2 parts"},
  {"model.yaml", "[bodies.tip.weight, drives.flexor.motor]", "[@@flexor, drives.flexor.motor]", "packing.may_touch.0.0 = flexor is not allowed", "a drive and its cord may have the same"},
  {"model.yaml", "[bodies.tip.weight, drives.flexor.motor]", "[@@bodies.top, drives.flexor.motor]", "packing.may_touch.0.0 = bodies.top is not allowed: there is no such body", "the nearest known body is 'bodies.tip'"},
  {"model.yaml", "[bodies.tip.weight, drives.flexor.motor]", "[bodies.tip.weight, @@drives.flexor.moter]", "packing.may_touch.0.1 = drives.flexor.moter is not allowed: there is no such part", "the nearest known part is 'drives.flexor.motor'"},
  {"model.yaml", "[cords.return, bodies.knuckle.print]", "[@@cords.return.end, bodies.knuckle.print]", "packing.may_touch.1.0 = cords.return.end is not allowed", "a cord has no parts"},
  {"model.yaml", "palm: [phalanx, knuckle]", "palm: @@[]", "packing.palm = (a list of 0) is not allowed", "a list of bodies"},
  {"model.yaml", "wrist: -80 mm", "wrist: @@-80", "packing.wrist = -80 is not allowed", "the unit is missing"},
  // conditions within a map
  {"model.yaml", "friction: {static: 0.2, kinetic: 0.16}", "friction: {static: @@0.1, kinetic: 0.16}", "bodies.phalanx.hinge.pin.friction.static = 0.1 is not allowed", "static >= kinetic"},
  {"model.yaml", "outer_diameter: 5 mm", "outer_diameter: @@2 mm", "bodies.phalanx.hinge.washers.outer_diameter = 2 mm is not allowed", "outer_diameter > inner_diameter"},
  {"model.yaml", "inner_diameter: 2.2 mm", "inner_diameter: @@1.8 mm", "bodies.phalanx.hinge.washers.inner_diameter = 1.8 mm is not allowed", "diameter of the pin"},
  {"model.yaml", "law: uniform_pressure", "law: @@even", "bodies.phalanx.hinge.washers.law = even is not allowed", "one of: uniform_wear, uniform_pressure"},
  {"model.yaml", "range: [-1 mm, 14 mm]", "range: [-1 mm, @@-2 mm]", "bodies.yoke.slide.stops.range.1 = -2 mm is not allowed", "above the lower one"},
  {"model.yaml", "range: [-1 mm, 14 mm]", "range: [-1 mm, @@14 deg]", "bodies.yoke.slide.stops.range.1 = 14 deg is not allowed", "a length"},
  {"model.yaml", "axis: [-2, 0, 0]", "axis: @@[0, 0, 0]", "bodies.yoke.slide.axis = (a list of 3) is not allowed", "not all zero"},
  {"model.yaml", "static: 0.26", "static: @@0.1", "bodies.yoke.slide.slideway.friction.static = 0.1 is not allowed", "static >= kinetic"},
  {"model.yaml", "viscous: 0.02 N·s/m", "viscous: @@0.02 N·m·s/rad", "bodies.yoke.slide.viscous = 0.02 N·m·s/rad is not allowed", "measures something else"},
  {"model.yaml", "name: DRAW\n      parent: tip", "name: DRAW\n      parent: @@knukle", "bodies.yoke.slide.parent = knukle is not allowed", "nearest known body is 'knuckle'"},
  {"model.yaml", "name: DRAW", "name: @@MCP", "bodies.yoke.slide.name = MCP is not allowed", "a joint name of its own"},
  {"model.yaml", "  yoke:\n    slide:\n      name: DRAW\n      parent: tip\n      at: [-20 mm, -5 mm, 0 mm]\n      axis: [-2, 0, 0]\n      turned: {by: 6 deg}\n      slideway: {friction: {static: 0.26, kinetic: 0.18}, length: 12 mm, preload: 0.4 N}\n      stops: {range: [-1 mm, 14 mm], stiffness: 20 N/mm, damping: 5 s/m}\n      viscous: 0.02 N·s/m\n      spring: {stiffness: 30 N/m, rest: 2.5 mm}\n    mass: {mass: 3 g, inertia: [1 g·cm², 1 g·cm², 1 g·cm²]}\n", "  @@yoke:\n    slide:\n      name: DRAW\n      parent: tip\n      at: [-20 mm, -5 mm, 0 mm]\n      axis: [-2, 0, 0]\n      turned: {by: 6 deg}\n      slideway: {friction: {static: 0.26, kinetic: 0.18}, length: 12 mm, preload: 0.4 N}\n      stops: {range: [-1 mm, 14 mm], stiffness: 20 N/mm, damping: 5 s/m}\n      viscous: 0.02 N·s/m\n      spring: {stiffness: 30 N/m, rest: 2.5 mm}\n", "bodies.yoke.mass is missing", "a sliding body has 'mass'"},
  {"model.yaml", "range: [-5 deg, 90 deg]", "range: [90 deg, @@-5 deg]", "bodies.phalanx.hinge.stops.range.1 = -5 deg is not allowed", "above the lower one"},
  {"model.yaml", "pin_axis: [0, 0, 2]", "pin_axis: @@[0, 0, 0]", "bodies.phalanx.hinge.pin_axis = (a list of 3) is not allowed", "not all zero"},
  {"model.yaml", "mass: 5 g", "mass: @@0 g", "bodies.tip.mass.mass = 0 g is not allowed", "> 0"},
  {"model.yaml", "inertia: [1 g·cm², 2 g·cm², 2 g·cm²]", "inertia: @@[1 g·cm², 2 g·cm², 4 g·cm²]", "bodies.tip.mass.inertia = (a list of 3) is not allowed", "sum of the other two"},
  {"model.yaml", "inertia: [1 g·cm², 2 g·cm², 2 g·cm²]", "inertia: @@[1 g·cm², 2 g·cm², 2 g·cm², 5 g·cm², 0 g·cm², 0 g·cm²]", "bodies.tip.mass.inertia = (a list of 6) is not allowed", "principal moments > 0"},
  {"model.yaml", "inertia: [1 g·cm², 2 g·cm², 2 g·cm²]", "inertia: @@[1 g·cm², 2 g·cm², 2 g·cm², 0 g·cm²]", "bodies.tip.mass.inertia = (a list of 4) is not allowed", "3"},
  {"model.yaml", "    mass: {mass: 5 g", "    solids: @@[]\n    mass: {mass: 5 g", "bodies.tip.solids = (a list of 0) is not allowed", "a list of solids"},
  {"model.yaml", "  tip:\n    hinge:\n      name: PIP\n      parent: phalanx\n      at: [40 mm, 0 mm, 0 mm]\n    mass: {mass: 5 g, center: [10 mm, 0 mm, 0 mm], inertia: [1 g·cm², 2 g·cm², 2 g·cm²]}\n", "  @@tip:\n    hinge:\n      name: PIP\n      parent: phalanx\n      at: [40 mm, 0 mm, 0 mm]\n", "bodies.tip.mass is missing", "'mass', or 'solids', or both"},
  {"model.yaml", "to: [40 mm, 0 mm, 0 mm], radius: 7 mm}, material", "to: @@[0 mm, 0 mm, 0 mm], radius: 7 mm}, material", "bodies.phalanx.solids.0.capsule.to = (a list of 3) is not allowed", "a sphere"},
  {"model.yaml", "points: [[0 mm, 0 mm, 0 mm], [1 mm, 0 mm, 0 mm], [0 mm, 1 mm, 0 mm], [0 mm, 0 mm, 1 mm]]", "points: @@[[0 mm, 0 mm, 0 mm], [1 mm, 0 mm, 0 mm], [0 mm, 1 mm, 0 mm], [3 mm, 2 mm, 0 mm]]", "bodies.phalanx.solids.1.hull.points = (a list of 4) is not allowed", "in one plane"},
  {"model.yaml", "material: nylon}", "material: nylon, @@density: 1 g/cm³}", "bodies.phalanx.solids.0.density is not allowed beside material", "exactly one of"},
  {"model.yaml", "slack: 0.5 mm", "pretension: 1 N\n    slack: @@0.5 mm", "cords.flexor.slack = 0.5 mm is not allowed", "not both"},
  {"model.yaml", "    channel:\n      friction: 12 %\n      static_ratio: 1.1\n      load_exponent: 0.8\n      reference_line_load: 2 N/mm\n", "    @@channel:\n      friction: 12 %\n      load_exponent: 0.8\n", "cords.flexor.channel.reference_line_load is missing", "because load_exponent is not 1"},
  {"model.yaml", "highest: 0.4", "highest: @@0.05", "cords.flexor.channel.highest = 0.05 is not allowed", "highest >= friction"},
  {"model.yaml", "static_ratio: 1.1", "static_ratio: @@0.9", "cords.flexor.channel.static_ratio = 0.9 is not allowed", ">= 1"},
  {"model.yaml", "side: [0, 1, 0]", "side: @@[0, 0, 1]", "cords.return.path.1.side = (a list of 3) is not allowed", "away from the axis"},
  {"parts.yaml", "forward_efficiency: 0.6", "forward_efficiency: @@60", "gearheads.train.forward_efficiency = 60 is not allowed", "above 0, up to 1"},
  {"parts.yaml", "backward_efficiency: 0.5", "backward_efficiency: @@-0.5", "gearheads.train.backward_efficiency = -0.5 is not allowed", "from 0 to 1"},
  {"parts.yaml", "  train:\n    ratio: 100\n    forward_efficiency: 0.6\n    backward_efficiency: 0.5\n    backlash: 2 deg\n    torsional_stiffness: 5 N·m/rad\n", "  @@train:\n    ratio: 100\n    forward_efficiency: 0.6\n    backward_efficiency: 0.5\n    backlash: 2 deg\n", "gearheads.train.torsional_stiffness is missing", "because backlash is given"},
  {"parts.yaml", "static_drag: 0.08 mN·m", "static_drag: @@0.01 mN·m", "motors.micro.static_drag = 0.01 mN·m is not allowed", "static_drag >= kinetic_drag"},
  {"parts.yaml", "nylon: {density: 0.93 g/cm³, modulus: 1700 MPa, poisson: 0.4, price: 0.5 1/cm³, source: invented}", "@@nylon: {density: 0.93 g/cm³, modulus: 1700 MPa, poisson: 0.4}", "materials.nylon.source is missing", "where the numbers come from"},
  {"parts.yaml", "poisson: 0.49", "poisson: @@0.5", "surfaces.pad.poisson = 0.5 is not allowed", "below 0.5"},
  {"parts.yaml", "[1, 0 N]", "@@[1, 1 N]", "lines.measured.table.0 = (a list of 2) is not allowed", "first row"},
  {"parts.yaml", "[2, 5 N]", "[@@1.2, 5 N]", "lines.measured.table.2.0 = 1.2 is not allowed", "rising"},
  {"parts.yaml", "[2, 5 N]", "[2, @@1 N]", "lines.measured.table.2.1 = 1 N is not allowed", "rising"},
  {"parts.yaml", "exponent: 2}", "exponent: @@-2}", "lines.gum.rubber.terms.0.exponent = -2 is not allowed", "modulus × exponent > 0"},
  {"parts.yaml", "braid: {diameter: 0.5 mm, axial_stiffness: 4 kN, ", "braid: @@{diameter: 0.5 mm, ", "lines.braid: a key is missing", "exactly one of: axial_stiffness, rubber, table"},
  // fits
  {"model.yaml", "          pin: m6", "          pin: @@m7", "bodies.phalanx.hinge.pin.fit.pin = m7 is not allowed", "one of: h5, h6, h7, h8, h9, h10, h11, g6, f8, m6, p6"},
  {"model.yaml", "          pin: m6", "          pin: @@H7", "bodies.phalanx.hinge.pin.fit.pin = H7 is not allowed", "one of: h5"},
  {"model.yaml", "          pin: m6", "          pin: @@2.005 mm", "bodies.phalanx.hinge.pin.fit.pin = 2.005 mm is not allowed", "a size alone has no tolerance"},
  {"model.yaml", "          pin: m6", "          pin: @@[2.005 mm]", "bodies.phalanx.hinge.pin.fit.pin = (a list of 1) is not allowed", "smallest, largest"},
  {"model.yaml", "hole: [1.97 mm, 1.98 mm]", "hole: @@h7", "bodies.phalanx.hinge.pin.fit.press.hole = h7 is not allowed", "one of: H5, H6, H7, H8, H9, H10, H11, F8"},
  {"model.yaml", "hole: [1.97 mm, 1.98 mm]", "hole: [1.98 mm, @@1.97 mm]", "bodies.phalanx.hinge.pin.fit.press.hole.1 = 1.97 mm is not allowed", "at or above the smallest"},
  {"model.yaml", "hole: [1.97 mm, 1.98 mm]", "hole: @@[19.7 mm, 19.8 mm]", "bodies.phalanx.hinge.pin.fit.press.hole = (a list of 2) is not allowed", "half and one and a half of the pin's diameter"},
  {"model.yaml", "hole: [1.97 mm, 1.98 mm]", "hole: {nominal: 2 mm, deviations: [0.1 mm, @@-0.3 mm]}", "bodies.phalanx.hinge.pin.fit.press.hole.deviations.1 = -0.3 mm is not allowed", "at or above the lower one"},
  {"model.yaml", "{nominal: 2.05 mm, plus_minus: 0.02 mm}", "@@{nominal: 2.05 mm}", "bodies.phalanx.hinge.pin.fit.running_hole: a key is missing", "exactly one of: plus_minus, deviations"},
  {"model.yaml", "{nominal: 2.05 mm, plus_minus: 0.02 mm}", "{nominal: 2.05 mm, plus_minus: @@3 mm}", "bodies.phalanx.hinge.pin.fit.running_hole.plus_minus = 3 mm is not allowed", "leaves a size above 0"},
  {"model.yaml", "{nominal: 2.05 mm, plus_minus: 0.02 mm}", "{nominal: 2.05 mm, plus_minus: @@-0.02 mm}", "bodies.phalanx.hinge.pin.fit.running_hole.plus_minus = -0.02 mm is not allowed", ">= 0"},
  {"model.yaml", "hub_diameter: 6 mm", "hub_diameter: @@2 mm", "bodies.phalanx.hinge.pin.fit.press.hub_diameter = 2 mm is not allowed", "above the pin's diameter"},
  {"model.yaml", "hub_material: nylon", "hub_material: @@nilon", "bodies.phalanx.hinge.pin.fit.press.hub_material = nilon is not allowed: there is no such material", "nearest known material is 'nylon'"},
  {"model.yaml", "pin_material: metal", "pin_material: @@steel", "bodies.phalanx.hinge.pin.fit.press.pin_material = steel is not allowed: there is no such material", "metal"},
  {"model.yaml", "remaining_share: 50 %", "remaining_share: @@0", "bodies.phalanx.hinge.pin.fit.press.remaining_share = 0 is not allowed", "above 0, up to 1"},
  {"model.yaml", "temperature: [5 degC, 40 degC]", "temperature: [40 degC, @@5 degC]", "bodies.phalanx.hinge.pin.fit.press.temperature.1 = 5 degC is not allowed", "at or above the lowest"},
  {"model.yaml", "friction: {static: 0.3, kinetic: 0.15}", "friction: {static: @@0.1, kinetic: 0.15}", "bodies.phalanx.hinge.pin.fit.press.friction.static = 0.1 is not allowed", "static >= kinetic"},
  {"model.yaml", "diameter: 2 mm\n        friction: {static: 0.2, kinetic: 0.16}\n        bearing_span: 7 mm\n        radial_clearance: 0.05 mm\n        fit:\n          pin: m6", "diameter: 12 mm\n        friction: {static: 0.2, kinetic: 0.16}\n        bearing_span: 7 mm\n        radial_clearance: 0.05 mm\n        fit:\n          pin: @@m6", "bodies.phalanx.hinge.pin.fit.pin = m6 is not allowed", "up to a nominal size of 10 mm"},
  {"model.yaml", "        fit:\n          pin: m6\n          running_hole: {nominal: 2.05 mm, plus_minus: 0.02 mm}\n          press:\n            hole: [1.97 mm, 1.98 mm]\n            length: 3 mm\n            hub_diameter: 6 mm\n            hub_material: nylon\n            pin_material: metal\n            friction: {static: 0.3, kinetic: 0.15}\n            remaining_share: 50 %\n            layers: across\n            hub_strength: 42 MPa\n            temperature: [5 degC, 40 degC]\n", "        @@fit:\n          pin: m6\n", "bodies.phalanx.hinge.pin.fit.running_hole is missing", "a pin alone is no fit"},
  // names of other parts
  {"model.yaml", "line: braid", "line: @@brade", "cords.flexor.line = brade is not allowed: there is no such line", "nearest known line is 'braid'"},
  {"model.yaml", "in: tip}", "in: @@top}", "cords.flexor.path.3.in = top is not allowed: there is no such body", "nearest known body is 'tip'"},
  {"model.yaml", "parent: phalanx", "parent: @@phalnx", "bodies.tip.hinge.parent = phalnx is not allowed", "nearest known body is 'phalanx'"},
  {"model.yaml", "parent: phalanx", "parent: @@tip", "bodies.tip.hinge.parent = tip is not allowed", "go round in a circle"},
  {"model.yaml", "name: PIP", "name: @@MCP", "bodies.tip.hinge.name = MCP is not allowed", "a joint name of its own"},
  {"model.yaml", "radius: 7 mm}, surface: pad}\n      block", "radius: 7 mm}, surface: @@pads}\n      block", "bodies.tip.shapes.ball.surface = pads is not allowed", "nearest known surface is 'pad'"},
  {"model.yaml", "motor: micro,", "motor: @@mikro,", "drives.flexor.motor = mikro is not allowed", "nearest known motor is 'micro'"},
  {"model.yaml", "gearhead: train,", "gearhead: @@tain,", "drives.flexor.gearhead = tain is not allowed", "nearest known gearhead is 'train'"},
  {"model.yaml", "supply: battery", "supply: @@batery", "drives.flexor.supply = batery is not allowed", "nearest known supply is 'battery'"},
  {"model.yaml", "body: knuckle", "body: @@palm", "drives.flexor.body = palm is not allowed", "the name of a body: knuckle, phalanx, tip"},
  {"model.yaml", "pulley: flexor, at", "pulley: @@flexr, at", "cords.flexor.path.0.pulley = flexr is not allowed", "nearest known drive is 'flexor'"},
  {"model.yaml", "material: nylon}", "material: @@nylo}", "bodies.phalanx.solids.0.material = nylo is not allowed", "nearest known material is 'nylon'"},
    {"model.yaml", "use: [parts.yaml]", "use: [parts.yaml, @@./parts.yaml]", "use.1 = ./parts.yaml is not allowed", "each parts file once"},
  {"model.yaml", "supplies:", "materials:\n  @@nylon: {density: 1 g/cm³, modulus: 1 GPa, poisson: 0.4, source: invented}\nsupplies:", "materials.nylon is a material that exists already", "parts.yaml:4"},
  {"parts.yaml", "between: [pad, shell]", "between: [pad, @@shel]", "friction_pairs.pad_on_shell.between.1 = shel is not allowed", "nearest known surface is 'shell'"},
  {"parts.yaml", "lines:", "  @@again: {between: [shell, pad], friction: 0.5, source: invented}\nlines:", "friction_pairs.again gives the friction between shell and pad a second time", "pad_on_shell"},
  // cord paths
  {"model.yaml", "      - {pulley: flexor, at: [-30 mm, -6 mm, 0 mm]}\n      - {bend", "      - @@{bend", "cords.flexor.path.0 = (a map) is not allowed", "a pulley or an anchor at the start"},
  {"model.yaml", "- {anchor: [10 mm, -3 mm, 0 mm], in: tip}", "- @@{bend: [10 mm, -3 mm, 0 mm], in: tip}", "cords.flexor.path.3 = (a map) is not allowed", "an anchor at the end"},
  {"model.yaml", "- {bend: [-8 mm, -8 mm, 0 mm], in: knuckle, radius: 2 mm}", "- @@{anchor: [-8 mm, -8 mm, 0 mm], in: knuckle}", "cords.flexor.path.1 = (a map) is not allowed", "only at an end"},
  {"model.yaml", "- {bend: [-8 mm, -8 mm, 0 mm], in: knuckle, radius: 2 mm}", "- @@{pulley: flexor, at: [0 mm, 0 mm, 0 mm]}", "cords.flexor.path.1 = (a map) is not allowed", "only at the start"},
  {"model.yaml", "- {bend: [-8 mm, -8 mm, 0 mm], in: knuckle, radius: 2 mm}", "- {bend: [-8 mm, -8 mm, 0 mm], @@guide: [0 mm, 0 mm, 0 mm], in: knuckle}", "cords.flexor.path.1.guide is not allowed", "exactly one of: pulley, bend, guide, anchor"},
  {"model.yaml", "- {bend: [-8 mm, -8 mm, 0 mm], in: knuckle, radius: 2 mm}", "- @@{bned: [-8 mm, -8 mm, 0 mm], in: knuckle, radius: 2 mm}", "cords.flexor.path.1: a key is missing", "is 'bned' meant to be 'bend'?"},
  {"model.yaml", "- {bend: [-8 mm, -8 mm, 0 mm], in: knuckle, radius: 2 mm}", "- @@{bend: [-30 mm, -6 mm, 0 mm], in: knuckle, radius: 2 mm}", "cords.flexor.path.1 = (a map) is not allowed", "the two points coincide"},
  {"model.yaml", "      - {anchor: [20 mm, 4 mm, 0 mm], in: phalanx}", "      - @@{guide: [5 mm, 0 mm, 0 mm], in: phalanx, radius: 5 mm, side: [0, 1, 0]}\n      - {anchor: [20 mm, 4 mm, 0 mm], in: phalanx}", "cords.return.path.2 = (a map) is not allowed", "between two guides"},
  {"model.yaml", "- {anchor: [-20 mm, 4 mm, 0 mm], in: knuckle}", "- {pulley: @@flexor, at: [-20 mm, 4 mm, 0 mm]}", "cords.return.path.0.pulley = flexor is not allowed", "the cord 'flexor' is wound on it already"},
  {"model.yaml", "    path:\n      - {anchor: [-20 mm, 4 mm, 0 mm], in: knuckle}\n      - {guide: [0 mm, 0 mm, 0 mm], in: knuckle, axis: [0, 0, 1], radius: 5 mm, side: [0, 1, 0]}\n      - {anchor: [20 mm, 4 mm, 0 mm], in: phalanx}\n", "    path:\n      @@- {anchor: [-20 mm, 4 mm, 0 mm], in: knuckle}\n", "cords.return.path = (a list of 1) is not allowed", "2 or more points"},
  // parts from STL files
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{@@stl: {file: box.stl, at", "bodies.phalanx.solids.2.stl.unit is missing", "an STL file does not say"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{@@stl: {unit: cm, at", "bodies.phalanx.solids.2.stl.file is missing", "binary or ASCII"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{stl: {file: box.stl, unit: @@1 mm, at", "bodies.phalanx.solids.2.stl.unit = 1 mm is not allowed", "one of: mm, cm, m, um, inch"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{stl: {file: box.stl, unit: @@um, at", "bodies.phalanx.solids.2.stl.unit = um is not allowed: the part would be 0.00458 mm long", "between 0.1 mm and 5 m"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{stl: {file: box.stl, unit: cm, @@scale: 2, at", "bodies.phalanx.solids.2.stl.scale is not a known key", "one of: file, unit, at, turned"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{stl: {file: @@[box.stl], unit: cm, at", "bodies.phalanx.solids.2.stl.file = (a list of 1) is not allowed", "a text"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at", "{stl: {file: @@parts.yaml, unit: cm, at", "bodies.phalanx.solids.2.stl.file = parts.yaml is not allowed: as binary STL its header announces", "no STL file"},
  {"model.yaml", "{stl: {file: box.stl, unit: cm, at: [10 mm, 0 mm, 0 mm]", "{stl: {file: box.stl, unit: cm, at: [@@10, 0 mm, 0 mm]", "bodies.phalanx.solids.2.stl.at.0 = 10 is not allowed", "the unit is missing"},
  {"scenario.yaml", "  knob:\n    at: [0 mm, -90 mm, 0 mm]\n    stl: {file: box.stl, unit: mm}", "  knob:\n    sphere: {radius: 5 mm}\n    @@stl: {file: box.stl, unit: mm}", "objects.knob.stl is not allowed beside sphere", "exactly one of"},
  // scenarios
    {"scenario.yaml", "start: {MCP: 5 deg,", "start: {@@MPC: 5 deg,", "start.MPC: there is no such joint", "nearest known joint is 'MCP'"},
  {"scenario.yaml", "start: {MCP: 5 deg", "start: {MCP: @@100 deg", "start.MCP = 100 deg is not allowed", "within the end stops, -5 deg to 90 deg"},
  {"scenario.yaml", "- {at: 0.1 s, drive: flexor, voltage: 6 V}", "- {at: @@3 s, drive: flexor, voltage: 6 V}", "timeline.1.at = 3 s is not allowed", "from 0 s to the duration, 2 s"},
  {"scenario.yaml", "- {at: 0.1 s, drive: flexor, voltage: 6 V}", "- {at: @@-1 s, drive: flexor, voltage: 6 V}", "timeline.1.at = -1 s is not allowed", ">= 0"},
  {"scenario.yaml", "- {at: 0.1 s, drive: flexor, voltage: 6 V}", "- {at: 0.1 s, drive: @@extensor, voltage: 6 V}", "timeline.1.drive = extensor is not allowed: there is no such drive", "the name of a drive: flexor"},
  {"scenario.yaml", "- {at: 0.1 s, drive: flexor, voltage: 6 V}", "- {at: 0.1 s, drive: flexor, voltage: 6 V, @@off: open}", "timeline.1.off is not allowed beside voltage", "exactly one of"},
  {"scenario.yaml", "- {at: 0.1 s, drive: flexor, voltage: 6 V}", "- {at: 0.1 s, drive: flexor, voltage: 6 V, @@gain: 1 V/rad}", "timeline.1.gain is not a known key", "one of: at, drive, voltage"},
  {"scenario.yaml", "off: shorted", "off: @@short", "timeline.0.off = short is not allowed", "one of: open, shorted"},
  {"scenario.yaml", "current_limit: none", "current_limit: @@0 A", "timeline.2.current_limit = 0 A is not allowed", "> 0"},
  {"scenario.yaml", "hold: fixed", "hold: @@tied", "objects.cylinder.hold = tied is not allowed", "one of: fixed, free"},
  {"scenario.yaml", "hold: fixed", "hold: @@[fixed]", "objects.cylinder.hold = (a list of 1) is not allowed", "fixed, free, or a map"},
  {"scenario.yaml", "  cylinder:\n    at", "  cylinder:\n    @@wrong: 1\n    at", "objects.cylinder.wrong is not a known key", "one of: sphere"},
  {"scenario.yaml", "  wedge:\n    box: {size: [10 mm, 10 mm, 10 mm]}\n    surface: shell\n    hold: {path: [{at: 0 s, by: [0 mm, 0 mm, 0 mm]}, {at: 1 s, by: [0 mm, 5 mm, 0 mm]}]}", "  @@wedge:\n    box: {size: [10 mm, 10 mm, 10 mm]}\n    surface: shell\n    hold: free", "objects.wedge.mass is missing", "an object that can move has"},
  {"scenario.yaml", "{at: 1 s, by", "{at: @@0 s, by", "objects.wedge.hold.path.1.at = 0 s is not allowed", "after the one before"},
  {"scenario.yaml", "  wedge:", "  @@tip:", "objects.tip: the name is not allowed", "that no body of the model has"},
  {"scenario.yaml", "  ball:\n    sphere: {radius: 10 mm}\n    surface: shell", "  ball:\n    sphere: {radius: 10 mm}\n    surface: @@felt", "objects.ball.surface = felt is not allowed: its friction against shell is not given", "friction_pairs between shell and felt"},
  {"scenario.yaml", "twists:\n  unscrew: {on: knob,", "twists:\n  unscrew: {on: @@knop,", "twists.unscrew.on = knop is not allowed: there is no such body or object", "nearest known body or object is 'knob'"},
  {"scenario.yaml", "length: 95 mm, stiffness: 2 kN/m", "length: 95 mm, stiffness: @@0 kN/m", "objects.lamp.hold.string.stiffness = 0 kN/m is not allowed", "> 0"},
  {"scenario.yaml", "from: [0 mm, 300 mm, 0 mm], at: [0 mm, 8 mm, 0 mm], length: 95 mm,", "from: @@[0 mm, 208 mm, 0 mm], at: [0 mm, 8 mm, 0 mm],", "objects.lamp.hold.string.from = (a list of 3) is not allowed", "apart from where the string is tied"},
  {"scenario.yaml", "    cylinder: {axis: [0, 0, 1], radius: 20 mm, length: 80 mm}\n    surface: shell", "    cylinder: {radius: 20 mm, length: 80 mm}\n    surface: @@pad", "objects.cylinder.surface = pad is not allowed: its friction against pad is not given", "friction_pairs between pad and pad"},
  {"scenario.yaml", "on: tip", "on: @@tap", "loads.push.on = tap is not allowed: there is no such body or object", "nearest known body or object is 'tip'"},
  {"scenario.yaml", "[1 s, 20 N]]", "[@@0 s, 20 N]]", "loads.push.force.1.0 = 0 s is not allowed", "after the one before"},
  {"scenario.yaml", "hang: {on: phalanx, weight: 200 g}", "hang: {on: phalanx, weight: 200 g, direction: @@[0, 1, 0]}", "loads.hang.direction = (a list of 3) is not allowed", "along gravity"},
  {"scenario.yaml", "pull: {on: ball, direction: [1, 0, 0], force: 5 N}", "@@pull: {on: ball, force: 5 N}", "loads.pull.direction is missing", "because 'force' is given"},
  {"scenario.yaml", "min_step: 1e-10 s", "min_step: @@1 s", "solver.min_step = 1 s is not allowed", "min_step < max_step"},
  {"scenario.yaml", "at_most: 50 N", "at_most: @@1 N", "require.0.at_most = 1 N is not allowed", "at_most >= at_least"},
  {"scenario.yaml", "at_most: 50 N", "at_most: @@50 mm", "require.0.at_most = 50 mm is not allowed", "dimension of at_least"},
  {"scenario.yaml", "at_least: 5 N, at_most: 50 N", "at_most: @@5 kkg", "require.0.at_most = 5 kkg is not allowed", "not a known unit"},
  {"scenario.yaml", "- {at: 0.1 s, drive: flexor, voltage: 6 V}", "- {at: 0.1 s, drive: flexor, voltage: 6 V, over: @@-1 s}", "timeline.1.over = -1 s is not allowed", ">= 0"},
  // controllers
  {"scenario.yaml", "  flexor:\n    period: 1 ms", "  @@flexer:\n    period: 1 ms", "controllers.flexer", "flexor"},
  {"scenario.yaml", "    period: 1 ms", "    period: @@1 us", "controllers.flexor.period = 1 us is not allowed", "at least 10 µs"},
  {"scenario.yaml", "position: {gain: 20 1/s,", "position: {gain: @@20 V/rad,", "controllers.flexor.loops.position.gain = 20 V/rad is not allowed", "this loop feeds the speed loop"},
  {"scenario.yaml", "speed: {gain: 0.02 A·s/rad,", "speed: {gain: @@-0.02 A·s/rad,", "controllers.flexor.loops.speed.gain = -0.02 A·s/rad is not allowed", ">= 0"},
  {"scenario.yaml", "current: {gain: 4 V/A,", "current: {gain: @@4 V,", "controllers.flexor.loops.current.gain = 4 V is not allowed", "a resistance"},
  {"scenario.yaml", "friction: 50 mA", "friction: @@50 mV", "controllers.flexor.loops.feed_forward.friction = 50 mV is not allowed", "a current"},
  {"scenario.yaml", "derivative_filter: 4 ms", "@@derivativ_filter: 4 ms", "controllers.flexor.loops.position.derivativ_filter is not a known key", "derivative_filter"},
  {"scenario.yaml", "limit: 0.4 A", "limit: @@0 A", "controllers.flexor.loops.speed.limit = 0 A is not allowed", "> 0"},
  {"scenario.yaml", "anti_windup: none", "anti_windup: @@never", "controllers.flexor.loops.anti_windup = never is not allowed", "clamp, none"},
  {"scenario.yaml", "move: {minimum_jerk: 0.1 s}", "move: {minimum_jerk: @@0 s}", "timeline.5.move.minimum_jerk = 0 s is not allowed", "> 0"},
  {"scenario.yaml", "move: {minimum_jerk: 0.1 s}", "move: @@smooth", "timeline.5.move = smooth is not allowed", "step"},
  {"scenario.yaml", "speed: -50 deg/s", "speed: @@-50 deg", "timeline.6.speed = -50 deg is not allowed", "a turning rate"},
  {"motion.csv", "time [ms],shaft [deg]", "time [ms],@@shaft", "the head 'shaft' is not allowed", "shaft [deg]"},
  {"motion.csv", "200,90", "@@200,90,1", "a line with 3 columns", "two columns"},
  {"motion.csv", "200,90", "200, @@9O", "'9O' is not a number", "without a unit"},
  {"motion.csv", "450.5,-30", "@@150,-30", "the time '150' is not allowed", "after the one before"},
  // limits
  {"limit.yaml", "sinewright: limit", "sinewright: @@scenario", "sinewright = scenario is not allowed", "this is a scenario file where a limit file is wanted"},
  {"limit.yaml", "tolerance: 0.01", "tolerance: @@0", "tolerance = 0 is not allowed", "above 0, up to 0.1"},
  {"limit.yaml", "tolerance: 0.01", "@@search: {key: duration, from: 1 s, to: 2 s}", "search is not allowed beside ramp", "exactly one of: ramp, search, directions"},
  {"limit.yaml", "  rate: 2 mm/s", "  rate: @@2 mm", "ramp.rate = 2 mm is not allowed", "speed"},
  {"limit.yaml", "  rate: 2 mm/s", "  rate: @@0 mm/s", "ramp.rate = 0 mm/s is not allowed", "> 0"},
  {"limit.yaml", "  most: 8 mm", "  most: @@-8 mm", "ramp.most = -8 mm is not allowed", "most > from"},
  {"limit.yaml", "  halvings: 3", "  halvings: @@2.5", "ramp.halvings = 2.5 is not allowed", "a whole number from 1 to 12"},
  {"limit.yaml", "answer: peak_force", "answer: @@force", "ramp.answer = force is not allowed", "one of: displacement, peak_force"},
  {"limit.yaml", "{object_leaves: wedge", "@@{object_goes: wedge", "ramp.until: a key is missing", "object_leaves"},
  {"limit.yaml", "{object_leaves: wedge, more_than: 5 mm}", "{margin_falls: any, below: @@0}", "ramp.until.below = 0 is not allowed", "> 0"},
  {"limit.yaml", "more_than: 5 mm", "more_than: @@5 deg", "ramp.until.more_than = 5 deg is not allowed", "a length"},
  {"limit.yaml", "- {name: ambient, set: [ambient]", "- @@{name: ambient", "map.0.set is missing", "key paths"},
  {"limit.yaml", "labels: [cool, warm]", "labels: @@[cool]", "map.0.labels = (a list of 1) is not allowed", "as many as 'to' has values"},
  // studies
  {"study.yaml", "  hold: {limit: limit.yaml}", "  @@model: {limit: limit.yaml}", "a run may not be called model", "another name"},
  {"study.yaml", "from: 3 mm, to: 8 mm", "from: 3 mm, to: @@3 mm", "vary.radius.to = 3 mm is not allowed", "to > from"},
  {"study.yaml", "from: 3 mm, to: 8 mm", "from: 3 mm, to: @@8 N", "vary.radius.to = 8 N is not allowed", "the dimension of the numbers beside it"},
  {"study.yaml", "from: 3 mm, to: 8 mm", "from: @@0 mm, to: 8 mm", "vary.radius.from = 0 mm is not allowed", "> 0 with logarithmic spacing"},
  {"study.yaml", "from: 3 mm, to: 8 mm, spacing: logarithmic, steps: 4", "from: 3 mm, to: 8 mm, plus_minus: @@1 mm", "vary.radius.plus_minus = 1 mm is not allowed", "given by from already"},
  {"study.yaml", "iso_286: h7", "iso_286: @@j7", "vary.pin.iso_286 = j7 is not allowed", "H7"},
  {"study.yaml", "sigmas: 2", "sigmas: @@0", "vary.resistance.sigmas = 0 is not allowed", "from 1 to 6"},
  {"study.yaml", "  resistance: {key: model.motors.micro.resistance, plus_minus: 0.5 Ohm, sigmas: 2, group: print}",
   "  @@resistance: {key: model.motors.micro.resistance, plus_minus: 0.5 Ohm, sigmas: 2, group: prints}", "resistance: there is no group 'prints'", "a name in 'groups'"},
  {"study.yaml", "measured: [20 degC, 25 degC, 22 degC]", "measured: [20 degC, 25 degC, @@22 mm]", "vary.ambient.measured.2 = 22 mm is not allowed", "the dimension of the numbers beside it"},
  {"study.yaml", "  line: {key: model.cords.flexor.line, values: [braid, braid]}", "  @@line: {values: [braid, braid]}", "vary.line.key is missing", "the path of what varies"},
  {"study.yaml", "groups: {print: 0.8}", "groups: {print: @@1}", "groups.print = 1 is not allowed", "below 1"},
  {"study.yaml", "optimise:\n  minimise: [cost]\n  maximise: [grasp.grip_force]\n  runs", "@@optimise:\n  runs", "optimise.minimise is missing", "'minimise', 'maximise' or both"},
  {"study.yaml", "  runs: 100", "  runs: @@2.5", "optimise.runs = 2.5 is not allowed", "a whole number"},
  {"study.yaml", "optimise:", "grid: {}\n@@optimise:", "optimise is not allowed beside grid", "exactly one of: grid, sample"},
  // YAML itself
  {"scenario.yaml", "name: scenario of the reading tests", "name: @@\"scenario of the reading tests", "this quote is not closed on its line", "a closing \""},
  {"scenario.yaml", "name: scenario of the reading tests", "name: @@'scenario\nabout: it''s", "this quote is not closed on its line", "a closing '"},
  {"scenario.yaml", "name: scenario of the reading tests", "name: @@&n test", "an anchor (&name) is not used in these files", "parts file"},
  {"scenario.yaml", "name: scenario of the reading tests", "name: @@*n", "an alias (*name) is not used in these files", "parts file"},
  {"scenario.yaml", "name: scenario of the reading tests", "name: @@!!str test", "the tag", "is not used"},
  {"scenario.yaml", "name: scenario of the reading tests", "name: test\n@@<<: {about: x}", "<< is not allowed", "merging"},
  {"scenario.yaml", "record: {interval: 2 ms}\nrequire", "record: {interval: 2 ms\nrequire@@", "this is not readable YAML", "brackets"},
  {"scenario.yaml", "duration: 2 s", "duration: 2 s\n---\n@@more: 1", "text after the end of the first document", "one document a file"},
  {"scenario.yaml", "duration: 2 s", "duration: 2 s\n@@\tmodel: x", "this is not readable YAML", "check indentation"},
  {"scenario.yaml", "duration: 2 s", "duration:\n @@- 2 s\n - 3 s", "duration = (a list of 2) is not allowed", "a time"},
  {"scenario.yaml", "duration: 2 s", "duration: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[@@[1]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]", "", "nested deeper than 30 levels"},
};
// clang-format on

}  // namespace

TEST_CASE("bad files: directions of a limit are refused where they cannot be gone through", "[errors]") {
  const auto message = [](const std::string& task, const std::string& rest = "") {
    good_files::Texts texts = good_files::all();
    for (auto& [name, text] : texts)
      if (name == "limit.yaml") text = "sinewright: limit\nname: x\nscenario: scenario.yaml\ndirections: " + task + "\n" + rest;
    reading::Source source(texts);
    try {
      (void)reading::read_limit(source, "limit.yaml");
    } catch (const InvalidInput& error) {
      return std::string(error.what());
    }
    return std::string();
  };
  CHECK(message("{object: ball, rate: 5 N/s, most: 40 N}").empty());
  CHECK_THAT(message("{object: ball, rate: 5 N/s, most: 40 N, count: 2}"), Contains("limit.yaml:4:60") && Contains("directions.count = 2 is not allowed"));
  CHECK_THAT(message("{object: ball, rate: 5 N, most: 40 N}"), Contains("directions.rate = 5 N is not allowed"));
  CHECK_THAT(message("{object: ball, rate: 5 N/s, most: 0 N}"), Contains("directions.most = 0 N is not allowed") && Contains("> 0"));
  CHECK_THAT(message("{object: ball, rate: 5 N/s, most: 40 N, plane: [1, 0, 0]}"),
             Contains("directions.plane = (a list of 3) is not allowed") && Contains("does not stand on the plane") && Contains("'first'"));
  CHECK_THAT(message("{object: ball, rate: 5 N/s, most: 40 N, plane: [0, 0, 1], first: [0, 0, -2]}"), Contains("directions.first"));
  CHECK_THAT(message("{object: ball, rate: 5 N/s, most: 40 N, first: [0, 1, 0]}"), Contains("directions.first") && Contains("a 'plane' beside it"));
  const std::string axis = "  - {name: a, set: [duration], to: [1 s]}\n";
  CHECK(message("{object: ball, rate: 5 N/s, most: 40 N}", "map:\n" + axis).empty());
  CHECK_THAT(message("{object: ball, rate: 5 N/s, most: 40 N}", "map:\n" + axis + axis), Contains("map.1") && Contains("one axis beside 'directions'"));
}

TEST_CASE("bad files: a scenario that is not there is reported with the limit file that names it", "[errors]") {
  const Broken made = broken({"limit.yaml", "scenario: scenario.yaml", "scenario: none.yaml", "", ""});
  CHECK_THAT(message_of(made.texts), StartsWith("none.yaml: ") && Contains("used by: limit.yaml:4:11"));
}

TEST_CASE("bad files: a recorded motion that is not there is reported with the command that names it", "[errors]") {
  const Broken made = broken({"scenario.yaml", "follow: motion.csv", "follow: @@none.csv", "", ""});
  CHECK_THAT(message_of(made.texts), StartsWith("none.csv: ") && Contains("used by: " + made.place.substr(0, made.place.size() - 2)));
}

TEST_CASE("bad files: a command to a drive without a controller, or without the loop, says what is missing", "[errors]") {
  good_files::Texts texts = good_files::all();
  std::string& scenario = texts[2].second;
  const auto begin = scenario.find("controllers:"), end = scenario.find("timeline:");
  const std::string whole = scenario.substr(begin, end - begin);
  scenario.erase(begin, end - begin);
  CHECK_THAT(message_of(texts), StartsWith("scenario.yaml:") && Contains("timeline.4.drive = flexor is not allowed") &&
                                    Contains("an entry in 'controllers', with a position loop"));
  scenario.insert(begin, "controllers: {flexor: {period: 1 ms, loops: {position: {gain: 4 V/rad}}}}\n");
  CHECK_THAT(message_of(texts), Contains("timeline.6.drive = flexor is not allowed") && Contains("add controllers.flexor.loops.speed"));
}

TEST_CASE("bad files: a hold routine's keys, its guards and what it is asked for are checked", "[errors]") {
  good_files::Texts texts = good_files::all();
  std::string good = texts[2].second;
  const std::string hold =
      "    hold: {voltage: 5 V, approach_current: 0.3 A, touch_current: 0.2 A, still_speed: 20 deg/s, touch_time: 40 ms, squeeze_current: 0.4 A, "
      "squeeze_time: 0.2 s, ease_time: 0.5 s, slip_back: 3 deg, current_step: 50 mA, watch: 0.1 s, leads: open, open_voltage: 5 V, open_to: 5 deg, open_time: 1 s}\n";
  const auto begin = good.find("    loops:"), end = good.find("    speed_filter");
  good.replace(begin, end - begin, hold);
  const auto first = good.find("  - {at: 1.6 s"), after = good.find("loads:");
  good.replace(first, after - first, "  - {at: 1.6 s, drive: flexor, hold: grasp}\n");
  texts[2].second = good;
  reading::Source source(texts);
  const model::Scenario scenario = reading::read_scenario(source, "scenario.yaml");
  const auto& routine = std::get<model::HoldRoutine>(scenario.controllers.at(0).program);
  CHECK(routine.squeeze_current == 0.4);
  CHECK(routine.leads == model::Leads::open);
  CHECK(std::get<model::AskHold>(scenario.timeline.back().command).grasp);
  const auto changed = [&](const std::string& old_text, const std::string& new_text) {
    std::string text = good;
    const auto at = text.find(old_text);
    REQUIRE(at != std::string::npos);
    texts[2].second = text.replace(at, old_text.size(), new_text);
    return message_of(texts);
  };
  CHECK_THAT(changed("touch_current: 0.2 A", "touch_current: 0.3 A"), StartsWith("scenario.yaml:41:66: ") && Contains("touch_current = 0.3 A is not allowed") && Contains("below approach_current"));
  CHECK_THAT(changed("watch: 0.1 s, ", ""), Contains("controllers.flexor.hold.watch is missing"));
  CHECK_THAT(changed("slip_back: 3 deg", "slip_back: 0 deg"), Contains("slip_back = 0 deg is not allowed") && Contains("> 0"));
  CHECK_THAT(changed("hold: grasp", "hold: squeeze"), Contains("hold = squeeze is not allowed") && Contains("grasp, release"));
  CHECK_THAT(changed("hold: grasp", "position: 20 deg"), Contains("a controller of flexor with a position loop") && Contains("either loops or a hold routine"));
  CHECK_THAT(changed(hold, hold + "    loops: {position: {gain: 4 V/rad}}\n"), Contains("loops is not allowed beside hold") || Contains("hold is not allowed beside loops") || Contains("loops is not allowed beside"));
  CHECK_THAT(changed("highest: 90 degC", "highest: 20 degC"), Contains("heat_guard.highest = 20 degC is not allowed") && Contains("above ambient"));
  CHECK_THAT(changed("time: 0.4 s}", "time: 0 s}"), Contains("stall_guard.time = 0 s is not allowed"));
}

TEST_CASE("bad files: each is refused at its line and column, with key and reason", "[errors]") {
  REQUIRE(message_of(good_files::all()).empty());
  for (const Break& change : kBreaks) {
    CAPTURE(change.file, change.old_text, change.new_text);
    const Broken made = broken(change);
    const std::string message = message_of(made.texts);
    CHECK_THAT(message, StartsWith(made.place + change.what) && Contains(change.phrase));
    CHECK_THAT(message, !Contains("\n\n"));
  }
  CHECK(std::size(kBreaks) >= 60);
}
