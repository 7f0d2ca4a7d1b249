#pragma once

#include <functional>
#include <utility>
#include <vector>

#include "study/assessment.h"
#include "study/search_variable.h"

/// What becomes of a design in a test: a closed form in place of a run.
using Law = std::function<sinewright::study::Assessment(const sinewright::study::Design&)>;

/// Tells a search what it asks until it is done.
template <class Search>
void finish(Search& search, const Law& law) {
  while (!search.done()) {
    std::vector<sinewright::study::Assessment> told;
    for (const auto& design : search.ask()) told.push_back(law(design));
    search.tell(std::move(told));
  }
}
