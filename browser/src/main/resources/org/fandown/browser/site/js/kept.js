// @ts-check
/**
 * What is kept on this device: drafts that are being worked on with the logs attached to them,
 * finished records, vehicles of one's own, and exercises that are not finished. Every window of the pages uses the same store: a
 * change is made to what is there, in one transaction, and the other windows are told.
 */

/** @typedef {'drafts' | 'records' | 'logs' | 'vehicles' | 'practices'} StoreName */

/** What a record is called that is of an exercise. */
export const PRACTICE = 'practice';

const VERSION = 3;
/** @type {StoreName[]} */
const STORES = ['drafts', 'records', 'logs', 'vehicles', 'practices'];

/** @type {Promise<IDBDatabase> | undefined} */
let opened;

function database() {
  opened ??= new Promise((resolve, reject) => {
    const asking = indexedDB.open('fandown', VERSION);
    asking.onupgradeneeded = () => {
      for (const name of STORES) {
        if (!asking.result.objectStoreNames.contains(name)) asking.result.createObjectStore(name, { keyPath: 'id' });
      }
    };
    asking.onsuccess = () => {
      // A newer page in another window may need a newer store: never stand in its way.
      asking.result.onversionchange = () => {
        asking.result.close();
        opened = undefined;
      };
      resolve(asking.result);
    };
    asking.onerror = () => {
      opened = undefined;
      reject(new Error('This device keeps nothing for this page: ' + asking.error?.message + '. Next: leave private browsing, or free some space.'));
    };
  });
  return opened;
}

/**
 * One piece of work with some stores; it is on the device when this is resolved. Where the work
 * throws an error, nothing of it is done.
 * @param {StoreName[]} names @param {IDBTransactionMode} mode
 * @param {(stores: Record<string, IDBObjectStore>, then: (asked: IDBRequest, next: (value: any) => any) => void) => void} work
 *     the last value that a next function gives is the answer
 * @returns {Promise<any>}
 */
async function together(names, mode, work) {
  const db = await database();
  return new Promise((resolve, reject) => {
    const transaction = db.transaction(names, mode, { durability: 'strict' });
    /** @type {any} */
    let answer;
    /** @type {unknown} */
    let refused;
    transaction.oncomplete = () => resolve(answer);
    transaction.onabort = () =>
      reject(refused ?? new Error('Could not be kept on this device: ' + (transaction.error?.message ?? 'no reason given') + '. Next: free some space on it.'));
    /** @param {IDBRequest} asked @param {(value: any) => any} next */
    const then = (asked, next) => {
      asked.onsuccess = () => {
        try {
          answer = next(asked.result);
        } catch (e) {
          refused = e;
          transaction.abort();
        }
      };
    };
    work(Object.fromEntries(names.map((n) => [n, transaction.objectStore(n)])), then);
  });
}

/** @param {any} value */
const same = (value) => value;

/** @param {StoreName} store @param {string} id */
export const get = (store, id) => together([store], 'readonly', (s, then) => then(s[store].get(id), same));
/** @param {StoreName} store @returns {Promise<any[]>} */
export const all = (store) => together([store], 'readonly', (s, then) => then(s[store].getAll(), same));

/** @param {StoreName} store @param {any} value */
export const put = (store, value) => together([store], 'readwrite', (s, then) => then(s[store].put(value), same)).then(told(store, value.id));
/** @param {StoreName} store @param {string} id */
export const remove = (store, id) => together([store], 'readwrite', (s, then) => then(s[store].delete(id), same)).then(told(store, id));

/**
 * Changes what is there now, whoever wrote it last.
 * @param {StoreName} store @param {string} id
 * @param {(now: any) => any} change gives what is to be there; may throw an error, and nothing is changed
 * @returns {Promise<any>} what is there then
 */
export const alter = (store, id, change) =>
  together([store], 'readwrite', (s, then) =>
    then(s[store].get(id), (now) => {
      const next = change(now);
      s[store].put(next);
      return next;
    }),
  ).then(told(store, id));

/**
 * Makes a record of a draft and its log. Of several windows that do so one succeeds.
 * @param {string} id @param {(draft: any, log: any) => any} make
 * @returns {Promise<any>} the record as it is kept
 */
export const finishDraft = (id, make) =>
  together(['drafts', 'records', 'logs'], 'readwrite', (s, then) =>
    then(s.drafts.get(id), (draft) =>
      then(s.logs.get(id), (log) => {
        const made = make(draft, log);
        s.records.add(made);
        s.drafts.delete(id);
        s.logs.delete(id);
        return made;
      }),
    ),
  ).then(told('drafts', id)).then(told('records', id));

/** Throws a draft away, with its log. @param {string} id */
export const throwAway = (id) =>
  together(['drafts', 'logs'], 'readwrite', (s, then) => {
    s.logs.delete(id);
    then(s.drafts.delete(id), same);
  }).then(told('drafts', id));

const others = new BroadcastChannel('fandown-kept');

/** @param {StoreName} store @param {string} id */
const told = (store, id) => (/** @type {any} */ value) => {
  others.postMessage({ store, id });
  return value;
};

/** Calls back when another window changed something. @param {StoreName} store @param {(id: string) => void} listener @returns {() => void} */
export function onOthers(store, listener) {
  const heard = (/** @type {MessageEvent} */ { data }) => data.store === store && listener(data.id);
  others.addEventListener('message', heard);
  return () => others.removeEventListener('message', heard);
}

/** Asks the browser not to clear this device's store when space is short. */
export function askToStay() {
  return navigator.storage?.persist?.() ?? Promise.resolve(false);
}
