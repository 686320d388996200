// @ts-check
/** Strokes at the wheels, and parts that were looked at. */
import { html } from '/lib/lit-html/lit-html.js';
import { inPsi } from './draft.js';
import { photoOf, photos } from './photo.js';

/** @param {string} key applied | free @param {string[]} wheels @param {import('./entry.js').Kept} draft @param {() => void} redraw */
export function strokes(key, wheels, draft, redraw) {
  const unit = inPsi(draft.data.place) ? 'in' : 'mm';
  /** @param {string} wheel @returns {(e: any) => Promise<void>} */
  const set = (wheel) => (e) =>
    draft
      .change((/** @type {any} */ d) => {
        const text = e.target.value.trim();
        const at = (d.wheels[wheel] ??= {});
        if (text) at[key] = /[a-z"]$/.test(text) ? text : text + ' ' + unit;
        else delete at[key];
        if (Object.keys(at).length === 0) delete d.wheels[wheel];
      })
      .then(redraw, redraw);
  return html`<fieldset class="entry"><legend>${key === 'applied' ? 'Applied stroke' : 'Free stroke'} at each wheel, ${unit}</legend>
    <div class="wheels">${wheels.map(
      (w) => html`<label>${w}<input inputmode=${unit === 'in' ? 'text' : 'decimal'} placeholder=${unit === 'in' ? '1 3/4' : '44'} .value=${(draft.data.wheels[w]?.[key] ?? '').replace(/ (in|mm)$/, '')} @change=${set(w)} /></label>`,
    )}</div></fieldset>`;
}

/** @param {string} id */
const words = (id) => id.replace(/-/g, ' ');

/** The parts: in order, or what is wrong with each. @param {string[]} parts @param {import('./entry.js').Kept} draft @param {() => void} redraw */
export function partList(parts, draft, redraw) {
  const d = draft.data;
  /** @param {(x: any) => void} how */
  const change = (how) => draft.change(how).then(redraw, redraw);
  return html`<fieldset class="entry"><legend>Parts</legend>
    <p><button type="button" aria-pressed=${d.othersSeen} @click=${() => change((/** @type {any} */ x) => { x.othersSeen = !x.othersSeen; })}>All others looked at and in order</button></p>
    <label>Something is wrong with
      <select @change=${(/** @type {any} */ e) => { const part = e.target.value; e.target.value = ''; if (part) change((/** @type {any} */ x) => { x.parts[part] ??= { condition: 'defect', severity: 'minor' }; }); }}>
        <option value="">choose a part</option>
        ${parts.filter((p) => !d.parts[p]).map((p) => html`<option value=${p}>${words(p)}</option>`)}
      </select></label>
    ${Object.entries(d.parts).filter(([, said]) => said !== 'ok').map(([part, said]) => defect(part, said, draft, change))}
  </fieldset>`;
}

/** What is wrong with a part. @param {string} part @param {any} said @param {import('./entry.js').Kept} draft @param {(how: (x: any) => void) => Promise<void>} change */
export function defect(part, said, draft, change) {
  /** @param {string} key @returns {(e: any) => Promise<void>} */
  const set = (key) => (e) => change((/** @type {any} */ x) => { x.parts[part] = { ...x.parts[part], [key]: key === 'condition' ? kebab(e.target.value) : e.target.value }; });
  return html`<fieldset class="entry"><legend>${words(part)}</legend>
    <div class="row">
      <label>Condition <input .value=${words(said.condition)} @change=${set('condition')} /></label>
      <label>Severity <select .value=${said.severity} @change=${set('severity')}><option value="minor">minor</option><option value="major">major</option></select></label>
    </div>
    <label>Note <input .value=${said.note ?? ''} @change=${set('note')} /></label>
    <div class="row">
      ${photoOf(part, draft, () => change(() => {}))}
      <button type="button" @click=${() => change((/** @type {any} */ x) => { delete x.parts[part]; })}>Not wrong after all</button>
    </div>
    ${photos(draft.data.photos, part)}
  </fieldset>`;
}

/** @param {string} text */
const kebab = (text) => text.trim().toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'defect';
