#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "strength/margin_checks.h"
#include "strength/part_strength.h"

namespace sinewright::strength {

/// What the checks of one part have in common.
struct CheckedLoad {
  std::string name;  ///< of the load
  std::string unit;
  std::function<PartLoad(const simulation::Stage&, const simulation::State&)> of;
  std::vector<std::string> places = {};
};

/// The dimension that helps, by its key; without one, nothing of the part does.
struct Size {
  std::string key = {};
  double value = 0;         ///< [SI]
  std::string unit = "mm";  ///< in which it is shown
};

using Demand = std::function<double(double size, double load)>;

/// Demand that is the load itself.
[[nodiscard]] inline double itself(double, double load) { return load; }

/// A name if something is not described, and nothing else: `lacking(!pulley.bore, key + ".bore")`.
[[nodiscard]] std::vector<std::string> lacking(bool absent, std::string key);

/// Lists of keys one after the other.
[[nodiscard]] std::vector<std::string> joined(std::initializer_list<std::vector<std::string>> lists);

/// Collects the checks of a system's parts: those that lack a key go to the other list.
class CheckList {
 public:
  explicit CheckList(const simulation::System& system) : system_(system) {}

  [[nodiscard]] const simulation::System& system() const { return system_; }
  [[nodiscard]] const model::Model& model() const { return system_.model(); }

  /// A check whose capacity does not depend on the size.
  /// @param needs  keys that are missing besides those of the capacity.
  void add(std::string name, std::string words, std::string unit, CheckedLoad load, Demand demand, Known capacity, Size size = {},
           std::vector<std::string> needs = {});
  /// Any other.
  void add(PartCheck check, std::vector<std::string> missing);

  /// Thinner or narrower than the material's process makes soundly: said, not judged.
  void caution_wall(const model::Build& build, const std::string& what, double wall);
  void caution_hole(const model::Build& build, const std::string& what, double hole);

  [[nodiscard]] PartChecks take() { return std::move(parts_); }

 private:
  void caution(const model::Build& build, const std::string& what, const char* feature, double size,
               double model::Material::*least);

  const simulation::System& system_;
  PartChecks parts_;
};

/// The checks of one part each, with its cautions. @throws InvalidInput if a dimension is one that a law cannot use.
void add_cord(CheckList& list, std::size_t cord);
void add_drive(CheckList& list, std::size_t drive);
void add_hinge(CheckList& list, std::size_t hinge);

}  // namespace sinewright::strength
