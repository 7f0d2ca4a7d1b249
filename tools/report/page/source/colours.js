// Colours of ours, told apart without seeing hue: the tension scale changes steadily in lightness, curves of one
// chart differ in lightness as well, and what is good or bad is always said in a word and a shape too.

import { isDark } from "./theme.js";

// From slack to the highest tension; on paper towards the dark, on dark towards the light.
const TENSION_LIGHT = [[0.82, 0.60, 0.10], [0.87, 0.40, 0.16], [0.72, 0.21, 0.33], [0.42, 0.13, 0.42], [0.16, 0.08, 0.32]];
const TENSION_DARK = [[0.40, 0.36, 0.72], [0.64, 0.38, 0.74], [0.88, 0.46, 0.58], [0.97, 0.68, 0.42], [1.0, 0.92, 0.62]];

/// share 0..1 of the scale -> [r, g, b] in `out`.
export function tensionColour(share, out) {
  const stops = isDark() ? TENSION_DARK : TENSION_LIGHT;
  const place = Math.min(Math.max(share || 0, 0), 1) * (stops.length - 1);
  const k = Math.min(Math.floor(place), stops.length - 2);
  for (let c = 0; c < 3; ++c) out[c] = stops[k][c] + (place - k) * (stops[k + 1][c] - stops[k][c]);
  return out;
}
export function tensionCss(share) {
  const [r, g, b] = tensionColour(share, [0, 0, 0]).map((c) => Math.round(255 * c));
  return `rgb(${r},${g},${b})`;
}
export const tensionGradient = () =>
  `linear-gradient(to right, ${[0, 0.25, 0.5, 0.75, 1].map(tensionCss).join(", ")})`;

const CURVES_LIGHT = ["#123f6d", "#c4551b", "#2a8c82", "#8b2f6b", "#b08a00", "#5b6b7a", "#3f7fd0", "#7a4a1e"];
const CURVES_DARK = ["#8ec5ff", "#ff9a5c", "#5fd3c3", "#e18bd0", "#e6cf5a", "#b6c2cc", "#4f8fe6", "#d0a070"];
export const COLOURS = CURVES_LIGHT.length;
export const curveColour = (k) => (isDark() ? CURVES_DARK : CURVES_LIGHT)[k % COLOURS];
