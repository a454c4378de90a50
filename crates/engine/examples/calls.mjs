// Every call of the engine's interface under Node.js, on a catalogue.
//
//   node crates/engine/examples/calls.mjs dist www/catalogue/demo.json
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const [site, file] = process.argv.slice(2);
const { initSync, load, teach, check } = await import(pathToFileURL(resolve(site, "fitup-engine.js")));
initSync({ module: readFileSync(resolve(site, "fitup-engine_bg.wasm")) });
teach("en", readFileSync(resolve(site, "words/en.txt"), "utf8"));

const text = readFileSync(file, "utf8");
const catalogue = load(text);
const items = catalogue.items();
const machine = items.machines[0].id;
const sets = catalogue.sets({ format: 1, machine }, "price", "en", "metric");
const [build, other] = sets.sets.map((set) => set.build);
const listed = [...items.frames, ...items.implements].filter((item) => item.parts_list).map((item) => item.id);
const number = listed.length > 0 ? catalogue.lists({ item: listed[0] }, { item: listed[0] }, "en").assemblies[0].lines[0].first.part : "1";

// What a call throws: its code.
const refused = (call) => {
  try {
    call();
    return null;
  } catch (error) {
    return error instanceof Error ? error.code : "no Error";
  }
};

console.log(JSON.stringify({
  problems: check(text, "en").filter((problem) => problem.severity === "error").length,
  broken: check("{", "en").map((problem) => problem.text),
  machines: items.machines.length,
  sets: sets.sets.length,
  verdict: catalogue.evaluate(build, "en", "metric").verdict,
  bolts: Math.max(...sets.sets.map((set) => catalogue.evaluate(set.build, "en", "metric").bolts.length)),
  options: catalogue.completions(build).machines.length,
  remedies: catalogue.remedies(build, "en", "metric").length,
  checks: catalogue.checks(build, "en", "metric").length,
  candidates: catalogue.identify({ numbers: [number] }, "en", "metric").candidates.length,
  compared: catalogue.compare([build, other ?? build], "en", "metric").rows.length,
  lists: catalogue.lists("Part;Qty\nHK-1;2\n", "HK 1\n", "en").assemblies[0].sameness,
  length: catalogue.figures(build, "en", "metric").footprint.length_mm,
  drawing: catalogue.drawing(build, "side", 800, 400, "en", "metric").startsWith("<svg"),
  link: catalogue.read_link(catalogue.link(build)).machine === machine,
  refused: {
    unknown: refused(() => catalogue.completions({ format: 1, machine: "zzz" })),
    build: refused(() => catalogue.remedies({ format: 1, machin: "x" }, "en", "metric")),
    order: refused(() => catalogue.sets(build, "colour", "en", "metric")),
    observed: refused(() => catalogue.identify({}, "en", "metric")),
    list: refused(() => catalogue.lists("", "HK-1\n", "en")),
    item: refused(() => catalogue.lists({ item: "zzz" }, "HK-1\n", "en")),
    compare: refused(() => catalogue.compare([], "en", "metric")),
    view: refused(() => catalogue.drawing(build, "front", 800, 400, "en", "metric")),
    link: refused(() => catalogue.read_link("zzz")),
  },
}));
