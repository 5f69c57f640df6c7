// A grid under the hand: arrows, Enter, blocks, copy and paste to and from any spreadsheet, fill
// down, rows in another order, undo. Without script the same form is filled field by field.

import { isDirty, isText, leaves, parse, put, restore, state, text } from "./grid-cells.js";
import { History } from "./grid-history.js";
import { Inside, wordingOf } from "./grid-how.js";
import { dragging } from "./grid-order.js";
import { askRows, fieldsOf, values } from "./grid-values.js";

// What belongs to a row but is no cell of it.
const ASIDE = /\.(remove|wording|keep)$/;

for (const table of document.querySelectorAll("table.grid[data-hand]")) {
  if (!table.closest("fieldset").disabled) start(table);
}

function start(table) {
  const body = table.tBodies[0];
  const form = table.closest("form");
  // Lists have each their own empty row.
  const spare = table.parentElement.querySelector("template") ?? form.querySelector("template");
  const status = form.querySelector("[data-say]");
  const tools = "order" in table.dataset ? form.querySelector("[data-tools]") : null;
  const letters = "order" in table.dataset ? form.querySelector("[data-letters]") : null;

  // Where things are: a cell is its control, by row and column. Rows of the table that belong to
  // the row above them, as how a point is measured does, move with it; their controls follow its own.

  const rows = () => [...body.querySelectorAll("tr[data-row]")];
  function group(row) {
    const all = [row];
    for (let next = row.nextElementSibling; next && !next.dataset.row; next = next.nextElementSibling) {
      all.push(next);
    }
    return all;
  }
  const held = (row) => group(row).flatMap((each) => [...each.querySelectorAll("input, select")]);
  const controls = (row) =>
    held(row).filter((control) => control.type !== "hidden" && !ASIDE.test(control.name));
  const rowOf = (inside) => {
    let row = inside.closest("tr");
    while (row && !row.dataset.row) row = row.previousElementSibling;
    return row;
  };
  const at = (r, c) => {
    const row = rows()[r];
    return row && controls(row)[c];
  };
  const place = (control) => {
    const row = rowOf(control);
    return row && { r: rows().indexOf(row), c: controls(row).indexOf(control) };
  };
  const ask = values(table, form, held);
  const inside = new Inside(body, rowOf);

  // Rows added, and put in another order.

  const blank = spare?.innerHTML ?? "";

  function addRows(count) {
    if (!blank || count <= 0) return;
    const numbers = rows().map((row) => Number(/^new-(\d+)(?=-|$)/.exec(row.dataset.row)?.[1] ?? 0));
    const next = Math.max(0, ...numbers) + 1;
    const added = Array.from({ length: count }, (_, i) => blank.replaceAll("new-0", `new-${next + i}`));
    body.insertAdjacentHTML("beforeend", added.join(""));
    inside.tidy();
  }

  // A row taken away keeps what belongs to it, to come back with it.
  const kept = new WeakMap();

  function arrange(order) {
    for (const row of rows()) kept.set(row, group(row));
    const focused = document.activeElement;
    body.replaceChildren(...order.flatMap((row) => kept.get(row)));
    if (focused !== document.activeElement && focused.isConnected) focused.focus();
  }

  /** Moves the rows from `top` to `bottom` by one place, up or down. */
  function shift(top, bottom, by) {
    const was = rows();
    if (top + by < 0 || bottom + by >= was.length) return;
    const is = [...was];
    is.splice(top + by, 0, ...is.splice(top, bottom - top + 1));
    reorder(was, is, was[top]);
  }

  function reorder(was, is, row) {
    if (was.every((each, i) => each === is[i])) return;
    arrange(is);
    history.record({ cells: [], order: { was, is } });
    const control = controls(row)[0];
    anchor = head = { r: is.indexOf(row), c: anchor?.c ?? 0 };
    mark();
    row.scrollIntoView({ block: "nearest" });
    say("moved", { letter: text(control), place: is.indexOf(row) + 1, count: is.length });
  }

  if ("order" in table.dataset) {
    dragging(table, rows, (row, before) => {
      const was = rows();
      const is = was.filter((each) => each !== row);
      is.splice(before ? is.indexOf(before) : is.length, 0, row);
      reorder(was, is, row);
    });
  }

  // The chosen block, from the anchor to the head.

  let anchor = null;
  let head = null;

  /** A window that was never looked at tells of no focus: the first act in it then begins here. */
  function begin(here) {
    if (!anchor) anchor = head = here;
  }

  const block = () => {
    if (!anchor || !head) return null;
    const [top, bottom] = [anchor.r, head.r].sort((a, b) => a - b);
    const [left, right] = [anchor.c, head.c].sort((a, b) => a - b);
    return { top, bottom, left, right, many: top !== bottom || left !== right };
  };

  function mark() {
    for (const marked of body.querySelectorAll(".is-marked")) marked.classList.remove("is-marked");
    const chosen = block();
    if (!chosen?.many) return;
    each(chosen, (control) => control.parentElement.classList.add("is-marked"));
  }

  function each({ top, bottom, left, right }, see) {
    const all = rows();
    for (let r = top; r <= bottom; r += 1) {
      const cells = all[r] ? controls(all[r]) : [];
      for (let c = left; c <= right; c += 1) if (cells[c]) see(cells[c], r, c);
    }
  }

  function go(r, c, extend) {
    const control = at(r, c);
    if (!control) return;
    if (extend) {
      head = { r, c };
    } else {
      inside.show(control);
      anchor = head = { r, c };
      control.focus();
      if (isText(control)) control.select();
    }
    control.scrollIntoView({ block: "nearest", inline: "nearest" });
    mark();
  }

  body.addEventListener("pointerdown", (event) => {
    const control = event.target.closest("input, select");
    const here = control && place(control);
    if (!here || here.c < 0 || !event.shiftKey || !anchor) return;
    event.preventDefault();
    head = here;
    mark();
  });

  body.addEventListener("focusin", (event) => {
    const control = event.target;
    if (!control.matches("input, select")) return;
    history.mark(control);
    const here = place(control);
    if (here && here.c >= 0) anchor = head = here;
    mark();
  });

  // What was done, to take it back.

  const history = new History({
    arrange,
    touched,
    changed: () => {
      // What was not typed by hand is news to whoever listens to the form.
      form.dispatchEvent(new Event("change"));
      if (!tools) return;
      tools.querySelector("[data-do=undo]").disabled = history.done.length === 0;
      tools.querySelector("[data-do=redo]").disabled = history.undone.length === 0;
    },
  });

  /** Puts a text into each cell that `text` gives one for; one step of undoing. */
  function write(area, text, order) {
    const cells = [];
    let refused = false;
    each(area, (control, r, c) => {
      const value = text(r, c);
      if (value === undefined) return;
      const was = state(control);
      refused = !put(control, value) || refused;
      if (state(control) !== was) cells.push({ control, was, is: state(control) });
      history.mark(control);
    });
    history.record({ cells, order });
    say(refused ? "refused" : "");
  }

  /** Puts a state into each cell of `[cell, state]`; one step of undoing. */
  function set(states) {
    const cells = [];
    for (const [control, is] of states) {
      const was = state(control);
      if (was === is) continue;
      restore(control, is);
      history.mark(control);
      cells.push({ control, was, is });
    }
    history.record({ cells });
  }

  /** How a point is measured, by a wording of the library. */
  function take(field) {
    const wording = wordingOf(field);
    if (!wording) return;
    const key = rowOf(field).dataset.row;
    field.value = "";
    set(Object.entries(wording).map(([name, is]) => [form.elements[`${key}.${name}`], is]));
    say("taken");
  }

  function turn(back, focus) {
    const step = back ? history.undo() : history.redo();
    if (!step) return;
    say(back ? "undone" : "redone");
    const [first] = step.cells.filter(({ control }) => control.isConnected && control.type !== "hidden");
    const here = first && place(first.control);
    if (here && here.c >= 0 && focus) go(here.r, here.c, false);
    else if (here && here.c >= 0) anchor = head = here;
    mark();
  }

  function touched(control) {
    const row = control.isConnected ? rowOf(control) : null;
    if (!row) return;
    if (control.type !== "hidden") {
      control.parentElement.classList.toggle("is-dirty", isDirty(control));
    }
    if (inside.has(control)) inside.tell(row);
    ask(row);
  }

  body.addEventListener("change", (event) => {
    if (event.target.name.endsWith(".wording")) take(event.target);
    else history.settle(event.target);
  });
  body.addEventListener("input", (event) => touched(event.target));
  // What is wrong is said when the field is left.
  body.addEventListener("focusout", (event) => {
    if (event.target.parentElement.classList.contains("is-dirty")) ask(rowOf(event.target));
  });

  // Keys.

  body.addEventListener("keydown", (event) => {
    const control = event.target;
    if (!control.matches("input, select")) return;
    const here = place(control);
    if (!here || here.c < 0 || event.isComposing) return;
    begin(here);
    const { r, c } = event.shiftKey ? head : here;
    const extend = event.shiftKey;
    const act = () => {
      if (event.ctrlKey || event.metaKey) return command(event, control);
      if (event.altKey) return moves(event, here);
      switch (event.key) {
        case "Enter":
          return go(here.r + (extend ? -1 : 1), here.c, false);
        case "ArrowUp":
          return go(r - 1, c, extend);
        case "ArrowDown":
          return go(r + 1, c, extend);
        case "ArrowLeft":
          return leaves(control, "start") ? sideways(r, c - 1, extend) : false;
        case "ArrowRight":
          return leaves(control, "end") ? sideways(r, c + 1, extend) : false;
        case "Escape":
          restore(control, history.was(control));
          touched(control);
          return go(here.r, here.c, false);
        case "F2":
          if (isText(control)) control.setSelectionRange(control.value.length, control.value.length);
          return undefined;
        case "Delete":
        case "Backspace":
          return block()?.many ? write(block(), () => "") : false;
        default:
          return false;
      }
    };
    if (act() !== false) event.preventDefault();
  });

  function command(event, control) {
    const typing = isText(control) && history.isTyped(control);
    switch (event.key.toLowerCase()) {
      case "z":
        return typing ? false : turn(!event.shiftKey, true);
      case "y":
        return typing ? false : turn(false, true);
      case "d":
        return fillDown();
      case "s":
        return form.requestSubmit();
      default:
        return false;
    }
  }

  function moves(event, here) {
    if (!("order" in table.dataset)) return false;
    const { top, bottom } = block() ?? { top: here.r, bottom: here.r };
    switch (event.key) {
      case "ArrowUp":
        return shift(top, bottom, -1);
      case "ArrowDown":
        return shift(top, bottom, 1);
      case "Enter":
        return inside.turn(rows()[here.r]);
      default:
        return false;
    }
  }

  /** An arrow to the side opens nothing by itself. */
  function sideways(r, c, extend) {
    const control = at(r, c);
    if (control && !inside.isShown(control)) return undefined;
    return go(r, c, extend);
  }

  function fillDown() {
    const chosen = block();
    if (!chosen) return;
    const from = chosen.top === chosen.bottom ? chosen.top - 1 : chosen.top;
    write({ ...chosen, top: from + 1 }, (_, c) => at(from, c) && text(at(from, c)));
  }

  // Blocks to and from the clipboard.

  function copy(event) {
    const chosen = block();
    if (!chosen?.many) return false;
    const lines = [];
    each(chosen, (control, r, c) => {
      const line = (lines[r - chosen.top] ??= []);
      line[c - chosen.left] = text(control);
    });
    event.clipboardData.setData("text/plain", lines.map((line) => line.join("\t")).join("\n"));
    event.preventDefault();
    return true;
  }

  body.addEventListener("copy", copy);
  body.addEventListener("cut", (event) => {
    if (copy(event)) write(block(), () => "");
  });
  body.addEventListener("paste", (event) => {
    const here = place(event.target);
    if (!here || here.c < 0) return;
    begin(here);
    const lines = parse(event.clipboardData.getData("text/plain"));
    const chosen = block();
    const single = lines.length === 1 && lines[0].length === 1;
    if (!chosen || (single && !chosen.many)) return;
    event.preventDefault();
    if (single) {
      write(chosen, () => lines[0][0]);
      return;
    }
    const { top, left } = chosen;
    const was = rows();
    addRows(top + lines.length - was.length);
    const is = rows();
    const width = Math.max(...lines.map((line) => line.length));
    const area = { top, left, bottom: top + lines.length - 1, right: left + width - 1 };
    const order = is.length > was.length ? { was, is } : undefined;
    write(area, (r, c) => lines[r - top][c - left], order);
    anchor = { r: area.top, c: area.left };
    head = { r: area.bottom, c: area.right };
    mark();
  });

  // Buttons. Those that send the form without script work on the spot with it.

  form.addEventListener("click", (event) => {
    const button = event.target.closest("button");
    if (!button) return;
    if (button === letters) {
      event.preventDefault();
      letterInOrder();
    } else if (tools?.contains(button)) {
      press(button.dataset.do);
    } else if ("order" in table.dataset && body.contains(button) && button.name === "do") {
      event.preventDefault();
      const r = rows().indexOf(rowOf(button));
      shift(r, r, button.value.startsWith("up ") ? -1 : 1);
    }
  });

  function press(what) {
    const chosen = block();
    if (what === "undo" || what === "redo") turn(what === "undo", false);
    if (!chosen) return;
    if (what === "fill") fillDown();
    if (what === "up") shift(chosen.top, chosen.bottom, -1);
    if (what === "down") shift(chosen.top, chosen.bottom, 1);
    if (what === "open") inside.turn(rows()[chosen.top]);
  }

  body.addEventListener("keydown", (event) => {
    // A name is not a form: Enter takes the wording.
    if (event.key === "Enter" && event.target.matches('[name$=".wording"], [name$=".keep"]')) {
      event.preventDefault();
      event.target.blur();
      event.target.focus();
    }
    if (!event.target.matches("[data-handle]")) return;
    const r = rows().indexOf(rowOf(event.target));
    const by = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (!by) return;
    event.preventDefault();
    shift(r, r, by);
  });

  /** The server knows which letters are free, and writes the rules that name one. */
  async function letterInOrder() {
    const was = rows();
    let lettered;
    try {
      lettered = await askRows(letters.dataset.letters, fieldsOf(form, was.flatMap(held)));
    } catch {
      form.querySelector("[data-offline]").hidden = false;
      return;
    }
    const cells = Object.entries(lettered).flatMap(([key, { letter, grade }]) => [
      [form.elements[`${key}.letter`], letter],
      [form.elements[`${key}.as`], letter],
      [form.elements[`${key}.grade`], grade],
    ]);
    set(cells);
    say("lettered");
  }

  function say(what, values = {}) {
    if (!status) return;
    const sentence = what ? status.dataset[what] : "";
    status.textContent = sentence.replace(/\{(\w+)\}/g, (_, name) => values[name] ?? "");
  }

  // Work that is not saved is not left by a slip.

  let sending = false;
  form.addEventListener("submit", () => {
    sending = true;
  });
  const first = rows();
  window.addEventListener("beforeunload", (event) => {
    if (sending) return;
    const now = rows();
    const moved = first.some((row, i) => row !== now[i]);
    if (moved || body.querySelector(".is-dirty")) event.preventDefault();
  });

  for (const hidden of form.querySelectorAll("[data-script]")) hidden.hidden = false;
  table.classList.add("is-live");
}
