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

/** Puts the main part of an item's page into the panel; anything else is gone to. */
async function fill(answer) {
  const url = new URL(answer.url);
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const part = page.querySelector("[data-panel]");
  if (!part || !ITEM.test(url.pathname)) {
    location.assign(answer.url);
    return;
  }
  const said = page.querySelector("main > .notice");
  const parts = [said, part].filter(Boolean).map((node) => document.importNode(node, true));
  dialog.dataset.page = url.pathname;
  dialog.replaceChildren(...parts);
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
    await fill(await fetch(form.action, { method: "POST", body }));
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
