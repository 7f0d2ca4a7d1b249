#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "model/limit.h"
#include "model/scenario.h"
#include "model/study.h"
#include "quantity/quantity.h"
#include "reading/kind.h"

/// What the files say, before names are resolved to indices. Where a model type lacks nothing but an index,
/// the written form is that type plus the name.
namespace sinewright::reading {

using Eigen::Matrix3d;
using Eigen::Vector3d;

struct WrittenPair {
  std::vector<Name> between;
  double friction = 0;
  std::string source;
};

/// A part with the name of its material.
template <class Part>
struct Built : Part {
  std::optional<Name> material;
  model::Layers layers = model::Layers::weaker;
};

/// Everything a parts file may hold; a model may hold it too.
struct WrittenParts {
  Named<model::Material> materials;
  Named<model::Surface> surfaces;
  Named<WrittenPair> friction_pairs;
  Named<Built<model::Bushing>> bushings;
  Named<model::Line> lines;
  Named<model::Motor> motors;
  Named<model::Gearhead> gearheads;
};

/// The keys that every file begins with.
struct Heading {
  std::string file_kind;
  std::string name;
  std::string about;
  Place place;  // of the file
};

struct PartsFile : Heading, WrittenParts {};

/// A shape from an STL file, which is not read yet.
struct WrittenMesh {
  Name file;
  double unit = 0;  // [m]
  Vector3d at = Vector3d::Zero();
  Matrix3d turned = Matrix3d::Identity();
};

using WrittenForm = std::variant<model::Shape, WrittenMesh>;

struct WrittenSolid {
  WrittenForm shape;
  std::optional<Name> material;
  double density = 0;
};

struct WrittenOccupied {
  WrittenForm shape;
  std::optional<std::vector<Name>> inside;
};

struct WrittenShape {
  WrittenForm shape;
  Name surface;
};

struct WrittenStops : model::EndStops {
  std::vector<double> range;
};

struct WrittenSpring {
  double stiffness = 0;
  double rest = 0;
};

struct WrittenPress : model::PressFit {
  Name hub_name, pin_name;
  model::DryFriction friction;
  std::optional<std::vector<double>> range;  // of temperature
};

struct WrittenFit : model::Fit {
  std::optional<WrittenPress> written_press;
};

struct WrittenPin : Built<model::Pin> {
  std::optional<WrittenFit> written_fit;
};

struct WrittenHinge : model::Hinge {
  Name joint;
  Name parent_name;
  std::optional<WrittenPin> written_pin;
  std::optional<Built<model::Lug>> written_lug;
  std::optional<Built<model::Washers>> written_washers;
  std::optional<Name> bushing_name;
  std::optional<WrittenSpring> spring;
};

struct WrittenSlide : model::Slide {
  Name joint;
  Name parent_name;
  std::optional<WrittenSpring> spring;
};

struct WrittenBody {
  std::optional<WrittenHinge> hinge;
  std::optional<WrittenSlide> slide;
  std::optional<model::Fixed> fixed;
  std::optional<model::MassProperties> mass;
  std::vector<WrittenSolid> solids;
  Named<WrittenShape> shapes;
  model::Price price;
  Named<WrittenOccupied> occupies;
};

struct WrittenPulley : Built<model::Pulley> {
  std::optional<Built<model::KnotSeat>> written_seat;
};

struct WrittenDrive {
  Name body, supply, motor, gearhead;
  double current_limit = 0;
  WrittenPulley pulley;
  std::optional<model::Touch> touch;
  std::optional<model::Sensor> sensor;
  std::optional<model::CurrentSense> current_sense;
  std::optional<model::ShaftSeat> shaft;
  std::optional<std::vector<Name>> inside;
  Named<WrittenOccupied> occupies;
};

struct WrittenPacking {
  double clearance = model::Packing{}.clearance;
  std::vector<std::vector<Name>> may_touch;  // pairs
  std::optional<double> wrist;
  std::vector<Name> palm;
};

struct WrittenPoint {
  Vector3d at = Vector3d::Zero();
  Name in;     // a body
  Name drive;  // of a pulley end
  double radius = 0;
  Vector3d axis = Vector3d::UnitZ();
  Vector3d side = Vector3d::Zero();
  double friction_factor = 1;
  std::optional<Built<model::KnotSeat>> seat;  // of an anchor
  model::PathPoint point;  // without indices
  const Node* node = nullptr;
};

// Where a cord would leave its pulley if the drive sat as in the finger's own file.
struct WrittenInLine {
  std::size_t lead_points = 0;
  std::optional<Name> body;  // none: the point is given in the world
  Vector3d at = Vector3d::Zero();
};

struct WrittenCord {
  Name line;
  model::ChannelFriction channel;
  std::vector<WrittenPoint> path;
  double pretension = 0;
  double slack = 0;
  bool lump_bends = false;
  std::optional<model::Knot> knot;
  double allowance = 0;
  std::optional<WrittenInLine> in_line;
};

// A drive of a finger, where it sits in the hand.
struct WrittenPlace {
  std::optional<Name> body;
  std::optional<std::vector<WrittenPoint>> lead;
  std::optional<model::ShaftSeat> shaft;
  std::optional<std::vector<Name>> inside;
};

// A finger from a file of its own, on the palm.
struct WrittenFinger {
  std::string model;
  Vector3d at = Vector3d::Zero();
  Matrix3d turned = Matrix3d::Identity();
  std::optional<Name> supply;
  std::vector<Name> leave_out;
  Named<WrittenPlace> drives;
};

struct ModelFile : Heading, WrittenParts {
  std::vector<std::string> use;
  std::string currency;
  Named<model::Supply> supplies;
  Named<WrittenBody> bodies;
  Named<WrittenDrive> drives;
  Named<WrittenCord> cords;
  Named<WrittenFinger> fingers;
  Named<model::BillItem> bill;
  std::optional<WrittenPacking> packing;
};

struct WrittenObject {
  Vector3d at = Vector3d::Zero();
  Matrix3d rotation = Matrix3d::Identity();
  WrittenForm shape;
  Name surface;
  std::optional<model::MassProperties> mass;
  std::vector<WrittenSolid> solids;
  std::vector<model::Sphere> feet;
  model::Hold hold;
  Vector3d split_normal = Vector3d::UnitY();
};

/// Gains whose unit depends on the loop below.
struct WrittenLoop {
  std::optional<Quantity> gain, integral, derivative, limit;
  double derivative_filter = 0;
};

struct WrittenFeedForward {
  double speed = 0;
  std::optional<Quantity> friction, return_at_zero, return_per_angle;
};

// What differs from the model.
struct WrittenForce {
  std::optional<double> radius, torque_constant, forward_efficiency, backward_efficiency, drag, brush_drag, highest_current;
  double return_at_zero = 0, return_per_angle = 0, share = 1;
};

struct WrittenLoops {
  std::optional<WrittenLoop> position, speed, current;
  std::optional<WrittenFeedForward> feed_forward;
  std::optional<WrittenForce> force;
  std::optional<model::Homing> homing;
  model::Loops::AntiWindup anti_windup = model::Loops::AntiWindup::clamp;
  model::Loops loops;  // made of the above
};

struct WrittenLibrary {
  Name file;
};

struct WrittenController {
  double period = 0;
  std::optional<double> voltage_limit;
  double brown_out = 0, boot_time = 0;
  double speed_filter = 0;
  std::variant<WrittenLoops, model::HoldRoutine, WrittenLibrary> program;
  Named<Quantity> parameters;  // of a library
  std::optional<model::StallGuard> stall;
  std::optional<model::HeatGuard> heat;
};

struct WrittenFault {
  Name on;
  std::optional<Name> body;
  std::optional<double> reading, radius, slack;
  double voltage = 0;
  model::SensorWireOff::Reads reads = model::SensorWireOff::Reads::low;
  model::Fault fault;  // without indices
};

struct WrittenCommand {
  double time = 0;
  Name drive;
  std::optional<Name> recorded;  // file of a motion
  model::Move move;
  bool grasp = true;
  double value = 0, over = 0, gain = 0, damping = 0;
  model::Leads leads = model::Leads::open;
  model::Command command;
  std::optional<WrittenFault> fault;  // in place of a command
  std::optional<double> lasts;
};

struct WrittenLoad {
  Name on;
  Vector3d at = Vector3d::Zero();
  std::optional<Vector3d> direction;
  bool follows_body = false;
  model::Course force;
  std::optional<double> weight;  // a mass [kg]
};

struct WrittenTwist {
  Name on;
  Vector3d axis = Vector3d::UnitZ();
  bool follows_body = false;
  model::Course torque;
};

struct WrittenRequirement {
  std::string quantity;
  std::optional<Quantity> at_least, at_most;
  Place place;
};

struct ScenarioFile : Heading {
  std::string model;
  std::vector<std::string> change;
  double duration = 0;
  Vector3d gravity = Vector3d(0, -9.81, 0);
  double ambient = 296.15;
  Named<Quantity> start;
  Named<WrittenObject> objects;
  Named<WrittenController> controllers;
  std::vector<WrittenCommand> timeline;
  double safe_grip = 0;
  Named<WrittenLoad> loads;
  Named<WrittenTwist> twists;
  model::SolverSettings solver;
  double record_interval = 1e-3;
  std::vector<WrittenRequirement> require;
};

struct LimitFile : Heading {
  model::LimitStudy study;
};

struct StudyFile : Heading {
  model::Study study;
};

/// The file kinds, each described once for reading, schema and reference.
[[nodiscard]] Kind<PartsFile> parts_file();
[[nodiscard]] Kind<ModelFile> model_file();
[[nodiscard]] Kind<ScenarioFile> scenario_file();
[[nodiscard]] Kind<LimitFile> limit_file();
[[nodiscard]] Kind<StudyFile> study_file();

}  // namespace sinewright::reading
