#include "strength/check_list.h"

#include <fmt/format.h>

#include <algorithm>

namespace sinewright::strength {

std::vector<std::string> lacking(bool absent, std::string key) {
  return absent ? std::vector<std::string>{std::move(key)} : std::vector<std::string>{};
}

std::vector<std::string> joined(std::initializer_list<std::vector<std::string>> lists) {
  std::vector<std::string> all;
  for (const auto& list : lists) all.insert(all.end(), list.begin(), list.end());
  return all;
}

void CheckList::add(std::string name, std::string words, std::string unit, CheckedLoad load, Demand demand, Known capacity,
                    Size size, std::vector<std::string> needs) {
  PartCheck check;
  check.name = std::move(name);
  check.check = std::move(words);
  check.unit = std::move(unit);
  check.load_name = std::move(load.name);
  check.load_unit = std::move(load.unit);
  check.places = std::move(load.places);
  check.load = std::move(load.of);
  check.demand = std::move(demand);
  check.capacity = [value = capacity.value](double) { return value; };
  check.size_key = std::move(size.key);
  check.size = size.value;
  check.size_unit = std::move(size.unit);
  add(std::move(check), joined({needs, capacity.missing}));
}

void CheckList::add(PartCheck check, std::vector<std::string> missing) {
  std::sort(missing.begin(), missing.end());
  missing.erase(std::unique(missing.begin(), missing.end()), missing.end());
  if (missing.empty())
    parts_.checks.push_back(std::move(check));
  else
    parts_.not_checked.push_back({std::move(check.name), std::move(check.check), std::move(missing)});
}

void CheckList::caution_wall(const model::Build& build, const std::string& what, double wall) {
  caution(build, what, "wall", wall, &model::Material::least_wall);
}

void CheckList::caution_hole(const model::Build& build, const std::string& what, double hole) {
  caution(build, what, "hole", hole, &model::Material::least_hole);
}

void CheckList::caution(const model::Build& build, const std::string& what, const char* feature, double size,
                        double model::Material::*least) {
  if (build.material < 0) return;
  const model::Material& material = model().materials[static_cast<std::size_t>(build.material)];
  if (size >= material.*least) return;
  parts_.cautions.push_back(fmt::format("{}: {} of {:.4g} mm, {} prints {:.4g} mm at least", what, feature, 1e3 * size,
                                        material.name, 1e3 * material.*least));
}

}  // namespace sinewright::strength
