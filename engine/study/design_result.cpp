#include "study/design_result.h"

#include <algorithm>
#include <charconv>
#include <limits>

#include <fmt/format.h>

namespace sinewright::study {

namespace {

// A number so that it comes back to the last bit, and whatever it is.
std::string number(double value) {
  return fmt::format("{}", value);
}

double number_in(std::string_view text) {
  if (text == "nan" || text == "-nan") return std::numeric_limits<double>::quiet_NaN();
  double value = 0;
  (void)std::from_chars(text.data(), text.data() + text.size(), value);  // takes "inf", too
  return value;
}

class Words {
 public:
  explicit Words(std::string_view text) : rest_(text) {}
  std::string_view next() {
    const std::size_t end = std::min(rest_.find(' '), rest_.size());
    const std::string_view word = rest_.substr(0, end);
    rest_.remove_prefix(std::min(end + 1, rest_.size()));
    return word;
  }
  long long whole() {
    const std::string_view word = next();
    long long value = 0;
    (void)std::from_chars(word.data(), word.data() + word.size(), value);
    return value;
  }
  [[nodiscard]] std::string_view rest() const { return rest_; }

 private:
  std::string_view rest_;
};

}  // namespace

std::string line_of(const DesignResult& result) {
  std::string line = fmt::format("{} {} {} {}", result.index, static_cast<int>(result.state), result.outcomes.size(), result.shortfalls.size());
  for (const double value : result.outcomes) line += ' ' + number(value);
  for (const double value : result.shortfalls) line += ' ' + number(value);
  line += ' ';
  for (const char c : result.reason) line += c == '\n' || c == '\r' ? ' ' : c;
  return line;
}

DesignResult result_from(std::string_view content) {
  Words words(content);
  DesignResult result;
  result.index = words.whole();
  result.state = static_cast<State>(words.whole());
  const auto n = static_cast<std::size_t>(words.whole()), m = static_cast<std::size_t>(words.whole());
  for (std::size_t i = 0; i < n; ++i) result.outcomes.push_back(number_in(words.next()));
  for (std::size_t i = 0; i < m; ++i) result.shortfalls.push_back(number_in(words.next()));
  result.reason = words.rest();
  return result;
}

}  // namespace sinewright::study
