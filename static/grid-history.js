// What was done to a grid, to take it back and to do it again. A step holds the cells that it changed
// and, where it moved, added or took away rows, their order before and after.

import { restore, state } from "./grid-cells.js";

export class History {
  /**
   * `arrange` puts rows in an order; `touched` is told of each cell that changes; `changed` of every
   * step, to show whether there is one to take back.
   */
  constructor({ arrange, touched, changed }) {
    this.arrange = arrange;
    this.touched = touched;
    this.changed = changed;
    this.before = new WeakMap();
    this.done = [];
    this.undone = [];
  }

  /** Remembers what a cell holds now: what differs from it later was typed. */
  mark(control) {
    this.before.set(control, state(control));
  }

  /** What the cell held when it was marked last. */
  was(control) {
    return this.before.get(control);
  }

  /** Whether something is typed into the cell that is no step yet: a browser takes that back itself. */
  isTyped(control) {
    return this.before.has(control) && state(control) !== this.before.get(control);
  }

  /** A cell is left, or a choice is made: a step, if that changed anything. */
  settle(control) {
    const was = this.before.get(control);
    this.mark(control);
    if (was !== undefined && was !== state(control)) {
      this.record({ cells: [{ control, was, is: state(control) }] });
    }
  }

  /** A step that has been made. `order`: `{ was, is }`, both lists of rows. */
  record({ cells, order }) {
    if (cells.length === 0 && !order) return;
    this.done.push({ cells, order });
    this.undone.length = 0;
    for (const { control } of cells) this.touched(control);
    this.changed();
  }

  /** Takes the last step back. Gives it, or nothing where there is none. */
  undo() {
    return this.turn(this.done, this.undone, "was");
  }

  redo() {
    return this.turn(this.undone, this.done, "is");
  }

  turn(from, to, side) {
    const step = from.pop();
    if (!step) return null;
    if (step.order) this.arrange(step.order[side]);
    for (const cell of step.cells) {
      restore(cell.control, cell[side]);
      this.mark(cell.control);
      this.touched(cell.control);
    }
    to.push(step);
    this.changed();
    return step;
  }
}
