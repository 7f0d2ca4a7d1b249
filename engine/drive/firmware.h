#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "drive/sinewright_firmware.h"
#include "model/control.h"

namespace sinewright::drive {

/// A controller of the user's own: a shared library behind the C interface of sinewright_firmware.h, with a state block of its own.
/// The library is trusted: if it crashes or writes outside of its block, so does the program.
class Firmware {
 public:
  /// Loads the library; `power_on` starts it.
  /// @throws InvalidInput if there is none, it is no firmware, was made for another version of the interface, or the numbers that it
  /// wants and those it is given differ.
  Firmware(const model::OwnFirmware& wanted, double period, double voltage_limit, double supply_voltage);
  ~Firmware();
  Firmware(const Firmware&) = delete;
  Firmware& operator=(const Firmware&) = delete;

  /// Begins with a zeroed state block. @throws InvalidInput if the firmware refuses its settings.
  void power_on();
  /// One step. Allocates nothing of its own.
  [[nodiscard]] sinewright_outputs step(const sinewright_inputs& inputs);

  /// What it calls itself, which file it is, and a checksum of that file (FNV-1a, 64 bits), by which a record tells which one ran.
  [[nodiscard]] const std::string& description() const { return description_; }

 private:
  struct Close {
    void operator()(void* library) const;
  };
  std::unique_ptr<void, Close> library_;
  const sinewright_firmware* firmware_ = nullptr;
  model::OwnFirmware wanted_;
  std::vector<double> parameter_;
  std::vector<std::byte> state_;  // new gives it the alignment of any type
  sinewright_settings settings_{};
  std::string description_;
};

/// What is wrong with the outputs of a step, in words; empty if nothing is.
[[nodiscard]] std::string fault_of(const sinewright_outputs& outputs);

}  // namespace sinewright::drive
