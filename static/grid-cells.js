// One cell of a grid: what its control holds, and its text on a clipboard.

export const isText = (control) => control.tagName === "INPUT" && control.type !== "checkbox";

/** What a control holds, to be put back by `restore`. */
export function state(control) {
  return control.type === "checkbox" ? String(control.checked) : control.value;
}

export function restore(control, value) {
  if (value === undefined) return;
  if (control.type === "checkbox") control.checked = value === "true";
  else control.value = value;
}

export function isDirty(control) {
  if (control.type === "checkbox") return control.checked !== control.defaultChecked;
  if (control.tagName === "SELECT") {
    const first = [...control.options].findIndex((option) => option.defaultSelected);
    return control.selectedIndex !== Math.max(0, first);
  }
  return control.value !== control.defaultValue;
}

/** A cell as it goes to the clipboard. */
export function text(control) {
  if (control.type === "checkbox") return control.checked ? "x" : "";
  if (control.tagName === "SELECT") return control.selectedOptions[0]?.text ?? "";
  return control.value;
}

/** Puts a text from the clipboard into a cell; false when a choice has no such word. */
export function put(control, value) {
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
export function leaves(control, end) {
  if (!isText(control)) return true;
  const { selectionStart: from, selectionEnd: to, value } = control;
  if (from === 0 && to === value.length) return true;
  return from === to && (end === "start" ? from === 0 : to === value.length);
}

/**
 * The cells of a pasted block. A cell is quoted when it begins with a quote that ends before a tab
 * or a line end: `28 1/2"` is not.
 */
export function parse(pasted) {
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
