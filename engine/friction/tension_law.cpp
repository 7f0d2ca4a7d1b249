#include "friction/tension_law.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

#include "friction/argument.h"
#include "quantity/invalid_input.h"

namespace sinewright::friction {
namespace {

using Value = TensionFunction::Value;
using Inverse = TensionFunction::Inverse;

// Number of intervals of the table that starts Newton's iteration: its cubic is then good to about eight
// digits, so that one step reaches rounding.
constexpr int guess_intervals = 256;

// Sum over Ogden's terms. expm1 keeps the digits near λ = 1, where both powers are close to 1.
Value ogden(double area, const std::vector<std::pair<double, double>>& terms, double stretch) noexcept {
  const double log_stretch = std::log(stretch);
  double tension = 0;
  double slope = 0;
  for (const auto& [modulus, exponent] : terms) {
    const double along = std::expm1(exponent * log_stretch);          // λ^α − 1
    const double across = std::expm1(-0.5 * exponent * log_stretch);  // λ^(−α/2) − 1
    tension += modulus * (along - across);
    slope += modulus * ((exponent - 1) * (1 + along) + (0.5 * exponent + 1) * (1 + across));
  }
  return {area * tension / stretch, area * slope / (stretch * stretch)};
}

double ogden_energy(double area, const std::vector<std::pair<double, double>>& terms,
                    double stretch) noexcept {
  const double log_stretch = std::log(stretch);
  double energy = 0;
  for (const auto& [modulus, exponent] : terms) {
    energy += modulus / exponent *
              (std::expm1(exponent * log_stretch) + 2 * std::expm1(-0.5 * exponent * log_stretch));
  }
  return area * energy;
}

// Slope at a point between two intervals that both rise (Fritsch and Butland's weighted harmonic mean, as in
// PCHIP).
double inner_slope(double width_left, double width_right, double secant_left, double secant_right) {
  const double weight_left = 2 * width_right + width_left;
  const double weight_right = width_right + 2 * width_left;
  return (weight_left + weight_right) / (weight_left / secant_left + weight_right / secant_right);
}

// Slope at either end by the three-point formula, kept between a third and three times the end's secant:
// within that range the cubic is monotone, and a slope of zero (which could not be inverted) is ruled out.
double end_slope(double width, double next_width, double secant, double next_secant) {
  const double slope = ((2 * width + next_width) * secant - width * next_secant) / (width + next_width);
  return std::clamp(slope, secant / 3, 3 * secant);
}

}  // namespace

TensionFunction::TensionFunction(const model::TensionLaw& law) {
  std::visit([this](const auto& kind) { build(kind); }, law);
}

void TensionFunction::build(const model::LinearLaw& law) {
  require(std::isfinite(law.axial_stiffness) && law.axial_stiffness > 0, "axial stiffness",
          law.axial_stiffness, "N", "finite and > 0");
  law_ = Linear{};
  initial_slope_ = law.axial_stiffness;
  max_stretch_ = std::numeric_limits<double>::infinity();
}

void TensionFunction::build(const model::RubberLaw& law) {
  require(std::isfinite(law.area) && law.area > 0, "rubber cord area", law.area, "m^2", "finite and > 0");
  require(!law.terms.empty(), "number of rubber terms", 0, "", "at least 1");
  require(std::isfinite(law.max_stretch) && law.max_stretch > 1, "rubber max stretch", law.max_stretch, "",
          "finite and > 1");
  for (const auto& [modulus, exponent] : law.terms) {
    require(std::isfinite(modulus), "rubber term modulus", modulus, "Pa", "finite");
    require(std::isfinite(exponent) && exponent != 0, "rubber term exponent", exponent, "", "finite, not 0");
  }
  max_stretch_ = law.max_stretch;
  // A coarse walk finds a falling branch that a bad fit has; a branch narrower than a step would pass, and
  // then the safeguarded inverse still returns one of its solutions.
  constexpr int samples = 400;
  for (int i = 0; i <= samples; ++i) {
    const double stretch = 1 + (max_stretch_ - 1) * i / samples;
    const double slope = ogden(law.area, law.terms, stretch).slope;
    require(std::isfinite(slope) && slope > 0, "slope of the rubber law within its validity", slope, "N",
            "> 0: the tension must rise with stretch up to max stretch; check the signs of the terms");
  }
  law_ = Rubber{law.area, law.terms, {}};
  initial_slope_ = ogden(law.area, law.terms, 1).slope;
  last_ = ogden(law.area, law.terms, max_stretch_);
  last_energy_ = ogden_energy(law.area, law.terms, max_stretch_);

  std::vector<Inverse> guess;
  guess.reserve(guess_intervals + 1);
  double start = 1;
  for (int i = 0; i <= guess_intervals; ++i) {
    guess.push_back(solve(last_.tension * i / guess_intervals, 1, max_stretch_, start));
    start = guess.back().stretch;
  }
  std::get<Rubber>(law_).guess = std::move(guess);
}

void TensionFunction::build(const model::TableLaw& law) {
  const std::vector<double>& x = law.stretch;
  const std::vector<double>& y = law.tension;
  require(x.size() >= 2, "number of points in the stretch table", static_cast<double>(x.size()), "",
          "at least 2");
  require(x.size() == y.size(), "number of tensions in the table", static_cast<double>(y.size()), "",
          "as many as stretches");
  require(x[0] == 1, "first stretch of the table", x[0], "", "1");
  require(y[0] == 0, "first tension of the table", y[0], "N", "0");
  const std::size_t n = x.size() - 1;
  std::vector<double> width(n), secant(n), slope(n + 1);
  for (std::size_t i = 0; i < n; ++i) {
    require(std::isfinite(x[i + 1]) && x[i + 1] > x[i], "stretch in the table", x[i + 1], "",
            "finite and above the one before");
    require(std::isfinite(y[i + 1]) && y[i + 1] > y[i], "tension in the table", y[i + 1], "N",
            "finite and above the one before");
    width[i] = x[i + 1] - x[i];
    secant[i] = (y[i + 1] - y[i]) / width[i];
  }
  if (n == 1) {
    slope[0] = slope[1] = secant[0];
  } else {
    slope[0] = end_slope(width[0], width[1], secant[0], secant[1]);
    slope[n] = end_slope(width[n - 1], width[n - 2], secant[n - 1], secant[n - 2]);
    for (std::size_t i = 1; i < n; ++i)
      slope[i] = inner_slope(width[i - 1], width[i], secant[i - 1], secant[i]);
  }
  Table table;
  double energy = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const double h = width[i];
    Piece piece;
    piece.start = x[i];
    piece.a = y[i];
    piece.b = slope[i];
    piece.c = (3 * secant[i] - 2 * slope[i] - slope[i + 1]) / h;
    piece.d = (slope[i] + slope[i + 1] - 2 * secant[i]) / (h * h);
    piece.energy = energy;
    energy += h * (piece.a + h * (piece.b / 2 + h * (piece.c / 3 + h * piece.d / 4)));
    table.pieces.push_back(piece);
  }
  law_ = std::move(table);
  initial_slope_ = slope[0];
  max_stretch_ = x[n];
  last_ = {y[n], slope[n]};
  last_energy_ = energy;
}

TensionFunction::Value TensionFunction::inside(double stretch) const noexcept {
  if (const auto* rubber = std::get_if<Rubber>(&law_)) return ogden(rubber->area, rubber->terms, stretch);
  const auto& pieces = std::get_if<Table>(&law_)->pieces;
  const auto next = std::upper_bound(pieces.begin() + 1, pieces.end(), stretch,
                                     [](double value, const Piece& piece) { return value < piece.start; });
  const Piece& p = *(next - 1);
  const double s = stretch - p.start;
  return {p.a + s * (p.b + s * (p.c + s * p.d)), p.b + s * (2 * p.c + s * 3 * p.d)};
}

double TensionFunction::energy_inside(double stretch) const noexcept {
  if (const auto* rubber = std::get_if<Rubber>(&law_))
    return ogden_energy(rubber->area, rubber->terms, stretch);
  const auto& pieces = std::get_if<Table>(&law_)->pieces;
  const auto next = std::upper_bound(pieces.begin() + 1, pieces.end(), stretch,
                                     [](double value, const Piece& piece) { return value < piece.start; });
  const Piece& p = *(next - 1);
  const double s = stretch - p.start;
  return p.energy + s * (p.a + s * (p.b / 2 + s * (p.c / 3 + s * p.d / 4)));
}

TensionFunction::Value TensionFunction::at(double stretch) const noexcept {
  if (stretch < 1) return {};
  if (is_linear()) return {initial_slope_ * (stretch - 1), initial_slope_};
  if (stretch > max_stretch_) return {last_.tension + last_.slope * (stretch - max_stretch_), last_.slope};
  return inside(stretch);
}

double TensionFunction::energy(double stretch) const noexcept {
  if (stretch <= 1) return 0;
  if (is_linear()) return 0.5 * initial_slope_ * (stretch - 1) * (stretch - 1);
  if (stretch > max_stretch_) {
    const double s = stretch - max_stretch_;
    return last_energy_ + s * (last_.tension + 0.5 * s * last_.slope);
  }
  return energy_inside(stretch);
}

TensionFunction::Inverse TensionFunction::stretch_at(double tension) const noexcept {
  if (tension <= 0) return {1, 1 / initial_slope_};
  if (is_linear()) return {1 + tension / initial_slope_, 1 / initial_slope_};
  if (tension >= last_.tension) {
    return {max_stretch_ + (tension - last_.tension) / last_.slope, 1 / last_.slope};
  }
  if (const auto* rubber = std::get_if<Rubber>(&law_)) {
    const double step = last_.tension / guess_intervals;
    const auto i = static_cast<std::size_t>(std::min(tension / step, guess_intervals - 1.0));
    const Inverse& left = rubber->guess[i];
    const Inverse& right = rubber->guess[i + 1];
    const double t = tension / step - static_cast<double>(i);
    const double s = 1 - t;
    const double guess = s * s * (1 + 2 * t) * left.stretch + t * t * (1 + 2 * s) * right.stretch +
                         step * s * t * (s * left.by_tension - t * right.by_tension);
    return solve(tension, left.stretch, right.stretch, guess);
  }
  const auto& pieces = std::get_if<Table>(&law_)->pieces;
  const auto next = std::upper_bound(pieces.begin() + 1, pieces.end(), tension,
                                     [](double value, const Piece& piece) { return value < piece.a; });
  const Piece& p = *(next - 1);
  const double end = next == pieces.end() ? max_stretch_ : next->start;
  return solve(tension, p.start, end, p.start + (tension - p.a) / p.b);
}

// Newton's iteration on T(λ) = tension, with bisection whenever a step leaves the bracket [low, high].
TensionFunction::Inverse TensionFunction::solve(double tension, double low, double high,
                                                double guess) const noexcept {
  double stretch = guess > low && guess < high ? guess : 0.5 * (low + high);
  Value value = inside(stretch);
  // Bisection alone needs at most 52 halvings; the bound is never met by a rising law.
  for (int i = 0; i < 100; ++i) {
    (value.tension > tension ? high : low) = stretch;
    double next = stretch - (value.tension - tension) / value.slope;
    const bool newton = next >= low && next <= high;
    if (!newton) next = 0.5 * (low + high);
    const double moved = std::abs(next - stretch);
    stretch = next;
    value = inside(stretch);
    // Newton's error is about the square of its last step; a bisection's is the step itself.
    if (moved <= (newton ? 3e-9 : 2 * std::numeric_limits<double>::epsilon()) * stretch) break;
  }
  return {stretch, 1 / value.slope};
}

}  // namespace sinewright::friction
