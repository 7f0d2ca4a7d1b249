"""Pictures of a review and of the page of a study: take_screenshots.py REVIEW STUDY FOLDER. tools/screenshots calls it."""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "tests" / "report"))
from browser import Browser  # noqa: E402

# name, width, height, pixels a point, dark, what stands at the top
STUDY_PICTURES = [("report-study", 1280, 900, 1, False, "#designs")]
PICTURES = [
    ("report-laptop", 1280, 900, 1, False, "#review"),
    ("report-dark", 1280, 900, 1, True, "#motion"),
    ("report-phone", 390, 844, 1, False, "#motion"),
]


def main(review, study, folder):
    with Browser() as browser:
        for page, (name, width, height, scale, dark, top) in [(review, one) for one in PICTURES] + [(study, one) for one in STUDY_PICTURES]:
            browser.size(width, height, scale, touch=width < 500)
            browser.dark(dark)
            # When the grip has just closed; each address differs, so that each is loaded anew.
            browser.open(page, f"#t=0.335{len(name)}")
            browser.run(f"document.querySelector('{top}').scrollIntoView({{block: 'start', behavior: 'instant'}})")
            time.sleep(0.7)   # a drawing by software takes its time
            (Path(folder) / f"{name}.png").write_bytes(browser.picture())


main(*sys.argv[1:])
