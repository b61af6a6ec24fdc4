/*
 * Keeps the files of the browser sheet, so that it opens without a network after the first visit. While there is a
 * network every file comes from there, so that nobody works with an old version. The build fills in what follows.
 */
const VERSION = "version";
const FILES = ["./"];

const KEPT = `canyard-${VERSION}`;

self.addEventListener("install", (event) => {
  const requests = FILES.map((file) => new Request(file, { cache: "reload" }));
  event.waitUntil(caches.open(KEPT).then((cache) => cache.addAll(requests)));
});

self.addEventListener("activate", (event) => event.waitUntil(dropOlder()));

self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  const isOurs = new URL(url).origin === self.location.origin;
  if (method === "GET" && isOurs) event.respondWith(fetchOrKept(event.request));
});

async function dropOlder() {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith("canyard-") && name !== KEPT);
  await Promise.all(older.map((name) => caches.delete(name)));
}

async function fetchOrKept(request) {
  try {
    return await fetch(request);
  } catch (withoutNetwork) {
    const cache = await caches.open(KEPT);
    const kept = await cache.match(request, { ignoreSearch: true });
    if (kept) return kept;
    throw withoutNetwork;
  }
}
