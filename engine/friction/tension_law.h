#pragma once

#include <utility>
#include <variant>
#include <vector>

#include "model/cord.h"

namespace sinewright::friction {

/// The tension of a cord as a function of its stretch λ = length / unstretched length, built once from a
/// model's law.
///
/// Slack below λ = 1: no tension, no energy. Beyond `max_stretch` every law goes on along its tangent, and
/// `beyond_validity` says so; nothing breaks or clips in silence. Evaluation allocates nothing and does not
/// throw. Laws and limits: docs/theory/cord-laws.md. Checked by tests/friction/tension_law_test.cpp.
class TensionFunction {
 public:
  struct Value {
    double tension = 0;  ///< T [N]
    double slope = 0;    ///< dT/dλ [N]; 0 below λ = 1, the right-hand slope at 1
  };
  struct Inverse {
    double stretch = 1;     ///< λ [–], >= 1
    double by_tension = 0;  ///< dλ/dT [1/N]
  };

  /// @throws InvalidInput if a law's data are out of range, or if the tension does not rise with stretch all
  ///         the way from λ = 1 to the end of its validity.
  explicit TensionFunction(const model::TensionLaw& law);

  [[nodiscard]] Value at(double stretch) const noexcept;
  [[nodiscard]] double tension(double stretch) const noexcept { return at(stretch).tension; }
  [[nodiscard]] double slope(double stretch) const noexcept { return at(stretch).slope; }

  /// Energy stored per unit of unstretched length: w(λ) = ∫₁^λ T dλ [J/m] = [N].
  [[nodiscard]] double energy(double stretch) const noexcept;

  /// The stretch at a tension. Taut cord is taken for granted: T <= 0 gives λ = 1 with the slope of the taut
  /// side. Exact for the linear law; a safeguarded Newton iteration to rounding for the others.
  [[nodiscard]] Inverse stretch_at(double tension) const noexcept;
  [[nodiscard]] double stretch(double tension) const noexcept { return stretch_at(tension).stretch; }

  /// dT/dλ at λ = 1, taut side [N]: EA for the linear law.
  [[nodiscard]] double initial_slope() const noexcept { return initial_slope_; }

  /// End of the law's validity [–]; infinite for the linear law.
  [[nodiscard]] double max_stretch() const noexcept { return max_stretch_; }
  [[nodiscard]] bool beyond_validity(double stretch) const noexcept { return stretch > max_stretch_; }

  /// True when T = EA (λ − 1) throughout, so that a caller may use closed forms.
  [[nodiscard]] bool is_linear() const noexcept { return std::holds_alternative<Linear>(law_); }

 private:
  struct Linear {};  // all it needs is initial_slope_
  struct Rubber {
    double area = 0;                               // [m²]
    std::vector<std::pair<double, double>> terms;  // (μ [Pa], α [–])
    std::vector<Inverse> guess;  // λ(T) at equal steps of T, a start for Newton's iteration
  };
  // One cubic T = a + s (b + s (c + s d)) with s = λ − start.
  struct Piece {
    double start = 1, a = 0, b = 0, c = 0, d = 0;
    double energy = 0;  // w at the start
  };
  struct Table {
    std::vector<Piece> pieces;
  };

  void build(const model::LinearLaw& law);
  void build(const model::RubberLaw& law);
  void build(const model::TableLaw& law);
  [[nodiscard]] Value inside(double stretch) const noexcept;          // for 1 <= λ <= max_stretch
  [[nodiscard]] double energy_inside(double stretch) const noexcept;  // likewise
  [[nodiscard]] Inverse solve(double tension, double low, double high, double guess) const noexcept;

  std::variant<Linear, Rubber, Table> law_;
  double initial_slope_ = 0;
  double max_stretch_ = 0;
  Value last_;              // at max_stretch
  double last_energy_ = 0;  // likewise
};

}  // namespace sinewright::friction
