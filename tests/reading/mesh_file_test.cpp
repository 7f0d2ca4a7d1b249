#include "reading/mesh_file.h"

#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>

#include "../geometry/mesh_shapes.h"
#include "good_files.h"
#include "reading/reading.h"

namespace {

using namespace sinewright;
using namespace mesh_shapes;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;
using Catch::Matchers::WithinRel;
namespace fs = std::filesystem;

good_files::Texts with_stl(const std::string& bytes) {
  good_files::Texts texts = good_files::all();
  for (auto& [name, text] : texts)
    if (name == "box.stl") text = bytes;
  return texts;
}

// What a source hands out for the STL file.
const reading::Source::File& kept_part(const reading::Source& source) {
  const auto& files = source.handed_out();
  const auto kept = std::find_if(files.begin(), files.end(), [](const auto& file) { return file.path == "box.stl"; });
  REQUIRE(kept != files.end());
  return *kept;
}

std::string message_of(const good_files::Texts& texts, const std::vector<std::string>& overrides = {}) {
  reading::Source source(texts);
  try {
    (void)reading::read_scenario(source, "scenario.yaml", overrides);
  } catch (const InvalidInput& error) {
    return error.what();
  }
  return "";
}

const model::Mesh& solid_of(const model::Scenario& scenario) {
  return std::get<model::Mesh>(scenario.model.bodies[1].solids[2].shape);
}

}  // namespace

TEST_CASE("stl files: a solid has its file's mass properties in its unit, place and turn") {
  reading::Source source(good_files::all());
  const model::Scenario scenario = reading::read_scenario(source, "scenario.yaml");
  const model::Mesh& mesh = solid_of(scenario);  // 4 × 2 × 1 cm, turned by 90° about z, moved by 10 mm along x
  CHECK(mesh.file == "box.stl");
  CHECK(mesh.triangles == 12);
  CHECK(mesh.points.size() == 8);
  CHECK(mesh.inside == 0);
  CHECK_THAT(mesh.volume, WithinRel(8e-6, 1e-12));
  CHECK((mesh.center - Vector3d(0.01 - 0.01, 0.02, 0.005)).norm() < 1e-15);
  CHECK_THAT(mesh.inertia(1, 1), WithinRel(8e-6 * (4e-4 + 1e-4) / 12, 1e-12));  // about the file's x
  CHECK_THAT(mesh.inertia(0, 0), WithinRel(8e-6 * (16e-4 + 1e-4) / 12, 1e-12));
  CHECK_THAT(scenario.model.bodies[1].solids[2].density, WithinRel(2000.0, 1e-12));
  double low = 1, high = -1;
  for (const Vector3d& p : mesh.points) low = std::min(low, p.x()), high = std::max(high, p.x());
  CHECK_THAT(low, WithinRel(-0.01, 1e-12));
  CHECK_THAT(high, WithinRel(0.01, 1e-12));
}

TEST_CASE("stl files: an object has a part as its shape and as its mass") {
  reading::Source source(good_files::all());
  const model::Scenario scenario = reading::read_scenario(source, "scenario.yaml");
  const auto knob = std::find_if(scenario.objects.begin(), scenario.objects.end(), [](const auto& o) { return o.name == "knob"; });
  REQUIRE(knob != scenario.objects.end());
  const auto& shape = std::get<model::Mesh>(knob->shape.shape);
  CHECK(shape.points.size() == 8);
  CHECK_THAT(std::get<model::Mesh>(knob->solids.at(0).shape).volume, WithinRel(8e-9, 1e-12));
}

TEST_CASE("stl files: one file that several shapes name is read once, and kept as one digest") {
  reading::Source source(good_files::all());
  (void)reading::read_scenario(source, "scenario.yaml");
  int digests = 0;
  for (const auto& file : source.handed_out()) digests += reading::is_digest(file.text);
  CHECK(digests == 1);
  CHECK_THAT(kept_part(source).text, Contains("form: ASCII\nbytes: ") && Contains("fingerprint: fnv1a-") && Contains("triangles: 12\n"));
}

TEST_CASE("stl files: a digest gives back every bit", "[golden]") {
  const Eigen::Matrix3d R = Eigen::Quaterniond(0.4, -0.7, 0.2, 0.5).normalized().toRotationMatrix();
  const auto turned = [&](const Vector3d& p) -> Vector3d { return R * p + Vector3d(1, -20, 3e-4); };
  reading::Source first(with_stl(binary_stl(moved(torus(20, 6, 50, 30), turned))));
  const model::Mesh mesh = solid_of(reading::read_scenario(first, "scenario.yaml"));
  CHECK(mesh.points.size() == geometry::most_hull_corners);
  good_files::Texts texts;
  for (const auto& file : first.handed_out()) texts.emplace_back(file.path, file.text);
  reading::Source second(texts);
  const model::Mesh again = solid_of(reading::read_scenario(second, "scenario.yaml"));
  CHECK(again.volume == mesh.volume);
  CHECK(again.center == mesh.center);
  CHECK(again.inertia == mesh.inertia);
  CHECK(again.inside == mesh.inside);
  CHECK(again.triangles == mesh.triangles);
  REQUIRE(again.points.size() == mesh.points.size());
  for (std::size_t i = 0; i < mesh.points.size(); ++i) CHECK(again.points[i] == mesh.points[i]);
  CHECK(second.handed_out().back().text == first.handed_out().back().text);
}

TEST_CASE("stl files: the fingerprint is FNV-1a with 64 bits and tells one changed byte", "[analytic]") {
  CHECK(geometry::fingerprint_of("") == 0xcbf29ce484222325ull);
  CHECK(geometry::fingerprint_of("a") == 0xaf63dc4c8601ec8cull);  // published test vectors, from memory
  CHECK(geometry::fingerprint_of("foobar") == 0x85944171f73967e8ull);
  std::string bytes = binary_stl(box({1, 2, 3}));
  const auto before = geometry::digest_mesh(bytes).fingerprint;
  bytes[10] = 'X';  // in the header, which says nothing of the part
  CHECK(geometry::digest_mesh(bytes).fingerprint != before);
}

TEST_CASE("stl files: what is wrong with a mesh is said at the key that names its file", "[errors]") {
  const std::string place = "model.yaml:61:22: bodies.phalanx.solids.2.stl.file = box.stl is not allowed: ";
  Soup open = box({4, 2, 1});
  open.pop_back();
  CHECK_THAT(message_of(with_stl(binary_stl(open))),
             StartsWith(place + "the mesh is open: 3 of its 18 edges") && Contains("\n  needed: a closed mesh") && Contains("\n  hint: "));
  CHECK_THAT(message_of(with_stl(binary_stl(inverted(box({4, 2, 1}))))), StartsWith(place + "the mesh is inverted"));
  CHECK_THAT(message_of(with_stl(binary_stl(torus(2, 2.5, 24, 16)))), StartsWith(place + "the mesh intersects itself"));
  CHECK_THAT(message_of(with_stl(binary_stl(box({4, 2, 1})).substr(0, 600))), StartsWith(place + "as binary STL its header announces 12"));
  CHECK_THAT(message_of(with_stl(good_files::text("box.stl").substr(0, 300))), StartsWith(place + "as ASCII STL it ends in line"));
  CHECK_THAT(message_of(with_stl("")), StartsWith(place + "the file is empty"));
  CHECK_THAT(message_of(good_files::all(), {"objects.knob.stl.file=model.yaml"}),
             StartsWith("--set objects.knob.stl.file=model.yaml: objects.knob.stl.file = model.yaml is not allowed: as binary STL"));
}

TEST_CASE("stl files: one that is not there, or no file, is reported with the place that names it", "[errors]") {
  CHECK_THAT(message_of(good_files::all(), {"objects.knob.stl.file=none.stl"}),
             StartsWith("none.stl: there is no such text") && Contains("used by: --set objects.knob.stl.file=none.stl"));
  const fs::path folder = fs::temp_directory_path() / "sinewright-mesh-test";
  fs::create_directories(folder / "meshes");
  for (const auto& [name, text] : good_files::all()) std::ofstream(folder / name, std::ios::binary) << text;
  const auto from_disk = [&](const std::string& file) {
    reading::Source source;
    try {
      (void)reading::read_scenario(source, folder / "scenario.yaml", {"model.bodies.phalanx.solids.2.stl.file=" + file});
    } catch (const InvalidInput& error) {
      return std::string(error.what());
    }
    return std::string();
  };
  CHECK_THAT(from_disk("meshes/none.stl"), Contains("meshes/none.stl: there is no such file") && Contains("relative to the folder") &&
                                               Contains("used by: --set bodies.phalanx.solids.2.stl.file"));
  CHECK_THAT(from_disk("meshes"), Contains("meshes: this is a folder") && Contains("an STL file"));
  // A digest is for records: what the user gives must be the part itself.
  std::ofstream(folder / "meshes/digest.stl") << reading::written_digest(geometry::digest_mesh(binary_stl(box({4, 2, 1}))));
  CHECK_THAT(from_disk("meshes/digest.stl"), Contains("is not allowed: as binary STL its header announces"));
  std::ofstream(folder / "meshes/good.stl", std::ios::binary) << binary_stl(box({4, 2, 1}));
  CHECK(from_disk("meshes/good.stl").empty());
  fs::remove_all(folder);
}

TEST_CASE("stl files: a digest that was tampered with in a record is refused as a file is", "[errors][fuzz]") {
  reading::Source first(good_files::all());
  (void)reading::read_scenario(first, "scenario.yaml");
  const std::string digest = kept_part(first).text;
  REQUIRE(message_of(with_stl(digest)).empty());
  const auto changed = [&](const std::string& what, const std::string& by) {
    std::string text = digest;
    const std::size_t at = text.find(what);
    REQUIRE(at != std::string::npos);
    return message_of(with_stl(text.replace(at, what.size(), by)));
  };
  CHECK_THAT(changed("volume: 8", "volume: -8"), StartsWith("box.stl:9:9: volume = -8 is not allowed"));
  CHECK_THAT(changed("volume: 8", "volume: nan"), StartsWith("box.stl:9:9: volume = nan is not allowed"));
  CHECK_THAT(changed("shells: 1\n", ""), StartsWith("box.stl:1:1: shells is missing"));
  for (std::size_t cut = 0; cut < digest.size(); cut += 5) (void)message_of(with_stl(digest.substr(0, cut)));
}
