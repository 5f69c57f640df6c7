// A sheet has many sections. On a narrow screen those after the size chart are folded, and open
// where a link leads to them. Without script all are open.

const FOLDED = "details.fold:not(#chart)";

function open(fragment) {
  const target = fragment.length > 1 && document.getElementById(decodeURIComponent(fragment.slice(1)));
  const fold = target && target.closest("details.fold");
  if (!fold || fold.open) return;
  fold.open = true;
  target.scrollIntoView();
}

if (matchMedia("(max-width: 47.99rem)").matches) {
  for (const fold of document.querySelectorAll(FOLDED)) fold.open = false;
}
open(location.hash);

document.addEventListener("click", (event) => {
  const link = event.target.closest("a[href^='#']");
  if (link) open(link.getAttribute("href"));
});

window.addEventListener("hashchange", () => open(location.hash));

// What is folded is printed, too.
window.addEventListener("beforeprint", () => {
  for (const fold of document.querySelectorAll(FOLDED)) fold.open = true;
});
