// Keeps the site for use without a network. The program is kept whole: a version arrives with all its files or not at all, and
// the one before it stays until it has started. Everything else, catalogues and pages, is asked for first; the last copy is for
// when the network does not answer.
const VERSION = "{{VERSION}}";
const FILES = ["{{FILES}}"];
const PROGRAM = "fit-up program ";
const OURS = PROGRAM + VERSION;
const KEPT = "fit-up kept";
const NOTES = "fit-up notes";
const PATIENCE = 4000; // ms until an answer has to begin
const OPENINGS = 2; // that a version may fail to start
const MOST = 100; // copies that are kept
const files = new Set(FILES.map((file) => new URL(file, self.location).href));

self.addEventListener("install", (event) => event.waitUntil((async () => {
  const cache = await caches.open(OURS);
  await cache.addAll(FILES.map((file) => new Request(file, { cache: "reload" })));
})()));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => event.waitUntil((async () => {
  const { take, started, keep } = event.data;
  if (take) await self.skipWaiting();
  if (started && (await caches.has(OURS))) {
    for (const name of await earlier()) await caches.delete(name);
    await caches.delete(NOTES);
  }
  for (const address of keep ?? []) await fresh(new Request(address), event).catch(() => {});
})()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  if (request.mode === "navigate") event.respondWith(page(event));
  else event.respondWith(files.has(bare(request)) ? ofProgram(bare(request), request) : newest(event));
});

/** The address without what is asked of it. */
function bare(request) {
  const url = new URL(request.url);
  url.search = url.hash = "";
  return url.href;
}
async function ofProgram(address, request) {
  const cache = await caches.open(await serving());
  return (await cache.match(address, { ignoreVary: true })) ?? fetch(request);
}
async function page(event) {
  await count();
  return newest(event).catch(async (error) => {
    const address = bare(event.request).replace(/\/$/, "/index.html");
    const cache = await caches.open(await serving());
    const own = await cache.match(address, { ignoreVary: true });
    if (!own) throw error;
    return own;
  });
}
/** From the network, or the copy that was kept last. */
async function newest(event) {
  const asked = fresh(event.request, event);
  const late = new Promise((done) => setTimeout(done, PATIENCE));
  const answer = await Promise.race([asked, late]).catch(() => {});
  if (answer && answer.status < 500) return answer;
  const cache = await caches.open(KEPT);
  return (await cache.match(event.request, { ignoreVary: true })) ?? asked;
}
/** From the network. A good answer is kept, with the time it came. */
async function fresh(request, event) {
  const answer = await fetch(request.mode === "navigate" ? request : new Request(request, { cache: "no-cache" }));
  if (answer.status === 200 && answer.type === "basic") event.waitUntil(keep(request, answer.clone()));
  return answer;
}
async function keep(request, answer) {
  const headers = new Headers(answer.headers);
  headers.set("fitup-kept", new Date().toISOString());
  const cache = await caches.open(KEPT);
  // A full disk costs the copy, not the answer.
  await cache.put(request, new Response(answer.body, { headers })).catch(() => {});
  const kept = await cache.keys();
  for (const old of kept.slice(0, -MOST)) await cache.delete(old);
}

// A version that does not start gives way to the one before it.
async function count() {
  if (!(await earlier()).length || !(await caches.has(OURS))) return;
  const notes = await caches.open(NOTES);
  const note = await notes.match(VERSION);
  const openings = note ? Number(await note.text()) : 0;
  if (openings < OPENINGS) await notes.put(VERSION, new Response(openings + 1));
  else await caches.delete(OURS);
}
async function earlier() {
  const programs = (await caches.keys()).filter((name) => name.startsWith(PROGRAM));
  const at = programs.indexOf(OURS);
  return at < 0 ? programs : programs.slice(0, at);
}
async function serving() {
  return (await caches.has(OURS)) ? OURS : (await earlier()).pop() ?? OURS;
}
