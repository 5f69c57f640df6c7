// A section of a draft while others work on it, too, and while it is being typed: says that the page
// is open and shows who else is here, tells of a save that came after the form was filled without
// touching what is typed, has the checks look through the form as it stands, and puts the focus into
// the field that a link leads to.

const BEAT = 20000;
const PAUSE = 700;
const FIELD =
  "input:not([type=hidden]):not([disabled]), select:not([disabled]), textarea:not([disabled])";

const place = document.querySelector("[data-together]");
const form = document.getElementById("section");
const part = (name, root) => root.querySelector(`[data-live="${name}"]`);

/** The token is in every form of the page, the one that signs out included. */
function signed(fields) {
  const body = new URLSearchParams(fields);
  body.append("token", document.querySelector("input[name=token]").value);
  return body;
}

function swap(name, page) {
  const old = part(name, document);
  const fresh = part(name, page);
  if (!old || !fresh || old.outerHTML === fresh.outerHTML) return;
  old.replaceWith(document.importNode(fresh, true));
}

// Who is here.

const seat = () => ({ seat: place.dataset.seat });

async function beat() {
  try {
    const answer = await fetch(place.dataset.together, {
      method: "POST",
      headers: { "x-fellseam-live": "1" },
      body: signed(seat()),
    });
    if (!answer.ok) return;
    swap("draft-here", new DOMParser().parseFromString(await answer.text(), "text/html"));
  } catch {
    // Without a line nobody is told of; the next beat may have one.
  }
}

function leave() {
  navigator.sendBeacon(place.dataset.together, signed({ ...seat(), gone: "1" }));
}

// A save that came after the form was filled.

function tellOfNewer() {
  const saved = part("draft-saved", document);
  const base = form && form.elements.version;
  if (!saved || !base) return;
  const newer = Number(saved.dataset.version) > Number(base.value);
  saved.querySelector("[data-newer]").hidden = !newer;
}

// The checks, as the form stands. Only the answer to the last question is shown.

let timer = 0;
let question = null;
let typed = false;

async function check() {
  question?.abort();
  const mine = new AbortController();
  question = mine;
  const fields = [...new FormData(form)].filter(([, value]) => typeof value === "string");
  try {
    const answer = await fetch(form.action, {
      method: "POST",
      headers: { "x-fellseam-check": "1" },
      body: new URLSearchParams(fields),
      signal: mine.signal,
    });
    // What cannot be read yet is not said to be wrong while it is being typed.
    if (answer.status !== 200) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (question !== mine) return;
    swap("draft-progress", page);
    swap("draft-findings", page);
  } catch {
    // It is checked again when it is saved.
  }
}

function checkSoon() {
  typed = true;
  clearTimeout(timer);
  timer = setTimeout(check, PAUSE);
}

// Where a link leads.

function land() {
  let target = null;
  try {
    target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  } catch {
    return;
  }
  if (!target) return;
  const field = target.matches(FIELD) ? target : target.querySelector(FIELD);
  if (!field) return;
  for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) {
    fold.open = true;
  }
  field.focus();
  field.scrollIntoView({ block: "center", inline: "nearest" });
}

if (place) {
  beat();
  setInterval(beat, BEAT);
  window.addEventListener("pagehide", leave);
  window.addEventListener("pageshow", (event) => {
    if (event.persisted) beat();
  });
  tellOfNewer();
  document.addEventListener("looked", () => {
    tellOfNewer();
    // What was fetched is as it is saved.
    if (typed) checkSoon();
  });
}

if (form && form.elements.version && !form.querySelector("fieldset[disabled]")) {
  form.addEventListener("input", checkSoon);
  form.addEventListener("change", checkSoon);
  form.addEventListener("submit", () => {
    clearTimeout(timer);
    typed = false;
  });
}

window.addEventListener("hashchange", land);
document.addEventListener("click", (event) => {
  const link = event.target.closest("a[href*='#']");
  // The same place once more is no change of the address.
  if (link && link.href === location.href) setTimeout(land);
});
// The browser goes to the place by itself when all is loaded, and takes the focus with it.
if (document.readyState === "complete") setTimeout(land);
else window.addEventListener("load", () => setTimeout(land));
