// @ts-check
/** The core in a thread of its own: pages ask by name, and get an answer or an error. */
import { load } from '/core.wasm-runtime.mjs';

const ready = load('/core.wasm').then((module) => module.exports);

/** Trucks that pages hold, by number. @type {Map<number, any>} */
const trucks = new Map();
let next = 1;

/** @param {number} id */
function truck(id) {
  const found = trucks.get(id);
  if (!found) throw new Error('This truck is not there any more. Next: begin the exercise again.');
  return found;
}

/** What can be asked, beside the functions of the core itself. @type {Record<string, (core: any, ...args: any[]) => any>} */
const own = {
  /** Makes the truck of a scenario: its number, and what its numbers mean. */
  open(core, scenario) {
    const made = new core.Truck(scenario);
    const id = next++;
    trucks.set(id, made);
    return { id, names: JSON.parse(made.names()) };
  },
  close(core, id) {
    trucks.delete(id);
  },
  act(core, id, verb, value) {
    return truck(id).act(verb, value);
  },
  /** Lets time pass and tells what came of it; how loud air escapes only if somebody listens. */
  step(core, id, seconds, from, listens) {
    const it = truck(id);
    const began = performance.now();
    it.advance(seconds);
    const spent = performance.now() - began;
    const events = it.eventCount() > from ? JSON.parse(it.events(from)) : [];
    return { frame: Float64Array.from(it.frame()), events, station: it.station(), hiss: listens ? it.hiss() : 0, spent };
  },
  perform(core, id, script) {
    truck(id).perform(script);
  },
  state(core, id, key, said) {
    truck(id).state(key, said);
  },
  run(core, id, title) {
    return truck(id).run(title);
  },
  fingerprint(core, id) {
    return truck(id).fingerprint();
  },
};

addEventListener('message', async ({ data }) => {
  const { number, name, args } = data;
  try {
    const core = await ready;
    const does = own[name];
    const value = does ? does(core, ...args) : core[name](...args);
    postMessage({ number, value });
  } catch (e) {
    postMessage({ number, error: e instanceof Error ? e.message : String(e) });
  }
});
