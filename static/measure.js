// Measuring without waiting for the network. The page holds a form for every point of the piece;
// this shows one after the other. A typed value is first kept in this browser, under a key of its
// own, then sent; it is kept until the server has answered. The same key sent twice counts once.

const points = document.querySelector(".measure-points");
const keypad = document.querySelector(".keypad");
const waiting = document.querySelector(".measure-waiting");
const again = document.querySelector(".measure-refused");
const progress = document.querySelector("progress");
const { person, token } = points.dataset;

const RETRY = 15_000;
const TOO_LONG = 10_000;

// The values that wait, in the order they were typed

function request(of) {
  return new Promise((resolve, reject) => {
    of.onsuccess = () => resolve(of.result);
    of.onerror = () => reject(of.error);
  });
}

function open() {
  const opening = indexedDB.open("fellseam-measure", 1);
  opening.onupgradeneeded = () =>
    opening.result.createObjectStore("waiting", { keyPath: "id", autoIncrement: true });
  return request(opening);
}

// Done only when it is on the disk.
function change(db, how) {
  return new Promise((resolve, reject) => {
    const writing = db.transaction("waiting", "readwrite", { durability: "strict" });
    how(writing.objectStore("waiting"));
    writing.oncomplete = resolve;
    writing.onerror = writing.onabort = () => reject(writing.error);
  });
}

async function mine(db) {
  const all = await request(db.transaction("waiting").objectStore("waiting").getAll());
  return all.filter((value) => value.person === person);
}

// randomUUID is there only under HTTPS; this is everywhere.
function newKey() {
  const bytes = [...crypto.getRandomValues(new Uint8Array(16))];
  return bytes.map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

// Sending

// What the server says: {next} when it has the value, {sentence} when it asks or refuses; nothing
// when there is no connection, or it cannot answer now.
async function send(value) {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), TOO_LONG);
  try {
    const answer = await fetch(value.url, {
      method: "POST",
      headers: { accept: "application/json", "x-fellseam-token": token },
      body: new URLSearchParams({
        value: value.typed,
        key: value.key,
        anyway: value.anyway,
        // Kept by an older page, a value has none.
        skip: value.skip ?? "",
      }),
      signal: patience.signal,
    });
    const later = [401, 403, 408, 429].includes(answer.status) || answer.status >= 500;
    return later ? null : await answer.json();
  } catch {
    return null;
  } finally {
    clearTimeout(timer);
  }
}

// Sends one value and settles it: gone when the server has it, marked when it must be looked at
// again.
async function settle(db, value) {
  const answer = await send(value);
  if (!answer) return null;
  value.ask = Boolean(answer.ask);
  value.said = answer.sentence;
  await change(db, (store) => (answer.next ? store.delete(value.id) : store.put(value)));
  if (answer.next) landed(value);
  return answer;
}

let sending = false;
// The values whose form waits for the answer itself.
const inHand = new Set();

async function flush(db) {
  if (sending) return;
  sending = true;
  try {
    for (const value of await mine(db)) {
      if (value.said || inHand.has(value.id)) continue;
      if (!(await settle(db, value))) break;
    }
  } finally {
    sending = false;
  }
  await show(db);
}

// What the page shows

async function show(db) {
  const values = await mine(db);
  waiting.hidden = values.length === 0;
  waiting.querySelector("b").textContent = values.length;
  // After a reload what waits stands in its field again.
  for (const value of values.filter((value) => !value.said && !value.skip)) {
    const form = formOf(value.url);
    if (form && isUntouched(form)) form.elements.value.value = value.typed;
  }
  const refused = values.filter((value) => value.said);
  for (const value of refused) {
    const form = formOf(value.url);
    if (form && isUntouched(form)) put(form, value);
  }
  // The one that is shown says it beside its field.
  const others = refused.filter((value) => formOf(value.url) !== current().querySelector("form"));
  again.hidden = others.length === 0;
  again.replaceChildren(...others.map((value) => line(db, value)));
}

function line(db, value) {
  const link = document.createElement("a");
  link.href = value.url;
  link.textContent = `${value.title}: ${value.typed || value.because}`;
  const drop = document.createElement("button");
  drop.className = "as-link";
  drop.textContent = again.dataset.drop;
  drop.addEventListener("click", async () => {
    await change(db, (store) => store.delete(value.id));
    await show(db);
  });
  const item = document.createElement("li");
  item.append(link, ` ${value.said} `, drop);
  return item;
}

function isUntouched(form) {
  return form.elements.value.value === form.elements.value.defaultValue;
}

// The server has the value: the page now shows what a fresh one would.
function landed(value) {
  const form = formOf(value.url);
  if (!form) return;
  const skipped = form.querySelector(".measure-skipped");
  skipped.hidden = !value.skip;
  if (value.skip) {
    skipped.querySelector("b").textContent = value.because;
    return;
  }
  const input = form.elements.value;
  const untouched = isUntouched(form);
  if (!input.defaultValue) progress.value += 1;
  input.defaultValue = value.typed;
  if (untouched) input.value = value.typed;
}

// Puts a value that was asked about, or refused, back into its form.
function put(form, value) {
  const { value: input, anyway } = form.elements;
  input.value = value.typed;
  const error = form.querySelector(".error");
  const ask = form.querySelector(".measure-ask");
  error.hidden = value.ask;
  ask.hidden = !value.ask;
  (value.ask ? ask.querySelector("p") : error).textContent = value.said;
  anyway.value = value.typed;
}

function formOf(url) {
  return [...points.querySelectorAll("form")].find((form) => form.action === url);
}

function current() {
  return points.querySelector(".measure-point:not([hidden])");
}

function turn(to) {
  for (const point of points.children) point.hidden = point !== to;
  for (const open of points.querySelectorAll("details[open]")) open.open = false;
  const form = to.querySelector("form");
  if (!form) {
    keypad.hidden = true;
    return;
  }
  keypad.hidden = false;
  form.querySelector(".keypad-place").append(keypad);
  history.replaceState(null, "", form.action);
  form.elements.value.focus();
  form.elements.value.select();
}

function point(id) {
  return [...points.children].find((each) => each.dataset.point === id);
}

// Entering

async function submit(db, event) {
  const form = event.target;
  event.preventDefault();
  const { value: input } = form.elements;
  const { name: pressed, value: chosen, textContent: because } = event.submitter ?? {};
  const skip = pressed === "skip" ? chosen : "";
  const typed = skip ? "" : input.value.trim();
  form.querySelector(".error").hidden = form.querySelector(".measure-ask").hidden = true;
  if (typed && typed === input.defaultValue) return onward(form);
  const waits = (old) =>
    !old.said && old.url === form.action && old.typed === typed && (old.skip ?? "") === skip;
  if ((await mine(db)).some(waits)) return onward(form);
  const value = {
    key: newKey(),
    person,
    typed,
    url: form.action,
    title: form.dataset.title,
    said: "",
    anyway: pressed === "anyway" ? chosen : "",
    skip,
    because: skip ? because : "",
  };
  // What was asked about or refused is answered by this value.
  const answered = (await mine(db)).filter((old) => old.said && old.url === value.url);
  await change(db, (store) => {
    for (const old of answered) store.delete(old.id);
    store.add(value).onsuccess = (added) => {
      value.id = added.target.result;
      inHand.add(value.id);
    };
  });
  const answer = await settle(db, value);
  // What is no measurement need not be kept: it stands in the field, with the reason.
  if (answer && answer.error) await change(db, (store) => store.delete(value.id));
  if (answer && !answer.next) {
    put(form, value);
    input.focus();
  } else {
    onward(form, answer);
  }
  inHand.delete(value.id);
  await show(db);
}

// To the point that the server names, which may be another piece's; without its answer to the next
// of this piece that is empty.
function onward(form, answer) {
  const all = [...points.children];
  const here = form.closest(".measure-point");
  const named = answer && formOf(new URL(answer.next, location.href).href);
  const next = answer
    ? named && named.closest(".measure-point")
    : here.nextElementSibling || all.find((each) => each.querySelector("input[name=value]:invalid"));
  if (next) turn(next);
  else if (answer || navigator.onLine) {
    location.assign(answer ? answer.next : form.querySelector(".measure-acts a.next").href);
  }
}

function press(event) {
  const key = event.target.closest("button");
  const input = current().querySelector("input[name=value]");
  if (!key || !input) return;
  const { selectionStart: from, selectionEnd: to } = input;
  if ("delete" in key.dataset) {
    // A fraction came by one key and goes by one.
    const back = / ?\d+\/\d+$|.$/.exec(input.value.slice(0, to));
    input.setRangeText("", from === to && back ? back.index : from, to, "end");
  } else if (key.dataset.sixteenths) {
    input.value = addSixteenths(from === to ? input.value : "", Number(key.dataset.sixteenths));
  } else {
    input.setRangeText(key.textContent, from, to, "end");
  }
  input.focus();
}

// ½ after ¼ makes ¾: every sixteenth is within four keys.
function addSixteenths(text, more) {
  const [, whole, , part, of] = /^(\d*)( ?(\d+)\/(\d+))?$/.exec(text.trim()) || [];
  if (whole === undefined) return text;
  let upper = (part ? (part * 16) / of : 0) + more;
  if (!Number.isInteger(upper) || upper > 15) return text;
  let lower = 16;
  while (upper % 2 === 0) {
    upper /= 2;
    lower /= 2;
  }
  return `${whole} ${upper}/${lower}`.trim();
}

function follow(event) {
  const link = event.target.closest("a[data-to]");
  const to = link && point(link.dataset.to);
  if (!to) return;
  event.preventDefault();
  turn(to);
}

// Opening again without a connection

// Browsers let a page be kept under HTTPS only, and on the machine itself.
async function keepPage() {
  if (!navigator.serviceWorker) {
    document.querySelector(".measure-plain").hidden = false;
    return;
  }
  navigator.serviceWorker.addEventListener("message", ({ data }) => {
    if (data.kept) document.querySelector(".measure-kept").hidden = false;
  });
  await navigator.serviceWorker.register(points.dataset.keeper, { scope: "/styles/" });
  const { active } = await navigator.serviceWorker.ready;
  const drawn = [...points.querySelectorAll("image")].map((image) => image.getAttribute("href"));
  const loaded = performance.getEntriesByType("resource").map(({ name }) => name);
  const parts = loaded.filter((name) => name.startsWith(`${location.origin}/static/`));
  const pieces = [...document.querySelectorAll(".measure-pieces a")].map((link) => link.href);
  active.postMessage({ keep: [...new Set([location.href, ...parts, ...drawn, ...pieces.slice(0, 12)])] });
}

// Without a place to keep values the page works as it does without script.
const db = await open().catch(() => null);
if (db) {
  if (matchMedia("(pointer: coarse)").matches) {
    for (const input of points.querySelectorAll("input[name=value]")) input.inputMode = "none";
  }
  points.addEventListener("submit", (event) => submit(db, event));
  points.addEventListener("click", follow);
  keypad.addEventListener("click", press);
  // The caret and its selection stay in the field.
  keypad.addEventListener("pointerdown", (event) => event.preventDefault());
  addEventListener("online", () => flush(db));
  setInterval(() => flush(db), RETRY);
  // A page that was kept may have been opened at another point.
  const asked = formOf(location.href);
  turn(asked ? asked.closest(".measure-point") : current());
  await show(db);
  flush(db);
  keepPage().catch(() => {});
}
