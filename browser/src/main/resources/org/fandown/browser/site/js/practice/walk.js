// @ts-check
/** The walk-round: go to a place, then look, listen, chock, pry, measure, drain, couple. */
import { html } from '/lib/lit-html/lit-html.js';
import { vehicleDrawing } from '../draw/vehicle.js';

/** Parts that are looked at where one stands, by the sort of place. */
const PARTS = {
  cab: ['air-gauge', 'low-pressure-signal', 'parking-brake', 'steering', 'horn', 'wipers', 'mirrors', 'glass', 'driver-seat', 'heater', 'doors', 'cab', 'emergency-equipment'],
  front: ['lamps-and-reflectors', 'compressor', 'frame', 'glass', 'coupling-devices'],
  rear: ['lamps-and-reflectors', 'load-securement', 'exhaust', 'frame', 'service-brakes'],
  wheel: ['tires', 'wheels-and-rims', 'brake-chambers', 'brake-linings', 'drums-and-rotors', 'slack-adjusters', 'brake-adjustment', 'suspension', 'air-lines'],
  coupling: ['trailer-connections', 'air-lines', 'coupling-devices'],
  reservoirs: ['reservoirs', 'air-system', 'air-lines', 'fuel-system', 'frame'],
};

/** @param {string} station */
const sort = (station) => (/^\d/.test(station) ? 'wheel' : station.split(' ')[0]);

/** @param {string} id */
const words = (id) => id.replace(/-/g, ' ');

/** @param {import('./session.js').Session} s */
export function walk(s) {
  const here = sort(s.station);
  const unit = s.station.split(' ')[1] ?? '1';
  /** @param {string} verb @param {string} what @param {string} title */
  const does = (verb, what, title) => html`<button @click=${() => s.act(verb, what)}>${title}</button>`;
  return html`<div class="two">
    <section class="sheet" aria-label="Vehicle from above">
      ${vehicleDrawing(s.vehicle, {
        at: s.station,
        chocked: (wheel) => isChocked(s, wheel),
        says: (wheel) => measured(s, wheel),
        choose: (place) => s.act('stand', place),
      })}
    </section>
    <section class="sheet" aria-label="What can be done here">
      <h2>You are at: ${s.station}</h2>
      ${here === 'wheel' && !anyChock(s) ? html`<p class="care">No wheel is chocked. Do not reach behind a wheel before one is.</p>` : ''}
      <div class="row">
        ${does('listen', 'here', 'Listen')}
        ${here === 'wheel'
          ? html`${isChocked(s, s.station) ? does('unchock', s.station, 'Take the chocks away') : does('chock', s.station, 'Chock this wheel')}
              ${does('measure', s.station, 'Measure the push rod')} ${does('pry', s.station, 'Pry: free stroke')}`
          : ''}
        ${here === 'coupling'
          ? html`${does('couple-lines', unit, 'Couple both lines')} ${does('part-lines', unit, 'Part both lines')} ${does('part-supply-line', unit, 'Part the supply line')} ${does('part-control-line', unit, 'Part the service line')}`
          : ''}
        ${here === 'reservoirs' ? drains(s, Number(unit)).map((d) => html`${does('open-drain', d, 'Open drain: ' + d)} ${does('shut-drain', d, 'Shut drain: ' + d)}`) : ''}
        ${does('helper', s.helper ? 'away' : 'cab', s.helper ? 'Send the helper away' : 'Put a helper in the cab')}
      </div>
      <h3>Look at</h3>
      <div class="row">${(PARTS[here] ?? []).map((part) => does('look', part, words(part)))}</div>
      <h3>What you saw and heard last</h3>
      <ul class="seen" role="status">${s.events.filter((e) => e.kind === 'observed' || e.kind === 'hazard' || e.kind === 'refused').slice(-4).reverse().map((e) => html`<li class=${e.kind === 'observed' ? '' : 'bad'}>${e.text}</li>`)}</ul>
    </section>
  </div>`;
}

/** @param {import('./session.js').Session} s @param {number} unit */
function drains(s, unit) {
  if (unit > 1) return ['unit' + unit];
  const roles = s.vehicle.units[0].reservoirs ?? [];
  return roles.map((r) => r.role);
}

/** The last thing done with a wheel's chocks tells whether it is chocked. @param {any} s @param {string} wheel */
function isChocked(s, wheel) {
  for (let i = s.events.length - 1; i >= 0; i--) {
    if (s.events[i].text === 'chock: ' + wheel) return true;
    if (s.events[i].text === 'unchock: ' + wheel) return false;
  }
  return false;
}

/** @param {any} s */
function anyChock(s) {
  const chocked = new Set();
  for (const e of s.events) {
    if (e.text.startsWith('chock: ')) chocked.add(e.text.slice(7));
    if (e.text.startsWith('unchock: ')) chocked.delete(e.text.slice(9));
  }
  return chocked.size > 0;
}

/** The last stroke measured at a wheel. @param {any} s @param {string} wheel */
function measured(s, wheel) {
  for (let i = s.events.length - 1; i >= 0; i--) {
    const found = s.events[i].text.match(/^(?:push rod|free stroke) of (\w+) is (?:out )?(.*)$/);
    if (found && found[1] === wheel) return found[2];
  }
  return '';
}
