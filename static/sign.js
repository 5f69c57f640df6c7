// A signature carries the signer's own time, as their clock shows it: 2026-03-02T15:00:00+07:00.

function localTime() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, "0");
  const east = -now.getTimezoneOffset();
  const date = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const time = `${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}`;
  const offset = `${two(Math.floor(Math.abs(east) / 60))}:${two(Math.abs(east) % 60)}`;
  return `${date}T${time}${east < 0 ? "-" : "+"}${offset}`;
}

document.addEventListener("submit", (event) => {
  const field = event.target.elements.local_time;
  if (field) field.value = localTime();
});
