#include "solver/friction_rows.h"

#include <algorithm>
#include <cmath>

namespace sinewright::solver {

FrictionSolve::FrictionSolve(int n, int rows)
    : A(MatrixXd::Zero(n, n)),
      r(VectorXd::Zero(n)),
      row(static_cast<std::size_t>(rows)),
      plus_by_v(MatrixXd::Zero(rows, n)),
      minus_by_v(MatrixXd::Zero(rows, n)),
      dv(VectorXd::Zero(n)),
      lambda(VectorXd::Zero(rows)),
      mode(static_cast<std::size_t>(rows), Mode::sticks),
      matrix_(n, n),
      right_(n),
      factor_(n) {}

bool FrictionSolve::solve(const VectorXd& v) {
  const int rows = static_cast<int>(row.size());
  const int gentle = 2 * rows + 4;
  const int most = gentle + 50 * (rows + 1);
  for (pivots = 0; pivots < most; ++pivots) {
    matrix_ = A;
    right_ = -r;
    for (int k = 0; k < rows; ++k) {
      const auto& f = row[static_cast<std::size_t>(k)];
      switch (mode[static_cast<std::size_t>(k)]) {
        case Mode::sticks:
          matrix_.row(f.index).setZero();
          matrix_(f.index, f.index) = 1;
          right_[f.index] = -v[f.index];
          break;
        case Mode::slides_plus:
          matrix_.row(f.index) += plus_by_v.row(k);
          right_[f.index] -= f.plus;
          break;
        case Mode::slides_minus:
          matrix_.row(f.index) -= minus_by_v.row(k);
          right_[f.index] += f.minus;
          break;
      }
    }
    factor_.compute(matrix_);
    dv.noalias() = factor_.solve(right_);
    if (!dv.allFinite()) return false;

    bool changed = false;
    for (int k = 0; k < rows; ++k) {
      const auto& f = row[static_cast<std::size_t>(k)];
      Mode& m = mode[static_cast<std::size_t>(k)];
      const double plus = std::max(0.0, f.plus + plus_by_v.row(k).dot(dv));
      const double minus = std::max(0.0, f.minus + minus_by_v.row(k).dot(dv));
      const Mode before = m;
      if (m == Mode::sticks) {
        const double needed = r[f.index] + A.row(f.index).dot(dv);
        const double rounding = 1e-12 * (plus + minus + std::abs(r[f.index]));
        if (needed < -plus - rounding) m = Mode::slides_plus;
        if (needed > minus + rounding) m = Mode::slides_minus;
        lambda[k] = std::clamp(needed, -plus, minus);
      } else {
        lambda[k] = m == Mode::slides_plus ? -plus : minus;
        if (static_cast<int>(m) * (v[f.index] + dv[f.index]) < 0) m = Mode::sticks;
      }
      changed = changed || m != before;
      if (changed && pivots >= gentle) break;
    }
    if (!changed) return lambda.allFinite();  // a sticking row's own numbers do not reach dv
  }
  return false;
}

}  // namespace sinewright::solver
