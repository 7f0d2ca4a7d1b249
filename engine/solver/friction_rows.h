#pragma once

#include <Eigen/Core>
#include <Eigen/LU>
#include <cstdint>
#include <vector>

namespace sinewright::solver {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// What dry friction does at one velocity.
enum class Mode : std::int8_t { slides_minus = -1, sticks = 0, slides_plus = 1 };

/// Dry friction at velocity `index`: a force λ ∈ [−plus, minus] with λ = −plus while v > 0, λ = +minus while v < 0, and
/// whatever holds v = 0 in between. The two limits may differ and may depend on the velocities (load-dependent friction).
struct FrictionRow {
  int index = 0;
  double plus = 0;   ///< >= 0 [N m]
  double minus = 0;  ///< >= 0 [N m]
};

/// One Newton step of  r(v) = λ  with dry friction on some rows:  r + A dv = λ(v + dv), the complementarity solved exactly.
/// Holds its own workspace; allocates only in the constructor.
class FrictionSolve {
 public:
  explicit FrictionSolve(int n, int rows);

  MatrixXd A;       ///< n × n, dr/dv
  VectorXd r;       ///< n, residual without dry friction
  std::vector<FrictionRow> row;
  MatrixXd plus_by_v;   ///< rows × n, gradient of each `plus`
  MatrixXd minus_by_v;  ///< rows × n
  VectorXd dv;      ///< n, result
  VectorXd lambda;  ///< rows, result: friction force at the solution of the linearised problem
  std::vector<Mode> mode;  ///< rows: first guess in, answer out
  int pivots = 0;

  /// Block pivoting from the given modes; after `2 rows + 4` rounds one row at a time by the least index (Murty's rule),
  /// which ends for every P-matrix. Sources: J. J. Júdice & F. M. Pires, Computers & Operations Research 21 (1994) 587;
  /// K. G. Murty, Linear Complementarity, Linear and Nonlinear Programming, Heldermann 1988 (both from memory).
  /// @param v  the velocities at which A and r were taken.
  /// @returns false if no consistent set of modes was found or the matrix is singular or not finite.
  [[nodiscard]] bool solve(const VectorXd& v);

 private:
  MatrixXd matrix_;
  VectorXd right_;
  Eigen::PartialPivLU<MatrixXd> factor_;
};

}  // namespace sinewright::solver
