// A grid under the hand: arrows, Enter, blocks, copy and paste to and from any spreadsheet, fill
// down, undo; and the values of every size again while a rule is typed. Without script the same form
// is filled field by field. What is worked out comes from the server: there is no arithmetic here.

const PAUSE = 120; // milliseconds after the last key before the values are asked for

for (const table of document.querySelectorAll("table.grid[data-hand]")) {
  if (!table.closest("fieldset").disabled) start(table);
}

function start(table) {
  const body = table.tBodies[0];
  const form = table.closest("form");
  // Lists have each their own empty row.
  const spare = table.parentElement.querySelector("template") ?? form.querySelector("template");
  const status = form.querySelector("[data-say]");
  const fill = regrader(table, form, status);

  // Where things are: a cell is its control, by row and column.

  const rows = () => [...body.querySelectorAll("tr[data-row]")];
  const controls = (row) =>
    [...row.querySelectorAll("input:not([type=hidden]), select")].filter(
      (control) => !control.name.endsWith(".remove"),
    );
  const at = (r, c) => {
    const row = rows()[r];
    return row && controls(row)[c];
  };
  const place = (control) => {
    const row = control.closest("tr[data-row]");
    return row && { r: rows().indexOf(row), c: controls(row).indexOf(control) };
  };

  const blank = spare?.innerHTML ?? "";

  function addRows(count) {
    if (!blank || count <= 0) return;
    const numbers = rows().map((row) => Number(/^new-(\d+)(?=-|$)/.exec(row.dataset.row)?.[1] ?? 0));
    const next = Math.max(0, ...numbers) + 1;
    const added = Array.from({ length: count }, (_, i) => blank.replaceAll("new-0", `new-${next + i}`));
    body.insertAdjacentHTML("beforeend", added.join(""));
  }

  // The chosen block, from the anchor to the head.

  let anchor = null;
  let head = null;

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
    before.set(event.target, state(event.target));
    const here = place(event.target);
    if (here && here.c >= 0) anchor = head = here;
    mark();
  });

  // What was done, to take it back.

  const before = new WeakMap();
  const done = [];
  const undone = [];

  function record(changes) {
    if (changes.length === 0) return;
    done.push(changes);
    undone.length = 0;
    for (const { control } of changes) touched(control);
  }

  /** Puts a text into each cell that `text` gives one for; one step of undoing. */
  function write(area, text) {
    const changes = [];
    let refused = false;
    each(area, (control, r, c) => {
      const value = text(r, c);
      if (value === undefined) return;
      const was = state(control);
      refused = !put(control, value) || refused;
      if (state(control) !== was) changes.push({ control, was, is: state(control) });
      before.set(control, state(control));
    });
    record(changes);
    say(refused ? "refused" : "");
  }

  function step(from, to, key) {
    const changes = from.pop();
    if (!changes) return;
    for (const change of changes) {
      restore(change.control, change[key]);
      before.set(change.control, change[key]);
      touched(change.control);
    }
    to.push(changes);
    const { r, c } = place(changes[0].control);
    go(r, c, false);
  }

  function touched(control) {
    control.parentElement.classList.toggle("is-dirty", isDirty(control));
    fill(control);
  }

  body.addEventListener("change", (event) => {
    const control = event.target;
    const was = before.get(control);
    const is = state(control);
    before.set(control, is);
    if (was !== undefined && was !== is) record([{ control, was, is }]);
  });
  body.addEventListener("input", (event) => touched(event.target));
  // What is wrong is said when the field is left.
  body.addEventListener("focusout", (event) => {
    if (event.target.parentElement.classList.contains("is-dirty")) fill(event.target);
  });

  // Keys.

  body.addEventListener("keydown", (event) => {
    const control = event.target;
    const here = place(control);
    if (!here || here.c < 0 || event.isComposing) return;
    const { r, c } = event.shiftKey ? head : here;
    const extend = event.shiftKey;
    const command = event.ctrlKey || event.metaKey;
    const typing = isText(control) && state(control) !== before.get(control);
    const act = () => {
      if (command) {
        switch (event.key.toLowerCase()) {
          case "z":
            if (typing) return false;
            commit(control);
            return event.shiftKey ? step(undone, done, "is") : step(done, undone, "was");
          case "y":
            return typing ? false : step(undone, done, "is");
          case "d":
            return fillDown();
          case "s":
            return form.requestSubmit();
          default:
            return false;
        }
      }
      if (event.altKey) return false;
      switch (event.key) {
        case "Enter":
          return go(here.r + (extend ? -1 : 1), here.c, false);
        case "ArrowUp":
          return go(r - 1, c, extend);
        case "ArrowDown":
          return go(r + 1, c, extend);
        case "ArrowLeft":
          return leaves(control, "start") ? go(r, c - 1, extend) : false;
        case "ArrowRight":
          return leaves(control, "end") ? go(r, c + 1, extend) : false;
        case "Escape":
          restore(control, before.get(control));
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

  function commit(control) {
    before.set(control, state(control));
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
    addRows(top + lines.length - rows().length);
    const width = Math.max(...lines.map((line) => line.length));
    const area = { top, left, bottom: top + lines.length - 1, right: left + width - 1 };
    write(area, (r, c) => lines[r - top][c - left]);
    anchor = { r: area.top, c: area.left };
    head = { r: area.bottom, c: area.right };
    mark();
  });

  function say(what) {
    if (status) status.textContent = what ? status.dataset[what] : "";
  }

  // Work that is not saved is not left by a slip.

  let sending = false;
  form.addEventListener("submit", () => {
    sending = true;
  });
  window.addEventListener("beforeunload", (event) => {
    if (!sending && body.querySelector(".is-dirty")) event.preventDefault();
  });
}

const isText = (control) => control.tagName === "INPUT" && control.type !== "checkbox";

/** What a control holds, to be put back by `restore`. */
function state(control) {
  return control.type === "checkbox" ? String(control.checked) : control.value;
}

function restore(control, value) {
  if (value === undefined) return;
  if (control.type === "checkbox") control.checked = value === "true";
  else control.value = value;
}

function isDirty(control) {
  if (control.type === "checkbox") return control.checked !== control.defaultChecked;
  if (control.tagName === "SELECT") {
    const first = [...control.options].findIndex((option) => option.defaultSelected);
    return control.selectedIndex !== Math.max(0, first);
  }
  return control.value !== control.defaultValue;
}

/** A cell as it goes to the clipboard. */
function text(control) {
  if (control.type === "checkbox") return control.checked ? "x" : "";
  if (control.tagName === "SELECT") return control.selectedOptions[0]?.text ?? "";
  return control.value;
}

/** Puts a text from the clipboard into a cell; false when a choice has no such word. */
function put(control, value) {
  const word = value.trim().toLowerCase();
  if (control.type === "checkbox") {
    control.checked = !["", "0", "no", "n", "false", "-"].includes(word);
    return true;
  }
  if (control.tagName !== "SELECT") {
    control.value = value.trim();
    return true;
  }
  const options = [...control.options];
  const found =
    options.find((option) => [option.value, option.text.toLowerCase()].includes(word)) ??
    options.find((option) => word && option.text.toLowerCase().startsWith(word));
  if (found) control.value = found.value;
  return Boolean(found);
}

/** Whether an arrow leaves the cell: nothing or everything is chosen, or the caret is at that end. */
function leaves(control, end) {
  if (!isText(control)) return true;
  const { selectionStart: from, selectionEnd: to, value } = control;
  if (from === 0 && to === value.length) return true;
  return from === to && (end === "start" ? from === 0 : to === value.length);
}

/**
 * The cells of a pasted block. A cell is quoted when it begins with a quote that ends before a tab
 * or a line end: `28 1/2"` is not.
 */
function parse(pasted) {
  const source = pasted.replace(/\r\n?/g, "\n").replace(/\n$/, "");
  const lines = [[]];
  const cell = /(?:"((?:[^"]|"")*)"(?=[\t\n]|$)|([^\t\n]*))([\t\n]|$)/y;
  for (let match = cell.exec(source); match; match = cell.exec(source)) {
    lines.at(-1).push(match[1] === undefined ? match[2] : match[1].replaceAll('""', '"'));
    if (match[3] === "") break;
    if (match[3] === "\n") lines.push([]);
  }
  return lines;
}

/**
 * Asks for the values of the rows that are being typed, some time after the last key. Only the
 * answer to the last question is shown.
 */
function regrader(table, form, status) {
  const address = table.dataset.grade;
  if (!address) return () => {};
  let timer = 0;
  let question = null;

  const waiting = () =>
    [...table.tBodies[0].querySelectorAll("tr[data-row]")].filter(
      (row) => "unsaved" in table.dataset || row.classList.contains("was-typed"),
    );

  function body(rows) {
    const fields = new URLSearchParams();
    for (const name of ["token", "version", "unit", "sizes_version"]) {
      fields.append(name, form.elements[name].value);
    }
    for (const control of rows.flatMap((row) => [...row.querySelectorAll("input, select")])) {
      const off = control.type === "checkbox" && !control.checked;
      if (!off && !control.name.endsWith(".remove")) fields.append(control.name, control.value);
    }
    return fields;
  }

  async function ask() {
    question?.abort();
    const mine = new AbortController();
    question = mine;
    try {
      const answer = await fetch(address, {
        method: "POST",
        headers: { Accept: "application/json" },
        body: body(waiting()),
        signal: mine.signal,
      });
      if (!answer.ok) throw new Error(String(answer.status));
      const { rows } = await answer.json();
      if (question !== mine) return;
      for (const [key, graded] of Object.entries(rows)) show(table, key, graded);
      if (status) status.textContent = "";
    } catch {
      if (question === mine && status) status.textContent = status.dataset.offline;
    }
  }

  return (control) => {
    // Also when it is typed back to what was saved: its values must come back, too.
    control.closest("tr[data-row]")?.classList.add("was-typed");
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE);
  };
}

function show(table, key, { values, notes, errors }) {
  const row = table.querySelector(`tr[data-row="${CSS.escape(key)}"]`);
  if (!row) return;
  row.querySelectorAll("td.calc").forEach((cell, i) => {
    cell.textContent = values[i]?.value ?? "";
    if (!values[i]) return;
    const reference = document.createElement("small");
    reference.textContent = values[i].reference;
    cell.append(reference);
  });
  for (const control of row.querySelectorAll("input:not([type=hidden]), select")) {
    const sentence = errors[control.name.slice(key.length + 1)];
    // A number is not told to be wrong while it is still being typed.
    if (!sentence || control !== document.activeElement) blame(control, sentence);
  }
  const more = table.querySelector(`tr[data-notes="${CSS.escape(key)}"]`);
  more.hidden = notes.length === 0;
  more.querySelector("ul").replaceChildren(
    ...notes.map((note) => {
      const item = document.createElement("li");
      item.classList.toggle("error-finding", note.error);
      item.append(document.createElement("p"));
      item.firstChild.textContent = note.sentence;
      return item;
    }),
  );
}

/** Puts a sentence beside a field, or takes it away. */
function blame(control, sentence) {
  const id = `${control.name}.error`;
  document.getElementById(id)?.remove();
  if (!sentence) {
    control.removeAttribute("aria-invalid");
    control.removeAttribute("aria-describedby");
    return;
  }
  const error = document.createElement("p");
  error.className = "error";
  error.id = id;
  error.textContent = sentence;
  control.after(error);
  control.setAttribute("aria-invalid", "true");
  control.setAttribute("aria-describedby", id);
}
