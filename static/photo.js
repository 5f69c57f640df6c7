// Photographs are made smaller before they are sent: a phone's picture of 12 megapixels takes a
// minute on a slow line, and 2048 pixels show every seam. What is smaller already goes as it is.
// Without script the server does the same, after the whole picture has come.

import { offer } from "./sketch.js";

const SIDE = 2048;
const QUALITY = 0.85;

// Fields whose pictures are still being made smaller.
const working = new WeakMap();

/** When a JPEG says that it was taken (Exif DateTimeOriginal, 20 bytes), or nothing. */
function takenOf(bytes) {
  const view = new DataView(bytes);
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  let at = 2;
  while (at + 10 < view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    const length = view.getUint16(at + 2);
    if (marker === 0xe1 && view.getUint32(at + 4) === 0x45786966) {
      return takenIn(new DataView(bytes, at + 10, Math.min(length - 8, view.byteLength - at - 10)));
    }
    if (marker === 0xda) return null;
    at += 2 + length;
  }
  return null;
}

function takenIn(tiff) {
  const little = tiff.getUint16(0) === 0x4949;
  const find = (directory, tag) => {
    const count = tiff.getUint16(directory, little);
    for (let i = 0; i < count; i += 1) {
      const entry = directory + 2 + 12 * i;
      if (tiff.getUint16(entry, little) === tag) return tiff.getUint32(entry + 8, little);
    }
    return 0;
  };
  const exif = find(tiff.getUint32(4, little), 0x8769);
  const taken = exif && find(exif, 0x9003);
  if (!taken) return null;
  return new Uint8Array(tiff.buffer, tiff.byteOffset + taken, 20).slice();
}

/** A JPEG that says nothing but when it was taken: no place, no camera, no owner. */
function withTaken(jpeg, taken) {
  const segment = new Uint8Array(74);
  const view = new DataView(segment.buffer);
  view.setUint16(0, 0xffe1);
  view.setUint16(2, 72);
  segment.set([0x45, 0x78, 0x69, 0x66, 0, 0, 0x4d, 0x4d, 0, 42, 0, 0, 0, 8], 4);
  // At 10 the TIFF part begins: one directory that leads to the Exif directory, at 26.
  view.setUint16(18, 1);
  view.setUint16(20, 0x8769);
  view.setUint16(22, 4);
  view.setUint32(24, 1);
  view.setUint32(28, 26);
  // That one: the time as 20 letters, at 44.
  view.setUint16(36, 1);
  view.setUint16(38, 0x9003);
  view.setUint16(40, 2);
  view.setUint32(42, 20);
  view.setUint32(46, 44);
  segment.set(taken, 54);
  return new Blob([jpeg.slice(0, 2), segment, jpeg.slice(2)], { type: "image/jpeg" });
}

async function smaller(file) {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = SIDE / Math.max(picture.width, picture.height);
  if (scale >= 1) return file;
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(picture.width * scale);
  canvas.height = Math.round(picture.height * scale);
  const pen = canvas.getContext("2d");
  pen.imageSmoothingQuality = "high";
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return encoded(canvas, file);
}

/** What a canvas shows as a file, with the time that the file it was made of says. */
async function encoded(canvas, file) {
  const jpeg = await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
  if (!jpeg) return file;
  let taken = null;
  try {
    taken = takenOf(await file.slice(0, 128 * 1024).arrayBuffer());
  } catch (_) {
    // A damaged head: the picture is worth more than its time.
  }
  const made = taken ? withTaken(jpeg, taken) : jpeg;
  return new File([made], file.name.replace(/\.\w+$/, "") + ".jpg", { type: "image/jpeg" });
}

async function shrink(field) {
  const files = [...field.files];
  const made = await Promise.all(files.map((file) => smaller(file).catch(() => file)));
  if (!made.every((file, i) => file === files[i])) put(field, made);
  sketches(field, made);
}

function put(field, files) {
  const holder = new DataTransfer();
  for (const file of files) holder.items.add(file);
  field.files = holder.files;
}

/** Each chosen picture to draw on, below its field. What is drawn takes the picture's place. */
function sketches(field, files) {
  const template = field.parentElement.querySelector("template[data-sketch]");
  const place = field.parentElement.querySelector("[data-sketches]");
  if (!template || !place) return;
  place.replaceChildren();
  files.forEach((file, at) => {
    const drawn = (canvas) =>
      busy(field, async () => {
        const made = await encoded(canvas, file);
        // Other pictures were chosen meanwhile.
        if (!canvas.isConnected) return;
        put(field, [...field.files].map((other, i) => (i === at ? made : other)));
      });
    offer(file, template, place, drawn).catch(() => {});
  });
}

/** The form waits for this before it is sent; what comes later is done later. */
function busy(field, work) {
  const all = Promise.resolve(working.get(field)).then(work).catch(() => {});
  working.set(field, all);
  all.then(() => working.get(field) === all && working.delete(field));
}

document.addEventListener("change", (event) => {
  const field = event.target;
  if (field.type !== "file" || !/image\/jpeg/.test(field.accept)) return;
  if (!window.createImageBitmap || !window.DataTransfer) return;
  working.delete(field);
  busy(field, () => shrink(field));
});

// Before anything else takes the form: it waits until its pictures are ready.
document.addEventListener(
  "submit",
  (event) => {
    const form = event.target;
    const waits = [...form.elements].map((field) => working.get(field)).filter(Boolean);
    if (!waits.length) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const button = event.submitter;
    Promise.all(waits).then(() => form.requestSubmit(button || undefined));
  },
  true,
);
