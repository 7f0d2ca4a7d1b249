// Bundles source/ into built/, which is committed: whoever builds the program needs no node.
//     npm ci && npm run build
//     node build.mjs --check      # writes nothing; fails when built/ is not what source/ gives

import { build } from "esbuild";
import { readFileSync, writeFileSync } from "node:fs";

const shared = { bundle: true, minify: true, target: "es2022", legalComments: "inline", write: false };
const bundle = async (options) => (await build({ ...shared, ...options })).outputFiles[0].text;
const built = {
  "page.js": await bundle({ entryPoints: ["source/main.js"], format: "iife", charset: "ascii" }),
  "page.css": await bundle({ entryPoints: ["source/style.css"], charset: "utf8" }),
};

// The page's script and style stand inside <script> and <style>: nothing in them may end those.
for (const [file, end] of [["page.js", "</script"], ["page.js", "<!--"], ["page.css", "</style"]])
  if (built[file].toLowerCase().includes(end)) throw new Error(`${file} contains ${end}`);

const licence = (title, file) => `${title}\n${"-".repeat(title.length)}\n\n${readFileSync(file, "utf8").trim()}\n`;
built.LICENCES = [
  "built/page.js holds, besides our own script, these components; built/page.css holds uPlot's style sheet.\n",
  licence("three.js 0.187.0", "node_modules/three/LICENSE"),
  licence("uPlot 1.6.32", "node_modules/uplot/LICENSE"),
].join("\n");

for (const [file, text] of Object.entries(built)) {
  if (!process.argv.includes("--check")) writeFileSync(`built/${file}`, text);
  else if (readFileSync(`built/${file}`, "utf8") !== text) {
    console.error(`built/${file} is not what source/ gives; run: npm run build`);
    process.exitCode = 1;
  }
}
