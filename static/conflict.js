// Two versions of one section: what is written anew is chosen by being written, and one press
// chooses one side throughout what both changed.

const form = document.querySelector("form.conflict");

form.addEventListener("input", (event) => {
  const anew = event.target.closest(".anew");
  if (!anew || event.target.type === "radio") return;
  anew.querySelector("input[type=radio]").checked = true;
});

for (const button of form.querySelectorAll("[data-all]")) {
  button.parentElement.hidden = false;
  button.addEventListener("click", () => {
    const choices = form.querySelectorAll(`input[type=radio][value="${button.dataset.all}"]`);
    for (const choice of choices) if (!choice.closest("details")) choice.checked = true;
  });
}
