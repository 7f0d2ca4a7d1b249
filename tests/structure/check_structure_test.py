#!/usr/bin/env python3
"""A check that cannot fail is none: each rule is broken once in a small project, and must be reported."""
import tempfile
import unittest
from pathlib import Path

from check_structure import all_faults

GOOD = {
    "CMakeLists.txt": "",
    ".gitignore": "",
    "engine/quantity/quantity.h": "#pragma once\n#include <string>\n",
    "engine/quantity/quantity.cpp": '#include "quantity/quantity.h"\n#include <udunits2.h>\n',
    "engine/contact/gap.h": '#pragma once\n#include "quantity/quantity.h"\n',
    "engine/contact/gap.cpp": '#include "contact/gap.h"\n#include <btBulletCollisionCommon.h>\n',
    "engine/record/writer.cpp": '#include <hdf5.h>\n#include "contact/gap.h"\n'
                                'const char* text = "std::cout";  // not std::cout << x\n'
                                "int n = 1'000;\nvoid f() { std::snprintf(b, 2, s); fmt::print(stderr, s); }\n",
    "tools/sinewright/main.cpp": '#include <iostream>\n#include "record/writer.h"\nint main() { std::cout << 1; }\n',
    "tests/record/writer_test.cpp": "#include <hdf5.h>\n",
}


def faults_with(extra):
    with tempfile.TemporaryDirectory() as folder:
        for name, text in {**GOOD, **extra}.items():
            path = Path(folder) / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        return all_faults(folder)


class StructureCheck(unittest.TestCase):
    def expect(self, extra, *parts):
        faults = faults_with(extra)
        self.assertEqual(len(faults), 1, faults)
        for part in parts:
            self.assertIn(part, faults[0])

    def test_a_good_project_has_no_fault(self):
        self.assertEqual(faults_with({}), [])

    def test_an_upward_include(self):
        self.expect({"engine/model/body.h": '\n#include "contact/gap.h"\n'},
                    "engine/model/body.h:2:", "higher floor contact")

    def test_an_upward_include_in_angle_brackets(self):
        self.expect({"engine/model/body.h": "#include <contact/gap.h>\n"}, "higher floor contact")

    def test_an_upward_include_by_relative_path(self):
        self.expect({"engine/model/body.h": '#include "../contact/gap.h"\n'}, "higher floor contact")

    def test_an_include_that_is_commented_out_does_not_count(self):
        self.assertEqual(faults_with({"engine/model/body.h": '/* old:\n#include "contact/gap.h"\n*/\n'}), [])

    def test_a_cycle_within_a_floor(self):
        self.expect({"engine/model/a.h": '#include "model/b.h"\n', "engine/model/b.h": '#include "model/c.h"\n',
                     "engine/model/c.h": '#include "model/a.h"\n'},
                    "engine/model/c.h:1:", "cycle: engine/model/a.h -> engine/model/b.h -> engine/model/c.h")

    def test_a_header_that_is_not_there(self):
        self.expect({"engine/record/reader.cpp": '#include "model/gone.h"\n'}, "model/gone.h", "not in engine/")

    def test_an_installed_header_that_needs_one_that_is_not(self):
        floor = "sinewright_floor(model\n  SOURCES a.cpp\n  HEADERS {}\n  BELOW quantity)\n"
        headers = {"engine/model/a.h": '#include "model/b.h"\n', "engine/model/b.h": "#pragma once\n"}
        self.expect({**headers, "engine/model/CMakeLists.txt": floor.format("a.h")},
                    "engine/model/a.h:1:", "includes engine/model/b.h, which is not")
        self.assertEqual(faults_with({**headers, "engine/model/CMakeLists.txt": floor.format("b.h a.h")}), [])

    def test_each_library_outside_its_floor(self):
        for header, home in [("btBulletCollisionCommon.h", "contact"), ("LinearMath/btScalar.h", "contact"),
                             ("BulletCollision/CollisionShapes/btBoxShape.h", "contact"),
                             ("yaml-cpp/yaml.h", "reading"), ("hdf5.h", "record"), ("H5Cpp.h", "record"),
                             ("udunits2.h", "quantity"), ("tbb/parallel_for.h", "study"),
                             ("boost/random/sobol.hpp", "study"), ("oneapi/tbb.h", "study"),
                             ("oneapi/tbb/parallel_for.h", "study"), ("mpi.h", "study")]:
            for place in ("engine/geometry/x.cpp", "tools/sinewright/x.cpp", "tests/external/x.cpp"):
                with self.subTest(header=header, place=place):
                    self.expect({place: f"#include <{header}>\n"}, f"{place}:1:", f"engine/{home} only")

    def test_standard_output_in_the_library(self):
        for code in ("std::cout << 1;", 'std::printf("x");', 'printf("x");', 'fmt::print("{}", 1);',
                     'puts("x");', 'fprintf(stdout, "x");'):
            with self.subTest(code=code):
                self.expect({"engine/model/body.cpp": f"\nvoid f() {{ {code} }}\n"},
                            "engine/model/body.cpp:2:", "standard output")

    def test_text_that_is_still_to_be_written(self):
        for mark in ("@@FORCE@@", "TODO: numbers"):
            with self.subTest(mark=mark):
                self.expect({"docs/user-guide/run.md": f"# Run\n\n{mark}\n"}, "docs/user-guide/run.md:3:", "the text itself")

    def test_a_stranger_at_the_top_level(self):
        self.expect({"scripts/x.sh": ""}, "scripts: does not belong")

    def test_a_folder_that_is_no_floor(self):
        self.expect({"engine/utils/x.h": ""}, "engine/utils: is not a floor")

    def test_an_empty_project(self):
        with tempfile.TemporaryDirectory() as folder:
            self.assertIn("holds no source", all_faults(folder)[0])


if __name__ == "__main__":
    unittest.main()
