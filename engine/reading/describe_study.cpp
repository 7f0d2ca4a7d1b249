#include <algorithm>

#include "reading/describe.h"

namespace sinewright::reading {
namespace {

using namespace model;

Kind<double> confidence() {
  return number({0.5, 0.9999, false, false, "from 50 % to 99.99 %"});
}

Kind<Points> points() {
  return word<Points>({{"random", Points::random}, {"sobol", Points::sobol}, {"latin_hypercube", Points::latin_hypercube}});
}

struct WrittenVariable {
  std::string key;
  std::vector<std::string> keys;
  std::vector<std::string> values;
  Named<std::vector<std::string>> options;
  std::optional<Quantity> from, to, plus_minus, mean, deviation;
  bool share = false;  // plus_minus was written in percent
  bool logarithmic = false;
  int steps = 5;
  std::optional<std::string> iso_class;
  std::vector<Quantity> measured;
  std::optional<Law> law;
  double sigmas = 3;
  std::string group;
};

// A number and the unit that the numbers beside it share.
double in_unit(const Quantity& quantity, const std::string& unit, const Node& node) {
  if (!same_dimension(quantity.unit, unit)) throw not_allowed(node, "the dimension of the numbers beside it");
  return from_si(quantity.si, unit);
}

Variable variable_of(const WrittenVariable& written, const Node& node) {
  Variable variable;
  variable.place = node.key_place();
  const auto at = [&](const char* key) -> const Node& { return *node.find(key); };
  const bool has_key = node.find("key") != nullptr || node.find("keys") != nullptr;
  if (node.find("key") && node.find("keys")) throw not_allowed(at("keys"), "'key' or 'keys', not both");
  variable.keys = written.keys;
  if (node.find("key")) variable.keys = {written.key};
  for (const std::string& key : variable.keys)
    if (key.find('=') != std::string::npos || key.find('.') == std::string::npos)
      throw not_allowed(node.find("key") ? at("key") : at("keys"), "a path such as model.drives.flexor.pulley.radius, without '='",
                        "'model.…' means the model of every run, '<run>.…' the scenario of one run");
  variable.group = written.group;
  variable.sigmas = written.sigmas;

  const std::vector<std::string> ways = {"from", "values", "options", "plus_minus", "iso_286", "mean", "measured"};
  std::vector<std::string> given;
  for (const std::string& way : ways)
    if (node.find(way)) given.push_back(way);
  if (given.empty()) throw missing_choice(node, ways);
  if (given.size() > 1) throw not_allowed(at(given[1].c_str()), "one of: " + listed(ways), "the spread is given by " + given[0] + " already");
  const std::string& way = given[0];
  if (way == "options" && has_key) throw not_allowed(at("options"), "no 'key' beside it: every option names its own keys");
  if (way != "options" && !has_key) throw missing(node, "key", "the path of what varies, as in --set");
  const auto only_with = [&](const char* key, bool fits, const char* needed) {
    if (node.find(key) && !fits) throw not_allowed(at(key), needed);
  };
  const bool limits = way == "from" || way == "plus_minus" || way == "iso_286";
  only_with("to", way == "from", "'from' beside it");
  only_with("deviation", way == "mean", "'mean' beside it");
  only_with("spacing", way == "from", "'from' and 'to' beside it");
  only_with("steps", way == "from", "'from' and 'to' beside it");
  only_with("distribution", limits, "'from' and 'to', 'plus_minus' or 'iso_286' beside it");
  variable.law = written.law.value_or(way == "from" ? Law::uniform : Law::normal);
  only_with("sigmas", limits && variable.law == Law::normal, "a normal distribution between limits");

  if (way == "values") {
    Options options;
    for (const std::string& value : written.values) {
      options.names.push_back(value);
      options.changes.emplace_back();
      for (const std::string& key : variable.keys) options.changes.back().push_back(key + "=" + value);
    }
    variable.keys.clear();
    variable.ordered = true;
    variable.spread = std::move(options);
  } else if (way == "options") {
    Options options;
    for (const auto& option : written.options) {
      options.names.push_back(option.name);
      options.changes.push_back(option.value);
    }
    if (options.names.size() < 2) throw not_allowed(at("options"), "a map from 2 or more names to lists of changes");
    variable.spread = std::move(options);
  } else if (way == "from") {
    if (!written.to) throw missing(node, "to", "the other end");
    variable.unit = written.from->unit;
    Between between{from_si(written.from->si, variable.unit), in_unit(*written.to, variable.unit, at("to")), written.logarithmic, written.steps};
    if (between.high <= between.low) throw not_allowed(at("to"), "to > from");
    if (between.logarithmic && between.low <= 0) throw not_allowed(at("from"), "> 0 with logarithmic spacing");
    if (between.logarithmic && variable.law != Law::uniform)
      throw not_allowed(at("distribution"), "uniform with logarithmic spacing");
    variable.spread = between;
  } else if (way == "plus_minus") {
    if (written.plus_minus->si <= 0) throw not_allowed(at("plus_minus"), "> 0");
    variable.unit = written.plus_minus->unit;
    variable.spread = Around{written.share ? written.plus_minus->si : from_si(written.plus_minus->si, variable.unit), written.share};
  } else if (way == "iso_286") {
    variable.spread = model::IsoClass{*written.iso_class};
  } else if (way == "mean") {
    if (!written.deviation) throw missing(node, "deviation", "the standard deviation");
    variable.unit = written.mean->unit;
    const MeanAndDeviation normal{from_si(written.mean->si, variable.unit), in_unit(*written.deviation, variable.unit, at("deviation"))};
    if (normal.deviation <= 0) throw not_allowed(at("deviation"), "> 0");
    variable.spread = normal;
  } else {
    Measured measured;
    variable.unit = written.measured.front().unit;
    for (std::size_t i = 0; i < written.measured.size(); ++i)
      measured.values.push_back(in_unit(written.measured[i], variable.unit, *at("measured").children[i]));
    variable.spread = std::move(measured);
  }
  return variable;
}

Kind<Variable> variable() {
  Kind<Quantity> any_quantity_kind = any_quantity("a number with the unit of the key, such as \"5 mm\"");
  const auto optional = [&](const Kind<Quantity>& kind) {
    return turned_into<std::optional<Quantity>, Quantity>(kind, [](const Quantity& value, const Node&) { return std::optional(value); });
  };
  std::vector<std::pair<std::string, std::optional<std::string>>> classes;
  for (const auto name : hole_classes) classes.emplace_back(name, std::string(name));
  for (const auto name : shaft_classes) classes.emplace_back(name, std::string(name));
  Record<WrittenVariable> record("variable", "One thing that a study varies.");
  record.may("key", &WrittenVariable::key, text(), Absent{"'keys' or 'options'"}, "path of what varies, as in --set: 'model.…' in all runs, '<run>.…' in one")
      .may("keys", &WrittenVariable::keys, list_of(text(), "a list of 1 or more key paths", 1), Absent{"'key' or 'options'"}, "several that get the same value")
      .may("from", &WrittenVariable::from, optional(any_quantity_kind), Absent{"another kind of spread"}, "lowest value")
      .may("to", &WrittenVariable::to, optional(any_quantity_kind), Absent{"another kind of spread"}, "highest value")
      .may("spacing", &WrittenVariable::logarithmic, word<bool>({{"linear", false}, {"logarithmic", true}}), Default{"linear"}, "from 'from' to 'to'")
      .may("steps", &WrittenVariable::steps, whole_number(2, 1000), Default{"5"}, "values of a grid from 'from' to 'to', both among them")
      .may("values", &WrittenVariable::values, list_of(text(), "a list of 1 or more values", 1), Absent{"another kind of spread"},
           "one of these, for instance the names of gearheads")
      .may("options", &WrittenVariable::options, named(list_of(text(), "a list of changes"), "option"), Absent{"another kind of spread"},
           "one of these, each a list of 'key.path=value' that are set together")
      .may("plus_minus", &WrittenVariable::plus_minus, optional(any_quantity_kind), Absent{"another kind of spread"},
           "round the value that the files give; in percent it is a share of that value")
      .may("iso_286", &WrittenVariable::iso_class, word<std::optional<std::string>>(classes), Absent{"another kind of spread"},
           "class, with the value that the files give as nominal size")
      .may("mean", &WrittenVariable::mean, optional(any_quantity_kind), Absent{"another kind of spread"}, "of a normal distribution without limits")
      .may("deviation", &WrittenVariable::deviation, optional(any_quantity_kind), Absent{"another kind of spread"}, "its standard deviation")
      .may("measured", &WrittenVariable::measured, list_of(any_quantity_kind, "a list of 2 or more measured values", 2), Absent{"another kind of spread"},
           "the distribution of this list")
      .may("distribution", &WrittenVariable::law,
           word<std::optional<Law>>({{"uniform", Law::uniform}, {"normal", Law::normal}, {"triangular", Law::triangular}}),
           Absent{"uniform with 'from', else normal"}, "between the limits; a triangle peaks in their middle")
      .may("sigmas", &WrittenVariable::sigmas, number({1, 6, false, false, "from 1 to 6"}), Default{"3"},
           "standard deviations from the mean to either limit of a normal distribution, which is cut there")
      .may("group", &WrittenVariable::group, text(), Absent{"independent of the others"}, "a name in 'groups'")
      .check([](WrittenVariable& value, const Node& node) {
        if (const Node* share = node.find("plus_minus")) {
          const std::string& unit = value.plus_minus->unit;
          value.share = share->text.find('%') != std::string::npos || unit == "percent";
        }
      });
  return turned_into<Variable, WrittenVariable>(record.kind(), variable_of);
}

std::vector<Variable> variables_of(const Named<Variable>& named_variables) {
  std::vector<Variable> list;
  for (const auto& entry : named_variables) {
    list.push_back(entry.value);
    list.back().name = entry.name;
  }
  return list;
}

// What each kind of study can be given: the options of the others would be a mistake.
Kind<StudyKind> grid_study() {
  Record<GridStudy> record("grid_study", "Every combination of the values.");
  return turned_into<StudyKind, GridStudy>(record.kind(), [](const GridStudy& value, const Node&) { return StudyKind(value); });
}

Kind<StudyKind> sample_study() {
  Record<SampleStudy> record("sample_study", "Designs spread evenly over all that varies.");
  record.may("points", &SampleStudy::points, points(), Default{"sobol"}, "how they are spread")
      .need("runs", &SampleStudy::runs, whole_number(1, 100000000), "how many designs")
      .may("seed", &SampleStudy::seed, seed(), Default{"1"}, "of the random numbers");
  return turned_into<StudyKind, SampleStudy>(record.kind(), [](const SampleStudy& value, const Node&) { return StudyKind(value); });
}

// T: ToleranceStudy or what builds on it.
template <class T>
Record<T> tolerance_record(const std::string& name, const std::string& about) {
  Record<T> record(name, about);
  record.may("points", &T::points, points(), Default{"random"},
              "how they are spread; the interval of the yield is that of random points, and too wide for the evener ones")
      .need("runs", &T::runs, whole_number(1, 100000000), "how many made things")
      .may("seed", &T::seed, seed(), Default{"1"}, "of the random numbers")
      .may("confidence", &T::confidence, confidence(), Default{"95 %"}, "of the interval of the yield");
  return record;
}

Kind<StudyKind> tolerance_study() {
  const auto record = tolerance_record<ToleranceStudy>("tolerance_study", "What share of the made things meets the requirements.");
  return turned_into<StudyKind, ToleranceStudy>(record.kind(), [](const ToleranceStudy& value, const Node&) { return StudyKind(value); });
}

Kind<StudyKind> sensitivity_study() {
  Record<SensitivityStudy> record("sensitivity_study", "What share of an outcome's variance each variable causes.");
  record.need("base", &SensitivityStudy::base, whole_number(8, 10000000), "rows of the base sample; base × (variables + 2) designs are run")
      .may("seed", &SensitivityStudy::seed, seed(), Default{"1"}, "of the random numbers")
      .may("confidence", &SensitivityStudy::confidence, confidence(), Default{"95 %"}, "of the intervals");
  return turned_into<StudyKind, SensitivityStudy>(record.kind(), [](const SensitivityStudy& value, const Node&) { return StudyKind(value); });
}

Kind<StudyKind> screening_study() {
  Record<ScreeningStudy> record("screening_study", "Which of many variables matter at all, at little cost.");
  record.need("paths", &ScreeningStudy::paths, whole_number(2, 1000000), "each changes every variable once: paths × (variables + 1) designs are run")
      .may("levels", &ScreeningStudy::levels, whole_number(4, 64), Default{"4"}, "values of each variable; an even number")
      .may("seed", &ScreeningStudy::seed, seed(), Default{"1"}, "of the random numbers")
      .check([](ScreeningStudy& value, const Node& node) {
        if (value.levels % 2 != 0) throw not_allowed(*node.find("levels"), "an even number");
      });
  return turned_into<StudyKind, ScreeningStudy>(record.kind(), [](const ScreeningStudy& value, const Node&) { return StudyKind(value); });
}

Kind<StudyKind> optimise_study() {
  struct Written : OptimiseStudy {
    std::vector<std::string> minimise, maximise;
    std::optional<Robustness> robust;
  };
  struct WrittenRobustness : ToleranceStudy {
    Named<Variable> vary;
  };
  auto robustness = tolerance_record<WrittenRobustness>("robustness", "The best design is made with tolerances, as in a tolerance study.");
  robustness.need("vary", &WrittenRobustness::vary, named(variable(), "variable"), "what the making varies, round the best design's values");
  const Kind<std::optional<Robustness>> robust = turned_into<std::optional<Robustness>, WrittenRobustness>(
      robustness.kind(), [](const WrittenRobustness& value, const Node&) {
        return std::optional(Robustness{static_cast<const ToleranceStudy&>(value), variables_of(value.vary)});
      });
  Record<Written> record("optimise_study", "The best design under the requirements; with several goals the best compromises.");
  record.may("minimise", &Written::minimise, list_of(text(), "a list of outcomes"), Absent{"none"}, "outcomes, the smaller the better")
      .may("maximise", &Written::maximise, list_of(text(), "a list of outcomes"), Absent{"none"}, "outcomes, the larger the better")
      .need("runs", &Written::runs, whole_number(8, 10000000), "designs that may be run, at most")
      .may("seed", &Written::seed, seed(), Default{"1"}, "of the random numbers")
      .may("robustness", &Written::robust, robust, Absent{"not checked"}, "the yield of the best design (with several goals, of the most balanced one)")
      .check([](Written& value, const Node& node) {
        for (const auto& outcome : value.minimise) value.goals.push_back({outcome, false});
        for (const auto& outcome : value.maximise) value.goals.push_back({outcome, true});
        if (value.goals.empty()) throw missing(node, "minimise", "'minimise', 'maximise' or both, with 1 or more outcomes");
        value.robustness = value.robust;
      });
  return turned_into<StudyKind, Written>(record.kind(), [](const Written& value, const Node&) {
    return StudyKind(static_cast<const OptimiseStudy&>(value));
  });
}

Kind<StudyRun> study_run() {
  Record<StudyRun> record("study_run", "A scenario that every design goes through, or a limit that is found for it.");
  record.one_of("what", "scenario", &StudyRun::scenario, text(), "a scenario file, relative to the folder of this file")
      .one_of("what", "limit", &StudyRun::limit, text(), "a limit file; its value is an outcome by the name of the run")
      .may("change", &StudyRun::change, list_of(text(), "a list of changes"), Absent{"none"}, "values of the scenario that differ, each as 'key.path=value'");
  return record.kind();
}

}  // namespace

Kind<StudyFile> study_file() {
  struct Written : StudyFile {
    Named<StudyRun> runs;
    Named<Variable> vary;
    Named<double> groups;
    std::vector<std::string> outcomes;
    std::vector<WrittenRequirement> require;
    StudyKind kind;
  };
  const std::vector<std::pair<std::string, Kind<StudyKind>>> kinds = {
      {"grid", grid_study()},           {"sample", sample_study()},       {"tolerance", tolerance_study()},
      {"sensitivity", sensitivity_study()}, {"screening", screening_study()}, {"optimise", optimise_study()}};
  Record<Written> record("study_file", "Many designs, each put through the same runs.");
  add_heading(record, "study", true);
  record.need("runs", &Written::runs, named(study_run(), "run"), "what every design goes through")
      .need("vary", &Written::vary, named(variable(), "variable"), "what differs between the designs")
      .may("groups", &Written::groups, named(number({0, 1, true, true, "above 0, below 1"}), "group"), Absent{"all independent"},
           "correlation between any two variables of a group, such as all holes of one print")
      .may("outcomes", &Written::outcomes, list_of(text(), "a list of outcomes", 1), Absent{"what the requirements name"},
           "'<run>.<key of the summary>', '<run>' of a limit, or 'cost'")
      .may("require", &Written::require, list_of(requirement(), "a list of requirements"), Absent{"what the scenarios require"},
           "bounds on outcomes, beside what the scenarios require");
  for (const auto& [key, kind] : kinds) record.one_of("kind", key, &Written::kind, kind, "the kind of study");
  record.check([kinds](Written& value, const Node& node) {
    model::Study& study = value.study;
    study.name = value.name;
    study.about = value.about;
    for (const auto& run : value.runs) {
      study.runs.push_back(run.value);
      study.runs.back().name = run.name;
      if (run.name == "model" || run.name == "cost")
        throw complaint(run.node->key_place(), "a run may not be called " + run.name, "another name", "");
    }
    if (study.runs.empty()) throw not_allowed(*node.find("runs"), "1 or more runs");
    study.vary = variables_of(value.vary);
    if (study.vary.empty()) throw not_allowed(*node.find("vary"), "1 or more variables");
    for (const auto& group : value.groups) study.groups.emplace_back(group.name, group.value);
    const auto check_groups = [&](const std::vector<Variable>& list) {
      for (const Variable& one : list)
        if (!one.group.empty() && std::none_of(study.groups.begin(), study.groups.end(), [&](const auto& g) { return g.first == one.group; }))
          throw complaint(one.place, one.name + ": there is no group '" + one.group + "'", "a name in 'groups' of this file", "");
    };
    check_groups(study.vary);
    study.outcomes = value.outcomes;
    study.requirements = requirements_of(value.require);
    study.kind = value.kind;
    for (const auto& [key, kind] : kinds)
      if (const Node* found = node.find(key)) study.place = found->key_place();
    const Node* outcomes = node.find("outcomes");
    study.outcomes_place = outcomes ? outcomes->key_place() : study.place;
    if (const auto* optimise = std::get_if<OptimiseStudy>(&study.kind); optimise && optimise->robustness) check_groups(optimise->robustness->vary);
  });
  return turned_into<StudyFile, Written>(record.kind(), [](const Written& value, const Node&) { return static_cast<const StudyFile&>(value); });
}

}  // namespace sinewright::reading
