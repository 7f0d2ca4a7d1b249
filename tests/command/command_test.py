"""Runs the program as a user does and looks at exit codes, texts and files.

usage: command_test.py [TestClass ...]; environment: SINEWRIGHT (the program), SINEWRIGHT_SERIES (prints a record as text),
SINEWRIGHT_SOURCE_DIR (where models/ is). Standard library only; h5py where it is installed.
"""

import csv
import json
import math
import os
import pty
import random
import re
import resource
import select
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

try:
    import h5py
except ImportError:
    h5py = None

TOOL = os.environ["SINEWRIGHT"]
SERIES = os.environ["SINEWRIGHT_SERIES"]
SOURCE = Path(os.environ["SINEWRIGHT_SOURCE_DIR"])
COMMANDS = ["run", "inspect", "limit", "study", "plot", "export", "report"]

SHORT = """sinewright: scenario
name: short
model: ../models/two-phalanx-finger.yaml
duration: 0.4 s
timeline:
  - {at: 0.02 s, drive: flexor, voltage: 6 V}
require:
  - {quantity: joint_angle.MCP, at_least: 10 deg}
"""


class Place(unittest.TestCase):
    """A folder of its own with a copy of the models and a short scenario."""

    def setUp(self):
        self.folder = Path(tempfile.mkdtemp(prefix="sinewright-command-"))
        self.addCleanup(shutil.rmtree, self.folder)
        shutil.copytree(SOURCE / "models", self.folder / "models")
        (self.folder / "scenarios").mkdir()
        self.scenario = self.write("short", SHORT)

    def write(self, name, text):
        path = self.folder / "scenarios" / f"{name}.yaml"
        path.write_text(text)
        return path

    def run_tool(self, *arguments, **options):
        return subprocess.run([TOOL, *map(str, arguments)], cwd=self.folder, text=True, stdin=subprocess.DEVNULL,
                              capture_output=True, timeout=240, **options)

    def expect(self, code, *arguments, **options):
        result = self.run_tool(*arguments, **options)
        self.assertEqual(result.returncode, code, f"{arguments}\n{result.stdout}\n{result.stderr}")
        return result

    def series(self, record, *rows):
        """Outcome, number of rows, last time, and all numbers to the bit."""
        result = subprocess.run([SERIES, str(record), *map(str, rows)], text=True, capture_output=True, check=True)
        outcome, count, last, rest = result.stdout.split("\n", 3)
        return outcome, int(count), float(last), rest

    def same(self, one, other):
        return self.series(self.folder / one) == self.series(self.folder / other)

    def files(self):
        """Everything that is not input."""
        return sorted(str(path.relative_to(self.folder)) for path in self.folder.rglob("*")
                      if path.is_file() and path.relative_to(self.folder).parts[0] not in ("models", "scenarios"))


class Help(Place):
    def test_the_program_explains_itself(self):
        text = self.expect(0, "--help").stdout
        for command in COMMANDS:
            self.assertRegex(text, rf"(?m)^  {command} +\S")
        self.assertRegex(text, "0 done; 1 .*; 2 bad input; 3 ")
        self.assertRegex(self.expect(0, "--version").stdout, r"^sinewright \d+\.\d+\.\d+\n$")

    def test_every_command_explains_itself(self):
        for command in COMMANDS:
            with self.subTest(command):
                result = self.expect(0, command, "--help")
                self.assertEqual(result.stderr, "")
                for word in ("--json", "--set", "--quiet", "--threads", f"Example: sinewright {command}"):
                    self.assertIn(word, result.stdout)

    def test_without_arguments_it_says_which_commands_there_are(self):
        result = self.expect(2)
        self.assertEqual(result.stdout, "")
        for command in COMMANDS:
            self.assertIn(command, result.stderr)

    def test_an_unknown_command_is_named_and_the_nearest_offered(self):
        result = self.expect(2, "inspekt", "models/demo-finger.yaml")
        self.assertEqual(result.stdout, "")
        self.assertIn("'inspekt'", result.stderr)
        self.assertIn("nearest is 'inspect'", result.stderr)

    def test_an_unknown_option_and_a_missing_file_name_are_bad_input(self):
        self.assertIn("--colour", self.expect(2, "run", self.scenario, "--colour").stderr)
        self.assertIn("SCENARIO", self.expect(2, "run").stderr)
        self.assertIn("MODEL", self.expect(2, "inspect").stderr)
        self.assertIn("--threads", self.expect(2, "run", self.scenario, "--threads", "-1").stderr)
        self.assertEqual(self.files(), [])


class ExitCodes(Place):
    def test_0_when_every_requirement_is_met(self):
        result = self.expect(0, "run", self.scenario)
        self.assertEqual(result.stderr, "")
        self.assertRegex(result.stdout, r"(?m)^  met    joint_angle.MCP at least 10 deg: ")
        self.assertEqual(self.files(), ["out/short.h5"])

    def test_1_when_a_requirement_fails_and_the_record_is_there(self):
        failing = self.write("failing", SHORT.replace("10 deg", "89 deg"))
        result = self.expect(1, "run", failing)
        self.assertRegex(result.stdout, r"(?m)^  FAILED joint_angle.MCP at least 89 deg: ")
        self.assertEqual(self.series(self.folder / "out/failing.h5")[0], "complete")

    def test_1_when_what_is_required_did_not_occur(self):
        never = self.write("never", SHORT.replace("joint_angle.MCP, at_least: 10 deg", "first_contact_time, at_most: 1 s"))
        self.assertIn("did not occur", self.expect(1, "run", never).stdout)

    def test_2_for_a_file_that_is_not_there(self):
        self.assertIn("scenarios/none.yaml", self.expect(2, "run", "scenarios/none.yaml").stderr)
        self.assertIn("models/none.yaml", self.expect(2, "inspect", "models/none.yaml").stderr)
        self.expect(2, "run", "none.h5")
        self.expect(2, "inspect", self.scenario)  # a scenario where a model is wanted
        self.assertEqual(self.files(), [])

    def test_2_with_line_and_column_for_a_wrong_value(self):
        wrong = self.write("wrong", SHORT.replace("0.4 s", "0.4 N"))
        self.assertIn("scenarios/wrong.yaml:4:11: ", self.expect(2, "run", wrong).stderr)

    def test_2_with_line_and_column_for_a_requirement_on_an_unknown_quantity_before_the_run_begins(self):
        typing_error = SHORT.replace("joint_angle.MCP", "joint_angle.MPC").replace("0.4 s", "1e5 s")
        result = self.expect(2, "run", self.write("unknown", typing_error))
        self.assertIn("scenarios/unknown.yaml:8:16: ", result.stderr)
        self.assertIn("joint_angle.MCP", result.stderr)
        self.assertEqual(result.stdout, "")
        self.assertEqual(self.files(), [])

    def test_2_for_a_requirement_in_a_wrong_unit(self):
        wrong = self.write("unit", SHORT.replace("10 deg", "10 N"))
        self.assertIn("scenarios/unit.yaml:8:", self.expect(2, "run", wrong).stderr)
        self.assertEqual(self.files(), [])

    def test_3_when_a_run_cannot_go_on_and_the_record_holds_what_came_before(self):
        # A thousand tonnes times a hundred thousand on a fingertip of grams, from 0.1 s on.
        torn = self.write("torn", SHORT + "loads:\n"
                          "  pull: {on: distal, at: [10 mm, 0 mm, 0 mm], direction: [0, 1, 0],\n"
                          "         force: [[0.1 s, 0 N], [0.1000001 s, 1e12 N]]}\n")
        result = self.expect(3, "run", torn, "--json")
        self.assertRegex(result.stderr, r"^t = 0\.1\d* s: .*\n(.*\n)*  the record out/torn.h5 holds everything up to")
        outcome = json.loads(result.stdout)["outcome"]
        self.assertRegex(outcome, r"^t = 0\.1\d* s: ")
        recorded, rows, last, _ = self.series(self.folder / "out/torn.h5")
        self.assertEqual(recorded, outcome.replace("\n", "|"))
        self.assertGreater(rows, 50)
        self.assertAlmostEqual(last, 0.1, delta=2e-3)
        self.assertEqual(self.files(), ["out/torn.h5"])


class Json(Place):
    def test_run_prints_one_json_value_and_nothing_else(self):
        result = self.expect(0, "run", self.scenario, "--json", "--out", "a.h5")
        self.assertEqual(result.stderr, "")
        summary = json.loads(result.stdout, parse_constant=lambda word: self.fail(f"{word} is no JSON"))
        self.assertTrue(result.stdout.startswith("{") and result.stdout.endswith("}\n"))
        self.assertEqual(summary["scenario"], "short")
        self.assertEqual(summary["record"], "a.h5")
        self.assertEqual(summary["outcome"], "complete")
        self.assertEqual(summary["simulated"], {"value": 0.4, "unit": "s"})
        units = {key: entry["unit"] for key, entry in summary["summary"].items()}
        for entry in summary["summary"].values():
            self.assertEqual(set(entry), {"value", "unit"})
        for key, unit in {"joint_angle.MCP": "rad", "tension.flexor": "N", "shaft_torque.flexor": "N m", "shaft_work": "J",
                          "peak_slack.flexor": "m", "winding_temperature.flexor": "K", "remaining_flexion": "1"}.items():
            self.assertEqual(units[key], unit)
        self.assertIsNone(summary["summary"]["first_contact_time"]["value"])
        self.assertEqual([(r["quantity"], r["demand"], r["met"]) for r in summary["requirements"]],
                         [("joint_angle.MCP", "at least 10 deg", True)])
        commands = [(e["time"], e["subject"], e["detail"]) for e in summary["events"] if e["kind"] == "command"]
        self.assertEqual(commands, [(0.02, "flexor", "voltage 6 V")])

    def test_margins_are_ranked_and_what_is_not_described_is_listed(self):
        result = json.loads(self.expect(0, "run", self.scenario, "--json", "--for", "margin=2", "--out", "a.h5").stdout)
        ratios = [entry["ratio"] for entry in result["margins"] if entry["ratio"] is not None]
        self.assertTrue(ratios)
        self.assertEqual(ratios, sorted(ratios))
        self.assertAlmostEqual(result["summary"]["margin.least"]["value"], ratios[0])
        for entry in result["margins"]:
            self.assertIn("margin." + entry["name"], result["summary"])
            self.assertEqual(set(entry["posture"]), {"MCP", "IP"})
            if entry["ratio"]:
                self.assertAlmostEqual(entry["capacity"] / entry["demand"], entry["ratio"])
        missing = {entry["name"]: entry["missing"] for entry in result["not_checked"]}
        self.assertEqual(missing["seat_punching.flexor.pulley"], ["drives.flexor.pulley.knot_seat"])
        self.assertFalse(set(missing) & {entry["name"] for entry in result["margins"]})
        for size in result["sizes"]:
            self.assertEqual(size["for"], 2)
        text = self.expect(0, "run", self.scenario, "--out", "b.h5").stdout
        self.assertRegex(text, r"(?m)^Margins .*\n  what breaks first: .* at t = .* under ")
        self.assertIn("not checked: ", text)

    def test_a_margin_can_be_required(self):
        least = self.expect(1, "run", self.scenario, "--set", "require=[{quantity: margin.least, at_least: 1e9}]").stdout
        self.assertIn("FAILED margin.least", least)
        unknown = self.expect(2, "run", self.scenario, "--set",
                              "require=[{quantity: margin.seat_punching.flexor.pulley, at_least: 1}]").stderr
        self.assertIn("drives.flexor.pulley.knot_seat", unknown)
        self.assertIn("nearest is 'margin.least'",
                      self.expect(2, "run", self.scenario, "--set", "require=[{quantity: margin.leest, at_least: 1}]").stderr)
        self.assertIn("--for margin=2", self.expect(2, "run", self.scenario, "--for", "margins=2").stderr)

    def test_the_numbers_are_those_of_the_record(self):
        summary = json.loads(self.expect(0, "run", self.scenario, "--json", "--out", "a.h5").stdout)["summary"]
        stored = dict(re.findall(r"(?m)^summary (\S+(?: \S+)*?) (-?(?:nan|0x\S+)) ", self.series(self.folder / "a.h5")[3]))
        self.assertEqual(set(stored), set(summary))
        for key, entry in summary.items():
            if entry["value"] is None:
                self.assertIn("nan", stored[key])
            else:
                self.assertEqual(entry["value"], float.fromhex(stored[key]), key)

    def test_inspect_prints_one_json_value_with_the_unit_of_every_number(self):
        result = self.expect(0, "inspect", "models/demo-finger.yaml", "--json")
        self.assertEqual(result.stderr, "")
        unit = re.compile(r"_(A|N|m|rad|rad_s|N_m|m_s)$|^torque_per_tension_m$|^tension_ratio$")

        def look(value, path):
            if isinstance(value, dict):
                if set(value) == {"value", "unit"}:
                    self.assertTrue(value["unit"])
                    return
                for key, inner in value.items():
                    look(inner, [*path, key])
            elif isinstance(value, list):
                for inner in value:
                    look(inner, path)
            elif isinstance(value, (int, float)):
                self.assertTrue(any(unit.search(key) for key in path), f"{path} has no unit")
                self.numbers += 1

        self.numbers = 0
        look(json.loads(result.stdout, parse_constant=lambda word: self.fail(f"{word} is no JSON")), [])
        self.assertGreater(self.numbers, 100)

    def test_bad_input_prints_nothing_on_standard_output(self):
        self.assertEqual(self.expect(2, "run", "none.yaml", "--json").stdout, "")


class Set(Place):
    def angle(self, *arguments):
        result = self.expect(0, "run", *arguments, "--json", "--out", "set.h5")
        return json.loads(result.stdout)["summary"]["joint_angle.MCP"]["value"]

    def test_a_changed_value_changes_what_comes_out(self):
        plain = self.angle(self.scenario)
        slower = self.angle(self.scenario, "--set", "timeline.0.voltage=4 V")
        self.assertLess(slower, 0.9 * plain)
        weak = self.angle(self.scenario, "--set", "model.supplies.battery.voltage=4 V")
        self.assertLess(weak, 0.9 * plain)
        self.assertNotEqual(weak, slower)
        self.assertEqual(self.angle(self.scenario), plain)

    def test_it_can_be_given_twice_and_may_stand_before_the_file(self):
        both = self.angle(self.scenario, "--set", "timeline.0.voltage=4 V", "--set", "duration=0.3 s")
        self.assertEqual(self.angle("--set", "timeline.0.voltage=4 V", "--set", "duration=0.3 s", self.scenario), both)
        self.assertNotEqual(self.angle("--set", "timeline.0.voltage=4 V", self.scenario), both)

    def test_a_changed_file_does_the_same(self):
        edited = self.write("edited", SHORT.replace("voltage: 6 V", "voltage: 4 V"))
        self.assertEqual(self.angle(self.scenario, "--set", "timeline.0.voltage=4 V"), self.angle(edited))

    def test_a_wrong_key_is_named_with_the_nearest_one(self):
        for setting, nearest in (("durration=1 s", "duration"), ("model.drives.flexor.curent_limit=0.3 A", "current_limit"),
                                 ("solver.tolerence=1e-3", "tolerance")):
            with self.subTest(setting):
                result = self.expect(2, "run", self.scenario, "--set", setting)
                self.assertIn(setting.split("=")[0].split(".")[-1], result.stderr)
                self.assertIn(f"'{nearest}'", result.stderr)
        result = self.expect(2, "inspect", "models/demo-finger.yaml", "--set", "drives.flexor.curent_limit=0.3 A")
        self.assertIn("'current_limit'", result.stderr)

    def test_a_wrong_unit_and_a_missing_equals_sign_are_bad_input(self):
        self.assertIn("duration", self.expect(2, "run", self.scenario, "--set", "duration=2 N").stderr)
        self.assertIn("'='", self.expect(2, "run", self.scenario, "--set", "duration").stderr)
        self.assertEqual(self.files(), [])

    def test_inspect_obeys_it(self):
        def limit(*arguments):
            result = self.expect(0, "inspect", "models/demo-finger.yaml", "--json", *arguments)
            return json.loads(result.stdout)["drives"]["flexor"]["driven_current_A"]
        self.assertEqual(limit(), 0.5)
        self.assertEqual(limit("--set", "drives.flexor.current_limit=0.3 A"), 0.3)

    def test_inspect_takes_a_posture_and_names_a_wrong_joint(self):
        def grip(*arguments):
            return json.loads(self.expect(0, "inspect", *arguments, "models/demo-finger.yaml", "--json").stdout)["static_grip"]
        self.assertEqual(grip(), grip("--posture", "PIP=30deg"))
        self.assertNotEqual(grip(), grip("--posture", "PIP=50deg", "--posture", "DIP=0 rad"))
        result = self.expect(2, "inspect", "models/demo-finger.yaml", "--posture", "PPI=30deg")
        self.assertIn("PIP", result.stderr)
        self.assertIn("angle", self.expect(2, "inspect", "models/demo-finger.yaml", "--posture", "PIP").stderr)


class Cautions(Place):
    """What 'inspect' warns of, and that it does not without reason."""

    def inspect(self, *arguments):
        settings = [word for setting in arguments for word in ("--set", setting)]
        return self.expect(0, "inspect", "models/demo-finger.yaml", *settings).stdout

    def test_a_sound_finger_gives_no_caution(self):
        for word in ("CAUTION", "note:", "inf", "nan"):
            self.assertNotIn(word, self.inspect())

    def test_a_return_cord_that_does_not_win_against_friction(self):
        text = self.inspect("cords.return.pretension=0.05 N")
        self.assertRegex(text, r"(?m)^    PIP: least 0\.\d+, at 0 deg  CAUTION: may not open$")

    def test_a_cord_that_passes_the_pin(self):
        text = self.inspect("cords.return.path.1.guide=[0 mm, -30 mm, 0 mm]", "cords.return.path.1.radius=1 mm")
        self.assertIn("CAUTION: the arm at MCP changes its sign within the range", text)
        self.assertIn("note: the cord never turns at knuckle bend 1", text)
        self.assertNotIn("the arm at PIP", text)

    def test_a_sensor_that_does_not_see_the_whole_closing(self):
        short = self.inspect("drives.flexor.sensor.potentiometer.range=300 deg")
        self.assertIn("CAUTION: its track ends at 210.0 deg of the shaft", short)
        sensor = json.loads(self.expect(0, "inspect", "models/demo-finger.yaml", "--json").stdout)["sensors"]["flexor"]
        self.assertAlmostEqual(sensor["step_rad"], math.radians(1080) / 4096, places=12)
        self.assertAlmostEqual(sensor["play_rad"], math.radians(1.5) + 2 * 2e-3 / 5, places=12)
        self.assertLess(sensor["closed_shaft_rad"], sensor["range_end_rad"])
        self.assertLess(sensor["tip_step_largest_m"], sensor["tip_step_reversed_largest_m"])

    def test_a_gearhead_that_locks(self):
        settings = ("--set", "gearheads.train_150.backward_efficiency=0")
        self.assertIn("the gearhead locks", self.expect(0, "inspect", "models/demo-finger.yaml", *settings).stdout)
        drive = json.loads(self.expect(0, "inspect", "models/demo-finger.yaml", "--json", *settings).stdout)["drives"]["flexor"]
        self.assertIsNone(drive["back_drive_torque_N_m"])
        self.assertIsNone(drive["back_drive_tension_N"])


class Fits(Place):
    """'inspect --fits': sizes, press fits and play."""

    def fits(self, *settings, model="models/demo-finger.yaml"):
        words = [word for setting in settings for word in ("--set", setting)]
        text = self.expect(0, "inspect", "--fits", model, *words).stdout
        return text, json.loads(self.expect(0, "inspect", "--fits", model, "--json", *words).stdout)["fits"]

    def test_the_text_shows_the_numbers_of_the_json(self):
        text, fits = self.fits()
        pairs = 0

        def near(shown, exact):
            nonlocal pairs
            pairs += 1
            digits = len(shown.partition(".")[2])
            self.assertLessEqual(abs(float(shown) - exact), 0.5000001 * 10.0 ** -digits, f"{shown} for {exact}")

        number = r"(-?\d+\.\d+)"
        for hinge in ("MCP", "PIP", "DIP"):
            fit = fits["hinges"][hinge]
            clearance = re.search(rf"(?m)^  {hinge}: pin .*: clearance {number} … {number} µm$", text)
            near(clearance[1], 1e6 * fit["running"]["smallest_clearance_m"])
            near(clearance[2], 1e6 * fit["running"]["largest_clearance_m"])
            block = re.search(rf"(?m)^  {hinge}: steel pin .*?\n((?:    .*\n)+)", text)[1]
            rows = [row for row in block.splitlines() if "°C" in row and "→" in row]
            ends = (fit["press"]["loosest"], fit["press"]["tightest"])
            states = [state for end in ends for state in end["states"]]
            self.assertEqual(len(rows), 6)
            for row, state in zip(rows, states):
                cells = [float(cell) for cell in re.findall(r"-?\d+\.\d+", row)]
                shown = re.findall(r"-?\d+\.\d+", row)
                first = state in (ends[0]["states"][0], ends[1]["states"][0])
                self.assertEqual(len(cells), 9 if first else 8, row)
                exact = [1e6 * state["interference_m"], 1e-6 * state["pressure_Pa"], 1e-6 * state["hoop_stress_Pa"],
                         1e-6 * state["equivalent_stress_Pa"]]
                if first:
                    exact.append(ends[states.index(state) // 3]["press_in_force_N"])
                exact += [state["pull_out_force_N"], state["crept_pull_out_force_N"], 1e3 * state["slip_torque_N_m"],
                          1e3 * state["crept_slip_torque_N_m"]]
                for one, other in zip(shown, exact):
                    near(one, other)
            share = fits["tips"]["distal"]["hinges"][hinge]
            shown = re.findall(r"\d+\.\d+", re.search(rf"(?m)^  {hinge}  .*$", text)[0])
            exact = [1e3 * share["reach_m"], *(1e6 * share["radial_clearance_m"][end] for end in ("tightest", "loosest")),
                     1e6 * share["axial_clearance_m"]]
            for key, unit in (("tilt_rad", 57.29577951308232), ("sideways_m", 1e3), ("flexion_m", 1e3)):
                exact += [unit * share[key][end] for end in ("tightest", "loosest")]
            self.assertEqual(len(shown), len(exact))
            for one, other in zip(shown, exact):
                near(one, other)
        for key, words in (("worst_case_m", "worst case"), ("root_sum_square_m", "root sum square")):
            shown = re.findall(r"\d+\.\d+", re.search(rf"(?m)^  {words}.*$", text)[0])
            exact = [1e3 * fits["tips"]["distal"][way][key][end] for way in ("sideways", "flexion")
                     for end in ("tightest", "loosest")]
            self.assertEqual(len(shown), len(exact))
            for one, other in zip(shown, exact):
                near(one, other)
        self.assertGreater(pairs, 80)
        for hinge in fits["hinges"].values():
            for caution in hinge["press"]["cautions"] + hinge["running"]["cautions"]:
                self.assertIn(f"CAUTION: {caution}\n", text)

    def test_a_press_fit_that_may_be_loose_is_said_so(self):
        self.assertNotIn("CAUTION", self.fits()[0])
        text, fits = self.fits("bodies.distal.hinge.pin.fit.press.hole=H7")
        caution = "the pin may come out loose, by up to 4.0 µm: at this diameter p6 in H7 is a transition fit"
        self.assertIn(f"    CAUTION: {caution}\n", text)
        self.assertEqual(text.count("CAUTION"), 1)
        self.assertEqual([hinge for hinge, fit in fits["hinges"].items() if fit["press"]["may_be_loose"]], ["DIP"])
        press = "bodies.distal.hinge.pin.fit."
        self.assertIn("no press fit", self.fits(press + "pin=g6", press + "press.hole=H7")[0])
        self.assertNotIn("CAUTION", self.fits(press + "pin=[1.506 mm, 1.512 mm]")[0])

    def test_a_lug_stressed_beyond_its_material_is_said_so(self):
        text, _ = self.fits("bodies.proximal.hinge.pin.fit.press.hub_strength=20 MPa")
        self.assertRegex(text, r"CAUTION: the equivalent stress reaches \d+\.\d MPa where the lug bears 20\.0 MPa")
        strength = [self.fits(*keys)[1]["hinges"]["MCP"]["press"]["hub_strength_Pa"] for keys in (
            (), ("bodies.proximal.hinge.pin.fit.press.layers=across",), ("materials.sintered_nylon.strength=30 MPa",))]
        self.assertEqual(strength, [48e6, 42e6, 30e6])

    def test_warmth_and_creep_that_loosen_a_pin_are_said_so(self):
        text, _ = self.fits("bodies.proximal.hinge.pin.fit.press.temperature=[20 degC, 80 degC]")
        self.assertIn("CAUTION: with the smallest interference the pin is loose at 80 °C once the lug has crept\n", text)
        text, _ = self.fits("bodies.proximal.hinge.pin.fit.press.temperature=[20 degC, 120 degC]")
        self.assertIn("CAUTION: with the smallest interference the pin is loose at 120 °C\n", text)

    def test_a_pin_that_may_bind_is_said_so(self):
        text, fits = self.fits("bodies.proximal.hinge.pin.fit.running_hole=F8")
        self.assertIn("CAUTION: the pin may bind in the inner lug, with up to 2.0 µm of interference\n", text)
        self.assertEqual(len(fits["hinges"]["MCP"]["running"]["cautions"]), 1)

    def test_what_is_not_described_is_named(self):
        text, fits = self.fits(model="models/two-phalanx-finger.yaml")
        for hinge in fits["hinges"]:
            self.assertIn(f"  {hinge}: not described (pin.fit.running_hole)", text)
            self.assertIn(f"  {hinge}: not described (pin.fit.press)", text)
            self.assertIsNone(fits["hinges"][hinge]["press"])
            self.assertIsNone(fits["hinges"][hinge]["running"])
        text, fits = self.fits("bodies.middle.hinge.washers.axial_clearance=0 mm")
        self.assertIn("  PIP: not described: washers.axial_clearance\n", text)
        self.assertIn("CAUTION: the sums sideways lack PIP: the real play is larger\n", text)
        self.assertIsNone(fits["tips"]["distal"]["hinges"]["PIP"]["sideways_m"])
        self.assertEqual(fits["tips"]["distal"]["sideways"]["without"], ["PIP"])

    def test_an_unknown_class_is_refused_with_the_known_ones(self):
        result = self.expect(2, "inspect", "--fits", "models/demo-finger.yaml", "--set", "bodies.distal.hinge.pin.fit.pin=k6")
        self.assertIn("h5, h6, h7, h8, h9, h10, h11, g6, f8, m6, p6", result.stderr)

    def test_the_rest_of_inspect_stays_as_it_is(self):
        text = self.expect(0, "inspect", "models/demo-finger.yaml").stdout
        self.assertNotIn("fit", text)
        self.assertNotIn("Bodies", self.fits()[0])


class Packing(Place):
    """'inspect --packing': collisions, walls and outer size; the examples of the user guide."""

    def packing(self, model, *words):
        text = self.expect(0, "inspect", "--packing", model, *words).stdout
        return text, json.loads(self.expect(0, "inspect", "--packing", model, "--json", *words).stdout)

    def guide(self, kind):
        """The blocks of the user guide that begin like this."""
        page = (SOURCE / "docs" / "user-guide" / "packing.md").read_text()
        return [block for block in re.findall(r"(?s)```\w*\n(.*?)```", page) if block.startswith(kind)]

    def test_the_text_shows_the_numbers_of_the_json(self):
        text, packed = self.packing("models/demo-finger.yaml", "--set", "packing.clearance=4 mm")
        rows = re.findall(r"(?m)^  (\S.*?) {2,}(\S.*?) +(>? ?-?[\d.]+) +(-?\d+\.\d\d)  (\S.*)$", text)
        pairs = packed["collisions"] + packed["narrow"]
        self.assertEqual(len(rows), len(pairs))
        self.assertGreater(len(pairs), 0)
        for row, pair in zip(rows, pairs):
            self.assertEqual((row[0], row[1], row[4]), (pair["a"], pair["b"], pair["posture"]))
            self.assertAlmostEqual(float(row[3]), 1e3 * pair["gap_smallest_m"], delta=0.00501)
            if row[2].startswith(">"):
                self.assertIsNone(pair["gap_straight_m"])
            else:
                self.assertAlmostEqual(float(row[2]), 1e3 * pair["gap_straight_m"], delta=0.00501)
        self.assertEqual(len(packed["postures"]), int(re.search(r"(\d+) postures looked at", text)[1]))
        length = re.search(r"(?m)^    whole +(\d+\.\d) mm; human 81.8 mm", text)[1]
        self.assertAlmostEqual(float(length), 1e3 * packed["size"]["fingers"]["proximal"]["length_m"], delta=0.0501)
        self.assertIn("not certification", text)

    def test_more_steps_look_at_more_postures(self):
        few, many = (self.packing("models/demo-finger.yaml", "--steps", steps)[1]["postures"] for steps in ("3", "5"))
        self.assertEqual((len(few), len(many)), (1 + 3 * 2 + 2, 1 + 3 * 4 + 4))  # straight is the first of every range

    def test_the_examples_of_the_guide_are_what_the_program_prints(self):
        models, shown = self.guide("sinewright: model"), self.guide("four drives")
        self.assertEqual((len(models), len(shown)), (2, 2))
        for model, output in zip(models, shown):
            (self.folder / "models" / "row.yaml").write_text(model)
            text = self.expect(0, "inspect", "--packing", "models/row.yaml").stdout
            for line in output.splitlines():
                if line.strip() != "…":
                    self.assertIn(line + "\n", text)
        self.assertIn("Collisions: none\n", text)  # the second one's

    def test_the_drawing_numbers_what_the_list_names(self):
        (self.folder / "models" / "row.yaml").write_text(self.guide("sinewright: model")[0])
        text, packed = self.packing("models/row.yaml", "--plot", "drawn")
        files = [self.folder / name for name in packed["files"]]
        self.assertEqual([file.suffix for file in files], [".png", ".svg", ".pdf", ".gp"])
        for file in files:
            self.assertGreater(file.stat().st_size, 1000)
        script = files[-1].read_text()
        pairs = packed["collisions"] + packed["narrow"]
        for view in range(3):
            rows = re.search(rf"(?s)\$collision{view} << EOD\n(.*?)EOD", script)[1].splitlines()
            numbers = [int(row.split()[2]) for row in rows if not row.startswith("#")]
            self.assertEqual(numbers, list(range(1, 1 + len(packed["collisions"]))))
        self.assertIn(f"'1  {pairs[0]['a']} · {pairs[0]['b']}: {-1e3 * pairs[0]['gap_smallest_m']:.2f} mm deep'", script)

    def test_the_demo_finger_is_what_the_guide_shows(self):
        text = self.packing("models/demo-finger.yaml")[0]
        lines = [line for line in self.guide("demo finger: packing")[0].splitlines() if line.strip() != "…"]
        self.assertGreater(len(lines), 6)
        for line in lines:
            self.assertIn(" ".join(line.split()), " ".join(text.split()))

    def test_the_demo_hands_drives_fit(self):
        text, packed = self.packing("models/demo-hand.yaml")
        bought = ("motor", "gearhead", "pulley", "sensor")
        for pair in packed["collisions"]:
            self.assertTrue(pair["gap_straight_m"] is None or pair["gap_straight_m"] > 0, pair)
            self.assertFalse(pair["a"].endswith(bought) or pair["b"].endswith(bought), pair)
        self.assertNotIn("drives.", text.splitlines()[1])  # what is not described
        # The index finger's drive a little further forward is met by the base of the thumb.
        moved = self.packing("models/demo-hand.yaml", "--set", "fingers.index.drives.flexor.shaft.at=[-37.638 mm, -12 mm, -24.889 mm]")[1]
        self.assertTrue([pair for pair in moved["collisions"] if "thumb" in pair["a"] and pair["b"].startswith("index.flexor.")], moved["collisions"])

    def test_a_drawing_without_the_check_is_bad_input(self):
        self.assertIn("--packing", self.expect(2, "inspect", "models/demo-finger.yaml", "--plot", "drawn").stderr)
        self.assertIn("--fits", self.expect(2, "inspect", "models/demo-finger.yaml", "--packing", "--fits").stderr)
        self.assertEqual(self.files(), [])


class Parts(Place):
    """'inspect --parts': the bill of materials."""

    BUSHINGS = ["bodies.proximal.hinge.bushings=flanged_2", "bodies.middle.hinge.bushings=flanged_2",
                "bodies.distal.hinge.bushings=flanged_15"]

    def parts(self, *settings, model="models/demo-finger.yaml"):
        words = [word for setting in settings for word in ("--set", setting)]
        text = self.expect(0, "inspect", "--parts", model, *words).stdout
        return text, json.loads(self.expect(0, "inspect", "--parts", model, "--json", *words).stdout)

    def line(self, bill, beginning):
        return next(line for line in bill["lines"] if line["part"].startswith(beginning))

    def test_the_text_shows_the_numbers_of_the_json_and_they_add_up(self):
        for model in ("demo-finger", "long-finger", "two-phalanx-finger"):
            text, bill = self.parts(model=f"models/{model}.yaml")
            self.assertEqual(bill["unpriced"], 0, "a shipped model can be costed")
            self.assertNotIn("CAUTION", text)
            rows = text.splitlines()
            for line in bill["lines"]:
                row = next(row for row in rows if row.strip().startswith(line["part"]))
                self.assertEqual(float(row.split()[-1]), float(f"{line['price']:.2f}"), row)
                self.assertIn(", ".join(line["used_for"]), row)
                amount = line["measure"]["value"] if line["measure"] else line["count"]
                self.assertAlmostEqual(line["price"], line["unit_price"] * amount, places=12)
            self.assertAlmostEqual(bill["total"], sum(line["price"] for line in bill["lines"]), places=9)
            self.assertEqual(next(row for row in rows if row.strip().startswith("total")).split(), ["total", f"{bill['total']:.2f}"])

    def test_a_joint_takes_one_pin_and_two_washers(self):
        # Common practice, no source.
        for model, joints in (("demo-finger", 3), ("long-finger", 4), ("two-phalanx-finger", 2)):
            _, bill = self.parts(model=f"models/{model}.yaml")
            count = {kind: sum(line["count"] for line in bill["lines"] if line["part"].startswith(kind)) for kind in ("pin", "washer")}
            self.assertEqual(count, {"pin": joints, "washer": 2 * joints})

    def test_bushings_and_washers_cost_what_the_trade_says(self):
        # Common practice, no source: a bushing costs four to five, a hand of five fingers takes 20 to 30 for over a hundred
        # together, and fifty washers cost a couple of units.
        _, washers = self.parts()
        text, bushings = self.parts(*self.BUSHINGS)
        lines = [line for line in bushings["lines"] if line["part"].startswith("bushing")]
        for line in lines:
            self.assertTrue(4 <= line["unit_price"] <= 5)
        hand = 5 * sum(line["count"] for line in lines)
        self.assertTrue(20 <= hand <= 30, hand)
        self.assertGreater(5 * sum(line["price"] for line in lines), 100)
        self.assertNotIn("washer", text)
        washer = self.line(washers, "washer")
        self.assertTrue(1.5 <= 50 * washer["unit_price"] <= 3)
        self.assertAlmostEqual(bushings["total"] - washers["total"],
                               sum(line["price"] for line in lines) - 6 * washer["unit_price"], places=9)

    def test_bushings_ease_the_joints(self):
        def friction(*settings):
            words = [word for setting in settings for word in ("--set", setting)]
            opening = json.loads(self.expect(0, "inspect", "models/demo-finger.yaml", "--json", *words).stdout)["opening"]
            return [opening[0][joint]["friction_N_m"] for joint in ("MCP", "PIP", "DIP")]
        for eased, rubbing in zip(friction(*self.BUSHINGS), friction()):
            self.assertLess(eased, 0.9 * rubbing)

    def test_what_has_no_price_is_said_so(self):
        path = self.folder / "models/parts/motors.yaml"
        path.write_text("\n".join(line for line in path.read_text().splitlines() if "price: 5.5" not in line))
        text, bill = self.parts("currency=crown", "bill={glue: {used_for: pads}}")
        self.assertIn("prices in crown", text)
        self.assertEqual(bill["unpriced"], 2)
        self.assertIn("CAUTION: the total lacks 2 of 16 lines, which have no price: motor micro_6v; glue", text)
        self.assertEqual(text.count("no price\n"), 2)
        self.assertIn("total of the lines with a price", text)
        self.assertIsNone(self.line(bill, "motor")["price"])
        self.assertEqual(self.line(bill, "motor")["count"], 1)

    def test_prices_do_not_move_the_finger(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "plain.h5")
        self.expect(0, "run", self.scenario, "--quiet", "--out", "dear.h5", "--set", "model.drives.flexor.pulley.price=99",
                    "--set", "model.cords.flexor.allowance=1 m", "--set", "model.materials.sintered_nylon.price=9 1/cm³")
        self.assertTrue(self.same("plain.h5", "dear.h5"))

    def test_a_price_in_a_wrong_unit_is_bad_input(self):
        result = self.expect(2, "inspect", "--parts", "models/demo-finger.yaml", "--set", "lines.braid_05.price=0.3")
        self.assertIn("a number per length, such as \"0.12 1/m\"", result.stderr)
        self.expect(2, "inspect", "--parts", "--fits", "models/demo-finger.yaml")


class Export(Place):
    def setUp(self):
        super().setUp()
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5")

    def rows(self, name, delimiter=","):
        with open(self.folder / name, newline="", encoding="utf-8-sig") as file:
            return list(csv.reader(file, delimiter=delimiter, strict=True))

    def test_every_number_of_the_series_reads_back_to_the_bit(self):
        result = self.expect(0, "export", "a.h5")
        self.assertEqual((result.stdout, result.stderr), ("a.csv\n", ""))
        self.assertEqual(self.files(), ["a.csv", "a.h5"])
        heading, *rows = self.rows("a.csv")
        self.assertEqual({len(row) for row in rows}, {len(heading)})
        self.assertEqual(len(set(heading)), len(heading))
        times, channels = [], {}
        for line in subprocess.run([SERIES, str(self.folder / "a.h5")], text=True, capture_output=True,
                                   check=True).stdout.splitlines()[3:]:
            name, *numbers = line.split(" ")
            if name == "time":
                times.append(float.fromhex(numbers[0]))
            elif name.startswith("/"):
                channels[name] = [float.fromhex(number) for number in numbers]
        self.assertEqual([float(row[0]) for row in rows], times)
        columns = {}
        for k, title in enumerate(heading[1:], 1):
            self.assertRegex(title, r" \[[^]]+\]$")
            columns.setdefault(re.match(r"[^:]*?(?=:| \[)", title)[0], []).append(k)
        self.assertEqual(sorted(columns), sorted(channels))
        for name, places in columns.items():
            values = [float(row[k] or "nan") for row in rows for k in places]
            self.assertEqual([value.hex() for value in values], [value.hex() for value in channels[name]], name)

    def test_chosen_data_in_units_for_display(self):
        self.expect(0, "export", "a.h5", "--data", "/joints/MCP/angle", "--data", "*/winding_temperature", "--out", "si.csv")
        self.expect(0, "export", "a.h5", "--data", "/joints/MCP/angle", "--data", "*/winding_temperature", "--display",
                    "--delimiter", "semicolon", "--out", "new/shown.csv")
        si, shown = self.rows("si.csv"), self.rows("new/shown.csv", ";")
        self.assertEqual(si[0], ["time [s]", "/joints/MCP/angle [radian]", "/drives/flexor/winding_temperature [K]"])
        self.assertEqual(shown[0], ["time [s]", "/joints/MCP/angle [deg]", "/drives/flexor/winding_temperature [°C]"])
        self.assertEqual(len(si), len(shown))
        for one, other in zip(si[1:], shown[1:]):
            self.assertEqual(one[0], other[0])
            self.assertAlmostEqual(math.degrees(float(one[1])), float(other[1]), delta=1e-8)
            self.assertAlmostEqual(float(one[2]) - 273.15, float(other[2]), delta=1e-8)

    def test_the_tables_hold_what_json_says(self):
        said = json.loads(self.expect(1, "run", self.scenario, "--json", "--out", "a.h5", "--set",
                                      "require=[{quantity: joint_angle.MCP, at_least: 89 deg}]").stdout)
        for table in ("events", "summary", "requirements", "margins"):
            self.expect(0, "export", "a.h5", "--table", table, "--quiet")
        summary = {row[0]: row for row in self.rows("a.summary.csv")[1:]}
        self.assertEqual(sorted(summary), sorted(said["summary"]))
        for key, value in said["summary"].items():
            cell = summary[key][1]
            self.assertEqual(float(cell) if cell not in ("", "inf") else None, value["value"])
        events = self.rows("a.events.csv")[1:]
        self.assertEqual([(float(row[0]), row[1]) for row in events], [(event["time"], event["kind"]) for event in said["events"]])
        margins = self.rows("a.margins.csv")[1:]
        self.assertEqual([row[0] for row in margins],
                         [entry["name"] for entry in said["margins"]] + [entry["name"] for entry in said["not_checked"]])
        self.assertEqual(margins[-1][-1].split("; "), said["not_checked"][-1]["missing"])
        self.assertEqual(self.rows("a.requirements.csv")[1][-1], "no")

    def test_what_cannot_be_exported_is_said_and_nothing_is_left(self):
        whole = (self.folder / "a.h5").read_bytes()
        (self.folder / "cut.h5").write_bytes(whole[:len(whole) // 2])
        (self.folder / "foreign.h5").write_text("no record")
        (self.folder / "b.h5").write_bytes(whole)
        (self.folder / "place").mkdir()
        before = self.files()
        for arguments, words in (
                (["none.h5"], "none.h5"), (["cut.h5"], "cut.h5"), (["foreign.h5"], "foreign.h5"), (["place"], "place"),
                (["a.h5", "--out", "a.h5"], "is the record itself"), (["a.h5", "--out", "place/../a.h5"], "is the record itself"),
                (["a.h5", "--out", "b.h5"], "another record"), (["a.h5", "--out", "place"], "no file"),
                (["a.h5", "--out", "foreign.h5/a.csv"], "folder cannot be made"), (["a.h5", "--data", "/cord"], "--data '/cord'"),
                (["a.h5", "--data", "/joints", "--table", "events"], "--data"), (["a.h5", "--table", "all"], "--table"),
                (["a.h5", "--set", "a=1"], "--set")):
            with self.subTest(arguments):
                result = self.expect(2, "export", *arguments)
                self.assertEqual(result.stdout, "")
                self.assertIn(words, result.stderr)
        self.assertEqual(self.files(), before)
        self.assertEqual((self.folder / "a.h5").read_bytes(), whole)
        self.assertEqual((self.folder / "b.h5").read_bytes(), whole)

    def test_a_full_disk_leaves_no_part_of_a_table(self):
        def small_files():
            resource.setrlimit(resource.RLIMIT_FSIZE, (4096, 4096))
        (self.folder / "a.csv").write_text("old")
        result = self.expect(2, "export", "a.h5", preexec_fn=small_files)
        self.assertIn("a.csv: cannot write the file", result.stderr)
        self.assertEqual(self.files(), ["a.csv", "a.h5"])
        self.assertEqual((self.folder / "a.csv").read_text(), "old")


class Report(Place):
    def setUp(self):
        super().setUp()
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5")

    def given(self, name):
        return json.loads((self.folder / name).read_text())

    def test_the_page_holds_the_record_and_needs_nothing_else(self):
        result = self.expect(0, "report", "a.h5", "-o", "a.html", "--data", "a.json")
        self.assertEqual((result.stdout, result.stderr), ("a.html\n", ""))
        page, data = (self.folder / "a.html").read_text(), self.given("a.json")
        self.assertNotRegex(page.replace("http://www.w3.org/", ""), r"""(src|href)=["']?https?:""")
        record = data["records"][0]
        self.assertEqual((data["title"], record["model"], record["outcome"]), ("short", "two-phalanx finger", "complete"))
        self.assertEqual([entry["id"] for entry in record["headline"]],
                         ["closing_time", "grip_force", "breaks_first", "back_drive", "touch_temperature"])
        self.assertEqual(record["requirements"][0]["met"], True)
        self.assertAlmostEqual(sum(flow["share"] for flow in record["losses"]["flows"] + record["losses"]["useful"]), 1, 9)
        self.assertIn("not certification", data["cautions"][0])
        self.assertEqual([Path(file["path"]).name for file in record["inputs"]["files"]][0], "short.yaml")

    def test_two_records_are_compared(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "b.h5", "--set", "model.supplies.battery.voltage=4 V")
        self.expect(0, "report", "a.h5", "b.h5", "-o", "ab.html", "--data", "ab.json", "--title", "4 V against 6 V")
        data = self.given("ab.json")
        self.assertEqual(data["title"], "4 V against 6 V")
        self.assertEqual([record["label"] for record in data["records"]], ["A", "B"])
        self.assertIn({"place": "changed on the command line", "texts": ["", "model.supplies.battery.voltage=4 V"]}, data["comparison"]["inputs"])
        self.assertTrue(any(row["notable"] for row in data["comparison"]["values"]))
        self.assertFalse(any(row["notable"] for row in data["comparison"]["values"] if row["texts"][0] == row["texts"][1]))

    def test_what_cannot_be_shown_is_refused_and_nothing_is_written(self):
        (self.folder / "cut.h5").write_bytes((self.folder / "a.h5").read_bytes()[:5000])
        (self.folder / "foreign.h5").write_text("no record")
        record = (self.folder / "a.h5").read_bytes()
        for arguments, words in [(["none.h5"], "none.h5"), (["cut.h5"], "cut.h5"), (["foreign.h5"], "foreign.h5"),
                                 (["a.h5", "-o", "a.h5"], "made from"), (["a.h5", "--pdf", "a.h5"], "made from"),
                                 (["a.h5", "--set", "duration=1 s"], "--set"), ([], "RECORD")]:
            with self.subTest(arguments):
                result = self.expect(2, "report", *arguments)
                self.assertIn(words, result.stderr)
                self.assertEqual(self.files(), ["a.h5", "cut.h5", "foreign.h5"])
        self.assertEqual((self.folder / "a.h5").read_bytes(), record)

    def test_a_pdf_without_a_browser_says_what_to_do(self):
        place = os.environ["PATH"]
        os.environ["PATH"] = str(self.folder)
        try:
            result = self.expect(2, "report", "a.h5", "-o", "a.html", "--pdf", "a.pdf")
        finally:
            os.environ["PATH"] = place
        self.assertIn("chromium", result.stderr)
        self.assertEqual(self.files(), ["a.h5", "a.html"])


class StlParts(Place):
    """A scenario with a phalanx and an object from STL files."""

    def setUp(self):
        super().setUp()
        text = (SOURCE / "scenarios" / "grasp-oval.yaml").read_text()
        self.scenario = self.write("oval", re.sub(r"duration: .*", "duration: 0.4 s", text[:text.index("timeline:")]) +
                                   "timeline:\n  - {at: 0.02 s, drive: flexor, voltage: 6 V}\n")
        self.mesh = self.folder / "models" / "meshes" / "oval-grip.stl"

    def test_what_was_taken_of_each_file_is_told(self):
        result = self.expect(0, "run", self.scenario, "--out", "a.h5")
        self.assertRegex(result.stdout, r"(?m)^  distal +meshes/printed-distal.stl: 384 triangles, .* × 13 mm; [0-9.]+ cm³, [0-9.]+ g$")
        self.assertRegex(result.stdout, r"(?m)^  grip +\S*oval-grip.stl: 1360 triangles, .* × 36 × 80 mm; touches as a hull of 200 corners, "
                                        r"up to 0\.\d+ mm inside the part$")
        told = json.loads(self.expect(0, "run", self.scenario, "--json", "--out", "a.h5").stdout)["stl_parts"]
        self.assertEqual([(part["part"], part["triangles"]) for part in told], [("distal", 384), ("grip", 1360)])
        self.assertAlmostEqual(told[0]["mass"]["value"], 0.93e3 * told[0]["volume"]["value"], delta=1e-15)
        change = "bodies.distal.solids=[{stl: {file: meshes/printed-distal.stl, unit: mm}, density: 2 g/cm3}]"
        seen = json.loads(self.expect(0, "inspect", "models/demo-finger.yaml", "--json", "--set", change).stdout)
        self.assertAlmostEqual(seen["bodies"]["distal"]["mass"]["value"], 2e3 * told[0]["volume"]["value"], delta=1e-12)
        self.assertEqual(seen["stl_parts"][0]["file"], "meshes/printed-distal.stl")
        self.assertNotIn("stl_parts", json.loads(self.expect(0, "inspect", "models/demo-finger.yaml", "--json").stdout))

    def test_a_record_runs_again_to_the_byte_without_the_files(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5")
        shutil.rmtree(self.folder / "models")
        shutil.rmtree(self.folder / "scenarios")
        self.expect(0, "run", "a.h5", "--quiet", "--out", "b.h5")
        self.assertTrue((self.folder / "a.h5").read_bytes() == (self.folder / "b.h5").read_bytes(), "the two records differ")
        self.expect(0, "plot", "a.h5", "--quiet", "--out", "figures")
        # Unit, place and density still act on what the record keeps.
        smaller = self.expect(0, "run", "a.h5", "--out", "c.h5", "--set", "objects.grip.stl.unit=cm", "--set", "objects.grip.at=[0 mm, -400 mm, 0 mm]")
        self.assertIn("418.7 × 360 × 800 mm", smaller.stdout)

    def test_a_broken_part_is_bad_input_with_the_place_and_the_trouble(self):
        whole = self.mesh.read_bytes()
        for content, words in [(whole[:-50], "has 68034"), (whole + b"x", "has 68085"), (b"", "the file is empty"),
                               (whole[:80] + (1359).to_bytes(4, "little") + whole[84:-50], "the mesh is open: 3 of its"),
                               (whole[:96] + b"\x00\x00\xc0\x7f" + whole[100:], "triangle 1 of 1360 has a corner whose coordinate")]:
            with self.subTest(words):
                self.mesh.write_bytes(content)
                result = self.expect(2, "run", self.scenario, "--out", "a.h5")
                self.assertEqual(result.stdout, "")
                self.assertRegex(result.stderr, r"^\S*oval.yaml:\d+:\d+: objects.grip.stl.file = ../models/meshes/oval-grip.stl is not allowed: ")
                self.assertIn(words, result.stderr)
                self.assertIn("\n  needed: ", result.stderr)
        self.mesh.unlink()
        result = self.expect(2, "run", self.scenario, "--out", "a.h5")
        self.assertRegex(result.stderr, r"(?s)oval-grip.stl: there is no such file.*used by: \S*oval.yaml:\d+:\d+")
        self.assertEqual(self.files(), [])

    def test_the_review_shows_the_hull_with_closed_faces_and_compares_what_was_read(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5")
        content = bytearray(self.mesh.read_bytes())
        content[0:8] = b"exported"   # another file of the same shape
        self.mesh.write_bytes(content)
        self.expect(0, "run", self.scenario, "--quiet", "--out", "b.h5")
        self.expect(0, "report", "a.h5", "b.h5", "-o", "ab.html", "--data", "ab.json")
        data = json.loads((self.folder / "ab.json").read_text())
        self.assertEqual([row["place"] for row in data["comparison"]["inputs"]], ["oval-grip.stl: fingerprint"])
        hulls = [shape for body in data["records"][0]["scene"]["bodies"] for shape in body["shapes"] if shape["kind"] == "hull"]
        self.assertEqual(len(hulls), 2)
        for hull in hulls:
            edges = [(face[k], face[(k + 1) % 3]) for face in hull["faces"] for k in range(3)]
            self.assertEqual(len(set(edges)), len(edges))
            self.assertEqual({(b, a) for a, b in edges}, set(edges))
            self.assertEqual(len(hull["faces"]), 2 * len(hull["points"]) - 4)   # Euler


class Quiet(Place):
    def test_quiet_prints_nothing_and_still_works(self):
        result = self.expect(0, "run", self.scenario, "--quiet")
        self.assertEqual(result.stdout + result.stderr, "")
        self.assertEqual(self.files(), ["out/short.h5"])
        result = self.expect(0, "inspect", "models/demo-finger.yaml", "--quiet")
        self.assertEqual(result.stdout + result.stderr, "")

    def test_quiet_does_not_hide_errors_or_the_exit_code(self):
        self.assertNotEqual(self.expect(2, "run", "none.yaml", "--quiet").stderr, "")
        failing = self.write("failing", SHORT.replace("10 deg", "89 deg"))
        result = self.expect(1, "run", failing, "--quiet")
        self.assertEqual(result.stdout + result.stderr, "")


class Repetition(Place):
    def test_two_runs_give_the_same_bytes(self):
        for name in ("a", "b"):
            self.expect(0, "run", self.scenario, "--quiet", "--out", f"{name}.h5")
        first = (self.folder / "a.h5").read_bytes()
        self.assertGreater(len(first), 10000)
        self.assertTrue(first == (self.folder / "b.h5").read_bytes(), "the two records differ")
        # The comparison sees a change of a millionth.
        for name, voltage in (("c", "4 V"), ("d", "4.000004 V")):
            self.expect(0, "run", self.scenario, "--quiet", "--out", f"{name}.h5", "--set", f"timeline.0.voltage={voltage}")
        self.assertFalse(self.same("c.h5", "d.h5"))

    def test_a_record_runs_again_to_the_bit_without_its_files(self):
        settings = ("--set", "timeline.0.voltage=5 V")
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5", *settings)
        shutil.rmtree(self.folder / "models")
        shutil.rmtree(self.folder / "scenarios")
        self.expect(0, "run", "a.h5", "--quiet", "--out", "b.h5")
        self.assertTrue(self.same("a.h5", "b.h5"))
        self.assertTrue((self.folder / "a.h5").read_bytes() == (self.folder / "b.h5").read_bytes(), "the two records differ")

    def test_a_record_is_not_replaced_by_its_own_second_run(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5")
        before = (self.folder / "a.h5").read_bytes()
        refused = self.expect(2, "run", "a.h5", "--out", "./a.h5")
        self.assertIn("needed: another name, with --out", refused.stderr)
        self.assertEqual(before, (self.folder / "a.h5").read_bytes())

    def test_a_record_takes_further_changes(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5", "--set", "timeline.0.voltage=5 V")
        self.expect(0, "run", "a.h5", "--quiet", "--out", "b.h5", "--set", "duration=0.3 s")
        self.expect(0, "run", self.scenario, "--quiet", "--out", "c.h5", "--set", "timeline.0.voltage=5 V", "--set", "duration=0.3 s")
        self.assertTrue(self.same("b.h5", "c.h5"))
        self.assertAlmostEqual(self.series(self.folder / "b.h5")[2], 0.3, delta=1e-12)

    @unittest.skipUnless(h5py, "h5py is not installed")
    def test_h5py_reads_the_record(self):
        self.expect(0, "run", self.scenario, "--quiet", "--out", "a.h5")
        _, rows, last, _ = self.series(self.folder / "a.h5")
        with h5py.File(self.folder / "a.h5") as record:
            self.assertEqual(record["time"].shape, (rows,))
            self.assertEqual(record["time"][-1], last)
            self.assertEqual(record["joints/MCP/angle"].attrs["units"], "radian")
            self.assertGreaterEqual(record["summary/joint_angle.MCP"][()], 0.17)
            self.assertEqual(record["inputs/files/file_000"].asstr()[()], SHORT)


class UnusablePlaces(Place):
    def refused(self, out):
        result = self.expect(2, "run", self.scenario, "--out", out)
        self.assertEqual(result.stdout, "")
        return result.stderr

    def test_a_place_under_a_regular_file(self):
        (self.folder / "file").write_text("mine")
        self.assertIn("file", self.refused("file/run.h5"))
        self.assertIn("file", self.refused("file/deeper/run.h5"))
        self.assertEqual(self.files(), ["file"])
        self.assertEqual((self.folder / "file").read_text(), "mine")

    def test_a_folder(self):
        (self.folder / "folder").mkdir()
        self.assertIn("directory", self.refused("folder"))
        self.assertEqual(self.files(), [])

    @unittest.skipIf(os.geteuid() == 0, "the superuser may write everywhere")
    def test_a_folder_without_permission(self):
        (self.folder / "closed").mkdir(mode=0o500)
        self.assertIn("closed", self.refused("closed/run.h5"))
        self.assertEqual(self.files(), [])

    def test_bad_input_leaves_an_earlier_record_alone(self):
        self.expect(0, "run", self.scenario, "--quiet")
        before = (self.folder / "out/short.h5").read_bytes()
        self.expect(2, "run", self.scenario, "--set", "require.0.quantity=none")
        self.assertTrue((self.folder / "out/short.h5").read_bytes() == before)
        self.assertEqual(self.files(), ["out/short.h5"])


class FullDisk(Place):
    """The limit on a file's size, as 'ulimit -f' sets it, stands for a disk that is full."""

    def limited(self, size, *arguments):
        result = self.run_tool("run", self.scenario, *arguments,
                               preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (size, size)))
        self.assertNotIn(result.returncode, (0, 1), result.stdout)
        self.assertGreater(result.returncode, 0, "ended by a signal")
        self.assertRegex(result.stderr, r"^cannot write the record .*\n(.*\n)*  hint: look for free space")
        self.assertEqual(result.stdout, "")
        return result

    def test_full_from_the_start(self):
        self.limited(20000)
        self.assertEqual(self.files(), [])

    def test_full_on_the_way_keeps_what_was_written(self):
        (self.folder / "out").mkdir()
        (self.folder / "out/short.h5").write_text("an older file")
        # The partial file grows by 16384 rows at a time: let it grow once, not twice.
        self.expect(0, "run", self.scenario, "--quiet", "--out", "size.h5")
        width = 8 * sum(len(line.split()) - 1 for line in self.series(self.folder / "size.h5", 1)[3].splitlines())
        os.remove(self.folder / "size.h5")
        result = self.limited(int(1.5 * 16384 * width), "--set", "duration=60 s", "--set", "solver.max_step=1 ms")
        self.assertRegex(result.stderr, r"kept: \d+ rows up to t = ")
        self.assertEqual((self.folder / "out/short.h5").read_text(), "an older file")
        self.assertEqual(self.files(), ["out/short.h5", "out/short.partial.h5"])
        outcome, rows, _, _ = self.series(self.folder / "out/short.partial.h5", 0)
        self.assertEqual((outcome, rows), ("partial", int(re.search(r"kept: (\d+) rows", result.stderr)[1])))


def run_on_terminal(arguments, folder, until, patience=120):
    """Runs with standard error on a terminal. Returns samples (wall time, share shown) and the exit code; `until(samples)`
    true kills the run with SIGKILL."""
    ours, theirs = pty.openpty()
    process = subprocess.Popen([TOOL, *map(str, arguments)], cwd=folder, stdin=subprocess.DEVNULL,
                               stdout=subprocess.DEVNULL, stderr=theirs)
    os.close(theirs)
    samples, begin, text = [], time.monotonic(), ""
    killed_at = None
    try:
        while time.monotonic() - begin < patience:
            if select.select([ours], [], [], 0.02)[0]:
                try:
                    chunk = os.read(ours, 65536).decode(errors="replace")
                except OSError:  # the other end is closed
                    break
                text += chunk
                for share in re.findall(r"(\d+) %", chunk):
                    samples.append((time.monotonic(), int(share) / 100))
            if killed_at is None and until(samples, time.monotonic() - begin):
                killed_at = time.monotonic()
                process.send_signal(signal.SIGKILL)
    finally:
        if process.poll() is None and killed_at is None:
            try:
                process.wait(5)
            except subprocess.TimeoutExpired:
                process.kill()
        code = process.wait()
        os.close(ours)
    return samples, code, killed_at, text


class KilledRun(Place):
    DURATION = 600

    def setUp(self):
        super().setUp()
        # Small steps to the end: some tens of seconds of work. Few rows, so that time and not their number brings them to disk.
        self.arguments = ["run", self.scenario, "--set", "solver.max_step=1 ms", "--set", "record.interval=500 ms"]
        self.samples, self.code, self.killed_at, _ = run_on_terminal(
            [*self.arguments, "--set", f"duration={self.DURATION} s"], self.folder, self.far_enough)
        self.partial = self.folder / "out/short.partial.h5"

    @staticmethod
    def far_enough(samples, spent):
        """The bar has shown two percent a good second ago."""
        return spent > 2.5 and any(share >= 0.02 and when <= time.monotonic() - 1.1 for when, share in samples)

    def test_a_killed_run_leaves_a_readable_partial_file_nearly_up_to_the_kill(self):
        self.assertEqual(self.code, -signal.SIGKILL)
        self.assertEqual(self.files(), ["out/short.partial.h5"])
        outcome, rows, last, series = self.series(self.partial, 60)
        self.assertEqual(outcome, "partial")
        self.assertLess(last, self.DURATION)
        # What the bar had shown a second before the kill is in the file. The bar rounds to whole percent.
        shown = [share for when, share in self.samples if when <= self.killed_at - 1.0]
        self.assertGreaterEqual(max(shown), 0.02, "the run was killed too early to tell anything")
        self.assertGreaterEqual(last, (max(shown) - 0.005) * self.DURATION)

        # The rows are those of the run as it goes on when nobody kills it.
        self.assertGreater(rows, 60)
        self.expect(0, *self.arguments, "--set", "duration=20 s", "--quiet", "--out", "whole.h5")
        _, _, _, whole = self.series(self.folder / "whole.h5", 60)
        self.assertTrue(series == whole)

        # A new run to the same name takes the partial file's place.
        self.expect(0, *self.arguments, "--quiet")
        self.assertEqual(self.files(), ["out/short.h5", "whole.h5"])

    @unittest.skipUnless(h5py, "h5py is not installed")
    def test_h5py_opens_the_partial_file(self):
        _, rows, last, _ = self.series(self.partial, 0)
        with h5py.File(self.partial) as record:
            n_rows, n_events = record["committed"][:]
            self.assertEqual(record.attrs["outcome"] if isinstance(record.attrs["outcome"], str)
                             else record.attrs["outcome"].decode(), "partial")
            self.assertEqual(n_rows, rows)
            self.assertGreaterEqual(n_events, 1)
            times = record["time"][:n_rows]
            self.assertEqual(times[0], 0)
            self.assertEqual(times[-1], last)
            self.assertTrue((times[1:] > times[:-1]).all())
            angle = record["joints/MCP/angle"][:n_rows]
            self.assertGreater(angle.max(), 0.5)
            self.assertTrue((abs(angle) < 2).all())


class Progress(Place):
    LONG = ("--set", "duration=20 s", "--set", "solver.max_step=1 ms")

    def test_a_terminal_shows_a_bar(self):
        # Several seconds of work, for the bar comes ten times a second at most.
        samples, code, _, text = run_on_terminal(["run", self.scenario, *self.LONG, "--set", "duration=100 s"], self.folder,
                                                 lambda *_: False)
        self.assertEqual(code, 0)
        shares = [share for _, share in samples]
        self.assertGreater(len(shares), 1)
        self.assertEqual(shares, sorted(shares))
        self.assertTrue(text.endswith("\r\x1b[K"), "the bar is not wiped away")

    def test_a_pipe_shows_none(self):
        self.assertEqual(self.expect(0, "run", self.scenario, *self.LONG).stderr, "")

    def test_quiet_shows_none_on_a_terminal_either(self):
        samples, code, _, text = run_on_terminal(["run", self.scenario, "--quiet", *self.LONG], self.folder, lambda *_: False)
        self.assertEqual((samples, code, text), ([], 0, ""))


LIMIT = """sinewright: limit
name: least voltage
scenario: short.yaml
search: {key: timeline.0.voltage, from: 1 V, to: 6 V, samples: 4}
tolerance: 0.02
"""


class Limit(Place):
    def setUp(self):
        super().setUp()
        self.limit = self.write("least", LIMIT)

    def test_an_answer_has_unit_error_and_the_runs_behind_it(self):
        result = self.expect(0, "limit", self.limit)
        self.assertRegex(result.stdout, r"timeline\.0\.voltage = [\d.]+ V ± [\d.]+ V")
        self.assertIn("is asked", result.stdout)
        self.assertIn("not certification", result.stdout)
        self.assertEqual(self.files(), ["out/least.limit.h5"])

    def test_the_result_is_the_same_for_any_number_of_threads_to_the_byte(self):
        texts = [self.expect(0, "limit", self.limit, "--json", "--threads", n, "--out", "one.h5").stdout for n in (1, 2, 3)]
        self.assertEqual(texts[0], texts[1])
        self.assertEqual(texts[0], texts[2])
        first = (self.folder / "one.h5").read_bytes()
        self.expect(0, "limit", self.limit, "--threads", 1, "--out", "one.h5")
        self.assertEqual(first, (self.folder / "one.h5").read_bytes())

    def test_json_tells_every_run(self):
        told = json.loads(self.expect(0, "limit", self.limit, "--json").stdout)
        (limit,) = told["limits"]
        self.assertEqual(told["unit"], "V")
        self.assertTrue(limit["found"] and limit["settled"] and limit["monotone"])
        self.assertLessEqual(limit["error"], 0.02 * limit["value"] * 1.01)
        holds = [run["value"] for run in limit["runs"] if run["holds"]]
        fails = [run["value"] for run in limit["runs"] if not run["holds"]]
        self.assertGreater(limit["value"], max(fails))
        self.assertLess(limit["value"], min(holds))

    def test_1_when_there_is_no_limit_within_the_range(self):
        result = self.expect(1, "limit", self.limit, "--set", "search.from=5 V")
        self.assertIn("every sample holds", result.stdout)

    def test_2_for_bad_files_and_names(self):
        self.assertIn("least.yaml", self.expect(2, "limit", self.write("bad", LIMIT.replace("4}", "2}"))).stderr.replace("bad", "least"))
        self.assertIn("is not a known key", self.expect(2, "limit", self.limit, "--set", "search.key=duratoin").stderr)
        self.assertIn("a limit file is wanted", self.expect(2, "limit", self.scenario).stderr)
        self.assertIn("requires nothing", self.expect(2, "limit", self.limit, "--set", "scenario.require=[]").stderr)

    def test_3_when_no_run_can_go_on(self):
        stuck = ["--set", "scenario.solver.min_step=5 ms", "--set", "scenario.solver.tolerance=1e-9"]
        self.assertIn("ended early", self.expect(3, "limit", self.limit, *stuck).stdout)

    def test_the_record_names_itself_when_it_is_taken_for_a_run(self):
        self.expect(0, "limit", self.limit, "--quiet")
        self.assertIn("record of a limit", self.expect(2, "run", "out/least.limit.h5").stderr)

    @unittest.skipIf(h5py is None, "h5py is not installed")
    def test_the_record_holds_every_run_with_its_overrides(self):
        told = json.loads(self.expect(0, "limit", self.limit, "--json").stdout)["limits"][0]["runs"]
        with h5py.File(self.folder / "out/least.limit.h5") as record:
            limit = record["limits/limit_000"]
            for i, run in enumerate(told):
                kept = limit[f"run_{i:03}"]
                self.assertEqual(kept["value"][()], run["value"])
                self.assertEqual(list(kept.attrs["overrides"]), run["overrides"])
                self.assertIn("joint_angle.MCP", kept["summary"])
        self.assertEqual([name for name in self.files() if "packing" in name], [])


STUDY = """sinewright: study
name: few
runs:
  close: {scenario: short.yaml, change: [duration=0.15 s]}
vary:
  radius: {key: model.drives.flexor.pulley.radius, from: 2 mm, to: 5 mm}
  voltage: {key: close.timeline.0.voltage, from: 3 V, to: 6 V}
outcomes: [close.joint_angle.MCP]
"""


class StudyPlace(Place):
    def study(self, kind, name="few", text=STUDY):
        return self.write(name, text + kind + "\n")

    def bytes_of(self, name):
        return (self.folder / name).read_bytes()

    def rows_of(self, name):
        with (self.folder / name).open(encoding="utf-8-sig") as file:
            return list(csv.DictReader(file))


class Study(StudyPlace):
    def test_a_sample_gives_a_table_that_other_programs_read(self):
        result = self.expect(0, "study", self.study("sample: {runs: 16}"))
        self.assertIn("16 designs", result.stdout)
        self.assertIn("not certification", result.stdout)
        self.assertEqual(self.files(), ["out/few.study.csv", "out/few.study.h5"])
        rows = self.rows_of("out/few.study.csv")
        self.assertEqual(len(rows), 16)
        for row in rows:
            self.assertTrue(2 <= float(row["radius [mm]"]) <= 5 and 3 <= float(row["voltage [V]"]) <= 6)
            self.assertEqual(row["state"], "met" if float(row["close.joint_angle.MCP [deg]"]) >= 10 else "missed")
        if h5py:
            with h5py.File(self.folder / "out/few.study.h5") as table:
                self.assertEqual(table["varied/radius"].attrs["units"], "m")
                for i, row in enumerate(rows):
                    self.assertAlmostEqual(1e3 * table["varied/radius"][i], float(row["radius [mm]"]), 9)
        # A row by hand: the same scenario with the same values.
        row = rows[5]
        self.expect(0 if row["state"] == "met" else 1, "run", self.scenario, "--out", "row.h5", "--quiet", "--set", "duration=0.15 s",
                    "--set", f"model.drives.flexor.pulley.radius={row['radius [mm]']} mm", "--set", f"timeline.0.voltage={row['voltage [V]']} V")
        self.expect(0, "export", "row.h5", "--table", "summary", "--display", "--out", "row.csv")
        summary = {line["key"]: line for line in self.rows_of("row.csv")}
        self.assertAlmostEqual(float(summary["joint_angle.MCP"]["value"]), float(row["close.joint_angle.MCP [deg]"]), 6)

    def test_json_has_findings_with_units_and_the_best_design(self):
        told = json.loads(self.expect(0, "study", self.study("optimise: {maximise: [close.joint_angle.MCP], runs: 60}"), "--json").stdout)
        self.assertEqual(told["kind"], "optimise")
        (best,) = told["best"]
        self.assertEqual(best["outcomes"]["close.joint_angle.MCP"]["unit"], "rad")
        self.assertGreaterEqual(best["outcomes"]["close.joint_angle.MCP"]["value"], told["findings"]["close.joint_angle.MCP.greatest"]["value"])
        self.assertGreater(best["varied"]["voltage"]["value"], 5.9)

    def test_no_design_that_meets_the_requirements_is_exit_code_1(self):
        text = STUDY + "require:\n  - {quantity: close.joint_angle.MCP, at_least: 300 deg}\n"
        result = self.expect(1, "study", self.study("optimise: {maximise: [close.joint_angle.MCP], runs: 20}", text=text))
        self.assertIn("NO DESIGN MEETS ALL REQUIREMENTS", result.stdout)
        self.assertIn("missed: close.joint_angle.MCP at least 300 deg", result.stdout)

    def test_a_tenth_of_the_designs_that_fail_are_rows_with_their_reason(self):
        text = STUDY.replace("from: 2 mm", "from: -0.3333 mm").replace("to: 5 mm", "to: 3 mm")
        self.expect(0, "study", self.study("sample: {runs: 40, points: latin_hypercube}", text=text))
        rows = self.rows_of("out/few.study.csv")
        self.assertEqual(len(rows), 40)
        for row in rows:
            self.assertEqual(row["state"] == "invalid", float(row["radius [mm]"]) <= 0)
            if row["state"] == "invalid":
                self.assertIn("pulley.radius", row["reason"])
                self.assertEqual(row["close.joint_angle.MCP [deg]"], "")
        self.assertEqual(sum(row["state"] == "invalid" for row in rows), 4)

    def test_set_reaches_the_study_the_model_and_one_run(self):
        study = self.study("sample: {runs: 4}")
        told = json.loads(self.expect(0, "study", study, "--json", "--set", "sample.runs=6", "--set", "close.duration=0.05 s",
                                      "--set", "model.drives.flexor.current_limit=0.2 A").stdout)
        self.assertEqual(told["rows"], 6)
        plain = json.loads(self.expect(0, "study", study, "--json").stdout)
        self.assertLess(told["drawn"]["close.joint_angle.MCP"]["value"], plain["drawn"]["close.joint_angle.MCP"]["value"])
        self.assertIn("clsoe is not a known key", self.expect(2, "study", study, "--set", "clsoe.duration=1 s").stderr)

    def test_a_wrong_outcome_names_place_and_the_nearest(self):
        result = self.expect(2, "study", self.study("grid: {}", text=STUDY.replace("joint_angle.MCP]", "joint_angel.MCP]")))
        self.assertIn("few.yaml:8:1: ", result.stderr)
        self.assertIn("close.joint_angle.MCP", result.stderr)
        self.assertEqual(self.files(), [])

    def test_the_table_is_the_same_for_any_number_of_threads_to_the_byte(self):
        study = self.study("sample: {runs: 30}")
        for n in (1, 2, 5):
            self.expect(0, "study", study, "--threads", n, "--out", f"with{n}.h5", "--quiet")
        self.assertEqual(self.bytes_of("with1.h5"), self.bytes_of("with2.h5"))
        self.assertEqual(self.bytes_of("with1.h5"), self.bytes_of("with5.h5"))
        self.assertEqual(self.bytes_of("with1.csv"), self.bytes_of("with5.csv"))


class StudyResume(StudyPlace):
    """Tables that were stopped and gone on with are those that nobody stopped."""

    def begin(self, *arguments):
        return subprocess.Popen([TOOL, *map(str, arguments)], cwd=self.folder, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL,
                                stderr=subprocess.PIPE, text=True)

    def test_killed_at_fifty_random_moments_it_loses_nothing_and_repeats_nothing(self):
        study = self.study("sample: {runs: 700}")
        self.expect(0, "study", study, "--quiet", "--out", "whole.h5")
        journal = self.folder / "killed.journal"
        # How long a start takes until its first rows are there, on this machine now.
        begin = time.monotonic()
        process = self.begin("study", study, "--threads", 1, "--out", "killed.h5")
        while not (journal.exists() and journal.read_bytes().count(b"\n") > 4) and time.monotonic() - begin < 60:
            time.sleep(0.001)
        usual = time.monotonic() - begin
        process.kill()
        process.communicate()
        moments = random.Random(20)
        kills, done = 0, []
        while kills < 50:
            resume = ["--resume"] if journal.exists() else []
            process = self.begin("study", study, "--threads", 1 + kills % 2, "--out", "killed.h5", *resume)
            # Should the machine have become quicker, the 700 rows must last for all kills.
            end = time.monotonic() + moments.uniform(0, 2 * usual)
            while time.monotonic() < end and not (journal.exists() and journal.read_bytes().count(b"\n") > len(done) + 13):
                time.sleep(0.0005)
            process.kill()
            self.assertEqual(process.wait(), -signal.SIGKILL, process.stderr.read())
            process.stderr.close()
            kills += 1
            lines = journal.read_bytes().split(b"\n")[:-1] if journal.exists() else []
            self.assertEqual(lines[:len(done)], done, "a finished row was lost or written again")
            self.assertEqual(len({line.split(b" ")[1] for line in lines[1:]}), max(0, len(lines) - 1), "a row was run twice")
            done = lines
        self.assertGreater(len(done), 50, "it was killed too early to tell anything")
        self.assertFalse((self.folder / "killed.h5").exists())
        self.expect(0, "study", study, "--resume", "--out", "killed.h5", "--quiet")
        self.assertEqual(self.bytes_of("killed.h5"), self.bytes_of("whole.h5"))
        self.assertFalse(journal.exists())

    def test_an_optimisation_goes_on_to_the_same_optimum(self):
        study = self.study("optimise: {maximise: [close.joint_angle.MCP], runs: 80, robustness: {runs: 20, vary: "
                           "{radius: {key: model.drives.flexor.pulley.radius, plus_minus: 0.1 mm}}}}")
        self.expect(0, "study", study, "--quiet", "--out", "whole.h5")
        for _ in range(6):
            process = self.begin("study", study, "--out", "killed.h5", *(["--resume"] if (self.folder / "killed.journal").exists() else []))
            time.sleep(0.15)
            process.kill()
            process.communicate()
        if not (self.folder / "killed.h5").exists():  # a quick machine may have come to the end
            self.expect(0, "study", study, "--resume", "--out", "killed.h5", "--quiet")
        self.assertEqual(self.bytes_of("killed.h5"), self.bytes_of("whole.h5"))

    def test_ctrl_c_keeps_what_is_finished_and_says_how_to_go_on(self):
        study = self.study("sample: {runs: 1000}")
        process = self.begin("study", study)
        journal = self.folder / "out/few.study.journal"
        begin = time.monotonic()
        while not (journal.exists() and journal.read_bytes().count(b"\n") > 20) and time.monotonic() - begin < 60:
            time.sleep(0.01)
        process.send_signal(signal.SIGINT)
        _, told = process.communicate(timeout=30)
        self.assertEqual(process.returncode, 3)
        self.assertRegex(told, r"stopped with \d+ rows done, which are kept")
        self.assertIn("--resume", told)
        self.assertEqual(self.files(), ["out/few.study.journal"])
        self.assertEqual(journal.read_bytes().count(b"\n") - 1, int(re.search(r"with (\d+) rows", told).group(1)))

    def test_what_is_there_of_another_study_is_not_taken(self):
        study = self.study("sample: {runs: 1000}")
        process = self.begin("study", study)
        time.sleep(0.5)
        # Nobody else may write to it meanwhile.
        self.assertIn("another study is writing this", self.expect(2, "study", study).stderr)
        process.kill()
        process.communicate()
        self.assertIn("left by another study", self.expect(2, "study", study, "--resume", "--set", "sample.seed=2").stderr)
        self.scenario.write_text(SHORT.replace("0.02 s", "0.03 s"))
        self.assertIn("left by another study", self.expect(2, "study", study, "--resume").stderr)
        self.assertIn("nothing to resume", self.expect(2, "study", study, "--resume", "--out", "elsewhere.h5").stderr)


def children_of(parent):
    """Process numbers, from Linux's table of processes."""
    for place in Path("/proc").glob("[0-9]*/stat"):
        try:
            fields = place.read_text().rsplit(")", 1)[1].split()
        except (FileNotFoundError, ProcessLookupError):
            continue
        if int(fields[1]) == parent:
            yield int(place.parent.name)


MPIRUN = os.environ.get("SINEWRIGHT_MPIRUN", "")


class StudyRanks(StudyPlace):
    """Several processes by MPI; what they share must not show."""

    def launch(self, n, *arguments):
        # Without binding, which would tie each process with all its threads to one core. btl tcp: as between machines. plm isolated: mpirun
        # looks for ssh even where all processes are on this machine.
        return [MPIRUN, "--oversubscribe", "--bind-to", "none", "--mca", "plm", "isolated", "--mca", "btl", "tcp,self", "-n", str(n), TOOL, *map(str, arguments)]

    def environment(self):
        return dict(os.environ, OMPI_ALLOW_RUN_AS_ROOT="1", OMPI_ALLOW_RUN_AS_ROOT_CONFIRM="1")

    def expect_ranks(self, code, n, *arguments):
        result = subprocess.run(self.launch(n, *arguments), cwd=self.folder, text=True, stdin=subprocess.DEVNULL, capture_output=True,
                                timeout=240, env=self.environment())
        self.assertEqual(result.returncode, code, result.stdout + result.stderr)
        return result

    def test_two_and_three_processes_equal_one_to_the_byte(self):
        for name, kind in (("few", "sample: {runs: 60}"), ("best", "optimise: {maximise: [close.joint_angle.MCP], runs: 60, robustness: {runs: 10, "
                           "vary: {radius: {key: model.drives.flexor.pulley.radius, plus_minus: 0.1 mm}}}}")):
            study = self.study(kind, name)
            self.expect(0, "study", study, "--threads", 1, "--out", "one.h5", "--quiet")
            told = self.expect_ranks(0, 2, "study", study, "--threads", 1, "--out", "two.h5")
            self.assertEqual(told.stdout.count("not certification"), 1)
            self.expect_ranks(0, 3, "study", study, "--threads", 2, "--out", "three.h5", "--quiet")
            self.assertEqual(self.bytes_of("one.h5"), self.bytes_of("two.h5"))
            self.assertEqual(self.bytes_of("one.h5"), self.bytes_of("three.h5"))

    def test_a_mistake_is_told_once_and_ends_all(self):
        result = self.expect_ranks(2, 2, "study", self.study("grid: {}", text=STUDY.replace("joint_angle.MCP]", "joint_angel.MCP]")))
        self.assertEqual(result.stderr.count("there is no outcome"), 1)

    def test_a_killed_follower_costs_no_finished_row(self):
        study = self.study("sample: {runs: 1500}")
        process = subprocess.Popen(self.launch(2, "study", study, "--threads", 1, "--out", "two.h5"), cwd=self.folder, env=self.environment(),
                                   stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, start_new_session=True)
        journal = self.folder / "two.journal"
        begin = time.monotonic()
        while not (journal.exists() and journal.read_bytes().count(b"\n") > 60) and time.monotonic() - begin < 60:
            time.sleep(0.01)
        ranks = sorted(child for child in children_of(process.pid) if b"study" in Path(f"/proc/{child}/cmdline").read_bytes())
        self.assertEqual(len(ranks), 2)
        os.kill(ranks[-1], signal.SIGKILL)
        self.assertNotEqual(process.wait(60), 0)
        done = journal.read_bytes().count(b"\n") - 1
        self.assertGreater(done, 50)
        told = self.expect(0, "study", study, "--resume", "--out", "two.h5")
        self.assertEqual(int(re.search(r"(\d+) rows in", told.stdout).group(1)), 1500 - done)
        self.expect(0, "study", study, "--out", "one.h5", "--quiet")
        self.assertEqual(self.bytes_of("one.h5"), self.bytes_of("two.h5"))

    def test_two_machines_in_networks_of_their_own(self):
        study = self.study("sample: {runs: 60}")
        self.expect(0, "study", study, "--threads", 1, "--out", "one.h5", "--quiet")
        result = subprocess.run(["bash", str(SOURCE / "tests/command/two_machines.sh"), MPIRUN, TOOL, "study", str(study), "--threads", "1", "--out", "two.h5", "--quiet"],
                                cwd=self.folder, text=True, capture_output=True, timeout=200, env=self.environment())
        if result.returncode == 77:
            self.skipTest("network namespaces cannot be made here: " + result.stderr)
        self.assertEqual(result.returncode, 0, result.stdout + result.stderr)
        self.assertEqual(self.bytes_of("one.h5"), self.bytes_of("two.h5"))


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0], "-v", *sys.argv[1:]])
