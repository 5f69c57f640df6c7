// A ready instruction goes into the text of the form at a press; the three dots in it are chosen, so
// that the figure is typed next. Without script it is typed whole.

const form = document.getElementById("section");

document.addEventListener("click", (event) => {
  const button = event.target.closest("[data-write]");
  const field = button && form && form.querySelector('textarea[name$="text"]');
  if (!field) return;
  const before = field.value.trim();
  const start = before ? before.length + 1 : 0;
  field.value = before ? `${before} ${button.dataset.write}` : button.dataset.write;
  const dots = field.value.indexOf("…", start);
  field.focus();
  if (dots < 0) field.setSelectionRange(field.value.length, field.value.length);
  else field.setSelectionRange(dots, dots + 1);
  field.dispatchEvent(new Event("input", { bubbles: true }));
});
