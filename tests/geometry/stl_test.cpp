#include "geometry/stl.h"

#include <limits>
#include <random>

#include <catch2/catch.hpp>

#include "geometry/mesh_digest.h"
#include "mesh_shapes.h"

namespace {

using namespace sinewright::geometry;
using namespace mesh_shapes;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

std::string trouble_of(const std::string& bytes) {
  try {
    (void)read_stl(bytes);
  } catch (const MeshProblem& problem) {
    CHECK_FALSE(problem.needed.empty());
    CHECK_THAT(problem.what(), StartsWith(problem.trouble) && Contains(problem.needed) && Contains(problem.hint));
    return problem.trouble;
  }
  return "";
}

std::string replaced(std::string text, const std::string& what, const std::string& by) {
  const std::size_t at = text.find(what);
  REQUIRE(at != std::string::npos);
  return text.replace(at, what.size(), by);
}

void set_float(std::string& bytes, std::size_t triangle, std::size_t number, float value) {
  std::memcpy(bytes.data() + 84 + 50 * triangle + 12 + 4 * number, &value, sizeof value);
}

void set_count(std::string& bytes, std::uint32_t count) { std::memcpy(bytes.data() + 80, &count, sizeof count); }

void check_same(const TriangleMesh& a, const TriangleMesh& b) {
  CHECK(a.triangles == b.triangles);
  REQUIRE(a.points.size() == b.points.size());
  for (std::size_t i = 0; i < a.points.size(); ++i) CHECK(a.points[i] == b.points[i]);
}

}  // namespace

TEST_CASE("stl: equal corners are welded and keep their order", "[mesh]") {
  const TriangleMesh mesh = read_stl(binary_stl(box({4, 1, 2})));
  CHECK(mesh.triangles.size() == 12);
  CHECK(mesh.points.size() == 8);
  const Soup soup = box({4, 1, 2});
  for (std::size_t i = 0; i < soup.size(); ++i)
    for (std::size_t k = 0; k < 3; ++k) CHECK(mesh.points[mesh.triangles[i][k]] == soup[i][k]);
  CHECK(mesh.triangles[0] == Triangle{0, 1, 2});
  // A ball of n² squares a side: Euler's formula V = 2 + F/2 for a closed surface without handle.
  CHECK(read_stl(binary_stl(ball(7, 20))).points.size() == 2 + 12 * 20 * 20 / 2);
}

TEST_CASE("stl: the binary and the ASCII form of a mesh give the same bits", "[mesh]") {
  const Soup soup = moved(torus(20, 6, 31, 17), [](const Vector3d& p) -> Vector3d { return p / 3 + Vector3d(1e-5, 40, -7); });
  check_same(read_stl(binary_stl(soup)), read_stl(ascii_stl(soup)));
}

TEST_CASE("stl: a binary file whose header begins with solid is read as binary", "[mesh]") {
  const Soup soup = box({1, 2, 3});
  for (const char* header : {"solid", "solid part exported by a program", "  solid x"}) {
    CHECK_FALSE(is_ascii_stl(binary_stl(soup, header)));
    check_same(read_stl(binary_stl(soup, header)), read_stl(binary_stl(soup)));
  }
}

TEST_CASE("stl: zero and minus zero are one place", "[mesh]") {
  std::string bytes = binary_stl(box({1, 1, 1}));
  for (std::size_t i = 0; i < 12; ++i)
    for (std::size_t k = 0; k < 9; ++k) {
      float x = 0;
      std::memcpy(&x, bytes.data() + 84 + 50 * i + 12 + 4 * k, sizeof x);
      if (x == 0 && (i + k) % 2 == 0) set_float(bytes, i, k, -0.0F);
    }
  CHECK(read_stl(bytes).points.size() == 8);
  CHECK(read_stl(replaced(ascii_stl(box({1, 1, 1})), "vertex 0 0 0", "vertex -0 0.0e0 -0.000")).points.size() == 8);
}

TEST_CASE("stl: the ASCII form may have any case, names, blanks, several solids and normals that are no numbers", "[mesh]") {
  const Soup soup = box({1, 2, 3});
  const std::string text = ascii_stl(soup, "a name of several words");
  const TriangleMesh plain = read_stl(text);
  std::string upper = text;
  for (char& c : upper) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c;
  check_same(read_stl(upper), plain);
  std::string crlf;
  for (const char c : text) crlf += c == '\n' ? std::string("\r\n") : std::string(1, c);
  check_same(read_stl(crlf), plain);
  check_same(read_stl("\n \t" + text), plain);
  check_same(read_stl(ascii_stl(soup, "")), plain);
  check_same(read_stl(replaced(text, "normal 0 0 0", "normal nan -nan inf")), plain);
  check_same(read_stl(replaced(text, "vertex 0 0 0", "vertex +0.0 0E+00 1e-400")), plain);
  const TriangleMesh two = read_stl(text + "\n" + ascii_stl(moved(soup, [](const Vector3d& p) -> Vector3d { return p * 2; })));
  CHECK(two.triangles.size() == 24);
}

TEST_CASE("stl: what is cut off, too long or falsely counted is refused", "[mesh][errors]") {
  const std::string good = binary_stl(box({1, 1, 1}));
  CHECK_THAT(trouble_of(""), StartsWith("the file is empty"));
  CHECK_THAT(trouble_of("x"), StartsWith("the file has only 1 bytes"));
  CHECK_THAT(trouble_of(good.substr(0, 83)), StartsWith("the file has only 83 bytes"));
  CHECK_THAT(trouble_of(good.substr(0, good.size() - 1)),
             Contains("announces 12 triangles, which make 684 bytes, but the file has 683"));
  CHECK_THAT(trouble_of(good + "y"), Contains("which make 684 bytes, but the file has 685"));
  std::string counted = good;
  set_count(counted, 11);
  CHECK_THAT(trouble_of(counted), Contains("announces 11 triangles"));
  set_count(counted, 0xffffffff);
  CHECK_THAT(trouble_of(counted), Contains("announces 4294967295 triangles"));
  std::string none = good.substr(0, 84);
  set_count(none, 0);
  CHECK_THAT(trouble_of(none), StartsWith("it has no triangle"));

  const std::string text = ascii_stl(box({1, 1, 1}));
  CHECK_THAT(trouble_of("solid x\nendsolid x\n"), StartsWith("it has no triangle"));
  CHECK_THAT(trouble_of(text.substr(0, text.rfind("endsolid"))), Contains("ends in line 86, where facet or endsolid"));
  CHECK_THAT(trouble_of(text.substr(0, text.find("endloop"))), Contains("where endloop is needed (triangle 1)"));
  CHECK_THAT(trouble_of(text + "rubbish"), Contains("'rubbish' where solid is needed"));
  std::string many = "solid\n";
  const std::string facet = "facet normal 0 0 0 outer loop vertex 0 0 0 vertex 1 0 0 vertex 0 1 0 endloop endfacet\n";
  for (std::size_t i = 0; i <= most_triangles; ++i) many += facet;
  CHECK_THAT(trouble_of(many), StartsWith("it has 2000001 triangles"));
  std::string huge(84 + 50 * (most_triangles + 1), '\0');
  set_count(huge, most_triangles + 1);
  CHECK_THAT(trouble_of(huge), StartsWith("it has 2000001 triangles"));
}

TEST_CASE("stl: coordinates that are no finite numbers are refused with their triangle", "[mesh][errors]") {
  for (const float bad : {std::numeric_limits<float>::quiet_NaN(), std::numeric_limits<float>::infinity(),
                          -std::numeric_limits<float>::infinity()})
    for (std::size_t k = 0; k < 9; ++k) {
      std::string bytes = binary_stl(box({1, 1, 1}));
      set_float(bytes, 6, k, bad);
      CHECK_THAT(trouble_of(bytes), StartsWith("triangle 7 of 12 has a corner whose coordinate is not a finite number"));
    }
  const std::string text = ascii_stl(box({1, 1, 1}));
  for (const char* bad : {"nan", "-inf", "1e39", "-4e38", "1e999", "one", "1,5", "0x1p3", "++1", "+-1", "1e", "-"})
    CHECK_THAT(trouble_of(replaced(text, "vertex 0 0 0", std::string("vertex 0 0 ") + bad)),
               Contains("number is needed (triangle 1)") && Contains("line 4"));
  CHECK_THAT(trouble_of(replaced(text, "vertex 0 0 0", "vertx 0 0 0")), Contains("line 4 has 'vertx' where vertex is needed"));
  CHECK_THAT(trouble_of(replaced(text, "endfacet", "facet")), Contains("'facet' where endfacet is needed"));
}

TEST_CASE("stl: bytes changed, cut off or drawn at random never crash and never give what is not finite", "[mesh][fuzz]") {
  std::mt19937 random(2024);
  const std::string seeds[] = {binary_stl(torus(5, 2, 7, 5)), ascii_stl(torus(5, 2, 7, 5)), binary_stl(l_shape(2), "solid"),
                               ascii_stl(joined(box({3, 3, 3}), inverted(moved(box({1, 1, 1}), [](const Vector3d& p) -> Vector3d {
                                                  return p + Vector3d::Ones();
                                                }))))};
  int read = 0, refused = 0;
  const auto attempt = [&](const std::string& bytes) {
    try {
      const MeshDigest digest = digest_mesh(bytes);
      CHECK(digest.volume.volume > 0);
      CHECK(digest.volume.center.allFinite());
      CHECK(digest.volume.inertia.allFinite());
      CHECK(digest.hull.points.size() >= 4);
      CHECK(digest.hull.points.size() <= most_hull_corners);
      ++read;
    } catch (const MeshProblem&) {
      ++refused;
    }
  };
  for (const std::string& seed : seeds) {
    attempt(seed);
    for (int i = 0; i < 2000; ++i) {
      std::string bytes = seed;
      const int changes = 1 + static_cast<int>(random() % 3);
      for (int k = 0; k < changes; ++k) {
        const std::size_t at = random() % bytes.size();
        bytes[at] = random() % 2 == 0 ? static_cast<char>(random()) : "0123456789.-+e \n"[random() % 16];
      }
      if (random() % 4 == 0) bytes.resize(random() % bytes.size());
      attempt(bytes);
    }
  }
  for (int i = 0; i < 2000; ++i) {
    std::string bytes(random() % 2000, '\0');
    for (char& c : bytes) c = static_cast<char>(random());
    if (i % 2 == 0 && bytes.size() >= 84) {  // past the first gate
      bytes.resize(84 + 50 * ((bytes.size() - 84) / 50));
      set_count(bytes, static_cast<std::uint32_t>((bytes.size() - 84) / 50));
    }
    attempt(bytes);
  }
  CHECK(read > 300);  // normals, names and attribute bytes say nothing, small shifts of a corner keep the surface whole
  CHECK(refused > 5000);
}
