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

/** Logs are read in pieces of so many bytes, and travel with a record up to so many, packed. */
const PIECE = 1 << 18;
const MOST_PACKED = 6 * 1024 * 1024;

/** @param {ArrayBuffer} bytes */
async function packed(bytes) {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip'));
  const small = new Uint8Array(await new Response(stream).arrayBuffer());
  return small.length <= MOST_PACKED ? base64(small) : undefined;
}

/** @param {Uint8Array} bytes */
function base64(bytes) {
  let text = '';
  for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(text);
}

/** Reads a pressure log as the command line does. @param {any} core @param {string} name @param {ArrayBuffer} bytes */
function read(core, name, bytes) {
  const log = new core.Log(name);
  for (let at = 0; at < bytes.byteLength; at += PIECE) log.accept(new Int8Array(bytes, at, Math.min(PIECE, bytes.byteLength - at)));
  const shown = JSON.parse(log.finish());
  const curves = JSON.parse(log.channels()).map((/** @type {any} */ c) => ({ ...c, points: Float64Array.from(log.curve(c.id)) }));
  return { ...shown, readings: shown.readings ?? {}, curves };
}

/** What can be asked, beside the functions of the core itself. @type {Record<string, (core: any, ...args: any[]) => any>} */
const own = {
  /** Puts rule packs on the shelf. @param {any} core @param {{code: string, pack: any}[]} packs */
  addPacks(core, packs) {
    for (const { code, pack } of packs) core.addPack(code, JSON.stringify(pack));
  },
  /** Makes the truck of a scenario, or of a run that is to be done again: its number, and what its numbers mean. */
  open(core, document, isRun = false) {
    const made = new core.Truck(document, isRun);
    const id = next++;
    trucks.set(id, made);
    return { id, names: JSON.parse(made.names()), network: JSON.parse(made.network()) };
  },
  /** Does a run again for so long: the frames on the way, and whether the truck stands as it was left. */
  redo(core, id, seconds, every) {
    const it = truck(id);
    const frames = [];
    let done = false;
    for (let gone = 0; gone < seconds && !done; gone += every) {
      done = it.redo(every);
      frames.push(Float64Array.from(it.frame()));
    }
    return { done, frames, same: done && it.isSame() };
  },
  /** What a log shows, its curves, and the log itself as it travels. @param {any} core @param {File} file */
  async readLog(core, file) {
    const bytes = await file.arrayBuffer();
    const shown = read(core, file.name, bytes);
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    const sha256 = [...digest].map((b) => b.toString(16).padStart(2, '0')).join('');
    return { name: file.name, bytes: bytes.byteLength, sha256, packed: await packed(bytes), ...shown };
  },
  /** The curves of a log that travelled. @param {any} core @param {string} name @param {string} content */
  async unpackLog(core, name, content) {
    const small = Uint8Array.from(atob(content), (c) => c.charCodeAt(0));
    const stream = new Blob([small]).stream().pipeThrough(new DecompressionStream('gzip'));
    return read(core, name, await new Response(stream).arrayBuffer());
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
    return { frame: Float64Array.from(it.frame()), events, station: it.station(), helper: it.helper(), guided: it.guided(), hiss: listens ? it.hiss() : 0, spent };
  },
  /** Lets a guide lead: the plan it follows. */
  guide(core, id, place, day, psi) {
    return JSON.parse(truck(id).guide(place, day, psi));
  },
  guideTo(core, id, number) {
    truck(id).guideTo(number);
  },
  /** Lets the operator perform the next step: its frames, one every so often, and what stood in the way. */
  show(core, id, every) {
    const it = truck(id);
    const trouble = it.show(every);
    const frames = [];
    for (let i = 0; i < it.filmed(); i++) frames.push(Float64Array.from(it.film(i)));
    return { frames, trouble };
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
    const value = does ? await does(core, ...args) : core[name](...args);
    postMessage({ number, value });
  } catch (e) {
    postMessage({ number, error: e instanceof Error ? e.message : String(e) });
  }
});
