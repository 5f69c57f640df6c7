// Drawing on a photograph before it is sent, with a finger: a circle around something, an arrow to it,
// a dimension with its value. What is drawn becomes part of the picture.

const INK = "#a8124a";
const PAPER = "#ffffff";

/**
 * Offers to draw on a picture, at the end of `place`. `template` has the tools with their words;
 * `drawn(canvas)` is told when something was drawn or taken back.
 */
export async function offer(file, template, place, drawn) {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const figure = template.content.firstElementChild.cloneNode(true);
  const canvas = figure.querySelector("canvas");
  canvas.width = picture.width;
  canvas.height = picture.height;
  const value = figure.querySelector("[data-value]");
  const undo = figure.querySelector("[data-undo]");
  const marks = [];
  let tool = "";
  let now = null;
  place.append(figure);
  show();

  figure.addEventListener("click", (event) => {
    const button = event.target.closest("[data-tool]");
    if (button) choose(button.dataset.tool === tool ? "" : button.dataset.tool);
  });
  undo.addEventListener("click", () => {
    marks.pop();
    show();
    drawn(canvas);
  });
  value.addEventListener("input", () => {
    const last = marks.at(-1);
    if (last?.tool !== "dimension") return;
    last.text = value.value;
    show();
    drawn(canvas);
  });

  // Enter would send the form.
  value.addEventListener("keydown", (event) => {
    if (event.key === "Enter") event.preventDefault();
  });

  function choose(next) {
    tool = next;
    canvas.classList.toggle("drawing", tool !== "");
    for (const each of figure.querySelectorAll("[data-tool]")) {
      each.setAttribute("aria-pressed", String(each.dataset.tool === tool));
    }
  }

  canvas.addEventListener("pointerdown", (event) => {
    if (!tool) return;
    event.preventDefault();
    canvas.setPointerCapture(event.pointerId);
    const at = spot(event);
    const text = tool === "dimension" ? value.value : "";
    now = { tool, from: at, to: at, text };
  });
  canvas.addEventListener("pointermove", (event) => {
    if (!now) return;
    now.to = spot(event);
    show();
  });
  canvas.addEventListener("pointerup", () => {
    if (!now) return;
    const mark = now;
    now = null;
    // A tap draws nothing.
    if (Math.hypot(mark.to.x - mark.from.x, mark.to.y - mark.from.y) > width() * 3) {
      marks.push(mark);
      drawn(canvas);
    }
    show();
  });
  canvas.addEventListener("pointercancel", () => {
    now = null;
    show();
  });

  function spot(event) {
    const box = canvas.getBoundingClientRect();
    return {
      x: ((event.clientX - box.left) / box.width) * canvas.width,
      y: ((event.clientY - box.top) / box.height) * canvas.height,
    };
  }

  function width() {
    return Math.max(canvas.width, canvas.height) / 180;
  }

  function show() {
    const pen = canvas.getContext("2d");
    pen.drawImage(picture, 0, 0);
    for (const mark of now ? [...marks, now] : marks) draw(pen, mark, width());
    undo.disabled = marks.length === 0;
  }
}

/** A mark, with a light edge so that it is seen on every cloth. */
function draw(pen, mark, width) {
  pen.lineCap = pen.lineJoin = "round";
  for (const [colour, wide] of [
    [PAPER, width * 2.2],
    [INK, width],
  ]) {
    pen.strokeStyle = pen.fillStyle = colour;
    pen.lineWidth = wide;
    pen.stroke(lines(mark, width));
  }
  if (mark.text) write(pen, mark, width);
}

function lines({ tool, from, to }, width) {
  const path = new Path2D();
  if (tool === "circle") {
    const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
    path.ellipse(x, y, Math.abs(to.x - from.x) / 2, Math.abs(to.y - from.y) / 2, 0, 0, 2 * Math.PI);
    return path;
  }
  path.moveTo(from.x, from.y);
  path.lineTo(to.x, to.y);
  head(path, from, to, width);
  if (tool === "dimension") head(path, to, from, width);
  return path;
}

/** An arrow's head at the end of a line. */
function head(path, from, to, width) {
  const turn = Math.atan2(to.y - from.y, to.x - from.x);
  for (const side of [-0.45, 0.45]) {
    path.moveTo(to.x, to.y);
    path.lineTo(to.x - 7 * width * Math.cos(turn + side), to.y - 7 * width * Math.sin(turn + side));
  }
}

function write(pen, { from, to, text }, width) {
  pen.font = `bold ${Math.round(width * 9)}px sans-serif`;
  pen.textAlign = "center";
  pen.textBaseline = "bottom";
  const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2 - width * 2];
  pen.lineWidth = width * 2.5;
  pen.strokeStyle = PAPER;
  pen.strokeText(text, x, y);
  pen.fillStyle = INK;
  pen.fillText(text, x, y);
}
