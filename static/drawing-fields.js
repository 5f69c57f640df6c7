// The fields of the drawings' form: places in percent, and what was done to them, to take it back.

/** Percent as ten-thousandths; nothing for what is no number from 0 to 100. */
export function tenThousandths(typed) {
  const number = typed.trim().replace(/\s*%$/, "").replace(",", ".");
  if (!/^\d{1,3}(\.\d{1,2})?$/.test(number) || Number(number) > 100) return null;
  return Math.round(Number(number) * 100);
}

export const clamp = (value) => Math.min(10000, Math.max(0, Math.round(value)));

export const percent = (tenThousandths) => String(clamp(tenThousandths) / 100);

/** A place in two fields, or in one with both numbers; in units of which the drawing's width has
 * 10 000, on a drawing that is `tall` of them. */
export class Place {
  /** @param {HTMLInputElement[]} inputs @param {number} tall */
  constructor(inputs, tall) {
    this.inputs = inputs;
    this.tall = tall;
  }

  get() {
    const typed = this.inputs.map((input) => input.value);
    const [x, y] = typed.length === 2 ? typed.map(tenThousandths) : both(typed[0]);
    return x === null || y === null ? null : { x, y: (y * this.tall) / 10000 };
  }

  set(spot) {
    const [x, y] = spot ? [percent(spot.x), percent((spot.y * 10000) / this.tall)] : ["", ""];
    if (this.inputs.length === 2) {
      [this.inputs[0].value, this.inputs[1].value] = [x, y];
    } else {
      this.inputs[0].value = `${x} ${y}`.trim();
    }
  }

  /** Both numbers, in percent, as they are said. */
  said() {
    const spot = this.get();
    if (!spot) return { x: "", y: "" };
    return { x: percent(spot.x), y: percent((spot.y * 10000) / this.tall) };
  }
}

function both(typed) {
  let parts = typed.split(/[\s/;]+/).map((part) => part.replace(/,+$/, ""));
  parts = parts.filter((part) => part !== "" && part !== "%");
  if (parts.length === 1 && parts[0].split(",").length === 2) parts = parts[0].split(",");
  return parts.length === 2 ? parts.map(tenThousandths) : [null, null];
}

/** What was done to the fields of a form, step by step. A row is never taken out of the form, only
 * emptied, so the fields are all that has to be kept. */
export class History {
  constructor(form) {
    this.form = form;
    this.known = new Map();
    this.first = new Map();
    this.done = [];
    this.undone = [];
    this.learn();
  }

  controls() {
    const all = this.form.querySelectorAll("input, select, textarea");
    const other = ["hidden", "file", "submit", "button"];
    return [...all].filter((control) => !other.includes(control.type) && control.name);
  }

  /** Takes note of fields that were not there before. */
  learn() {
    for (const control of this.controls()) {
      if (this.known.has(control)) continue;
      this.known.set(control, worth(control));
      this.first.set(control, worth(control));
    }
  }

  /** Everything that is other than at the last step becomes a step. */
  commit() {
    const step = [];
    for (const [control, before] of this.known) {
      const after = worth(control);
      if (after === before) continue;
      step.push({ control, before, after });
      this.known.set(control, after);
    }
    if (step.length === 0) return;
    this.done.push(step);
    this.undone.length = 0;
  }

  /** Puts everything back as it was at the last step. */
  revert() {
    for (const [control, known] of this.known) put(control, known);
  }

  /** Whether this field holds something that is no step yet. */
  isTyping(control) {
    return this.known.has(control) && worth(control) !== this.known.get(control);
  }

  /** Returns whether there was something to take back. */
  undo() {
    this.commit();
    return this.turn(this.done, this.undone, "before");
  }

  redo() {
    return this.turn(this.undone, this.done, "after");
  }

  turn(from, to, which) {
    const step = from.pop();
    if (!step) return false;
    for (const each of step) {
      put(each.control, each[which]);
      this.known.set(each.control, each[which]);
    }
    to.push(step);
    return true;
  }

  /** Whether anything would be lost by leaving. */
  isDirty() {
    for (const [control, first] of this.first) if (worth(control) !== first) return true;
    return [...this.form.querySelectorAll("input[type=file]")].some((input) => input.files.length > 0);
  }
}

const worth = (control) => (control.type === "checkbox" ? control.checked : control.value);

function put(control, value) {
  if (control.type === "checkbox") control.checked = value;
  else control.value = value;
}
