// @ts-check
/** An exercise is done in one window at a time: another window says so, and can take it over. */

/** How long a window that is asked may take to let go, and one that was closed to be gone, ms. */
const PATIENCE = 3000;
const CLOSING = 1500;

const asking = new BroadcastChannel('fandown-practice');

/** How an exercise goes from this window: asked for, and to be kept first; or lost to one that did not wait. @typedef {'given' | 'taken'} Way */

export class Hold {
  /** @param {string} id of the exercise @param {() => void} free */
  constructor(id, free) {
    this.free = free;
    this.over = false;
    /** Told once when another window wants it, or has it. @type {(way: Way) => Promise<void>} */
    this.goes = async () => {};
    this.heard = (/** @type {MessageEvent} */ { data }) => data === id && this.go('given');
    asking.addEventListener('message', this.heard);
  }

  /**
   * Takes hold of an exercise that no other window has.
   * @param {string} id @param {LockOptions} [how]
   * @returns {Promise<Hold | undefined>} nothing where another window has it
   */
  static take(id, how = { signal: AbortSignal.timeout(CLOSING) }) {
    if (!navigator.locks) return Promise.resolve(new Hold(id, () => {}));
    return new Promise((resolve) => {
      /** @type {Hold | undefined} */
      let mine;
      navigator.locks
        .request('fandown-practice-' + id, how, () => new Promise((free) => resolve((mine = new Hold(id, () => free(undefined))))))
        .catch(() => (mine ? mine.go('taken') : resolve(undefined)));
    });
  }

  /** Takes hold of an exercise that another window has, which keeps it first if it answers. @param {string} id */
  static async takeOver(id) {
    asking.postMessage(id);
    return (await Hold.take(id, { signal: AbortSignal.timeout(PATIENCE) })) ?? Hold.take(id, { steal: true });
  }

  /** @param {Way} way */
  async go(way) {
    if (this.over) return;
    this.over = true;
    await this.goes(way);
    this.end();
  }

  end() {
    this.over = true;
    asking.removeEventListener('message', this.heard);
    this.free();
  }
}
