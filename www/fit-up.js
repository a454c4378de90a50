// The one script a page needs: starts the widget and defines <fit-up>.
import { define } from "./element.js";
import * as fitup from "./fitup-widget.js";
const own = new URL("./", import.meta.url);
// A shadow root cannot bring a font of its own: the page's document has to know it.
const lettering = new URL("fonts/sheet-lettering.woff2", own);
document.fonts.add(new FontFace("Fit-up Lettering", `url("${lettering}")`, { display: "swap", weight: "400 700" }));
// The texts of the language that the reader most likely wants come together with the widget, which
// asks for whatever else is wanted.
const languages = ["en", "de", "es", "fr"];
const wishes = [document.querySelector("fit-up")?.lang, ...navigator.languages].map((tag) => tag?.slice(0, 2));
const lang = wishes.find((tag) => languages.includes(tag)) ?? languages[0];
const texts = fetch(new URL(`words/${lang}.txt`, own)).then((answer) => answer.ok && answer.text()).catch(() => false);
await fitup.default({ module_or_path: new URL("fitup-widget_bg.wasm", own) });
fitup.home(own.href);
const known = await texts;
if (known) fitup.teach(lang, known);
define(fitup);
globalThis.fitup = fitup;
dispatchEvent(new CustomEvent("fitup-ready"));

// Only the widget's own pages work without a network; a dealer's page decides that for itself.
if ("serviceWorker" in navigator && own.origin === location.origin && location.pathname.startsWith(own.pathname)) {
  // A new version waits until it is asked for, so that nothing changes under a build in progress:
  // the page hears `fitup-update` and calls `detail.take()` when it suits the user.
  const announce = (worker) => {
    const take = () => worker.postMessage("take over");
    dispatchEvent(new CustomEvent("fitup-update", { detail: { take } }));
  };
  let taken = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (taken) location.reload();
    taken = true;
  });
  const registration = await navigator.serviceWorker.register(new URL("sw.js", own));
  if (registration.waiting && navigator.serviceWorker.controller) announce(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && navigator.serviceWorker.controller) announce(worker);
    });
  });
}
