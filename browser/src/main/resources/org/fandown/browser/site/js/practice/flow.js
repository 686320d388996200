// @ts-check
/** What the numbers of the air system say: how full a vessel is, whether a valve lets air pass. */

const FULL = 130;

/** Less than this is no flow that anybody could see, g/s. */
export const STILL = 0.02;

/** How full. @param {number} psi */
export const share = (psi) => Math.max(0, Math.min(1, psi / FULL));

/** Whole psi, never minus nothing. @param {number} psi */
export const whole = (psi) => String(Math.max(0, Math.round(psi)));

/** A hose or an orifice is no valve, nor is what fittings lose. @param {any} w */
export const isValve = (w) => !/^(hose-|seep-|bridge-|purge-orifice)/.test(w.name);

/** What the valves of one join do: whether air can pass, which of them it passes, and whether some is let out. @param {import('./session.js').Session} s @param {any} j */
export function passing(s, j) {
  const all = j.ways.filter(isValve);
  const flow = all.find((/** @type {any} */ w) => Math.abs(s.value('through ' + w.name)) > STILL);
  const out = all.some((/** @type {any} */ w) => s.value('out of ' + w.name) > STILL);
  return { flow, out, open: flow !== undefined || all.some((/** @type {any} */ w) => w.kind === 'plain' && s.value('open ' + w.name) > 0) };
}

/** Whether air escapes from a box. @param {import('./session.js').Session} s @param {any} b */
export const leaks = (s, b) =>
  b.vessels.some((/** @type {string} */ v) => s.network.ways.some((w) => w.from === v && w.to === 'atmosphere' && !w.name.startsWith('seep-') && s.value('through ' + w.name) > STILL));
