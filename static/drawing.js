// The drawings of a draft under the hand: letters, dimension lines and blow-ups are put on, moved and
// taken off by pointer, finger or keys. What is sent are the fields of the form, which are all there
// is without this script.

import { History } from "./drawing-fields.js";
import { fill } from "./drawing-marks.js";
import { Plate } from "./drawing-plate.js";

/** What the drawings of one form share. */
class Page {
  constructor(form) {
    this.form = form;
    this.said = form.querySelector("[data-said]");
    this.words = this.said.dataset;
    this.history = new History(form);
    this.chosen = null;
    this.plates = [];
    for (const section of form.querySelectorAll("[data-drawing]")) this.plates.push(new Plate(section, this));
    form.addEventListener("change", (event) => {
      if (!event.target.name) return;
      this.commit();
      const plate = this.plates.find((each) => each.section.contains(event.target));
      if (plate) plate.draw();
    });
    document.addEventListener("keydown", (event) => this.key(event));
  }

  /** Says a sentence; `also`: after what was said just now. */
  say(id, values = {}, also = false) {
    const sentence = fill(this.words[id], values);
    this.said.value = also ? `${this.said.value} ${sentence}` : sentence;
  }

  /** The shape around a letter. */
  face(shape) {
    return this.form.querySelector(`[data-faces] [data-shape=${shape}]`).firstElementChild.cloneNode(true);
  }

  commit() {
    this.history.commit();
  }

  /** What was not committed is taken back. */
  revert() {
    this.history.revert();
    for (const plate of this.plates) plate.draw();
  }

  undo() {
    this.turned(this.history.undo(), "undone");
  }

  redo() {
    this.turned(this.history.redo(), "redone");
  }

  turned(done, said) {
    const { chosen } = this;
    const had = document.activeElement;
    for (const plate of this.plates) plate.draw();
    if (chosen && !chosen.isOn()) this.choose(null);
    // What had the focus may be gone from its drawing.
    if (chosen && had !== document.activeElement) chosen.plate.marks.focus({ preventScroll: true });
    for (const plate of this.plates) plate.about();
    this.say(done ? said : "nothing");
  }

  key(event) {
    if (!(event.ctrlKey || event.metaKey)) return;
    const key = event.key.toLowerCase();
    const back = key === "z" && !event.shiftKey;
    if (!back && key !== "z" && key !== "y") return;
    // While something is typed, its field knows better what to take back.
    if (this.history.isTyping(event.target)) return;
    event.preventDefault();
    if (back) this.undo();
    else this.redo();
  }

  choose(mark) {
    const { chosen } = this;
    if (chosen === mark) return;
    this.chosen = mark;
    for (const [each, on] of [[chosen, false], [mark, true]]) {
      if (!each) continue;
      each.group.classList.toggle("is-chosen", on);
      each.row.classList.toggle("is-chosen", on);
      each.plate.about();
    }
    const list = mark?.row.closest("[data-scrolls]");
    // Within its list, so that the page stays where it is.
    if (list && !list.contains(document.activeElement)) {
      const [row, box] = [mark.row.getBoundingClientRect(), list.getBoundingClientRect()];
      if (row.top < box.top || row.bottom > box.bottom) list.scrollTop += row.top - box.top - box.height / 2;
    }
  }

  /** A key for a row that is not there yet. */
  newKey() {
    const rows = this.form.querySelectorAll("tr[data-mark], tr[data-line], tr[data-circle]");
    const keys = [...rows].map((row) => row.dataset.mark ?? row.dataset.line ?? row.dataset.circle);
    const numbers = keys.map((key) => Number(/^new-(\d+)$/.exec(key)?.[1] ?? 0));
    return `new-${Math.max(0, ...numbers) + 1}`;
  }
}

/** Pictures that are pasted, or dropped anywhere on the page, are chosen as by the file field. */
function takesPictures(form, page) {
  const input = form.querySelector("input[name=new]");
  const drop = input.closest("[data-drop]");
  const chosen = drop.querySelector("[data-chosen]");
  drop.classList.add("is-live");
  input.addEventListener("change", () => {
    const names = [...input.files].map((file) => file.name).join(", ");
    chosen.value = names && fill(page.words.chosen, { names });
    if (names) page.say("chosen", { names });
  });
  const add = (files) => {
    const all = new DataTransfer();
    for (const file of [...input.files, ...files]) all.items.add(file);
    input.files = all.files;
    input.dispatchEvent(new Event("change", { bubbles: true }));
    drop.scrollIntoView({ block: "nearest" });
  };
  const pictures = (data) => [...data.files].filter((file) => file.type.startsWith("image/"));
  document.addEventListener("paste", (event) => {
    const files = pictures(event.clipboardData);
    // A spreadsheet puts its cells on the clipboard as a picture, too: in a field they are text.
    const text = event.target.closest("input") && event.clipboardData.getData("text/plain");
    if (files.length === 0 || text) return;
    event.preventDefault();
    add(files);
  });
  const another = (event) => event.target.closest("input[type=file]:not([name=new])");
  const holds = (event) => event.dataTransfer.types.includes("Files") && !another(event);
  for (const kind of ["dragenter", "dragover"]) {
    document.addEventListener(kind, (event) => {
      if (!holds(event)) return;
      event.preventDefault();
      drop.classList.add("is-over");
    });
  }
  document.addEventListener("dragleave", (event) => {
    if (!event.relatedTarget) drop.classList.remove("is-over");
  });
  document.addEventListener("drop", (event) => {
    drop.classList.remove("is-over");
    if (!holds(event)) return;
    event.preventDefault();
    add(pictures(event.dataTransfer));
  });
}

const form = document.querySelector("form#section");
// A viewer's form is disabled: there is nothing to move.
if (form && !form.querySelector("fieldset[disabled]")) {
  const page = new Page(form);
  for (const hint of form.querySelectorAll("[data-script]")) hint.hidden = false;
  takesPictures(form, page);
  // What was drawn is not lost by a stray click on a link.
  let sent = false;
  form.addEventListener("submit", () => (sent = true));
  addEventListener("beforeunload", (event) => {
    if (!sent && page.history.isDirty()) event.preventDefault();
  });
}
