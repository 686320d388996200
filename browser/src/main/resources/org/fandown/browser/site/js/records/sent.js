// @ts-check
/** Where a record is: on this device alone, or kept by the server. */
import { html } from '/lib/lit-html/lit-html.js';
import { get, put } from '../kept.js';
import { sync } from '../sync.js';

/** @type {Record<string, string>} */
const STATES = { device: 'on this device alone', here: 'on this device, not yet sent', there: 'kept by the server', refused: 'refused by the server' };

/** What the device knows of a record; what it does not have, the server keeps. @param {string} id @returns {Promise<{state: string, reason: string}>} */
export async function whereIs(id) {
  const { state = 'there', reason = '' } = (await get('records', id)) ?? {};
  return { state, reason };
}

/** @param {{state: string, reason?: string}} it */
export const stateWords = (it) => STATES[it.state] + (it.reason ? ': ' + it.reason : '');

/** Sends it now, also where the server refused it before. @param {string} id */
async function send(id) {
  const kept = await get('records', id);
  if (kept?.state === 'refused') await put('records', { ...kept, state: 'here', reason: '' });
  sync();
}

/** @param {string} id @param {{state: string}} it */
export const sendButton = (id, it) => (it.state === 'here' || it.state === 'refused' ? html`<button @click=${() => send(id)}>Send ${it.state === 'here' ? 'now' : 'again'}</button>` : '');

/** A record as a file to keep: its address, and how it is given back. @param {any} record */
export function asFile(record) {
  const file = URL.createObjectURL(new Blob([JSON.stringify(record, null, 2)], { type: 'application/json' }));
  return { link: html`<a class="button" href=${file} download=${record.kind + '-' + record.id + '.json'}>JSON</a>`, drop: () => URL.revokeObjectURL(file) };
}

/** A moment as this device writes it, each part on one line. @param {string} made */
export const when = (made) => html`<time datetime=${made}>${new Date(made).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })}</time>`;
