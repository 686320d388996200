// @ts-check
/** The inside view: the air system, with the pressure in every vessel and line. For teaching. */
import { html, svg } from '/lib/lit-html/lit-html.js';

const FULL = 130;
const W = 150;
const H = 54;

/** @param {number} psi */
const share = (psi) => Math.max(0, Math.min(1, psi / FULL));

/** Columns of the drawing: what stands in each, from the compressor to the wheels. */
const COLUMNS = [
  ['discharge', 'supply', 'purge'],
  ['primary', 'secondary', 'parking'],
  ['primary-delivery', 'secondary-delivery', 'dash', 'hand-delivery'],
  ['rear-service', 'front-service', 'park-line', 'trailer-signal'],
];

/** Whole psi, never minus nothing. @param {number} psi */
const whole = (psi) => String(Math.max(0, Math.round(psi)));

/** @param {string} name */
const title = (name) => name.replace(/-/g, ' ').replace('.', ' ').replace(/unit(\d)/, 'unit $1');

/** @param {import('./session.js').Session} s */
export function inside(s) {
  const volumes = s.names.map((n) => n.name).filter((n) => n.startsWith('in ') && n !== 'in atmosphere').map((n) => n.slice(3));
  const columns = COLUMNS.map((c) => c.filter((name) => volumes.includes(name)));
  const placed = new Set(columns.flat());
  const wheels = volumes.filter((v) => /^\d+[LR]\./.test(v));
  const rest = volumes.filter((v) => !placed.has(v) && !wheels.includes(v));
  columns.push(rest.filter((v) => v.includes('spring') || v.startsWith('supply-line') || v === 'pedal-signal'));
  columns.push(rest.filter((v) => v.startsWith('control-line') || (v.startsWith('unit') && !v.includes('spring'))));
  const spots = new Map();
  columns.forEach((c, x) => c.forEach((name, y) => spots.set(name, { x: 10 + x * (W + 26), y: 30 + y * (H + 22) })));
  const high = Math.max(...columns.map((c) => c.length)) * (H + 22) + 40;
  const wide = columns.length * (W + 26);
  return html`<section class="sheet" aria-label="Inside the air system">
    <div class="row valves">
      ${state('Compressor', s.on('compressor pumps') ? 'pumps' : s.value('engine') > 0 ? 'rests' : 'stands')}
      ${state('Dryer', s.on('purge') ? 'purges' : 'shut')}
      ${state('Foot valve', Math.round(s.value('foot brake')) + ' %')}
      ${state('Parking valve', s.on('parking knob in') ? 'in: released' : 'out: set')}
      ${s.tows ? state('Trailer supply valve', s.on('trailer knob in') ? 'in: open' : 'out: closed') : ''}
    </div>
    <div class="table">
      <svg class="inside" viewBox=${'0 0 ' + wide + ' ' + high} width=${wide} role="img" aria-label="Pressures in vessels and lines">
        ${pipes(spots).map(([a, b]) => pipe(spots.get(a), spots.get(b), share(s.value('in ' + b))))}
        ${[...spots].map(([name, at]) => vessel(name, at, s.value('in ' + name)))}
      </svg>
    </div>
    <h3>At the wheels</h3>
    <div class="table"><table>
      <thead><tr><th>Wheel</th><th>Service chamber</th><th>Spring chamber</th><th>Push rod</th></tr></thead>
      <tbody>${[...new Set(wheels.map((v) => v.split('.')[0]))].map(
        (w) => html`<tr><th>${w}</th><td>${bar(s, w + '.service')}</td><td>${bar(s, w + '.spring')}</td><td>${s.has('stroke ' + w) ? s.value('stroke ' + w).toFixed(2) + ' in' : ''}</td></tr>`,
      )}</tbody>
    </table></div>
  </section>`;
}

/** @param {string} what @param {string} how */
const state = (what, how) => html`<span class="valve">${what} <b>${how}</b></span>`;

/** @param {any} s @param {string} name */
function bar(s, name) {
  if (!s.has('in ' + name)) return '';
  const psi = s.value('in ' + name);
  return html`<span class="bar" style=${'--p:' + share(psi).toFixed(3)}>${whole(psi)} psi</span>`;
}

/** @param {string} name @param {{x: number, y: number}} at @param {number} psi */
function vessel(name, at, psi) {
  const p = share(psi);
  return svg`<g transform=${'translate(' + at.x + ' ' + at.y + ')'}>
    <rect width=${W} height=${H} rx="14" class="hollow" />
    <rect y=${H * (1 - p)} width=${W} height=${H * p} rx="14" class="air" style=${'--p:' + p.toFixed(3)} />
    <text x="10" y="20">${title(name)}</text>
    <text x="10" y="44" class="psi">${whole(psi)} psi</text>
  </g>`;
}

/** Which vessel feeds which. */
const FEEDS = [
  ['discharge', 'supply'], ['supply', 'primary'], ['supply', 'secondary'], ['discharge', 'primary'], ['discharge', 'secondary'], ['supply', 'parking'],
  ['primary', 'primary-delivery'], ['secondary', 'secondary-delivery'], ['primary', 'dash'], ['secondary', 'dash'], ['parking', 'dash'],
  ['primary-delivery', 'rear-service'], ['secondary-delivery', 'front-service'], ['dash', 'park-line'], ['park-line', 'rear-spring'],
  ['dash', 'supply-line-1'], ['hand-delivery', 'trailer-signal'], ['trailer-signal', 'control-line-1'],
];

/** @param {Map<string, any>} spots */
function pipes(spots) {
  return FEEDS.filter(([a, b]) => spots.has(a) && spots.has(b) && !(a === 'discharge' && b !== 'supply' && spots.has('supply')));
}

/** @param {{x: number, y: number}} a @param {{x: number, y: number}} b @param {number} p */
function pipe(a, b, p) {
  if (a.x === b.x) return svg`<path d=${'M' + (a.x + W / 2) + ' ' + (a.y + H) + 'V' + b.y} class="pipe" style=${'--p:' + p.toFixed(3)} />`;
  const middle = (a.x + W + b.x) / 2;
  return svg`<path d=${'M' + (a.x + W) + ' ' + (a.y + H / 2) + 'H' + middle + 'V' + (b.y + H / 2) + 'H' + b.x} class="pipe" style=${'--p:' + p.toFixed(3)} />`;
}
