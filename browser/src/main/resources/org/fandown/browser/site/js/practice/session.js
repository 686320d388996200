// @ts-check
/** One exercise that runs: the truck in the core, its numbers, and who wants to know of each frame. */
import { ask } from '../engine.js';
import { Deeds } from './deeds.js';
import { Past } from './past.js';

/** Longest time a frame lets pass, s: a page that was hidden does not run on meanwhile. */
const MOST_STEP = 0.25;

/** A tick of the truck, s. */
const TICK = 0.02;

/** Frames whose cost is averaged. */
const LAST = 600;

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
    this.deeds = new Deeds();
    /** For trace and replay. */
    this.past = new Past();
    this.station = 'front';
    this.helper = false;
    /** How loud air escapes where one stands; 1 is just heard. */
    this.hiss = 0;
    /** Whether anybody wants to hear it. */
    this.listens = false;
    this.refused = '';
    /** Whether the pedal is held by a finger or a key. */
    this.pressed = false;
    this.lap = 0;
    this.running = true;
    /** @type {number[]} */
    this.costs = [];
    this.last = 0;
    this.owed = 0;
    /** How its air system is laid out. @type {{vessels: any[], ways: any[]}} */
    this.network = { vessels: [], ways: [] };
    /** The plan that a guide leads through. @type {any} */
    this.plan = undefined;
    /** Where the guide is. @type {any} */
    this.guided = undefined;
    this.guidedText = '';
    /** @type {(() => void) | undefined} */
    this.draw = undefined;
    /** Told at once of everything that should not be lost. @type {(() => Promise<any>) | undefined} */
    this.changed = undefined;
  }

  /** Lets time pass from now on. */
  begin() {
    requestAnimationFrame((now) => this.next(now));
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
    const done = this.refused === '';
    this.changed?.();
    return done;
  }

  /** Moves the brake pedal. @param {number} travel percent */
  foot(travel) {
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
    const passed = this.last ? Math.min(MOST_STEP, (now - this.last) / 1000) : 0;
    this.last = now;
    if (!this.past.wind(passed)) this.owed += passed;
    // The truck takes whole ticks; what is left of one waits for the next frame.
    const seconds = Math.floor(this.owed / TICK) * TICK;
    this.owed -= seconds;
    if (!(await this.look(seconds))) return;
    this.draw?.();
    requestAnimationFrame((at) => this.next(at));
  }

  /** What is seen now: the truck, or what is watched. */
  get seen() {
    return this.past.film ? this.at(this.past.film.now) : this;
  }

  /** Lets time pass and takes in what came of it; not if it was closed meanwhile. @param {number} seconds */
  async look(seconds) {
    const got = await ask('step', this.id, seconds, this.events.length, this.listens);
    if (!this.running) return false;
    this.station = got.station;
    this.helper = got.helper;
    this.hiss = got.hiss;
    if (got.guided !== this.guidedText) {
      this.guidedText = got.guided;
      this.guided = JSON.parse(got.guided);
    }
    this.events.push(...got.events);
    this.deeds.add(got.events);
    this.costs.push(got.spent);
    if (this.costs.length > LAST) this.costs.shift();
    this.keep(got.frame);
    return true;
  }

  /** Takes a frame for what is now. @param {Float64Array<ArrayBuffer>} frame @param {boolean} [always] whether it is kept however soon it follows the one before */
  keep(frame, always = false) {
    this.frame = frame;
    this.past.keep(this.time, frame, always);
  }

  /** The same exercise as it stood at a moment of the past. @param {number} seconds */
  at(seconds) {
    return Object.create(this, { frame: { value: this.past.at(seconds) ?? this.frame } });
  }

  /** Says something of what is done and found. @param {'begin' | 'record' | 'conclude'} key @param {any} said */
  async state(key, said) {
    try {
      await ask('state', this.id, key, JSON.stringify(said));
      this.refused = '';
      this.changed?.();
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
