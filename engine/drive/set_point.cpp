#include "drive/set_point.h"

#include <algorithm>
#include <cmath>

#include "model/overloaded.h"

namespace sinewright::drive {
namespace {

struct Trapezoid {
  double top = 0;   // speed reached
  double rise = 0;  // time to get there
  double flat = 0;
};

Trapezoid shape_of(const model::MoveTrapezoid& move, double distance) {
  const double way = std::abs(distance);
  const double top = std::min(move.speed, std::sqrt(move.acceleration * way));
  if (top == 0) return {};
  return {top, top / move.acceleration, std::max(0.0, way / top - top / move.acceleration)};
}

SetPoint along_trapezoid(const model::MoveTrapezoid& move, double from, double to, double time) {
  const Trapezoid shape = shape_of(move, to - from);
  const double whole = 2 * shape.rise + shape.flat;
  if (time >= whole) return {to, 0};
  const double sign = to < from ? -1 : 1, a = sign * move.acceleration;
  if (time < shape.rise) return {from + 0.5 * a * time * time, a * time};
  if (time < shape.rise + shape.flat) return {from + sign * shape.top * (time - 0.5 * shape.rise), sign * shape.top};
  const double left = whole - time;
  return {to - 0.5 * a * left * left, a * left};
}

}  // namespace

double duration(const model::Move& move, double from, double to) {
  return std::visit(overloaded{[](const model::MoveStep&) { return 0.0; },
                               [&](const model::MoveTrapezoid& trapezoid) {
                                 const Trapezoid shape = shape_of(trapezoid, to - from);
                                 return 2 * shape.rise + shape.flat;
                               },
                               [](const model::MoveMinimumJerk& jerk) { return jerk.time; }},
                    move);
}

SetPoint along(const model::Move& move, double from, double to, double time) {
  if (time <= 0 && !std::holds_alternative<model::MoveStep>(move)) return {from, 0};
  return std::visit(overloaded{[&](const model::MoveStep&) { return SetPoint{to, 0}; },
                               [&](const model::MoveTrapezoid& trapezoid) { return along_trapezoid(trapezoid, from, to, time); },
                               [&](const model::MoveMinimumJerk& jerk) {
                                 if (time >= jerk.time) return SetPoint{to, 0};
                                 const double s = time / jerk.time, way = to - from;
                                 return SetPoint{from + way * s * s * s * (10 + s * (6 * s - 15)),
                                                 way / jerk.time * 30 * s * s * (1 - s) * (1 - s)};
                               }},
                    move);
}

SetPoint along(const model::SetRecorded& recorded, double time) {
  const auto after = std::upper_bound(recorded.time.begin(), recorded.time.end(), time);
  if (after == recorded.time.begin()) return {recorded.angle.front(), 0};
  if (after == recorded.time.end()) return {recorded.angle.back(), 0};
  const auto i = static_cast<std::size_t>(after - recorded.time.begin());
  const double slope = (recorded.angle[i] - recorded.angle[i - 1]) / (recorded.time[i] - recorded.time[i - 1]);
  return {recorded.angle[i - 1] + slope * (time - recorded.time[i - 1]), slope};
}

}  // namespace sinewright::drive
