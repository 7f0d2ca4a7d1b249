#include "reading/describe.h"

namespace sinewright::reading {
namespace {

using namespace model;

// A fault under the key that names its kind; the value names what fails.
template <class F>
Record<WrittenFault> fault_of(const std::string& key, const std::string& about, const std::string& what, const std::string& which) {
  Record<WrittenFault> record("fault_" + key, about);
  record.need(key, &WrittenFault::on, name_of(what), which).check([](WrittenFault& f, const Node&) { f.fault = F{}; });
  return record;
}

Kind<std::optional<double>> maybe(Kind<double> kind) {
  return {kind.shown, [read = kind.read](const Node& node) { return std::optional(read(node)); }};
}

Kind<WrittenFault> fault() {
  using Reads = SensorWireOff::Reads;
  Record<WrittenFault> stuck = fault_of<SensorStuck>("sensor_stuck", "The angle sensor goes on saying one thing.", "drive", "whose sensor");
  stuck.may("reading", &WrittenFault::reading, maybe(quantity("rad")), Absent{"what it said last"}, "at which it is stuck, as a shaft angle")
      .check([](WrittenFault& f, const Node&) { std::get<SensorStuck>(f.fault).reading = f.reading; });
  Record<WrittenFault> wire = fault_of<SensorWireOff>("sensor_wire_off", "The wire from the angle sensor to its converter is off.", "drive", "whose sensor");
  wire.may("reads", &WrittenFault::reads, word<Reads>({{"low", Reads::low}, {"high", Reads::high}, {"floating", Reads::floating}}), Default{"low"},
           "what the converter then says: low with a pull-down, high with a pull-up, floating without either: anything, at every sample anew")
      .check([](WrittenFault& f, const Node&) { std::get<SensorWireOff>(f.fault).reads = f.reads; });
  Record<WrittenFault> dip = fault_of<SupplyDip>("supply_dip", "The supply's open-circuit voltage is another one.", "supply", "which supply");
  dip.need("to", &WrittenFault::voltage, quantity("V", not_negative()), "the voltage that it has then")
      .check([](WrittenFault& f, const Node&) { std::get<SupplyDip>(f.fault).voltage = f.voltage; });
  Record<WrittenFault> dead = fault_of<MotorDead>("motor_dead", "The winding is open: no current, whatever the driver does.", "drive", "whose motor");
  Record<WrittenFault> broken = fault_of<CordBroken>("cord_broken", "The cord parts; all of it goes slack.", "cord", "which cord");
  broken.may("in", &WrittenFault::body, name_of("body"), Absent{"where it is loaded most for its strength"},
             "body in which it parts; of meaning for the report alone, since the whole cord goes slack");
  Record<WrittenFault> off = fault_of<CordOffPulley>("cord_off_pulley", "The cord jumps off the pulley and from now on winds on the bare shaft.", "cord", "which cord; a drive winds it");
  off.may("radius", &WrittenFault::radius, maybe(quantity("m", positive())), Absent{"half the diameter of the pulley's bore"}, "of the shaft")
      .may("slack", &WrittenFault::slack, maybe(quantity("m", not_negative())), Absent{"what the turns wound in since the straight finger are longer by on the pulley"},
           "length of cord that comes free");
  return by_key<WrittenFault>({{"sensor_stuck", stuck.kind()},
                               {"sensor_wire_off", wire.kind()},
                               {"supply_dip", dip.kind()},
                               {"motor_dead", dead.kind()},
                               {"cord_broken", broken.kind()},
                               {"cord_off_pulley", off.kind()}});
}

}  // namespace

Kind<WrittenCommand> fault_entry() {
  Record<WrittenCommand> record("fault_entry", "Something fails.");
  record.need("at", &WrittenCommand::time, quantity("s", not_negative()), "when")
      .need("fault", &WrittenCommand::fault, turned_into<std::optional<WrittenFault>, WrittenFault>(fault(), [](const WrittenFault& f, const Node&) { return std::optional(f); }),
            "what fails")
      .may("lasts", &WrittenCommand::lasts, maybe(quantity("s", positive())), Absent{"to the end"}, "for how long; a cord stays broken")
      .check([](WrittenCommand& c, const Node& node) {
        const bool mechanical = std::holds_alternative<CordBroken>(c.fault->fault) || std::holds_alternative<CordOffPulley>(c.fault->fault);
        if (mechanical && c.lasts) throw not_allowed(*node.find("lasts"), "no 'lasts' here", "a cord does not mend itself");
      });
  return record.kind();
}

}  // namespace sinewright::reading
