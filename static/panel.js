// An item of a revision opens beside the page that its letter was tapped on. The link leads to a
// page of its own, which is what opens without script, in a new tab, and when it is reloaded.

import "./photo.js";

const ITEM = /^\/styles\/[^/]+\/revisions\/\d+\/items\/[^/]+$/;

let dialog = null;
let opener = null;
// Whether the item's address was put into the history, so that *back* closes the panel.
let entered = false;

function addressOf(link) {
  const href = link && link.getAttribute("href");
  if (!href || link.getAttribute("target")) return null;
  const url = new URL(href, location.href);
  return url.origin === location.origin && ITEM.test(url.pathname) ? url : null;
}

/** Puts the main part of an item's page into the panel. Where there is none, the way leads on. */
async function fill(answer) {
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const part = page.querySelector("[data-panel]");
  if (part) dialog.dataset.page = part.dataset.panel;
  // A form that was not taken is answered under its own address, which cannot be gone to.
  else if (answer.redirected || !dialog.open) {
    location.assign(answer.url);
    return;
  }
  const main = page.querySelector("main");
  const parts = part ? [main.querySelector(":scope > .notice"), part] : [...main.children];
  dialog.replaceChildren(...parts.filter(Boolean).map((node) => document.importNode(node, true)));
  const heading = dialog.querySelector("h1");
  if (heading) dialog.setAttribute("aria-label", heading.textContent);
  if (!dialog.open) dialog.showModal();
  dialog.scrollTop = 0;
  const wrong = dialog.querySelector("[aria-invalid], [role='alert']");
  if (wrong) wrong.scrollIntoView({ block: "center" });
}

function make() {
  dialog = document.createElement("dialog");
  dialog.className = "dialog beside";
  document.body.append(dialog);
  dialog.addEventListener("click", (event) => {
    const close = event.target.closest("[data-close]");
    if (!close && event.target !== dialog) return;
    event.preventDefault();
    dialog.close();
  });
  dialog.addEventListener("close", () => {
    dialog.replaceChildren();
    if (entered) history.back();
    entered = false;
    if (opener) opener.focus();
  });
  dialog.addEventListener("submit", send);
}

async function open(url) {
  if (!dialog) make();
  try {
    await fill(await fetch(url));
  } catch (_) {
    location.assign(url);
    return;
  }
  if (!dialog.open) return;
  if (!entered) history.pushState({ panel: true }, "", url.pathname);
  else history.replaceState({ panel: true }, "", url.pathname);
  entered = true;
}

/** Brings what was just sent into view: the end of its thread, or of the newest open one. */
function showSent(action) {
  const thread = /\/threads\/([^/]+)\//.exec(action);
  const open = [...dialog.querySelectorAll(".thread form.answer")].pop();
  const sent = thread ? document.getElementById(`thread-${thread[1]}`) : open && open.closest(".thread");
  const last = sent && sent.querySelector(".messages > :last-child");
  if (last) last.scrollIntoView({ block: "center" });
}

/** Sends a form of the panel without leaving the page below it. */
async function send(event) {
  if (event.defaultPrevented) return;
  event.preventDefault();
  const form = event.target;
  if (form.getAttribute("aria-busy")) return;
  form.setAttribute("aria-busy", "true");
  const body = new FormData(form);
  const button = event.submitter;
  if (button && button.name) body.append(button.name, button.value);
  try {
    const answer = await fetch(form.action, { method: "POST", body });
    await fill(answer);
    if (answer.ok) showSent(form.action);
  } catch (_) {
    const unsent = document.querySelector("[data-when='unsent']");
    if (unsent && !form.querySelector("[data-when]")) {
      form.append(unsent.cloneNode(true));
      form.lastElementChild.hidden = false;
    }
  } finally {
    form.removeAttribute("aria-busy");
  }
}

document.addEventListener("click", (event) => {
  const plain = !event.button && !event.metaKey && !event.ctrlKey && !event.shiftKey;
  if (event.defaultPrevented || !plain || event.altKey) return;
  const link = event.target.closest("a");
  const url = addressOf(link);
  if (!url || (!dialog?.open && url.pathname === location.pathname)) return;
  event.preventDefault();
  if (!dialog || !dialog.open) opener = link;
  open(url);
});

window.addEventListener("popstate", () => {
  if (!dialog || !dialog.open) return;
  entered = false;
  dialog.close();
});
