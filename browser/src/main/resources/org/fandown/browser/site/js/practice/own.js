// @ts-check
/** An exercise of one's own: any vehicle, any place, faults by chance, by an instructor, or none. */
import { html } from '/lib/lit-html/lit-html.js';
import { ask, askJson } from '../engine.js';

/** How often another fault is tried where this vehicle cannot have one there. */
const TRIES = 20;

/** @param {number} n */
const draw = (n) => crypto.getRandomValues(new Uint32Array(1))[0] % n;

export class Own {
  /** @param {any[]} places @param {any[]} vehicles @param {(exercise: any, mode: string) => Promise<void>} begin */
  constructor(places, vehicles, begin) {
    this.places = places;
    this.vehicles = vehicles;
    this.begin = begin;
    this.vehicle = vehicles[0].id;
    this.place = 'CA-ON';
    this.start = '0 psi';
    this.hidden = 'chance';
    /** @type {any[]} */
    this.faults = [];
    /** @type {Set<string>} */
    this.chosen = new Set();
    this.trouble = '';
  }

  get file() {
    return this.vehicles.find((v) => v.id === this.vehicle).vehicle;
  }

  /** The faults this vehicle can have. */
  async learn() {
    this.faults = (await askJson('faults', JSON.stringify(this.file))).faults;
    // What was chosen while the answer was on its way stays, as far as this vehicle has it.
    for (const id of this.chosen) if (!this.faults.some((f) => f.fault === id)) this.chosen.delete(id);
  }

  /** @param {any} fault @param {string[]} wheels */
  written(fault, wheels) {
    if (fault.at === 'wheel') return { fault: fault.fault, at: wheels[draw(wheels.length)] };
    if (fault.at === 'unit') return { fault: fault.fault, at: 'unit' + (2 + draw(this.file.units.length - 1)) };
    return { fault: fault.fault };
  }

  /** @param {any[]} faults */
  scenario(faults) {
    return {
      title: this.vehicles.find((v) => v.id === this.vehicle).name,
      told: this.hidden === 'none' ? 'Nothing is wrong with it, they say.' : 'Find out whether it may move.',
      place: this.place,
      vehicle: this.file,
      start: { pressure: this.start },
      faults,
      seed: draw(1_000_000_000),
    };
  }

  /** Makes the exercise and begins it; by chance one or two faults are hidden. @param {string} mode */
  async make(mode) {
    this.trouble = '';
    const { wheels } = await askJson('parts', JSON.stringify(this.file));
    const count = this.hidden === 'chance' ? 1 + draw(2) : 0;
    const faults = [];
    try {
      for (const id of this.hidden === 'instructor' ? this.chosen : []) {
        faults.push(await this.fitting(() => this.faults.find((f) => f.fault === id), wheels));
      }
      for (let i = 0; i < count; i++) {
        const one = await this.fitting(() => this.faults[draw(this.faults.length)], wheels);
        if (!faults.some((f) => f.fault === one.fault)) faults.push(one);
      }
      const scenario = this.scenario(faults);
      await this.begin({ id: 'own', title: scenario.title, told: scenario.told, scenario }, mode);
    } catch (e) {
      this.trouble = e instanceof Error ? e.message : String(e);
    }
  }

  /** A fault at a place where this vehicle can have it. @param {() => any} pick @param {string[]} wheels */
  async fitting(pick, wheels) {
    let last;
    for (let i = 0; i < TRIES; i++) {
      const fault = this.written(pick(), wheels);
      try {
        const { id } = await ask('open', JSON.stringify(this.scenario([fault])));
        await ask('close', id);
        return fault;
      } catch (e) {
        last = e;
      }
    }
    throw last;
  }
}

/** @param {Own} o @param {string[][]} modes how it can be done @param {() => void} redraw */
export function own(o, modes, redraw) {
  /** @param {keyof Own} key @param {string} label @param {string[][]} from @param {() => any} [then] */
  const choice = (key, label, from, then) =>
    html`<label>${label}<select name=${key} @change=${async (/** @type {any} */ e) => { Object.assign(o, { [key]: e.target.value }); await then?.(); redraw(); }}>
      ${from.map(([value, text]) => html`<option value=${value} ?selected=${value === o[key]}>${text}</option>`)}</select></label>`;
  return html`<section class="sheet" aria-label="Your own exercise">
    <h2>Your own exercise</h2>
    <div class="row">
      ${choice('vehicle', 'Vehicle', o.vehicles.map((v) => [v.id, v.name]), () => o.learn())}
      ${choice('place', 'Rules of', o.places.map((p) => [p.code, p.name]))}
      ${choice('start', 'Found with', [['0 psi', 'no air'], ['60 psi', '60 psi'], ['100 psi', '100 psi']])}
      ${choice('hidden', 'Hidden faults', [['chance', 'by chance'], ['instructor', 'chosen by an instructor'], ['none', 'none']], () => o.faults.length || o.learn())}
    </div>
    ${o.hidden === 'instructor' ? faults(o, redraw) : ''}
    <p class="row">${modes.map(([mode, title], i) => html`<button class=${i ? '' : 'main'} @click=${async () => { if (!o.faults.length) await o.learn(); await o.make(mode); redraw(); }}>${title}</button>`)}</p>
    ${o.trouble ? html`<p class="trouble" role="alert">${o.trouble}</p>` : ''}
  </section>`;
}

/** What an instructor hides, by the part of the air system it is in. @param {Own} o @param {() => void} redraw */
function faults(o, redraw) {
  const groups = [...new Set(o.faults.map((f) => f.group))];
  /** @param {string} id */
  const flip = (id) => {
    if (!o.chosen.delete(id)) o.chosen.add(id);
    redraw();
  };
  return html`<h3>Faults to hide: ${o.chosen.size}</h3><p>The learner should look away now.</p>
    ${groups.map((group) => {
      const here = o.faults.filter((f) => f.group === group);
      const taken = here.filter((f) => o.chosen.has(f.fault)).length;
      return html`<details class="group"><summary>${group.charAt(0).toUpperCase() + group.slice(1).replace(/-/g, ' ')} <span class="faint">${taken ? taken + ' of ' : ''}${here.length}</span></summary>
        <div class="row">${here.map((f) => html`<button class="small" aria-pressed=${o.chosen.has(f.fault)} @click=${() => flip(f.fault)}>${f.title}</button>`)}</div></details>`;
    })}`;
}
