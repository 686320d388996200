// @ts-check
/** What comes with the program: rule packs, vehicles and exercises of the demonstration yard. */
import { ask } from './engine.js';
import { all } from './kept.js';

/** @param {string} name */
async function fetched(name) {
  const answer = await fetch('/data/' + name);
  if (!answer.ok) throw new Error('The file ' + name + ' could not be loaded (' + answer.status + '). Next: load the page again.');
  return answer.json();
}

/** @type {Map<string, Promise<any>>} */
const kept = new Map();

/** @param {string} name */
function once(name) {
  let found = kept.get(name);
  if (!found) {
    found = fetched(name);
    found.catch(() => kept.delete(name));
    kept.set(name, found);
  }
  return found;
}

/** Vehicles that came with the program, then one's own: a list of {id, name, vehicle}. @returns {Promise<any[]>} */
export const vehicles = async () => [...(await once('vehicles.json')), ...(await all('vehicles'))];

/** Exercises: a list of {id, title, scenario}. @returns {Promise<any[]>} */
export const scenarios = () => once('scenarios.json');

/** @type {Promise<any[]> | undefined} */
let shelved;

/**
 * Places that have rules: a list of {code, name, parent, checkedOn, pack}. The core knows their
 * packs once this is resolved.
 * @returns {Promise<any[]>}
 */
export function places() {
  shelved ??= once('packs.json').then(async (packs) => {
    await ask('addPacks', packs);
    return packs;
  });
  return shelved;
}

/** Today, as the rules write a day. */
export function today() {
  const now = new Date();
  /** @param {number} n */
  const two = (n) => String(n).padStart(2, '0');
  return now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate());
}
