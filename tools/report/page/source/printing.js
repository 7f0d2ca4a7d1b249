// On paper: light colours, charts as drawn lines, folded tables open.

import { printedCurve } from "./printed_curves.js";
import { setPrinting } from "./theme.js";

export function preparePrinting(charts, several) {
  let opened = [];
  addEventListener("beforeprint", () => {
    setPrinting(true);
    for (const chart of charts.charts) {
      const drawn = printedCurve(chart, several);
      if (drawn) chart.figure.before(drawn);
    }
    opened = [...document.querySelectorAll("details[data-print]:not([open])")];
    for (const one of opened) one.open = true;
  });
  addEventListener("afterprint", () => {
    for (const drawn of document.querySelectorAll(".printed-curve")) drawn.remove();
    for (const one of opened) one.open = false;
    setPrinting(false);
  });
}
