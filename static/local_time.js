// A signature carries the signer's own time. The field is filled when the form is sent, with the
// browser's clock and its offset; without script the program writes UTC.

function localTime(now) {
  const two = (number) => String(Math.abs(number)).padStart(2, "0");
  const offset = -now.getTimezoneOffset();
  const sign = offset < 0 ? "-" : "+";
  const date = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const time = `${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}`;
  return `${date}T${time}${sign}${two(Math.trunc(offset / 60))}:${two(offset % 60)}`;
}

document.addEventListener("submit", (event) => {
  const field = event.target.elements.namedItem("local_time");
  if (field) field.value = localTime(new Date());
});
