#include <limits>

#include <fmt/format.h>

#include "reading/describe.h"

namespace sinewright::reading {
namespace {

using namespace model;

// What a loop hands on, by the loop below it.
enum class Hands { speed, current, voltage };
const char* unit_of(Hands hands) { return hands == Hands::speed ? "rad/s" : hands == Hands::current ? "A" : "V"; }
const char* words_of(Hands hands) { return hands == Hands::speed ? "the speed loop" : hands == Hands::current ? "the current loop" : "the motor's voltage"; }

// A number that was read with whatever unit, once it is clear which it needs.
double settle(const std::optional<Quantity>& written, const Node* map, const char* key, const std::string& unit, Hands hands, double absent) {
  if (!written) return absent;
  const Node& node = *map->find(key);
  const std::string feeds = fmt::format("this loop feeds {}", words_of(hands));
  if (!same_dimension(written->unit.empty() ? "1" : written->unit, unit)) throw not_allowed(node, describe_dimension(unit), feeds);
  if (written->si < 0) throw not_allowed(node, ">= 0", feeds);
  return written->si;
}

// @param input  unit of what the loop compares.
Loop settle(const WrittenLoop& written, const Node* map, const std::string& input, Hands hands) {
  // Ratios are written out: a quotient of two units is not always a unit that reads well.
  struct Units {
    std::string gain, integral, derivative;
  };
  const Units units = input == "rad"     ? hands == Hands::speed     ? Units{"Hz", "s-2", "1"}
                                           : hands == Hands::current ? Units{"A/rad", "A/rad.s-1", "A.s/rad"}
                                                                     : Units{"V/rad", "V/rad.s-1", "V.s/rad"}
                      : input == "rad/s" ? hands == Hands::current ? Units{"A.s/rad", "A/rad", ""} : Units{"V.s/rad", "V/rad", ""}
                                         : Units{"Ohm", "Ohm.s-1", ""};
  Loop loop;
  loop.gain = settle(written.gain, map, "gain", units.gain, hands, 0);
  loop.integral = settle(written.integral, map, "integral", units.integral, hands, 0);
  loop.derivative = settle(written.derivative, map, "derivative", units.derivative, hands, 0);
  loop.derivative_filter = written.derivative_filter;
  loop.limit = settle(written.limit, map, "limit", unit_of(hands), hands, no_limit);
  if (loop.limit == 0) throw not_allowed(*map->find("limit"), "> 0");
  if (loop.gain == 0 && loop.integral == 0) throw not_allowed(*map->find("gain"), "> 0, or an integral");
  return loop;
}

Kind<WrittenLoop> loop(const std::string& which) {
  const auto any = [](const std::string& words) { return any_quantity(words); };
  const bool position = which == "position";
  Record<WrittenLoop> record(which + "_loop", position ? "Position loop: output = gain × error + integral × ∫ error dt + derivative × rate of the error."
                                              : which == "speed" ? "Speed loop: output = gain × error + integral × ∫ error dt."
                                                                 : "Current loop: voltage = gain × error + integral × ∫ error dt.");
  const std::string gain = position ? "in V/rad; with a current loop A/rad; with a speed loop 1/s"
                           : which == "speed" ? "in V·s/rad; with a current loop A·s/rad"
                                              : "in V/A";
  const std::string integral = position ? "in V/rad/s; with a current loop A/rad/s; with a speed loop 1/s²"
                               : which == "speed" ? "in V/rad; with a current loop A/rad"
                                                  : "in V/A/s";
  record.need("gain", &WrittenLoop::gain, any("a number with its unit, such as \"" + std::string(position ? "6 V/rad" : which == "speed" ? "0.2 V·s/rad" : "4 V/A") + "\""), gain)
      .may("integral", &WrittenLoop::integral, any("a number with its unit, such as \"" + std::string(position ? "20 V/rad/s" : which == "speed" ? "2 V/rad" : "2000 V/A/s") + "\""), Absent{"none"}, integral);
  if (position)
    record.may("derivative", &WrittenLoop::derivative, any("a number with its unit, such as \"0.1 V·s/rad\""), Absent{"none"},
               "in V·s/rad; with a current loop A·s/rad; with a speed loop a plain number")
        .may("derivative_filter", &WrittenLoop::derivative_filter, quantity("s", not_negative()), Default{"0 s"},
             "time constant of a low-pass on the derivative; 0: none");
  record.may("limit", &WrittenLoop::limit, any("a number with its unit, such as \"4 V\""), Absent{"none"},
             position ? "of the output, either way: V, A or rad/s" : which == "speed" ? "of the output, either way: V or A" : "of the output, either way");
  return record.kind();
}

Kind<std::optional<double>> maybe(Kind<double> kind) {
  return {kind.shown, [read = kind.read](const Node& node) { return std::optional(read(node)); }};
}

Kind<std::optional<WrittenForce>> force() {
  const Absent model{"the model's"};
  Record<WrittenForce> record("force_by_current", "What the firmware knows, to make a force by a current. A bare map: it knows what the model has.");
  record.may("radius", &WrittenForce::radius, maybe(quantity("m", positive())), Absent{"that of the bare pulley with half a cord"}, "at which the cord leaves the pulley")
      .may("torque_constant", &WrittenForce::torque_constant, maybe(quantity("N.m/A", positive())), model, "of the motor")
      .may("forward_efficiency", &WrittenForce::forward_efficiency, maybe(number({0, 1, true, false, "above 0, up to 1"})), model, "of the gearhead, for a force that rises")
      .may("backward_efficiency", &WrittenForce::backward_efficiency, maybe(number({0, 1, false, false, "from 0 to 1"})), model, "for one that falls")
      .may("drag", &WrittenForce::drag, maybe(quantity("N.m", not_negative())), model, "of the gearhead, at the output")
      .may("brush_drag", &WrittenForce::brush_drag, maybe(quantity("N.m", not_negative())), model, "of the motor's brushes, turning")
      .may("return_at_zero", &WrittenForce::return_at_zero, quantity("N", not_negative()), Default{"0 N"}, "tension that the return cord takes, with the shaft at 0")
      .may("return_per_angle", &WrittenForce::return_per_angle, quantity("N/rad"), Default{"0 N/rad"}, "its rise with the shaft's reading")
      .may("highest_current", &WrittenForce::highest_current, maybe(quantity("A", positive())), Absent{"the driver's current limit"}, "that is asked for")
      .may("share", &WrittenForce::share, number(positive()), Default{"1"}, "of the tension beyond it that arrives where the force is wanted; 1: the cord's own tension");
  return turned_into<std::optional<WrittenForce>, WrittenForce>(record.kind(), [](const WrittenForce& f, const Node&) { return std::optional(f); });
}

Kind<std::optional<Homing>> homing() {
  Record<Homing> record("homing", "Finds a lost zero: winds until the current says that the cord is taut, or that an end is reached.");
  record.may("pay_out", &Homing::pay_out, quantity("rad", not_negative()), Default{"0 deg"}, "first, by the reading, so that the cord is slack for certain: the shaft's whole range")
      .need("voltage", &Homing::voltage, quantity("V", positive()), "paying out and winding")
      .need("current", &Homing::current, quantity("A", positive()), "a reading from here on ...")
      .may("still_speed", &Homing::still_speed, quantity("rad/s", positive()), Absent{"any speed"}, "... while the shaft's readings move no faster than this ...")
      .need("time", &Homing::time, quantity("s", positive()), "... for so long, is the place ...")
      .need("angle", &Homing::angle, quantity("rad"), "... where the shaft stands at this angle")
      .need("give_up", &Homing::give_up, quantity("s", positive()), "after this it switches off");
  const Kind<std::optional<Homing>> map = turned_into<std::optional<Homing>, Homing>(record.kind(), [](const Homing& h, const Node&) { return std::optional(h); });
  const Kind<std::optional<Homing>> none = word<std::optional<Homing>>({{"none", std::nullopt}});
  return any_of<std::optional<Homing>>({{[](const Node& node) { return node.kind == Node::Kind::text; }, none}, {[](const Node& node) { return node.kind == Node::Kind::map; }, map}},
                                       "none, or a map");
}

Kind<WrittenLoops> loops() {
  Record<WrittenFeedForward> feed("feed_forward", "What the motor needs anyway, added below the loops. In A with a current loop, else in V.");
  const Kind<Quantity> load = any_quantity("a voltage or a current, such as \"0.4 V\"");
  feed.may("speed", &WrittenFeedForward::speed, quantity("V.s/rad", not_negative()), Default{"0 V·s/rad"},
           "against the back-EMF, times the set point's rate; gear ratio × torque constant cancels it")
      .may("friction", &WrittenFeedForward::friction, load, Absent{"none"}, "with the sign of the set point's rate")
      .may("return_at_zero", &WrittenFeedForward::return_at_zero, load, Absent{"none"}, "against the return cord, with the shaft at 0")
      .may("return_per_angle", &WrittenFeedForward::return_per_angle, any_quantity("a number with its unit, such as \"0.05 V/rad\""), Absent{"none"},
           "its rise with the shaft's reading");
  Record<WrittenLoops> record("loops", "A cascade of position, speed and current; each loop that is there feeds the next one, the last one the motor.");
  record.may("position", &WrittenLoops::position, loop("position"), Absent{"none"}, "for the timeline's position and follow")
      .may("speed", &WrittenLoops::speed, loop("speed"), Absent{"none"}, "for the timeline's speed, or below a position loop")
      .may("current", &WrittenLoops::current, loop("current"), Absent{"none"}, "for the timeline's current, or below another loop")
      .may("feed_forward", &WrittenLoops::feed_forward, feed.kind(), Absent{"none"}, "friction, back-EMF, return cord")
      .may("force", &WrittenLoops::force, force(), Absent{"none"}, "for the timeline's force: feeds the current loop")
      .may("homing", &WrittenLoops::homing, homing(), Absent{"none"}, "finds a lost zero whenever the controller starts")
      .may("anti_windup", &WrittenLoops::anti_windup, word<Loops::AntiWindup>({{"clamp", Loops::AntiWindup::clamp}, {"none", Loops::AntiWindup::none}}),
           Default{"clamp"}, "clamp: an integral stands still while what is below it is cut in its direction")
      .check([](WrittenLoops& value, const Node& node) {
        if (!value.position && !value.speed && !value.current) throw missing_choice(node, {"position", "speed", "current"});
        Loops& made = value.loops;
        made.anti_windup = value.anti_windup;
        if (value.force && !value.current) throw missing(node, "current", "a current loop", "'force' feeds it");
        made.homing = value.homing;
        const Hands last = value.current ? Hands::current : Hands::voltage;
        if (value.position) made.position = settle(*value.position, node.find("position"), "rad", value.speed ? Hands::speed : last);
        if (value.speed) made.speed = settle(*value.speed, node.find("speed"), "rad/s", last);
        if (value.current) made.current = settle(*value.current, node.find("current"), "A", Hands::voltage);
        if (!value.feed_forward) return;
        const Node* map = node.find("feed_forward");
        const std::string unit = unit_of(last), per_angle = unit + "/rad";
        made.feed_forward.speed = value.feed_forward->speed;
        made.feed_forward.friction = settle(value.feed_forward->friction, map, "friction", unit, last, 0);
        made.feed_forward.return_at_zero = settle(value.feed_forward->return_at_zero, map, "return_at_zero", unit, last, 0);
        made.feed_forward.return_per_angle = settle(value.feed_forward->return_per_angle, map, "return_per_angle", per_angle, last, 0);
      });
  return record.kind();
}

Kind<HoldRoutine> hold_routine() {
  Record<HoldRoutine> record("hold_routine", "Closes until its readings tell of touch, squeezes, lowers the current to what friction allows, looks now and then "
                                             "whether the shaft has slipped back, tightens if so, and opens only when asked.");
  record.need("voltage", &HoldRoutine::voltage, quantity("V", positive()), "winding in: closing, squeezing, holding")
      .need("approach_current", &HoldRoutine::approach_current, quantity("A", positive()), "limit while it closes")
      .need("touch_current", &HoldRoutine::touch_current, quantity("A", positive()), "a current reading from here on ...")
      .need("still_speed", &HoldRoutine::still_speed, quantity("rad/s", positive()), "... while the shaft's readings move no faster than this ...")
      .need("touch_time", &HoldRoutine::touch_time, quantity("s", positive()), "... for so long, is touch; longer than the motor takes to start")
      .need("squeeze_current", &HoldRoutine::squeeze_current, quantity("A", positive()), "limit while it squeezes, and while it opens")
      .need("squeeze_time", &HoldRoutine::squeeze_time, quantity("s", positive()), "how long it squeezes")
      .need("ease_time", &HoldRoutine::ease_time, quantity("s", positive()), "in which the current then goes down evenly")
      .need("slip_back", &HoldRoutine::slip_back, quantity("rad", positive()), "a reading so far behind that at the end of squeezing is a slip; more than the sensor's noise")
      .need("current_step", &HoldRoutine::current_step, quantity("A", positive()), "the current that it keeps after a slip is higher by this than where it slipped")
      .need("watch", &HoldRoutine::watch, quantity("s", positive()), "time between two looks while it holds")
      .may("leads", &HoldRoutine::leads, word<Leads>({{"open", Leads::open}, {"shorted", Leads::shorted}}), Default{"shorted"},
           "of the motor, while it holds without current and when it is open")
      .need("open_voltage", &HoldRoutine::open_voltage, quantity("V", positive()), "paying out")
      .need("open_to", &HoldRoutine::open_to, quantity("rad"), "reading at which it is open")
      .need("open_time", &HoldRoutine::open_time, quantity("s", positive()), "after which it stops opening in any case")
      .check([](HoldRoutine& value, const Node& node) {
        if (value.touch_current >= value.approach_current)
          throw not_allowed(*node.find("touch_current"), "below approach_current", "else the current never gets there");
      });
  return record.kind();
}

Kind<StallGuard> stall_guard() {
  Record<StallGuard> record("stall_guard", "Switches the drive off, leads open, when it stands still under current.");
  record.need("current", &StallGuard::current, quantity("A", positive()), "a current reading from here on, either way ...")
      .need("speed", &StallGuard::speed, quantity("rad/s", positive()), "... while the shaft's readings move no faster than this ...")
      .need("time", &StallGuard::time, quantity("s", positive()), "... for so long");
  return record.kind();
}

Kind<HeatGuard> heat_guard() {
  Record<HeatGuard> record("heat_guard", "Switches the drive off, leads open, when the winding is too hot by an estimate from the current readings and the "
                                         "motor's thermal data.");
  record.need("highest", &HeatGuard::highest, quantity("K", positive()), "winding temperature at which it switches off")
      .may("ambient", &HeatGuard::ambient, quantity("K", positive()), Default{"23 degC"}, "temperature of the surroundings, as the firmware takes it")
      .check([](HeatGuard& value, const Node& node) {
        if (value.highest <= value.ambient) throw not_allowed(*node.find("highest"), "above ambient");
      });
  return record.kind();
}

Kind<Move> move() {
  Record<MoveTrapezoid> trapezoid("trapezoid", "Speed rises evenly, stays, falls evenly.");
  trapezoid.need("speed", &MoveTrapezoid::speed, quantity("rad/s", positive()), "at most")
      .need("acceleration", &MoveTrapezoid::acceleration, quantity("rad/s2", positive()), "in rising and falling");
  struct ByTime {
    double minimum_jerk = 0;
  };
  struct ByTrapezoid {
    MoveTrapezoid trapezoid;
  };
  Record<ByTime> by_time("move_minimum_jerk", "A smooth move in a given time.");
  by_time.need("minimum_jerk", &ByTime::minimum_jerk, quantity("s", positive()), "time that the move takes");
  Record<ByTrapezoid> by_trapezoid("move_trapezoid", "A move with limited speed and acceleration.");
  by_trapezoid.need("trapezoid", &ByTrapezoid::trapezoid, trapezoid.kind(), "speed and acceleration");
  const Kind<Move> maps = by_key<Move>(
      {{"minimum_jerk", turned_into<Move, ByTime>(by_time.kind(), [](const ByTime& v, const Node&) { return Move(MoveMinimumJerk{v.minimum_jerk}); })},
       {"trapezoid", turned_into<Move, ByTrapezoid>(by_trapezoid.kind(), [](const ByTrapezoid& v, const Node&) { return Move(v.trapezoid); })}});
  const Kind<Move> step = word<Move>({{"step", Move(MoveStep{})}});
  return any_of<Move>({{[](const Node& node) { return node.kind == Node::Kind::text; }, step},
                       {[](const Node& node) { return node.kind == Node::Kind::map; }, maps}},
                      "step, or a map with the key minimum_jerk or trapezoid");
}

Kind<std::optional<Name>> file_name() {
  Kind<std::optional<Name>> kind;
  kind.shown = text().shown;
  kind.read = [](const Node& node) { return std::optional(Name{text().read(node), &node}); };
  return kind;
}

Kind<WrittenLibrary> library() {
  return turned_into<WrittenLibrary, std::optional<Name>>(file_name(), [](const std::optional<Name>& name, const Node&) { return WrittenLibrary{*name}; });
}

}  // namespace

Kind<WrittenController> controller() {
  Record<WrittenController> record("controller", "Firmware of a drive, sampled in time. It sees what the drive's sensors say; a drive without a sensor or "
                                                 "current sense shows it the true value.");
  record.need("period", &WrittenController::period, quantity("s", {1e-5, std::numeric_limits<double>::infinity(), false, false, "at least 10 µs"}), "time between two samples")
      .may("voltage_limit", &WrittenController::voltage_limit, quantity("V", positive()), Absent{"the supply's open-circuit voltage"},
           "of its output, either way; what the supply cannot give, the driver cuts besides")
      .may("brown_out", &WrittenController::brown_out, quantity("V", not_negative()), Default{"0 V"},
           "while its supply gives less than this at its terminals, it is reset and the driver off, leads open; 0: it works at any voltage")
      .may("boot_time", &WrittenController::boot_time, quantity("s", not_negative()), Default{"20 ms"}, "from when the voltage is back until it begins again with what it was asked last")
      .may("speed_filter", &WrittenController::speed_filter, quantity("s", not_negative()), Default{"0 s"},
           "time constant of a low-pass on the speed that is made of the readings; 0: none")
      .one_of("program", "loops", &WrittenController::program, loops(), "a cascade of loops")
      .one_of("program", "hold", &WrittenController::program, hold_routine(), "a hold routine")
      .one_of("program", "library", &WrittenController::program, library(),
              "firmware of your own: a shared library, relative to the folder of this file, made with sinewright_firmware.h")
      .may("parameters", &WrittenController::parameters, named(any_quantity("a number with the unit that the firmware wants it in"), "parameter"), Absent{"none"},
           "numbers that a library is given, by the names that it knows")
      .may("stall_guard", &WrittenController::stall, stall_guard(), Absent{"none"}, "against standing still under current")
      .may("heat_guard", &WrittenController::heat, heat_guard(), Absent{"none"}, "against a hot winding")
      .check([](WrittenController& value, const Node& node) {
        if (!value.parameters.empty() && !std::holds_alternative<WrittenLibrary>(value.program))
          throw not_allowed(*node.find("parameters"), "no parameters here", "they belong to a 'library'; loops and a hold routine have keys of their own");
      });
  return record.kind();
}

std::vector<std::pair<std::string, Kind<WrittenCommand>>> controller_commands() {
  const auto start = [](const std::string& name, const std::string& about) {
    Record<WrittenCommand> record(name, about);
    record.need("at", &WrittenCommand::time, quantity("s", not_negative()), "when")
        .need("drive", &WrittenCommand::drive, name_of("drive"), "which drive; it has a controller");
    return record;
  };
  Record<WrittenCommand> position = start("command_position", "Let the controller bring the shaft to an angle.");
  position.need("position", &WrittenCommand::value, quantity("rad"), "of the output shaft, as its sensor counts it; positive winds the cord in")
      .may("move", &WrittenCommand::move, move(), Default{"step"}, "how the set point gets there, from the last one, else from the reading")
      .check([](WrittenCommand& c, const Node&) { c.command = SetPosition{c.value, c.move}; });
  Record<WrittenCommand> speed = start("command_speed", "Let the controller turn the shaft at a speed.");
  speed.need("speed", &WrittenCommand::value, quantity("rad/s"), "of the output shaft; positive winds the cord in")
      .check([](WrittenCommand& c, const Node&) { c.command = SetSpeed{c.value}; });
  Record<WrittenCommand> current = start("command_current", "Let the controller keep a motor current, and with it a pull.");
  current.need("current", &WrittenCommand::value, quantity("A"), "positive winds the cord in").check([](WrittenCommand& c, const Node&) {
    c.command = SetCurrent{c.value};
  });
  Record<WrittenCommand> force = start("command_force", "Let the controller make a force by a motor current.");
  force.need("force", &WrittenCommand::value, quantity("N", not_negative()), "tension of the cord at the pulley beyond what the return cord takes, or what 'share' makes of it")
      .check([](WrittenCommand& c, const Node&) { c.command = SetForce{c.value}; });
  Record<WrittenCommand> hold = start("command_hold", "Ask a hold routine for something.");
  hold.need("hold", &WrittenCommand::grasp, word<bool>({{"grasp", true}, {"release", false}}), "grasp and hold, or open")
      .check([](WrittenCommand& c, const Node&) { c.command = AskHold{c.grasp}; });
  Record<WrittenCommand> follow = start("command_follow", "Let the controller follow a recorded motion of the shaft, from its next sample on.");
  follow.need("follow", &WrittenCommand::recorded, file_name(),
              "CSV file, relative to the folder of this file: a head with units, such as time [s], shaft [deg]; two columns; linear in between");
  return {{"position", position.kind()}, {"speed", speed.kind()}, {"current", current.kind()}, {"force", force.kind()}, {"follow", follow.kind()}, {"hold", hold.kind()}};
}

}  // namespace sinewright::reading
