// @ts-check
/** What is kept on this device: drafts that are being worked on, and finished records. */

/** @type {Promise<IDBDatabase> | undefined} */
let opened;

function database() {
  opened ??= new Promise((resolve, reject) => {
    const asking = indexedDB.open('fandown', 1);
    asking.onupgradeneeded = () => {
      asking.result.createObjectStore('drafts', { keyPath: 'id' });
      asking.result.createObjectStore('records', { keyPath: 'id' });
    };
    asking.onsuccess = () => resolve(asking.result);
    asking.onerror = () =>
      reject(new Error('This device keeps nothing for this page: ' + asking.error?.message + '. Next: leave private browsing, or free some space.'));
  });
  return opened;
}

/**
 * One piece of work with a store; it is on the device when this is resolved.
 * @param {'drafts' | 'records'} store @param {IDBTransactionMode} mode @param {(store: IDBObjectStore) => IDBRequest} work
 * @returns {Promise<any>}
 */
async function with_(store, mode, work) {
  const db = await database();
  return new Promise((resolve, reject) => {
    const transaction = db.transaction(store, mode, { durability: 'strict' });
    const asked = work(transaction.objectStore(store));
    transaction.oncomplete = () => resolve(asked.result);
    transaction.onerror = () => reject(new Error('Could not be kept on this device: ' + transaction.error?.message + '.'));
    transaction.onabort = transaction.onerror;
  });
}

/** @param {'drafts' | 'records'} store @param {any} value */
export const put = (store, value) => with_(store, 'readwrite', (s) => s.put(value));
/** @param {'drafts' | 'records'} store @param {string} id */
export const get = (store, id) => with_(store, 'readonly', (s) => s.get(id));
/** @param {'drafts' | 'records'} store @returns {Promise<any[]>} */
export const all = (store) => with_(store, 'readonly', (s) => s.getAll());
/** @param {'drafts' | 'records'} store @param {string} id */
export const remove = (store, id) => with_(store, 'readwrite', (s) => s.delete(id));

/** Asks the browser not to clear this device's store when space is short. */
export function askToStay() {
  return navigator.storage?.persist?.() ?? Promise.resolve(false);
}
