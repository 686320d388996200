// @ts-check
/** Rules: the limits in force for a vehicle in a place, each with its source. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { askJson } from '../engine.js';
import { places, today, vehicles } from '../data.js';

const STANDING = {
  published: 'text read',
  'published-secondhand': 'second-hand',
  'common-practice': 'common practice, no source',
  'from-memory': 'from memory, unconfirmed',
};

/** @param {HTMLElement} place */
export async function show(place) {
  const [allPlaces, allVehicles] = await Promise.all([places(), vehicles()]);
  const state = { place: 'CA-ON', vehicle: allVehicles[0].id, rules: /** @type {any} */ (undefined), trouble: '' };

  async function find() {
    const vehicle = allVehicles.find((v) => v.id === state.vehicle);
    try {
      state.rules = await askJson('rules', state.place, JSON.stringify(vehicle.vehicle), today());
      state.trouble = '';
    } catch (e) {
      state.trouble = e instanceof Error ? e.message : String(e);
    }
    draw();
  }

  /** @param {'place' | 'vehicle'} key @param {{value: string, text: string}[]} from @param {string} label */
  const choice = (key, from, label) =>
    html`<label>${label}
      <select @change=${(e) => { state[key] = e.target.value; find(); }}>
        ${from.map((o) => html`<option value=${o.value} ?selected=${o.value === state[key]}>${o.text}</option>`)}
      </select></label>`;

  function draw() {
    render(
      html`<h1>Rules</h1>
        <div class="row">
          ${choice('place', allPlaces.map((p) => ({ value: p.code, text: p.name + ' (' + p.code + ')' })), 'Place')}
          ${choice('vehicle', allVehicles.map((v) => ({ value: v.id, text: v.name })), 'Vehicle')}
        </div>
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}
        ${state.rules ? state.rules.rules.map(rule) : ''}`,
      place,
    );
  }
  await find();
}

/** @param {any} r */
function rule(r) {
  return html`<section class="sheet">
    <h2>${r.title ?? r.check}</h2>
    <p>${r.says ?? ''}</p>
    <p class="faint">${STANDING[r.provenance] ?? r.provenance} ${r.source ? [r.source.work, r.source.section].filter(Boolean).join(', ') : ''}</p>
  </section>`;
}
