// Loading firmware of the user's own: what is checked before it may run.

#include <filesystem>
#include <fstream>
#include <string>

#include <catch2/catch.hpp>

#include "drive/firmware.h"
#include "quantity/invalid_input.h"

namespace {

using namespace sinewright;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

model::OwnFirmware library(const std::string& name) { return {std::string(SINEWRIGHT_FIRMWARE_FOLDER "/") + name + ".so", {"scenario.yaml", 7, 14}, {}}; }

std::string message_of(const model::OwnFirmware& wanted) {
  try {
    drive::Firmware(wanted, 1e-3, 6, 6).power_on();
  } catch (const InvalidInput& error) {
    return error.what();
  }
  return "";
}

}  // namespace

TEST_CASE("firmware: a library that cannot be used is refused with its place, and how to make one", "[errors]") {
  CHECK_THAT(message_of(library("there_is_none")), StartsWith("scenario.yaml:7:14: there is no firmware library") && Contains("cc -std=c99 -O2 -shared -fPIC"));
  CHECK_THAT(message_of(library("no_symbol")), StartsWith("scenario.yaml:7:14: ") && Contains("does not define sinewright_this_firmware"));
  CHECK_THAT(message_of(library("other_version")), Contains("was made for version 2 of sinewright_firmware.h") && Contains("needed: version 1"));
  CHECK_THAT(message_of(library("other_sizes")), Contains("with structs of other sizes"));
  CHECK_THAT(message_of(library("no_step")), Contains("has no init or no step"));
  CHECK_THAT(message_of(library("huge_state")), Contains("wants a state of 2147483647 bytes"));
  CHECK_THAT(message_of(library("refuses")), Contains("refuses its settings: its init gave 42"));
  CHECK(message_of(library("as_asked")).empty());

  const auto text = std::filesystem::temp_directory_path() / "sinewright_no_library.so";
  std::ofstream(text) << "this is no library\n";
  CHECK_THAT(message_of({text.string(), {"s.yaml", 1, 1}, {}}), Contains("cannot be loaded"));
  std::filesystem::remove(text);
  CHECK_THAT(message_of({std::filesystem::temp_directory_path().string(), {"s.yaml", 1, 1}, {}}), Contains("there is no firmware library"));
}

TEST_CASE("firmware: its parameters are matched by name and unit", "[errors]") {
  auto wanted = library("position_loop");
  CHECK_THAT(message_of(wanted), Contains("wants the parameter 'gain'") && Contains("in V/rad"));
  wanted.parameters = {{"gain", 4, "V/rad", {"scenario.yaml", 9, 13}}};
  CHECK(message_of(wanted).empty());
  wanted.parameters[0].unit = "A/rad";
  CHECK_THAT(message_of(wanted), StartsWith("scenario.yaml:9:13: parameters.gain is in 'A/rad'") && Contains("V/rad"));
  wanted.parameters[0].unit = "V/rad";
  wanted.parameters.push_back({"integrale", 1, "", {"scenario.yaml", 10, 18}});
  CHECK_THAT(message_of(wanted), StartsWith("scenario.yaml:10:18: parameters.integrale") && Contains("nearest known one is 'integral'"));
  wanted.parameters.pop_back();
  wanted.parameters[0].value = -1;
  CHECK_THAT(message_of(wanted), Contains("its init gave 3"));
}

TEST_CASE("firmware: a step works on a zeroed state block of its own, also after power comes back") {
  auto wanted = library("position_loop");
  wanted.parameters = {{"gain", 4, "V/rad", {}}, {"integral", 100, "V/rad/s", {}}};
  drive::Firmware one(wanted, 0.1, 6, 6), other(wanted, 0.1, 6, 6);
  one.power_on();
  other.power_on();
  sinewright_inputs in{};
  in.set_point = 0.1;
  CHECK(one.step(in).drive == 0.4);
  CHECK(one.step(in).drive == 0.4 + 100 * 0.1 * 0.1);
  CHECK(other.step(in).drive == 0.4);
  one.power_on();
  CHECK(one.step(in).drive == 0.4);
  CHECK(one.step(in).told[0] == 2);
}

TEST_CASE("firmware: outputs that are no numbers or name no mode are faults") {
  sinewright_outputs out{};
  CHECK(drive::fault_of(out).empty());
  out.mode = SINEWRIGHT_DRIVE_VOLTAGE;
  out.drive = -3;
  CHECK(drive::fault_of(out).empty());
  out.drive = std::numeric_limits<double>::quiet_NaN();
  CHECK_THAT(drive::fault_of(out), Contains("a voltage that is not a finite number"));
  out.mode = SINEWRIGHT_LEADS_SHORTED;  // it is not used then
  CHECK(drive::fault_of(out).empty());
  out.mode = 4;
  CHECK_THAT(drive::fault_of(out), Contains("a mode of 4"));
  out = {};
  out.current_limit = -1;
  CHECK_THAT(drive::fault_of(out), Contains("current limit"));
}
