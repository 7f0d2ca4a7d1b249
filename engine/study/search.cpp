#include "study/search.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

namespace sinewright::study {

namespace {

constexpr int kMostHalvings = 60;  // more do not fit between two doubles of like size

double middle(const model::Search& search, double a, double b) {
  return search.logarithmic ? std::sqrt(a * b) : 0.5 * (a + b);
}

}  // namespace

std::vector<double> sample_values(const model::Search& search) {
  std::vector<double> values;
  for (int i = 0; i < search.samples; ++i) {
    const double share = static_cast<double>(i) / (search.samples - 1);
    values.push_back(search.logarithmic ? search.from * std::pow(search.to / search.from, share)
                                        : search.from + share * (search.to - search.from));
  }
  values.back() = search.to;
  return values;
}

Answer narrow_down(const model::Search& search, double tolerance, std::vector<Probe> samples, const Trial& trial) {
  Answer answer;
  answer.probes = std::move(samples);
  const std::size_t n = answer.probes.size();
  const bool narrow_from_end = !answer.probes.front().holds && answer.probes.back().holds;
  bool all_narrow = true;
  for (std::size_t i = 0; i + 1 < n; ++i) {
    if (answer.probes[i].holds == answer.probes[i + 1].holds) continue;
    const bool low_holds = answer.probes[i].holds;
    double low = answer.probes[i].value, high = answer.probes[i + 1].value;
    const auto narrow = [&] { return 0.5 * (high - low) <= tolerance * std::max(std::abs(low), std::abs(high)); };
    for (int k = 0; k < kMostHalvings && !narrow(); ++k) {
      const double value = middle(search, low, high);
      answer.probes.push_back(trial(value));
      (answer.probes.back().holds == low_holds ? low : high) = value;
    }
    all_narrow = all_narrow && narrow();
    answer.changes.push_back(low_holds ? Change{low, high} : Change{high, low});
  }
  for (const Probe& probe : answer.probes) answer.ended_early += !probe.complete;
  answer.found = !answer.changes.empty();
  answer.settled = answer.found && all_narrow;
  answer.monotone = answer.changes.size() <= 1;
  if (!answer.found) {
    answer.value = answer.error = std::numeric_limits<double>::quiet_NaN();
    answer.note = answer.probes.front().holds ? "every sample holds: the limit lies outside the bracket"
                                              : "no sample holds: there is no limit within the bracket";
    return answer;
  }
  const Change& first = narrow_from_end ? answer.changes.back() : answer.changes.front();
  answer.value = 0.5 * (first.holds_at + first.fails_at);
  answer.error = 0.5 * std::abs(first.holds_at - first.fails_at);
  for (const Probe& probe : answer.probes)
    if (probe.value == first.holds_at) {  // what the run that still holds looks like
      answer.time = probe.end_time;
      answer.posture = probe.posture;
    }
  if (!answer.monotone) {
    answer.note = fmt::format("NOT MONOTONE: the outcome changes {} times within the bracket; the answer is the first change from ",
                              answer.changes.size());
    answer.note += narrow_from_end ? "the upper end, which holds" : answer.probes.front().holds ? "the lower end, which holds"
                                                                                                : "the lower end (neither end holds)";
  }
  return answer;
}

}  // namespace sinewright::study
