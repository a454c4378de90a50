// Judges a build under Node.js, with the engine of the built site.
//
//   node crates/engine/examples/judge.mjs dist www/catalogue/demo.json '{"format":1,"machine":"wren"}'
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const [site, catalogue, build] = process.argv.slice(2);
const { initSync, load, teach } = await import(pathToFileURL(resolve(site, "fitup-engine.js")));
initSync({ module: readFileSync(resolve(site, "fitup-engine_bg.wasm")) });
teach("en", readFileSync(resolve(site, "words/en.txt"), "utf8"));

const report = load(readFileSync(catalogue, "utf8")).evaluate(JSON.parse(build), "en", "metric");
console.log(JSON.stringify({ unknown: report.unknown ?? [], verdict: report.verdict, headline: report.headline.text }));
