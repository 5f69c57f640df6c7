// A letter on the drawing and everything that speaks of the same item light up together. Without
// script the links alone do: they lead from letter to row and back.

const ATTRIBUTE = "[data-item]";

function light(target, on) {
  const named = target instanceof Element ? target.closest(ATTRIBUTE) : null;
  if (!named) return;
  const item = CSS.escape(named.dataset.item);
  for (const each of document.querySelectorAll(`[data-item="${item}"]`)) {
    each.classList.toggle("is-lit", on);
  }
}

document.addEventListener("pointerover", (event) => light(event.target, true));
document.addEventListener("pointerout", (event) => light(event.target, false));
document.addEventListener("focusin", (event) => light(event.target, true));
document.addEventListener("focusout", (event) => light(event.target, false));
