// Holds one engine: takes what the page sends and sends what the engine says. As a worker it does so at once; where a page may
// not have workers it hosts the engine in the page itself.
import init, { Engine } from "./fitup-engine.js";

export function host(post) {
  let engine;
  let turning = false;
  const turn = new MessageChannel();
  const attempt = (work) => {
    try {
      work();
    } catch (error) {
      post({ kind: "trap", value: String(error) });
    }
  };
  const say = (kind, bytes) => bytes && post({ kind, value: bytes }, [bytes.buffer]);
  // Between two parts of an answer a newer request gets its turn.
  const again = () => {
    if (!turning) turn.port2.postMessage(0);
    turning = true;
  };
  turn.port1.onmessage = () => attempt(() => {
    turning = false;
    const part = engine.step();
    if (!part) return post({ kind: "done" });
    say("said", part);
    again();
  });
  const begin = async (module) => {
    post({ kind: "begun" });
    await init({ module_or_path: module });
    engine = new Engine();
    post({ kind: "up", value: Engine.version() });
  };
  globalThis.onEnginePanic = (text) => post({ kind: "panic", value: text });
  return ({ module, teach, read, ask }) => {
    if (module) {
      begin(module).catch((error) => {
        const kind = error instanceof WebAssembly.LinkError ? "other-version" : "missing";
        post({ kind, value: String(error) });
      });
    }
    if (teach) attempt(() => engine.teach(...teach));
    if (read) attempt(() => say("read", engine.read(read)));
    if (ask) {
      attempt(() => {
        say("said", engine.ask(ask));
        again();
      });
    }
  };
}

if (typeof document === "undefined") {
  const take = host((message, given = []) => postMessage(message, given));
  onmessage = ({ data }) => take(data);
}
