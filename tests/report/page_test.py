"""Opens the review in a real headless Chromium and uses it as a reader does.

usage: page_test.py [TestClass ...]; environment: SINEWRIGHT (the program), SINEWRIGHT_SOURCE_DIR (where models/ is),
SINEWRIGHT_BROWSER (a Chromium, where it is not found by itself). Standard library only.
"""

import base64
import json
import math
import os
import re
import shutil
import struct
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

from browser import Browser, find

TOOL = os.environ["SINEWRIGHT"]
SOURCE = Path(os.environ["SINEWRIGHT_SOURCE_DIR"])
SKIPPED = 77   # as tests/report/CMakeLists.txt tells CTest

HOSTILE = "<img src=x onerror=\"document.title='owned'\">\"'& \u202egnp.exe \U0001f9be </script><b>" + "long" * 30


class Page(unittest.TestCase):
    """A folder with records and reviews, and one browser for all tests of the class."""

    flags = ()

    @classmethod
    def setUpClass(cls):
        cls.folder = Path(tempfile.mkdtemp(prefix="sinewright-page-"))
        cls.addClassCleanup(shutil.rmtree, cls.folder)
        cls.prepare()
        cls.browser = cls.enterClassContext(Browser(*cls.flags)) if hasattr(cls, "enterClassContext") else cls._enter(Browser(*cls.flags))

    @classmethod
    def _enter(cls, context):   # Python before 3.11
        cls.addClassCleanup(context.__exit__, None, None, None)
        return context.__enter__()

    @classmethod
    def prepare(cls):
        cls.grasp = cls.run_scenario("grasp-medium")
        cls.review = cls.report("review.html", cls.grasp)

    def setUp(self):
        self.browser.size(1280, 900)
        self.browser.dark(False)
        self.milliseconds = self.browser.open(self.review)

    @classmethod
    def tool(cls, *arguments, codes=(0, 1)):
        done = subprocess.run([TOOL, *map(str, arguments)], cwd=cls.folder, text=True, capture_output=True, timeout=280)
        if done.returncode not in codes:
            raise AssertionError(f"{arguments}: exit code {done.returncode}\n{done.stdout}\n{done.stderr}")
        return done.stdout

    @classmethod
    def run_scenario(cls, scenario, *options, name=None):
        path = scenario if isinstance(scenario, Path) else SOURCE / "scenarios" / f"{scenario}.yaml"
        record = cls.folder / f"{name or path.stem}.h5"
        cls.tool("run", path, "--quiet", "--out", record, *options)
        return record

    @classmethod
    def report(cls, name, *records):
        page = cls.folder / name
        cls.tool("report", *records, "--quiet", "-o", page, codes=(0,))
        return page

    def data(self):
        """What the page was given."""
        text = re.search(r'<script type="application/json" id="data">(.*?)</script>', self.review.read_text(), re.S).group(1)
        return json.loads(text)

    def run_js(self, expression):
        return self.browser.run(expression)

    def time(self):
        return float(self.run_js("document.getElementById('review').dataset.time"))

    def playing(self):
        return self.run_js("document.getElementById('review').dataset.playing") == "true"

    def times_of_charts(self):
        return self.run_js("[...document.querySelectorAll('.chart')].map(c => Number(c.dataset.time))")

    def settle(self):
        self.run_js("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(1))))")

    def no_complaints(self):
        self.assertEqual(self.browser.complaints(), [])


def floats(array):
    data = base64.b64decode(array["base64"])
    return struct.unpack(f"<{len(data) // 4}f", data)


def digits(value):
    """Four significant digits, as the page writes numbers of ordinary size."""
    if value == 0:
        return "0"
    return f"{value:.{max(0, 3 - math.floor(math.log10(abs(value))))}f}".replace("-", "\u2212")


def turned(pose, point):
    """A point of a body where the pose (position, quaternion x y z w) puts it."""
    px, py, pz, x, y, z, w = pose
    a, b, c = point
    return (px + (1 - 2 * (y * y + z * z)) * a + 2 * (x * y - z * w) * b + 2 * (x * z + y * w) * c,
            py + 2 * (x * y + z * w) * a + (1 - 2 * (x * x + z * z)) * b + 2 * (y * z - x * w) * c,
            pz + 2 * (x * z - y * w) * a + 2 * (y * z + x * w) * b + (1 - 2 * (x * x + y * y)) * c)


class Opening(Page):
    def test_opens_from_disk_without_a_complaint_and_without_a_request(self):
        self.settle()
        self.no_complaints()
        asked = [url for url in self.browser.requests() if not url.startswith(("data:", "blob:"))]
        self.assertEqual(asked, [self.review.resolve().as_uri()], "only the file itself")
        text = self.review.read_text()
        self.assertIn("default-src 'none'", text)
        self.assertEqual(text.lower().count("</script"), text.lower().count("<script"), "no script element ends early")

    def test_a_request_would_have_been_seen_and_is_forbidden(self):
        self.run_js("fetch('https://example.invalid/').catch(() => 0)")
        self.run_js("document.body.append(Object.assign(new Image(), {src: 'https://example.invalid/x.png'}))")
        self.browser.wait("new Promise(done => setTimeout(() => done(true), 200))")
        self.assertTrue(any("Content Security Policy" in said for said in self.browser.complaints()), self.browser.complaints())

    def test_every_section_of_the_review_is_there(self):
        titles = self.run_js("[...document.querySelectorAll('section > h2')].map(h => h.textContent.replace(/^\\d+/, ''))")
        for title in ["Verdict", "The finger in motion", "Curves", "Margins: what breaks first", "The model",
                      "Cautions and limits of validity", "All inputs"]:
            self.assertIn(title, titles)
        self.assertIn("not certification", self.run_js("document.querySelector('.caution').textContent"))

    def test_everything_pressable_has_a_name(self):
        nameless = self.run_js("[...document.querySelectorAll('button, select, input, [tabindex=\"0\"]')]"
                               ".filter(e => !(e.textContent.trim() || e.getAttribute('aria-label') || e.closest('label')?.textContent.trim()))"
                               ".map(e => e.outerHTML.slice(0, 120))")
        self.assertEqual(nameless, [])


class Playback(Page):
    def test_play_moves_the_finger_and_pause_stops_it(self):
        still = self.browser.picture(".picture")
        self.assertEqual(still, self.browser.picture(".picture"), "a resting picture rests")
        self.browser.click("#play")
        self.browser.wait("Number(document.getElementById('review').dataset.time) > 0.2")
        self.assertTrue(self.playing())
        self.browser.click("#play")
        self.assertFalse(self.playing())
        self.settle()
        self.assertNotEqual(still, self.browser.picture(".picture"))
        at = self.time()
        self.browser.wait("new Promise(done => setTimeout(() => done(true), 200))")
        self.assertEqual(at, self.time())
        self.no_complaints()

    def test_it_plays_to_the_end_and_stops_there(self):
        self.run_js("(() => { const s = document.getElementById('speed'); s.value = '2'; s.dispatchEvent(new Event('change')); })()")
        self.browser.click("#play")
        self.browser.wait("document.getElementById('review').dataset.playing === 'false'", 20)
        self.assertAlmostEqual(self.time(), floats(self.data()["records"][0]["time"])[-1], places=5)

    def test_scrubbing_sets_the_cursor_in_every_chart(self):
        self.browser.click(".scrub")
        duration = floats(self.data()["records"][0]["time"])[-1]
        self.assertAlmostEqual(self.time(), duration / 2, delta=0.02 * duration)
        times = self.times_of_charts()
        self.assertGreaterEqual(len(times), 6)
        self.assertEqual(set(times), {self.time()})
        places = self.run_js("[...document.querySelectorAll('.time-cursor')].map(c => (c.getBoundingClientRect().left - c.parentElement.getBoundingClientRect().left)"
                             " / c.parentElement.clientWidth)")
        for place in places:
            self.assertAlmostEqual(place, self.time() / duration, delta=0.01)

    def test_a_click_in_a_chart_sets_the_time_everywhere(self):
        self.browser.click(".chart[data-chart='tensions'] .u-over")
        duration = floats(self.data()["records"][0]["time"])[-1]
        self.assertAlmostEqual(self.time(), duration / 2, delta=0.02 * duration)
        self.assertEqual(set(self.times_of_charts()), {self.time()})

    def test_hovering_shows_the_values_under_the_mouse_with_their_unit(self):
        self.run_js("document.querySelector('#curves').scrollIntoView({block: 'start', behavior: 'instant'})")
        x, y = self.run_js("(() => { const b = document.querySelector('.chart .u-over').getBoundingClientRect(); return [b.left + 0.75 * b.width, b.top + b.height / 2]; })()")
        values = "[...document.querySelectorAll('.chart:first-child .series[aria-pressed=true] .figure')].map(f => f.textContent)"
        before = self.run_js(values)
        self.browser.send("Input.dispatchMouseEvent", type="mouseMoved", x=x, y=y)
        self.settle()
        after = self.run_js(values)
        self.assertNotEqual(before, after)
        self.assertTrue(all(text.endswith("deg") for text in after), after)
        self.assertEqual(self.time(), 0, "looking does not move the playback")
        notes = self.run_js("[...document.querySelectorAll('.chart-time')].map(n => n.textContent)")
        self.assertTrue(all(note.startswith("mouse:") for note in notes), "every chart shows the same instant")

    def test_a_curve_can_be_switched_off_and_on(self):
        entry = ".chart[data-chart='angles'] .series"
        seen = self.browser.picture(".chart[data-chart='angles'] .chart-plot")
        self.browser.click(entry)
        self.assertEqual(self.run_js(f"document.querySelector(\"{entry}\").getAttribute('aria-pressed')"), "false")
        self.settle()
        self.assertNotEqual(seen, self.browser.picture(".chart[data-chart='angles'] .chart-plot"))
        self.browser.click(entry)
        self.assertEqual(self.run_js(f"document.querySelector(\"{entry}\").getAttribute('aria-pressed')"), "true")

    def test_a_drag_across_a_chart_zooms_all_and_a_button_undoes_it(self):
        shown = "[...document.querySelectorAll('.chart')].map(c => c.querySelector('.time-cursor').hidden)"
        self.run_js("document.querySelector('#curves').scrollIntoView({block: 'start', behavior: 'instant'})")
        box = self.run_js("(() => { const b = document.querySelector('.chart .u-over').getBoundingClientRect(); return [b.left, b.top, b.width, b.height]; })()")
        y = box[1] + box[3] / 2
        self.browser.mouse("mousePressed", box[0] + 0.5 * box[2], y)
        for share in (0.55, 0.6, 0.7):
            self.browser.mouse("mouseMoved", box[0] + share * box[2], y)
        self.browser.mouse("mouseReleased", box[0] + 0.7 * box[2], y)
        self.settle()
        self.assertTrue(all(self.run_js(shown)), "time 0 is outside of what is shown, in every chart")
        self.browser.click("#zoom-out")
        self.settle()
        self.assertFalse(any(self.run_js(shown)))

    def test_clicking_an_event_jumps_to_it(self):
        for selector in (".event:not([hidden])", ".margins .jump", ".instant:last-child", ".five .jump"):
            wanted = float(self.run_js(f"document.querySelector({json.dumps(selector)}).dataset.jump"))
            self.browser.click(".scrub")
            self.assertNotAlmostEqual(self.time(), wanted, places=3)
            self.browser.click(selector)
            self.assertAlmostEqual(self.time(), wanted, places=5, msg=selector)
            self.assertEqual(set(self.times_of_charts()), {self.time()})

    def test_the_keyboard_does_it_all(self):
        rows = floats(self.data()["records"][0]["time"])
        self.run_js("document.querySelector('.picture').focus()")
        self.browser.press("ArrowRight")
        self.assertAlmostEqual(self.time(), rows[1], places=5)
        self.browser.press("ArrowRight", shift=True)
        self.assertAlmostEqual(self.time(), rows[11], places=5)
        self.browser.press("ArrowLeft")
        self.assertAlmostEqual(self.time(), rows[10], places=5)
        self.browser.press("End")
        self.assertAlmostEqual(self.time(), rows[-1], places=5)
        self.browser.press("Home")
        self.assertEqual(self.time(), 0)
        self.browser.press("PageDown")
        first = min(e["time"] for e in self.data()["records"][0]["events"] if e["weight"] >= 3 and e["time"] > 1e-6)
        self.assertAlmostEqual(self.time(), first, places=5)
        self.browser.press("Space")
        self.assertTrue(self.playing())
        self.browser.press("Space")
        self.assertFalse(self.playing())
        self.run_js("document.querySelector('.scrub').focus()")
        self.browser.press("Home")
        self.assertEqual(self.time(), 0)

    def test_the_focus_is_seen(self):
        self.run_js("document.querySelector('.picture').focus()")
        self.browser.press("Tab")
        style = self.run_js("(() => { const s = getComputedStyle(document.activeElement); return [document.activeElement.tagName, s.outlineStyle, parseFloat(s.outlineWidth)]; })()")
        self.assertNotEqual(style[0], "BODY")
        self.assertEqual(style[1], "solid")
        self.assertGreater(style[2], 1)

    def test_the_views_show_the_finger_from_different_sides(self):
        seen = {self.browser.picture(".picture-holder")}
        for look in ("iso", "palm"):
            self.browser.click(f"[data-look={look}]")
            self.settle()
            seen.add(self.browser.picture(".picture-holder"))
        self.assertEqual(len(seen), 3)


class Numbers(Page):
    def test_the_page_shows_the_numbers_of_the_run(self):
        summary = json.loads(self.tool("run", SOURCE / "scenarios" / "grasp-medium.yaml", "--json", "--out", self.folder / "again.h5"))
        shown = self.run_js("Object.fromEntries([...document.querySelectorAll('[data-headline]')].map(n => [n.dataset.headline, n.querySelector('.figure').textContent]))")

        def value(name):
            found = summary["summary"][name]
            return found["value"] if isinstance(found, dict) else found
        for headline, name in (("closing_time", "closing_time"), ("grip_force", "grip_force")):
            text = shown[headline]
            decimals = len(text.partition(".")[2])
            self.assertAlmostEqual(float(text), value(name), delta=0.51 * 10 ** -decimals, msg=f"{headline}: {text}")

    def test_the_tables_show_what_the_page_was_given(self):
        record = self.data()["records"][0]
        rows = self.run_js("[...document.querySelectorAll('.margins tbody tr')].map(r => [r.querySelector('th').textContent, r.querySelector('.bar-line .figure').textContent])")
        given = [[m["check"], m["ratio_text"]] for m in record["margins"]["values"]]
        self.assertEqual(sorted(rows), sorted(given))
        ratios = [m["ratio"] for m in record["margins"]["values"]]
        self.assertEqual(ratios, sorted(ratios))
        found = self.run_js("[...document.querySelectorAll('.requirements tbody tr')].map(r => [r.querySelector('th').textContent, r.querySelector('td.figure').textContent, r.className])")
        self.assertEqual(found, [[q["title"], q["value"], "met" if q["met"] else "missed"] for q in record["requirements"]])
        for one in record["margins"]["not_checked"]:
            self.assertIn(one["check"], self.run_js("document.querySelector('.not-checked').textContent"))

    def test_the_curves_show_the_rows_of_the_record(self):
        record = self.data()["records"][0]
        times = floats(record["time"])
        for row in (len(times) // 3, len(times) // 2, len(times) - 1):
            self.run_js("document.querySelector('.picture').focus()")
            self.run_js(f"(() => {{ const s = document.querySelector('.scrub'); s.value = {times[row]!r}; s.dispatchEvent(new Event('input')); }})()")
            for chart in record["charts"]:
                shown = self.run_js(f"[...document.querySelectorAll('.chart[data-chart={chart['id']}] .series[aria-pressed=true] .figure')].map(f => f.textContent)")
                values = [floats(s["data"])[row] for s in chart["series"] if s["shown"]]
                self.assertEqual(len(shown), len(values))
                for text, value in zip(shown, values):
                    if text.startswith("\u2013"):
                        self.assertTrue(math.isnan(value))
                        continue
                    number = float(re.match(r"[\u2212\d.]+(?:\u00d710)?", text).group().replace("\u2212", "-").split("\u00d7")[0])
                    if "\u00d7" in text:
                        self.assertLess(abs(value), 1e-4)
                        continue
                    self.assertAlmostEqual(number, value, delta=6e-4 * max(abs(value), 1e-9), msg=f"{chart['id']}: {text}")
                    self.assertTrue(text.endswith(chart["unit"]))

    def test_the_inputs_can_be_read_in_full(self):
        for file in self.data()["records"][0]["inputs"]["files"]:
            texts = self.run_js("[...document.querySelectorAll('.input-file pre')].map(p => p.textContent)")
            self.assertIn(file["text"], texts)


class TwoRecords(Page):
    @classmethod
    def prepare(cls):
        a = cls.run_scenario("forced-open")
        b = cls.run_scenario("forced-open-strong")
        cls.review = cls.report("two.html", a, b)

    def test_two_records_stand_side_by_side_and_play_in_step(self):
        self.assertEqual(self.run_js("document.querySelectorAll('.picture').length"), 2)
        tops = self.run_js("[...document.querySelectorAll('.picture')].map(p => p.getBoundingClientRect().top)")
        self.assertEqual(tops[0], tops[1])
        before = [self.browser.picture(f".picture:nth-child({k})") for k in (1, 2)]
        self.browser.click("#play")
        self.browser.wait("Number(document.getElementById('review').dataset.time) > 0.25")
        self.browser.click("#play")
        self.settle()
        for k, old in zip((1, 2), before):
            self.assertNotEqual(old, self.browser.picture(f".picture:nth-child({k})"))
        self.assertEqual(set(self.times_of_charts()), {self.time()})
        self.no_complaints()

    def test_what_differs_is_called_out_first(self):
        titles = self.run_js("[...document.querySelectorAll('section > h2')].map(h => h.textContent.replace(/^\\d+/, ''))")
        self.assertEqual(titles[1], "What differs: A against B")
        comparison = self.data()["comparison"]
        self.assertTrue(comparison["inputs"])
        text = self.run_js("document.querySelector('#differences').textContent")
        for one in comparison["inputs"]:
            self.assertIn(one["place"], text)
        called = self.run_js("[...document.querySelectorAll('.callout-title')].map(c => c.textContent)")
        self.assertEqual(called, [v["title"] for v in comparison["values"] if v["notable"]][:12])

    def test_curves_of_both_records_share_a_chart(self):
        series = self.run_js("[...document.querySelectorAll('.chart[data-chart=angles] .series')].map(s => s.textContent[0])")
        self.assertEqual(set(series), {"A", "B"})

    def test_on_a_phone_they_stand_above_each_other(self):
        self.browser.size(360, 740, touch=True)
        self.browser.open(self.review)
        boxes = self.run_js("[...document.querySelectorAll('.picture')].map(p => [p.getBoundingClientRect().top, p.getBoundingClientRect().bottom])")
        self.assertGreater(boxes[1][0], boxes[0][1] - 1)
        self.assertLessEqual(self.run_js("document.documentElement.scrollWidth"), 360)


class Looks(Page):
    def test_dark_follows_the_wish_of_the_browser_and_a_button_changes_it(self):
        lightness = "(() => { const c = getComputedStyle(document.getElementById('review')).backgroundColor.match(/[\\d.]+/g); return Number(c[0]) + Number(c[1]) + Number(c[2]); })()"
        self.assertGreater(self.run_js(lightness), 600)
        light = self.browser.picture(".picture")
        self.browser.dark()
        self.browser.open(self.review)
        self.assertLess(self.run_js(lightness), 200)
        self.settle()
        self.assertNotEqual(light, self.browser.picture(".picture"))
        self.browser.click("#theme")
        self.assertGreater(self.run_js(lightness), 600)
        self.no_complaints()

    def test_writing_stands_out_from_its_ground(self):
        ratio = """(pairs => pairs.map(([fore, back]) => {
            const light = v => { const d = document.createElement('i'); d.style.color = `var(${v})`; document.body.append(d);
              const c = getComputedStyle(d).color.match(/[\\d.]+/g).slice(0, 3).map(x => x / 255).map(x => x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4);
              d.remove(); return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]; };
            const [a, b] = [light(fore), light(back)].sort((x, y) => y - x); return [fore, back, (a + 0.05) / (b + 0.05)]; }))
            (['--ink', '--ink-soft', '--blue', '--good', '--bad', '--unknown', '--force', '--load'].flatMap(v => [[v, '--sheet']]).concat([['--ink', '--bad-wash'], ['--bad', '--bad-wash'], ['--ink-soft', '--bad-wash']]))"""
        for dark in (False, True):
            self.browser.dark(dark)
            self.browser.open(self.review)
            for fore, back, contrast in self.run_js(ratio):
                self.assertGreater(contrast, 4.5, f"{fore} on {back}, dark {dark}: the usual least contrast of text")

    def test_a_phone_of_360_pixels_needs_no_sideways_scrolling(self):
        self.browser.size(360, 740, touch=True)
        self.browser.open(self.review)
        self.assertLessEqual(self.run_js("document.documentElement.scrollWidth"), 360)
        beyond = self.run_js("[...document.querySelectorAll('#review *')].filter(e => e.getClientRects().length && e.getBoundingClientRect().right > 360.5"
                             " && !e.closest('.table-box, .drawing-box, pre, .labels, details:not([open])')).map(e => e.tagName + '.' + e.className)")
        self.assertEqual(beyond, [])
        self.no_complaints()

    def test_printing_cuts_no_table_row_and_shows_no_controls(self):
        if not shutil.which("pdftotext"):
            self.skipTest("pdftotext (poppler-utils) is not installed")
        pdf = self.folder / "review.pdf"
        pdf.write_bytes(self.browser.pdf())
        boxes = self.folder / "boxes.html"
        subprocess.run(["pdftotext", "-bbox", pdf, boxes], check=True)
        pages = []
        for page in re.findall(r'<page width="([\d.]+)" height="([\d.]+)">(.*?)</page>', boxes.read_text(), re.S):
            words = re.findall(r'xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>', page[2])
            self.assertAlmostEqual(float(page[0]), 595, delta=1.5)   # A4 in points
            self.assertAlmostEqual(float(page[1]), 842, delta=1.5)
            for x0, y0, x1, y1, word in words:
                self.assertTrue(20 < float(x0) and float(x1) < 575 and 20 < float(y0) and float(y1) < 825, f"'{word}' leaves the page's margins")
            text = " ".join(w[4] for w in words)
            pages.append(text.replace("&amp;", "&").replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", '"').replace("&#39;", "'"))
        whole = " ".join(pages)
        for control in ("Light / dark", "Play", "drag across", "Show all"):
            self.assertNotIn(control, whole)
        # In the order of drawing a whole row stands in one piece on one page; a cut one leaves the ends of its cells behind.
        raw = subprocess.run(["pdftotext", "-raw", pdf, "-"], check=True, capture_output=True, text=True).stdout
        drawn = [re.sub(r"\s", "", page) for page in raw.split("\f")]
        # The lesser margins go without their posture on paper.
        rows = self.run_js("""[...document.querySelectorAll('.margins tbody tr, .requirements tbody tr')].map(row => {
            const copy = row.cloneNode(true);
            if (row.matches('.later')) copy.querySelectorAll('.posture').forEach(one => one.remove());
            return copy.textContent; })""")
        self.assertGreater(len(rows), 10)
        for row in rows:
            whole_row = re.sub(r"\s", "", row)
            self.assertTrue(any(whole_row in page for page in drawn), f"cut between pages: {row}")
        self.assertIn("Key instants".upper(), whole.upper())
        for title in ("Joint angles", "Cord tensions"):
            self.assertIn(title, whole)
        self.assertFalse(self.run_js("document.querySelector('.printed-curve') !== null"), "the screen is as before")


class Hostile(Page):
    @classmethod
    def prepare(cls):
        shutil.copytree(SOURCE / "models", cls.folder / "models")
        (cls.folder / "scenarios").mkdir()
        for path, key in ((SOURCE / "scenarios" / "grasp-medium.yaml", "name"), (SOURCE / "models" / "demo-finger.yaml", "name")):
            text = re.sub(rf"(?m)^{key}: .*$", lambda _: f"{key}: {json.dumps(HOSTILE, ensure_ascii=False)}", path.read_text(), count=1)
            (cls.folder / path.parent.name / path.name).write_text(text)
        cls.review = cls.report("hostile.html", cls.run_scenario(cls.folder / "scenarios" / "grasp-medium.yaml"))

    def test_a_hostile_name_shows_as_text(self):
        self.assertEqual(self.run_js("document.querySelector('h1').textContent"), HOSTILE)
        self.assertIn(HOSTILE, self.run_js("document.querySelector('.cells').textContent"))
        self.assertEqual(self.run_js("document.querySelectorAll('img').length"), 0)
        self.assertNotEqual(self.run_js("document.title"), "owned")
        self.assertEqual(self.run_js("getComputedStyle(document.querySelector('h1 bdi')).unicodeBidi"), "isolate")
        self.no_complaints()
        self.browser.size(360, 740, touch=True)
        self.browser.open(self.review)
        self.assertLessEqual(self.run_js("document.documentElement.scrollWidth"), 360)


class LongRun(Page):
    @classmethod
    def prepare(cls):
        text = (SOURCE / "scenarios" / "grasp-medium.yaml").read_text()
        text = re.sub(r"(?m)^model: .*$", f"model: {SOURCE / 'models' / 'demo-finger.yaml'}", text)
        text = re.sub(r"(?m)^duration: .*$", "duration: 60 s\nrecord: {interval: 3 ms}\nsolver: {max_step: 3 ms}", text)
        scenario = cls.folder / "long.yaml"
        scenario.write_text(text)
        cls.review = cls.report("long.html", cls.run_scenario(scenario))

    def test_a_minute_of_20000_rows_opens_soon_and_plays(self):
        rows = self.data()["records"][0]["rows"]
        self.assertGreaterEqual(rows["of"], 20000)
        self.assertLessEqual(rows["kept"], 3000)
        print(f"opened in {self.milliseconds} ms, {self.review.stat().st_size / 1e6:.2f} MB, {rows['kept']} of {rows['of']} rows")
        # The aim is 3 s on a laptop; here a drawing by software on a busy machine must not take more than five times that.
        self.assertLess(self.milliseconds, 15000)
        self.run_js("(() => { const s = document.getElementById('speed'); s.value = '1'; s.dispatchEvent(new Event('change')); })()")
        self.browser.click("#play")
        frames = self.run_js("new Promise(done => { const start = performance.now(); let n = 0;"
                             "(function count(now) { ++n; if (now - start < 2000) requestAnimationFrame(count); else done(1000 * n / (now - start)); })(start); })")
        print(f"{frames:.0f} frames a second while playing, drawn by software")
        self.assertGreater(frames, 0)   # how many depends on the machine alone, and is printed
        self.assertGreater(self.time(), 0)
        self.no_complaints()


class Study(Page):
    """A page of studies alone: designs of a sample, and a search with its best design as made."""

    STUDY = """sinewright: study
name: {name}
about: Invented for a test.
runs:
  grasp: {{scenario: {scenario}, change: ["duration=0.5 s", "timeline.1.at=0.45 s", "require=[]"]}}
vary:
  radius: {{key: model.drives.flexor.pulley.radius, from: 1.2 mm, to: 6 mm}}
  gear: {{key: model.drives.flexor.gearhead, values: [train_100, train_150]}}
outcomes: [grasp.closing_time, grasp.grip_force]
require: [{{quantity: grasp.grip_force, at_least: 13 N}}]
"""

    @classmethod
    def study(cls, file, kind, name="pulleys of a test"):
        path = cls.folder / f"{file}.yaml"
        path.write_text(cls.STUDY.format(name=json.dumps(name, ensure_ascii=False), scenario=SOURCE / "scenarios" / "grasp-medium.yaml") + kind)
        table = cls.folder / f"{file}.study.h5"
        cls.said = json.loads(cls.tool("study", path, "--json", "--out", table))
        return table

    @classmethod
    def prepare(cls):
        cls.review = cls.report("sample.html", cls.study("sample", "sample: {runs: 24}"))

    def rows(self):
        """The table as it is shown: row numbers, and the cells of each row."""
        return self.run_js("[...document.querySelectorAll('.designs-table tbody tr')].map(r => [Number(r.dataset.row), ...[...r.cells].slice(1).map(c => c.textContent)])")

    def sample(self):
        """What the page was given, a list for each row: number, state, values."""
        rows = self.data()["studies"][0]["rows"]
        columns = [floats(values) for values in rows["values"]]
        return [[number, state, *(column[k] for column in columns)] for k, (number, state) in enumerate(zip(rows["row"], rows["state"]))]

    def field(self, label, value, kind="change"):
        self.run_js(f"(() => {{ const f = [...document.querySelectorAll('#designs select, #designs input')].find(f => f.getAttribute('aria-label') === {json.dumps(label)});"
                    f" f.value = {json.dumps(value)}; f.dispatchEvent(new Event({json.dumps(kind)})); }})()")

    def test_a_study_alone_opens_without_a_complaint_and_without_an_empty_picture(self):
        self.settle()
        self.no_complaints()
        self.assertEqual([url for url in self.browser.requests() if not url.startswith(("data:", "blob:"))], [self.review.resolve().as_uri()])
        titles = self.run_js("[...document.querySelectorAll('section > h2')].map(h => h.textContent.replace(/^\\d+/, ''))")
        self.assertEqual(titles, ["What was varied", "Findings", "Designs", "Cautions and limits of validity", "All inputs"])
        self.assertEqual(self.run_js("document.querySelectorAll('.picture, canvas, .transport, .chart').length"), 0)
        self.assertIn("not certification", self.run_js("document.querySelector('.caution').textContent"))
        self.assertIn("guessed", self.run_js("document.querySelector('#validity').textContent"))
        self.assertIn("pulleys of a test", self.run_js("document.querySelector('h1').textContent"))
        self.assertIn("train_100", self.run_js("document.querySelector('#inputs').textContent"))
        nameless = self.run_js("[...document.querySelectorAll('button, select, input, [tabindex=\"0\"]')]"
                               ".filter(e => !(e.textContent.trim() || e.getAttribute('aria-label') || e.closest('label')?.textContent.trim())).map(e => e.outerHTML.slice(0, 120))")
        self.assertEqual(nameless, [])

    def test_the_verdict_counts_what_the_table_holds(self):
        states = [row[1] for row in self.sample()]
        self.assertEqual(len(states), 24)
        self.assertGreater(states.count(0), 0)
        self.assertGreater(states.count(1), 0)
        self.assertIn(f"{states.count(0)} of 24 designs meet all requirements", self.run_js("document.querySelector('.verdict').textContent"))
        drawn = self.run_js("[...document.querySelectorAll('#study tbody tr')].map(r => r.textContent)")
        self.assertTrue(any("radius" in row and "3.5 mm" in row for row in drawn), drawn)
        self.assertTrue(any("gear" in row and "train_150" in row for row in drawn), drawn)

    def test_the_table_holds_every_design_and_sorts_by_any_column(self):
        given = self.sample()
        self.assertEqual([row[0] for row in self.rows()], [row[0] for row in given])
        self.assertEqual(self.rows()[5][2], digits(given[5][2]))
        for press, order in ((1, 1), (2, -1)):
            self.browser.click(".designs-table th:nth-child(3) button")   # the radius
            wanted = sorted(given, key=lambda row: order * row[2])
            self.assertEqual([row[0] for row in self.rows()], [row[0] for row in wanted])
        self.assertEqual(self.run_js("document.querySelector('.designs-table th:nth-child(3)').getAttribute('aria-sort')"), "descending")
        self.browser.click(".designs-table th:nth-child(6) button")   # the force: what has none comes last
        forces = [row[5] for row in sorted(given, key=lambda row: (math.isnan(row[5]), row[5]))]
        self.assertEqual([row[5] for row in self.rows()], ["\u2013" if math.isnan(force) else digits(force) for force in forces])

    def test_filters_hold_for_the_table_and_the_chart(self):
        given = self.sample()
        self.field("rows", "met")
        self.assertEqual([row[0] for row in self.rows()], [row[0] for row in given if row[1] == 0])
        self.assertEqual(self.run_js("document.querySelector('#designs .dots.met').getAttribute('d').split('M').length - 1"), sum(row[1] == 0 for row in given))
        self.field("words in a row's options, state or reason", "train_100", "input")
        self.assertEqual([row[0] for row in self.rows()], [row[0] for row in given if row[1] == 0 and row[3] == 0])
        self.run_js("[...document.querySelectorAll('#designs .fields button')].find(b => b.textContent === 'Show all').click()")
        self.assertEqual(len(self.rows()), 24)
        self.field("radius, at least", "3")
        self.field("radius, at most", "4")
        self.assertEqual([row[0] for row in self.rows()], [row[0] for row in given if 3 <= row[2] <= 4])
        self.no_complaints()

    def place(self, x, y):
        """Where a value lies in the window, by two ticks of each axis."""
        return self.run_js(f"""(() => {{
            const chart = document.querySelector('.study-chart.designs'), box = chart.getBoundingClientRect(), s = box.width / chart.viewBox.baseVal.width;
            const ticks = anchor => [...chart.querySelectorAll(`text[text-anchor="${{anchor}}"]:not([class])`)].map(t => [Number(t.textContent), Number(t.getAttribute(anchor === 'middle' ? 'x' : 'y')) - (anchor === 'middle' ? 0 : 4)]);
            const at = (list, value) => list[0][1] + (value - list[0][0]) / (list.at(-1)[0] - list[0][0]) * (list.at(-1)[1] - list[0][1]);
            return [box.left + s * at(ticks('middle'), {x}), box.top + s * at(ticks('end'), {y})]; }})()""")

    def test_a_click_in_the_chart_picks_a_design_and_a_drag_keeps_what_lies_in_the_box(self):
        self.run_js("document.querySelector('.design-chart').scrollIntoView({block: 'center', behavior: 'instant'})")
        row = next(row for row in self.sample() if row[1] == 0)
        x, y = self.place(row[2], row[4])
        for kind in ("mousePressed", "mouseReleased"):
            self.browser.mouse(kind, x, y)
        self.assertIn(f"Design {row[0]} ", self.run_js("document.querySelector('.picked-design').textContent"))
        self.assertEqual(self.run_js("document.querySelector('.designs-table tr.picked').dataset.row"), str(row[0]))
        x0, y0 = self.place(2.5, 0.1)
        x1, y1 = self.place(4.5, 0.4)
        self.browser.mouse("mousePressed", x0, y0)
        self.browser.mouse("mouseMoved", (x0 + x1) / 2, (y0 + y1) / 2)
        self.browser.mouse("mouseReleased", x1, y1)
        kept = [row[0] for row in self.rows()]
        inside = [row[0] for row in self.sample() if 2.55 <= row[2] <= 4.45 and 0.105 <= row[4] <= 0.395]
        about = [row[0] for row in self.sample() if 2.45 <= row[2] <= 4.55 and 0.095 <= row[4] <= 0.405]
        self.assertTrue(set(inside) <= set(kept) <= set(about), (inside, kept, about))
        self.assertLess(len(kept), 24)
        self.no_complaints()

    def test_any_column_can_stand_on_an_axis_or_colour_the_points(self):
        columns = self.data()["studies"][0]["columns"]
        self.assertIn("radius [mm]", self.run_js("document.querySelector('.study-chart.designs').textContent"))
        self.field("along", "1")
        self.assertIn("train_150", self.run_js("document.querySelector('.study-chart.designs').textContent"))
        self.field("up", "3")
        self.assertIn(f"{columns[3]['title']} [{columns[3]['unit']}]", self.run_js("document.querySelector('.study-chart.designs').textContent"))
        self.field("colour", "0")
        self.assertGreater(len(set(self.run_js("[...document.querySelectorAll('.study-chart.designs .dots.met')].map(d => d.style.stroke)"))), 2)
        self.assertIn("radius", self.run_js("document.querySelector('.design-legend').textContent"))
        self.no_complaints()

    def test_dark_phone_and_paper(self):
        self.browser.dark()
        self.browser.size(360, 740, touch=True)
        self.browser.open(self.review)
        self.assertLessEqual(self.run_js("document.documentElement.scrollWidth"), 360)
        beyond = self.run_js("[...document.querySelectorAll('#review *')].filter(e => e.getClientRects().length && e.getBoundingClientRect().right > 360.5"
                             " && !e.closest('.table-box, pre, details:not([open])')).map(e => e.tagName + '.' + e.className)")
        self.assertEqual(beyond, [])
        pdf = self.browser.pdf()
        self.assertTrue(pdf.startswith(b"%PDF-"))
        self.no_complaints()


class StudyKinds(Study):
    """The charts of each kind of study; a search is checked against what the program prints."""

    @classmethod
    def prepare(cls):
        cls.kinds = {}
        making = "radius: {key: model.drives.flexor.pulley.radius, plus_minus: 0.2 mm}, voltage: {key: model.supplies.battery.voltage, from: 5 V, to: 6.2 V}"
        for kind, text in (("search", "optimise: {minimise: [grasp.closing_time], runs: 24, robustness: {runs: 12, vary: {%s}}}" % making),
                           ("made", "tolerance: {runs: 16}"), ("shares", "sensitivity: {base: 8}"), ("effects", "screening: {paths: 4}"), ("grid", "grid: {}")):
            cls.kinds[kind] = cls.report(f"{kind}.html", cls.study(kind, text)), cls.said
        cls.review = cls.kinds["search"][0]

    def show(self, kind):
        self.review, self.said = self.kinds[kind]
        self.browser.open(self.review)
        self.no_complaints()

    # The table and its chart are the other class's to test.
    test_the_verdict_counts_what_the_table_holds = test_the_table_holds_every_design_and_sorts_by_any_column = None
    test_filters_hold_for_the_table_and_the_chart = test_a_click_in_the_chart_picks_a_design_and_a_drag_keeps_what_lies_in_the_box = None
    test_any_column_can_stand_on_an_axis_or_colour_the_points = None

    def test_a_search_shows_its_best_design_beside_the_one_as_drawn(self):
        self.show("search")
        best = self.said["best"][0]
        self.assertIn(f"The best design found is row {best['row']}", self.run_js("document.querySelector('.verdict').textContent"))
        beside = self.run_js("[...document.querySelectorAll('.beside tbody tr')].map(r => [...r.cells].map(c => c.textContent))")
        radius = next(row for row in beside if row[0] == "radius")
        self.assertEqual(radius[2], "3.5 mm")
        self.assertAlmostEqual(float(radius[3].split()[0]), 1e3 * best["varied"]["radius"]["value"], delta=1e-3)
        time = next(row for row in beside if row[0] == "closing time")
        drawn = self.said["drawn"]["grasp.closing_time"]["value"]
        self.assertAlmostEqual(float(time[4].split()[0]), 100 * (best["outcomes"]["grasp.closing_time"]["value"] / drawn - 1), delta=0.1)
        self.assertEqual(self.run_js("document.querySelectorAll('.best-line').length"), 1)

    def test_the_yield_of_the_chosen_design_is_that_of_the_program(self):
        self.show("search")
        text = self.run_js("[...document.querySelectorAll('.verdict')].map(v => v.textContent).find(t => t.includes('as it would be made'))")
        found = self.said["findings"]
        self.assertIn(f"yield {100 * found['yield']['value']:.1f} %", text)
        self.assertIn(f"{100 * found['yield.low']['value']:.1f} % to {100 * found['yield.high']['value']:.1f} %", text)
        self.field("rows", "made")
        self.assertEqual(len(self.rows()), 12)
        self.assertIn("voltage, as made", self.run_js("document.querySelector('.designs-table thead').textContent"))
        self.field("rows", "all")
        self.assertEqual(len(self.rows()), min(50, self.said["designs"]))
        self.no_complaints()

    def test_tolerances_show_spread_and_yield_over_the_bound(self):
        self.show("made")
        study = self.data()["studies"][0]
        curve = floats(study["yield"]["curves"][0]["points"])
        points = [curve[k:k + 5] for k in range(0, len(curve), 5)]
        now = min(points, key=lambda point: abs(point[0] - study["yield"]["curves"][0]["value"]))
        self.assertAlmostEqual(now[2], self.said["findings"]["yield"]["value"], places=6)
        self.assertEqual(self.run_js("document.querySelectorAll('.study-chart .band').length"), 1)
        for spread in study["spread"]:
            self.assertEqual(sum(spread["histogram"]["counts"]) + spread["missing"], 16)

    def test_indices_effects_and_grids_have_their_charts(self):
        for kind, bars in (("shares", ".bar.total"), ("effects", ".bar.size")):
            self.show(kind)
            self.assertGreater(self.run_js(f"document.querySelectorAll({json.dumps(bars)}).length"), 1)
        self.show("grid")
        self.assertEqual(len(self.rows()), 10)


    def test_a_grid_over_two_keys_has_a_map_for_each_outcome(self):
        self.show("grid")
        study = self.data()["studies"][0]
        columns, outcomes = study["columns"], [c for c in study["columns"] if c["role"] == "outcome"]
        self.assertEqual(self.run_js("[...document.querySelectorAll('.maps figcaption')].map(f => f.textContent)"), [f"{c['title']} [{c['unit']}]" for c in outcomes])
        table = {(row[2], row[3]): row for row in self.sample()}
        grid, radius, gear = study["map"], columns[0], columns[1]
        self.assertEqual((grid["x"]["column"], grid["y"]["column"]), (0, 1))
        self.assertEqual(len(grid["x"]["values"]) * len(grid["y"]["values"]), len(table))
        shown = self.run_js("[...document.querySelectorAll('.study-map')].map(m => [...m.querySelectorAll('.field')].map(f => f.getAttribute('fill')))")
        for outcome, fills in enumerate(shown):
            # Field by field: what lies lower on the scale has another colour, and what has no value none.
            values = [table[(x, y)][4 + outcome] for y in range(len(gear["options"])) for x in sorted({row[2] for row in table.values()})]
            self.assertEqual([math.isnan(value) for value in values], [fill is None for fill in fills])
            known = [(value, fill) for value, fill in zip(values, fills) if fill]
            self.assertEqual(len({fill for _, fill in known}), len({value for value, _ in known}))
        failed = sum(row[1] != 0 for row in table.values())
        self.assertGreater(failed, 0)
        self.assertLess(failed, len(table))
        self.assertEqual(self.run_js("document.querySelector('.study-map .failed-cross').getAttribute('d').split('M').length - 1"), failed)
        # By the keyboard: the first field, one to the right, one up, and no further than the edge.
        words = "document.querySelector('.maps + .picked-design').textContent"
        self.run_js("document.querySelector('.maps').focus()")
        self.browser.press("ArrowRight")
        self.browser.press("ArrowUp")
        self.browser.press("ArrowUp")
        row = table[(sorted({key[0] for key in table})[1], 1)]
        self.assertIn(f"radius {digits(row[2]).rstrip('0').rstrip('.')} mm, gear {gear['options'][1]}: {outcomes[0]['title']} {digits(row[4])} {outcomes[0]['unit']}, {outcomes[1]['title']} {digits(row[5])} {outcomes[1]['unit']}",
                      self.run_js(words))
        self.assertIn("meets all" if row[1] == 0 else "misses", self.run_js(words))
        # By the mouse: the field under it.
        x, y = self.run_js("(() => { const f = document.querySelector('.study-map .field[data-field=\"3\"]'); f.scrollIntoView({block: 'center', behavior: 'instant'});"
                           " const b = f.getBoundingClientRect(); return [b.left + b.width / 2, b.top + b.height / 2]; })()")
        self.browser.send("Input.dispatchMouseEvent", type="mouseMoved", x=x, y=y)
        self.settle()
        self.assertIn(f"gear {gear['options'][0]}", self.run_js(words))
        self.assertIn(digits(table[(sorted({key[0] for key in table})[3], 0)][5]), self.run_js(words))
        self.show("made")
        self.assertEqual(self.run_js("document.querySelectorAll('.study-map').length"), 0, "points by chance make no map")


class StudyWithRun(Page):
    @classmethod
    def prepare(cls):
        table = Study.study.__func__(type("Of", (cls,), {"STUDY": Study.STUDY}), "few", "sample: {runs: 4}", HOSTILE)
        cls.review = cls.report("both.html", cls.run_scenario("grasp-medium"), table)

    def test_a_study_beside_a_run_has_its_sections_after_the_run_and_its_name_is_text(self):
        titles = self.run_js("[...document.querySelectorAll('section > h2')].map(h => h.textContent.replace(/^\\d+/, ''))")
        self.assertLess(titles.index("The finger in motion"), titles.index(f"Designs: \u2068{HOSTILE}\u2069"))
        self.assertEqual(self.run_js("document.querySelectorAll('.picture').length"), 1)
        self.assertEqual(self.run_js("document.querySelectorAll('img').length"), 0)
        self.assertNotEqual(self.run_js("document.title"), "owned")
        self.browser.click("#play")
        self.browser.wait("Number(document.getElementById('review').dataset.time) > 0.05")
        self.no_complaints()


class Hand(Page):
    """A hand is shown so that its fingers stand apart, and told of by finger."""

    FINGERS = ["index", "middle", "ring", "little", "thumb"]

    @classmethod
    def prepare(cls):
        cls.review = cls.report("hand.html", cls.run_scenario("hand-bottle"))

    def closed(self):
        self.browser.open(self.review, "#t=0.4")
        self.settle()

    def test_it_is_called_a_hand_and_first_seen_from_where_its_fingers_stand_apart(self):
        self.assertEqual(self.data()["records"][0]["fingers"], self.FINGERS)
        section = self.run_js("document.querySelector('#motion').textContent")
        self.assertIn("The hand in motion", section)
        self.assertIn("force on the hand", section)
        self.assertNotIn("finger in motion", self.run_js("document.querySelector('#review').textContent"))
        self.assertEqual(self.run_js("[...document.querySelectorAll('.look')].map(l => [l.dataset.look, l.getAttribute('aria-pressed')])"),
                         [["side", "false"], ["hand", "true"], ["palm", "false"]])
        seen = {self.browser.picture(".picture-holder")}
        for look in ("side", "palm"):
            self.browser.click(f"[data-look={look}]")
            self.settle()
            seen.add(self.browser.picture(".picture-holder"))
        self.assertEqual(len(seen), 3)
        self.no_complaints()

    TAGS = ".tag:not([hidden])"

    def test_every_finger_has_its_name_and_no_label_covers_another(self):
        self.closed()
        tags = self.run_js(f"[...document.querySelectorAll({json.dumps(self.TAGS)})].map(t => {{ const b = t.getBoundingClientRect(); return [t.textContent, b.left, b.top, b.right, b.bottom]; }})")
        self.assertTrue(set(self.FINGERS) <= {tag[0] for tag in tags}, tags)
        self.assertTrue(any(tag[0].endswith("N") for tag in tags), "the largest forces have their numbers")
        for k, a in enumerate(tags):
            for b in tags[:k]:
                # A few pixels of grace: letters are narrower and lower than their box.
                self.assertFalse(a[1] + 2 < b[3] and b[1] + 2 < a[3] and a[2] + 4 < b[4] and b[2] + 4 < a[4], f"{a} covers {b}")

    def test_curves_that_are_shown_can_be_told_apart(self):
        charts = self.run_js("[...document.querySelectorAll('.chart')].map(c => [c.dataset.chart, [...c.querySelectorAll('.series[aria-pressed=true] .swatch-line')].map(s => s.style.color + s.dataset.dash)])")
        self.assertGreater(len(charts), 20)
        for chart, looks in charts:
            self.assertEqual(len(looks), len(set(looks)), chart)
        self.assertIn("net_force", [chart for chart, _ in charts])
        self.assertLess(max(len(looks) for _, looks in charts), 9)

    def test_what_is_asked_of_all_drives_is_one_line(self):
        lines = self.run_js("[...document.querySelectorAll('.asked li')].map(l => l.textContent)")
        drives = ", ".join(f"{finger}.flexor" for finger in self.FINGERS)
        self.assertIn(f"at 0.05 s: drives {drives} at 6 V", lines)
        self.assertEqual(sum("drive" in line for line in lines), 2, lines)

    def test_grip_and_losses_are_told_by_finger_and_add_up(self):
        record = self.data()["records"][0]
        grip = next(number for number in record["headline"] if number["id"] == "grip_force")
        shares = dict(re.findall(r"(\w+) ([\d.]+) N", grip["detail"]))
        self.assertEqual(set(shares), set(self.FINGERS))
        self.assertAlmostEqual(sum(map(float, shares.values())), float(grip["text"]), delta=0.005 * float(grip["text"]))
        bends = next(flow for flow in record["losses"]["flows"] if flow["name"] == "bends of the cords")
        self.assertEqual({part["name"] for part in bends["parts"]}, set(self.FINGERS))
        self.assertLess(abs(sum(part["share"] for part in bends["parts"]) - bends["share"]), 0.05 * bends["share"])

    def test_the_touch_temperature_is_that_of_the_hottest_drive(self):
        touch = next(number for number in self.data()["records"][0]["headline"] if number["id"] == "touch_temperature")
        housings = {one["name"]: max(floats(one["data"])) for chart in self.data()["records"][0]["charts"] if chart["id"] == "temperatures"
                    for one in chart["series"] if one["name"].startswith("housing of ")}
        hottest = max(housings, key=housings.get)
        self.assertIn(hottest.removeprefix("housing of "), touch["detail"])
        self.assertAlmostEqual(float(touch["text"]), housings[hottest], delta=0.006)

    def test_margins_are_given_by_finger_and_like_ones_share_a_row(self):
        values = self.data()["records"][0]["margins"]["values"]
        least = {}
        for value in values:
            finger = next((one for one in self.FINGERS if f"{one}." in value["name"]), "palm and what all share")
            least.setdefault(finger, [value["ratio_text"], value["check"]])
        shown = self.run_js("[...document.querySelectorAll('.by-finger tbody tr')].map(r => [r.cells[0].textContent, r.cells[1].textContent, r.cells[2].textContent])")
        self.assertEqual({row[0]: row[1:] for row in shown}, least)
        # No margin is lost: each row stands for as many as it names fingers.
        rows = self.run_js("[...document.querySelectorAll('.margins tbody tr')].map(r => r.querySelector('th .muted')?.textContent ?? '')")
        self.assertEqual(sum(len(row.split(",")) for row in rows), len(values))
        self.assertLess(len(rows), len(values))
        own = self.run_js("[...document.querySelectorAll('.margins .posture')].map(p => p.textContent)")
        for posture in own:
            self.assertIn(len({name for name in re.findall(r"(\w+)\.\w+ ", posture)}), (0, 1, 5), f"of one finger, or of the whole hand: {posture}")

    def test_like_parts_of_its_fingers_share_their_facts(self):
        groups = self.run_js("[...document.querySelectorAll('#model .fact-group h4')].map(h => h.textContent)")
        self.assertIn("Joint MCP of index, middle, ring, little", groups)
        self.assertEqual(len(groups), len(set(groups)))
        names = self.run_js("[...document.querySelectorAll('.drawn-name')].map(n => n.textContent)")
        self.assertEqual(set(names), set(self.FINGERS))

    def test_phone_and_paper(self):
        self.browser.size(360, 740, touch=True)
        self.browser.open(self.review)
        self.assertLessEqual(self.run_js("document.documentElement.scrollWidth"), 360)
        self.assertTrue(self.browser.pdf().startswith(b"%PDF-"))
        self.no_complaints()

    def test_two_fingers_of_one_model_are_fingers(self):
        self.browser.open(self.report("pair.html", self.run_scenario("shared-drive")))
        section = self.run_js("document.querySelector('#motion').textContent")
        self.assertIn("The fingers in motion", section)
        self.assertIn("force on the fingers", section)


class FlatHand(Hand):
    """The same without WebGL."""

    flags = ("--disable-3d-apis",)

    TAGS = ".picture .side-view text[visibility=visible]"

    test_curves_that_are_shown_can_be_told_apart = test_what_is_asked_of_all_drives_is_one_line = None
    test_grip_and_losses_are_told_by_finger_and_add_up = test_the_touch_temperature_is_that_of_the_hottest_drive = None
    test_margins_are_given_by_finger_and_like_ones_share_a_row = test_like_parts_of_its_fingers_share_their_facts = test_phone_and_paper = None
    test_two_fingers_of_one_model_are_fingers = None

    def boxes(self):
        return self.run_js("[...document.querySelectorAll('.picture .shape')].map(p => { const b = p.getBBox(); return [b.x, -b.y - b.height, b.x + b.width, -b.y]; })")

    def test_it_is_drawn_as_outlines_from_each_side_and_fills_its_picture(self):
        self.assertEqual(self.run_js("document.querySelector('.picture').dataset.view"), "2d")
        self.assertIn("the hand is drawn as flat outlines", self.run_js("document.querySelector('.no-webgl').textContent"))
        record = self.data()["records"][0]
        balls = [(floats(body["poses"])[:7], shape) for body in record["scene"]["bodies"] for shape in body["shapes"] if shape["kind"] in ("capsule", "sphere")]
        for look, across, up in (("side", 0, 1), ("palm", 0, 2)):
            self.browser.click(f"[data-look={look}]")
            drawn = self.boxes()
            for pose, shape in balls:
                ends = [turned(pose, shape[end]) for end in (("from", "to") if shape["kind"] == "capsule" else ("center",))]
                box = [f(end[axis] for end in ends) + sign * shape["radius"] for f, sign in ((min, -1), (max, 1)) for axis in (across, up)]
                nearest = min(drawn, key=lambda other: sum(abs(a - b) for a, b in zip(box, other)))
                for a, b in zip(box, nearest):
                    self.assertAlmostEqual(a, b, delta=0.05, msg=f"{look}: {shape}")
        # Seen from anywhere nothing leaves the picture, and during the run what is drawn comes near two opposite edges of it.
        for look in ("hand", "palm", "side"):
            self.browser.click(f"[data-look={look}]")
            x, y, w, h = map(float, self.run_js("document.querySelector('.picture .side-view').getAttribute('viewBox')").split())
            reach = [math.inf, math.inf, -math.inf, -math.inf]
            for moment in (0, 0.08, 0.12, 0.4, 2.5):
                self.run_js(f"(() => {{ const s = document.querySelector('.scrub'); s.value = {moment}; s.dispatchEvent(new Event('input')); }})()")
                for box in self.boxes():
                    reach = [min(reach[0], box[0]), min(reach[1], box[1]), max(reach[2], box[2]), max(reach[3], box[3])]
            self.assertTrue(x <= reach[0] and reach[2] <= x + w and -y - h <= reach[1] and reach[3] <= -y, f"{look}: {reach} in {(x, y, w, h)}")
            self.assertGreater(max((reach[2] - reach[0]) / w, (reach[3] - reach[1]) / h), 0.8, look)


class Controlled(Page):
    """A run with a controller and a fault."""

    @classmethod
    def prepare(cls):
        cls.review = cls.report("power-loss.html", cls.run_scenario("power-loss"))

    def test_what_is_asked_read_and_true_stand_in_one_chart(self):
        charts = {chart["id"]: chart for chart in self.data()["records"][0]["charts"]}
        self.assertEqual([one["name"] for one in charts["shaft"]["series"]], ["set point", "reading", "true"])
        self.assertIn("Shaft, as asked, read and true", self.run_js("document.querySelector('.chart[data-chart=shaft]').textContent"))
        asked, _, true = (floats(one["data"]) for one in charts["shaft"]["series"])
        self.assertAlmostEqual(asked[-1], 300, delta=0.5)
        self.assertAlmostEqual(true[-1], 305.24, delta=0.1)   # as the summary says
        self.assertIn("asked of flexor", [one["name"] for one in charts["voltages"]["series"]])

    def test_faults_and_what_the_controller_does_stand_on_the_time_line(self):
        shown = self.run_js("[...document.querySelectorAll('.event:not([hidden])')].map(e => [e.textContent, e.classList.contains('fault')])")
        self.assertIn(["battery dips to 0 V for 0.5 s", True], shown)
        self.assertIn(["flexor browns out at 0 V", False], shown)
        self.assertIn(["flexor starts again", False], shown)
        self.assertEqual(self.run_js("document.querySelectorAll('.event-mark.fault').length"), 1)


class Directions(Page):
    """A pull in directions round a plane."""

    @classmethod
    def prepare(cls):
        limit = cls.folder / "pull.limit.h5"
        cls.tool("limit", SOURCE / "scenarios" / "limits" / "worst-direction.yaml", "--quiet", "--out", limit, "--set", "directions.count=8")
        cls.review = cls.report("pull.html", cls.run_scenario("grasp-free"), limit)

    def test_the_plane_has_a_name_and_what_held_is_no_failure(self):
        texts = self.run_js("[...document.querySelectorAll('.polar .limit-chart text')].map(t => t.textContent)")
        for text in ("0\u00b0 +x", "90\u00b0 +y", "180\u00b0 \u2212x", "270\u00b0 \u2212y"):
            self.assertIn(text, texts)
        self.assertIn("round the plane of x and y", self.run_js("document.querySelector('.polar figcaption').textContent"))
        rows = self.data()["limits"][0]["rows"]
        held = sum(not row["found"] for row in rows)
        self.assertTrue(0 < held < 8, rows)
        self.assertEqual(self.run_js("document.querySelector('.polar .beyond').getAttribute('d').split('M').length - 1"), held)
        self.assertEqual(self.run_js("document.querySelectorAll('.limit tr.missed').length"), 0)
        self.no_complaints()


class NoWebgl(Page):
    flags = ("--disable-3d-apis",)

    def test_without_webgl_the_finger_is_drawn_from_the_side_with_the_same_controls(self):
        self.assertEqual(self.run_js("document.querySelector('.picture').dataset.view"), "2d")
        self.assertIn("no WebGL", self.run_js("document.querySelector('.no-webgl').textContent"))
        before = self.browser.picture(".picture")
        self.browser.click("#play")
        self.browser.wait("Number(document.getElementById('review').dataset.time) > 0.2")
        self.browser.click("#play")
        self.settle()
        self.assertNotEqual(before, self.browser.picture(".picture"))
        self.run_js("document.querySelector('.picture').focus()")
        self.browser.press("Home")
        self.assertEqual(self.time(), 0)
        self.assertEqual(set(self.times_of_charts()), {0})

    def test_every_solid_stands_where_the_record_says_to_scale(self):
        record = self.data()["records"][0]
        times = floats(record["time"])
        row = len(times) // 2
        self.run_js(f"(() => {{ const s = document.querySelector('.scrub'); s.value = {times[row]!r}; s.dispatchEvent(new Event('input')); }})()")
        drawn = self.run_js("[...document.querySelectorAll('.picture .shape.phalanx')].map(p => { const b = p.getBBox(); return [b.x, -b.y - b.height, b.x + b.width, -b.y]; })")
        bodies = [b for b in record["scene"]["bodies"] if b["role"] == "phalanx"]
        expected = []
        for body in bodies:
            pose = floats(body["poses"])[7 * row:7 * row + 7]
            for shape in body["shapes"]:
                ends = [turned(pose, shape[end]) for end in ("from", "to")]   # the demo finger is all capsules
                r = shape["radius"]
                expected.append([min(e[0] for e in ends) - r, min(e[1] for e in ends) - r, max(e[0] for e in ends) + r, max(e[1] for e in ends) + r])
        self.assertEqual(len(drawn), len(expected))
        for box in expected:   # to 0.05 mm: the drawing is written with two digits
            nearest = min(drawn, key=lambda other: sum(abs(a - b) for a, b in zip(box, other)))
            for a, b in zip(box, nearest):
                self.assertAlmostEqual(a, b, delta=0.05)

    def test_with_webgl_it_would_be_three_dimensional(self):
        with Browser() as other:
            other.open(self.review)
            self.assertEqual(other.run("document.querySelector('.picture').dataset.view"), "3d")


if __name__ == "__main__":
    if not find():
        print("no Chromium found: the review cannot be opened here (Debian: chromium-headless-shell)")
        sys.exit(SKIPPED)
    unittest.main(verbosity=2)
