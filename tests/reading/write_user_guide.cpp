// Writes the generated pages of the user guide: write_user_guide DOCS/USER-GUIDE

#include <filesystem>
#include <fstream>
#include <iostream>

#include "reading/reading.h"

int main(int argc, char** argv) {
  using namespace sinewright;
  if (argc != 2) {
    std::cerr << "usage: write_user_guide FOLDER\n";
    return 2;
  }
  const std::filesystem::path folder = argv[1];
  std::filesystem::create_directories(folder / "schema");
  std::ofstream(folder / "yaml.md", std::ios::binary) << reading::yaml_reference();
  std::ofstream(folder / "units.md", std::ios::binary) << reading::unit_reference();
  for (const std::string kind : {"model", "parts", "scenario", "limit", "study"})
    std::ofstream(folder / "schema" / (kind + ".schema.json"), std::ios::binary)
        << reading::json_schema(kind);
  return 0;
}
