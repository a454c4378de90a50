// The line from a page to an engine: a worker of its own, or where workers are forbidden the page itself.
const own = new URL("./", import.meta.url);
let module;

/** The engine's program, loaded and compiled once for all lines; `after` is what goes before it on a slow network. */
export function program(after) {
  module ??= (async () => {
    await after;
    const answer = await fetch(new URL("fitup-engine_bg.wasm", own));
    if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
    return WebAssembly.compileStreaming(answer);
  })();
  module.catch(() => { module = undefined; });
  return module;
}

class Line {
  #hear;
  #early = [];
  #port;
  #is_up = false;
  #is_over = false;
  constructor() {
    try {
      const worker = new Worker(new URL("worker.js", own), { type: "module" });
      worker.onmessage = ({ data }) => this.#took(data);
      worker.onerror = (event) => {
        event.preventDefault();
        if (this.#is_up) return this.#tell("trap", event.message ?? "");
        worker.terminate();
        this.#here();
      };
      this.#begin(worker);
    } catch {
      this.#here();
    }
  }
  /** The engine in the page itself. */
  async #here() {
    try {
      const { host } = await import("./worker.js");
      const take = host((data) => queueMicrotask(() => this.#took(data)));
      this.#tell("here");
      this.#begin({ postMessage: take, terminate() {} });
    } catch (error) {
      this.#tell("missing", String(error));
    }
  }
  #begin(port) {
    this.#port = port;
    program().then((module) => !this.#is_over && port === this.#port && port.postMessage({ module }), (error) => {
      this.#tell(error instanceof WebAssembly.CompileError ? "cut-off" : "missing", String(error));
    });
  }
  #took({ kind, value }) {
    if (kind === "up") this.#is_up = true;
    this.#tell(kind, value);
  }
  #tell(kind, value) {
    if (this.#is_over) return;
    if (this.#hear) this.#hear(kind, value);
    else this.#early.push([kind, value]);
  }
  /** Sets who hears; what was said before is said again, but not before this returns. */
  listen(hear) {
    queueMicrotask(() => {
      this.#hear = hear;
      for (const [kind, value] of this.#early.splice(0)) this.#tell(kind, value);
    });
  }
  teach(lang, texts) { this.#port.postMessage({ teach: [lang, texts] }); }
  read(bytes) { this.#port.postMessage({ read: bytes }); }
  ask(bytes) { this.#port.postMessage({ ask: bytes }); }
  end() {
    this.#is_over = true;
    this.#port?.terminate();
  }
}

let ready;
/** Begins an engine before anything asks for one. */
export function prepare() { ready = new Line(); }
/** Opens a line to an engine; `hear` is called with the kind of what comes and with what comes. */
export function open(hear) {
  const line = ready ?? new Line();
  ready = undefined;
  line.listen(hear);
  return line;
}
