// @ts-check
/** Where the vessels of an air system stand in a drawing: columns from the compressor to the wheels. */

const WHEEL = /^(\d+)([LR])\.(.*)$/;

/**
 * One box of the drawing: a vessel, or the chambers of one axle that hang on the same line.
 * @typedef {{id: string, title: string, kind: string, vessels: string[], column: number, row: number}} Box
 */

/** @param {string} name */
export const words = (name) => name.replace(/^unit(\d+)\./, 'unit $1 ').replace(/-/g, ' ');

/**
 * The boxes and what joins them.
 * @param {{vessels: any[], ways: any[]}} network as the core lays it out
 * @returns {{boxes: Box[], joins: {from: Box, to: Box, ways: any[]}[], columns: number, rows: number}}
 */
export function arrange(network) {
  const inner = network.ways.filter((w) => w.to !== 'atmosphere' && w.from !== 'atmosphere');
  const { boxes, of } = boxed(network.vessels, inner);
  const joins = joined(inner, of);
  place(boxes, joins, network.vessels.filter((v) => v.pumped).map((v) => of.get(v.name)));
  return { boxes, joins, columns: Math.max(...boxes.map((b) => b.column)) + 1, rows: Math.max(...boxes.map((b) => b.row)) + 1 };
}

/** @param {any[]} vessels @param {any[]} ways */
function boxed(vessels, ways) {
  /** @type {Map<string, Box>} */
  const all = new Map();
  /** @type {Map<string, any>} */
  const of = new Map();
  for (const v of vessels) {
    const wheel = v.kind === 'chamber' && v.name.match(WHEEL);
    const fed = wheel && ways.find((w) => w.to === v.name)?.from;
    const id = wheel ? 'axle ' + wheel[1] + ' from ' + fed : v.name;
    const title = wheel ? 'axle ' + wheel[1] + ', ' + wheel[3] : words(v.name);
    /** @type {Box} */
    const box = all.get(id) ?? { id, title, kind: v.kind, vessels: [], column: -1, row: 0 };
    box.vessels.push(v.name);
    all.set(id, box);
    of.set(v.name, box);
  }
  return { boxes: [...all.values()], of };
}

/** Ways between the same two boxes are one join. @param {any[]} ways @param {Map<string, Box>} of */
function joined(ways, of) {
  const all = new Map();
  for (const way of ways) {
    const [from, to] = [of.get(way.from), of.get(way.to)];
    if (!from || !to) continue;
    const known = all.get(from.id + '>' + to.id) ?? all.get(to.id + '>' + from.id);
    if (known) known.ways.push(way);
    else all.set(from.id + '>' + to.id, { from, to, ways: [way] });
  }
  return [...all.values()];
}

/** As many steps from the compressor, so many columns; rows near what feeds them. @param {Box[]} boxes @param {any[]} joins @param {Box[]} first */
function place(boxes, joins, first) {
  let here = first;
  for (let column = 0; here.length; column++) {
    for (const box of here) box.column = column;
    here = [...new Set(here.flatMap((box) => joins.filter((j) => j.from === box && j.to.column < 0).map((j) => j.to)))];
    rows(here, joins);
  }
  // What is fed by nothing in the drawing stands at its beginning.
  boxes.filter((b) => b.column < 0).forEach((b) => { b.column = 0; });
  const last = Math.max(...boxes.map((b) => b.column));
  for (let column = last; column >= 0; column--) {
    const here = boxes.filter((b) => b.column === column).sort((a, b) => a.row - b.row);
    spread(here, (box) => joins.filter((j) => j.from === box && j.to.column > column).map((j) => j.to.row));
  }
}

/** Puts boxes, in their order, as near as they fit to the middle of others. @param {Box[]} boxes @param {(box: Box) => number[]} others rows */
function spread(boxes, others) {
  let next = 0;
  for (const box of boxes) {
    const near = others(box);
    const wish = near.length ? (Math.min(...near) + Math.max(...near)) / 2 : next;
    box.row = Math.max(next, wish);
    next = box.row + 1;
  }
}

/** @param {Box[]} boxes of one column @param {any[]} joins */
function rows(boxes, joins) {
  const wish = new Map(
    boxes.map((box) => {
      const from = joins.filter((j) => j.to === box && j.from.column >= 0).map((j) => j.from.row);
      return [box, from.length ? from.reduce((a, b) => a + b, 0) / from.length : 0];
    }),
  );
  boxes.sort((a, b) => (wish.get(a) ?? 0) - (wish.get(b) ?? 0));
  let next = 0;
  for (const box of boxes) {
    box.row = Math.max(next, Math.round(wish.get(box) ?? 0));
    next = box.row + 1;
  }
}
