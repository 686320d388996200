// @ts-check
/** The audit trail: who did what, when and from where. For site managers. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { orRefused } from '../people.js';

/** @typedef {{number: number, moment: string, who: string, act: string, about: string, source: string, result: string}} Entry */

const AT_ONCE = 200;

/** @type {Record<string, string>} */
const ACTS = {
  'log-in': 'log-in', 'log-out': 'log-out', 'account-add': 'account added', 'account-role': 'role given', 'account-password': 'password given',
  'account-close': 'account closed', 'record-keep': 'record sent',
};

/** @param {HTMLElement} place */
export async function show(place) {
  const state = { entries: /** @type {Entry[]} */ ([]), more: true, trouble: '' };

  async function older() {
    try {
      const last = state.entries.at(-1);
      const answer = await orRefused(await fetch('/api/audit' + (last ? '?before=' + last.number : '')));
      const found = (await answer.json()).entries;
      state.entries.push(...found);
      Object.assign(state, { more: found.length === AT_ONCE, trouble: '' });
    } catch (e) {
      Object.assign(state, { trouble: e instanceof Error ? e.message : String(e), more: false });
    }
    draw();
  }

  /** @param {Entry} e */
  const row = (e) => html`<tr><td>${new Date(e.moment).toLocaleString()}</td><td>${e.who || 'nobody'}</td><td>${ACTS[e.act] ?? e.act}</td>
    <td>${e.about}</td><td>${e.result}</td><td>${e.source}</td></tr>`;

  function draw() {
    render(
      html`<h1>Audit trail</h1>
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble} <a href="#/log-in">Log in</a></p>` : ''}
        ${state.entries.length
          ? html`<table class="stack audit"><thead><tr><th>When</th><th>Who</th><th>What</th><th>About</th><th>Result</th><th>From</th></tr></thead>
              <tbody>${state.entries.map(row)}</tbody></table>`
          : state.trouble ? '' : html`<p>Nothing is noted yet.</p>`}
        <div class="row">${state.more ? html`<button @click=${older}>Older</button>` : ''}<a class="button" href="#/accounts">Accounts</a></div>`,
      place,
    );
  }
  await older();
}
