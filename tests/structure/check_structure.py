#!/usr/bin/env python3
"""Checks what the layout promises; prints every fault as file:line: what, and what is needed. Exit code 1 if any.

usage: check_structure.py PROJECT_FOLDER
"""
import re
import sys
from pathlib import Path

# Low floors first: a floor includes only itself and floors before it.
FLOORS = ["quantity", "model", "geometry", "reading", "dynamics", "friction", "drive", "contact", "solver",
          "simulation", "record", "strength", "study"]

# Each outside library belongs to one floor; only that floor, its own tests and the benchmarks (which set a library's
# own solution beside ours) may include it.
LIBRARIES = [
    # name, floor, what its includes look like
    ("udunits", "quantity", r"udunits2?\.h$"),
    ("yaml-cpp", "reading", r"yaml-cpp/"),
    ("Bullet", "contact", r"(bullet/|Bullet\w*/|LinearMath/|bt[A-Z]\w*\.h$|btBullet)"),
    ("HDF5", "record", r"(hdf5(_hl)?\.h$|H5\w*\.h$)"),
    ("Boost", "study", r"boost/"),
    ("TBB", "study", r"(oneapi/)?tbb(/|\.h$)"),
    ("MPI", "study", r"mpi\.h$"),
]

TOP_LEVEL = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "engine", "models", "scenarios", "tests", "tools",
             "docs", "build", "out"}

# The library speaks through return values, exceptions and callables, never to standard output.
STANDARD_OUTPUT = [
    (r"\bstd\s*::\s*w?cout\b", "std::cout"),
    (r"(?<![\w:.>])(std\s*::\s*)?v?printf\s*\(", "printf"),
    (r"(?<![\w:.>])(std\s*::\s*)?(puts|putchar)\s*\(", "puts"),
    (r"\bstdout\b", "stdout"),
    (r"\bfmt\s*::\s*print\s*\((?!\s*\w+\s*,)", "fmt::print"),
]

SOURCE_SUFFIXES = {".h", ".hpp", ".cpp", ".cc", ".c"}
INCLUDE = re.compile(r'^\s*#\s*include\s*(?:"([^"]+)"|<([^>]+)>)')
# Comments and literals, to be blanked before the code is searched. A ' between digits groups them.
NOT_CODE = re.compile(r'//[^\n]*|/\*.*?\*/|R"([^()\\ ]{0,16})\(.*?\)\1"|"(?:\\.|[^"\\\n])*"'
                      r"|(?<![0-9a-fA-F])'(?:\\.|[^'\\\n])+'", re.DOTALL)


def blanked(match):
    """The match with all but its line ends gone, so that line numbers stay."""
    return re.sub(r"[^\n]", " ", match.group(0))


def without_comments(text):
    return NOT_CODE.sub(lambda m: blanked(m) if m.group(0).startswith("/") else m.group(0), text)


def sources(folder):
    if not folder.is_dir():
        return []
    return sorted(p for p in folder.rglob("*") if p.suffix in SOURCE_SUFFIXES and p.is_file())


def includes(path):
    """(line number, name) of each include."""
    for number, line in enumerate(without_comments(path.read_text(encoding="utf-8")).split("\n"), start=1):
        match = INCLUDE.match(line)
        if match:
            yield number, match.group(1) or match.group(2)


def top_level_faults(root):
    for entry in sorted(root.iterdir()):
        if not entry.name.startswith(".") and entry.name not in TOP_LEVEL:
            yield f"{entry.name}: does not belong at the top level; needed: a place in one of the folders"


def floor_faults(root):
    engine = root / "engine"
    if not sources(engine):
        yield "engine: holds no source; needed: the project's folder as argument"
        return
    for entry in sorted(engine.iterdir()):
        if entry.is_dir() and entry.name not in FLOORS:
            yield (f"engine/{entry.name}: is not a floor; needed: one of {' '.join(FLOORS)}, or a place in that order"
                   " in tests/structure/check_structure.py")


def resolved(root, path, name):
    """The engine's file that an include names, or None if it is not one of ours."""
    for candidate in (root / "engine" / name, path.parent / name):
        if candidate.is_file():
            return candidate.resolve().relative_to(root).as_posix()
    return None


def include_faults(root):
    """Upward includes, includes of a floor's file that is not there, and the graph for the search for cycles."""
    faults, graph = [], {}
    for path in sources(root / "engine"):
        here = path.relative_to(root).as_posix()
        floor = here.split("/")[1]
        graph[here] = []
        for number, name in includes(path):
            target = resolved(root, path, name)
            if target is None:
                if name.split("/")[0] in FLOORS and "/" in name:
                    faults.append(f"{here}:{number}: includes {name}, which is not in engine/")
                continue
            graph[here].append((number, target))
            other = target.split("/")[1]
            if floor in FLOORS and other in FLOORS and FLOORS.index(other) > FLOORS.index(floor):
                faults.append(f"{here}:{number}: {floor} includes {name} of the higher floor {other}; "
                              "needed: pass the value or a callable down instead")
    return faults, graph


def cycle_faults(graph):
    """Each cycle once, told at the include that closes it."""
    faults, finished = [], set()

    def visit(file, trail):
        for number, target in graph.get(file, []):
            if target in trail:
                cycle = trail[trail.index(target):] + [target]
                faults.append(f"{file}:{number}: closes an include cycle: {' -> '.join(cycle)}")
            elif target not in finished:
                visit(target, trail + [target])
        finished.add(file)

    for file in sorted(graph):
        if file not in finished:
            visit(file, [file])
    return faults


def installed_headers(root):
    """Those that the floors list as HEADERS, which is what an installed engine consists of."""
    for listing in sorted((root / "engine").glob("*/CMakeLists.txt")):
        for names in re.findall(r"\bHEADERS\b([^)]*?)(?:\b(?:SOURCES|BELOW|PUBLIC|PRIVATE)\b|\))", listing.read_text(encoding="utf-8")):
            for name in names.split():
                yield f"engine/{listing.parent.name}/{name}"


def installation_faults(root, graph):
    installed = set(installed_headers(root))
    for header in sorted(installed):
        for number, target in graph.get(header, []):
            if target not in installed:
                yield (f"{header}:{number}: is installed and includes {target}, which is not; "
                       f"needed: that one among the HEADERS of its floor")


def library_faults(root):
    for folder in ("engine", "tools", "tests"):
        for path in sources(root / folder):
            here = path.relative_to(root).as_posix()
            for number, name in includes(path):
                for library, home, pattern in LIBRARIES:
                    # One of our own headers may bear a name that looks like a library's.
                    if not re.match(pattern, name) or resolved(root, path, name):
                        continue
                    if not here.startswith((f"engine/{home}/", f"tests/{home}/", "tests/bench/")):
                        yield (f"{here}:{number}: includes {name} of {library}, which belongs to engine/{home} only; "
                               f"needed: a header of {home} that hides it")


def output_faults(root):
    for path in sources(root / "engine"):
        here = path.relative_to(root).as_posix()
        code = NOT_CODE.sub(blanked, path.read_text(encoding="utf-8"))
        for pattern, name in STANDARD_OUTPUT:
            for match in re.finditer(pattern, code):
                line = code.count("\n", 0, match.start()) + 1
                yield (f"{here}:{line}: the library writes to standard output with {name}; "
                       "needed: return it, throw it, or call a callable of the caller's")


def text_faults(root):
    """Marks of text that was to be filled in."""
    for path in sorted([*root.glob("*.md"), *(root / "docs").rglob("*.md"), *(root / "models").rglob("*.yaml"),
                        *(root / "scenarios").rglob("*.yaml")]):
        for number, line in enumerate(path.read_text(encoding="utf-8").split("\n"), start=1):
            match = re.search(r"@@\w*@@|\b(TODO|FIXME|TBD)\b", line)
            if match:
                yield f"{path.relative_to(root).as_posix()}:{number}: {match.group(0)}; needed: the text itself"


def all_faults(root):
    root = Path(root).resolve()
    upward, graph = include_faults(root)
    return [*top_level_faults(root), *floor_faults(root), *upward, *cycle_faults(graph), *installation_faults(root, graph),
            *library_faults(root), *output_faults(root), *text_faults(root)]


def main(arguments):
    if len(arguments) != 1 or arguments[0] in ("-h", "--help"):
        print(__doc__.strip())
        return 0 if arguments[:1] in (["-h"], ["--help"]) else 2
    faults = all_faults(arguments[0])
    for fault in faults:
        print(fault)
    files = len(sources(Path(arguments[0]) / "engine"))
    print(f"structure: {len(faults)} fault(s) in {files} files of engine/" if faults
          else f"structure: {files} files of engine/ keep the layout")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
