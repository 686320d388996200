// @ts-check
/** Sends finished records to the server until each is kept there. Sending twice does no harm. */
import { PRACTICE, all, onOthers, put } from './kept.js';
import { onPeople, send as sendTo } from './people.js';

/** Characters sent at once; the server takes 32 MiB. */
const AT_ONCE = 8_000_000;
const AGAIN = 15_000;

/** @type {Set<() => void>} */
const listeners = new Set();
let busy = false;

/** Calls back whenever the state of a record changed. @param {() => void} listener @returns {() => void} */
export function onSync(listener) {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Sends what was not kept yet. Of several windows one sends at a time. */
export async function sync() {
  if (busy) return;
  busy = true;
  try {
    await (navigator.locks ? navigator.locks.request('fandown-sync', sendAll) : sendAll());
  } catch {
    // The server is not there; the records stay here and are sent later.
  } finally {
    busy = false;
  }
}

async function sendAll() {
  const open = (await all('records')).filter((r) => r.state === 'here');
  // The server does each exercise again, which takes its time: each is sent by itself.
  for (const record of open.filter((r) => r.record.kind === PRACTICE)) await send([record]);
  let batch = [];
  let length = 0;
  for (const record of open.filter((r) => r.record.kind !== PRACTICE)) {
    const more = JSON.stringify(record.record).length;
    if (batch.length && length + more > AT_ONCE) {
      await send(batch);
      batch = [];
      length = 0;
    }
    batch.push(record);
    length += more;
  }
  if (batch.length) await send(batch);
}

/** @param {any[]} records */
async function send(records) {
  const answer = await sendTo('/api/records', JSON.stringify({ records: records.map((r) => r.record) }));
  if (!answer.ok) throw new Error('refused');
  const told = (await answer.json()).records;
  for (let i = 0; i < records.length; i++) {
    const kept = told[i].kept;
    if (kept === 'not-allowed') {
      // It stays here until somebody logs in whose role may send it.
      await put('records', { ...records[i], reason: 'The account that is logged in may not send it.' });
      continue;
    }
    const state = kept === 'new' || kept === 'before' ? 'there' : 'refused';
    await put('records', { ...records[i], state, reason: told[i].reason ?? (kept === 'conflict' ? 'Another record with this id is kept there.' : '') });
  }
  for (const listener of listeners) listener();
}

/** Tries now, whenever the network comes back, and every so often. */
export function keepSyncing() {
  onOthers('records', () => listeners.forEach((listener) => listener()));
  onPeople(() => listeners.forEach((listener) => listener()));
  sync();
  addEventListener('online', sync);
  setInterval(sync, AGAIN);
}
