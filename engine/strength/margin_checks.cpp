#include "strength/margin_checks.h"

#include "strength/check_list.h"
#include "strength/person_force.h"

namespace sinewright::strength {

namespace {

using simulation::Stage;
using simulation::State;

void add_person(CheckList& list) {
  CheckedLoad load{"normal force", "N", [](const Stage& stage, const State&) {
                     PartLoad most;
                     for (std::size_t i = 0; i < stage.contact.size(); ++i)
                       if (stage.contact[i].normal_force > most.value)
                         most = {stage.contact[i].normal_force, 1, static_cast<int>(i)};
                     return most;
                   }};
  for (const auto& contact : list.system().contacts) load.places.push_back(contact.name);
  const auto untouched = lacking(load.places.empty(), "objects that a shape can touch, in the scenario");
  list.add("person_force", "force on a person, if a hand is gripped", "N", std::move(load), itself, {hand_force_limit, {}}, {},
           untouched);
}

}  // namespace

PartChecks part_checks(const simulation::System& system) {
  CheckList list(system);
  for (std::size_t c = 0; c < system.cords.size(); ++c) add_cord(list, c);
  for (std::size_t d = 0; d < system.shafts.size(); ++d) add_drive(list, d);
  for (std::size_t j = 0; j < system.hinges.size(); ++j) add_hinge(list, j);
  add_person(list);
  return list.take();
}

}  // namespace sinewright::strength
