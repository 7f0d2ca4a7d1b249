#include "study/normal.h"

#include <cmath>
#include <numbers>

#include <boost/math/special_functions/erf.hpp>

namespace sinewright::study {

double normal_cumulative(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

double normal_quantile(double u) { return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * u); }

}  // namespace sinewright::study
