#include "friction/cord_chain.h"

#include <algorithm>
#include <cmath>

namespace sinewright::friction {

namespace {

// One span: T = f(λ) + c (λ − λ₀), continued below λ = 1 with the slope at 1 so that a Newton step from the slack side
// finds its way back. Only results with λ >= 1 and T >= 0 are ever used.
struct SpanLaw {
  const TensionFunction& law;
  double c = 0;  // viscous: law.slope(1) τ / h [N]

  struct Value {
    double tension, slope;
  };
  [[nodiscard]] Value at(double stretch, double before) const {
    if (stretch < 1) return {law.initial_slope() * (stretch - 1) + c * (stretch - before), law.initial_slope() + c};
    const auto elastic = law.at(stretch);
    return {elastic.tension + c * (stretch - before), elastic.slope + c};
  }
};

// Tension τ of a run's first span from  ρ_i τ = T(λ_i)  and  Σ L_i / λ_i = material: Newton in all λ_i and τ at once,
// from the stretches that stand in `s` (those of the last call), which it replaces. Not positive: the run is slack.
double run_tension(const SpanLaw& span, const ChainStep& step, std::size_t first, std::size_t last, double material,
                   ChainSolution& s) {
  double tau = 0;
  constexpr int most_iterations = 200;
  for (int iteration = 0; iteration < most_iterations; ++iteration) {
    double rest = -material, compliance = 0;
    for (std::size_t i = first; i <= last; ++i) {
      const double x = s.stretch[i];
      const double length = i == 0 ? step.length[0] + step.wind : step.length[i];
      // A cord that was slack has no rate of stretch to resist.
      const auto value = span.at(x, std::max(step.stretch[i], 1.0));
      const double give = length / (x * x * value.slope);  // −dl/dT
      rest += length / x + give * value.tension;
      compliance += give * s.ratio[i];
      s.tension[i] = value.tension;
      s.slope[i] = value.slope;
    }
    tau = rest / compliance;
    double moved = 0;
    for (std::size_t i = first; i <= last; ++i) {
      const double x = s.stretch[i];
      // Half the stretch at most at a time: far from the answer a rubber's tangent can point beyond zero.
      const double next = std::clamp(x + (s.ratio[i] * tau - s.tension[i]) / s.slope[i], 0.5 * x, 2 * x);
      moved = std::max(moved, std::abs(next - x) / x);
      s.stretch[i] = next;
    }
    // Newton converges quadratically: after a correction of 1e-9 the next would be lost in rounding.
    if (moved <= 1e-9) break;
  }
  return tau;
}

}  // namespace

ChainSolution make_solution(int spans) {
  const auto n = static_cast<std::size_t>(spans);
  ChainSolution s;
  s.tension.resize(n);
  s.material.resize(n);
  s.stretch.assign(n, 1.0);
  s.passed.resize(n - 1);
  s.slip.assign(n - 1, Slip::stick);
  s.run.resize(n);
  s.ratio.assign(n, 1.0);
  s.weight.resize(n);
  s.slope.resize(n);
  s.edge.resize(n - 1);
  return s;
}

void solve_chain(const TensionFunction& law, double damping_time, const ChainStep& step, ChainSolution& s) {
  const std::size_t n = s.tension.size();
  const std::size_t nodes = n - 1;
  const SpanLaw span{law, damping_time > 0 ? law.initial_slope() * damping_time / step.duration : 0};
  const auto length = [&](std::size_t i) { return i == 0 ? step.length[0] + step.wind : step.length[i]; };
  s.solved = false;
  for (std::size_t i = 0; i < n; ++i)
    if (!(length(i) > 0)) return;
  const auto frictionless = [&](std::size_t k) { return step.limit[k].sticking <= 0; };
  for (std::size_t k = 0; k < nodes; ++k) s.edge[k] = std::exp(step.limit[k].sliding);

  // A node without friction always "slides", with ratio 1; the direction follows from the result.
  for (std::size_t k = 0; k < nodes; ++k)
    if (frictionless(k) && s.slip[k] == Slip::stick) s.slip[k] = Slip::toward_first;

  const int gentle_after = 2 * static_cast<int>(nodes) + 4;  // normal sweeps end in at most nodes + 1 passes
  const int most_passes = gentle_after + 20 * static_cast<int>(nodes) + 20;
  for (s.passes = 1; s.passes <= most_passes; ++s.passes) {
    // Runs of spans tied by sliding nodes; each has one unknown τ, the tension of its first span.
    for (std::size_t first = 0; first < n;) {
      std::size_t last = first;
      s.ratio[first] = 1;
      while (last < nodes && s.slip[last] != Slip::stick) {
        s.ratio[last + 1] =
            s.slip[last] == Slip::toward_first ? s.ratio[last] / s.edge[last] : s.ratio[last] * s.edge[last];
        ++last;
      }
      double material = 0, stretched = 0;
      for (std::size_t i = first; i <= last; ++i) {
        s.run[i] = static_cast<int>(first);
        material += step.material[i];
        stretched += length(i);
      }
      double tau = 0;
      if (stretched > material) tau = run_tension(span, step, first, last, material, s);
      if (tau > 0) {
        double compliance = 0;
        for (std::size_t i = first; i <= last; ++i) {
          const double x = s.stretch[i];
          s.tension[i] = s.ratio[i] * tau;
          s.material[i] = length(i) / x;
          s.weight[i] = 1 / x;
          compliance += length(i) * s.ratio[i] / (x * x * s.slope[i]);
        }
        for (std::size_t i = first; i <= last; ++i) s.weight[i] /= compliance;
      } else {
        // Slack: where the surplus lies does not matter; spread it evenly.
        for (std::size_t i = first; i <= last; ++i) {
          s.tension[i] = 0;
          s.material[i] = length(i) * material / stretched;
          s.stretch[i] = stretched / material;
          s.weight[i] = 0;
        }
      }
      // Slips follow by summation from the run's sticking end.
      double sum = 0;
      for (std::size_t i = first; i <= last && i < nodes; ++i) {
        sum += s.material[i] - step.material[i];
        s.passed[i] = i < last ? sum : 0;
      }
      first = last + 1;
    }

    const double rounding = 1e-15 * (step.length[0] + step.material[0]);
    bool changed = false;
    for (std::size_t k = 0; k < nodes; ++k) {
      if (frictionless(k)) continue;
      const double ahead = s.tension[k], behind = s.tension[k + 1];
      if (s.slip[k] == Slip::stick) {
        const double limit = step.slip_before[k] == Slip::stick ? step.limit[k].sticking : step.limit[k].sliding;
        const double edge = (limit == step.limit[k].sliding ? s.edge[k] : std::exp(limit)) * (1 + 1e-13);
        if (ahead > edge * behind) {
          s.slip[k] = Slip::toward_first;
        } else if (behind > edge * ahead) {
          s.slip[k] = Slip::toward_last;
        } else {
          continue;
        }
      } else {
        if (s.tension[k] <= 0) continue;  // slack on both sides: nothing holds it, either direction will do
        if (static_cast<int>(s.slip[k]) * s.passed[k] >= -rounding) continue;
        s.slip[k] = Slip::stick;
      }
      changed = true;
      // Should the free sweep cycle, change one node at a time, the lowest index first (Murty's rule).
      if (s.passes > gentle_after) break;
    }
    if (!changed) {
      s.solved = true;
      break;
    }
  }
  s.wound = step.wind / s.stretch[0];
  if (s.tension[0] <= 0) s.wound = step.wind;
  s.material[0] -= s.wound;
}

}  // namespace sinewright::friction
