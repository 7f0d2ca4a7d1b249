#include "friction/cord_chain.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

#include <catch2/catch.hpp>

#include "../contact/heap_watch.h"

namespace {

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

double sum(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

// A cord through `nodes` nodes, evenly spaced; one end held or wound, the other moved.
struct Chain {
  TensionFunction law;
  std::vector<double> length;
  std::vector<NodeLimit> limit;
  ChainState state;
  ChainSolution solution;
  double damping_time = 0;
  double most_out_of_cone = 0;  // ln of the tension ratio beyond its edge, at worst over all steps
  double most_lost = 0;         // material, relative
  int most_passes = 0;

  Chain(const model::TensionLaw& tension, int nodes, double whole, double exponent, double tension_at_start)
      : law(tension),
        length(static_cast<std::size_t>(nodes) + 1, whole / (nodes + 1)),
        limit(static_cast<std::size_t>(nodes), NodeLimit{exponent / nodes, exponent / nodes}),
        solution(make_solution(nodes + 1)) {
    const double stretch = law.stretch(tension_at_start);
    for (const double l : length) {
      state.material.push_back(l / stretch);
      state.stretch.push_back(stretch);
    }
    state.slip.assign(static_cast<std::size_t>(nodes), Slip::stick);
  }

  // One step with both ends where `length` says, and some of the first span wound in.
  const ChainSolution& step(double wind = 0, double duration = 1e-3, bool cold = false) {
    if (cold) std::fill(solution.slip.begin(), solution.slip.end(), Slip::stick);
    const std::vector<Slip> before = state.slip;
    solve_chain(law, damping_time, {length, limit, before, state.material, state.stretch, wind, duration},
                solution);
    REQUIRE(solution.solved);
    most_passes = std::max(most_passes, solution.passes);
    most_lost = std::max(most_lost, std::abs(sum(solution.material) + solution.wound - sum(state.material)) /
                                        sum(state.material));
    for (std::size_t k = 0; k < limit.size(); ++k) {
      const double a = solution.tension[k], b = solution.tension[k + 1];
      REQUIRE(a >= 0);
      if (a <= 0 && b <= 0) continue;
      const double edge = before[k] == Slip::stick ? limit[k].sticking : limit[k].sliding;
      most_out_of_cone = std::max(most_out_of_cone, std::abs(std::log(a / b)) - edge);
      // Sliding only at the end of the cone, and in the matching direction only.
      if (solution.slip[k] != Slip::stick && limit[k].sticking > 0) {
        const double sign = static_cast<double>(solution.slip[k]);
        CHECK_THAT(std::log(a / b), WithinAbs(sign * limit[k].sliding, 1e-9));
        CHECK(sign * solution.passed[k] >= -1e-14);
      }
      if (solution.slip[k] == Slip::stick) CHECK(solution.passed[k] == 0);
    }
    state.material = solution.material;
    state.stretch = solution.stretch;
    state.slip = solution.slip;
    return solution;
  }
};

constexpr double kEA = 12000;            // [N]
constexpr double kWhole = 0.12;          // [m]
constexpr double kExponent = 0.12 * pi;  // μ θ of the whole way

TEST_CASE("cord chain: a step that pays out more cord than the first span is long is not solved, a shorter one is") {
  Chain chain(model::LinearLaw{1000}, 3, 0.4, 0.3, 5);
  for (const double wind : {-0.1, -0.2, std::numeric_limits<double>::quiet_NaN()}) {
    solve_chain(chain.law, 0, {chain.length, chain.limit, chain.state.slip, chain.state.material, chain.state.stretch, wind, 1e-3},
                chain.solution);
    CHECK_FALSE(chain.solution.solved);
  }
  CHECK(chain.step(-0.09).tension[0] == 0);
}

TEST_CASE("cord chain: pulled, the far tension is the near one over exp(mu theta), and released, times it") {
  // Closed form: Euler–Eytelwein over the whole wrap, however finely it is cut.
  const int nodes = GENERATE(10, 40, 160);
  Chain chain(model::LinearLaw{kEA}, nodes, kWhole, kExponent, 2.0);
  const double step = 1e-5 * kWhole;
  for (int n = 0; n < 400; ++n) {
    chain.length.front() += step;
    chain.step();
  }
  const double pulled = chain.solution.tension.front();
  CHECK(pulled > 20);
  CHECK_THAT(chain.solution.tension.back(), WithinRel(pulled * std::exp(-kExponent), 1e-12));
  CHECK(std::all_of(chain.state.slip.begin(), chain.state.slip.end(),
                    [](Slip s) { return s == Slip::toward_first; }));
  double at_turn = chain.solution.tension.back();
  int sticking_steps = 0;
  for (int n = 0; n < 150; ++n) {
    chain.length.front() -= step;
    chain.step();
    sticking_steps += chain.solution.tension.back() == at_turn;
    at_turn = chain.solution.tension.back();
  }
  // The near end comes down through the whole cone before the far end notices.
  CHECK(sticking_steps > 5);
  REQUIRE(chain.solution.tension.front() > 1);
  CHECK_THAT(chain.solution.tension.front(),
             WithinRel(chain.solution.tension.back() * std::exp(-kExponent), 1e-12));
  CHECK(chain.most_out_of_cone < 1e-9);
  CHECK(chain.most_lost < 1e-12);
}

TEST_CASE("cord chain: a cold start needs at most one pass more than there are nodes") {
  const int nodes = GENERATE(10, 40, 160);
  Chain chain(model::LinearLaw{kEA}, nodes, kWhole, kExponent, 2.0);
  for (int n = 0; n < 60; ++n) {
    chain.length.front() += (n < 30 ? 1 : -1) * 3e-5 * kWhole;
    chain.step(0, 1e-3, true);
  }
  CHECK(chain.most_passes <= nodes + 1);
}

TEST_CASE("cord chain: from the pattern of the last step a smooth pull needs few passes") {
  Chain chain(model::LinearLaw{kEA}, 10, kWhole, kExponent, 2.0);
  long passes = 0;
  for (int n = 0; n < 300; ++n) {
    chain.length.front() += 1e-5 * kWhole;
    passes += chain.step().passes;
  }
  CHECK(passes < 300 * 1.2);
}

TEST_CASE("cord chain: travel at the pulled end converges with the number of nodes to the continuous belt") {
  // Tension along a belt on a capstan that slips all along: T(s) = T₀ exp(−μθ s/L) (Euler–Eytelwein). The far
  // end is held; material is conserved, ∫ ds / (1 + T/EA) + ΔL / (1 + T₀/EA) = L / (1 + T_start/EA), which
  // integrates in closed form: with k = μθ and τ = T₀/EA the integral is (L/k) ln[(e^k + τ)/(1 + τ)].
  const auto travel = [](int nodes) {
    Chain chain(model::LinearLaw{kEA}, nodes, kWhole, kExponent, 2.0);
    // Spans at the ends are half as long, so that the nodes stand for equal pieces of the arc.
    const double piece = kWhole / nodes;
    std::fill(chain.length.begin(), chain.length.end(), piece);
    chain.length.front() = chain.length.back() = piece / 2;
    for (std::size_t i = 0; i < chain.length.size(); ++i)
      chain.state.material[i] = chain.length[i] / chain.state.stretch[i];
    const double start = chain.length.front();
    double tension = 0;
    while (tension < 30) {
      const double before = chain.length.front(), tension_before = tension;
      chain.length.front() += 2e-6 * kWhole;
      tension = chain.step().tension.front();
      if (tension >= 30)
        return before - start +
               (chain.length.front() - before) * (30 - tension_before) / (tension - tension_before);
    }
    return 0.0;
  };
  const double k = kExponent, tau = 30 / kEA;
  const double exact =
      (kWhole / (1 + 2.0 / kEA) - kWhole / k * std::log((std::exp(k) + tau) / (1 + tau))) * (1 + tau);
  const double e10 = std::abs(travel(10) / exact - 1), e40 = std::abs(travel(40) / exact - 1),
               e160 = std::abs(travel(160) / exact - 1);
  CAPTURE(e10, e40, e160);
  CHECK(e10 < 1e-3);
  CHECK(e40 < e10 / 12);  // second order in the size of a piece
  CHECK(e160 < e40 / 4);  // down to the interpolation of the last step
}

TEST_CASE("cord chain: an elastic belt slips from the pulled end inward") {
  Chain chain(model::LinearLaw{kEA}, 40, kWhole, kExponent, 10.0);
  std::size_t reach = 0;
  bool inward = true;
  for (int n = 0; n < 100; ++n) {
    chain.length.front() += 1e-6 * kWhole;
    chain.step();
    std::size_t slipping = 0;
    while (slipping < chain.state.slip.size() && chain.state.slip[slipping] != Slip::stick) ++slipping;
    // Beyond the slipping front nothing moves.
    for (std::size_t k = slipping; k < chain.state.slip.size(); ++k)
      inward = inward && chain.state.slip[k] == Slip::stick;
    inward = inward && slipping >= reach;
    reach = slipping;
  }
  CHECK(inward);
  CHECK(reach > 5);
  CHECK(reach < 40);
}

TEST_CASE("cord chain: random moves, limits and laws never leave the cone nor lose material") {
  std::mt19937 random(21);
  const auto uniform = [&](double a, double b) {
    return std::uniform_real_distribution<double>(a, b)(random);
  };
  const std::vector<model::TensionLaw> laws{model::LinearLaw{9000},
                                            model::RubberLaw{3e-6, {{4e5, 2.0}, {1e3, 6.0}}, 4.0},
                                            model::TableLaw{{1, 1.01, 1.02, 1.05}, {0, 20, 70, 300}}};
  for (const auto& law : laws) {
    const bool rubber = std::holds_alternative<model::RubberLaw>(law);
    for (int round = 0; round < 20; ++round) {
      Chain chain(law, 7, kWhole, 1.0, rubber ? 1.5 : 5.0);
      for (auto& limit : chain.limit) {
        limit.sliding = uniform(0, 0.3) < 0.03 ? 0 : uniform(0, 0.3);
        limit.sticking = limit.sliding * uniform(1, 1.5);
      }
      if (round % 3 == 0) chain.damping_time = 2e-3;
      const std::vector<double> rest = chain.length;
      const double size = rubber ? 0.1 : 1.5e-3;  // of the strain that moves
      for (int n = 0; n < 400; ++n) {
        for (std::size_t i = 0; i < rest.size(); ++i)
          chain.length[i] = std::clamp(chain.length[i] + uniform(-1, 1) * size * 0.2 * rest[i],
                                       rest[i] * (1 - size), rest[i] * (1 + size));
        chain.step(uniform(-1, 1) * 1e-4 * (rubber ? 10 : 1) * rest[0]);
      }
      CHECK(chain.most_out_of_cone < 1e-9);
      CHECK(chain.most_lost < 1e-12);
    }
  }
}

TEST_CASE("cord chain: the tangent weights agree with finite differences while the pattern lasts") {
  std::mt19937 random(22);
  const auto uniform = [&](double a, double b) {
    return std::uniform_real_distribution<double>(a, b)(random);
  };
  const std::vector<model::TensionLaw> laws{model::LinearLaw{9000},
                                            model::RubberLaw{3e-6, {{4e5, 2.0}, {1e3, 6.0}}, 4.0}};
  int compared = 0;
  for (const auto& law : laws) {
    for (const double damping : {0.0, 1e-3}) {
      for (int round = 0; round < 20; ++round) {
        Chain chain(law, 6, kWhole, 0.5, 8.0 * (law.index() == 0 ? 1 : 0.2));
        chain.damping_time = damping;
        for (auto& limit : chain.limit) limit.sliding = limit.sticking = uniform(0.02, 0.2);
        for (auto& l : chain.length) l *= 1 + uniform(0, law.index() == 0 ? 2e-3 : 0.3);
        const ChainState before = chain.state;
        const ChainSolution at = chain.step(1e-6);
        if (*std::min_element(at.tension.begin(), at.tension.end()) <= 0) continue;
        const auto solved = [&](std::size_t s, double h) {
          Chain again = chain;
          again.state = before;
          again.length[s] += h;
          return again.step(1e-6);
        };
        for (std::size_t s = 0; s < chain.length.size(); ++s) {
          const double h = 1e-7 * chain.length[s];
          const ChainSolution a = solved(s, h), b = solved(s, -h);
          if (a.slip != at.slip || b.slip != at.slip) continue;
          ++compared;
          for (std::size_t t = 0; t < chain.length.size(); ++t) {
            const double slope = at.run[t] == at.run[s] ? at.ratio[t] * at.weight[s] : 0.0;
            CHECK_THAT((a.tension[t] - b.tension[t]) / (2 * h), WithinAbs(slope, 2e-5 * at.weight[s] + 1e-6));
          }
        }
      }
    }
  }
  CHECK(compared > 200);
}

TEST_CASE("cord chain: slack is a state: no tension, material kept, taut again where the geometry says") {
  Chain chain(model::LinearLaw{kEA}, 5, kWhole, kExponent, 5.0);
  const double taut = chain.length.front();
  const double material = sum(chain.state.material);
  chain.length.front() = taut - 2e-3;
  for (int n = 0; n < 50; ++n) {
    chain.step();
    for (const double t : chain.solution.tension) CHECK(t == 0);
    for (const double l : chain.solution.stretch) CHECK(l < 1);
  }
  CHECK_THAT(sum(chain.state.material), WithinRel(material, 1e-14));
  CHECK_THAT(sum(chain.length) - material, WithinAbs(-2e-3 + kWhole - material, 1e-15));
  // Just short of taut, then just beyond.
  chain.length.front() = taut - (kWhole - material) - 1e-9;
  chain.step();
  CHECK(*std::max_element(chain.solution.tension.begin(), chain.solution.tension.end()) == 0);
  chain.length.front() = taut - (kWhole - material) + 1e-6;
  chain.step();
  CHECK(chain.solution.tension.front() > 0);
  CHECK_THAT(chain.solution.tension.back() / chain.solution.tension.front(),
             WithinRel(std::exp(-kExponent), 0.5));
}

TEST_CASE(
    "cord chain: winding in over no friction does the work that the cord stores and carries onto the "
    "pulley") {
  // Work of the arc wound in, ∫ T ds, is the energy gained by the cord that is still outside plus that of the
  // cord on the pulley, which left with its stretch. Own derivation; holds for any law without friction.
  Chain chain(model::LinearLaw{kEA}, 3, kWhole, 0, 1.0);
  const auto stored = [&] {
    double e = 0;
    for (std::size_t i = 0; i < chain.state.material.size(); ++i)
      e += chain.state.material[i] * chain.law.energy(chain.state.stretch[i]);
    return e;
  };
  const auto residual = [&](int steps) {
    Chain fresh(model::LinearLaw{kEA}, 3, kWhole, 0, 1.0);
    chain = fresh;
    const double start = stored();
    double work = 0, carried = 0, tension = 1.0, w = chain.law.energy(chain.state.stretch[0]);
    for (int n = 0; n < steps; ++n) {
      const auto& s = chain.step(2e-4 / steps);
      const double w_now = chain.law.energy(s.stretch[0]);
      work += 0.5 * (tension + s.tension[0]) * 2e-4 / steps;  // trapezes: second order
      carried += 0.5 * (w + w_now) * s.wound;
      tension = s.tension[0];
      w = w_now;
    }
    CHECK(tension > 15);
    return std::abs(work - carried - (stored() - start)) / work;
  };
  const double coarse = residual(40), fine = residual(160);
  CAPTURE(coarse, fine);
  CHECK(fine < 1e-5);
  CHECK(fine < coarse / 3.5);
}

TEST_CASE("cord chain: with friction the same work also feeds the bends, never the other way") {
  Chain chain(model::LinearLaw{kEA}, 8, kWhole, kExponent, 3.0);
  std::mt19937 random(4);
  double lost = 0;
  for (int n = 0; n < 3000; ++n) {
    chain.length.back() += 1e-6 * std::sin(n * 0.01) * kWhole;
    const auto& s = chain.step(3e-6 * std::cos(n * 0.017) * kWhole / 10);
    for (std::size_t k = 0; k < s.passed.size(); ++k) {
      const auto carried = [&](std::size_t i) {
        return s.tension[i] * s.stretch[i] - chain.law.energy(s.stretch[i]);
      };
      const double loss = s.passed[k] * (carried(k) - carried(k + 1));
      CHECK(loss >= -1e-16);  // rounding of a length times a newton
      lost += loss;
    }
  }
  CHECK(lost > 0);
}

TEST_CASE("cord chain: a sticking cord does not creep over a million steps") {
  Chain chain(model::LinearLaw{kEA}, 6, kWhole, kExponent, 3.0);
  for (int n = 0; n < 20; ++n) {
    chain.length.front() += 1e-5 * kWhole;
    chain.step();
  }
  chain.length.front() -= 1e-5 * kWhole;  // back inside the cone
  chain.step();
  chain.step();
  const ChainState before = chain.state;
  const std::vector<double> tension = chain.solution.tension;
  bool solved = true;
  ChainSolution& s = chain.solution;
  for (int n = 0; n < 1'000'000; ++n) {
    solve_chain(
        chain.law, 0,
        {chain.length, chain.limit, chain.state.slip, chain.state.material, chain.state.stretch, 0, 1e-3}, s);
    solved = solved && s.solved;
    chain.state.material = s.material;
    chain.state.stretch = s.stretch;
    chain.state.slip = s.slip;
  }
  REQUIRE(solved);
  for (std::size_t i = 0; i < tension.size(); ++i) {
    CHECK_THAT(s.tension[i], WithinRel(tension[i], 1e-9));
    CHECK_THAT(chain.state.material[i], WithinRel(before.material[i], 1e-12));
  }
}

TEST_CASE("cord chain: at the very edge of the cone, too, a cord that is left alone stays") {
  Chain chain(model::LinearLaw{kEA}, 6, kWhole, kExponent, 3.0);
  for (int n = 0; n < 20; ++n) {
    chain.length.front() += 1e-5 * kWhole;
    chain.step();
  }
  REQUIRE(chain.state.slip.front() == Slip::toward_first);
  chain.step();
  const std::vector<double> material = chain.state.material;
  for (int n = 0; n < 100'000; ++n) chain.step();
  for (std::size_t i = 0; i < material.size(); ++i)
    CHECK_THAT(chain.state.material[i], WithinRel(material[i], 1e-12));
}

TEST_CASE("cord chain: breaks loose at the static limit and slides at the kinetic one") {
  Chain chain(model::LinearLaw{kEA}, 1, kWhole, 0, 10.0);
  chain.limit[0] = {0.30, 0.20};
  double most = 0;
  bool loose = false;
  for (int n = 0; n < 4000 && !loose; ++n) {
    chain.length.front() += 1e-7 * kWhole;
    const auto& s = chain.step();
    loose = s.slip[0] == Slip::toward_first;
    if (!loose) most = std::log(s.tension[0] / s.tension[1]);
  }
  REQUIRE(loose);
  // One step raises the ratio by about ΔT/T = 12000 × 2e-7 / 10.
  CHECK(most > 0.30 - 5e-4);
  CHECK(most <= 0.30 + 1e-12);
  CHECK_THAT(std::log(chain.solution.tension[0] / chain.solution.tension[1]), WithinAbs(0.20, 1e-12));
  chain.length.front() += 1e-6 * kWhole;
  chain.step();
  CHECK_THAT(std::log(chain.solution.tension[0] / chain.solution.tension[1]), WithinAbs(0.20, 1e-12));
}

TEST_CASE("cord chain: winding material is the arc divided by its stretch, exactly") {
  Chain chain(model::LinearLaw{kEA}, 4, kWhole, kExponent, 20.0);
  for (int n = 0; n < 50; ++n) {
    const auto& s = chain.step(1e-6);
    CHECK_THAT(s.wound * s.stretch[0], WithinRel(1e-6, 1e-13));
  }
  for (int n = 0; n < 50; ++n) {
    const auto& s = chain.step(-1e-6);
    CHECK_THAT(s.wound * s.stretch[0], WithinRel(-1e-6, 1e-13));
  }
}

TEST_CASE("cord chain: allocates nothing while solving") {
  if (!HeapWatch::works()) return;
  Chain chain(model::RubberLaw{3e-6, {{4e5, 2.0}}, 4.0}, 10, kWhole, kExponent, 1.0);
  chain.length.front() *= 1.2;
  const HeapWatch watch;
  solve_chain(
      chain.law, 1e-3,
      {chain.length, chain.limit, chain.state.slip, chain.state.material, chain.state.stretch, 0, 1e-3},
      chain.solution);
  const std::size_t requests = watch.requests();
  CHECK(requests == 0);
}

}  // namespace
