// The colour matrix: a cell shows the fields of its choice only, its patch follows what is typed,
// and a picker helps with the screen value. Without script all fields are there.

const SCREEN = /^#?([0-9a-f]{6})$/i;

for (const table of document.querySelectorAll("table.colours")) {
  if (table.closest("fieldset").disabled) continue;
  for (const cell of table.querySelectorAll("[data-cell]")) start(cell, table.dataset.picker);
}

function start(cell, label) {
  const kind = cell.querySelector("select");
  const fields = cell.querySelector(".cell-colour");
  const texts = [...fields.querySelectorAll("input")];
  const screen = texts.find((input) => input.name.endsWith(".screen"));
  const patch = cell.querySelector(".patch");

  const picker = screen && document.createElement("input");
  if (picker) {
    picker.type = "color";
    picker.setAttribute("aria-label", label);
    screen.after(picker);
  }

  function show() {
    const other = !["", "colour"].includes(kind.value);
    fields.hidden = other || (kind.value === "" && texts.every((input) => input.value === ""));
    // Computed from a reading: its patch stays as it came.
    if (!screen) return;
    const digits = SCREEN.exec(screen.value.trim())?.[1].toLowerCase();
    if (digits) picker.value = `#${digits}`;
    if (other) return;
    patch.querySelector("path")?.remove();
    patch.querySelector("rect").setAttribute("fill", digits ? `#${digits}` : "#fff");
  }

  kind.addEventListener("change", () => {
    show();
    if (kind.value === "colour") texts[0].focus();
  });
  for (const input of texts) {
    input.addEventListener("input", () => {
      if (kind.value === "" && input.value !== "") kind.value = "colour";
      show();
    });
  }
  picker?.addEventListener("input", () => {
    screen.value = picker.value;
    kind.value = "colour";
    show();
  });
  show();
}

// The page of one cell: the fields of a colour show for a colour only.
const fields = document.querySelector("[data-colour]");
if (fields) {
  const kind = document.getElementById("kind");
  const show = () => {
    fields.hidden = !["", "colour"].includes(kind.value);
  };
  kind.addEventListener("change", show);
  show();
}
