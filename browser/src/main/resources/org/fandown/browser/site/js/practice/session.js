// @ts-check
/** One exercise that runs: the truck in the core, its numbers, and who wants to know of each frame. */
import { ask } from '../engine.js';

/** Longest time a frame lets pass, s: a page that was hidden does not run on meanwhile. */
const MOST_STEP = 0.25;

/** Frames whose cost is averaged. */
const LAST = 120;

export class Session {
  /** @param {any} exercise {id, title, told, scenario} @param {number} id @param {{name: string, unit: string}[]} names */
  constructor(exercise, id, names) {
    this.exercise = exercise;
    this.vehicle = exercise.scenario.vehicle;
    this.id = id;
    this.names = names;
    this.index = new Map(names.map((n, i) => [n.name, i]));
    this.frame = new Float64Array(names.length);
    /** @type {{seconds: number, kind: string, text: string}[]} */
    this.events = [];
    /** Frames of the past, for trace and replay. @type {{seconds: number, frame: Float64Array}[]} */
    this.past = [];
    this.station = 'front';
    /** How loud air escapes where one stands; 1 is just heard. */
    this.hiss = 0;
    /** Whether anybody wants to hear it. */
    this.listens = false;
    this.refused = '';
    this.pedal = 0;
    this.lap = 0;
    this.running = true;
    /** @type {number[]} */
    this.costs = [];
    this.last = 0;
    /** @type {(() => void) | undefined} */
    this.draw = undefined;
  }

  /** @param {any} exercise */
  static async open(exercise) {
    const { id, names } = await ask('open', JSON.stringify(exercise.scenario));
    const session = new Session(exercise, id, names);
    requestAnimationFrame((now) => session.next(now));
    return session;
  }

  /** A number by its name, 0 if this vehicle has it not. @param {string} name */
  value(name) {
    return this.frame[this.index.get(name) ?? -1] ?? 0;
  }

  /** @param {string} name */
  on(name) {
    return this.value(name) > 0;
  }

  /** @param {string} name */
  has(name) {
    return this.index.has(name);
  }

  get time() {
    return this.value('time');
  }

  get tows() {
    return this.vehicle.units.length > 1;
  }

  /** Does something, in the words of a script; why it was refused is shown. @param {string} verb @param {string} what */
  async act(verb, what) {
    try {
      this.refused = await ask('act', this.id, verb, what);
    } catch (e) {
      this.refused = e instanceof Error ? e.message : String(e);
    }
    return this.refused === '';
  }

  /** Moves the brake pedal. @param {number} travel percent */
  foot(travel) {
    this.pedal = travel;
    return this.act('foot-brake', travel + ' %');
  }

  /** The share of a frame of 1/60 s that the simulation takes, on average of the last frames. */
  get share() {
    const sum = this.costs.reduce((a, b) => a + b, 0);
    return this.costs.length ? sum / this.costs.length / (1000 / 60) : 0;
  }

  /** @param {number} now */
  async next(now) {
    if (!this.running) return;
    const seconds = this.last ? Math.min(MOST_STEP, (now - this.last) / 1000) : 0;
    this.last = now;
    const got = await ask('step', this.id, seconds, this.events.length, this.listens);
    if (!this.running) return;
    this.frame = got.frame;
    this.station = got.station;
    this.hiss = got.hiss;
    this.events.push(...got.events);
    this.costs.push(got.spent);
    if (this.costs.length > LAST) this.costs.shift();
    this.keep();
    this.draw?.();
    requestAnimationFrame((at) => this.next(at));
  }

  /** Keeps a frame twice a second. */
  keep() {
    const before = this.past[this.past.length - 1];
    if (before && this.time - before.seconds < 0.5) return;
    this.past.push({ seconds: this.time, frame: this.frame });
  }

  /** The same exercise as it stood at a moment of the past. @param {number} seconds */
  at(seconds) {
    const found = this.past.findLast((p) => p.seconds <= seconds) ?? this.past[0];
    return Object.create(this, { frame: { value: found?.frame ?? this.frame } });
  }

  /** Says something of what is done and found. @param {'begin' | 'record' | 'conclude'} key @param {any} said */
  async state(key, said) {
    try {
      await ask('state', this.id, key, JSON.stringify(said));
      this.refused = '';
      return true;
    } catch (e) {
      this.refused = e instanceof Error ? e.message : String(e);
      return false;
    }
  }

  /** Stands still from now on; what was is kept for the replay. */
  pause() {
    this.running = false;
  }

  close() {
    this.running = false;
    return ask('close', this.id);
  }
}

/** Minutes and seconds. @param {number} seconds */
export function clock(seconds) {
  const s = Math.floor(seconds);
  return Math.floor(s / 60) + ':' + String(s % 60).padStart(2, '0');
}
