// A list of groups (the fibres of a fabric, the dimensions of a body) has an empty one at its end: as
// soon as something is written into the last one, the next appears. Without script each save brings
// two more.

const PART = "fieldset.group > .fields.part";

function grow(part) {
  const list = part.parentElement;
  const key = part.querySelector(":scope > input[type=hidden]");
  const number = Number(key.value);
  const next = document.createElement("template");
  next.innerHTML = part.outerHTML.replaceAll(`${key.name}.${number}.`, `${key.name}.${number + 1}.`);
  const added = next.content.firstElementChild;
  added.querySelector(":scope > input[type=hidden]").value = number + 1;
  for (const error of added.querySelectorAll(".error")) error.remove();
  for (const field of added.querySelectorAll("input:not([type=hidden]), select, textarea")) {
    field.removeAttribute("aria-invalid");
    field.removeAttribute("aria-describedby");
    if (["checkbox", "radio"].includes(field.type)) field.checked = false;
    else if (field.tagName === "SELECT") field.selectedIndex = 0;
    else field.value = "";
  }
  list.append(added);
}

/** Whether nothing stands in a group. */
const isEmpty = (part) =>
  [...part.querySelectorAll("input:not([type=hidden]), select, textarea")].every((field) =>
    ["checkbox", "radio"].includes(field.type) ? !field.checked : field.value === "",
  );

for (const kind of ["input", "change"]) {
  document.addEventListener(kind, (event) => {
    // A group may stand in a group of another list.
    let part = event.target.closest(PART);
    while (part) {
      const last = part === part.parentElement.querySelector(":scope > .fields.part:last-child");
      if (last && !isEmpty(part)) grow(part);
      part = part.parentElement.closest(PART);
    }
  });
}
