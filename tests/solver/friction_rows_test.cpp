#include "solver/friction_rows.h"

#include <cmath>
#include <limits>
#include <random>
#include <vector>

#include <catch2/catch.hpp>

#include "../contact/heap_watch.h"

namespace {

using namespace sinewright::solver;

struct Random {
  std::mt19937 engine;
  double operator()(double from, double to) {
    return std::uniform_real_distribution<double>(from, to)(engine);
  }
};

// A mechanism-like problem: A = M/h + a part that is not symmetric (slipping bends); friction on the first
// rows.
struct Problem {
  FrictionSolve solve;
  VectorXd v;
};
Problem random_problem(Random& random, int n, int rows, double load_dependence, double skew) {
  Problem p{FrictionSolve(n, rows), VectorXd::Zero(n)};
  MatrixXd L = MatrixXd::NullaryExpr(n, n, [&](auto, auto) { return random(-1, 1); });
  const MatrixXd S = MatrixXd::NullaryExpr(n, n, [&](auto, auto) { return random(-1, 1); });
  p.solve.A = L * L.transpose() + 0.3 * MatrixXd::Identity(n, n) + skew * (S - S.transpose());
  for (int i = 0; i < n; ++i) {
    p.solve.r[i] = random(-3, 3);
    p.v[i] = random(0, 1) < 0.3 ? 0.0 : random(-1, 1);
  }
  for (int k = 0; k < rows; ++k) {
    auto& row = p.solve.row[static_cast<std::size_t>(k)];
    row.index = k;
    row.plus = random(0, 2);
    row.minus = random(0, 2);  // independent of plus, as the two efficiencies of a gear
    for (int j = 0; j < n; ++j) {
      p.solve.plus_by_v(k, j) = random(-load_dependence, load_dependence);
      p.solve.minus_by_v(k, j) = random(-load_dependence, load_dependence);
    }
  }
  return p;
}

// Every law of the problem at the answer.
void check_answer(const Problem& p) {
  const auto& s = p.solve;
  const VectorXd w = p.v + s.dv;
  VectorXd balance = s.r + s.A * s.dv;
  for (std::size_t k = 0; k < s.row.size(); ++k) {
    const auto& row = s.row[k];
    const auto i = static_cast<int>(k);
    const double plus = std::max(0.0, row.plus + s.plus_by_v.row(i).dot(s.dv));
    const double minus = std::max(0.0, row.minus + s.minus_by_v.row(i).dot(s.dv));
    balance[row.index] -= s.lambda[i];
    CHECK(s.lambda[i] >= -plus - 1e-10);
    CHECK(s.lambda[i] <= minus + 1e-10);
    if (w[row.index] > 1e-9) CHECK(std::abs(s.lambda[i] + plus) < 1e-9);
    if (w[row.index] < -1e-9) CHECK(std::abs(s.lambda[i] - minus) < 1e-9);
    if (s.mode[k] == Mode::sticks) CHECK(std::abs(w[row.index]) < 1e-12);
  }
  CHECK(balance.cwiseAbs().maxCoeff() < 1e-8);
}

// All modes in turn, each solved directly; @returns the velocity changes of those that contradict nothing.
std::vector<VectorXd> enumerate(const Problem& p) {
  const auto& s = p.solve;
  const int rows = static_cast<int>(s.row.size());
  std::vector<VectorXd> found;
  int patterns = 1;
  for (int k = 0; k < rows; ++k) patterns *= 3;
  for (int pattern = 0; pattern < patterns; ++pattern) {
    MatrixXd A = s.A;
    VectorXd b = -s.r;
    std::vector<int> sign(static_cast<std::size_t>(rows));
    int rest = pattern;
    for (int k = 0; k < rows; ++k, rest /= 3) {
      const auto& row = s.row[static_cast<std::size_t>(k)];
      const int mode = sign[static_cast<std::size_t>(k)] = rest % 3 - 1;
      if (mode == 0) {
        A.row(row.index).setZero();
        A(row.index, row.index) = 1;
        b[row.index] = -p.v[row.index];
      } else if (mode > 0) {
        A.row(row.index) += s.plus_by_v.row(k);
        b[row.index] -= row.plus;
      } else {
        A.row(row.index) -= s.minus_by_v.row(k);
        b[row.index] += row.minus;
      }
    }
    const VectorXd dv = A.fullPivLu().solve(b);
    bool consistent = true;
    for (int k = 0; k < rows; ++k) {
      const auto& row = s.row[static_cast<std::size_t>(k)];
      const double w = p.v[row.index] + dv[row.index];
      const double plus = row.plus + s.plus_by_v.row(k).dot(dv),
                   minus = row.minus + s.minus_by_v.row(k).dot(dv);
      const double needed = s.r[row.index] + s.A.row(row.index).dot(dv);
      const int mode = sign[static_cast<std::size_t>(k)];
      if (mode == 0)
        consistent =
            consistent && needed >= -std::max(0.0, plus) - 1e-9 && needed <= std::max(0.0, minus) + 1e-9;
      if (mode > 0) consistent = consistent && w >= -1e-9 && plus >= -1e-9;
      if (mode < 0) consistent = consistent && w <= 1e-9 && minus >= -1e-9;
    }
    if (consistent) found.push_back(dv);
  }
  return found;
}

TEST_CASE("friction solve: every law holds exactly on random problems, from any first guess") {
  Random random{std::mt19937(5)};
  for (int n = 0; n < 3000; ++n) {
    const int size = 2 + n % 11, rows = std::min(size, 1 + n % 7);
    Problem p = random_problem(random, size, rows, 0, n % 2 ? 0.5 : 0.0);
    for (Mode& mode : p.solve.mode) mode = static_cast<Mode>(static_cast<int>(random(0, 3)) - 1);
    REQUIRE(p.solve.solve(p.v));
    check_answer(p);
  }
}

TEST_CASE("friction solve: limits that depend a little on the velocities are met at the answer") {
  Random random{std::mt19937(6)};
  for (int n = 0; n < 3000; ++n) {
    const int size = 2 + n % 9, rows = std::min(size, 1 + n % 5);
    Problem p = random_problem(random, size, rows, 0.03, 0.2);
    for (auto& row : p.solve.row) {  // limits that stay positive, so that none is cut at zero
      row.plus += 1;
      row.minus += 1;
    }
    REQUIRE(p.solve.solve(p.v));
    check_answer(p);
  }
}

TEST_CASE("friction solve: enumeration of all modes finds the same one answer") {
  Random random{std::mt19937(8)};
  int same = 0;
  for (int n = 0; n < 400; ++n) {
    Problem p = random_problem(random, 5, 1 + n % 4, 0, 0.3);
    REQUIRE(p.solve.solve(p.v));
    const auto found = enumerate(p);
    REQUIRE(!found.empty());
    for (const VectorXd& dv : found) CHECK((dv - p.solve.dv).norm() < 1e-8);
    ++same;
  }
  CHECK(same == 400);
}

TEST_CASE("friction solve: any start modes end at the same answer") {
  Random random{std::mt19937(9)};
  for (int n = 0; n < 100; ++n) {
    Problem p = random_problem(random, 6, 4, 0, 0.3);
    REQUIRE(p.solve.solve(p.v));
    const VectorXd answer = p.solve.dv;
    for (int pattern = 0; pattern < 81; ++pattern) {
      int rest = pattern;
      for (Mode& mode : p.solve.mode) {
        mode = static_cast<Mode>(rest % 3 - 1);
        rest /= 3;
      }
      REQUIRE(p.solve.solve(p.v));
      CHECK((p.solve.dv - answer).norm() < 1e-9);
    }
  }
}

TEST_CASE("friction solve: a problem on which changing all rows at once goes round in circles still ends") {
  // A cyclic P-matrix: sliding rows hand their load on to the next. The gentle rule takes over after 2 rows +
  // 4 rounds.
  int slow = 0;
  for (int n = 3; n <= 9; n += 2) {
    for (const double coupling : {0.9, 1.5, 2.0}) {
      for (int start = 0; start < n; ++start) {
        Problem p{FrictionSolve(n, n), VectorXd::Zero(n)};
        p.solve.A.setIdentity();
        for (int i = 0; i < n; ++i) {
          p.solve.A(i, (i + 1) % n) = coupling;
          p.solve.r[i] = -2.0;
          auto& row = p.solve.row[static_cast<std::size_t>(i)];
          row = {i, 1.0, 1.0};
          p.solve.mode[static_cast<std::size_t>(i)] = i == start ? Mode::slides_plus : Mode::sticks;
        }
        REQUIRE(p.solve.solve(p.v));
        slow += p.solve.pivots > 2 * n + 4;
        check_answer(p);
      }
    }
  }
  CHECK(slow > 0);
}

TEST_CASE("friction solve: unequal limits hold one way and let go the other") {
  // One mass: 1 kg per step, pushed by 1.5: plus = 1 lets it go, minus = 2 would hold the other way.
  for (const double push : {1.5, -1.5}) {
    FrictionSolve s(1, 1);
    s.A(0, 0) = 1;
    s.r[0] = -push;
    s.row[0] = {0, 1.0, 2.0};
    REQUIRE(s.solve(VectorXd::Zero(1)));
    if (push > 0) {
      CHECK(s.mode[0] == Mode::slides_plus);
      CHECK(s.dv[0] == 0.5);
      CHECK(s.lambda[0] == -1.0);
    } else {
      CHECK(s.mode[0] == Mode::sticks);
      CHECK(s.dv[0] == 0.0);
      CHECK(s.lambda[0] == 1.5);
    }
  }
}

TEST_CASE("friction solve: a moving row is caught within the step, to an exact zero of velocity") {
  FrictionSolve s(1, 1);
  s.A(0, 0) = 10;
  s.row[0] = {0, 3.0, 3.0};
  s.mode[0] = Mode::slides_plus;
  const VectorXd v = VectorXd::Constant(1, 0.1);
  REQUIRE(s.solve(v));
  CHECK(s.mode[0] == Mode::sticks);
  CHECK(v[0] + s.dv[0] == 0.0);
  CHECK_THAT(s.lambda[0], Catch::Matchers::WithinAbs(-1.0, 1e-14));
}

TEST_CASE("friction solve: not-a-number anywhere, or a singular matrix, is refused") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto refused = [](auto spoil) {
    Random random{std::mt19937(10)};
    Problem p = random_problem(random, 4, 2, 0, 0);
    spoil(p);
    return !p.solve.solve(p.v);
  };
  CHECK(refused([&](Problem& p) { p.solve.A(1, 2) = nan; }));
  CHECK(refused([&](Problem& p) { p.solve.A(0, 0) = nan; }));
  CHECK(refused([&](Problem& p) { p.solve.r[0] = nan; }));
  CHECK(refused([&](Problem& p) { p.solve.r[3] = nan; }));
  CHECK(refused([&](Problem& p) { p.v[1] = nan; }));
  CHECK(refused([&](Problem& p) { p.solve.row[0].plus = nan; }));
  CHECK(refused([&](Problem& p) { p.solve.row[1].minus = nan; }));
  CHECK(refused([&](Problem& p) { p.solve.plus_by_v(0, 3) = nan; }));
  CHECK(refused([](Problem& p) {
    p.solve.A.row(3).setZero();
    p.solve.A.col(3).setZero();
  }));
}

TEST_CASE("friction solve: allocates nothing after construction") {
  if (!sinewright::HeapWatch::works()) return;
  Random random{std::mt19937(12)};
  for (const int size : {3, 10, 20}) {
    Problem p = random_problem(random, size, std::min(size, 8), 0.02, 0.3);
    const sinewright::HeapWatch watch;
    bool solved = true;
    for (int n = 0; n < 20; ++n) {
      p.solve.r[0] += 0.1;
      solved = p.solve.solve(p.v) && solved;
    }
    const std::size_t requests = watch.requests();
    CHECK(solved);
    CHECK(requests == 0);
  }
}

}  // namespace
