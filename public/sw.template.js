// The worker: keeps one whole version of Galeframe on the phone, so that it opens with no signal.
// `cargo xtask precache` drops these comment lines, fills in the version and the file list, and writes sw.js.
//
// Contract with the page:
// 1. After the first answer is shown, and only in release builds, register "sw.js" (the address is read against
//    <base>) with updateViaCache "none". When `navigator.serviceWorker.ready` resolves, the app is kept on this phone.
// 2. A new version is there when `registration.waiting` is set at the start, or when an installing worker reaches
//    "installed" while the page has a controller. Offer it; never switch unasked.
// 3. When it is taken: put what is being typed into storage, then post "take-over" to `registration.waiting`.
// 4. On "controllerchange" reload once. Skip the first one on a page that began without a controller: that is this
//    worker greeting a first visit, and a reload would interrupt the typing. The next one counts again.
// 5. When the page becomes visible, call `registration.update()`: an installed app can stay open for days.
//
// Why versions never mix: a version answers from its own cache only, every file is checked against its digest, and an
// install that misses one file, or meets a file of another version, fails whole and leaves the old version working.
const VERSION = "__VERSION__";
const FILES = __FILES__;
const FAMILY = `galeframe ${self.registration.scope} `; // one site may serve more than one copy
const CACHE = FAMILY + VERSION;

// A name that carries its own hash never changes, so the copy the page has just loaded will do.
const firstTry = (name) => (/-[0-9a-f]{16}[._]/.test(name) ? "default" : "no-cache");

async function fetched([name, integrity]) {
  const ask = (cache) => fetch(new Request(name, { cache, integrity }));
  const reply = await ask(firstTry(name)).catch(() => ask("reload"));
  if (!reply.ok) throw new Error(`${name}: ${reply.status}`);
  return [name, reply];
}

async function install() {
  const replies = await Promise.all(FILES.map(fetched));
  try {
    const cache = await caches.open(CACHE);
    await Promise.all(replies.map(([name, reply]) => cache.put(name, reply)));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function activate() {
  const old = (await caches.keys()).filter((key) => key.startsWith(FAMILY) && key !== CACHE);
  await Promise.all(old.map((key) => caches.delete(key)));
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  const same = await cache.match(request, { ignoreSearch: true, ignoreVary: true });
  if (same) return same;
  const page = request.mode === "navigate" ? await cache.match("./", { ignoreVary: true }) : undefined;
  return page ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => {
  if (event.data === "take-over") self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});
