// @ts-check
/** The short form of a vehicle: kind, axles, chambers, adjusters, reservoirs. */
import { html } from '/lib/lit-html/lit-html.js';

const CHAMBERS = ['clamp 9', 'clamp 12', 'clamp 16', 'clamp 16 long', 'clamp 20', 'clamp 20 long', 'clamp 24', 'clamp 24 long', 'clamp 30', 'clamp 30 long', 'clamp 36'];
const BRAKES = [['drum', 'drum'], ['disc', 'disc']];
const ADJUSTERS = [['automatic', 'automatic'], ['manual', 'manual']];
const MOST_AXLES = 4;

/** What the form begins with. */
export const empty = () => ({
  name: '', kind: 'truck', built: '', brake: 'drum', adjuster: 'automatic',
  steer: 1, steerChamber: 'clamp 20', drive: 1, driveChamber: 'clamp 30',
  supply: 'supply-reservoir', supplyVolume: '', primary: '', secondary: '',
  trailers: 0, trailerAxles: 2, trailerChamber: 'clamp 30', trailerVolume: '',
});

/** @typedef {ReturnType<typeof empty>} Form */

/** @param {string} role @param {string} volume */
const reservoir = (role, volume) => (volume.trim() ? [{ role, volume: /[a-z]/i.test(volume) ? volume.trim() : volume.trim() + ' L' }] : []);

/** @param {Form} f @param {string} position @param {string} chamber @param {boolean} spring */
const axle = (f, position, chamber, spring) => ({
  position, brake: f.brake, chamber, 'spring-brake': spring, adjuster: f.brake === 'disc' ? 'internal' : f.adjuster,
});

/** @param {number} n @param {() => any} make */
const times = (n, make) => Array.from({ length: n }, make);

/** The vehicle as a file would write it. @param {Form} f */
export function vehicleOf(f) {
  const reservoirs = [...(f.supply === 'supply-reservoir' ? reservoir('supply', f.supplyVolume) : []), ...reservoir('primary', f.primary), ...reservoir('secondary', f.secondary)];
  const powered = {
    kind: f.kind,
    id: 'U1',
    ...(f.built ? { built: f.built } : {}),
    supply: f.supply,
    ...(reservoirs.length ? { reservoirs } : {}),
    axles: [...times(f.steer, () => axle(f, 'steer', f.steerChamber, false)), ...times(f.drive, () => axle(f, 'drive', f.driveChamber, true))],
  };
  const trailer = (/** @type {number} */ i) => ({
    kind: 'trailer',
    id: 'U' + (i + 2),
    ...(f.trailerVolume.trim() ? { reservoirs: reservoir('trailer', f.trailerVolume) } : {}),
    axles: times(f.trailerAxles, () => axle(f, 'trailer', f.trailerChamber, true)),
  });
  return {
    name: f.name.trim(),
    use: f.kind === 'bus' ? 'passenger' : 'property',
    units: [powered, ...(f.kind === 'tractor' ? Array.from({ length: f.trailers }, (_, i) => trailer(i)) : [])],
  };
}

/** @param {Form} f @param {() => void} redraw @param {() => void} keep */
export function form(f, redraw, keep) {
  /** @type {any} */
  const values = f;
  /** @param {string} key @param {string} label @param {string[][]} from */
  const choice = (key, label, from) => html`<label>${label}<select name=${key} @change=${(/** @type {any} */ e) => { values[key] = typeof values[key] === 'number' ? Number(e.target.value) : e.target.value; redraw(); }}>
    ${from.map(([value, text]) => html`<option value=${value} ?selected=${value === String(values[key])}>${text}</option>`)}</select></label>`;
  /** @param {string} key @param {string} label @param {string} hint */
  const text = (key, label, hint) => html`<label>${label}<input name=${key} autocomplete="off" placeholder=${hint} .value=${values[key]} @change=${(/** @type {any} */ e) => { values[key] = e.target.value; redraw(); }} /></label>`;
  const chambers = CHAMBERS.map((c) => [c, c]);
  /** @param {number} from @param {number} to */
  const numbers = (from, to) => Array.from({ length: to - from + 1 }, (_, i) => [String(from + i), String(from + i)]);
  return html`<div class="row">${text('name', 'Name of the vehicle', 'Gravel truck 12')} ${choice('kind', 'Kind', [['truck', 'truck'], ['tractor', 'tractor'], ['bus', 'bus']])} ${text('built', 'Built, if known', '2019-03')}</div>
    <div class="row">${choice('brake', 'Brakes', BRAKES)} ${f.brake === 'drum' ? choice('adjuster', 'Slack adjusters', ADJUSTERS) : ''}</div>
    <div class="row">${choice('steer', 'Steer axles', numbers(1, 2))} ${choice('steerChamber', 'Their chambers', chambers)}</div>
    <div class="row">${choice('drive', 'Drive axles', numbers(1, MOST_AXLES))} ${choice('driveChamber', 'Their chambers, with spring brakes', chambers)}</div>
    <div class="row">${choice('supply', 'Air comes through', [['supply-reservoir', 'a supply (wet) reservoir'], ['integrated-dryer-unit', 'an integrated dryer unit']])}
      ${f.supply === 'supply-reservoir' ? text('supplyVolume', 'Supply reservoir, if known', '23 L or 1400 in3') : ''}
      ${text('primary', 'Primary reservoir, if known', '39 L')} ${text('secondary', 'Secondary reservoir, if known', '33 L')}</div>
    ${f.kind === 'tractor' ? html`<div class="row">${choice('trailers', 'Trailers', numbers(0, 1))}
      ${f.trailers ? html`${choice('trailerAxles', 'Axles of the trailer', numbers(1, MOST_AXLES))} ${choice('trailerChamber', 'Their chambers, with spring brakes', chambers)} ${text('trailerVolume', 'Trailer reservoir, if known', '48 L')}` : ''}</div>` : ''}
    <p><button type="button" class="main" @click=${keep}>Keep this vehicle</button></p>`;
}
