// The one script a page needs: starts page and engine and defines <fit-up>.
import "./language.js";
import { define } from "./element.js";
import * as fitup from "./fitup-widget.js";
import { open, prepare, program } from "./line.js";
const own = new URL("./", import.meta.url);
// Everything is asked for at once; of the two programs the page's goes first, since it paints.
const page = fetch(new URL("fitup-widget_bg.wasm", own));
const language = globalThis.fitUpLanguage;
const texts = fetch(new URL(`words/${language}.page.txt`, own)).then((answer) => answer.ok && answer.text()).catch(() => false);
// What the page will ask for in a moment, by its address; it takes the answer from here.
const early = new Map();
for (const address of [document.querySelector("fit-up")?.getAttribute("catalogue"), `${own}words/${language}.txt`]) {
  if (address) early.set(address, fetch(address));
}
for (const answer of early.values()) answer.catch(() => {});
const begun = fitup.default({ module_or_path: page });
program(begun.catch(() => {}));
prepare();
// A shadow root cannot bring a font of its own: the page's document has to know it.
const lettering = new URL("fonts/sheet-lettering.woff2", own);
document.fonts.add(new FontFace("Fit-up Lettering", `url("${lettering}")`, { display: "swap", weight: "400 700" }));

await begun;
fitup.home(own.href);
fitup.engines(open);
fitup.early((address) => {
  const answer = early.get(address);
  early.delete(address);
  return answer;
});
const known = await texts;
if (known) fitup.teach(language, known);
define(fitup);
globalThis.fitup = { engine };
dispatchEvent(new CustomEvent("fitup-ready"));

/** The engine as an interface for the page's own scripts: `const { load, teach } = await fitup.engine();` */
async function engine() {
  const interface_ = await import("./fitup-engine.js");
  await interface_.default({ module_or_path: await program() });
  interface_.teach(language, await (await fetch(new URL(`words/${language}.txt`, own))).text());
  return interface_;
}
// Only the widget's own pages work without a network; a dealer's page decides that for itself.
if ("serviceWorker" in navigator && own.origin === location.origin && location.pathname.startsWith(own.pathname)) {
  const { serviceWorker } = navigator;
  // A new version waits until it is asked for, so that nothing changes under a build in progress: the widget hears
  // `fitup-update` and calls `detail.take()` when it suits the user.
  const announce = (worker) => {
    const take = () => worker.postMessage({ take: true });
    dispatchEvent(new CustomEvent("fitup-update", { detail: { take } }));
  };
  let taken = serviceWorker.controller !== null;
  serviceWorker.addEventListener("controllerchange", () => {
    if (taken) location.reload();
    taken = true;
  });
  // It fetches the whole site: not while the reader waits for the engine.
  const compiled = await program().catch(() => {});
  if (compiled) serviceWorker.controller?.postMessage({ started: true });
  const registration = await serviceWorker.register(new URL("sw.js", own));
  if (registration.waiting && serviceWorker.controller) announce(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && serviceWorker.controller) announce(worker);
    });
  });
  // What came before the worker was in charge it could not keep.
  const catalogues = () => [...document.querySelectorAll("fit-up[catalogue]")].map((element) => new URL(element.getAttribute("catalogue"), location).href);
  const { active } = await serviceWorker.ready;
  if (!taken) active.postMessage({ keep: [location.href.split("#")[0], ...catalogues()].filter((address) => address.startsWith(location.origin)) });
  // A page that stays open for weeks hears of a new version, too.
  const look = () => registration.update().catch(() => {});
  setInterval(look, 3600_000);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && look());
}
