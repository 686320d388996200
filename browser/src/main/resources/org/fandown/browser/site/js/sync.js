// @ts-check
/** Sends finished records to the server until each is kept there. Sending twice does no harm. */
import { all, put } from './kept.js';

const AT_ONCE = 5;
const AGAIN = 15_000;

/** @type {Set<() => void>} */
const listeners = new Set();
let busy = false;

/** Calls back whenever the state of a record changed. @param {() => void} listener @returns {() => void} */
export function onSync(listener) {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Sends what was not kept yet. */
export async function sync() {
  if (busy) return;
  busy = true;
  try {
    const open = (await all('records')).filter((r) => r.state === 'here');
    for (let i = 0; i < open.length; i += AT_ONCE) await send(open.slice(i, i + AT_ONCE));
  } catch {
    // The server is not there; the records stay here and are sent later.
  } finally {
    busy = false;
  }
}

/** @param {any[]} records */
async function send(records) {
  const answer = await fetch('/api/records', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ records: records.map((r) => r.record) }),
  });
  if (!answer.ok) throw new Error('refused');
  const told = (await answer.json()).records;
  for (let i = 0; i < records.length; i++) {
    const kept = told[i].kept;
    const state = kept === 'new' || kept === 'before' ? 'there' : 'refused';
    await put('records', { ...records[i], state, reason: told[i].reason ?? (kept === 'conflict' ? 'Another record with this id is kept there.' : '') });
  }
  for (const listener of listeners) listener();
}

/** Tries now, whenever the network comes back, and every so often. */
export function keepSyncing() {
  sync();
  addEventListener('online', sync);
  setInterval(sync, AGAIN);
}
