// @ts-check
/** Logging in; and for who is, their account. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { changePassword, known, logIn, onPeople, roleTitle, whoIsHere } from '../people.js';
import { sync } from '../sync.js';

/** @param {HTMLElement} place */
export async function show(place) {
  const state = { trouble: '', done: '' };
  const me = await whoIsHere();

  /** @param {(values: Record<string, string>) => Promise<string>} work */
  const on = (work) => async (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    const values = /** @type {Record<string, string>} */ (Object.fromEntries(new FormData(form)));
    try {
      Object.assign(state, { done: await work(values), trouble: '' });
      form.reset();
    } catch (e) {
      Object.assign(state, { done: '', trouble: e instanceof Error ? e.message : String(e) });
    }
    draw();
  };

  const entering = on(async ({ name, password }) => {
    await logIn(name, password);
    sync();
    return 'You are logged in. What waited on this device is being sent.';
  });

  const changing = on(async ({ old, fresh, again }) => {
    if (fresh !== again) throw new Error('The two new passwords are not the same. Next: type them again.');
    await changePassword(old, fresh);
    return 'Your password is changed, and you are logged out on all other devices.';
  });

  const enter = () => html`<h1>Log in</h1>
    <p>What you enter stays on this device without it, and is sent once you are logged in.</p>
    <form class="sheet form" @submit=${entering}>
      <label>Name<input name="name" autocomplete="username" autocapitalize="none" required /></label>
      <label>Password<input name="password" type="password" autocomplete="current-password" required /></label>
      <button class="main">Log in</button>
    </form>`;

  const self = () => html`<h1>${known()?.name}</h1>
    <p>You are logged in as ${roleTitle(known()?.role)}.</p>
    <form class="sheet form" @submit=${changing}><h2>Another password</h2>
      <label>Old password<input name="old" type="password" autocomplete="current-password" required /></label>
      <label>New password, at least 10 signs<input name="fresh" type="password" autocomplete="new-password" minlength="10" required /></label>
      <label>The new one again<input name="again" type="password" autocomplete="new-password" required /></label>
      <button>Change it</button>
    </form>`;

  function draw() {
    const now = known();
    render(
      html`${now?.name ? self() : now && !now.accounts ? html`<h1>Log in</h1><p>This site has no accounts: whoever is at this machine may do all. <a href="#/accounts">Accounts</a></p>` : enter()}
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}
        ${state.done ? html`<p class="good" role="status">${state.done}</p>` : ''}
        ${me || now ? '' : html`<p class="doubt">The server is not there. Everything on this device works without it.</p>`}`,
      place,
    );
  }
  draw();
  return onPeople(draw);
}
