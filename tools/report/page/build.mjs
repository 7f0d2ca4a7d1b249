// Bundles source/ into built/, which is committed: whoever builds the program needs no node.
//     npm ci && npm run build

import { build } from "esbuild";
import { readFileSync, writeFileSync } from "node:fs";

const shared = { bundle: true, minify: true, target: "es2022", legalComments: "inline", charset: "ascii", logLevel: "info" };
await build({ ...shared, entryPoints: ["source/main.js"], format: "iife", outfile: "built/page.js" });
await build({ ...shared, entryPoints: ["source/style.css"], charset: "utf8", outfile: "built/page.css" });

// The page's script and style stand inside <script> and <style>: nothing in them may end those.
for (const [file, end] of [["built/page.js", "</script"], ["built/page.js", "<!--"], ["built/page.css", "</style"]])
  if (readFileSync(file, "utf8").toLowerCase().includes(end)) throw new Error(`${file} contains ${end}`);

const licence = (title, file) => `${title}\n${"-".repeat(title.length)}\n\n${readFileSync(file, "utf8").trim()}\n`;
writeFileSync("built/LICENCES", [
  "built/page.js holds, besides our own script, these components; built/page.css holds uPlot's style sheet.\n",
  licence("three.js 0.187.0", "node_modules/three/LICENSE"),
  licence("uPlot 1.6.32", "node_modules/uplot/LICENSE"),
].join("\n"));
