#pragma once

#include <optional>
#include <string>
#include <vector>

#include "contact/closest_points.h"
#include "contact/contact_law.h"
#include "dynamics/tree.h"
#include "drive/pulley.h"
#include "friction/hinge_limit.h"
#include "friction/slide_limit.h"
#include "friction/tension_law.h"
#include "geometry/cord_path.h"
#include "model/scenario.h"

namespace sinewright::simulation {

using Eigen::MatrixXd;
using Eigen::Vector3d;
using Eigen::VectorXd;

/// One hinge of the model as the solver sees it.
struct HingeJoint {
  int body = -1;  ///< index into Model::bodies
  int link = -1;
  int v = -1;     ///< velocity index, also of its friction row
  int row = -1;   ///< index of its friction row, −1 if nothing rubs
  friction::HingeFriction friction;
};

/// One slide of the model as the solver sees it.
struct SlideJoint {
  int body = -1;  ///< index into Model::bodies
  int link = -1;
  int v = -1;     ///< velocity index, also of its friction row
  int row = -1;   ///< index of its friction row, −1 without a slideway
  friction::SlideFriction friction;
};

/// Shaft coordinates of one drive. Angles and torques are those of the output shaft; the rotor counts times its ratio.
struct Shaft {
  int v_output = -1;  ///< pulley
  int v_rotor = -1;   ///< rotor / ratio; the same as v_output without backlash
  int q_output = -1;
  int q_rotor = -1;
  int row = -1;       ///< friction row of brushes, cogging, gear drag and the gear's loss cone; acts on v_rotor
};

struct CordSystem {
  int cord = -1;   ///< index into Model::cords
  int drive = -1;  ///< drive whose pulley winds it, −1 if both ends are tied
  geometry::CordPath path;
  friction::TensionFunction law;
  double damping_time = 0;
  std::optional<drive::CordPulley> pulley;  ///< of a cord that a drive winds
};

/// A shape of a body and an object that may touch, or two objects.
struct ContactCandidate {
  std::string name;  ///< "<body>" or "<body>.<shape>", unique; with "@<object>" where there are several objects; "<rider>@<object>"
                     ///< or "<rider>.foot1@<object>" between objects
  int body = -1;     ///< −1 between objects
  int rider = -1;    ///< the object in place of a body, else −1
  int object = -1;
  int link_a = -1;   ///< of the body or rider
  int link_b = -1;   ///< of the object
  contact::ShapePair shapes;
  contact::ContactPair law;
  contact::Bound bound_a, bound_b;
};

/// What is built once from a scenario and never changes while it runs. Velocities are ordered: tree, then shafts.
struct System {
  explicit System(model::Scenario scenario);

  model::Scenario scenario;
  dynamics::Tree tree;
  std::vector<int> link_of_body;
  std::vector<int> link_of_object;
  std::vector<HingeJoint> hinges;
  std::vector<SlideJoint> slides;
  std::vector<Shaft> shafts;  ///< per drive
  std::vector<CordSystem> cords;
  std::vector<ContactCandidate> contacts;
  int n_q = 0;
  int n_v = 0;
  int n_rows = 0;
  VectorXd start_q;  ///< n_q
  std::vector<int> bend_entry;  ///< per cord: ledger index of its first node
  int hinge_entry = 0;          ///< ledger index of the first hinge's friction
  int slide_entry = 0;          ///< ledger index of the first slide's friction
  int charge_entry = 0;         ///< ledger index of the first supply's charge
  int ledger_size = 0;

  [[nodiscard]] const model::Model& model() const { return scenario.model; }

 private:
  void add_object_contacts();
};

/// Value of a course at a time: linear between points, constant outside.
[[nodiscard]] double value_at(const model::Course& course, double time);

/// Index of the hinge of a body, −1 if it has none.
[[nodiscard]] int hinge_of_body(const System& system, int body);

/// True when a body slides, or hangs on one that does: it shares or passes on a pull, and is no phalanx of a finger.
[[nodiscard]] bool rides_on_slide(const model::Model& model, int body);

/// True for a cord (index into `System::cords`) that opens joints: tied at both ends, and to nothing that slides.
[[nodiscard]] bool returns(const System& system, std::size_t cord);

}  // namespace sinewright::simulation
