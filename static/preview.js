// What stands beside a form follows what is typed into it. It is drawn by the server, by the same
// code as the page: there is no arithmetic here. Without script it shows what was saved last.

const PAUSE = 300; // milliseconds after the last key before it is asked for

const beside = document.querySelector("[data-preview]");
const form = document.getElementById("section");
if (beside && form) start();

function start() {
  const shown = beside.querySelector("[data-shown]");
  const status = beside.querySelector("[role=status]");
  let timer = 0;
  let question = null;

  /** The form without its files: they are drawn once they are saved. */
  function body() {
    const fields = new URLSearchParams();
    for (const [name, value] of new FormData(form)) {
      if (typeof value === "string") fields.append(name, value);
    }
    return fields;
  }

  /** Puts the fresh drawing in; what was unfolded stays so, and what was scrolled. */
  function put(html) {
    const fresh = new DOMParser().parseFromString(html, "text/html").body;
    const open = [...shown.querySelectorAll("details")].map((it) => it.open);
    const left = [...shown.querySelectorAll(".plate-scroll")].map((it) => it.scrollLeft);
    shown.replaceChildren(...fresh.childNodes);
    shown.querySelectorAll("details").forEach((it, i) => {
      it.open = open[i] || false;
    });
    shown.querySelectorAll(".plate-scroll").forEach((it, i) => {
      it.scrollLeft = left[i] || 0;
    });
  }

  async function ask() {
    if (question) question.abort();
    const mine = new AbortController();
    question = mine;
    try {
      const answer = await fetch(beside.dataset.preview, {
        method: "POST",
        body: body(),
        signal: mine.signal,
      });
      if (!answer.ok) throw new Error(String(answer.status));
      const html = await answer.text();
      if (question !== mine) return;
      put(html);
      say(status.dataset.follows);
    } catch {
      if (question === mine) say(status.dataset.offline);
    }
  }

  /** A status is read out: only when it is another one. */
  function say(text) {
    if (status.textContent !== text) status.textContent = text;
  }

  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE);
  };
  form.addEventListener("input", soon);
  form.addEventListener("change", soon);
}
