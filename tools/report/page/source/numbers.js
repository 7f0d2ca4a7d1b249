// Arrays out of the data and numbers into text.

/// {n, width, base64} -> Float32Array, row-major. The data is little-endian, as is every machine a browser runs on.
export function floats(array) {
  if (!array?.base64) return new Float32Array(0);
  const text = atob(array.base64);
  const bytes = new Uint8Array(text.length);
  for (let k = 0; k < text.length; ++k) bytes[k] = text.charCodeAt(k);
  return new Float32Array(bytes.buffer, 0, bytes.length >> 2);
}

/// As `digits`, without zeros at the end: 95, not 95.00.
export const tidy = (value, significant = 3) => digits(value, significant).replace(/(\.\d*?)0+(?=$|×)/, "$1").replace(/\.(?=$|×)/, "");

const RAISED = { "-": "⁻", 0: "⁰", 1: "¹", 2: "²", 3: "³", 4: "⁴", 5: "⁵", 6: "⁶", 7: "⁷", 8: "⁸", 9: "⁹" };

/// Four significant digits (or as many as asked), with a true minus sign; "–" stands for no value.
export function digits(value, significant = 4) {
  if (value === null || value === undefined || Number.isNaN(value)) return "–";
  if (value === 0) return "0";
  const size = Math.abs(value);
  let text;
  if (size >= 1e6 || size < 1e-4) {
    const [mantissa, exponent] = value.toExponential(significant - 1).split("e");
    text = `${mantissa}×10${[...String(Number(exponent))].map((c) => RAISED[c]).join("")}`;
  } else {
    const decimals = Math.max(0, significant - 1 - Math.floor(Math.log10(size)));
    text = value.toFixed(Math.min(decimals, 8));
  }
  return text.replace("-", "−");
}

/// Time to a tenth of a millisecond, or coarser in a long run; of one length, so that it does not jump about.
export const seconds = (time, end = 1) => `${time.toFixed(end >= 1000 ? 1 : end >= 100 ? 2 : end >= 20 ? 3 : 4)} s`;

/// The largest of 1, 2, 5 × 10^k that is at most `value`.
export function roundBelow(value) {
  const power = 10 ** Math.floor(Math.log10(value));
  const lead = value / power;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power;
}

/// Sets place.row and place.part so that time lies between rows row and row + 1. Starts looking where it was last:
/// playback moves on by a row or two.
export function locate(times, time, place) {
  const last = times.length - 2;
  if (last < 0 || !(time > times[0])) { place.row = 0; place.part = 0; return; }
  if (time >= times[last + 1]) { place.row = last; place.part = 1; return; }
  let row = Math.min(place.row, last);
  if (!(times[row] <= time && time < times[row + 1])) {
    let low = 0, high = last;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (times[middle] <= time) low = middle; else high = middle - 1;
    }
    row = low;
  }
  place.row = row;
  const width = times[row + 1] - times[row];
  place.part = width > 0 ? (time - times[row]) / width : 0;
}
