// The worker answers every request of the app on this device: files from its
// cache, pages from the engine. After the first visit no network is needed.
"use strict";

const version = "VERSION";
const files = ["index.html", "boot.js", "boot.css", "manifest.webmanifest", "icon.svg", "wasm_exec.js"];
const packed = "engine.wasm.gz", unpacked = "engine.wasm";
const scope = new URL(self.registration.scope).pathname;
const shelf = "boughline " + version;

importScripts("wasm_exec.js?" + version);

// install keeps all files and boots the engine: a version that does not boot
// never takes the place of one that does.
self.addEventListener("install", (event) => event.waitUntil((async () => {
  const cache = await caches.open(shelf);
  await cache.addAll(files.map((name) => new Request(scope + name, { cache: "no-cache" })));
  const answer = await fetch(scope + packed, { cache: "no-cache" });
  if (!answer.ok) throw new Error("the engine was not found: " + answer.status);
  const wasm = answer.body.pipeThrough(new DecompressionStream("gzip"));
  await cache.put(scope + unpacked, new Response(wasm, { headers: { "Content-Type": "application/wasm" } }));
  await engine();
})()));

self.addEventListener("activate", (event) => event.waitUntil((async () => {
  for (const name of await caches.keys()) {
    if (name.startsWith("boughline ") && name !== shelf) await caches.delete(name);
  }
  await self.clients.claim();
})()));

// A page offers a new version that waits; it is never forced.
self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});

let booting = null;
function engine() {
  booting ??= boot().catch((error) => { booting = null; throw error; });
  return booting;
}

async function boot() {
  const cache = await caches.open(shelf);
  const wasm = await cache.match(scope + unpacked);
  if (!wasm) throw new Error("the engine is not in the cache");
  const go = new Go();
  go.env = { BOUGHLINE_BASE: scope };
  const ready = new Promise((resolve) => { self.boughlineReady = resolve; });
  const { instance } = await WebAssembly.instantiateStreaming(wasm, go.importObject);
  const ended = go.run(instance).then(() => { booting = null; throw new Error("the engine has ended"); });
  ended.catch(() => {});
  return Promise.race([ready, ended]);
}

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (url.origin === location.origin && url.pathname.startsWith(scope)) event.respondWith(answer(event.request, url));
});

async function answer(request, url) {
  try {
    if (request.method === "GET" && files.includes(url.pathname.slice(scope.length))) {
      const kept = await (await caches.open(shelf)).match(url.pathname);
      if (kept) return kept;
    }
    const serve = await engine();
    const head = [];
    request.headers.forEach((value, name) => head.push(name, value));
    const body = request.method === "GET" || request.method === "HEAD" ? null : new Uint8Array(await request.arrayBuffer());
    return await serve(request.method, url.pathname + url.search, head, body);
  } catch (error) {
    const text = "The app could not answer: " + error.message + "\nNothing that was kept is lost. Reload the page to try again.";
    return new Response(text, { status: 503, headers: { "Content-Type": "text/plain; charset=utf-8" } });
  }
}
