// The one script a page needs: starts the widget and defines <fit-up>.
import { define } from "./element.js";
import * as fitup from "./fitup-widget.js";
await fitup.default({ module_or_path: new URL("fitup-widget_bg.wasm", import.meta.url) });
define(fitup);
globalThis.fitup = fitup;
dispatchEvent(new CustomEvent("fitup-ready"));
const own = new URL("./", import.meta.url);
// Only the widget's own pages work without a network; a dealer's page decides that for itself.
if ("serviceWorker" in navigator && own.origin === location.origin && location.pathname.startsWith(own.pathname)) {
  navigator.serviceWorker.register(new URL("sw.js", own));
}
