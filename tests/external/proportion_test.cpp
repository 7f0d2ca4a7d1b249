#include <catch2/catch.hpp>

#include "check.h"
#include "study/proportion_interval.h"

using namespace sinewright::study;
using sinewright::external::check_absolute;
using sinewright::external::Outside;

namespace {

struct Row {
  const char* name;
  std::uint64_t passes, trials;
  double low, high;
};

void check_interval(const Row& r, const Interval& ours, const Outside& outside) {
  check_absolute(std::string("lower end, ") + r.name, "1", ours.low, r.low, outside);
  check_absolute(std::string("upper end, ") + r.name, "1", ours.high, r.high, outside);
}

}  // namespace

TEST_CASE("yield: Wilson's 95 % interval of a published example", "[external][yield]") {
  check_interval({"81 of 263", 81, 263, 0.2553, 0.3662}, wilson_interval(81, 263),
                 {"Newcombe, Stat. Med. 17 (1998) 857 (from memory; the case seen on a documentation page of an R package)", 5e-5});
}

TEST_CASE("yield: Wilson's 95 % intervals, evaluated apart", "[external][yield]") {
  const Row r = GENERATE(Row{"81 of 263", 81, 263, 0.255288519878, 0.366209576983},
                         Row{"15 of 148", 15, 148, 0.0623863995307, 0.160487241723}, Row{"0 of 20", 0, 20, 0, 0.161125158053},
                         Row{"1 of 29", 1, 29, 0.00611321429276, 0.171755218793},
                         Row{"95 of 100", 95, 100, 0.888249530768, 0.978456320846},
                         Row{"98 of 100", 98, 100, 0.929988209271, 0.99449803245}, Row{"100 of 100", 100, 100, 0.963006501793, 1},
                         Row{"990 of 1000", 990, 1000, 0.98169053113, 0.994559245554});
  // 1e-11: the references have 12 digits.
  check_interval(r, wilson_interval(r.passes, r.trials), {"Wilson's formula, cases of Newcombe 1998 and others; evaluated apart", 1e-11});
}

TEST_CASE("yield: Clopper and Pearson's 95 % intervals, evaluated apart", "[external][yield]") {
  const Row r = GENERATE(Row{"81 of 263", 81, 263, 0.252736745585, 0.367621922601},
                         Row{"15 of 148", 15, 148, 0.0578440100834, 0.161650490349}, Row{"0 of 20", 0, 20, 0, 0.168433470983},
                         Row{"1 of 29", 1, 29, 0.00087264688358, 0.177644295489},
                         Row{"95 of 100", 95, 100, 0.887165088895, 0.983568120818},
                         Row{"98 of 100", 98, 100, 0.929616067529, 0.997568663176}, Row{"100 of 100", 100, 100, 0.963783307355, 1},
                         Row{"990 of 1000", 990, 1000, 0.981686756945, 0.995194489309});
  check_interval(r, clopper_pearson_interval(r.passes, r.trials), {"Clopper and Pearson 1934; evaluated apart", 1e-10});
}

TEST_CASE("yield: Clopper and Pearson's interval of a statistics library's documentation", "[external][yield]") {
  check_interval({"7 of 50", 7, 50, 0.05819170033997342, 0.26739600249700846}, clopper_pearson_interval(7, 50),
                 {"docs.scipy.org, BinomTestResult.proportion_ci", 1e-12});
}

TEST_CASE("yield: trials without a failure that show a yield", "[external][yield]") {
  struct Trials {
    const char* name;
    double yield, confidence, n;
  };
  const Trials t = GENERATE(Trials{"90 % with 90 %", 0.90, 0.90, 22}, Trials{"90 % with 95 %", 0.90, 0.95, 29},
                            Trials{"95 % with 95 %", 0.95, 0.95, 59}, Trials{"99 % with 95 %", 0.99, 0.95, 299},
                            Trials{"99 % with 99 %", 0.99, 0.99, 459});
  check_absolute(std::string("trials, yield ") + t.name, "1", static_cast<double>(trials_without_failure(t.yield, t.confidence)), t.n,
                 {"Wilks 1941 (from memory)", 0});
}
