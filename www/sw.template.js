// Keeps the whole site for use without a network; a new version arrives whole or not at all.
const VERSION = "{{VERSION}}";
const FILES = ["{{FILES}}"];
const CACHE = `fit-up ${VERSION}`;
self.addEventListener("install", (event) => event.waitUntil((async () => {
  const cache = await caches.open(CACHE);
  await cache.addAll(["./", ...FILES].map((file) => new Request(file, { cache: "reload" })));
})()));
self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});
self.addEventListener("activate", (event) => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith("fit-up ") && name !== CACHE) await caches.delete(name);
  await self.clients.claim();
})()));
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) return;
  event.respondWith((async () => {
    const cache = await caches.open(CACHE);
    const key = event.request.mode === "navigate" && url.pathname.endsWith("/") ? "./" : event.request;
    return (await cache.match(key, { ignoreSearch: true, ignoreVary: true })) ?? fetch(event.request);
  })());
});
