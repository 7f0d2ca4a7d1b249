// The reference and the schemas in docs/user-guide are made by the program. To make them anew after a change
// of the keys: build/tests/reading/write_user_guide (see CMakeLists.txt beside this file).

#include <fstream>
#include <sstream>

#include <catch2/catch.hpp>

#include "reading/reading.h"

using namespace sinewright;
using Catch::Matchers::Contains;

namespace {

std::string shipped(const std::string& name) {
  std::ifstream in(std::string(SINEWRIGHT_SOURCE_DIR) + "/docs/user-guide/" + name, std::ios::binary);
  REQUIRE(in);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

}  // namespace

TEST_CASE("reference: the pages of the user guide say what the reader does", "[docs]") {
  CHECK(shipped("yaml.md") == reading::yaml_reference());
  CHECK(shipped("units.md") == reading::unit_reference());
}

TEST_CASE("schema: the shipped schemas are those of the reader", "[docs]") {
  for (const std::string kind : {"model", "parts", "scenario", "limit", "study"}) {
    CAPTURE(kind);
    CHECK(shipped("schema/" + kind + ".schema.json") == reading::json_schema(kind));
  }
}

TEST_CASE("schema: an unknown file kind is refused", "[errors]") {
  CHECK_THROWS_WITH(reading::json_schema("hand"), Contains("model, parts, scenario, limit or study"));
}
