// Long work shows that it goes on: a form that is not answered at once says so, and with files how
// much is on its way. Signing out clears what this browser kept.

const PATIENCE = 600;
const line = document.querySelector("[data-busy]");

function words(form) {
  const files = [...form.querySelectorAll("input[type=file]")].flatMap((field) => [...field.files]);
  if (files.length === 0) return line.dataset.waits;
  const bytes = files.reduce((sum, file) => sum + file.size, 0);
  const size = Math.max(bytes / 1e6, 0.1).toFixed(1);
  return line.dataset.sending.replace("{files}", files.length).replace("{size}", size);
}

// Pages that were kept for measuring go with whoever signs out; values that wait stay.
document.addEventListener("submit", (event) => {
  const leaves = new URL(event.target.action).pathname.startsWith("/sign-out");
  if (leaves && window.caches) caches.delete("measuring");
});

if (line) {
  document.addEventListener("submit", (event) => {
    const form = event.target;
    setTimeout(() => {
      // What a script of the page sends in its own way tells of itself.
      if (event.defaultPrevented || form.method !== "post" || form.target) return;
      line.querySelector("span").textContent = words(form);
      (form.closest("dialog") || document.body).append(line);
      line.hidden = false;
    }, PATIENCE);
  });
  window.addEventListener("pageshow", () => {
    line.hidden = true;
  });
}
