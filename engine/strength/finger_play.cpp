#include "strength/finger_play.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "simulation/fingertip.h"
#include "simulation/system.h"
#include "strength/hinge_fits.h"

namespace sinewright::strength {

namespace {

using Eigen::Vector3d;

void set_clearances(const model::Hinge& hinge, const HingeFits& fits, HingeShare& share) {
  if (fits.running) {
    share.radial = {std::max(0.0, fits.running->smallest_clearance),
                    std::max(0.0, fits.running->largest_clearance)};
  } else if (hinge.pin && hinge.pin->radial_clearance > 0) {
    share.radial = {hinge.pin->radial_clearance, hinge.pin->radial_clearance};
  }
  if (share.radial && fits.press && fits.press->may_be_loose()) {
    share.radial->tightest += std::max(0.0, fits.press->range.smallest_clearance);
    share.radial->loosest += fits.press->range.largest_clearance;
  }
  if (hinge.washers && hinge.washers->axial_clearance > 0) share.axial = hinge.washers->axial_clearance;
}

HingeShare share_of(const model::Hinge& hinge, const HingeFits& fits, double reach) {
  HingeShare share;
  share.hinge = hinge.name;
  share.reach = reach;
  set_clearances(hinge, fits, share);
  const double span = hinge.pin ? hinge.pin->bearing_span : 0;
  if (!share.radial) share.missing.emplace_back("pin.fit.running_hole or pin.radial_clearance");
  if (span <= 0) share.missing.emplace_back("pin.bearing_span");
  if (!share.axial) share.missing.emplace_back("washers.axial_clearance");
  if (share.radial) share.flexion = {share.radial->tightest / 2, share.radial->loosest / 2};
  if (!share.missing.empty()) return share;

  HingePlay play{.bore_clearance = share.radial->tightest,
                 .bore_length = span,
                 .axial_clearance = *share.axial,
                 .face_diameter = hinge.washers->outer_diameter,
                 .reach = reach};
  const double tight = sideways_tilt(play), tight_way = sideways_play({&play, 1}).worst_case;
  play.bore_clearance = share.radial->loosest;
  share.tilt = {tight, sideways_tilt(play)};
  share.sideways = {tight_way, sideways_play({&play, 1}).worst_case};
  return share;
}

std::optional<PlaySum> sum_of(const std::vector<HingeShare>& hinges,
                              std::optional<PlayRange> HingeShare::*part) {
  PlaySum sum;
  double tight_squares = 0, loose_squares = 0;
  for (const HingeShare& hinge : hinges) {
    const std::optional<PlayRange>& share = hinge.*part;
    if (!share) {
      sum.without.push_back(hinge.hinge);
      continue;
    }
    sum.tightest.worst_case += share->tightest;
    sum.loosest.worst_case += share->loosest;
    tight_squares += share->tightest * share->tightest;
    loose_squares += share->loosest * share->loosest;
  }
  if (sum.without.size() == hinges.size()) return std::nullopt;
  sum.tightest.root_sum_square = std::sqrt(tight_squares);
  sum.loosest.root_sum_square = std::sqrt(loose_squares);
  return sum;
}

}  // namespace

std::vector<FingertipPlay> finger_play(const model::Model& model) {
  std::vector<HingeFits> fits_of_body(model.bodies.size());
  std::vector<bool> carries(model.bodies.size(), false);
  const std::vector<HingeFits> fits = hinge_fits(model);
  std::size_t next = 0;
  for (std::size_t b = 0; b < model.bodies.size(); ++b) {
    if (!model.bodies[b].hinge) continue;
    fits_of_body[b] = fits[next++];
    carries[static_cast<std::size_t>(model.bodies[b].hinge->parent)] = true;
  }
  std::vector<FingertipPlay> tips;
  for (std::size_t b = 0; b < model.bodies.size(); ++b) {
    if (!model.bodies[b].hinge || carries[b] || simulation::rides_on_slide(model, static_cast<int>(b))) continue;
    FingertipPlay tip;
    tip.body = model.bodies[b].name;
    tip.tip = simulation::fingertip(model.bodies[b]);
    if (tip.tip) {
      Vector3d place(*tip.tip, 0, 0);  // in the frame of `body`
      for (std::size_t body = b; model.bodies[body].hinge;) {
        const model::Hinge& hinge = *model.bodies[body].hinge;
        const Vector3d from_pin = hinge.seat * place;  // parent's axes
        tip.hinges.push_back(share_of(hinge, fits_of_body[body], hinge.pin_axis.cross(from_pin).norm()));
        place = hinge.at + from_pin;
        body = static_cast<std::size_t>(hinge.parent);
      }
      std::reverse(tip.hinges.begin(), tip.hinges.end());
      tip.sideways = sum_of(tip.hinges, &HingeShare::sideways);
      tip.flexion = sum_of(tip.hinges, &HingeShare::flexion);
    }
    tips.push_back(std::move(tip));
  }
  return tips;
}

}  // namespace sinewright::strength
