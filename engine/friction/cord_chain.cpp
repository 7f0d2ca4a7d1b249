#include "friction/cord_chain.h"

#include <algorithm>
#include <cmath>

namespace sinewright::friction {

namespace {

// One span with its viscous part: T = f(λ) + c (λ − λ₀) for λ > 1, never negative.
struct ViscousLaw {
  const TensionFunction& law;
  double c;       // law.slope(1) τ / h [N]
  double before;  // λ₀, not below 1: a slack cord has no rate to resist

  [[nodiscard]] double tension(double stretch) const {
    if (stretch <= 1) return 0;
    return std::max(0.0, law.tension(stretch) + c * (stretch - before));
  }
  [[nodiscard]] double slope(double stretch) const { return law.slope(stretch) + c; }
  // Largest λ with tension T >= 0.
  [[nodiscard]] double stretch(double tension, double guess) const {
    if (c == 0) return law.stretch(tension);
    // f is increasing: the answer lies between those of the elastic part alone shifted by the viscous one.
    double low = 1, high = std::max(before, law.stretch(tension)) + 1e-15;
    double x = std::clamp(guess, low, high);
    for (int i = 0; i < 100; ++i) {
      const double residual = law.tension(x) + c * (x - before) - tension;
      (residual > 0 ? high : low) = x;
      double next = x - residual / slope(x);
      if (!(next > low && next < high)) next = 0.5 * (low + high);
      if (std::abs(next - x) <= 4e-16 * x) return next;
      x = next;
    }
    return x;
  }
};

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
  return s;
}

void solve_chain(const TensionFunction& law, double damping_time, const ChainStep& step, ChainSolution& s) {
  const std::size_t n = s.tension.size();
  const std::size_t nodes = n - 1;
  const double c = damping_time > 0 ? law.slope(1) * damping_time / step.duration : 0;
  const auto viscous = [&](std::size_t i) { return ViscousLaw{law, c, std::max(step.stretch[i], 1.0)}; };
  const auto length = [&](std::size_t i) { return i == 0 ? step.length[0] + step.wind : step.length[i]; };
  const auto frictionless = [&](std::size_t k) { return step.limit[k].sticking <= 0; };

  // A node without friction always "slides", with ratio 1; the direction follows from the result.
  for (std::size_t k = 0; k < nodes; ++k)
    if (frictionless(k) && s.slip[k] == Slip::stick) s.slip[k] = Slip::toward_first;

  s.solved = false;
  const int gentle_after = 2 * static_cast<int>(nodes) + 4;  // normal sweeps end in at most nodes + 1 passes
  const int most_passes = gentle_after + 20 * static_cast<int>(nodes) + 20;
  for (s.passes = 1; s.passes <= most_passes; ++s.passes) {
    // Runs of spans tied by sliding nodes; each has one unknown τ, the tension of its first span.
    for (std::size_t first = 0; first < n;) {
      std::size_t last = first;
      s.ratio[first] = 1;
      while (last < nodes && s.slip[last] != Slip::stick) {
        const double edge = std::exp(step.limit[last].sliding);
        s.ratio[last + 1] = s.slip[last] == Slip::toward_first ? s.ratio[last] / edge : s.ratio[last] * edge;
        ++last;
      }
      double material = 0, stretched = 0, at_rest = 0;
      for (std::size_t i = first; i <= last; ++i) {
        s.run[i] = static_cast<int>(first);
        material += step.material[i];
        stretched += length(i);
        at_rest += length(i) / viscous(i).stretch(0, 1);
      }
      double tau = 0;
      if (at_rest > material) {
        // Σ L/λ(ρ τ) = Σ material: decreasing in τ, convex for the laws in use; Newton from the left with a bracket.
        double low = 0, high = 1e300;
        tau = std::max(0.0, s.tension[first]);
        for (int iteration = 0; iteration < 200; ++iteration) {
          double residual = -material, slope = 0;
          for (std::size_t i = first; i <= last; ++i) {
            const ViscousLaw v = viscous(i);
            const double x = s.stretch[i] = v.stretch(s.ratio[i] * tau, s.stretch[i]);
            residual += length(i) / x;
            slope -= length(i) * s.ratio[i] / (x * x * v.slope(x));
          }
          (residual > 0 ? low : high) = tau;
          double next = tau - residual / slope;
          if (!(next >= low && next <= high)) next = high < 1e299 ? 0.5 * (low + high) : 2 * low + 1;
          const bool done = std::abs(next - tau) <= 1e-14 * next;
          tau = next;
          if (done) break;
        }
        double compliance = 0;
        for (std::size_t i = first; i <= last; ++i) {
          const ViscousLaw v = viscous(i);
          const double x = s.stretch[i] = v.stretch(s.ratio[i] * tau, s.stretch[i]);
          s.tension[i] = s.ratio[i] * tau;
          s.material[i] = length(i) / x;
          s.weight[i] = 1 / x;
          compliance += length(i) * s.ratio[i] / (x * x * v.slope(x));
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
      const double before = s.tension[k], after = s.tension[k + 1];
      if (s.slip[k] == Slip::stick) {
        const double limit = step.slip_before[k] == Slip::stick ? step.limit[k].sticking : step.limit[k].sliding;
        const double edge = std::exp(limit) * (1 + 1e-13);
        if (before > edge * after) {
          s.slip[k] = Slip::toward_first;
        } else if (after > edge * before) {
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
