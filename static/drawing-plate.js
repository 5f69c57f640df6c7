// One drawing under the hand: what is shown of it, and what a pointer and the keys do with it.

import { distance, middle, snap, tidy } from "./drawing-geometry.js";
import { Circle, Letter, Line, fill, stride, svg } from "./drawing-marks.js";
import { Pen } from "./drawing-pen.js";

/** How far above a finger its letter is held, in pixels: under it nobody would see it. */
const LIFT = 44;
/** How far a pointer may tremble in a click, and how near another end takes hold, in pixels. */
const TREMBLE = 4;
const REACH = 8;
/** How near the end of a line a pointer or a finger takes it by that, in pixels. */
const HOLD = 12;
const FINGER = 22;
/** The grid is a quarter of a percent. */
const GRID = 400;
/** Nearer than this a letter needs no leader line, in pixels. */
const NEAR = 20;
/** The distance that tidy letters keep: two of them, as the published drawing shows them. */
const ROOM = 400;
const MOST = 8;

export class Plate {
  constructor(section, page) {
    this.page = page;
    this.section = section;
    this.face = section.querySelector("[data-face]");
    this.marks = section.querySelector("svg.marks");
    this.tray = section.querySelector("[data-tray]");
    this.tools = section.querySelector("[data-tools]");
    this.tall = this.marks.viewBox.baseVal.height;
    this.view = { x: 0, y: 0, width: 10000 };
    this.grips = new Map();
    const layer = () => svg("g", {});
    this.leaders = svg("path", { class: "leader" });
    this.layers = { picture: layer(), circles: layer(), leaders: this.leaders, lines: layer(), letters: layer(), pen: layer() };
    this.marks.replaceChildren(...Object.values(this.layers));
    this.marks.classList.add("is-editing");
    this.marks.setAttribute("tabindex", "0");
    this.marks.setAttribute("role", "application");
    this.marks.setAttribute("aria-label", fill(page.words.ground, { mark: section.getAttribute("aria-label") }));
    this.tray.hidden = this.tools.hidden = false;
    const rows = (selector) => [...section.querySelectorAll(selector)];
    this.letters = rows("tr[data-mark]").map((row) => new Letter(this, row));
    this.lines = rows("tr[data-line]").map((row) => new Line(this, row));
    this.circles = rows("tr[data-circle]").map((row) => new Circle(this, row));
    this.pen = new Pen(this);
    this.held = null;
    this.touches = new Map();
    this.listen();
    for (const details of rows("[data-letters]")) {
      const narrow = matchMedia("(max-width: 63.99rem)").matches;
      if (narrow && !details.querySelector("[aria-invalid]")) details.open = false;
    }
    this.draw();
    this.about();
  }

  all() {
    return [...this.letters, ...this.lines, ...this.circles];
  }

  /** Shows what the fields say. */
  draw() {
    for (const mark of this.all()) mark.draw();
    this.drawLeaders();
    this.pen.draw();
  }

  /** Units in a pixel. */
  scale() {
    return this.view.width / (this.face.clientWidth || 1);
  }

  height() {
    return (this.view.width * this.tall) / 10000;
  }

  centre() {
    return { x: this.view.x + this.view.width / 2, y: this.view.y + this.height() / 2 };
  }

  /** Where a pointer is, in units. */
  at(clientX, clientY) {
    const box = this.marks.getBoundingClientRect();
    return {
      x: this.view.x + ((clientX - box.left) / box.width) * this.view.width,
      y: this.view.y + ((clientY - box.top) / box.height) * this.height(),
    };
  }

  /** @param {{axis: boolean, free: boolean, from: object | null, ends: object[]}} how */
  snapped(spot, { axis, free, from, ends }) {
    if (free) return spot;
    const grid = { x: 10000 / GRID, y: this.tall / GRID };
    return snap(spot, { ends, reach: REACH * this.scale(), axis: axis ? from : null, grid }).spot;
  }

  /** The ends of all lines but this one. */
  endsBut(line) {
    const others = this.lines.filter((other) => other !== line).map((other) => other.line());
    return others.filter(Boolean).flatMap(({ from, to }) => [from, to]);
  }

  // What is shown.

  zoom() {
    return 10000 / this.view.width;
  }

  /** Shows this much of the drawing; `spot` stays where it is on the screen. */
  zoomTo(zoom, spot = this.centre()) {
    const width = 10000 / Math.min(MOST, Math.max(1, zoom));
    const part = width / this.view.width;
    this.look(spot.x - (spot.x - this.view.x) * part, spot.y - (spot.y - this.view.y) * part, width);
  }

  look(x, y, width = this.view.width) {
    const height = (width * this.tall) / 10000;
    const within = (value, most) => Math.min(Math.max(0, value), Math.max(0, most));
    this.view = { x: within(x, 10000 - width), y: within(y, this.tall - height), width };
    this.marks.setAttribute("viewBox", `${this.view.x} ${this.view.y} ${width} ${height}`);
    const zoomed = this.zoom() > 1.001;
    if (zoomed && !this.layers.picture.firstChild) {
      // The picture moves with its marks; photographs come with more pixels.
      const href = this.face.querySelector("img").src.replace(/\/1080$/, "/2048");
      this.layers.picture.append(svg("image", { href, width: 10000, height: this.tall, preserveAspectRatio: "none" }));
    }
    this.face.classList.toggle("is-zoomed", zoomed);
    this.tools.querySelector("[data-zoom]").textContent = `${Math.round(this.zoom() * 100)} %`;
    this.draw();
  }

  /** From each letter to the nearest line of its point, where it stands off. */
  anchor(letter) {
    const own = this.lines.filter((line) => line.item === letter.item && line.isOn());
    const spot = letter.place.get();
    if (!spot) return null;
    const middles = own.map((line) => middle(line.line()));
    middles.sort((a, b) => distance(a, spot) - distance(b, spot));
    return middles[0] ?? null;
  }

  drawLeaders() {
    const leads = this.letters.map((letter) => {
      const [spot, anchor] = [letter.place.get(), this.anchor(letter)];
      if (!anchor || distance(spot, anchor) < NEAR * this.scale()) return "";
      return `M${spot.x} ${spot.y}L${anchor.x} ${anchor.y}`;
    });
    this.leaders.setAttribute("d", leads.join(""));
  }

  tidy() {
    const on = this.letters.filter((letter) => letter.isOn());
    const letters = on.map((letter) => ({ at: letter.place.get(), anchor: this.anchor(letter) }));
    const places = tidy(letters, { room: ROOM, width: 10000, height: this.tall });
    const moved = on.filter((_, n) => distance(places[n], letters[n].at) > 1);
    on.forEach((letter, n) => moved.includes(letter) && letter.put(places[n]));
    this.page.commit();
    if (moved.length === 0) this.page.say("tidy");
    else this.page.say("tidied", { letters: moved.map((letter) => letter.letter).join(", ") });
  }

  // What is chosen.

  /** The points that a line may measure, by id. */
  points() {
    return [...this.tools.querySelector("[data-of] select").options].map((option) => option.value);
  }

  /** The letter's point has no line here. */
  wantsLine(mark) {
    const point = mark instanceof Letter && mark.isOn() && this.points().includes(mark.item);
    return point && !this.lines.some((line) => line.item === mark.item && line.isOn());
  }

  /** What the tool bar offers for what is chosen, or for what is being drawn. */
  about() {
    const chosen = this.page.chosen?.plate === this ? this.page.chosen : null;
    const [of, shows] = ["of", "shows"].map((name) => this.tools.querySelector(`[data-${name}]`));
    const line = !this.pen.kind && chosen instanceof Line;
    const circle = !this.pen.kind && chosen instanceof Circle;
    of.hidden = !(this.pen.kind === "line" || line);
    shows.hidden = !(this.pen.kind === "circle" || circle);
    if (line) of.querySelector("select").value = chosen.select.value;
    if (circle) shows.querySelector("select").value = chosen.select.value;
    const offer = this.tools.querySelector("[data-press=offer]");
    offer.hidden = Boolean(this.pen.kind) || !this.wantsLine(chosen);
    if (!offer.hidden) offer.textContent = fill(this.page.words.offers, { mark: chosen.letter });
    this.tools.querySelector("[data-press=remove]").hidden = Boolean(this.pen.kind) || !chosen?.isOn();
    for (const button of this.tools.querySelectorAll("[data-tool]")) {
      const kind = button.dataset.tool;
      button.setAttribute("aria-pressed", String((this.pen.kind ?? "move") === kind));
      if (kind !== "move") button.disabled = this.tools.querySelector(kind === "line" ? "[data-of] select" : "[data-shows] select").length === 0;
    }
  }

  removes(mark) {
    const next = mark.remove();
    this.page.commit();
    next.focus();
    this.about();
  }

  /** An empty row for a new line or blow-up. */
  spare(kind) {
    const marks = kind === "line" ? this.lines : this.circles;
    const isSpare = (mark) => mark.row.dataset[kind].startsWith("new-") && [...mark.row.querySelectorAll("input[aria-label]")].every((input) => input.value === "");
    const old = marks.find(isSpare);
    if (old) return old;
    const template = this.section.querySelector(`template[data-spare=${kind}]`);
    const body = this.section.querySelector(kind === "line" ? "[data-lines]" : "[data-circles]");
    body.insertAdjacentHTML("beforeend", template.innerHTML.replaceAll("new-0", this.page.newKey()));
    const mark = kind === "line" ? new Line(this, body.lastElementChild) : new Circle(this, body.lastElementChild);
    marks.push(mark);
    this.page.history.learn();
    return mark;
  }

  // The hand.

  listen() {
    const { marks } = this;
    marks.addEventListener("pointerdown", (event) => this.down(event, marks));
    for (const letter of this.letters) {
      letter.chip.addEventListener("pointerdown", (event) => this.down(event, letter.chip));
      letter.chip.addEventListener("click", (event) => {
        // A pointer's click has been taken as the end of its drag.
        if (event.detail === 0) this.place(letter, this.centre());
      });
      letter.chip.addEventListener("focus", () => this.page.choose(letter));
    }
    for (const target of [marks, this.tray]) {
      target.addEventListener("pointermove", (event) => this.move(event));
      target.addEventListener("pointerup", (event) => this.up(event, false));
      target.addEventListener("pointercancel", (event) => this.up(event, true));
    }
    marks.addEventListener("keydown", (event) => this.key(event));
    marks.addEventListener("focusin", (event) => {
      const held = this.grips.get(event.target);
      if (held) this.page.choose(held.mark);
    });
    marks.addEventListener("wheel", (event) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      this.zoomTo(this.zoom() * Math.exp(-event.deltaY / 400), this.at(event.clientX, event.clientY));
    }, { passive: false });
    // Two fingers are ours; one scrolls the page.
    const two = (event) => event.touches.length > 1 && event.preventDefault();
    marks.addEventListener("touchstart", two, { passive: false });
    marks.addEventListener("touchmove", two, { passive: false });
    this.section.addEventListener("focusin", (event) => {
      const row = event.target.closest("tr");
      const mark = row && this.all().find((each) => each.row === row);
      if (mark) this.page.choose(mark);
    });
    this.tools.addEventListener("click", (event) => this.press(event));
    this.tools.addEventListener("change", (event) => this.pick(event.target));
    let wide = 0;
    new ResizeObserver(() => {
      if (this.face.clientWidth === wide) return;
      wide = this.face.clientWidth;
      this.draw();
    }).observe(this.face);
  }

  press(event) {
    const button = event.target.closest("button");
    if (!button) return;
    const { tool, press } = button.dataset;
    const chosen = this.page.chosen;
    if (tool === "move") this.pen.drop();
    else if (tool) this.pen.take(tool, event.detail === 0);
    else if (press === "undo" || press === "redo") this.page[press]();
    else if (press === "tidy") this.tidy();
    else if (press === "offer") this.pen.take("line", event.detail === 0);
    else if (press === "remove" && chosen) this.removes(chosen);
    else if (press === "whole") this.zoomBy(0);
    else this.zoomBy(press === "in" ? 1.5 : 1 / 1.5);
  }

  zoomBy(factor) {
    const { chosen } = this.page;
    const grip = chosen?.plate === this && this.zoom() < 1.001 ? (chosen.place ?? chosen.places.from).get() : null;
    this.zoomTo(factor === 0 ? 1 : this.zoom() * factor, grip ?? this.centre());
    this.page.say("zoomed", { percent: Math.round(this.zoom() * 100) });
  }

  /** Another point or drawing was picked in the tool bar. */
  pick(select) {
    const { chosen } = this.page;
    if (this.pen.kind || chosen?.plate !== this || !chosen.select) return;
    chosen.select.value = select.value;
    this.draw();
    this.page.commit();
  }

  /** Puts a letter from the tray on the drawing. */
  place(letter, spot) {
    letter.put(spot);
    this.page.commit();
    letter.mark.focus({ preventScroll: true });
    letter.grip.say();
    if (this.wantsLine(letter)) this.page.say("offers", { mark: letter.letter }, true);
    this.about();
  }

  down(event, from) {
    if (event.button > 1 || this.held) return;
    if (event.pointerType === "touch" && from === this.marks) {
      this.touches.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (this.touches.size === 2) return this.pinch();
    }
    const start = { x: event.clientX, y: event.clientY };
    const element = from === this.marks ? event.target.closest("[role=button]") : from;
    let grip = this.pen.kind ? null : this.grips.get(element);
    const reach = (event.pointerType === "touch" ? FINGER : HOLD) * this.scale();
    if (grip?.near) grip = grip.near(this.at(start.x, start.y), reach);
    if (event.button === 1 || (!grip && !this.pen.kind)) {
      this.page.choose(null);
      if (this.zoom() > 1.001) this.held = { pan: { ...this.view }, start };
      else return;
    } else if (this.pen.kind) {
      this.held = { pen: true, start };
      this.pen.down(this.at(start.x, start.y), event);
    } else {
      this.page.commit();
      const lift = event.pointerType === "touch" && grip.fromTray ? LIFT : 0;
      this.held = { grip, start, lift, moves: grip.grab(), moved: false };
      grip.mark.isHeld = true;
      this.page.choose(grip.mark);
      if (!grip.fromTray) grip.element.focus({ preventScroll: true });
    }
    (grip?.element ?? this.marks).setPointerCapture(event.pointerId);
    event.preventDefault();
  }

  move(event) {
    if (this.touches.has(event.pointerId)) {
      this.touches.set(event.pointerId, { x: event.clientX, y: event.clientY });
    }
    if (this.two) return this.pinch();
    const { held } = this;
    if (this.pen.kind && (!held || held.pen)) return this.pen.move(this.at(event.clientX, event.clientY), event);
    if (!held) return;
    const [dx, dy] = [event.clientX - held.start.x, event.clientY - held.start.y];
    if (held.pan) return this.look(held.pan.x - dx * this.scale(), held.pan.y - dy * this.scale());
    if (!held.moved && Math.hypot(dx, dy) < TREMBLE) return;
    held.moved = true;
    const { mark, fromTray } = held.grip;
    mark.group.classList.add("is-held");
    const how = { axis: event.shiftKey, free: event.altKey };
    if (fromTray) {
      const spot = this.at(event.clientX, event.clientY - held.lift);
      mark.put(this.snapped(spot, { ...how, from: null, ends: [] }));
    } else {
      held.moves(dx * this.scale(), dy * this.scale(), how);
    }
    if (mark.chip) {
      const back = isOver(this.tray, event);
      this.tray.classList.toggle("is-over", back && !fromTray);
      mark.group.classList.toggle("is-leaving", back);
    }
  }

  up(event, cancelled) {
    this.touches.delete(event.pointerId);
    if (this.touches.size < 2) this.two = null;
    const { held } = this;
    if (!held) return;
    this.held = null;
    if (held.pen) return this.pen.up(this.at(event.clientX, event.clientY), event, cancelled);
    if (held.pan) return;
    const { mark, fromTray, say } = held.grip;
    this.letGo(mark);
    const back = mark.chip && isOver(this.tray, event);
    if (cancelled) this.page.revert();
    else if (fromTray && !held.moved) this.place(mark, this.centre());
    else if (fromTray && !back) this.place(mark, mark.place.get());
    else if (held.moved && back) this.removes(mark);
    else if (held.moved) {
      this.page.commit();
      say();
    }
    this.about();
  }

  letGo(mark) {
    mark.isHeld = false;
    mark.group.classList.remove("is-held", "is-leaving");
    this.tray.classList.remove("is-over");
    mark.draw();
  }

  /** Escape: what is under way is not done. */
  cancel() {
    const { held } = this;
    this.held = null;
    if (held?.grip) {
      this.letGo(held.grip.mark);
      this.page.revert();
    }
    return Boolean(held);
  }

  /** Two fingers: what was between them stays between them. */
  pinch() {
    const [a, b] = [...this.touches.values()];
    const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2];
    const apart = Math.hypot(a.x - b.x, a.y - b.y) || 1;
    if (!this.two) {
      this.cancel();
      this.pen.stop();
      this.two = { spot: this.at(x, y), apart, zoom: this.zoom() };
      return;
    }
    this.zoomTo((this.two.zoom * apart) / this.two.apart);
    const now = this.at(x, y);
    this.look(this.view.x + this.two.spot.x - now.x, this.view.y + this.two.spot.y - now.y);
  }

  key(event) {
    if (event.ctrlKey || event.metaKey) return;
    if (this.held && event.key !== "Escape") return;
    const done = this.pen.key(event) || this.keyOn(this.grips.get(event.target), event);
    if (done) event.preventDefault();
  }

  keyOn(held, event) {
    const step = stride(event);
    if (step && held) {
      held.grab()(step.x, step.y, null);
      this.page.commit();
      held.say();
    } else if (step) {
      const part = (2 * this.view.width) / 10000;
      this.look(this.view.x + step.x * part, this.view.y + step.y * part);
    } else if ((event.key === "Delete" || event.key === "Backspace") && held) {
      this.removes(held.mark);
    } else if (event.key === "Escape") {
      if (!this.cancel()) this.page.choose(null);
    } else if (event.key === "l" || event.key === "b") {
      this.pen.take(event.key === "l" ? "line" : "circle", true);
    } else if (event.key === "+" || event.key === "-" || event.key === "0") {
      this.zoomBy({ "+": 1.5, "-": 1 / 1.5, 0: 0 }[event.key]);
    } else {
      return false;
    }
    return true;
  }
}

function isOver(element, { clientX, clientY }) {
  const box = element.getBoundingClientRect();
  return clientX >= box.left && clientX <= box.right && clientY >= box.top && clientY <= box.bottom;
}
