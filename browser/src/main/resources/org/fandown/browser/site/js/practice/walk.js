// @ts-check
/** The walk-round: go to a place, then look, listen, chock, pry, measure, drain, couple. */
import { html } from '/lib/lit-html/lit-html.js';
import { vehicleDrawing } from '../draw/vehicle.js';
import { defect } from '../yard/wheels.js';

/** Parts that are looked at where one stands, by the sort of place. */
const PARTS = {
  cab: ['air-gauge', 'low-pressure-signal', 'parking-brake', 'steering', 'horn', 'wipers', 'mirrors', 'glass', 'driver-seat', 'heater', 'doors', 'cab', 'emergency-equipment'],
  front: ['lamps-and-reflectors', 'compressor', 'frame', 'glass', 'coupling-devices'],
  rear: ['lamps-and-reflectors', 'load-securement', 'exhaust', 'frame', 'service-brakes'],
  wheel: ['tires', 'wheels-and-rims', 'brake-chambers', 'brake-linings', 'drums-and-rotors', 'slack-adjusters', 'brake-adjustment', 'suspension', 'air-lines'],
  coupling: ['trailer-connections', 'air-lines', 'coupling-devices'],
  reservoirs: ['reservoirs', 'air-system', 'air-lines', 'fuel-system', 'frame'],
};

/** @param {string} here @returns {string[]} */
const partsAt = (here) => Object.entries(PARTS).find(([sort]) => sort === here)?.[1] ?? [];

/** @param {string} station */
const sort = (station) => (/^\d/.test(station) ? 'wheel' : station.split(' ')[0]);

/** @param {string} id */
const words = (id) => id.replace(/-/g, ' ');

/** @param {import('./session.js').Session} s @param {import('./notes.js').Notes} notes */
export function walk(s, notes) {
  const here = sort(s.station);
  const unit = s.station.split(' ')[1] ?? '1';
  /** @param {string} verb @param {string} what @param {string} title */
  const does = (verb, what, title) => html`<button @click=${() => s.act(verb, what)}>${title}</button>`;
  return html`<div class="two">
    <section class="sheet" aria-label="Vehicle from above">
      ${vehicleDrawing(s.vehicle, {
        at: s.station,
        chocked: (wheel) => s.deeds.chocked.has(wheel),
        says: (wheel) => s.deeds.measured.get(wheel) ?? '',
        choose: (place) => s.act('stand', place),
      })}
    </section>
    <section class="sheet" aria-label="What can be done here">
      <h2>You are at: ${s.station}</h2>
      ${here === 'wheel' && s.deeds.chocked.size === 0 ? html`<p class="care">No wheel is chocked. Do not reach behind a wheel before one is.</p>` : ''}
      <div class="deeds">
        ${does('listen', 'here', 'Listen')}
        ${here === 'wheel'
          ? html`${s.deeds.chocked.has(s.station) ? does('unchock', s.station, 'Take the chocks away') : does('chock', s.station, 'Chock this wheel')}
              ${does('measure', s.station, 'Measure the push rod')} ${does('pry', s.station, 'Pry: free stroke')}`
          : ''}
        ${here === 'coupling'
          ? html`${does('couple-lines', unit, 'Couple both lines')} ${does('part-lines', unit, 'Part both lines')} ${does('part-supply-line', unit, 'Part the supply line')} ${does('part-control-line', unit, 'Part the service line')}`
          : ''}
        ${here === 'reservoirs' ? drains(s, Number(unit)).map((/** @type {string} */ d) => html`${does('open-drain', d, 'Open drain: ' + d)} ${does('shut-drain', d, 'Shut drain: ' + d)}`) : ''}
        ${does('helper', s.helper ? 'away' : 'cab', s.helper ? 'Send the helper away' : 'Put a helper in the cab')}
      </div>
      <h3>What you saw and heard last</h3>
      <div role="status"><ul class="seen">${s.events.filter((e) => e.kind === 'observed' || e.kind === 'hazard' || e.kind === 'refused').slice(-4).reverse().map((e) => html`<li class=${e.kind === 'observed' ? '' : 'bad'}>${e.text}</li>`)}</ul></div>
      <h3>Look at, and say how it is</h3>
      <ul class="parts">${partsAt(here).filter((part) => notes.what.parts.includes(part)).map((part) => condition(part, s, notes))}</ul>
    </section>
  </div>`;
}

/** A part: look at it, and say whether it is in order. @param {string} part @param {import('./session.js').Session} s @param {import('./notes.js').Notes} notes */
function condition(part, s, notes) {
  const said = notes.data.parts[part];
  /** @param {(data: any) => void} how */
  const change = (how) => notes.change(how);
  /** @param {any} what */
  const say = (what) => () => change((d) => { d.parts[part] = what; });
  return html`<li><b>${words(part)}</b>
    <span class="row"><button class="small" @click=${() => s.act('look', part)}>Look<span class="hidden"> at ${words(part)}</span></button>
    <button class="small" aria-pressed=${said === 'ok'} @click=${say('ok')}>In order<span class="hidden">: ${words(part)}</span></button>
    <button class="small" aria-pressed=${said !== undefined && said !== 'ok'} @click=${say({ condition: 'defect', severity: 'minor' })}>Not in order<span class="hidden">: ${words(part)}</span></button></span>
    ${said && said !== 'ok' ? defect(part, said, notes, change) : ''}</li>`;
}

/** @param {import('./session.js').Session} s @param {number} unit */
function drains(s, unit) {
  if (unit > 1) return ['unit' + unit];
  const roles = s.vehicle.units[0].reservoirs ?? [];
  return roles.map((/** @type {any} */ r) => r.role);
}
