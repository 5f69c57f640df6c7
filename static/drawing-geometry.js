// The geometry of what is marked on a drawing. No page is needed here. Places are {x, y} in units of
// which the drawing's width has 10 000, in both directions.

/** @typedef {{x: number, y: number}} Spot */

export const between = (a, b) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

export const distance = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);

/** The middle of a line: of a curve, the place half way along its parameter. */
export function middle({ from, to, via }) {
  return via ? between(between(from, via), between(via, to)) : between(from, to);
}

/** What a line must be drawn to, for its middle to be here. */
export function bendFor(from, to, middle) {
  const straight = between(from, to);
  return { x: 2 * middle.x - straight.x, y: 2 * middle.y - straight.y };
}

/** Path data of a line. */
export function path({ from, to, via }) {
  return `M${from.x} ${from.y}${via ? `Q${via.x} ${via.y} ` : "L"}${to.x} ${to.y}`;
}

/** The two heads of a line: where each tip is, where it points to in degrees, and whether it stands
 * outside, since there is no room for two. */
export function heads({ from, to, via }, room) {
  const outside = distance(from, to) < room;
  const head = (tip, other) => {
    const turn = (Math.atan2(tip.y - other.y, tip.x - other.x) * 180) / Math.PI;
    return { ...tip, turn: outside ? turn + 180 : turn, outside };
  };
  return [head(from, via ?? to), head(to, via ?? from)];
}

/**
 * Where a place snaps to: another end within reach, else straight across or straight down from
 * `axis`, else the grid.
 *
 * @param {Spot} spot
 * @param {{ends: Spot[], reach: number, axis: Spot | null, grid: Spot}} to
 * @returns {{spot: Spot, on: Spot | null}} `on` is the end that it snapped to.
 */
export function snap(spot, { ends, reach, axis, grid }) {
  if (axis) {
    const across = Math.abs(spot.x - axis.x) >= Math.abs(spot.y - axis.y);
    return { spot: across ? { x: spot.x, y: axis.y } : { x: axis.x, y: spot.y }, on: null };
  }
  let on = null;
  for (const end of ends) {
    if (distance(spot, end) <= reach && (!on || distance(spot, end) < distance(spot, on))) on = end;
  }
  if (on) return { spot: { ...on }, on };
  const to = (value, step) => Math.round(value / step) * step;
  return { spot: { x: to(spot.x, grid.x), y: to(spot.y, grid.y) }, on: null };
}

/** Whether two straight lines cross within both. */
export function crosses(a, b, c, d) {
  const side = (p, q, r) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/**
 * Finds places for letters, so that none covers another and no leader line, from a letter to the
 * middle of its line, crosses another.
 *
 * A letter that covers one before it goes out, around the middle of its line, to the nearest free
 * place. Then two letters whose leaders cross change places: each time the leaders together become
 * shorter, so it comes to an end, and there none crosses.
 *
 * @param {{at: Spot, anchor: Spot | null}[]} letters `anchor` is the middle of the line; a letter
 *   without one stays.
 * @param {{room: number, width: number, height: number}} sheet `room` is the distance that letters
 *   keep.
 * @returns {Spot[]} the places, in the order of the letters.
 */
export function tidy(letters, { room, width, height }) {
  const places = letters.map((letter) => ({ ...letter.at }));
  const fixed = letters.map((letter, n) => (letter.anchor ? null : places[n])).filter(Boolean);
  const taken = [...fixed];
  const free = (spot) => taken.every((other) => distance(spot, other) >= room);
  const led = letters.map((_, n) => n).filter((n) => letters[n].anchor);
  for (const n of led) {
    if (!free(places[n])) places[n] = around(letters[n].anchor, places[n], free, { room, width, height });
    taken.push(places[n]);
  }
  const anchor = (n) => letters[n].anchor;
  const cross = (i, j) => crosses(places[i], anchor(i), places[j], anchor(j));
  const reach = (i, j) => distance(places[i], anchor(i)) + distance(places[j], anchor(j));
  const swap = (i, j) => ([places[i], places[j]] = [places[j], places[i]]);
  let again = true;
  while (again) {
    again = false;
    for (const i of led) {
      for (const j of led) {
        if (i >= j || !cross(i, j)) continue;
        const before = reach(i, j);
        swap(i, j);
        // Where rounding would have it otherwise there is no end to hope for.
        if (reach(i, j) < before) again = true;
        else swap(i, j);
      }
    }
  }
  return places;
}

/** The first free place on circles around the anchor, from above clockwise; `otherwise` when the
 * sheet is full. */
function around(anchor, otherwise, free, { room, width, height }) {
  for (let ring = 1; ring * room <= width + height; ring += 1) {
    for (let turn = 0; turn < 8 * ring; turn += 1) {
      const angle = (turn / (8 * ring)) * 2 * Math.PI;
      const spot = {
        x: anchor.x + ring * room * Math.sin(angle),
        y: anchor.y - ring * room * Math.cos(angle),
      };
      const edge = room / 2;
      const on = spot.x >= edge && spot.x <= width - edge && spot.y >= edge && spot.y <= height - edge;
      if (on && free(spot)) return spot;
    }
  }
  return otherwise;
}
