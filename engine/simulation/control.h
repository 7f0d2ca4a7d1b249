#pragma once

#include <array>
#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "drive/cascade.h"
#include "drive/firmware.h"
#include "drive/guard.h"
#include "drive/homing.h"
#include "drive/hold_routine.h"
#include "simulation/recording.h"
#include "simulation/sensing.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// What a controller saw and did at its last sample.
struct ControlReadout {
  drive::Goal::Kind loop = drive::Goal::Kind::none;  ///< the outermost loop that acts; none: it does nothing
  double time = 0;       ///< of the sample [s]
  double set_point = 0;  ///< shaft angle asked for; the reading where none is [rad]
  drive::Seen seen;
  double speed = 0;      ///< made of the readings [rad/s]
  drive::CascadeOutput out;
  drive::HoldPhase phase = drive::HoldPhase::open;  ///< of a hold routine
  double current_limit = 0;      ///< that a hold routine or firmware asks of the driver [A]; 0: none
  int driver = SINEWRIGHT_LEADS_OPEN;               ///< what firmware of the user's own asks of it: SINEWRIGHT_LEADS_OPEN …
  std::array<double, SINEWRIGHT_TOLD> told{};       ///< and what it tells
  double winding_estimate = 0;   ///< of the heat guard [K]
  drive::Trip tripped = drive::Trip::none;
  double tension = 0;   ///< cord tension at the pulley that a force asked for takes [N]; 0 where none is
  double offset = 0;    ///< that homing found for the readings; `seen` has it in [rad]
  bool down = false;    ///< browned out, or starting again
};

constexpr double not_yet = std::numeric_limits<double>::quiet_NaN();

/// How well a controller's moves went.
struct ControlMeasures {
  double settling = 0;   ///< longest, from the command's first sample to the last entry into the 5 % band; NaN: one did not settle [s]
  double overshoot = 0;  ///< largest, as a share of the move
  ErrorSize tracking;    ///< shaft angle less set point, by time [rad]
  bool moved = false;    ///< there was a move to measure
  double tripped_at = not_yet;  ///< first trip of a guard [s]
  ErrorSize tension;            ///< true cord tension at the pulley less the one that the force asked for takes, by time [N]
  double tension_off = 0;       ///< the same at the end of each force that was asked for, as a share of it; the largest
  bool pulled = false;          ///< there was a force to measure
  double safe_after = not_yet;  ///< from when the shaft last came to rest under current before it (else from the trip) until it is at rest without [s]
};

/// The controllers of a scenario, sampled while a run goes on. Between its samples a controller's output stands still, and steps end
/// at every sample of one that acts. It sees the last samples of the drive's sensors; where there is none, the true value.
class Control {
 public:
  /// @throws InvalidInput if a heat guard has no thermal data to go by, or firmware of the user's own cannot be loaded.
  explicit Control(const System& system);

  [[nodiscard]] bool has(std::size_t drive) const { return static_cast<bool>(units_[drive].controller); }

  /// Appends what there is to tell before the run: which firmware was loaded.
  void introduce(std::vector<Event>& events) const;

  /// Takes a command of the timeline, from the controller's next sample on. @param time  now [s].
  void take(std::size_t drive, const model::Command& command, double time);
  /// Another command took the drive away from its controller, which forgets all.
  void leave(std::size_t drive, DriveCommand& command);
  /// The timeline changed the driver's current limit.
  void set_limit(std::size_t drive, DriveCommand& command);

  /// Next sample of a controller that acts; infinite if none does [s].
  [[nodiscard]] double next_sample() const;
  /// Its supply gives too little, or it is starting again: the drive has no power.
  [[nodiscard]] bool down(std::size_t drive) const { return units_[drive].readout.down; }

  /// Works out the samples that are due now. Allocates nothing as long as there is no event to tell.
  /// @throws SimulationError if firmware of the user's own puts out what is no number.
  void sample(const Stage& stage, const State& state, const Sensing& sensing, std::vector<DriveCommand>& commands, std::vector<Event>& events);
  /// Takes an accepted step of this length for the measures.
  void look(const Stage& stage, const State& state, double step);

  [[nodiscard]] const ControlReadout& readout(std::size_t drive) const { return units_[drive].readout; }
  [[nodiscard]] ControlMeasures measures(std::size_t drive) const;

  /// Its numbers for the summary, see docs/user-guide/summary.md.
  void add_to(std::vector<SummaryValue>& summary) const;

 private:
  // The position that is asked for, from when on.
  struct Course {
    double begin = 0, from = 0;
    const model::Command* command = nullptr;  // SetPosition or SetRecorded
  };
  // A move on its way, as its measures see it.
  struct Move {
    double begin = 0, from = 0, to = 0;
    double outside = 0;      // last time out of the band
    double last_off = 0;     // by how much the angle was out of the band at the last look
    double last_time = 0;
  };
  struct Unit {
    const model::Controller* controller = nullptr;
    std::unique_ptr<drive::Firmware> own;
    bool own_is_on = false;
    long own_began = 0;           // number of the sample at which it was switched on
    std::uint32_t requests = 0;   // that it got since
    const model::Command* waiting = nullptr;  // taken, not begun
    const model::Command* acting = nullptr;
    std::optional<Course> course;
    long next = 0, last = -1;  // numbers of samples
    double driver_limit = 0;   // of the driver itself [A]
    double back_since = not_yet;  // voltage after a brown-out [s]
    int cord = -1;                // that the drive winds, index into System::cords
    bool raises = true;           // the force asked for
    double tension_error = not_yet;  // of the force asked for, at the last look, as a share
    drive::HomingMemory homing;
    drive::SpeedReading speed;
    drive::CascadeMemory memory;
    drive::HoldMemory hold;
    drive::GuardMemory guard;
    double at_rest_since = not_yet;  // under current
    double trip_began = not_yet;
    ControlReadout readout;
    std::optional<Move> move;
    ControlMeasures measures;
  };
  // It acts, will act, or was switched off by a guard, after which it goes on looking.
  [[nodiscard]] static bool samples(const Unit& unit);
  // Hardware, not program: it acts at once.
  void brown_out(Unit& unit, double time, double voltage, DriveCommand& command, std::vector<Event>& events);
  // True once it may work.
  bool starts_again(Unit& unit, double time, double voltage, std::vector<Event>& events);
  void forget(Unit& unit);
  // One sample of the search for the zero; true while it goes on, or has failed.
  bool seeks_zero(Unit& unit, const model::Drive& drive, double time, drive::Seen& seen, DriveCommand& command, std::vector<Event>& events);
  void run_loops(Unit& unit, double time, const drive::Seen& seen, DriveCommand& command);
  void run_own(Unit& unit, double time, const sinewright_inputs& pins, DriveCommand& command);
  void run_hold(Unit& unit, const std::string& name, double time, const drive::Seen& seen, DriveCommand& command, std::vector<Event>& events);
  void switch_off(Unit& unit, const std::string& name, double time, drive::Trip trip, DriveCommand& command, std::vector<Event>& events);
  [[nodiscard]] drive::SetPoint set_point(const Unit& unit, double time) const;
  void begin(Unit& unit, double time, double reading);
  static void close(Unit& unit);
  static void close(const Move& move, ControlMeasures& measures);

  const System& system_;
  std::vector<Unit> units_;  // per drive
};

/// Two times that are this close are the same instant, written or rounded differently [s].
constexpr double same_instant = 1e-10;

/// True for a command that only a controller understands.
[[nodiscard]] bool for_controller(const model::Command& command);
/// Such a command in words: "shaft to 200 deg in 0.4 s".
[[nodiscard]] std::string asked_of_controller(const model::Command& command);

}  // namespace sinewright::simulation
