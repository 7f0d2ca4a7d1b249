#include "quantity/nearest.h"

#include <catch2/catch.hpp>

using namespace sinewright;

TEST_CASE("edit distance: known small cases, case ignored") {
  CHECK(edit_distance("", "abc") == 3);
  CHECK(edit_distance("radius", "radius") == 0);
  CHECK(edit_distance("Radius", "radius") == 0);
  CHECK(edit_distance("raduis", "radius") == 1);  // neighbours swapped
  CHECK(edit_distance("radus", "radius") == 1);
  CHECK(edit_distance("mass", "pass") == 1);
  CHECK(edit_distance("kitten", "sitting") == 3);
}

TEST_CASE("nearest: the closest name is proposed, and none when all are far") {
  CHECK(nearest("frction", {"source", "friction", "radius"}) == "friction");
  CHECK(nearest("zzzzzz", {"source", "friction"}).empty());
  CHECK(nearest("mm", {}).empty());
}
