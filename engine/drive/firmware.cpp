#include "drive/firmware.h"

#include <dlfcn.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "quantity/invalid_input.h"
#include "quantity/nearest.h"
#include "quantity/quantity.h"

namespace sinewright::drive {
namespace {

namespace fs = std::filesystem;

constexpr const char* entry_name = "sinewright_this_firmware";
constexpr std::uint32_t largest_state = 1u << 20;  // [bytes]; more is a mistake, not a state
constexpr std::uint32_t most_parameters = 1000;

InvalidInput trouble(const Place& place, const std::string& what, const std::string& needed) {
  const std::string where = place.line > 0 ? fmt::format("{}:{}:{}: ", place.file, place.line, place.column) : std::string();
  return InvalidInput(fmt::format("{}{}\n  needed: {}", where, what, needed));
}

std::string checksum_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::uint64_t sum = 14695981039346656037u;
  for (auto it = std::istreambuf_iterator<char>(in); it != std::istreambuf_iterator<char>(); ++it)
    sum = (sum ^ static_cast<unsigned char>(*it)) * 1099511628211u;
  return fmt::format("{:016x}", sum);
}

bool sizes_fit(const sinewright_firmware& f) {
  return f.settings_size == sizeof(sinewright_settings) && f.inputs_size == sizeof(sinewright_inputs) &&
         f.outputs_size == sizeof(sinewright_outputs) && f.parameter_size == sizeof(sinewright_parameter);
}

// The numbers of the scenario in the order of the firmware's list.
std::vector<double> settle(const sinewright_firmware& firmware, const model::OwnFirmware& wanted) {
  std::vector<std::string> known;
  std::vector<double> values;
  for (std::uint32_t i = 0; i < firmware.parameter_count; ++i) {
    const sinewright_parameter& parameter = firmware.parameters[i];
    const std::string name = parameter.name ? parameter.name : "";
    const std::string unit = parameter.unit ? parameter.unit : "1";
    known.push_back(name);
    const auto given = std::find_if(wanted.parameters.begin(), wanted.parameters.end(), [&](const auto& p) { return p.name == name; });
    if (given == wanted.parameters.end()) {
      if (parameter.required)
        throw trouble(wanted.place, fmt::format("the firmware {} wants the parameter '{}'", wanted.library, name),
                      fmt::format("'{}' below 'parameters', in {}", name, unit));
      values.push_back(parameter.standard);
      continue;
    }
    if (!same_dimension(given->unit.empty() ? "1" : given->unit, unit))
      throw trouble(given->place, fmt::format("parameters.{} is in '{}'; the firmware {} wants it in {}", name, given->unit, wanted.library, unit),
                    describe_dimension(unit));
    values.push_back(given->value);
  }
  for (const model::NamedNumber& given : wanted.parameters) {
    if (std::find(known.begin(), known.end(), given.name) != known.end()) continue;
    const std::string near = nearest(given.name, known);
    std::string list;
    for (const std::string& name : known) list += (list.empty() ? "" : ", ") + name;
    throw trouble(given.place, fmt::format("parameters.{}: the firmware {} has no parameter of this name", given.name, wanted.library),
                  (list.empty() ? std::string("no parameter; this firmware has none") : "one of: " + list) +
                      (near.empty() ? "" : fmt::format("\n  hint:   the nearest known one is '{}'", near)));
  }
  return values;
}

}  // namespace

void Firmware::Close::operator()(void* library) const { dlclose(library); }

Firmware::Firmware(const model::OwnFirmware& wanted, double period, double voltage_limit, double supply_voltage) : wanted_(wanted) {
  const std::string how = "a shared library, made of your source by: cc -std=c99 -O2 -shared -fPIC -I <folder of sinewright_firmware.h> -o " +
                          wanted.library + " <your source>.c";
  if (!fs::is_regular_file(wanted.library)) throw trouble(wanted.place, fmt::format("there is no firmware library {}", wanted.library), how);
  // An absolute path, so that no search path of the loader's has a say.
  const fs::path file = fs::absolute(wanted.library);
  library_.reset(dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL));
  if (!library_) {
    const char* said = dlerror();
    throw trouble(wanted.place, fmt::format("the firmware library {} cannot be loaded: {}", wanted.library, said ? said : "no reason given"), how);
  }
  firmware_ = static_cast<const sinewright_firmware*>(dlsym(library_.get(), entry_name));
  if (!firmware_)
    throw trouble(wanted.place, fmt::format("the library {} is no firmware: it does not define {}", wanted.library, entry_name),
                  fmt::format("const sinewright_firmware {} = {{...}}; in the source, as sinewright_firmware.h says", entry_name));
  if (firmware_->version != SINEWRIGHT_FIRMWARE_VERSION || !sizes_fit(*firmware_))
    throw trouble(wanted.place,
                  fmt::format("the firmware library {} was made for version {} of sinewright_firmware.h{}", wanted.library, firmware_->version,
                              firmware_->version == SINEWRIGHT_FIRMWARE_VERSION ? ", with structs of other sizes" : ""),
                  fmt::format("version {}: compile it again with the sinewright_firmware.h of this program", SINEWRIGHT_FIRMWARE_VERSION));
  if (!firmware_->init || !firmware_->step) throw trouble(wanted.place, fmt::format("the firmware {} has no init or no step", wanted.library), "both");
  if (firmware_->state_size > largest_state || firmware_->parameter_count > most_parameters ||
      (firmware_->parameter_count > 0 && !firmware_->parameters))
    throw trouble(wanted.place, fmt::format("the firmware {} wants a state of {} bytes and {} parameters", wanted.library, firmware_->state_size, firmware_->parameter_count),
                  fmt::format("at most {} bytes and {} parameters, with a list of them", largest_state, most_parameters));
  parameter_ = settle(*firmware_, wanted);
  state_.resize(std::max<std::size_t>(firmware_->state_size, 1));
  settings_ = {period, voltage_limit, supply_voltage, parameter_.data()};
  description_ = fmt::format("'{}' from {}, checksum {}", firmware_->name ? firmware_->name : "without a name", wanted.library, checksum_of(file));
}

Firmware::~Firmware() = default;

void Firmware::power_on() {
  std::fill(state_.begin(), state_.end(), std::byte{0});
  if (const std::int32_t code = firmware_->init(state_.data(), &settings_); code != 0)
    throw trouble(wanted_.place, fmt::format("the firmware {} refuses its settings: its init gave {}", wanted_.library, code),
                  "what its source says about this number: parameters or a period that suit it");
}

sinewright_outputs Firmware::step(const sinewright_inputs& inputs) {
  sinewright_outputs outputs{};
  firmware_->step(state_.data(), &inputs, &outputs);
  return outputs;
}

std::string fault_of(const sinewright_outputs& o) {
  if (o.mode < SINEWRIGHT_LEADS_OPEN || o.mode > SINEWRIGHT_DRIVE_DUTY) return fmt::format("a mode of {}, which is none", o.mode);
  if (o.mode >= SINEWRIGHT_DRIVE_VOLTAGE && !std::isfinite(o.drive))
    return o.mode == SINEWRIGHT_DRIVE_VOLTAGE ? "a voltage that is not a finite number" : "a duty that is not a finite number";
  if (!std::isfinite(o.current_limit) || o.current_limit < 0) return "a current limit that is negative or not a finite number";
  for (const double told : o.told)
    if (!std::isfinite(told)) return "something to tell that is not a finite number";
  return {};
}

}  // namespace sinewright::drive
