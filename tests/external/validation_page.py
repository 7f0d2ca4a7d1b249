#!/usr/bin/env python3
"""Writes docs/validation.md: every number that tests/external compares with one from outside.

usage: validation_page.py TEST_EXTERNAL PAGE [--check]

Runs the test program, which notes each comparison. With --check nothing is written; exit code 1 when the page does not
list the same comparisons (our own last digits may differ between compilers and are not compared).
"""
import os
import subprocess
import sys
import tempfile

HEAD = """# Comparison with the outside world

Written by `tests/external/validation_page.py`; a test fails when a comparison is missing here. "Error" is relative unless a unit
stands beside it. Tolerances are set by what the source gives: its digits, or how far a measured law is expected to agree. Sources are
named as they were used; "from memory" means that the figure was not read again in print.
"""


def number(text):
    return f"{float(text):.7g}"


def rows(program):
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "rows")
        subprocess.run([program], check=True, stdout=subprocess.DEVNULL, env=dict(os.environ, SINEWRIGHT_VALIDATION=path))
        with open(path, encoding="utf-8") as file:
            return [line.rstrip("\n").split("\t") for line in file]


def cell(text):
    return text.replace("|", "\\|")


def page(found):
    text, test = HEAD, None
    for name, quantity, unit, reference, ours, error, tolerance, kind, source in found:
        if name != test:
            test = name
            text += f"\n## {name[0].upper() + name[1:]}\n\n| quantity | unit | reference | ours | error | allowed | source |\n" + "| --- " * 7 + "|\n"
        suffix = f" {unit}" if kind == "absolute" and unit not in ("", "1") else ""
        text += "| " + " | ".join([cell(quantity), unit, number(reference), number(ours), error + suffix, tolerance + suffix, cell(source)]) + " |\n"
    return text


def fixed_part(text):
    """Of each table row all but our own number and its error."""
    kept = []
    for line in text.splitlines():
        cells = line.replace("\\|", "\0").split(" | ")
        kept.append(tuple(cells[:3] + cells[5:]) if line.startswith("| ") and len(cells) == 7 else line)
    return kept


def main():
    check = "--check" in sys.argv
    arguments = [a for a in sys.argv[1:] if a != "--check"]
    if len(arguments) != 2:
        sys.exit(__doc__)
    program, path = arguments
    text = page(rows(program))
    if not check:
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return
    with open(path, encoding="utf-8") as file:
        if fixed_part(file.read()) != fixed_part(text):
            sys.exit(f"{path} does not list the comparisons of {program}; write it again: {sys.argv[0]} {program} {path}")


main()
