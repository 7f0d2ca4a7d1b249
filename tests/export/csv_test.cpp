// A cell says what it was given, to whoever reads it: RFC 4180, spreadsheets, the file system.

#include "export/csv.h"

#include <cmath>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <limits>
#include <random>
#include <sstream>

#include <catch2/catch.hpp>
#include <stdlib.h>

#include "record/writer.h"

namespace {

using namespace sinewright;
using exporting::Csv;
namespace fs = std::filesystem;

std::string one_text(const std::string& cell) {
  Csv csv(',');
  csv.text(cell);
  return csv.take();
}

std::string one_number(double value) {
  Csv csv(',');
  csv.number(value);
  return csv.take();
}

TEST_CASE("csv: cells are parted, rows end in CR LF, and only what must be stands in quotes") {
  Csv csv(',');
  csv.text("plain text");
  csv.text("");
  csv.text("a,b");
  csv.text("he said \"no\"");
  csv.end_row();
  csv.text("two\nlines");
  csv.number(-1.5);
  csv.end_row();
  CHECK(csv.take() == "plain text,,\"a,b\",\"he said \"\"no\"\"\"\r\n\"two\nlines\",-1.5\r\n");
}

TEST_CASE("csv: a text is in quotes whichever delimiter a spreadsheet takes") {
  for (const char delimiter : {',', ';', '\t'}) {
    Csv csv(delimiter);
    for (const char* text : {"a,b", "a;b", "a\tb"}) csv.text(text);
    const std::string d(1, delimiter);
    CHECK(csv.take() == "\"a,b\"" + d + "\"a;b\"" + d + "\"a\tb\"");
  }
}

TEST_CASE("csv: a text that a spreadsheet would run as a formula is shown instead, a number is left alone") {
  CHECK(one_text("=1+1") == "'=1+1");
  CHECK(one_text("+1") == "'+1");
  CHECK(one_text("-2+3") == "'-2+3");
  CHECK(one_text("@SUM(A1)") == "'@SUM(A1)");
  CHECK(one_text("\t=1") == "\"'\t=1\"");
  CHECK(one_text("\r=1") == "\"'\r=1\"");
  CHECK(one_text("=HYPERLINK(\"http://x\",\"y\")") == "\"'=HYPERLINK(\"\"http://x\"\",\"\"y\"\")\"");
  CHECK(one_text("a=1") == "a=1");
  CHECK(one_number(-2) == "-2");
}

TEST_CASE("csv: a number reads back to the same bits, whatever it is") {
  std::mt19937_64 random(7);
  for (int i = 0; i < 20000; ++i) {
    double value = 0;
    const std::uint64_t bits = random();
    std::memcpy(&value, &bits, sizeof value);
    if (!std::isfinite(value)) continue;
    const std::string text = one_number(value);
    CAPTURE(text);
    CHECK(std::strtod(text.c_str(), nullptr) == value);
    CHECK(text.find(',') == std::string::npos);
  }
  CHECK(one_number(0.1) == "0.1");
  CHECK(one_number(std::nan("")).empty());
  CHECK(one_number(std::numeric_limits<double>::infinity()) == "inf");
}

TEST_CASE("csv: a byte order mark leads what is not ASCII, and nothing else") {
  CHECK(one_text("N m") == "N m");
  CHECK(one_text("N·mm") == "\xEF\xBB\xBFN·mm");
}

TEST_CASE("csv: a file is put in place whole or not at all") {
  std::string name = (fs::temp_directory_path() / "sinewright-export-XXXXXX").string();
  REQUIRE(mkdtemp(name.data()) != nullptr);
  const fs::path folder = name;
  const auto content = [](const fs::path& file) {
    std::stringstream text;
    text << std::ifstream(file, std::ios::binary).rdbuf();
    return text.str();
  };
  const auto files = [&] { return std::distance(fs::directory_iterator(folder), fs::directory_iterator()); };
  exporting::write_whole(folder / "a.csv", "one\r\n");
  exporting::write_whole(folder / "a.csv", "two\r\n");
  CHECK(content(folder / "a.csv") == "two\r\n");
  CHECK(files() == 1);
  // A file's place in which a folder stands: the rename fails after everything was written.
  fs::create_directory(folder / "b.csv");
  fs::create_directory(folder / "b.csv" / "full");
  CHECK_THROWS_AS(exporting::write_whole(folder / "b.csv", "x"), record::RecordError);
  CHECK(files() == 2);
  CHECK_THROWS_WITH(exporting::write_whole(folder / "none" / "c.csv", "x"), Catch::Matchers::Contains("cannot create the file"));
  fs::remove_all(folder);
}

}  // namespace
