// @ts-check
/** The air system for a narrow screen: what is fed stands below what feeds it, with the valve between. */
import { html } from '/lib/lit-html/lit-html.js';
import { isValve, leaks, passing, share, whole } from './flow.js';

/** @type {WeakMap<any, {box: any, depth: number, feed: any}[]>} */
const orders = new WeakMap();

/** Each box once, right below the first that feeds it. @param {any} plan @param {any[]} joins */
function order(plan, joins) {
  /** @type {{box: any, depth: number, feed: any}[]} */
  const all = [];
  const seen = new Set();
  /** @param {any} box @param {number} depth @param {any} feed */
  const add = (box, depth, feed) => {
    if (seen.has(box)) return;
    seen.add(box);
    all.push({ box, depth, feed });
    const next = joins.filter((j) => j.from === box && j.to.column > box.column);
    for (const j of next.sort((a, b) => a.to.row - b.to.row)) add(j.to, depth + 1, j);
  };
  const first = [...plan.boxes].sort((a, b) => a.column - b.column || a.row - b.row);
  for (const box of first) add(box, 0, undefined);
  return all;
}

/** @param {import('./session.js').Session} s @param {any} plan @param {any[]} joins those that are shown */
export function ladder(s, plan, joins) {
  const all = orders.get(plan) ?? order(plan, joins);
  orders.set(plan, all);
  return html`<ul class="ladder" aria-hidden="true">${all.map(({ box, depth, feed }) => step(s, box, depth, feed))}</ul>
    <p class="faint">What is fed stands below what feeds it. The bar is the pressure, in psi. \u25B8 lets air pass, \u2016 is a valve that is shut, \u2191 lets air out.</p>`;
}

/** @param {import('./session.js').Session} s @param {any} b @param {number} depth @param {any} feed */
function step(s, b, depth, feed) {
  const psi = b.vessels.map((/** @type {string} */ v) => s.value('in ' + v));
  const figures = b.vessels.map((/** @type {string} */ v, /** @type {number} */ i) => (b.vessels.length > 1 ? (v.match(/[LR]/)?.[0] ?? '') + ' ' : '') + whole(psi[i])).join('  ');
  const { open, out } = feed ? passing(s, feed) : { open: false, out: false };
  const valve = feed?.ways.some(isValve);
  const sign = out || leaks(s, b) ? '\u2191' : !feed ? '' : !valve ? '\u2514' : open ? '\u25B8' : '\u2016';
  return html`<li style=${'--in:' + Math.min(depth, 7)}><span class=${open || out ? 'way open' : 'way'}>${sign}</span>
    <span class=${'vessel ' + b.kind} style=${'--p:' + share(Math.max(...psi)).toFixed(3)}>${b.title} <b>${figures}</b></span></li>`;
}
