// Rows dragged to another place by their handles, with a pointer or a finger. Keys and buttons move
// them as well.

const EDGE = 48; // pixels from the upper and lower edge in which the table scrolls on
const PACE = 12; // pixels that it then scrolls in one picture

/** `rows()` are the rows as they stand; `moved(row, before)` puts one before another, or last. */
export function dragging(table, rows, moved) {
  const scroll = table.closest(".scroll");
  let drag = null;

  table.addEventListener("pointerdown", (event) => {
    const handle = event.target.closest("[data-handle]");
    if (!handle || event.button !== 0) return;
    event.preventDefault();
    handle.setPointerCapture(event.pointerId);
    drag = { handle, row: handle.closest("tr"), y: event.clientY, before: undefined, frame: 0 };
    drag.row.classList.add("is-dragged");
    drag.frame = requestAnimationFrame(scrollOn);
  });

  table.addEventListener("pointermove", (event) => {
    if (!drag) return;
    drag.y = event.clientY;
    aim();
  });

  table.addEventListener("pointerup", () => {
    if (!drag) return;
    const { row, before } = drag;
    end();
    if (before !== undefined && before !== row) moved(row, before);
  });
  table.addEventListener("pointercancel", end);
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") end();
  });

  function end() {
    if (!drag) return;
    cancelAnimationFrame(drag.frame);
    drag.row.classList.remove("is-dragged");
    drag = null;
    unmark();
  }

  function unmark() {
    for (const marked of table.querySelectorAll(".is-before, .is-after")) {
      marked.classList.remove("is-before", "is-after");
    }
  }

  /** The row that the dragged one would stand before; null for the end. */
  function aim() {
    const all = rows();
    const below = all.find((row) => {
      const { top, bottom } = row.getBoundingClientRect();
      return drag.y < (top + bottom) / 2;
    });
    unmark();
    drag.before = below ?? null;
    if (below) below.classList.add("is-before");
    else all.at(-1).classList.add("is-after");
  }

  function scrollOn() {
    if (!drag) return;
    const { top, bottom } = scroll.getBoundingClientRect();
    const upper = Math.max(top, 0) + EDGE;
    const lower = Math.min(bottom, window.innerHeight) - EDGE;
    const by = drag.y < upper ? -PACE : drag.y > lower ? PACE : 0;
    if (by && drag.before !== undefined) {
      scroll.scrollBy(0, by);
      aim();
    }
    drag.frame = requestAnimationFrame(scrollOn);
  }
}
