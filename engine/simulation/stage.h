#pragma once

#include <vector>

#include "drive/motor.h"
#include "dynamics/tree.h"
#include "friction/cord_chain.h"
#include "simulation/state.h"
#include "simulation/system.h"
#include "solver/friction_rows.h"

namespace sinewright::simulation {

/// Where an implicit stage starts from: the end state x solves x = base + a·rate(x).
struct StageBase {
  VectorXd q, v;
  std::vector<friction::ChainState> cords;
  std::vector<Vector3d> spring;
};

/// What a contact candidate does at the end of a stage.
struct ContactResult {
  bool near = false;  ///< the closest points were looked up
  contact::ClosestPoints closest;
  double normal_force = 0;
  double elastic_force = 0;                      ///< normal force without damping [N]
  double elastic_energy = 0;                     ///< normal and tangential [J]
  Vector3d tangent_force = Vector3d::Zero();     ///< on the body [N]
  Vector3d force = Vector3d::Zero();             ///< whole force on the body [N]
  Vector3d point = Vector3d::Zero();             ///< where it acts, world [m]
  Vector3d spring = Vector3d::Zero();            ///< new elastic slip [m]
  Vector3d velocity = Vector3d::Zero();          ///< of the body against the object at the point [m/s]
  bool slips = false;
};

struct ShaftResult {
  drive::ElectricState electric;
  double load_torque = 0;      ///< of the load on the gear's output side [N m]
  double friction_torque = 0;  ///< of the shaft's friction row (brushes, gear), signed as a torque on the shaft [N m]
  double motor_torque = 0;     ///< ratio × k × current, before all drag [N m]
  double cone_share = 0;       ///< part of the present friction limit that is the gear's load-dependent loss [–]
  double gear_drag_share = 0;  ///< part that is the gear's constant drag [–]
  double stored = 0;           ///< in the gear's torsion when there is backlash [J]
};

struct SupplyResult {
  double voltage = 0;  ///< at the terminals [V]
  double current = 0;  ///< that its drives draw together [A]
};

struct HingeResult {
  double friction_torque = 0;  ///< [N m]
  double friction_limit = 0;   ///< kinetic [N m]
  double stop_torque = 0;      ///< positive pushes towards flexion [N m]
  double stop_energy = 0;      ///< [J]
  double stop_loss = 0;        ///< [W]
  double radial_reaction = 0;  ///< on the pin [N]
  double axial_reaction = 0;   ///< [N]
};

/// The few velocities that something depends on. What is kept for them alone has a row for each, in their order.
struct Reach {
  std::vector<int> v;    ///< velocity indices, rising
  std::vector<int> row;  ///< per velocity index: its place in `v`, −1: not reached

  [[nodiscard]] int size() const { return static_cast<int>(v.size()); }
};

struct SlideResult {
  double friction_force = 0;  ///< along the axis [N]
  double friction_limit = 0;  ///< kinetic [N]
  double normal_force = 0;    ///< sum of what the ends of the slideway are pressed with, preload included [N]
  double stop_force = 0;      ///< positive pushes along the axis [N]
  double stop_energy = 0;     ///< [J]
  double stop_loss = 0;       ///< [W]
};

/// One implicit (backward-Euler shaped) stage: finds velocities, tensions, slips, contact and friction forces together, by
/// a semismooth Newton iteration in the velocities whose every step solves the dry friction exactly. Cords and contacts
/// enter as return mappings with their consistent tangents. Allocates only in the constructor.
/// See docs/numerics.md, section "One stage".
class Stage {
 public:
  explicit Stage(const System& system);

  /// Corrections of the velocities below this size (each against the scale of its kind, see `velocity_scale`) end the
  /// iteration; at rest it tightens by itself so that nothing drifts.
  void set_resolution(double resolution) { resolution_ = resolution; }

  /// What `hold` goes by: friction limits of hinges and slides and places of contact (points and normals, carried by their bodies) of an
  /// accepted state.
  struct Memory {
    struct Place {
      bool known = false;
      Vector3d on_a = Vector3d::Zero(), on_b = Vector3d::Zero(), normal = Vector3d::UnitX();  // in the frames of A, B, B
    };
    std::vector<Place> place;   ///< per contact candidate
    std::vector<double> limit;        ///< per hinge [N m]
    std::vector<double> slide_limit;  ///< per slide [N]
  };
  [[nodiscard]] Memory make_memory() const;
  /// Writes down the solved stage. Allocates nothing.
  void remember(Memory& memory) const;

  /// Last resort where a stage has no solution: reaction and friction of a rigid pin may contradict each other, and the nearest
  /// point of a flat contact may jump from end to end. Friction limits and places of contact then stay those of the last
  /// accepted state. @param memory  null: off.
  void hold(const Memory* memory) { held_ = memory; }

  struct Result {
    bool solved = false;
    int iterations = 0;
    double residual = 0;      ///< largest last velocity correction, scaled [–]
    int worst = -1;           ///< velocity index of that correction
  };

  /// @param start  state at the start of the step: which rows stick, which nodes slip.
  /// @param base   see StageBase. @param a  [s]. @param time  at the end of the stage.
  /// @param v      first guess in, solution out.
  Result solve(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands, double a,
               double time, VectorXd& v);

  /// Fills kinematics, paths, tensions, contacts from a state as it stands, without solving for anything.
  void look(const State& state);

  /// Copies the solved stage into a state (q, v, cords, springs, modes, time); temperatures are left alone.
  void store(State& state) const;

  /// Power of every account at the solved stage [W]; inputs positive in, losses positive lost.
  void powers(const StageBase& base, Ledger& power) const;
  /// Torque of one cord about a velocity's axis at the solved stage [N m]: −Σ T ∂L/∂q.
  [[nodiscard]] double cord_torque(std::size_t cord, int velocity) const;
  /// What contacts, loads, springs and weight do to a link together, about its centre of mass, world axes; of an object that moves
  /// freely: its mass times its acceleration [N, N m].
  [[nodiscard]] dynamics::Force net_force(int link) const;
  /// Energy stored in the solved stage [J].
  [[nodiscard]] double stored_energy() const;

  // Results of the last solve, for recording.
  dynamics::Kinematics kinematics;
  std::vector<geometry::PathGeometry> path;     ///< per cord
  std::vector<friction::ChainSolution> chain;   ///< per cord
  std::vector<ContactResult> contact;           ///< per candidate
  std::vector<ShaftResult> shaft;               ///< per drive
  std::vector<SupplyResult> supply;             ///< per supply
  std::vector<HingeResult> hinge;               ///< per hinge
  std::vector<SlideResult> slide;               ///< per slide
  std::vector<solver::Mode> mode;               ///< per friction row
  std::vector<bool> hangs;                      ///< per cord: it is broken
  VectorXd q, v;
  long iterations_total = 0;

 private:
  void evaluate(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands);
  void numeric_tangent(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands);
  void set_prescribed();
  void evaluate_cords(const State& start, const StageBase& base);
  void let_hang(std::size_t cord, const StageBase& base);
  [[nodiscard]] const drive::CordPulley& pulley_of(const State& start, std::size_t cord) const;
  void evaluate_contacts(const StageBase& base);
  void evaluate_objects();
  void evaluate_string(const model::Object& object, const model::HeldByString& string, int link_index);
  void evaluate_loads();
  void evaluate_hinges(const State& start);
  void evaluate_slides(const State& start);
  void evaluate_shafts(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands);
  void add_gradient(int link, const dynamics::Force& force, const Reach& reach, Eigen::Ref<VectorXd> gradient) const;

  const System& system_;
  double resolution_ = 1e-6;
  const Memory* held_ = nullptr;
  double a_ = 0;
  double time_ = 0;
  VectorXd rate_;      // v̇ of the stage
  VectorXd scale_;
  solver::FrictionSolve rows_;
  std::vector<dynamics::Inertia> composite_;
  std::vector<dynamics::Force> external_;      // per link
  std::vector<dynamics::Motion> acceleration_;
  std::vector<dynamics::Force> transmitted_;
  MatrixXd mass_;
  std::vector<Reach> cord_reach_;              // per cord: joints between the bodies on its way, and its drive's pulley
  std::vector<MatrixXd> span_gradient_;        // per cord: reach × spans, dL_s/dq
  std::vector<MatrixXd> tension_by_v_;         // per cord: reach × spans, dT_s/dv
  std::vector<std::vector<std::size_t>> cords_beyond_;  // per hinge: cords that pull on something beyond it
  std::vector<Reach> contact_reach_;           // per candidate: what moves either of the two
  std::vector<std::vector<friction::NodeLimit>> node_limit_;
  std::vector<drive::DriveInput> drive_input_;
  std::vector<drive::ElectricState> electric_;
  std::vector<double> command_voltage_by_v_;   // per drive
  MatrixXd contact_jacobian_;                  // its reach × 3
  MatrixXd contact_force_by_v_;                // 3 × its reach
  VectorXd load_by_v_;                         // n_v
  std::vector<drive::DriveInput> gathered_input_;
  std::vector<drive::ElectricState> gathered_state_;
  std::vector<double> supply_voltage_;          // per supply: open-circuit
  VectorXd numeric_r_, numeric_plus_, numeric_minus_;  // of `numeric_tangent`
  MatrixXd numeric_A_, numeric_plus_by_v_, numeric_minus_by_v_;
  double object_damping_power_ = 0, object_energy_ = 0, load_power_ = 0;
};

}  // namespace sinewright::simulation
