// @ts-check
/** A real inspection: begin or go on, one step on the screen, then review and sign. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { ask, askJson } from '../engine.js';
import { places, today, vehicles } from '../data.js';
import { all, askToStay, get, remove } from '../kept.js';
import { sync } from '../sync.js';
import { Draft } from '../yard/draft.js';
import { entry, isEntered } from '../yard/entry.js';
import { strokes, partList } from '../yard/wheels.js';
import { findings, reportFields, signatureField, verdict } from '../yard/review.js';

/** @param {HTMLElement} place @param {string[]} rest */
export async function show(place, rest) {
  if (rest[0]) {
    const kept = await get('drafts', rest[0]);
    if (kept) return inspection(place, new Draft(kept));
  }
  return choose(place);
}

/** @param {HTMLElement} place */
async function choose(place) {
  const [allPlaces, allVehicles, drafts] = await Promise.all([places(), vehicles(), all('drafts')]);
  const state = { place: localStorage.getItem('place') ?? 'CA-ON', vehicle: localStorage.getItem('vehicle') ?? allVehicles[0].id, trouble: '' };
  const begin = async () => {
    try {
      const vehicle = allVehicles.find((v) => v.id === state.vehicle) ?? allVehicles[0];
      const draft = Draft.begin(state.place, vehicle.vehicle);
      await draft.keep();
      localStorage.setItem('place', state.place);
      localStorage.setItem('vehicle', state.vehicle);
      askToStay();
      location.hash = '#/yard/' + draft.data.id;
    } catch (e) {
      state.trouble = e instanceof Error ? e.message : String(e);
      draw();
    }
  };
  /** @param {any} d */
  const card = (d) => html`<li class="sheet"><h3>${d.vehicle.name}</h3>
    <p>${d.place}, begun ${d.begun.slice(0, 16).replace('T', ' ')}</p>
    <div class="row"><a class="button main" href=${'#/yard/' + d.id}>Go on</a>
      <button @click=${async () => { if (confirm('Throw this unfinished inspection away?')) { await remove('drafts', d.id); drafts.splice(drafts.indexOf(d), 1); draw(); } }}>Throw away</button></div></li>`;
  function draw() {
    render(
      html`<h1>Inspect a vehicle</h1>
        <p class="care">Chock before anything else. Never go under a vehicle whose wheels are not chocked. Keep clear of push rods and slack adjusters when brakes apply, and never open a spring-brake chamber.</p>
        ${drafts.length ? html`<h2>Not finished yet</h2><ul class="cards">${drafts.map(card)}</ul>` : ''}
        <h2>Begin</h2>
        <section class="sheet"><div class="row">
          <label>Place<select name="place" .value=${state.place} @change=${(e) => { state.place = e.target.value; }}>${allPlaces.map((p) => html`<option value=${p.code} ?selected=${p.code === state.place}>${p.name} (${p.code})</option>`)}</select></label>
          <label>Vehicle<select name="vehicle" .value=${state.vehicle} @change=${(e) => { state.vehicle = e.target.value; }}>${allVehicles.map((v) => html`<option value=${v.id} ?selected=${v.id === state.vehicle}>${v.name}</option>`)}</select></label>
          <button class="main" @click=${begin}>Begin</button>
        </div></section>
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}`,
      place,
    );
  }
  draw();
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
  const byId = new Map(checks.map((c) => [c.id, c]));
  const screens = [...plan.steps.filter((s) => s.does), null];
  const signature = { strokes: [] };
  let judgement;
  let trouble = '';

  const go = (to) => draft.change((d) => { d.at = Math.max(0, Math.min(screens.length - 1, to)); }, false).then(redraw);

  async function redraw() {
    try {
      judgement = await draft.judgement();
      trouble = '';
    } catch (e) {
      trouble = e instanceof Error ? e.message : String(e);
    }
    draw();
  }

  async function finish() {
    draft.data.report.statement = true;
    draft.data.report.signed = true;
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
    const at = draft.data.at;
    const step = screens[at];
    render(
      html`<p class="row between"><span>${draft.data.vehicle.name}, ${draft.data.place}</span><span>${at + 1} of ${screens.length}</span></p>
        <progress max=${screens.length} value=${at + 1} aria-label="Progress"></progress>
        ${step ? stepScreen(step) : last()}
        ${trouble ? html`<p class="trouble" role="alert">${trouble}</p>` : ''}
        <div class="bar-of-buttons">
          <button ?disabled=${at === 0} @click=${() => go(at - 1)}>Back</button>
          <button ?disabled=${draft.data.undo.length === 0} @click=${() => draft.undo().then(redraw)}>Undo</button>
          ${step ? html`<button class="main" @click=${() => go(at + 1)}>Next</button>` : html`<button class="main" ?disabled=${!draft.data.report.inspector || signature.strokes.length === 0} @click=${finish}>Sign and finish</button>`}
        </div>
        ${step && judgement ? verdict(judgement) : ''}`,
      place,
    );
  }

  /** @param {any} step */
  function stepScreen(step) {
    const made = (step.checks ?? []).map((id) => byId.get(id)).filter(Boolean);
    return html`<section class="step" aria-label="Step">
      <h1>${step.does}</h1>
      ${step.caution ? html`<p class="care">${step.caution}</p>` : ''}
      ${step.helper ? html`<p>You need a second person, or something that holds the pedal.</p>` : ''}
      ${step['look-for'] ? html`<p>${step['look-for']}</p>` : ''}
      ${(step.rules ?? []).length ? html`<p class="limits">Limit: ${[...new Set(step.rules.map((r) => r.limit))].filter((l) => l !== 'yes').join('; ') || 'has to be in order'}</p>` : ''}
      ${made.filter(isEntered).map((c) => entry(c, draft, redraw))}
      ${made.some((c) => c.id === 'pushrod-applied-stroke') ? strokes('applied', what.wheels, draft, redraw) : ''}
      ${made.some((c) => c.id === 'pushrod-free-stroke') ? strokes('free', what.wheels, draft, redraw) : ''}
      ${made.some((c) => c.kind === 'walk-round' || c.kind === 'component') ? partList(what.parts, draft, redraw) : ''}
    </section>`;
  }

  function last() {
    return html`<h1>Review and sign</h1>
      ${judgement ? html`${verdict(judgement)} ${findings(judgement)}` : ''}
      ${reportFields(draft, redraw)}
      <fieldset class="entry"><legend>Signature</legend><p>${STATEMENT}</p>${signatureField(signature, draw)}</fieldset>`;
  }

  const timer = setInterval(() => draft.timing && draw(), 250);
  await redraw();
  return () => clearInterval(timer);
}

const STATEMENT = 'I made this inspection myself. Each test was made under the conditions printed unless noted, and what I found is written here.';
