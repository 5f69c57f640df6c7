// Keeps a page live: when the stream says that something happened, the page is fetched again and
// its parts with `data-live="name"` are replaced by the fresh ones of the same name. A part in which
// somebody writes is left alone until they ask for it. Without script, pages are reloaded by hand.

const place = document.querySelector("[data-stream]");
const here = location.pathname + location.search;
const POLL = 30000;
const FAILURES = 2;

// The HTML of every part as the server sent it: what scripts changed since then is no news.
const sent = new WeakMap();
// Parts that have news behind a form that somebody fills in: the old element and the fresh one.
const waiting = new Map();

let source = null;
let failures = 0;
let poll = 0;
let soon = 0;
let looking = false;
let again = false;

function remember(root) {
  for (const part of [root, ...root.querySelectorAll("[data-live]")]) {
    if (part.matches("[data-live]") && !sent.has(part)) sent.set(part, part.outerHTML);
  }
}

/** The parts below `root` that stand in no other part below it. */
function outermost(root) {
  return [...root.querySelectorAll("[data-live]")].filter((part) => {
    const above = part.parentElement.closest("[data-live]");
    return !above || !root.contains(above) || above === root;
  });
}

/** A panel stands on one page and came from another one. */
function pageOf(part) {
  const from = part.closest("[data-page]");
  return from ? from.dataset.page : here;
}

function fields(root) {
  return [...root.querySelectorAll("form input, form select, form textarea")];
}

function isChanged(field) {
  if (field.type === "file") return field.files.length > 0;
  if (field.type === "checkbox" || field.type === "radio") {
    return field.checked !== field.defaultChecked;
  }
  if (field.tagName === "SELECT") {
    const chosen = [...field.options].findIndex((option) => option.defaultSelected);
    return field.selectedIndex !== Math.max(chosen, 0);
  }
  return field.value !== field.defaultValue;
}

function isBusy(part) {
  return part.contains(document.activeElement) || fields(part).some(isChanged);
}

/** The HTML of a part without what stands in the parts inside it. */
function frameOf(html) {
  const page = new DOMParser().parseFromString(html, "text/html");
  const part = page.body.firstElementChild;
  if (!part) return html;
  for (const inner of outermost(part)) inner.replaceChildren();
  return part.outerHTML;
}

function put(part, fresh) {
  const node = document.importNode(fresh, true);
  sent.set(node, fresh.outerHTML);
  // Which of several things is looked at, and what is unfolded, is the reader's own.
  for (const old of part.querySelectorAll("input[id], details[id]")) {
    const next = node.querySelector(`#${CSS.escape(old.id)}`);
    if (!next) continue;
    if (old.tagName === "DETAILS") next.open = old.open;
    else if (!old.form && old.type === "radio") next.checked = old.checked;
  }
  waiting.delete(part);
  part.replaceWith(node);
  for (const inner of node.querySelectorAll("[data-live]")) sent.set(inner, inner.outerHTML);
}

function swap(part, page) {
  const name = CSS.escape(part.dataset.live);
  const fresh = page.querySelector(`[data-live="${name}"]`);
  if (!fresh) return;
  const old = sent.get(part) || part.outerHTML;
  if (fresh.outerHTML === old) {
    waiting.delete(part);
    return;
  }
  if (!isBusy(part)) {
    put(part, fresh);
    return;
  }
  for (const inner of outermost(part)) swap(inner, page);
  if (frameOf(old) !== frameOf(fresh.outerHTML)) waiting.set(part, fresh);
}

function tell(what, on) {
  // Over an open panel, too.
  const top = document.querySelector("dialog[open]") || document.body;
  if (place.parentElement !== top) top.append(place);
  place.querySelector(`[data-when="${what}"]`).hidden = !on;
}

/** Shows what waits. What somebody has written moves over into the fresh part. */
function show() {
  for (const [part, fresh] of [...waiting]) {
    if (!part.isConnected) continue;
    const focused = document.activeElement;
    const written = fields(part).filter((field) => field.id && isChanged(field));
    put(part, fresh);
    for (const field of written) {
      const next = document.getElementById(field.id);
      if (next) next.replaceWith(field);
    }
    if (focused && focused.isConnected) focused.focus();
  }
  waiting.clear();
  tell("new", false);
}

async function look() {
  const pages = new Map();
  for (const part of outermost(document.body)) {
    const page = pageOf(part);
    pages.set(page, [...(pages.get(page) || []), part]);
  }
  for (const [address, parts] of pages) {
    const url = new URL(address, location.href);
    // What a form has just done is not done again.
    url.searchParams.delete("said");
    const answer = await fetch(url, { headers: { "x-fellseam-live": "1" } });
    if (!answer.ok || new URL(answer.url).pathname !== url.pathname) {
      throw new Error(`${url.pathname}: ${answer.status}`);
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const part of parts) if (part.isConnected) swap(part, page);
  }
  for (const part of waiting.keys()) if (!part.isConnected) waiting.delete(part);
  tell("new", waiting.size > 0);
  document.dispatchEvent(new Event("looked"));
}

/** Looks once, soon, however many events come at a time. Many readers do not all look at once. */
function lookSoon() {
  clearTimeout(soon);
  soon = setTimeout(async () => {
    if (looking) {
      again = true;
      return;
    }
    looking = true;
    try {
      await look();
      tell("lost", false);
    } catch (_) {
      tell("lost", true);
    }
    looking = false;
    if (again) {
      again = false;
      lookSoon();
    }
  }, 50 + Math.random() * 200);
}

function close() {
  if (source) source.close();
  source = null;
}

function open() {
  if (document.hidden || source) return;
  source = new EventSource(place.dataset.stream);
  // Whatever happened while nobody listened is found by looking.
  source.onopen = () => {
    failures = 0;
    clearInterval(poll);
    poll = 0;
    lookSoon();
  };
  source.onmessage = lookSoon;
  source.onerror = () => {
    failures += 1;
    const gone = source.readyState === EventSource.CLOSED;
    if (failures < FAILURES && !gone) return;
    close();
    if (failures < FAILURES) setTimeout(open, 3000);
    else if (!poll && !document.hidden) {
      lookSoon();
      poll = setInterval(() => {
        lookSoon();
        open();
      }, POLL);
    }
  };
}

function rest() {
  close();
  clearInterval(poll);
  poll = 0;
}

if (place && window.EventSource && document.querySelector("[data-live]")) {
  remember(document.body);
  place.querySelector("button").addEventListener("click", show);
  document.addEventListener("visibilitychange", () => (document.hidden ? rest() : open()));
  window.addEventListener("pagehide", rest);
  window.addEventListener("pageshow", open);
  open();
}
