// @ts-check
/** Vehicles of one's own: from a file or a short form, kept on this device, used on every page. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { ask } from '../engine.js';
import { all, onOthers, put, remove } from '../kept.js';
import { send } from '../people.js';
import { empty, form, vehicleOf } from '../vehicles/form.js';

/** @param {unknown} e */
const words = (e) => (e instanceof Error ? e.message : String(e));

/** Reads a file: the server does, or the core here where that is not there. @param {File} file */
async function read(file) {
  const text = await file.text();
  let answer;
  try {
    answer = await send('/api/vehicle-file?name=' + encodeURIComponent(file.name), text, 'text/plain');
  } catch {
    if (!/\.json$/i.test(file.name)) throw new Error(file.name + ': YAML is read by the server, which is not there now. Next: try again when it is back, take the file as JSON, or use the form below.');
    await ask('parts', text);
    const vehicle = JSON.parse(text);
    return { name: vehicle.name, vehicle };
  }
  if (!answer.ok) throw new Error(await answer.text());
  return answer.json();
}

/** What it is made of, in a few words. @param {any} vehicle */
const parts = (vehicle) => vehicle.units.map((/** @type {any} */ u) => u.kind + ', ' + u.axles.length + (u.axles.length === 1 ? ' axle' : ' axles')).join('; ');

/** @param {HTMLElement} place */
export async function show(place) {
  const state = { own: await all('vehicles'), form: empty(), trouble: '', kept: '' };

  /** Keeps a vehicle once the core can read it. @param {{name: string, vehicle: any}} made */
  async function keep(made) {
    await ask('parts', JSON.stringify(made.vehicle));
    await put('vehicles', { id: 'own-' + crypto.randomUUID(), ...made });
    Object.assign(state, { own: await all('vehicles'), trouble: '', kept: made.name });
  }

  /** @param {() => Promise<void>} work */
  const trying = (work) => work().catch((e) => Object.assign(state, { trouble: words(e), kept: '' })).then(draw);

  const take = (/** @type {any} */ e) => {
    const file = e.target.files[0];
    e.target.value = '';
    if (file) trying(async () => keep(await read(file)));
  };

  const build = () =>
    trying(async () => {
      if (!state.form.name.trim()) throw new Error('The vehicle has no name. Next: write one, such as Gravel truck 12.');
      const vehicle = vehicleOf(state.form);
      await keep({ name: vehicle.name, vehicle });
      state.form = empty();
    });

  const drop = (/** @type {any} */ v) =>
    confirm('Remove ' + v.name + ' from this device? Inspections of it stay.') &&
    trying(async () => {
      await remove('vehicles', v.id);
      state.own = await all('vehicles');
    });

  function draw() {
    render(
      html`<h1>Vehicles of your own</h1>
        <p>They stay on this device, and can be chosen in the yard, in practice and for the rules.</p>
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}
        ${state.kept ? html`<p class="good" role="status">${state.kept} is kept.</p>` : ''}
        <ul class="cards">${state.own.map((v) => html`<li class="sheet"><h2>${v.name}</h2><p>${parts(v.vehicle)}</p>
          <button type="button" @click=${() => drop(v)}>Remove<span class="hidden">: ${v.name}</span></button></li>`)}</ul>
        <section class="sheet"><h2>From a file</h2>
          <p>A vehicle file as the command line reads it, YAML or JSON.</p>
          <label class="button">Choose the file<input class="hidden" type="file" accept=".yaml,.yml,.json" @change=${take} /></label></section>
        <section class="sheet"><h2>By a short form</h2>${form(state.form, draw, build)}</section>`,
      place,
    );
  }
  draw();
  return onOthers('vehicles', () => trying(async () => { state.own = await all('vehicles'); }));
}
