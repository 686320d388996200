// @ts-check
/** A real inspection: begin or go on, one step on the screen, then review and sign. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { askJson } from '../engine.js';
import { places, today } from '../data.js';
import { get, onOthers } from '../kept.js';
import { sync } from '../sync.js';
import { choose } from '../yard/choose.js';
import { defectWork, earlierDefects } from '../yard/defects.js';
import { Draft } from '../yard/draft.js';
import { entry, isEntered } from '../yard/entry.js';
import { strokes, partList } from '../yard/wheels.js';
import { fromLog, LogWork, logPart } from '../yard/log.js';
import { findings, reportFields, signatureField, verdict } from '../yard/review.js';

/** @param {HTMLElement} place @param {string[]} rest */
export async function show(place, rest) {
  if (rest[0]) {
    const kept = await get('drafts', rest[0]);
    if (kept) return inspection(place, new Draft(kept));
  }
  return choose(place);
}

/** @param {HTMLElement} place @param {Draft} draft */
async function inspection(place, draft) {
  await places();
  const vehicle = JSON.stringify(draft.data.vehicle);
  const [plan, checks, what] = await Promise.all([
    askJson('plan', draft.data.place, vehicle, today(), 0, false),
    askJson('checks'),
    askJson('parts', vehicle),
  ]);
  const byId = new Map(checks.map((/** @type {any} */ c) => [c.id, c]));
  const screens = [...plan.steps.filter((/** @type {any} */ s) => s.does), null];
  const signature = { strokes: [] };
  const log = new LogWork(draft, () => redraw());
  let at = Math.min(draft.data.at, screens.length - 1);
  /** @type {any} */
  let judgement;
  let trouble = '';

  /** Each window is where it is; the device keeps where one was last. */
  function go(/** @type {number} */ to) {
    at = Math.max(0, Math.min(screens.length - 1, to));
    log.open = false;
    return draft.change((d) => { d.at = at; }, false).then(redraw);
  }

  async function redraw() {
    try {
      if (!screens[at]) await draft.learnEarlier();
      await log.prepare();
      judgement = await draft.judgement();
      trouble = draft.trouble;
    } catch (e) {
      trouble = draft.trouble || (e instanceof Error ? e.message : String(e));
    }
    draw();
  }

  async function finish() {
    try {
      await draft.finish({ name: draft.data.report.inspector ?? '', statement: STATEMENT, strokes: signature.strokes });
      sync();
      location.hash = '#/records/' + draft.data.id;
    } catch (e) {
      trouble = e instanceof Error ? e.message : String(e);
      draw();
    }
  }

  function draw() {
    const step = screens[at];
    render(
      html`<p class="row between"><span>${draft.data.vehicle.name}, ${draft.data.place}</span><span class="one-line">${at + 1} of ${screens.length}</span></p>
        <progress max=${screens.length} value=${at + 1} aria-label="Progress"></progress>
        ${step ? stepScreen(step) : last()}
        ${logPart(log)}
        ${trouble ? html`<p class="trouble" role="alert">${trouble}</p>` : ''}
        <div class="bar-of-buttons">
          <button ?disabled=${at === 0} @click=${() => go(at - 1)}>Back</button>
          <button ?disabled=${draft.data.undo.length === 0} @click=${() => draft.undo().then(redraw)}>Undo</button>
          ${step ? html`<button class="main" @click=${() => go(at + 1)}>Next</button>` : html`<button class="main" ?disabled=${!draft.data.report.inspector || signature.strokes.length === 0} @click=${finish}>Sign and finish</button>`}
        </div>
        ${step && judgement ? verdict(judgement, 3) : ''}`,
      place,
    );
  }

  /** @param {any} step */
  function stepScreen(step) {
    const made = (step.checks ?? []).map((/** @type {string} */ id) => byId.get(id)).filter(Boolean);
    return html`<section class="step" aria-label="Step">
      <h1>${step.does}</h1>
      ${step.caution ? html`<p class="care">${step.caution}</p>` : ''}
      ${step.helper ? html`<p>You need a second person, or something that holds the pedal.</p>` : ''}
      ${step['look-for'] ? html`<p>${step['look-for']}</p>` : ''}
      ${(step.rules ?? []).length ? html`<p class="limits">Limit: ${[...new Set(step.rules.map((/** @type {any} */ r) => r.limit))].filter((l) => l !== 'yes').join('; ') || 'has to be in order'}</p>` : ''}
      ${made.filter(isEntered).map((/** @type {any} */ c) => (draft.fromLog(c.id) ? fromLog(c, draft, redraw) : entry(c, draft, redraw)))}
      ${made.some((/** @type {any} */ c) => c.id === 'pushrod-applied-stroke') ? strokes('applied', what.wheels, draft, redraw) : ''}
      ${made.some((/** @type {any} */ c) => c.id === 'pushrod-free-stroke') ? strokes('free', what.wheels, draft, redraw) : ''}
      ${made.some((/** @type {any} */ c) => c.kind === 'walk-round' || c.kind === 'component') ? partList(what.parts, draft, redraw) : ''}
    </section>`;
  }

  function last() {
    return html`<h1>Review and sign</h1>
      ${judgement ? html`${verdict(judgement)}
        ${earlierDefects(draft.data.earlier ?? [])}
        <h2>What is wrong</h2>${defectWork(judgement.defects, draft, redraw)}
        <details class="sheet finding"><summary>Every finding (${judgement.findings.filter((/** @type {any} */ f) => f.status !== 'not-applicable').length})</summary>${findings(judgement)}</details>` : ''}
      ${reportFields(draft, redraw)}
      <fieldset class="entry"><legend>Signature</legend><p>${STATEMENT}</p>${signatureField(signature, draw)}</fieldset>
      ${draft.data.report.inspector && signature.strokes.length ? '' : html`<p class="doubt">${draft.data.report.inspector ? 'Your signature is' : signature.strokes.length ? 'Your name is' : 'Your name and signature are'} missing.</p>`}`;
  }

  const timer = setInterval(() => draft.timing && draw(), 250);
  const quiet = onOthers('drafts', (id) => id === draft.data.id && draft.again().then(redraw));
  await redraw();
  return () => {
    clearInterval(timer);
    quiet();
  };
}

const STATEMENT = 'I made this inspection myself. Each test was made under the conditions printed unless noted, and what I found is written here.';
