// Drawing a dimension line or a blow-up: two places, by two clicks, by one drag, or by the arrow
// keys and Enter.

import { distance, path } from "./drawing-geometry.js";
import { stride, svg } from "./drawing-marks.js";
import { percent } from "./drawing-fields.js";

/** Pixels from press to release that make a drag. */
const DRAG = 8;

export class Pen {
  constructor(plate) {
    this.plate = plate;
    /** @type {"line" | "circle" | null} */
    this.kind = null;
    this.start = null;
    this.spot = null;
    this.byKeys = false;
    this.cross = svg("path", { class: "pen-cross", d: "M-160 0H160M0-160V160" });
  }

  /** Takes the pen in hand. */
  take(kind, byKeys) {
    const { plate } = this;
    const { chosen } = plate.page;
    const { page } = plate;
    const button = plate.tools.querySelector(`[data-tool=${kind}]`);
    if (button.disabled) return;
    for (const other of page.plates) if (other !== plate) other.pen.drop();
    this.kind = kind;
    this.start = null;
    this.byKeys = byKeys;
    const own = chosen?.plate === plate && chosen.place?.get();
    this.spot = own || plate.centre();
    if (kind === "line") {
      plate.tools.querySelector("[data-of] select").value = this.point(chosen);
      const select = plate.tools.querySelector("[data-of] select");
      page.say("start", { mark: select.selectedOptions[0].text });
    } else {
      this.pickDetail();
      page.say("around");
    }
    plate.marks.classList.add("is-drawing");
    plate.about();
    this.draw();
    if (byKeys) plate.marks.focus({ preventScroll: true });
  }

  /** The point that the next line most likely measures. */
  point(chosen) {
    const { plate } = this;
    const points = plate.points();
    const has = (plates, item) =>
      plates.some((each) => each.lines.some((line) => line.item === item && line.isOn()));
    if (points.includes(chosen?.item) && !has([plate], chosen.item)) return chosen.item;
    const lettered = plate.letters.filter((letter) => letter.isOn()).map((letter) => letter.item);
    return (
      points.find((item) => lettered.includes(item) && !has([plate], item)) ??
      points.find((item) => !has(plate.page.plates, item)) ??
      points[0]
    );
  }

  /** The first drawing that no blow-up leads to yet. */
  pickDetail() {
    const { plate } = this;
    const select = plate.tools.querySelector("[data-shows] select");
    const shown = plate.page.plates.flatMap((each) => each.circles.filter((it) => it.isOn()).map((it) => it.select.value));
    const next = [...select.options].find((option) => !shown.includes(option.value));
    if (next) select.value = next.value;
  }

  /** Puts the pen down. */
  drop() {
    if (!this.kind) return;
    this.kind = this.start = null;
    this.plate.marks.classList.remove("is-drawing");
    this.plate.about();
    this.draw();
  }

  /** What was begun is not drawn; the pen stays in hand. */
  stop() {
    this.start = null;
    this.draw();
  }

  aim(spot, event) {
    const { plate } = this;
    const how = { axis: event.shiftKey && this.kind === "line" && this.start !== null, free: event.altKey };
    const ends = this.kind === "line" ? plate.endsBut(null) : [];
    this.spot = plate.snapped(spot, { ...how, from: this.start, ends });
  }

  down(spot, event) {
    this.byKeys = false;
    this.aim(spot, event);
    this.begun = !this.start;
    if (!this.start) this.begin();
    this.draw();
  }

  begin() {
    this.start = this.spot;
    if (this.kind === "line") {
      this.plate.page.say("begun", { x: percent(this.start.x), y: this.fromTop(this.start) });
    }
  }

  move(spot, event) {
    if (this.byKeys) return;
    this.aim(spot, event);
    this.draw();
  }

  up(spot, event, cancelled) {
    if (cancelled) return this.stop();
    this.aim(spot, event);
    const far = distance(this.start, this.spot) > DRAG * this.plate.scale();
    // A click sets the first place; a drag sets both.
    if (far) this.finish();
    else if (!this.begun) this.stop();
    else this.draw();
  }

  finish() {
    const { plate, start, spot, kind } = this;
    const { page } = plate;
    page.commit();
    const mark = plate.spare(kind);
    const select = plate.tools.querySelector(kind === "line" ? "[data-of] select" : "[data-shows] select");
    mark.select.value = select.value;
    if (kind === "line") {
      mark.places.from.set(start);
      mark.places.to.set(spot);
    } else {
      mark.place.set(start);
      mark.setRadius(distance(start, spot));
    }
    this.drop();
    plate.draw();
    page.commit();
    const [grip] = mark.grips;
    grip.element.focus({ preventScroll: true });
    page.choose(mark);
    page.say("drawn", { mark: grip.name() });
  }

  /** Returns whether the key was meant for the pen. */
  key(event) {
    if (!this.kind) return false;
    const { page } = this.plate;
    const step = stride(event);
    if (event.key === "Escape") {
      if (this.start) this.stop();
      else this.drop();
      page.say("cancelled");
    } else if (step) {
      this.byKeys = true;
      const within = (value, most) => Math.min(most, Math.max(0, value));
      this.spot = { x: within(this.spot.x + step.x, 10000), y: within(this.spot.y + step.y, this.plate.tall) };
      page.say("at", { x: percent(this.spot.x), y: this.fromTop(this.spot) });
      this.draw();
    } else if (event.key === "Enter" || event.key === " ") {
      this.byKeys = true;
      if (!this.start) this.begin();
      else if (distance(this.start, this.spot) > 0) this.finish();
      this.draw();
    } else {
      return false;
    }
    return true;
  }

  fromTop(spot) {
    return percent((spot.y * 10000) / this.plate.tall);
  }

  draw() {
    const layer = this.plate.layers.pen;
    layer.replaceChildren();
    if (!this.kind) return;
    const scale = this.plate.scale();
    if (this.start && this.kind === "line") {
      layer.append(svg("path", { class: "dimension-line", d: path({ from: this.start, to: this.spot, via: null }) }));
    } else if (this.start) {
      const r = distance(this.start, this.spot);
      layer.append(svg("circle", { class: "blow-up-ring", cx: this.start.x, cy: this.start.y, r }));
    }
    const on = this.start ?? this.spot;
    for (const spot of this.byKeys ? [on, this.spot] : this.start ? [on] : []) {
      const cross = this.cross.cloneNode();
      cross.setAttribute("transform", `translate(${spot.x} ${spot.y}) scale(${scale / 10})`);
      layer.append(cross);
    }
  }
}
