// What stands on a drawing under the hand: letters, dimension lines, blow-ups. Each is bound to the
// fields of its row, which are what is saved, and has grips: the places that a pointer or the keys
// take hold of.

import { bendFor, between, distance, heads, middle, path } from "./drawing-geometry.js";
import { Place, percent, tenThousandths } from "./drawing-fields.js";

/** Units that an arrow key moves a mark; with Shift, and with Alt. */
const STEP = 50;
const LEAP = 250;
const NUDGE = 10;
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const SVG = "http://www.w3.org/2000/svg";
/** Pixels that both heads of a line need; and that a bend may be off and still be straight. */
const HEADS = 44;
const STRAIGHT = 5;

/** @param {string} name @param {Record<string, string | number>} attributes */
export function svg(name, attributes, ...children) {
  const element = document.createElementNS(SVG, name);
  for (const key in attributes) element.setAttribute(key, String(attributes[key]));
  element.append(...children);
  return element;
}

/** Puts a text into the places of a sentence. */
export const fill = (sentence, values) => sentence.replace(/\{(\w+)\}/g, (_, name) => values[name] ?? "");

/** Which way the arrow keys go, and how far; nothing for another key. */
export function stride(event) {
  const way = ARROWS[event.key];
  if (!way) return null;
  const step = event.shiftKey ? LEAP : event.altKey ? NUDGE : STEP;
  return { x: way[0] * step, y: way[1] * step };
}

const move = (spot, dx, dy) => ({ x: spot.x + dx, y: spot.y + dy });

/**
 * A grip. `grab()` takes hold of it as it is now and gives back what moves it from there: by so
 * many units, with `how` it is to snap. `say()` is what was done. `near` gives another grip of the
 * mark that a place within reach means instead.
 */
function grip(mark, element, { grab, say, name, near }) {
  element.setAttribute("tabindex", "0");
  element.setAttribute("role", "button");
  const held = { mark, element, grab, say, name, near };
  mark.plate.grips.set(element, held);
  return held;
}

/** A letter: on the drawing as a mark, or in the tray as a chip. */
export class Letter {
  constructor(plate, row) {
    this.plate = plate;
    this.row = row;
    this.item = row.dataset.item;
    this.place = new Place([...row.querySelectorAll("input[aria-label]")], plate.tall);
    const { letter, name, shape } = row.dataset;
    this.letter = letter;
    this.words = `${letter} ${name}`.trim();

    this.chip = document.createElement("button");
    this.chip.type = "button";
    this.chip.className = `chip ${shape}`;
    this.chip.textContent = letter;
    this.chip.title = name;
    this.chip.dataset.item = this.item;
    this.chip.setAttribute("aria-label", this.words);
    plate.tray.append(this.chip);

    const face = plate.page.face(shape);
    this.mark = svg(
      "g",
      { class: "mark", "aria-label": this.words, "data-item": this.item },
      svg("circle", { class: "mark-hit", r: 200 }),
      face,
      svg("text", { dy: 60 }, letter),
    );
    // Beside the mark: what a pointer is told is no second name of it.
    this.group = svg("g", {}, svg("title", {}, name), this.mark);
    const held = {
      name: () => this.letter,
      grab: () => {
        const start = this.place.get() ?? plate.centre();
        return (dx, dy, how) => {
          const spot = move(start, dx, dy);
          this.put(how ? plate.snapped(spot, { ...how, from: start, ends: [] }) : spot);
        };
      },
      say: () => plate.page.say("moved", { mark: this.letter, ...this.place.said() }),
    };
    this.grip = grip(this, this.mark, held);
    plate.grips.set(this.chip, { ...this.grip, element: this.chip, fromTray: true });
  }

  isOn() {
    return this.place.get() !== null;
  }

  /** Shows what the fields say. */
  draw() {
    const spot = this.place.get();
    if (spot) {
      const scale = this.plate.scale() / 10;
      this.group.setAttribute("transform", `translate(${spot.x} ${spot.y}) scale(${scale})`);
      if (!this.group.isConnected) this.plate.layers.letters.append(this.group);
    } else {
      this.group.remove();
    }
    // A chip that is held stays, or the pointer would be lost with it.
    this.chip.hidden = spot !== null && !this.isHeld;
  }

  put(spot) {
    this.place.set(spot);
    this.draw();
    this.plate.drawLeaders();
  }

  remove() {
    this.place.set(null);
    this.draw();
    this.plate.page.say("off", { mark: this.letter });
    return this.chip;
  }
}

/** A dimension line. */
export class Line {
  constructor(plate, row) {
    this.plate = plate;
    this.row = row;
    this.select = row.querySelector("select");
    const [from, to, via] = [...row.querySelectorAll("input[aria-label]")].map(
      (input) => new Place([input], plate.tall),
    );
    this.places = { from, to, via };

    this.under = svg("path", { class: "dimension-under" });
    this.path = svg("path", { class: "dimension-line" });
    this.heads = [0, 1].map(() => svg("g", {}, svg("path", { class: "dimension-head" })));
    const ring = () => svg("circle", { class: "grip", r: 60 });
    const hit = () => svg("circle", { class: "mark-hit", r: 130 });
    this.ends = { from: svg("g", { class: "grip-at" }, hit(), ring()), to: svg("g", { class: "grip-at" }, hit(), ring()) };
    this.bend = svg("g", { class: "grip-at" }, hit(), svg("rect", { class: "grip", x: -55, y: -55, width: 110, height: 110, transform: "rotate(45)" }));
    this.body = svg("g", { class: "dimension-body" }, this.under, this.path, ...this.heads);
    this.group = svg("g", { class: "dimension" }, this.body, this.ends.from, this.bend, this.ends.to);

    const { page } = plate;
    const said = (place) => () => page.say("moved", { mark: this.named(place), ...this.places[place].said() });
    const grabEnd = (end) => () => {
      const start = this.places[end].get();
      const other = this.places[end === "from" ? "to" : "from"].get();
      return (dx, dy, how) => {
        const spot = move(start, dx, dy);
        this.places[end].set(how ? plate.snapped(spot, { ...how, from: other, ends: plate.endsBut(this) }) : spot);
        this.changed();
      };
    };
    const body = grip(this, this.body, {
        name: () => this.named("line"),
        grab: () => {
          const start = this.line();
          return (dx, dy) => {
            for (const place of ["from", "to", "via"]) {
              if (start[place]) this.places[place].set(move(start[place], dx, dy));
            }
            this.changed();
          };
        },
        say: () => page.say("moved", { mark: this.named("line"), ...this.places.from.said() }),
        // Who takes a line by its end or its middle means that.
        near: (spot, reach) => {
          const { from, to, via } = this.line();
          const spots = [from, middle({ from, to, via }), to];
          return this.grips.slice(1).find((_, n) => distance(spot, spots[n]) <= reach) ?? body;
        },
      });
    this.grips = [
      body,
      grip(this, this.ends.from, { name: () => this.named("from"), grab: grabEnd("from"), say: said("from") }),
      grip(this, this.bend, {
        name: () => this.named("via"),
        grab: () => {
          const start = this.line();
          return (dx, dy, how) => {
            const via = bendFor(start.from, start.to, move(middle(start), dx, dy));
            const near = how && distance(via, between(start.from, start.to)) < 2 * STRAIGHT * plate.scale();
            this.places.via.set(near ? null : via);
            this.changed();
          };
        },
        say: () => {
          const spot = this.line() && middle(this.line());
          const y = spot && percent((spot.y * 10000) / plate.tall);
          if (spot) page.say("moved", { mark: this.named("via"), x: percent(spot.x), y });
        },
      }),
      grip(this, this.ends.to, { name: () => this.named("to"), grab: grabEnd("to"), say: said("to") }),
    ];
  }

  get item() {
    return this.select.value;
  }

  get letter() {
    return this.select.selectedOptions[0]?.text.split(" ")[0] ?? "";
  }

  named(what) {
    const whole = this.select.selectedOptions[0]?.text ?? "";
    return fill(this.plate.page.words[what], { mark: what === "line" ? whole : this.letter });
  }

  line() {
    const [from, to, via] = ["from", "to", "via"].map((place) => this.places[place].get());
    return from && to ? { from, to, via } : null;
  }

  isOn() {
    return this.line() !== null;
  }

  changed() {
    this.draw();
    this.plate.drawLeaders();
  }

  draw() {
    const line = this.line();
    if (!line) {
      this.group.remove();
      return;
    }
    const scale = this.plate.scale();
    const d = path(line);
    this.under.setAttribute("d", d);
    this.path.setAttribute("d", d);
    heads(line, HEADS * scale).forEach(({ x, y, turn, outside }, n) => {
      const head = this.heads[n];
      head.firstChild.setAttribute("d", `M0 0L-130 45V-45z${outside ? "M-130 0H-260" : ""}`);
      head.setAttribute("transform", `translate(${x} ${y}) rotate(${turn}) scale(${scale / 10})`);
    });
    const at = (element, spot) =>
      element.setAttribute("transform", `translate(${spot.x} ${spot.y}) scale(${scale / 10})`);
    at(this.ends.from, line.from);
    at(this.ends.to, line.to);
    at(this.bend, middle(line));
    for (const { element, name } of this.grips) element.setAttribute("aria-label", name());
    this.group.dataset.item = this.row.dataset.item = this.item;
    if (!this.group.isConnected) this.plate.layers.lines.append(this.group);
  }

  remove() {
    const name = this.named("line");
    for (const place in this.places) this.places[place].set(null);
    this.changed();
    this.plate.page.say("off", { mark: name });
    return this.plate.marks;
  }
}

/** A circle that another drawing shows larger. */
export class Circle {
  constructor(plate, row) {
    this.plate = plate;
    this.row = row;
    this.select = row.querySelector("select");
    const [at, radius] = row.querySelectorAll("input[aria-label]");
    this.place = new Place([at], plate.tall);
    this.reach = radius;
    this.under = svg("circle", { class: "blow-up-under" });
    this.ring = svg("circle", { class: "blow-up-ring" });
    this.title = svg("text", { class: "blow-up-tag" });
    this.tag = svg("g", {}, this.title);
    this.body = svg("g", { class: "blow-up-body" }, this.under, this.ring, this.tag);
    this.size = svg("g", { class: "grip-at" }, svg("circle", { class: "mark-hit", r: 130 }), svg("circle", { class: "grip", r: 60 }));
    this.group = svg("g", { class: "blow-up" }, this.body, this.size);
    const { page } = plate;
    this.grips = [
      grip(this, this.body, {
        name: () => this.named("circle"),
        grab: () => {
          const start = this.place.get();
          return (dx, dy, how) => {
            const spot = move(start, dx, dy);
            this.place.set(how ? plate.snapped(spot, { ...how, from: start, ends: [] }) : spot);
            this.draw();
          };
        },
        say: () => page.say("moved", { mark: this.named("circle"), ...this.place.said() }),
      }),
      grip(this, this.size, {
        name: () => this.named("radius"),
        grab: () => {
          const start = this.radius();
          // Up is larger, too, for the keys; a pointer pulls the ring's right side.
          return (dx, dy, how) => {
            this.setRadius(start + (how ? dx : dx - dy));
            this.draw();
          };
        },
        say: () => page.say("sized", { mark: this.named("circle"), radius: this.reach.value }),
      }),
    ];
  }

  named(what) {
    return fill(this.plate.page.words[what], { mark: this.select.selectedOptions[0]?.text ?? "" });
  }

  radius() {
    return tenThousandths(this.reach.value) || null;
  }

  setRadius(radius) {
    this.reach.value = percent(Math.max(100, radius));
  }

  isOn() {
    return this.place.get() !== null && this.radius() !== null;
  }

  draw() {
    if (!this.isOn()) {
      this.group.remove();
      return;
    }
    const [{ x, y }, radius, scale] = [this.place.get(), this.radius(), this.plate.scale()];
    for (const circle of [this.under, this.ring]) {
      for (const [name, value] of [["cx", x], ["cy", y], ["r", radius]]) circle.setAttribute(name, value);
    }
    this.title.textContent = this.select.selectedOptions[0]?.text ?? "";
    const below = y + radius + 20 * scale;
    const title = below < this.plate.tall ? below : y - radius - 8 * scale;
    this.tag.setAttribute("transform", `translate(${x} ${title}) scale(${scale / 10})`);
    this.size.setAttribute("transform", `translate(${x + radius} ${y}) scale(${scale / 10})`);
    for (const { element, name } of this.grips) element.setAttribute("aria-label", name());
    if (!this.group.isConnected) this.plate.layers.circles.append(this.group);
  }

  remove() {
    const name = this.named("circle");
    this.place.set(null);
    this.reach.value = "";
    this.draw();
    this.plate.page.say("off", { mark: name });
    return this.plate.marks;
  }
}
