// @ts-check
/** An inspection that is being made: every change is on the device before the next is taken. */
import { alter, finishDraft, get, put, remove } from '../kept.js';
import { askJson } from '../engine.js';

const MOST_UNDO = 50;

/** The present moment with the offset of this device. */
export function moment() {
  const now = new Date();
  const two = (/** @type {number} */ n) => String(Math.floor(Math.abs(n))).padStart(2, '0');
  const offset = -now.getTimezoneOffset();
  return (
    now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate()) +
    'T' + two(now.getHours()) + ':' + two(now.getMinutes()) + ':' + two(now.getSeconds()) +
    (offset < 0 ? '-' : '+') + two(offset / 60) + ':' + two(offset % 60)
  );
}

/** Whether a place thinks in psi. @param {string} place */
export const inPsi = (place) => /^(US|CA)(-|$)/.test(place);

/** The draft is not there any more. */
class Gone extends Error {
  constructor() {
    super('This inspection was finished or thrown away in another window. Next: look under Records.');
  }
}

/** What the present draft is; refused where it is gone. @param {any} draft */
function there(draft) {
  if (!draft) throw new Gone();
  return draft;
}

export class Draft {
  /** @param {any} data */
  constructor(data) {
    this.data = data;
    /** Why the last change is in this window alone, empty if it is on the device. */
    this.trouble = '';
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
  static async begin(place, vehicle) {
    const data = {
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
      leftOut: [],
      report: {},
      photos: [],
      undo: [],
    };
    await put('drafts', data);
    return new Draft(data);
  }

  /**
   * Changes something in the draft that is on the device, whichever window wrote it last, so that
   * nothing entered in two windows is lost.
   * @param {(data: any) => void} change @param {boolean} [undoable]
   */
  async change(change, undoable = true) {
    const made = (/** @type {any} */ now) => {
      if (undoable) {
        const { undo, photos, log, at, ...before } = now;
        now.undo.push(JSON.stringify(before));
        if (now.undo.length > MOST_UNDO) now.undo.shift();
      }
      change(now);
      return now;
    };
    try {
      this.data = await alter('drafts', this.data.id, (now) => made(there(now)));
      this.trouble = '';
    } catch (e) {
      this.trouble = e instanceof Error ? e.message : String(e);
      if (!(e instanceof Gone)) made(this.data);
    }
  }

  /** Takes the last change back. */
  undo() {
    return this.change((data) => {
      const before = data.undo.pop();
      if (before) Object.assign(data, JSON.parse(before));
    }, false);
  }

  /** Takes over what another window changed. */
  async again() {
    const now = await get('drafts', this.data.id);
    if (now) this.data = now;
    else this.trouble = new Gone().message;
  }

  /** Attaches a log that was read. @param {any} read */
  async attach({ packed, curves, ...log }) {
    await put('logs', { id: this.data.id, packed, curves });
    await this.change((d) => { d.log = log; d.leftOut = []; }, false);
  }

  /** Takes the log out again. */
  async detach() {
    await this.change((d) => { delete d.log; }, false);
    await remove('logs', this.data.id);
  }

  /** The curves of the log, to be drawn. @returns {Promise<any>} */
  async curves() {
    return (await get('logs', this.data.id))?.curves ?? [];
  }

  /** What the log says of a check, nothing where that is entered by hand. @param {string} id */
  fromLog(id) {
    return this.data.leftOut?.includes(id) ? undefined : this.data.log?.readings[id];
  }

  /** Asks the server what earlier reports found wrong and nobody settled; without it, what is known stays. */
  async learnEarlier() {
    const { plate = this.data.vehicle.name, 'trailer-plates': trailers = '' } = this.data.report;
    const plates = [plate, ...trailers.split(/[,;/]/)].map((p) => p.trim()).filter(Boolean);
    try {
      const answer = await fetch('/api/defects?' + plates.map((p) => 'plate=' + encodeURIComponent(p)).join('&'));
      if (!answer.ok) return;
      const { defects } = await answer.json();
      if (JSON.stringify(defects) !== JSON.stringify(this.data.earlier ?? [])) await this.change((d) => { d.earlier = defects; }, false);
    } catch {
      // The server adds what it knows when the record comes.
    }
  }

  /** The judgement of what is entered so far. */
  judgement() {
    return judged(this.data);
  }

  /** Makes a finished record of it, once, whatever other windows do. @param {any} signature */
  async finish(signature) {
    const signed = (/** @type {any} */ d) => ({ ...d, signed: moment(), report: { ...d.report, statement: true, signed: true } });
    const { verdict } = await judged(signed(this.data));
    await finishDraft(this.data.id, (now, log) => recordOf(signed(there(now)), signature, verdict, log));
  }
}

/** @param {any} d */
const judged = (d) => askJson('judge', JSON.stringify(inspectionOf(d)));

/** The inspection as a file would write it. @param {any} d */
function inspectionOf(d) {
  /** @type {any} */
  const parts = { ...d.parts };
  if (d.othersSeen) parts['all-others'] = 'ok';
  const notes = Object.values(d.defectNotes ?? {}).map((n) => n.about + ': ' + n.text);
  const logged = Object.fromEntries(Object.entries(d.log?.readings ?? {}).filter(([check]) => !d.leftOut?.includes(check)));
  return {
    place: d.place,
    moment: d.signed ?? moment(),
    vehicle: d.vehicle,
    report: d.report,
    conditions: 'as-printed',
    readings: { ...d.readings, ...logged },
    wheels: d.wheels,
    ...(Object.keys(parts).length ? { parts } : {}),
    ...(notes.length ? { notes } : {}),
    ...(d.earlier?.length ? { 'earlier-defects': d.earlier } : {}),
    ...(d.log?.trace.simulated ? { simulated: true } : {}),
  };
}

/** What is kept and sent of a finished inspection. @param {any} d @param {any} signature @param {string} verdict @param {any} log */
function recordOf(d, signature, verdict, log) {
  const { readings, used, ...attached } = d.log ?? {};
  const record = {
    format: 'fandown-record/1',
    id: d.id,
    kind: 'inspection',
    made: d.signed,
    inspection: inspectionOf(d),
    signature,
    photos: d.photos,
    ...(d.log ? { log: { ...attached, ...(log?.packed ? { packed: log.packed } : {}) } } : {}),
  };
  return { id: d.id, state: 'here', record, verdict, vehicle: d.vehicle.name, place: d.place, made: d.signed };
}
