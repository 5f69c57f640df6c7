// The values of every size again while a rule is typed. They come from the server: there is no
// arithmetic here.

const PAUSE = 120; // milliseconds after the last key before the values are asked for

/** The fields of a form that say what its texts hold for, and the controls of these rows. */
export function fieldsOf(form, controls) {
  const fields = new URLSearchParams();
  for (const name of ["token", "version", "unit", "sizes_version"]) {
    fields.append(name, form.elements[name].value);
  }
  for (const control of controls) {
    const off = control.type === "checkbox" && !control.checked;
    if (control.name && !off && !control.name.endsWith(".remove")) {
      fields.append(control.name, control.value);
    }
  }
  return fields;
}

/** Asks the server as a form would. Gives the rows of its answer. */
export async function askRows(address, body, signal) {
  const headers = { Accept: "application/json" };
  const answer = await fetch(address, { method: "POST", headers, body, signal });
  if (!answer.ok) throw new Error(String(answer.status));
  return (await answer.json()).rows;
}

/**
 * Asks for the values of the rows that are being typed, some time after the last key. Only the
 * answer to the last question is shown. `controls(row)` gives all that a row holds.
 */
export function values(table, form, controls) {
  const address = table.dataset.grade;
  if (!address) return () => {};
  const lost = form.querySelector("[data-offline]");
  let left = false;
  let timer = 0;
  let question = null;
  // A page that is left asks nothing any more, and complains of nothing.
  window.addEventListener("pagehide", () => {
    left = true;
  });

  const waiting = () =>
    [...table.tBodies[0].querySelectorAll("tr[data-row]")].filter(
      (row) => "unsaved" in table.dataset || row.classList.contains("was-typed"),
    );

  async function ask() {
    question?.abort();
    const mine = new AbortController();
    question = mine;
    let trouble = false;
    try {
      const body = fieldsOf(form, waiting().flatMap(controls));
      const rows = await askRows(address, body, mine.signal);
      if (question !== mine) return;
      for (const [key, graded] of Object.entries(rows)) show(table, key, graded);
    } catch {
      trouble = true;
    }
    if (question === mine && !left) lost.hidden = !trouble;
  }

  return (row) => {
    // Also when it is typed back to what was saved: its values must come back, too.
    row?.classList.add("was-typed");
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE);
  };
}

function element(name, words, look) {
  const made = document.createElement(name);
  made.textContent = words;
  if (look) made.className = look;
  return made;
}

function show(table, key, { values, steps, told, notes, errors }) {
  const row = table.querySelector(`tr[data-row="${CSS.escape(key)}"]`);
  if (!row) return;
  const how = table.querySelector(`tr[data-of="${CSS.escape(key)}"]`);
  const sentence = (value) => table.dataset.unrounded.replace("{value}", value);
  row.querySelectorAll("td.calc").forEach((cell, i) => {
    cell.textContent = values[i]?.value ?? "";
    if (!values[i]) return;
    cell.append(element("small", values[i].reference));
    if (!values[i].unrounded) return;
    const unrounded = element("small", "", "unrounded");
    unrounded.append(element("span", sentence(values[i].unrounded), "visually-hidden"));
    unrounded.append(element("span", values[i].unrounded));
    unrounded.lastChild.ariaHidden = "true";
    cell.append(unrounded);
  });
  how.querySelector("[data-steps]").replaceChildren(
    ...steps.map((step) => {
      const item = element("li", `${step.gap} `);
      item.append(element("b", step.left));
      if (step.unrounded) item.append(" ", element("span", sentence(step.unrounded), "unrounded"));
      return item;
    }),
  );
  how.querySelector("[data-told]").textContent = told ?? "";
  for (const each of [row, how]) {
    for (const control of each.querySelectorAll("input:not([type=hidden]), select")) {
      const wrong = errors[control.name.slice(key.length + 1)];
      // A number is not told to be wrong while it is still being typed.
      if (!wrong || control !== document.activeElement) blame(control, wrong);
    }
  }
  const more = table.querySelector(`tr[data-notes="${CSS.escape(key)}"]`);
  more.hidden = notes.length === 0;
  more.querySelector("ul").replaceChildren(
    ...notes.map((note) => {
      const item = element("li", "", note.error ? "error-finding" : "");
      item.append(element("p", note.sentence));
      return item;
    }),
  );
}

/** Puts a sentence beside a field, or takes it away. */
export function blame(control, sentence) {
  const id = `${control.name}.error`;
  document.getElementById(id)?.remove();
  if (!sentence) {
    control.removeAttribute("aria-invalid");
    control.removeAttribute("aria-describedby");
    return;
  }
  const error = element("p", sentence, "error");
  error.id = id;
  control.after(error);
  control.setAttribute("aria-invalid", "true");
  control.setAttribute("aria-describedby", id);
}
