// @ts-check
/** An inspection that is being made: every change is on the device before the next is taken. */
import { put, remove } from '../kept.js';
import { askJson } from '../engine.js';

const MOST_UNDO = 50;

/** The present moment with the offset of this device. */
export function moment() {
  const now = new Date();
  const two = (n) => String(Math.floor(Math.abs(n))).padStart(2, '0');
  const offset = -now.getTimezoneOffset();
  return (
    now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate()) +
    'T' + two(now.getHours()) + ':' + two(now.getMinutes()) + ':' + two(now.getSeconds()) +
    (offset < 0 ? '-' : '+') + two(offset / 60) + ':' + two(offset % 60)
  );
}

/** Whether a place thinks in psi. @param {string} place */
export const inPsi = (place) => /^(US|CA)(-|$)/.test(place);

export class Draft {
  /** @param {any} data */
  constructor(data) {
    this.data = data;
    /** @type {Promise<any>} */
    this.saved = Promise.resolve();
  }

  /** The clock that watches run by, ms. */
  now() {
    return Date.now();
  }

  /** Whether a watch runs. */
  get timing() {
    return Object.values(this.data.entries).some((e) => e.started !== undefined);
  }

  /** @param {string} place @param {any} vehicle */
  static begin(place, vehicle) {
    return new Draft({
      id: crypto.randomUUID(),
      begun: moment(),
      place,
      vehicle,
      at: 0,
      entries: {},
      readings: {},
      wheels: {},
      parts: {},
      othersSeen: false,
      report: {},
      photos: [],
      undo: [],
    });
  }

  /** Changes something and keeps it. @param {(data: any) => void} change @param {boolean} [undoable] */
  change(change, undoable = true) {
    if (undoable) {
      const { undo, photos, ...before } = this.data;
      this.data.undo.push(JSON.stringify(before));
      if (this.data.undo.length > MOST_UNDO) this.data.undo.shift();
    }
    change(this.data);
    return this.keep();
  }

  /** Takes the last change back. */
  undo() {
    const before = this.data.undo.pop();
    if (before) this.data = { ...JSON.parse(before), undo: this.data.undo, photos: this.data.photos };
    return this.keep();
  }

  keep() {
    const copy = structuredClone(this.data);
    this.saved = this.saved.then(() => put('drafts', copy));
    return this.saved;
  }

  /** The inspection as a file would write it. */
  inspection() {
    const d = this.data;
    /** @type {any} */
    const parts = { ...d.parts };
    if (d.othersSeen) parts['all-others'] = 'ok';
    return {
      place: d.place,
      moment: d.signed ?? moment(),
      vehicle: d.vehicle,
      report: d.report,
      conditions: 'as-printed',
      readings: d.readings,
      wheels: d.wheels,
      ...(Object.keys(parts).length ? { parts } : {}),
    };
  }

  /** The judgement of what is entered so far. */
  judgement() {
    return askJson('judge', JSON.stringify(this.inspection()));
  }

  /** Makes a finished record of it; the draft goes once the record is on the device. @param {any} signature */
  async finish(signature) {
    const d = this.data;
    await this.change((data) => { data.signed = moment(); }, false);
    const record = {
      format: 'fandown-record/1',
      id: d.id,
      kind: 'inspection',
      made: this.data.signed,
      inspection: this.inspection(),
      signature,
      photos: d.photos,
    };
    const judgement = await this.judgement();
    await put('records', { id: d.id, state: 'here', record, verdict: judgement.verdict, vehicle: d.vehicle.name, place: d.place, made: this.data.signed });
    await remove('drafts', d.id);
    return record;
  }
}
