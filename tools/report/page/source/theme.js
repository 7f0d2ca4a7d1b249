// Light and dark. The browser's wish holds until the reader chooses; paper is always light.

const listeners = [];
let printing = false;
let chosen = null;
const wish = matchMedia("(prefers-color-scheme: dark)");

const dark = () => !printing && (chosen ?? (wish.matches ? "dark" : "light")) === "dark";

function apply() {
  document.documentElement.dataset.theme = dark() ? "dark" : "light";
  for (const listener of listeners) listener();
}

export function startTheme() {
  wish.addEventListener("change", apply);
  apply();
}
export const isDark = dark;
export function toggleTheme() { chosen = dark() ? "light" : "dark"; apply(); }
export function setPrinting(on) { printing = on; apply(); }
export function onTheme(listener) { listeners.push(listener); }

/// A colour of the style sheet, for what is drawn on a canvas.
export const paint = (variable) => getComputedStyle(document.documentElement).getPropertyValue(variable).trim();
