// Builds the review from the data that stands in the page.

import { el } from "./dom.js";
import { floats } from "./numbers.js";
import { makeMotion } from "./motion.js";
import { sharedScales } from "./scales.js";
import { makePlayback } from "./playback.js";
import { startTheme } from "./theme.js";
import { makeSheet } from "./sheet.js";
import { caution, contents, titleBlock } from "./title_block.js";
import { verdict } from "./verdict.js";
import { comparison } from "./comparison.js";
import { stage } from "./stage.js";
import { curves } from "./curves.js";
import { flow } from "./flow.js";
import { margins } from "./margins.js";
import { limits } from "./limits.js";
import { studies } from "./study.js";
import { drawing } from "./drawing.js";
import { inputs, validity, values } from "./appendix.js";
import { preparePrinting } from "./printing.js";

function build() {
  const data = JSON.parse(document.getElementById("data").textContent);
  const main = document.getElementById("review");
  const { records } = data;
  const several = records.length > 1;
  startTheme();

  main.append(titleBlock(data), caution(data));
  const sheet = makeSheet(main);
  const charts = records.length ? inMotion(main, sheet, data) : { charts: [] };
  limits(sheet, data);
  studies(sheet, data);
  if (records.length) drawing(sheet, data);
  validity(sheet, data);
  values(sheet, data);
  inputs(sheet, data);
  main.querySelector(".caution").after(contents(sheet.index));
  main.append(el("footer", { class: "sheet-foot" }, el("span", {}, "Design predictions, not certification."), el("span", {}, data.made_by ?? "")));
  preparePrinting(charts, several);
  main.dataset.ready = String(Math.round(performance.now()));
}

/// What runs are shown by: verdict, pictures in motion, curves, energy, margins.
function inMotion(main, sheet, data) {
  const { records } = data;
  const several = records.length > 1;
  const motions = records.map(makeMotion);
  const scales = sharedScales(motions);
  const longest = motions.reduce((a, b) => ((b.times.at(-1) ?? 0) > (a.times.at(-1) ?? 0) ? b : a));
  const player = makePlayback(longest.times.at(-1) ?? 0, longest.times);

  verdict(sheet, data, player);
  comparison(sheet, data);
  const scene = stage(sheet, data, motions, scales, player);
  const charts = curves(records, player);
  const bounds = records.map((record) => `${several ? `${record.label}: ` : ""}${record.rows?.bound_text ?? ""}`).join("; ");
  const curvesSection = sheet.section("curves", "Curves",
    el("p", { class: "lead controls" }, "Click in a chart to show that instant, drag across it to look closer (all charts follow), switch curves on and off below it.", " ", charts.reset),
    charts.box,
    el("p", { class: "small muted" }, several && "A drawn solid, B dashed. ", "Drawn rows: ", el("bdi", {}, bounds), "."));
  curvesSection.addEventListener("keydown", scene.onKey);

  // The controls stay in sight from the pictures to the end of the curves.
  const group = el("div", { class: "with-transport" });
  scene.section.before(group);
  group.append(scene.section, curvesSection, scene.controls);

  flow(sheet, data);
  margins(sheet, data, player);

  const wished = /^#t=([0-9.]+)$/.exec(location.hash);
  if (wished) player.seek(Number(wished[1]));
  return charts;
}

build();
