// Letters are put on drawings by hand: dragged from the tray above a drawing, dragged to another
// place, dragged back into the tray; or moved by the keyboard. What is sent are the fields of the
// table of letters, which is all there is without this script.

const SVG = "http://www.w3.org/2000/svg";
/** Ten-thousandths that an arrow key moves a letter; with Shift, and with Alt. */
const STEP = 50;
const LEAP = 250;
const NUDGE = 10;
/** How far above a finger its letter is held, in pixels: under it nobody would see it. */
const LIFT = 44;
/** How far a pointer may tremble in a click, in pixels. */
const TREMBLE = 4;

/** @param {string} name @param {Record<string, string | number>} attributes */
function svg(name, attributes, ...children) {
  const element = document.createElementNS(SVG, name);
  for (const key in attributes) element.setAttribute(key, String(attributes[key]));
  element.append(...children);
  return element;
}

const clamp = (value) => Math.min(10000, Math.max(0, Math.round(value)));

/** One drawing: its picture, its tray and its table of letters. */
class Plate {
  constructor(section, said) {
    this.face = section.querySelector("[data-face]");
    this.marks = section.querySelector("svg.marks");
    this.tray = section.querySelector("[data-tray]");
    this.tall = this.marks.viewBox.baseVal.height;
    this.said = said;
    this.marks.replaceChildren();
    this.marks.classList.add("is-editing");
    this.tray.hidden = false;
    for (const row of section.querySelectorAll("tr[data-mark]")) new Letter(this, row);
    const letters = section.querySelector("[data-letters]");
    if (!letters.querySelector("[aria-invalid]")) letters.open = false;
  }

  /** Where a pointer is, in ten-thousandths of the drawing. */
  at(clientX, clientY) {
    const box = this.face.getBoundingClientRect();
    return {
      x: ((clientX - box.left) / box.width) * 10000,
      y: ((clientY - box.top) / box.height) * 10000,
    };
  }

  isOver(element, clientX, clientY) {
    const box = element.getBoundingClientRect();
    return (
      clientX >= box.left && clientX <= box.right && clientY >= box.top && clientY <= box.bottom
    );
  }
}

/** One letter: on the drawing as a mark, or in the tray as a chip. */
class Letter {
  constructor(plate, row) {
    this.plate = plate;
    const inputs = row.querySelectorAll("input[aria-label]");
    [this.x, this.y] = inputs;
    const { letter, name } = row.dataset;
    const part = "part" in row.dataset;
    const label = `${letter} ${name}`.trim();

    this.chip = document.createElement("button");
    this.chip.type = "button";
    this.chip.className = part ? "chip part" : "chip";
    this.chip.textContent = letter;
    this.chip.title = name;
    this.chip.setAttribute("aria-label", label);
    plate.tray.append(this.chip);

    const face = part
      ? svg("rect", { class: "mark-face", x: -150, y: -125, width: 300, height: 250, rx: 20 })
      : svg("circle", { class: "mark-face", r: 130 });
    const mark = svg(
      "g",
      { class: "mark", tabindex: 0, role: "button", "aria-label": label },
      svg("title", {}, name),
      svg("circle", { class: "mark-hit", r: 200 }),
      face,
      svg("text", { dy: 60 }, letter),
    );
    this.mark = mark;
    this.group = svg("g", {}, mark);

    this.drags(this.chip, true);
    this.drags(mark, false);
    this.chip.addEventListener("click", (event) => {
      // A pointer's click has been taken as the end of its drag.
      if (event.detail !== 0) return;
      this.put(5000, 5000);
      this.mark.focus();
      this.say();
    });
    mark.addEventListener("keydown", (event) => this.key(event));
    for (const input of inputs) input.addEventListener("change", () => this.draw());
    this.draw();
  }

  /** Shows what the fields say. */
  draw() {
    const [x, y] = [this.x.value, this.y.value].map((text) => {
      const number = text.trim().replace("%", "").replace(",", ".");
      return number === "" ? NaN : Number(number) * 100;
    });
    const on = x >= 0 && x <= 10000 && y >= 0 && y <= 10000;
    if (on) {
      this.group.setAttribute("transform", `translate(${x} ${(y * this.plate.tall) / 10000})`);
      if (!this.group.isConnected) this.plate.marks.append(this.group);
    } else {
      this.group.remove();
    }
    this.chip.hidden = on;
  }

  /** Puts the letter at this place. */
  put(x, y) {
    this.x.value = String(clamp(x) / 100);
    this.y.value = String(clamp(y) / 100);
    this.draw();
  }

  /** Takes the letter off the drawing. */
  take() {
    this.x.value = "";
    this.y.value = "";
    this.draw();
  }

  say() {
    const letter = this.chip.textContent;
    this.plate.said.value = this.x.value ? `${letter}: ${this.x.value} %, ${this.y.value} %` : letter;
  }

  key(event) {
    const step = event.shiftKey ? LEAP : event.altKey ? NUDGE : STEP;
    const moves = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
    const move = moves[event.key];
    if (move) {
      // Over the same length whichever way, though a drawing is seldom square.
      const down = (10000 / this.plate.tall) * step * move[1];
      this.put(this.x.value * 100 + step * move[0], this.y.value * 100 + down);
    } else if (event.key === "Delete" || event.key === "Backspace") {
      this.take();
      this.chip.focus();
    } else {
      return;
    }
    event.preventDefault();
    this.say();
  }

  /** Lets a pointer drag the letter by this handle. */
  drags(handle, fromTray) {
    let held = null;
    handle.addEventListener("pointerdown", (event) => {
      if (event.button !== 0) return;
      const { x, y } = this.plate.at(event.clientX, event.clientY);
      const lift = event.pointerType === "touch" && fromTray ? LIFT : 0;
      held = {
        startX: event.clientX,
        startY: event.clientY,
        // A letter is held where it was taken, it does not jump under the pointer.
        offX: fromTray ? 0 : this.x.value * 100 - x,
        offY: fromTray ? 0 : this.y.value * 100 - y,
        lift,
        before: [this.x.value, this.y.value],
        moved: false,
      };
      handle.setPointerCapture(event.pointerId);
      if (!fromTray) handle.focus({ preventScroll: true });
      event.preventDefault();
    });
    handle.addEventListener("pointermove", (event) => {
      if (!held) return;
      const far = Math.hypot(event.clientX - held.startX, event.clientY - held.startY);
      if (!held.moved && far < TREMBLE) return;
      held.moved = true;
      this.mark.classList.add("is-held");
      this.chip.classList.add("is-held");
      const back = this.plate.isOver(this.plate.tray, event.clientX, event.clientY);
      this.plate.tray.classList.toggle("is-over", back && !fromTray);
      const { x, y } = this.plate.at(event.clientX, event.clientY - held.lift);
      this.place(x + held.offX, y + held.offY, back);
    });
    const end = (event) => {
      if (!held) return;
      const { moved, before } = held;
      held = null;
      this.mark.classList.remove("is-held");
      this.chip.classList.remove("is-held");
      this.plate.tray.classList.remove("is-over");
      const back = this.plate.isOver(this.plate.tray, event.clientX, event.clientY);
      if (event.type === "pointercancel") {
        [this.x.value, this.y.value] = before;
        this.draw();
      } else if (!moved && fromTray) {
        this.put(5000, 5000);
      } else if (moved && back) {
        this.take();
      } else {
        this.draw();
      }
      if (this.group.isConnected) this.mark.focus({ preventScroll: true });
      this.say();
    };
    handle.addEventListener("pointerup", end);
    handle.addEventListener("pointercancel", end);
  }

  /** While it is dragged: on the drawing, or for now nowhere. The handle stays in the page, or the
   * pointer would be lost with it. */
  place(x, y, back) {
    this.x.value = String(clamp(x) / 100);
    this.y.value = String(clamp(y) / 100);
    const [left, top] = [clamp(x), (clamp(y) * this.plate.tall) / 10000];
    this.group.setAttribute("transform", `translate(${left} ${top})`);
    if (!this.group.isConnected) this.plate.marks.append(this.group);
    this.group.classList.toggle("is-leaving", back);
  }
}

const form = document.querySelector("form#section");
// A viewer's form is disabled: there is nothing to move.
if (form && !form.querySelector("fieldset[disabled]")) {
  const said = form.querySelector("[data-said]");
  for (const section of form.querySelectorAll("[data-drawing]")) new Plate(section, said);
  for (const hint of form.querySelectorAll("[data-script]")) hint.hidden = false;

  for (const drop of form.querySelectorAll("[data-drop]")) {
    drop.classList.add("is-live");
    const over = (on) => () => drop.classList.toggle("is-over", on);
    drop.addEventListener("dragenter", over(true));
    drop.addEventListener("dragleave", over(false));
    drop.addEventListener("drop", over(false));
  }

  // Letters that were moved are not lost by a stray click on a link.
  const before = () => new URLSearchParams(new FormData(form)).toString();
  const filled = before();
  let sent = false;
  form.addEventListener("submit", () => (sent = true));
  addEventListener("beforeunload", (event) => {
    if (!sent && before() !== filled) event.preventDefault();
  });
}
