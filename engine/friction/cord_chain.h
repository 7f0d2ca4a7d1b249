#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "friction/tension_law.h"

namespace sinewright::friction {

/// What a friction node does in a step. `toward_first`: material passes towards the first span (its tension is the higher
/// one); `toward_last`: the other way.
enum class Slip : std::int8_t { toward_last = -1, stick = 0, toward_first = 1 };

/// Limits of one node: ln of the tension ratio at which a sticking cord breaks loose, and at which a sliding one slides.
struct NodeLimit {
  double sticking = 0;  ///< μ_static θ and what else the channel adds [–]
  double sliding = 0;   ///< the kinetic counterpart, not above `sticking` [–]
};

/// Tensions, material and slips of a cord: a chain of spans with a friction node between each two.
struct ChainState {
  std::vector<double> material;  ///< unstretched length in each span [m]
  std::vector<double> stretch;   ///< λ of each span (below 1: slack) [–]
  std::vector<Slip> slip;        ///< per node
};

/// Result of one return mapping.
struct ChainSolution {
  std::vector<double> tension;   ///< per span [N], never negative
  std::vector<double> material;  ///< per span at the end, the wound-in part taken off [m]
  std::vector<double> stretch;   ///< per span [–]
  std::vector<double> passed;    ///< per node: material that passed towards the first span [m]
  std::vector<Slip> slip;        ///< per node
  double wound = 0;              ///< material wound onto the pulley [m]
  /// Consistent tangent: spans of a run (tied together by sliding nodes) share τ; T_s = ratio_s τ, and
  /// dT_s = ratio_s Σ over the run of weight_s' dL_s'.
  std::vector<int> run;          ///< per span: index of its run
  std::vector<double> ratio;     ///< per span [–]
  std::vector<double> weight;    ///< per span [N/m]
  std::vector<double> slope;     ///< per span: dT/dλ, workspace
  std::vector<double> edge;      ///< per node: e^sliding, workspace
  int passes = 0;                ///< of the active-set sweep
  /// false: no consistent pattern found, or a span without length (more paid out than the first is long); shorten the step. The rest is
  /// then without meaning.
  bool solved = false;
};

struct ChainStep {
  std::span<const double> length;        ///< L of each span at the end [m]
  std::span<const NodeLimit> limit;      ///< per node, at the end
  std::span<const Slip> slip_before;     ///< per node: what it did before (a sticking node has the static limit)
  std::span<const double> material;      ///< at the start [m]
  std::span<const double> stretch;       ///< at the start, for the viscous part [–]
  double wind = 0;                       ///< arc that the pulley surface takes in during the step [m], negative pays out
  double duration = 0;                   ///< of the step [s]
};

/// Capstan friction as a return mapping, in the manner of rate-independent plasticity: nothing slips if that keeps every
/// tension ratio inside its cone; a node outside slips until its ratio lies on the cone's edge, in the matching direction
/// only. Material is conserved. The arc wound in counts as length of the first span, so that material leaves with its
/// stretch. Written down in docs/theory/cord-chain.md; checked by tests/friction/cord_chain_test.cpp.
///
/// @param law           tension of a span as a function of its stretch.
/// @param damping_time  τ: each span adds law.slope(1) τ dλ/dt while taut [s].
/// @param solution      sized by `make_solution`; its slip pattern on entry is the first guess.
void solve_chain(const TensionFunction& law, double damping_time, const ChainStep& step, ChainSolution& solution);

[[nodiscard]] ChainSolution make_solution(int spans);

}  // namespace sinewright::friction
