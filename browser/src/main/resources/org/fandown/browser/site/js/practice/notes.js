// @ts-check
/** The learner's notes: which check begins, what was read, and at last what follows. */
import { html } from '/lib/lit-html/lit-html.js';
import { entry, isEntered } from '../yard/entry.js';
import { partList, strokes } from '../yard/wheels.js';

/** What the forms of the yard write into, each change being said to the truck. */
export class Notes {
  /** @param {import('./session.js').Session} session @param {string} place @param {any[]} checks @param {{parts: string[], wheels: string[]}} what @param {any} [before] what was kept of them */
  constructor(session, place, checks, what, before) {
    this.session = session;
    this.checks = checks;
    this.what = what;
    this.open = before?.open ?? '';
    this.verdict = before?.verdict ?? '';
    this.done = false;
    /** @type {Set<string>} */
    this.defects = new Set(before?.defects ?? []);
    /** @type {any} */
    this.data = before?.data ?? { place, entries: {}, readings: {}, wheels: {}, parts: {}, othersSeen: false, photos: [] };
  }

  /** What is kept of them on the device. */
  kept() {
    const { data, open, verdict, defects } = this;
    return structuredClone({ data, open, verdict, defects: [...defects] });
  }

  /** The clock of the exercise, ms. */
  now() {
    return this.session.time * 1000;
  }

  /** Changes the notes and says what is new in them. @param {(data: any) => void} change */
  async change(change) {
    /** @type {any} */
    const before = structuredClone({ ...this.data, entries: {}, photos: [] });
    change(this.data);
    /** @type {any} */
    const said = {};
    for (const key of ['readings', 'wheels', 'parts']) {
      const fresh = Object.fromEntries(Object.entries(this.data[key]).filter(([k, v]) => JSON.stringify(v) !== JSON.stringify(before[key][k])));
      if (Object.keys(fresh).length) said[key] = fresh;
    }
    // What was called wrong and is not after all was looked at, and is in order.
    for (const part of Object.keys(before.parts).filter((p) => !(p in this.data.parts))) said.parts = { ...said.parts, [part]: 'ok' };
    if (this.data.othersSeen && !before.othersSeen) said.parts = { ...said.parts, 'all-others': 'ok' };
    if (Object.keys(said).length) await this.session.state('record', said);
    else await this.session.changed?.();
  }

  /** @param {any} check */
  async begin(check) {
    if (await this.session.state('begin', check.id)) this.open = check.id;
  }

  async conclude() {
    const said = { verdict: this.verdict, defects: [...this.defects] };
    this.done = await this.session.state('conclude', said);
  }
}

/** @param {Notes} n */
export function notes(n) {
  const draw = () => {};
  return html`<section class="sheet" aria-label="Notes">
    <p>Say which check you begin, make it, and write down what you read.</p>
    <ul class="checks">
      ${n.checks.map(
        (c) => html`<li>
          <button aria-expanded=${n.open === c.id} @click=${() => n.begin(c)}>${c.title}${isNoted(n, c) ? html` <span class="good">noted</span>` : ''}</button>
          ${n.open === c.id ? form(n, c, draw) : ''}
        </li>`,
      )}
    </ul>
    <fieldset class="entry"><legend>What follows</legend>
      <div class="row">${['fit-to-move', 'not-fit-to-move', 'not-proven'].map((v) => html`<button aria-pressed=${n.verdict === v} @click=${() => { n.verdict = v; }}>${v.replace(/-/g, ' ')}</button>`)}</div>
      <details><summary>What is wrong (${n.defects.size})</summary>
        <div class="row">${[...n.checks.map((c) => c.id), ...n.what.parts].map((id) => html`<button class="small" aria-pressed=${n.defects.has(id)} @click=${() => { n.defects.has(id) ? n.defects.delete(id) : n.defects.add(id); }}>${id.replace(/-/g, ' ')}</button>`)}</div>
      </details>
      <button class="main" ?disabled=${!n.verdict} @click=${() => n.conclude()}>I am done: this is my conclusion</button>
    </fieldset>
  </section>`;
}

/** What is written down of a check. @param {Notes} n @param {any} c @param {() => void} draw */
export function form(n, c, draw) {
  if (isEntered(c)) return entry(c, n, draw);
  if (c.id === 'pushrod-applied-stroke') return strokes('applied', n.what.wheels, n, draw);
  if (c.id === 'pushrod-free-stroke') return strokes('free', n.what.wheels, n, draw);
  if (c.kind === 'walk-round' || c.kind === 'component') return partList(n.what.parts, n, draw);
  return html`<p>There is nothing to write down here.</p>`;
}

/** @param {Notes} n @param {any} c */
function isNoted(n, c) {
  if (c.id.startsWith('pushrod')) return Object.keys(n.data.wheels).length > 0;
  if (c.kind === 'walk-round') return n.data.othersSeen || Object.keys(n.data.parts).length > 0;
  return n.data.readings[c.id] !== undefined;
}
