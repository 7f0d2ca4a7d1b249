// The reduced finger that both sides can express: three hinges driven by torques in the ratio of constant moment arms (a torsion
// spring wound up far gives them), dry joint friction, end stops, a fixed cylinder. Ours against Bullet's multibody dynamics.
//
// Bullet's side gets: the float64 build, lengths in millimetres, collision margins 0, damping off, the joint speed clamp
// lifted, 100 iterations. It has no error control, so its step is varied. Error: the larger of the relative errors of closing time
// (last entry of the flexion into its 95 % band) and final flexion, against our run at a hundred times tighter tolerance; and,
// in the label, against Bullet's own run at its finest step.

#include <benchmark/benchmark.h>
#include <btBulletDynamicsCommon.h>

#include <BulletDynamics/Featherstone/btMultiBody.h>
#include <BulletDynamics/Featherstone/btMultiBodyConstraintSolver.h>
#include <BulletDynamics/Featherstone/btMultiBodyDynamicsWorld.h>
#include <BulletDynamics/Featherstone/btMultiBodyJointLimitConstraint.h>
#include <BulletDynamics/Featherstone/btMultiBodyJointMotor.h>
#include <BulletDynamics/Featherstone/btMultiBodyLinkCollider.h>

#include <array>
#include <cmath>
#include <ctime>
#include <memory>
#include <numbers>
#include <vector>

#include "simulation/run.h"

static_assert(sizeof(btScalar) == 8, "the float build of Bullet cannot resolve a finger");

namespace {

using namespace sinewright;

constexpr int joints = 3;
constexpr double duration = 1.0;  // [s]
constexpr std::array<double, joints> length = {0.045, 0.025, 0.018};       // [m]
constexpr std::array<double, joints> mass = {0.020, 0.010, 0.006};         // [kg]
// About each centre of mass, large as if a geared rotor turned with each joint: without it Bullet's explicit joint damping
// would be unstable at every step above 0.3 ms, which would not be its fair chance.
constexpr std::array<double, joints> inertia = {6e-5, 2e-5, 6e-6};         // [kg m²]
constexpr std::array<double, joints> torque = {0.030, 0.017, 0.007};       // [N m]: 3.3 N on arms of 9, 5 and 2 mm
constexpr std::array<double, joints> friction_torque = {4e-3, 3e-3, 2e-3};  // [N m]
constexpr std::array<double, joints> viscous = {6e-3, 3e-3, 1e-3};          // [N m s/rad]: closing at 4 to 5 rad/s
constexpr double radius = 0.007;                                            // of the phalanges [m]
constexpr double stop = 90 * std::numbers::pi / 180;
constexpr double rest = 1e4;  // [rad] wound-up angle of the springs that give the torques; one radian changes them by 1e-4
const Eigen::Vector3d cylinder_at(0.022, -0.036, 0);
constexpr double cylinder_radius = 0.020, cylinder_length = 0.08;
constexpr double surface_friction = 0.5;

struct Outcome {
  double closing_time = 0;  // [s]
  double flexion = 0;       // [rad]
};

Outcome outcome(const std::vector<double>& time, const std::vector<double>& flexion) {
  Outcome o{0, flexion.back()};
  for (std::size_t i = time.size() - 1; i-- > 0;) {
    const double off = std::abs(flexion[i] - o.flexion) - 0.05 * o.flexion;
    if (off <= 0) continue;
    const double next = std::abs(flexion[i + 1] - o.flexion) - 0.05 * o.flexion;
    o.closing_time = time[i] + (time[i + 1] - time[i]) * off / (off - next);
    break;
  }
  return o;
}

double error(const Outcome& a, const Outcome& reference) {
  return std::max(std::abs(a.closing_time / reference.closing_time - 1), std::abs(a.flexion / reference.flexion - 1));
}

// ---- ours

model::Scenario finger() {
  model::Scenario s;
  s.name = "reduced finger";
  s.gravity = Eigen::Vector3d::Zero();
  s.duration = duration;
  model::Model& m = s.model;
  // Hard surfaces: the side by side is with rigid contact.
  m.surfaces = {{"hard", 2e9, 0.3, 0.5, ""}};
  m.pairs = {{0, 0, surface_friction, ""}};
  model::Body base;
  base.name = "base";
  base.fixed = model::Fixed{};
  m.bodies.push_back(base);
  for (std::size_t i = 0; i < joints; ++i) {
    model::Body body;
    body.name = "phalanx" + std::to_string(i);
    model::Hinge hinge;
    hinge.name = "joint" + std::to_string(i);
    hinge.parent = static_cast<int>(i);
    if (i > 0) hinge.at = {length[i - 1], 0, 0};
    hinge.spring_rest = rest;
    hinge.spring_stiffness = torque[i] / rest;
    hinge.viscous = viscous[i];
    hinge.stops = model::EndStops{0, stop, 200, 0.02};
    // Washers under preload only: a constant friction torque, 2 preload × μ × mean radius.
    hinge.washers = model::Washers{0.002, 0.006, {0.5, 0.5}, friction_torque[i] / (2 * 0.5 * 0.002), 0, model::WasherLaw::uniform_wear};
    body.hinge = hinge;
    model::MassProperties p;
    p.mass = mass[i];
    p.center = {length[i] / 2, 0, 0};
    p.inertia = (inertia[i] * Eigen::Vector3d(0.5, 1, 1)).asDiagonal();
    body.mass = p;
    body.shapes.push_back({"skin", model::Capsule{{0.007, 0, 0}, {length[i] - 0.007, 0, 0}, radius}, 0});
    m.bodies.push_back(body);
  }
  model::Object object;
  object.name = "cylinder";
  object.at = cylinder_at;
  object.shape = {"side", model::Cylinder{{0, 0, 0}, {0, 0, 1}, cylinder_radius, cylinder_length}, 0};
  s.objects.push_back(object);
  return s;
}

Outcome run_ours(double tolerance) {
  model::Scenario s = finger();
  s.solver.tolerance = tolerance;
  const simulation::System system(s);
  simulation::Stepper stepper(system);
  simulation::State state = simulation::start_state(system);
  const std::vector<simulation::DriveCommand> none;
  std::vector<double> time, flexion;
  while (state.time < duration) {
    stepper.step(state, none, duration);
    time.push_back(state.time);
    flexion.push_back(state.q.sum());
  }
  return outcome(time, flexion);
}

// ---- Bullet, lengths in mm, masses in g: torque unit 1e-9 N m

class BulletFinger {
 public:
  explicit BulletFinger(double step) : step_(step) {
    world_.setGravity(btVector3(0, 0, 0));
    world_.getSolverInfo().m_numIterations = 100;
    body_ = std::make_unique<btMultiBody>(joints, 0.0, btVector3(0, 0, 0), true, false);
    for (int i = 0; i < joints; ++i) {
      const auto k = static_cast<std::size_t>(i);
      const double l = 1e3 * length[k], m = 1e3 * mass[k];
      const double across = 1e9 * inertia[k];
      // Flexion positive about −z, as ours; vectors lead from the parent's centre of mass to the pin and on to the own one.
      const btVector3 to_pin(i == 0 ? 0 : 1e3 * length[k - 1] / 2, 0, 0);
      body_->setupRevolute(i, m, btVector3(0.5 * across, across, across), i - 1, btQuaternion(0, 0, 0, 1), btVector3(0, 0, -1),
                           to_pin, btVector3(l / 2, 0, 0), true);
    }
    body_->finalizeMultiDof();
    body_->setLinearDamping(0);
    body_->setAngularDamping(0);
    body_->setMaxCoordinateVelocity(1e9);
    body_->setCanSleep(false);
    body_->setHasSelfCollision(false);
    world_.addMultiBody(body_.get());
    for (int i = 0; i < joints; ++i) {
      const auto k = static_cast<std::size_t>(i);
      auto motor = std::make_unique<btMultiBodyJointMotor>(body_.get(), i, 0.0, 1e9 * friction_torque[k] * step);
      world_.addMultiBodyConstraint(motor.get());
      constraints_.push_back(std::move(motor));
      auto limit = std::make_unique<btMultiBodyJointLimitConstraint>(body_.get(), i, 0.0, stop);
      world_.addMultiBodyConstraint(limit.get());
      constraints_.push_back(std::move(limit));

      const double l = 1e3 * length[k];
      auto capsule = std::make_unique<btCapsuleShapeX>(1e3 * radius, l - 14);
      auto collider = std::make_unique<btMultiBodyLinkCollider>(body_.get(), i);
      collider->setCollisionShape(capsule.get());
      collider->setFriction(surface_friction);
      collider->setRestitution(0);
      world_.addCollisionObject(collider.get(), btBroadphaseProxy::DefaultFilter, btBroadphaseProxy::StaticFilter);
      body_->getLink(i).m_collider = collider.get();
      shapes_.push_back(std::move(capsule));
      colliders_.push_back(std::move(collider));
    }
    auto bar = std::make_unique<btCylinderShapeZ>(btVector3(1e3 * cylinder_radius, 1e3 * cylinder_radius, 500 * cylinder_length));
    bar->setMargin(0);
    object_.setCollisionShape(bar.get());
    shapes_.push_back(std::move(bar));
    object_.setFriction(1);  // Bullet multiplies the two coefficients
    object_.setRestitution(0);
    btTransform pose;
    pose.setIdentity();
    pose.setOrigin(1e3 * btVector3(cylinder_at.x(), cylinder_at.y(), cylinder_at.z()));
    object_.setWorldTransform(pose);
    world_.addCollisionObject(&object_, btBroadphaseProxy::StaticFilter, btBroadphaseProxy::DefaultFilter);
  }

  ~BulletFinger() {
    for (auto& c : constraints_) world_.removeMultiBodyConstraint(c.get());
    for (auto& c : colliders_) world_.removeCollisionObject(c.get());
    world_.removeCollisionObject(&object_);
    world_.removeMultiBody(body_.get());
  }

  Outcome run() {
    std::vector<double> time, flexion;
    const int steps = static_cast<int>(std::lround(duration / step_));
    for (int n = 1; n <= steps; ++n) {
      double sum = 0;
      for (int i = 0; i < joints; ++i) {
        const auto k = static_cast<std::size_t>(i);
        body_->addJointTorque(i, 1e9 * torque[k] / rest * (rest - body_->getJointPos(i)) - 1e9 * viscous[k] * body_->getJointVel(i));
      }
      world_.stepSimulation(step_, 0);
      for (int i = 0; i < joints; ++i) sum += body_->getJointPos(i);
      time.push_back(n * step_);
      flexion.push_back(sum);
    }
    return outcome(time, flexion);
  }

 private:
  double step_;
  btDefaultCollisionConfiguration configuration_;
  btCollisionDispatcher dispatcher_{&configuration_};
  btDbvtBroadphase broadphase_;
  btMultiBodyConstraintSolver solver_;
  btMultiBodyDynamicsWorld world_{&dispatcher_, &broadphase_, &solver_, &configuration_};
  std::unique_ptr<btMultiBody> body_;
  std::vector<std::unique_ptr<btMultiBodyConstraint>> constraints_;
  std::vector<std::unique_ptr<btCollisionShape>> shapes_;
  std::vector<std::unique_ptr<btMultiBodyLinkCollider>> colliders_;
  btCollisionObject object_;
};

const Outcome& reference() {
  static const Outcome value = run_ours(1e-6);
  return value;
}
const Outcome& bullet_finest() {
  static const Outcome value = BulletFinger(1e-5).run();
  return value;
}

void ours(benchmark::State& bench) {
  const double tolerance = std::pow(10.0, -static_cast<double>(bench.range(0)) / 2);
  Outcome o;
  for (auto _ : bench) o = run_ours(tolerance);
  bench.counters["error_percent"] = 100 * error(o, reference());
  bench.counters["closing_time_s"] = o.closing_time;
  bench.counters["flexion_deg"] = o.flexion * 180 / std::numbers::pi;
  bench.SetLabel("tolerance 1e-" + std::to_string(static_cast<double>(bench.range(0)) / 2).substr(0, 3));
}
BENCHMARK(ours)->Arg(1)->Arg(2)->Arg(3)->Arg(4)->Arg(5)->Arg(6)->Arg(8)->Unit(benchmark::kMillisecond);

void bullet(benchmark::State& bench) {
  const double step = 1e-6 * static_cast<double>(bench.range(0));
  Outcome o;
  for (auto _ : bench) {
    bench.PauseTiming();
    BulletFinger finger(step);
    bench.ResumeTiming();
    o = finger.run();
  }
  bench.counters["error_percent"] = 100 * error(o, reference());
  bench.counters["error_percent_own"] = 100 * error(o, bullet_finest());
  bench.counters["closing_time_s"] = o.closing_time;
  bench.counters["flexion_deg"] = o.flexion * 180 / std::numbers::pi;
  bench.SetLabel("step " + std::to_string(bench.range(0)) + " us");
}
BENCHMARK(bullet)->Arg(4000)->Arg(2000)->Arg(1000)->Arg(500)->Arg(250)->Arg(100)->Arg(50)->Arg(20)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
