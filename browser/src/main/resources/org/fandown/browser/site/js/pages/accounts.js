// @ts-check
/** Who may log in: for site managers, and for anybody while there are no accounts. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { known, mayManage, orRefused, roleTitle, ROLES, sendForm, whoIsHere } from '../people.js';

/** @typedef {{number: number, name: string, role: string, made: string, closed?: string}} Account */

/** @param {string} of @param {string} chosen */
const roles = (of, chosen) => html`<label>Role<span class="hidden"> of ${of}</span>
  <select name="role">${ROLES.map(([name, title]) => html`<option value=${name} ?selected=${name === chosen}>${title}</option>`)}</select></label>`;

/** @param {string} of */
const password = (of) => html`<label><span>Password<span class="hidden"> of ${of}</span>, at least 10 signs</span>
  <input name="password" type="password" autocomplete="new-password" minlength="10" required /></label>`;

/** @param {HTMLElement} place */
export async function show(place) {
  const state = { all: /** @type {Account[]} */ ([]), trouble: '', done: '' };

  async function load() {
    await whoIsHere();
    if (!mayManage()) return;
    const answer = await orRefused(await fetch('/api/accounts'));
    state.all = (await answer.json()).accounts;
  }

  /** @param {() => Promise<any>} work @param {string} done */
  async function trying(work, done) {
    try {
      await work();
      Object.assign(state, { trouble: '', done });
    } catch (e) {
      Object.assign(state, { trouble: e instanceof Error ? e.message : String(e), done: '' });
    }
    await load().catch((e) => Object.assign(state, { trouble: e.message }));
    draw();
  }

  /** @param {string} path @param {string} done */
  const sending = (path, done) => async (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    await trying(async () => {
      await sendForm(path, Object.fromEntries(new FormData(form)));
      form.reset();
    }, done);
  };

  /** @param {Account} a */
  const close = (a) =>
    confirm('Close the account of ' + a.name + ' for good? What they did stays in the records and in the audit trail.') &&
    trying(() => sendForm('/api/accounts/' + a.number + '/close', {}), a.name + ' can not log in any more.');

  /** @param {Account} a */
  const open = (a) => html`<details class="group"><summary>Change<span class="hidden">: ${a.name}</span></summary>
    <form class="form" @submit=${sending('/api/accounts/' + a.number + '/role', a.name + ' has another role.')}>${roles(a.name, a.role)}
      <button>Give this role<span class="hidden"> to ${a.name}</span></button></form>
    <form class="form" @submit=${sending('/api/accounts/' + a.number + '/password', a.name + ' has another password.')}>${password(a.name)}
      <button>Give this password<span class="hidden"> to ${a.name}</span></button></form>
    <p class="faint">Both log ${a.name} out everywhere.</p>
    <button type="button" @click=${() => close(a)}>Close the account<span class="hidden"> of ${a.name}</span></button></details>`;

  function draw() {
    const none = known()?.accounts === false;
    render(
      html`<h1>Accounts</h1>
        ${none ? html`<p class="care">This site has no accounts: whoever is at this machine may do all, and nobody else can come. From the first account on, a site manager's, everybody has to log in.</p>` : ''}
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}
        ${state.done ? html`<p class="good" role="status">${state.done}</p>` : ''}
        ${mayManage()
          ? html`<ul class="cards">${state.all.map((a) => html`<li class="sheet"><h2>${a.name}</h2><p>${roleTitle(a.role)}</p>
              <p class="faint">${a.closed ? 'closed ' + new Date(a.closed).toLocaleDateString() : 'since ' + new Date(a.made).toLocaleDateString()}</p>
              ${a.closed ? '' : open(a)}</li>`)}</ul>
            <form class="sheet form" @submit=${sending('/api/accounts', 'The account is added.')}><h2>Add an account</h2>
              <label>Name<input name="name" maxlength="64" autocomplete="off" required /></label>
              ${roles('the new account', none ? 'site-manager' : 'learner')}${password('the new account')}
              <button class="main">Add</button></form>
            ${none ? '' : html`<p><a class="button" href="#/audit">Audit trail</a></p>`}`
          : html`<p>${known() ? 'Site managers look after accounts.' : 'The server is not there; accounts can be changed when it is back.'} <a href="#/log-in">Log in</a></p>`}`,
      place,
    );
  }
  await load().catch((e) => Object.assign(state, { trouble: e.message }));
  draw();
}
