// Keeps what it takes to go on measuring without a connection: the page of each piece that was
// opened, its drawings, style and script. While the server answers, its word counts.

const KEPT = "measuring";
// Some rounds' worth; the oldest go first.
const MOST = 400;

function isMeasuring({ pathname }) {
  return /^\/styles\/[^/]+\/rounds\/[^/]+\/measure$/.test(pathname);
}

// One page holds every point of its piece.
function key(address) {
  const url = new URL(address, location.href);
  if (isMeasuring(url)) url.searchParams.delete("point");
  url.hash = "";
  return url.href;
}

async function put(cache, address, answer) {
  if (answer.ok && !answer.redirected) await cache.put(key(address), answer);
}

async function keep(addresses) {
  const cache = await caches.open(KEPT);
  for (const address of addresses) {
    const { pathname } = new URL(address, location.href);
    // A drawing under its digest never changes.
    if (pathname.includes("/files/") && (await cache.match(address))) continue;
    try {
      await put(cache, address, await fetch(address));
    } catch {
      // The next visit tries again.
    }
  }
  const all = await cache.keys();
  await Promise.all(all.slice(0, Math.max(0, all.length - MOST)).map((old) => cache.delete(old)));
}

async function answered(request) {
  const { pathname } = new URL(request.url);
  const cache = await caches.open(KEPT);
  const known = await cache.match(key(request.url));
  if (known && pathname.includes("/files/")) return known;
  try {
    const answer = await fetch(request);
    if (request.mode === "navigate") await put(cache, request.url, answer.clone());
    return answer;
  } catch (cause) {
    if (known) return known;
    throw cause;
  }
}

addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => event.waitUntil(clients.claim()));

addEventListener("message", (event) => {
  const kept = keep(event.data.keep).then(() => event.source.postMessage({ kept: true }));
  event.waitUntil(kept);
});

addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET") return;
  const ours =
    request.mode === "navigate"
      ? isMeasuring(new URL(request.url))
      : ["style", "script", "image"].includes(request.destination);
  if (ours) event.respondWith(answered(request));
});
