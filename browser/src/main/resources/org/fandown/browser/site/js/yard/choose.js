// @ts-check
/** Where an inspection begins, or goes on. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { places, vehicles } from '../data.js';
import { all, askToStay, throwAway } from '../kept.js';
import { Draft } from './draft.js';

/** @param {HTMLElement} place */
export async function choose(place) {
  const [allPlaces, allVehicles, drafts] = await Promise.all([places(), vehicles(), all('drafts')]);
  const state = { place: localStorage.getItem('place') ?? 'CA-ON', vehicle: localStorage.getItem('vehicle') ?? allVehicles[0].id, trouble: '' };
  const begin = async () => {
    try {
      const vehicle = allVehicles.find((v) => v.id === state.vehicle) ?? allVehicles[0];
      const draft = await Draft.begin(state.place, vehicle.vehicle);
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
      <button @click=${async () => { if (confirm('Throw this unfinished inspection away?')) { await throwAway(d.id); drafts.splice(drafts.indexOf(d), 1); draw(); } }}>Throw away</button></div></li>`;
  function draw() {
    render(
      html`<h1>Inspect a vehicle</h1>
        <p class="care">Chock before anything else. Never go under a vehicle whose wheels are not chocked. Keep clear of push rods and slack adjusters when brakes apply, and never open a spring-brake chamber.</p>
        ${drafts.length ? html`<h2>Not finished yet</h2><ul class="cards">${drafts.map(card)}</ul>` : ''}
        <h2>Begin</h2>
        <section class="sheet"><div class="row">
          <label>Place<select name="place" .value=${state.place} @change=${(/** @type {any} */ e) => { state.place = e.target.value; }}>${allPlaces.map((p) => html`<option value=${p.code} ?selected=${p.code === state.place}>${p.name} (${p.code})</option>`)}</select></label>
          <label>Vehicle<select name="vehicle" .value=${state.vehicle} @change=${(/** @type {any} */ e) => { state.vehicle = e.target.value; }}>${allVehicles.map((v) => html`<option value=${v.id} ?selected=${v.id === state.vehicle}>${v.name}</option>`)}</select></label>
          <button class="main" @click=${begin}>Begin</button>
        </div></section>
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}`,
      place,
    );
  }
  draw();
}
