// @ts-check
/** What was done last with each control and at each wheel, as the events of a run tell it. */

export class Deeds {
  constructor() {
    /** @type {Map<string, string>} */
    this.last = new Map();
    /** @type {Set<string>} */
    this.chocked = new Set();
    /** What was measured last at each wheel. @type {Map<string, string>} */
    this.measured = new Map();
  }

  /** @param {{kind: string, text: string}[]} events */
  add(events) {
    for (const { kind, text } of events) {
      if (kind === 'action') this.done(text);
      const found = kind === 'observed' && text.match(/^(?:push rod|free stroke) of (\w+) is (?:out )?(.*)$/);
      if (found) this.measured.set(found[1], found[2]);
    }
  }

  /** @param {string} text such as {@code chock: 2L} */
  done(text) {
    const colon = text.indexOf(': ');
    const [verb, what] = [text.slice(0, colon), text.slice(colon + 2)];
    this.last.set(verb, what);
    if (verb === 'chock') this.chocked.add(what);
    if (verb === 'unchock') this.chocked.delete(what);
  }
}
