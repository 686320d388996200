// @ts-check
/** What is wrong, where, how bad as the rule of the place says, with notes and photos beside. */
import { html } from '/lib/lit-html/lit-html.js';
import { photoOf, photos } from './photo.js';

const SEVERITY = { major: ['bad', 'major'], minor: ['doubt', 'minor'], 'not-stated': ['doubt', 'not rated by the place'] };

/** A name of a defect that stays the same while more is entered. @param {any} d */
export const keyOf = (d) => d.component + (d.wheel ? '-' + d.wheel : '');

/** @param {any} d */
const title = (d) => (d.wheel ? d.wheel + ': ' : '') + (d.rule ? d.text : d.component.replace(/-/g, ' ') + ': ' + d.text.replace(/-/g, ' '));

/**
 * The defects of a judgement.
 * @param {any[]} defects @param {any[]} pictures @param {(d: any) => any} beside
 */
export function defectList(defects, pictures, beside) {
  return defects.length
    ? html`<ul class="cards defects">${defects.map((d) => {
        const [style, words] = SEVERITY[/** @type {keyof typeof SEVERITY} */ (d.severity)];
        return html`<li class="sheet"><p class=${style}>${words}</p><h3>${title(d)}</h3>${photos(pictures, keyOf(d))}${beside(d)}</li>`;
      })}</ul>`
    : html`<p>No defects were found.</p>`;
}

/** The same while the inspection is made. @param {any[]} defects @param {import('./draft.js').Draft} draft @param {() => void} redraw */
export function defectWork(defects, draft, redraw) {
  return defectList(defects, draft.data.photos, (d) => {
    const key = keyOf(d);
    const set = (/** @type {any} */ e) =>
      draft.change((/** @type {any} */ x) => {
        const text = e.target.value.trim();
        x.defectNotes ??= {};
        if (text) x.defectNotes[key] = { about: title(d), text };
        else delete x.defectNotes[key];
      }).then(redraw);
    return html`<label>Note<input name=${'note-' + key} autocomplete="off" .value=${draft.data.defectNotes?.[key]?.text ?? ''} @change=${set} /></label>
      <p class="row">${photoOf(key, draft, redraw)}</p>`;
  });
}

/** What earlier reports found wrong and nobody settled. @param {any[]} defects */
export function earlierDefects(defects) {
  return defects.length
    ? html`<h2>Still open from earlier reports</h2><ul class="cards defects">${defects.map((d) => html`<li class="sheet"><p class=${d.severity === 'major' ? 'bad' : 'doubt'}>${d.severity ?? 'not rated'}, since ${d.since}</p>
        <h3>${d.text}</h3><a class="button" href=${'#/records/' + d.report}>Open that report</a></li>`)}</ul>`
    : '';
}
