// @ts-check
/** Review and signature at the end of an inspection. */
import { html } from '/lib/lit-html/lit-html.js';
import { ref } from '/lib/lit-html/directives/ref.js';

/** Entries of the report that people write. */
const ENTRIES = [
  ['plate', 'Plate'],
  ['trailer-plates', 'Plates of the trailers'],
  ['operator', 'Operator or carrier'],
  ['location', 'Where'],
  ['odometer', 'Odometer, with its unit'],
  ['inspector', 'Your name'],
];

/** @param {import('./draft.js').Draft} draft @param {() => void} redraw */
export function reportFields(draft, redraw) {
  return html`<fieldset class="entry"><legend>For the report</legend>
    <div class="wheels">${ENTRIES.map(
      ([key, title]) =>
        html`<label>${title}<input autocomplete="off" .value=${draft.data.report[key] ?? ''} @change=${(/** @type {any} */ e) =>
          draft.change((/** @type {any} */ d) => { const text = e.target.value.trim(); if (text) d.report[key] = text; else delete d.report[key]; }).then(redraw, redraw)} /></label>`,
    )}</div></fieldset>`;
}

/** @type {Record<string, string[]>} */
const WORDS = { 'fit-to-move': ['good', 'fit to move'], 'not-fit-to-move': ['bad', 'not fit to move'], 'not-proven': ['doubt', 'not proven'] };

/** @param {any} judgement @param {number} [most] how many reasons */
export function verdict(judgement, most = 6) {
  const [style, words] = WORDS[judgement.verdict];
  return html`<section class="sheet verdict" aria-label="Verdict" aria-live="polite">
    <p class=${'number ' + style}>${words}</p>
    <ul>${judgement.because.slice(0, most).map((/** @type {string} */ b) => html`<li>${b}</li>`)}</ul>
    ${judgement.because.length > most ? html`<p class="faint">and ${judgement.because.length - most} more</p>` : ''}
  </section>`;
}

/** @type {Record<string, string>} */
const STYLE = { met: 'good', 'not-met': 'bad', undetermined: 'doubt', spoiled: 'doubt', 'not-checked': 'doubt' };

/** @param {any} judgement */
export function findings(judgement) {
  const shown = judgement.findings.filter((/** @type {any} */ f) => f.status !== 'not-applicable');
  return html`<div class="table"><table class="stack">
    <thead><tr><th>Check</th><th>Found</th><th>Limit</th></tr></thead>
    <tbody>${shown.map(
      (/** @type {any} */ f) => html`<tr><td>${f.title}${f.wheel ? ' ' + f.wheel : ''}</td><td class=${STYLE[f.status]}>${f.status.replace('-', ' ')}${f.measured ? ': ' + f.measured.value + ' ' + f.measured.unit : ''}</td><td>${f.limit?.text ?? ''}<details><summary>Source</summary>${f.source ?? 'none'} (${f.provenance?.replace(/-/g, ' ')}, last checked ${f['last-checked']})</details></td></tr>`,
    )}</tbody></table></div>`;
}

/** How far an arrow key moves the pen, in the field's own points. */
const PEN = 12;

/** @type {Record<string, number[]>} */
const ARROWS = { ArrowLeft: [-PEN, 0], ArrowRight: [PEN, 0], ArrowUp: [0, -PEN], ArrowDown: [0, PEN] };

/**
 * Draws on by a key: arrows draw, the space bar lifts the pen.
 * @param {any} e @param {{strokes: number[][], pen?: number[], down?: boolean}} signature @returns {boolean} whether it was such a key
 */
function drawByKey(e, signature) {
  const by = ARROWS[e.key];
  if (!by && e.key !== ' ') return false;
  e.preventDefault();
  const at = (signature.pen ??= [60, 120]);
  const before = [...at];
  at[0] = Math.max(4, Math.min(596, at[0] + (by?.[0] ?? PEN)));
  at[1] = Math.max(4, Math.min(196, at[1] + (by?.[1] ?? 0)));
  if (!by) signature.down = false;
  else if (signature.down && signature.strokes.length) signature.strokes[signature.strokes.length - 1].push(...at);
  else {
    signature.strokes.push([...before, ...at]);
    signature.down = true;
  }
  return true;
}

/** A field one signs by finger, mouse or arrow keys. @param {{strokes: number[][]}} signature @param {() => void} redraw */
export function signatureField(signature, redraw) {
  /** @type {any} */
  let canvas;
  /** @param {PointerEvent} e */
  const at = (e) => [Math.round(e.offsetX * (canvas.width / canvas.clientWidth)), Math.round(e.offsetY * (canvas.height / canvas.clientHeight))];
  const paint = () => {
    const pen = canvas.getContext('2d');
    pen.clearRect(0, 0, canvas.width, canvas.height);
    pen.lineWidth = 4;
    pen.lineCap = 'round';
    pen.strokeStyle = getComputedStyle(canvas).color;
    for (const stroke of signature.strokes) {
      pen.beginPath();
      for (let i = 0; i + 1 < stroke.length; i += 2) pen.lineTo(stroke[i], stroke[i + 1]);
      pen.stroke();
    }
  };
  return html`<div class="sign">
    <p class="faint" id="how-to-sign">Draw it, or use the arrow keys; the space bar lifts the pen.</p>
    <canvas width="600" height="200" role="img" tabindex="0" aria-label="Signature" aria-describedby="how-to-sign" ${ref((c) => { if (c) { canvas = c; paint(); } })}
      @pointerdown=${(/** @type {any} */ e) => { e.target.setPointerCapture(e.pointerId); signature.strokes.push(at(e)); paint(); }}
      @pointermove=${(/** @type {PointerEvent} */ e) => { if (e.buttons) { signature.strokes[signature.strokes.length - 1]?.push(...at(e)); paint(); } }}
      @keydown=${(/** @type {KeyboardEvent} */ e) => { if (drawByKey(e, signature)) { paint(); redraw(); } }}
      @pointerup=${redraw}></canvas>
    <button type="button" @click=${() => { signature.strokes.length = 0; redraw(); }}>Clear</button>
  </div>`;
}
