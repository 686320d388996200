// @ts-check
/** What is entered for one check: made for gloves, one form for each sort of reading. */
import { html } from '/lib/lit-html/lit-html.js';
import { inPsi } from './draft.js';

/**
 * What keeps entries: those of an inspection, or those of an exercise.
 * @typedef {import('./draft.js').Draft | import('../practice/notes.js').Notes} Kept
 * @typedef {(entries: any) => any} Reading what raw entries amount to, nothing while some are missing
 */

/** @param {string} kind @param {string | undefined} dimension */
function form(kind, dimension) {
  if (kind === 'value' && dimension === 'gauge-pressure') return needles;
  if (kind === 'value' && dimension === 'time') return timed;
  if (kind === 'value') return figure;
  if (kind === 'air-loss') return loss;
  if (kind === 'build-up') return buildUp;
  if (kind === 'reserve') return reserve;
  if (kind === 'yes-no') return answer;
  return undefined;
}

/**
 * The form of a check, nothing where the check is not entered by itself.
 * @param {any} check {id, title, kind, dimension} @param {Kept} draft @param {() => void} redraw
 */
export function entry(check, draft, redraw) {
  const made = form(check.kind, check.dimension);
  return made ? html`<fieldset class="entry"><legend>${check.title}</legend>${made(check.id, draft, redraw, check.dimension)}</fieldset>` : '';
}

/** Whether a check has such a form. @param {any} check */
export const isEntered = (check) => form(check.kind, check.dimension) !== undefined;

/**
 * A figure that is typed, or moved by big buttons.
 * @param {string} label @param {string} unit @param {any} value @param {(v: string) => void} set
 */
function number(label, unit, value, set) {
  /** @param {number} n */
  const by = (n) => set(String(Math.max(0, (Number(value) || 0) + n)));
  return html`<label class="figure"><span>${label} <span class="faint">${unit}</span></span>
    <span class="row nowrap">
      <button type="button" aria-label=${'less: ' + label} @click=${() => by(-1)}>&minus;</button>
      <input inputmode="decimal" autocomplete="off" .value=${value ?? ''} aria-label=${label + ', ' + unit} @change=${(/** @type {any} */ e) => set(e.target.value.trim().replace(',', '.'))} />
      <button type="button" aria-label=${'more: ' + label} @click=${() => by(1)}>+</button>
    </span></label>`;
}

/**
 * Keeps the raw entries of a check and what they amount to as a reading.
 * @param {string} id @param {Kept} draft @param {() => void} redraw @param {(entries: any) => void} change @param {Reading} reading
 */
function keep(id, draft, redraw, change, reading) {
  return draft.change((/** @type {any} */ d) => {
    const e = (d.entries[id] ??= {});
    change(e);
    const made = reading(e);
    if (made === undefined) delete d.readings[id];
    else d.readings[id] = made;
  }).then(redraw, redraw);
}

/** @param {any} v */
const is = (v) => v !== undefined && v !== '' && Number.isFinite(Number(v));

/** @param {Kept} draft */
const pressure = (draft) => (inPsi(draft.data.place) ? 'psi' : 'kPa');

/** @param {string} id @param {Kept} draft @param {() => void} redraw */
function needles(id, draft, redraw) {
  const u = pressure(draft);
  const e = draft.data.entries[id] ?? {};
  /** @type {Reading} */
  const reading = (x) => {
    const both = [x.primary, x.secondary].filter(is).map((v) => v + ' ' + u);
    return both.length === 0 ? undefined : both.length === 1 ? both[0] : both;
  };
  /** @param {string} key @returns {(v: string) => void} */
  const set = (key) => (v) => keep(id, draft, redraw, (x) => { x[key] = v; }, reading);
  return html`<div class="row">${number('Primary', u, e.primary, set('primary'))} ${number('Secondary', u, e.secondary, set('secondary'))}</div>`;
}

/** @param {string} id @param {Kept} draft @param {() => void} redraw */
function timed(id, draft, redraw) {
  const e = draft.data.entries[id] ?? {};
  /** @type {Reading} */
  const reading = (x) => (is(x.time) ? { time: x.time + ' s' } : undefined);
  return html`${stopwatch(id, draft, redraw, reading)}`;
}

/** Units of what no needle and no clock shows: of the United States, and elsewhere. @type {Record<string, string[]>} */
const UNITS = { ratio: ['%', '%'], acceleration: ['ft/s2', 'm/s2'], length: ['ft', 'm'], count: ['each', 'each'] };

/** @param {string} id @param {Kept} draft @param {() => void} redraw @param {string} dimension */
function figure(id, draft, redraw, dimension) {
  const e = draft.data.entries[id] ?? {};
  const u = UNITS[dimension][/^US(-|$)/.test(draft.data.place) ? 0 : 1];
  return number('Figure', u, e.value, (v) => keep(id, draft, redraw, (x) => { x.value = v; }, (x) => (is(x.value) ? x.value + ' ' + u : undefined)));
}

/** @param {string} id @param {Kept} draft @param {() => void} redraw */
function loss(id, draft, redraw) {
  const u = pressure(draft);
  const e = draft.data.entries[id] ?? {};
  /** @type {Reading} */
  const reading = (x) => (is(x.start) && is(x.end) && is(x.time) ? { start: x.start + ' ' + u, end: x.end + ' ' + u, time: x.time + ' s' } : undefined);
  /** @param {string} key @returns {(v: string) => void} */
  const set = (key) => (v) => keep(id, draft, redraw, (x) => { x[key] = v; }, reading);
  return html`<p>Take the needle that falls more.</p>
    <div class="row">${number('At the start', u, e.start, set('start'))}</div>
    ${stopwatch(id, draft, redraw, reading)}
    <div class="row">${number('At the end', u, e.end, set('end'))}</div>`;
}

/** @param {string} id @param {Kept} draft @param {() => void} redraw */
function buildUp(id, draft, redraw) {
  const u = pressure(draft);
  const e = draft.data.entries[id] ?? {};
  /** @type {Reading} */
  const reading = (x) => (is(x.from) && is(x.to) && is(x.time) ? { from: x.from + ' ' + u, to: x.to + ' ' + u, time: x.time + ' s' } : undefined);
  /** @param {string} key @returns {(v: string) => void} */
  const set = (key) => (v) => keep(id, draft, redraw, (x) => { x[key] = v; }, reading);
  return html`<div class="row">${number('From', u, e.from, set('from'))} ${number('To', u, e.to, set('to'))}</div>${stopwatch(id, draft, redraw, reading)}`;
}

/** @param {string} id @param {Kept} draft @param {() => void} redraw */
function reserve(id, draft, redraw) {
  const u = pressure(draft);
  const e = draft.data.entries[id] ?? {};
  /** @type {Reading} */
  const reading = (x) => (is(x.before) && is(x.after) ? { before: x.before + ' ' + u, after: x.after + ' ' + u, applications: Number(x.times ?? 1) } : undefined);
  /** @param {string} key @returns {(v: string) => void} */
  const set = (key) => (v) => keep(id, draft, redraw, (x) => { x[key] = v; }, reading);
  return html`<div class="row">${number('Before', u, e.before, set('before'))} ${number('After', u, e.after, set('after'))} ${number('Applications', '', e.times ?? '1', set('times'))}</div>`;
}

/** @param {string} id @param {Kept} draft @param {() => void} redraw */
function answer(id, draft, redraw) {
  const e = draft.data.entries[id] ?? {};
  /** @type {Reading} */
  const reading = (x) => (x.yes === undefined ? undefined : x.note ? { answer: x.yes, note: x.note } : x.yes);
  /** @param {boolean} yes */
  const say = (yes) => () => keep(id, draft, redraw, (x) => { x.yes = yes; }, reading);
  return html`<div class="row">
      <button type="button" class="answer" aria-pressed=${e.yes === true} @click=${say(true)}>Yes, in order</button>
      <button type="button" class="answer" aria-pressed=${e.yes === false} @click=${say(false)}>No</button>
    </div>
    ${e.yes === false ? html`<label>What is wrong <input .value=${e.note ?? ''} @change=${(/** @type {any} */ ev) => keep(id, draft, redraw, (x) => { x.note = ev.target.value; }, reading)} /></label>` : ''}`;
}

/**
 * A stopwatch that goes on while the page is away, since it keeps when it was started.
 * @param {string} id @param {Kept} draft @param {() => void} redraw @param {Reading} reading
 */
function stopwatch(id, draft, redraw, reading) {
  const e = draft.data.entries[id] ?? {};
  const runs = e.started !== undefined;
  const toggle = () =>
    keep(id, draft, redraw, (x) => {
      if (x.started === undefined) x.started = draft.now();
      else {
        x.time = ((draft.now() - x.started) / 1000).toFixed(0);
        delete x.started;
      }
    }, reading);
  return html`<div class="row stopwatch">
    <button type="button" class=${runs ? 'main watch' : 'watch'} @click=${toggle}>${runs ? 'Stop' : 'Start'} the watch</button>
    <span class="number">${runs ? ((draft.now() - e.started) / 1000).toFixed(0) + ' s' : is(e.time) ? e.time + ' s' : ''}</span>
    ${runs ? '' : number('Time', 's', e.time, (v) => keep(id, draft, redraw, (x) => { x.time = v; }, reading))}
  </div>`;
}
