// @ts-check
/** The inside view: the air system as the vehicle's file lays it out, with the pressure in every vessel and line. For teaching. */
import { html, svg } from '/lib/lit-html/lit-html.js';
import { arrange, words } from '../draw/network.js';
import { STILL, isValve, leaks, passing, share, whole } from './flow.js';
import { ladder } from './ladder.js';

const W = 144;
const H = 54;
const ACROSS = W + 44;
const DOWN = H + 22;

/** Where the drawing would be too wide, what is fed stands below what feeds it. */
const NARROW = matchMedia('(max-width: 40rem)');

/** @type {WeakMap<any, any>} */
const plans = new WeakMap();

/** @param {any} network */
function planOf(network) {
  const known = plans.get(network) ?? arrange(network);
  plans.set(network, known);
  return known;
}

/** @param {any} box */
const at = (box) => ({ x: 8 + box.column * ACROSS, y: 8 + box.row * DOWN });

/** @param {import('./session.js').Session} s */
export function inside(s) {
  const plan = planOf(s.network);
  const wide = plan.columns * ACROSS;
  const high = plan.rows * DOWN + 8;
  const open = plan.joins.filter((/** @type {any} */ j) => j.ways.some((/** @type {any} */ w) => s.value('open ' + w.name) > 0 || w.kind !== 'plain' || !w.name.startsWith('crossed')));
  return html`<section class="sheet breakout" aria-label="Inside the air system">
    <div class="row valves">
      ${state('Compressor', s.on('compressor pumps') ? 'pumps' : s.value('engine') > 0 ? 'rests' : 'stands')}
      ${state('Dryer', s.on('purge') ? 'purges' : 'shut')}
      ${state('Foot valve', Math.round(s.value('foot brake')) + ' %')}
      ${s.has('in park-line') ? state('Parking valve', s.on('parking knob in') ? 'in: released' : 'out: set') : ''}
      ${s.tows ? state('Trailer supply valve', s.on('trailer knob in') ? 'in: open' : 'out: closed') : ''}
    </div>
    ${NARROW.matches ? ladder(s, plan, open) : html`<div class="table" tabindex="0" role="group" aria-label="The drawing; move it sideways">
      <svg class="inside" viewBox=${'0 0 ' + wide + ' ' + high} width=${wide} role="img" aria-label="From the compressor on the left to the wheels on the right: pressures in vessels and lines, valves open or shut. The same in words below.">
        ${open.flatMap((/** @type {any} */ j) => j.ways.flatMap((/** @type {any} */ w) => pilots(w, plan, j)))}
        ${open.map((/** @type {any} */ j) => join(s, j))}
        ${plan.boxes.map((/** @type {any} */ b) => box(s, b))}
      </svg>
    </div>
    <p class="faint">Move the drawing sideways to follow the air. Deeper means more pressure. A gap in a line is a valve that is shut, a triangle one that lets air pass the way it points, a dashed line a valve's control.</p>`}
    <details><summary>In words</summary>
      <h3>Valves</h3><ul>${s.network.ways.filter((w) => isValve(w)).map((w) => html`<li>${words(w.name)}: <b>${does(s, w)}</b></li>`)}</ul>
      <h3>Pressures</h3><ul>${s.network.vessels.map((v) => html`<li>${words(v.name)}: <b>${whole(s.value('in ' + v.name))} psi</b></li>`)}</ul>
    </details>
  </section>`;
}

/** @param {string} what @param {string} how */
const state = (what, how) => html`<span class="valve">${what} <b>${how}</b></span>`;

/** What a valve does now, in words. @param {import('./session.js').Session} s @param {any} w */
function does(s, w) {
  const flow = s.value('through ' + w.name);
  if (w.kind === 'lapping') return flow > STILL ? 'lets air in' : s.value('out of ' + w.name) > STILL ? 'lets air out' : 'holds';
  if (w.kind === 'plain') return s.value('open ' + w.name) <= 0 ? 'shut' : Math.abs(flow) > STILL ? 'open, air passes' : 'open';
  return flow > STILL ? 'open' : 'shut';
}

/** @param {import('./session.js').Session} s @param {any} b */
function box(s, b) {
  const { x, y } = at(b);
  const psi = b.vessels.map((/** @type {string} */ v) => s.value('in ' + v));
  const each = W / psi.length;
  const round = b.kind === 'reservoir' ? 26 : b.kind === 'chamber' ? 4 : 12;
  return svg`<g transform=${'translate(' + x + ' ' + y + ')'}>
    <clipPath id=${'box-' + b.column + '-' + Math.round(2 * b.row)}><rect width=${W} height=${H} rx=${round} /></clipPath>
    <rect width=${W} height=${H} rx=${round} class="hollow" />
    <g clip-path=${'url(#box-' + b.column + '-' + Math.round(2 * b.row) + ')'}>
      ${psi.map((/** @type {number} */ p, /** @type {number} */ i) => svg`<rect x=${i * each} y=${H * (1 - share(p))} width=${each} height=${H * share(p)} class="air" style=${'--p:' + share(p).toFixed(3)} />`)}
    </g>
    <rect width=${W} height=${H} rx=${round} class="rim" />
    <text x=${W / 2} y="21" text-anchor="middle">${b.title}</text>
    ${psi.map((/** @type {number} */ p, /** @type {number} */ i) => svg`<text x=${(i + 0.5) * each} y="45" text-anchor="middle" class="psi">${psi.length > 1 ? b.vessels[i].match(/[LR]/)?.[0] + ' ' : ''}${whole(p)}</text>`)}
    ${leaks(s, b) ? svg`<path d=${'M' + (W - 22) + ' ' + (H + 2) + 'v14m-6 -6l6 8l6 -8'} class="leaves" />` : ''}
  </g>`;
}

/** The line between two boxes with its valves. @param {import('./session.js').Session} s @param {any} j */
function join(s, j) {
  const a = at(j.from);
  const b = at(j.to);
  const p = share(Math.max(...j.to.vessels.map((/** @type {string} */ v) => s.value('in ' + v))));
  const from = [a.x + W, a.y + H / 2];
  const ahead = b.x > a.x;
  const to = ahead ? [b.x, b.y + H / 2] : [b.x + W, b.y + H / 2];
  const turn = Math.max(from[0], to[0]) + (ahead ? 0 : 22) - (ahead ? to[0] - from[0] - 20 - (Math.round(j.from.row) % 3) * 5 : 0);
  const valve = j.ways.find(isValve);
  return svg`<path d=${'M' + from + 'H' + turn + 'V' + to[1] + 'H' + to[0]} class="pipe" style=${'--p:' + p.toFixed(3)} />
    ${valve ? symbol(s, j, to[0] - (ahead ? 22 : -22), to[1], ahead) : ''}`;
}

/** A valve just before what it feeds: pointed one way, gapped where shut. @param {import('./session.js').Session} s @param {any} j @param {number} x @param {number} y @param {boolean} ahead */
function symbol(s, j, x, y, ahead) {
  const { flow, out, open } = passing(s, j);
  const back = flow && (flow.to !== j.to.vessels[0] && !j.to.vessels.includes(flow.to)) !== s.value('through ' + flow.name) < 0;
  const left = ahead === Boolean(back);
  const d = left ? 'M9 -9L-9 0L9 9Z' : 'M-9 -9L9 0L-9 9Z';
  return svg`<g transform=${'translate(' + x + ' ' + y + ')'} class=${open || out ? 'symbol open' : 'symbol shut'}>
    ${open ? svg`<path d=${d} />` : svg`<path d="M-8 -11V11M8 -11V11" />`}
    ${out ? svg`<path d="M0 12v10m-5 -5l5 6l5 -6" class="leaves" />` : ''}
  </g>`;
}

/** Which vessels work a valve. @param {any} w @param {any} plan @param {any} j */
function pilots(w, plan, j) {
  const to = at(j.to);
  return w.pilots
    .map((/** @type {string} */ name) => plan.boxes.find((/** @type {any} */ b) => b.vessels.includes(name)))
    .filter((/** @type {any} */ b) => b && b !== j.from && b !== j.to)
    .map((/** @type {any} */ b) => {
      const from = at(b);
      return svg`<path d=${'M' + (from.x + W / 2) + ' ' + (from.y + H) + 'v9H' + (to.x - 22) + 'V' + (to.y + H / 2)} class="control" />`;
    });
}
