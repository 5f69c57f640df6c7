// What opens below a row of a grid: how a point is measured. The row's own line tells what stands
// there; a wording of the library fills it.

/** Of the rows of a table: `rowOf(inside)` gives the row that something stands in or below. */
export class Inside {
  constructor(body, rowOf) {
    this.body = body;
    this.rowOf = rowOf;
    window.addEventListener("hashchange", () => this.reveal());
    // Keys lead from cell to cell: opening has a key of its own.
    this.tidy();
    this.reveal();
  }

  tidy() {
    for (const summary of this.body.querySelectorAll(".opens > summary")) summary.tabIndex = -1;
  }

  has(control) {
    return !control.closest("tr").dataset.row;
  }

  lid(row) {
    return row.querySelector("details.opens");
  }

  isShown(control) {
    return !this.has(control) || this.lid(this.rowOf(control)).open;
  }

  /** Opens what a control stands in. */
  show(control) {
    if (this.has(control)) this.lid(this.rowOf(control)).open = true;
  }

  /** Opens or closes a row. The hand goes into it, or back to the row. */
  turn(row) {
    const lid = this.lid(row);
    if (!lid) return;
    lid.open = !lid.open;
    const inside = row.nextElementSibling.querySelector('[name$=".start"]');
    (lid.open ? inside : row.querySelector('[name$=".name"]')).focus();
  }

  tell(row) {
    const line = this.lid(row)?.querySelector("[data-way]");
    if (!line) return;
    const inside = row.nextElementSibling;
    const ends = ["start", "end"].map((end) => inside.querySelector(`[name$=".${end}"]`).value.trim());
    line.textContent = ends.every(Boolean) ? ends.join(" → ") : line.dataset.missing;
  }

  /** A finding leads to a field that may stand in a closed row. */
  reveal() {
    const field = document.getElementById(location.hash.slice(1));
    if (!field?.matches("input, select") || !this.body.contains(field)) return;
    this.show(field);
    field.focus();
  }
}

/** What the wording that is named in a field says, by the names of the fields that it fills. */
export function wordingOf(control) {
  const name = control.value.trim().toLowerCase();
  const options = name ? [...control.list.options] : [];
  const found = options.find((option) => option.value.toLowerCase() === name);
  return found ? { ...found.dataset } : null;
}
