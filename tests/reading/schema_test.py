"""The shipped schemas accept every shipped and every good test file, and refuse broken ones.

usage: schema_test.py SOURCE_FOLDER
"""

import copy
import glob
import json
import os
import sys

import jsonschema
import yaml


class Texts(yaml.SafeLoader):
    """Takes true and false, numbers as the schema sees them, and leaves 'yes' or dates as texts."""


Texts.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in resolvers if tag.endswith((":int", ":float"))]
    for first, resolvers in yaml.SafeLoader.yaml_implicit_resolvers.items()
}
Texts.add_implicit_resolver("tag:yaml.org,2002:bool", __import__("re").compile("^(true|false)$"), list("tf"))

source = sys.argv[1]
failures = []


def load(path):
    with open(path, encoding="utf-8") as file:
        return yaml.load(file, Texts)


def validator(kind):
    path = os.path.join(source, "docs", "user-guide", "schema", kind + ".schema.json")
    with open(path, encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema)


validators = {kind: validator(kind) for kind in ("model", "parts", "scenario", "limit", "study")}

accepted = 0
for pattern in ("models/*.yaml", "models/parts/*.yaml", "scenarios/*.yaml", "scenarios/limits/*.yaml", "scenarios/studies/*.yaml", "tests/reading/good/*.yaml"):
    for path in sorted(glob.glob(os.path.join(source, pattern))):
        content = load(path)
        kind = content["sinewright"]
        if kind not in validators:
            continue
        errors = [f"{list(e.absolute_path)}: {e.message[:200]}" for e in validators[kind].iter_errors(content)]
        if errors:
            failures.append(f"{path} is refused: {errors[0]}")
        accepted += 1
if accepted < 10:
    failures.append(f"only {accepted} files were found")


def broken(name, path, value):
    """The content of a good file with one value replaced (or added); value None takes the key out."""
    content = copy.deepcopy(load(os.path.join(source, "tests", "reading", "good", name)))
    place = content
    for key in path[:-1]:
        place = place[key]
    if value is None:
        del place[path[-1]]
    else:
        place[path[-1]] = value
    return content


breaks = [
    ("scenario.yaml", ["duratoin"], "2 s"),
    ("scenario.yaml", ["duration"], None),
    ("scenario.yaml", ["duration"], 2),
    ("scenario.yaml", ["duration"], "2"),
    ("scenario.yaml", ["duration"], "-2 s"),
    ("scenario.yaml", ["gravity"], ["0 m/s²", "1 m/s²"]),
    ("scenario.yaml", ["timeline", 1, "off"], "open"),
    ("scenario.yaml", ["timeline", 0, "off"], "short"),
    ("scenario.yaml", ["objects", "cylinder", "hold"], "tied"),
    ("scenario.yaml", ["objects", "cylinder", "sphere"], {"radius": "1 mm"}),
    ("scenario.yaml", ["solver", "tolerance"], 0.5),
    ("scenario.yaml", ["sinewright"], "model"),
    ("model.yaml", ["bodies", "knuckle"], {}),
    ("model.yaml", ["bodies", "my body"], {"fixed": {}}),
    ("model.yaml", ["cords", "return", "lump_bends"], "yes"),
    ("model.yaml", ["cords", "flexor", "path", 1, "radus"], "2 mm"),
    ("model.yaml", ["cords", "flexor", "channel", "friction"], -0.2),
    ("model.yaml", ["bodies", "phalanx", "hinge", "washers", "law"], "even"),
    ("model.yaml", ["bodies", "phalanx", "hinge", "pin_axis"], [0, 1]),
    ("parts.yaml", ["materials", "nylon", "source"], None),
    ("parts.yaml", ["lines", "braid", "axial_stiffness"], None),
    ("parts.yaml", ["gearheads", "train", "forward_efficiency"], 60),
]
for name, path, value in breaks:
    content = broken(name, path, value)
    if validators[name.removesuffix(".yaml")].is_valid(content):
        failures.append(f"{name} with {path} = {value} is accepted")

for failure in failures:
    print(failure)
print(f"{accepted} files accepted, {len(breaks)} broken ones tried, {len(failures)} failures")
sys.exit(1 if failures else 0)
