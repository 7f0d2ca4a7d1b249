"""Pictures of pages that tools/screenshots has written: take_screenshots.py PAGES FOLDER."""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "tests" / "report"))
from browser import Browser  # noqa: E402

# page, name of the picture, width, height, dark, the instant shown, what stands at the top
PICTURES = [
    ("grasp-medium", "report-laptop", 1280, 900, False, 0.335, "#review"),   # when the grip has just closed
    ("grasp-medium", "report-dark", 1280, 900, True, 0.335, "#motion"),
    ("grasp-medium", "report-phone", 390, 844, False, 0.335, "#motion"),
    ("hand-bottle", "report-hand", 1280, 900, False, 0.4, "#motion"),
    ("time-against-grip", "report-study", 1280, 900, False, 0, "#designs"),
    ("pulley-map", "report-map", 1280, 700, False, 0, "#findings"),
]


def main(pages, folder):
    with Browser() as browser:
        for page, name, width, height, dark, instant, top in PICTURES:
            browser.size(width, height, touch=width < 500)
            browser.dark(dark)
            browser.open(Path(pages) / f"{page}.html", f"#t={instant}")
            browser.run(f"document.querySelector('{top}').scrollIntoView({{block: 'start', behavior: 'instant'}})")
            time.sleep(0.7)   # a drawing by software takes its time
            (Path(folder) / f"{name}.png").write_bytes(browser.picture())


main(*sys.argv[1:])
