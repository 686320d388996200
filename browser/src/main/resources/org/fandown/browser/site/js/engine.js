// @ts-check
/** The page's side of the core: every question is answered later, from the worker. */

/** @type {Worker | undefined} */
let worker;
let number = 0;
/** @type {Map<number, {resolve: Function, reject: Function}>} */
const open = new Map();

/** Starts the core, if it does not run yet, so that the first question need not wait for it. */
export function begin() {
  if (worker) return worker;
  worker = new Worker('/js/worker.js', { type: 'module' });
  worker.addEventListener('message', ({ data }) => {
    const asked = open.get(data.number);
    open.delete(data.number);
    if (data.error === undefined) asked?.resolve(data.value);
    else asked?.reject(new Error(data.error));
  });
  worker.addEventListener('error', (event) => {
    const reason = new Error('The core could not be started: ' + (event.message || 'no reason given') + '. Next: load the page again.');
    for (const asked of open.values()) asked.reject(reason);
    open.clear();
    worker = undefined;
  });
  return worker;
}

/**
 * Asks the core something.
 * @param {string} name a function of the worker or of the core
 * @param {...any} args
 * @returns {Promise<any>}
 */
export function ask(name, ...args) {
  const to = begin();
  const mine = ++number;
  return new Promise((resolve, reject) => {
    open.set(mine, { resolve, reject });
    to.postMessage({ number: mine, name, args });
  });
}

/** The parsed answer of a function that gives JSON. @param {string} name @param {...any} args */
export async function askJson(name, ...args) {
  return JSON.parse(await ask(name, ...args));
}
