// @ts-check
/** Exercises that are not finished: each is kept on the device as it goes on, and can be taken up again. */
import { all, get, put, remove } from '../kept.js';
import { moment } from '../yard/draft.js';

/** How far an exercise that nobody touches may go on before it is kept again, s. */
const EVERY = 2;

export class Unfinished {
  /** @param {any} data {id, begun, exercise, mode, place, run, notes, lap, guide} */
  constructor(data) {
    this.data = data;
    this.keptAt = 0;
    /** @type {Promise<void> | undefined} */
    this.busy = undefined;
    this.again = false;
    this.over = false;
    this.trouble = '';
  }

  /** @param {any} exercise @param {'guided' | 'free' | 'test'} mode @param {string} place */
  static async begin(exercise, mode, place) {
    const made = new Unfinished({ id: crypto.randomUUID(), begun: moment(), exercise, mode, place });
    await put('practices', made.data);
    return made;
  }

  /** @param {string} id */
  static async find(id) {
    const kept = await get('practices', id);
    return kept && new Unfinished(kept);
  }

  static list() {
    return all('practices');
  }

  /** Keeps it now; whoever asks while it is being kept waits until their change is kept too. @param {() => Promise<any>} state what to keep */
  keep(state) {
    if (this.over) return Promise.resolve();
    if (this.busy) {
      this.again = true;
      return this.busy;
    }
    this.busy = this.write(state).finally(() => { this.busy = undefined; });
    return this.busy;
  }

  /** @param {() => Promise<any>} state */
  async write(state) {
    do {
      this.again = false;
      try {
        const data = { ...this.data, ...(await state()) };
        if (this.over) return;
        await put('practices', data);
        this.data = data;
        this.trouble = '';
      } catch (e) {
        this.trouble = e instanceof Error ? e.message : String(e);
      }
    } while (this.again);
  }

  /** Keeps it every so often. @param {number} seconds the clock of the exercise @param {() => Promise<any>} state */
  keepBy(seconds, state) {
    if (seconds - this.keptAt < EVERY) return;
    this.keptAt = seconds;
    this.keep(state);
  }

  /** It is finished, or thrown away. */
  async forget() {
    this.over = true;
    await this.busy;
    await remove('practices', this.data.id);
  }
}
