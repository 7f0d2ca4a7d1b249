#include <limits>

#include "reading/describe_packing.h"

namespace sinewright::reading {
namespace {

using namespace model;

constexpr int most_bits = 24;

Kind<double> period() {
  return quantity("s", {1e-6, std::numeric_limits<double>::infinity(), false, false, "at least 1 µs"});
}

Kind<Noise> noise(const std::string& unit) {
  Record<Noise> record(unit == "A" ? "current_noise" : "voltage_noise",
                       "Normal noise at the converter's input, the same in every run with the same seed.");
  const Kind<std::uint64_t> whole = turned_into<std::uint64_t, unsigned long long>(
      seed(), [](unsigned long long value, const Node&) { return std::uint64_t{value}; });
  record.need("rms", &Noise::rms, quantity(unit, not_negative()), "standard deviation")
      .may("seed", &Noise::seed, whole, Default{"1"}, "of the random numbers");
  return record.kind();
}

Bounds share_of_range() {
  return {-0.5, 0.5, false, false, "from -50 % to 50 %"};
}

Kind<Linearity> linearity() {
  Record<SineLinearity> sine("linearity_sine", "A sine over the electrical range.");
  sine.need("error", &SineLinearity::error, number(share_of_range()),
            "largest deviation from the straight line between the nominal ends, as a share of the range")
      .may("waves", &SineLinearity::waves, number({0, 1000, true, false, "above 0, up to 1000"}), Default{"2"},
           "of the sine over the range; from 2 on the error is the independent linearity of catalogues")
      .may("phase", &SineLinearity::phase, quantity("rad"), Default{"0 deg"}, "of the sine at the start of the range");
  using Rows = std::vector<std::pair<double, double>>;
  struct Written {
    Rows table;
  };
  Record<Written> table("linearity_table", "A measured deviation; linear in between, constant outside.");
  const std::string words = "a list of pairs [position, error], positions strictly rising";
  table
      .need("table", &Written::table,
            list_of(pair_of(number({0, 1, false, false, "from 0 % to 100 %"}), number(share_of_range()), "a pair: [position, error]"),
                    words, 1),
            "both as shares of the range")
      .check([](Written& value, const Node& node) {
        for (std::size_t i = 1; i < value.table.size(); ++i)
          if (value.table[i].first <= value.table[i - 1].first)
            throw not_allowed(*node.find("table")->children[i]->children[0], "a position above the one before");
      });
  const auto from_sine = [](const SineLinearity& value, const Node&) { return Linearity(value); };
  const auto from_table = [](const Written& value, const Node&) {
    TableLinearity made;
    for (const auto& [position, error] : value.table) {
      made.position.push_back(position);
      made.error.push_back(error);
    }
    return Linearity(made);
  };
  return by_key<Linearity>({{"error", turned_into<Linearity, SineLinearity>(sine.kind(), from_sine)},
                            {"table", turned_into<Linearity, Written>(table.kind(), from_table)}});
}

Kind<Potentiometer> potentiometer() {
  Record<Ripple> ripple("ripple", "A sine on the feed voltage, at phase 0 when the run begins.");
  ripple.need("amplitude", &Ripple::amplitude, quantity("V", not_negative()), "half of peak to peak")
      .need("frequency", &Ripple::frequency, quantity("Hz", positive()), "of the sine");
  const Kind<std::optional<double>> reference = any_of<std::optional<double>>(
      {{[](const Node& node) { return node.text == "ratiometric"; },
        word<std::optional<double>>({{"ratiometric", std::nullopt}})},
       {[](const Node&) { return true; },
        turned_into<std::optional<double>, double>(quantity("V", positive()),
                                                   [](double value, const Node&) { return std::optional(value); })}},
      "ratiometric, or a voltage, such as \"3.3 V\"");
  Record<Potentiometer> record("potentiometer",
                               "A turned resistor with a wiper, and the converter that reads it. Winding moves the wiper towards the "
                               "upper end.");
  record.need("range", &Potentiometer::range, quantity("rad", positive()), "electrical range, of the sensor's own turn")
      .may("at_zero", &Potentiometer::at_zero, quantity("rad", not_negative()), Default{"0 deg"},
           "where the wiper stands on its track with the shaft at 0")
      .may("dead_band", &Potentiometer::dead_band, quantity("rad", positive()), Absent{"beyond the ends the wiper stays on the end"},
           "turns endlessly, with this gap between the ends in which the count is 0")
      .may("linearity", &Potentiometer::linearity, linearity(), Absent{"straight"}, "deviation of the track")
      .may("resistance", &Potentiometer::resistance, quantity("Ohm", positive()), Absent{"does not matter"},
           "of the track; needed with a load, and only then does its tolerance matter")
      .may("load", &Potentiometer::load, quantity("Ohm", positive()), Absent{"none"}, "from wiper to ground: pull-down, converter input")
      .need("feed", &Potentiometer::feed, quantity("V", positive()), "voltage over the track")
      .may("reference", &Potentiometer::reference, reference, Absent{"ratiometric"},
           "of the converter: ratiometric (the feed itself; ripple cancels) or a voltage of its own")
      .need("bits", &Potentiometer::bits, whole_number(1, most_bits), "of the converter")
      .may("noise", &Potentiometer::noise, noise("V"), Absent{"none"}, "at the converter's input")
      .may("ripple", &Potentiometer::ripple, ripple.kind(), Absent{"none"}, "of the feed")
      .check([](Potentiometer& value, const Node& node) {
        if (value.at_zero > value.range) throw not_allowed(*node.find("at_zero"), "at most the range");
        if (value.load > 0 && value.resistance == 0)
          throw missing(node, "resistance", "a resistance, because a load is given");
      });
  return record.kind();
}

Kind<AbsoluteEncoder> absolute_encoder() {
  Record<AbsoluteEncoder> record("encoder_absolute", "Tells the angle within one of its turns; the firmware counts the turns.");
  record.need("bits", &AbsoluteEncoder::bits, whole_number(1, most_bits), "steps a turn = 2 to this power")
      .may("at_zero", &AbsoluteEncoder::at_zero, quantity("rad", {0, 6.283185307179586, false, true, "from 0 deg, below 360 deg"}),
           Default{"180 deg"}, "what it stands at with the shaft at 0");
  return record.kind();
}

Kind<RelativeEncoder> relative_encoder() {
  Record<RelativeEncoder> record("encoder_relative", "Counts edges from where its power came on: the zero is lost with the power.");
  record.need("counts_per_turn", &RelativeEncoder::counts_per_turn, whole_number(1, 10000000), "edges a turn, all of them");
  return record.kind();
}

}  // namespace

Kind<Sensor> sensor() {
  using SensorKind = decltype(Sensor::kind);
  Record<SensorFit> fit("sensor_fit",
                        "Between the seat and the sensor's own rotor. Both widen the play: whole play = backlash + 2 × friction_torque / "
                        "torsional_stiffness.");
  fit.may("backlash", &SensorFit::backlash, quantity("rad", not_negative()), Default{"0 deg"}, "whole play, at the seat")
      .may("torsional_stiffness", &SensorFit::torsional_stiffness, quantity("N.m/rad", positive()), Absent{"rigid"},
           "of the collar that turns the sensor")
      .may("friction_torque", &SensorFit::friction_torque, quantity("N.m", not_negative()), Default{"0 N·m"},
           "that the sensor's rotor needs to turn; it twists the collar and does not load the shaft (that is gearhead drag)");
  const Kind<SensorKind> encoder = by_key<SensorKind>(
      {{"counts_per_turn", turned_into<SensorKind, RelativeEncoder>(
                               relative_encoder(), [](const RelativeEncoder& value, const Node&) { return SensorKind(value); })},
       {"bits", turned_into<SensorKind, AbsoluteEncoder>(
                    absolute_encoder(), [](const AbsoluteEncoder& value, const Node&) { return SensorKind(value); })}});
  Record<Sensor> record("sensor", "What tells the angle of a drive, sampled in time. It looks on: the motion is the same without it.");
  record.one_of("kind", "potentiometer", &Sensor::kind, potentiometer(), "a turned resistor")
      .one_of("kind", "encoder", &Sensor::kind, encoder, "relative (counts_per_turn) or absolute (bits)")
      .may("seat", &Sensor::seat, word<Sensor::Seat>({{"shaft", Sensor::Seat::shaft}, {"rotor", Sensor::Seat::rotor}}),
           Default{"shaft"}, "on the output shaft, or on the motor's rotor, before the gearhead")
      .may("turns", &Sensor::turns, number(positive()), Default{"1"}, "of the sensor for one turn of its seat, if it is geared")
      .may("fit", &Sensor::fit, fit.kind(), Absent{"without play"}, "play and twist between seat and sensor")
      .may("power", &Sensor::power,
           word<Sensor::Power>({{"always", Sensor::Power::always}, {"with_drive", Sensor::Power::with_drive}}), Default{"always"},
           "with_drive: none while the drive is switched off, or before its first command")
      .need("period", &Sensor::period, period(), "time between two samples");
  add_price(record, &Sensor::price);
  add_outline(record, &Sensor::outline);
  return record.kind();
}

Kind<CurrentSense> current_sense() {
  struct Written : CurrentSense {
    std::vector<double> range;
  };
  Record<Written> record("current_sense", "Reads the motor's current, sampled in time. It looks on: the driver's limit does not use it.");
  record
      .need("range", &Written::range, list_of(quantity("A"), "a list of 2 currents: lowest, highest", 2, 2),
            "of the converter")
      .need("bits", &CurrentSense::bits, whole_number(1, most_bits), "of the converter")
      .may("gain_error", &CurrentSense::gain_error, number({-0.9, 10, false, false, "from -90 % to 1000 %"}), Default{"0 %"},
           "reading = (1 + this) × current + offset")
      .may("offset", &CurrentSense::offset, quantity("A"), Default{"0 A"}, "reading at no current")
      .may("noise", &CurrentSense::noise, noise("A"), Absent{"none"}, "at the converter's input")
      .may("time_constant", &CurrentSense::time_constant, quantity("s", not_negative()), Default{"0 s"},
           "of the low-pass before the converter; 0: none")
      .need("period", &CurrentSense::period, period(), "time between two samples")
      .check([](Written& value, const Node& node) {
        value.low = value.range[0];
        value.high = value.range[1];
        if (value.low >= value.high) throw not_allowed(*node.find("range")->children[1], "a highest current above the lowest");
      });
  return turned_into<CurrentSense, Written>(record.kind(), [](const Written& value, const Node&) { return value; });
}

}  // namespace sinewright::reading
