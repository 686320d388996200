// @ts-check
/** What the needles showed so far, and a stretch of it that is watched. */

/** A frame is kept so often, s. */
export const EVERY = 0.5;

/** How many times as fast a stretch is watched at first. */
const RATE = 4;

export class Past {
  constructor() {
    /** @type {{seconds: number, frame: Float64Array}[]} */
    this.frames = [];
    /** What is watched. @type {{from: number, to: number, now: number, rate: number} | undefined} */
    this.film = undefined;
  }

  /** Keeps a frame, twice a second or always. @param {number} seconds @param {Float64Array<ArrayBuffer>} frame @param {boolean} always */
  keep(seconds, frame, always) {
    const before = this.frames[this.frames.length - 1];
    if (!always && before && seconds - before.seconds < EVERY - 0.01) return;
    this.frames.push({ seconds, frame });
  }

  /** The frame at a moment. @param {number} seconds */
  at(seconds) {
    return (this.frames.findLast((p) => p.seconds <= seconds) ?? this.frames[0])?.frame;
  }

  /** Lets a stretch be watched; time stands meanwhile. @param {number} from s @param {number} to s */
  watch(from, to) {
    if (to - from >= EVERY) this.film = { from, to, now: from, rate: RATE };
  }

  /** Goes on in what is watched. @param {number} passed s @returns {boolean} whether something is watched */
  wind(passed) {
    if (!this.film) return false;
    this.film.now += passed * this.film.rate;
    if (this.film.now >= this.film.to) this.film = undefined;
    return true;
  }
}
