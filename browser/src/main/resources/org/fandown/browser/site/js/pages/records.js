// @ts-check
/** Records: those of this device and those the server keeps; found by any word, opened, printed. */
import { places } from '../data.js';
import { PRACTICE, get } from '../kept.js';
import { showFinished } from '../practice/finished.js';
import { showInspection } from '../records/inspection.js';
import { list } from '../records/list.js';

/** @param {HTMLElement} place @param {string[]} rest the record that is to be opened, or what kind is listed */
export async function show(place, rest) {
  if (!rest[0] || rest[0] === PRACTICE) return list(place, rest[0] === PRACTICE);
  const record = (await get('records', rest[0]))?.record ?? (await fromServer(rest[0]));
  const of = (record.repair ?? record.review)?.of;
  if (of) return show(place, [of]);
  await places();
  return record.kind === PRACTICE ? showFinished(place, record) : showInspection(place, record);
}

/** @param {string} id */
async function fromServer(id) {
  const answer = await fetch('/api/records/' + encodeURIComponent(id));
  if (!answer.ok) throw new Error('There is no such record here or at the server.');
  return answer.json();
}
