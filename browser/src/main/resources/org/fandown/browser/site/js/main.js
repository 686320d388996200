// @ts-check
/** Begins the page: head, foot, and the page that the address names. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { begin } from './engine.js';
import { keepSyncing } from './sync.js';
import { known, logOut, mayManage, mustLogIn, onPeople, whoIsHere } from './people.js';

// The core starts beside the page: most pages ask it something first.
begin();

/** @type {{path: string, title: string, aside?: boolean, load: () => Promise<any>}[]} */
const PAGES = [
  { path: '', title: 'Start', load: () => import('./pages/start.js') },
  { path: 'practice', title: 'Practice', load: () => import('./pages/practice.js') },
  { path: 'yard', title: 'Yard', load: () => import('./pages/yard.js') },
  { path: 'rules', title: 'Rules', load: () => import('./pages/rules.js') },
  { path: 'vehicles', title: 'Vehicles', load: () => import('./pages/vehicles.js') },
  { path: 'records', title: 'Records', load: () => import('./pages/records.js') },
  { path: 'log-in', title: 'Log in', aside: true, load: () => import('./pages/log-in.js') },
  { path: 'accounts', title: 'Accounts', aside: true, load: () => import('./pages/accounts.js') },
  { path: 'audit', title: 'Audit trail', aside: true, load: () => import('./pages/audit.js') },
];

const head = /** @type {HTMLElement} */ (document.getElementById('head'));
const work = /** @type {HTMLElement} */ (document.getElementById('work'));
const foot = /** @type {HTMLElement} */ (document.getElementById('foot'));

/** Stops what the page before left running. @type {(() => void) | undefined} */
let leave;
let shown = 0;

function route() {
  const [path, ...rest] = location.hash.replace(/^#\/?/, '').split('/');
  return { page: PAGES.find((p) => p.path === path) ?? PAGES[0], rest };
}

/** @param {typeof PAGES[number]} now */
function drawHead(now) {
  /** @param {typeof PAGES[number]} p */
  const link = (p) =>
    html`<a href=${'#/' + p.path} aria-current=${p === now ? 'page' : 'false'}>${p.title}</a>`;
  render(
    html`<a class="name" href="#/"><img src="/icon.svg" alt="" width="32" height="32" />Fandown</a>
      <nav aria-label="Pages">${PAGES.slice(1).filter((p) => !p.aside).map(link)}</nav>
      ${who()}`,
    head,
  );
}

/** Who is logged in; nothing where nobody has to. */
function who() {
  const name = known()?.name;
  if (!known()?.accounts) return '';
  return html`<nav class="who" aria-label="People">
    ${name && mayManage() ? html`<a href="#/accounts">Accounts</a>` : ''}
    <a href="#/log-in">${name ?? 'Log in'}</a>
    ${name ? html`<button class="small" @click=${leaveSite}>Log out</button>` : ''}
    ${mustLogIn() ? html`<span>Nothing is sent or fetched before that.</span>` : ''}</nav>`;
}

function leaveSite() {
  logOut()
    .then(() => (location.hash = '#/log-in'))
    .catch((e) => alert(e.message));
}

async function show() {
  const { page, rest } = route();
  const mine = ++shown;
  leave?.();
  leave = undefined;
  drawHead(page);
  document.title = page.path ? page.title + ' - Fandown' : 'Fandown';
  const fresh = document.createElement('div');
  fresh.className = 'page ' + (page.path || 'start');
  fresh.append(Object.assign(document.createElement('p'), { className: 'wait', textContent: 'Loading ...' }));
  work.replaceChildren(fresh);
  try {
    const module = await page.load();
    if (mine !== shown) return;
    fresh.replaceChildren();
    leave = await module.show(fresh, rest);
  } catch (e) {
    if (mine === shown) failed(fresh, e);
  }
  if (mine === shown) work.dataset.ready = page.path || 'start';
}

/** @param {HTMLElement} place @param {unknown} e */
function failed(place, e) {
  place.replaceChildren();
  render(
    html`<section class="trouble" role="alert">
      <h1>This page could not be shown</h1>
      <p>${e instanceof Error ? e.message : String(e)}</p>
      <p>Nothing you entered is lost. <button @click=${() => location.reload()}>Load again</button></p>
    </section>`,
    place,
  );
}

render(
  html`<p>Local law, the maker and licensed technicians come first. A practice result is not a licence to drive.</p>`,
  foot,
);
// Whoever came by the keyboard goes on from the work, not from a link that is gone.
addEventListener('hashchange', () => show().then(() => work.focus({ preventScroll: true })));
show();
keepSyncing();
onPeople(() => drawHead(route().page));
whoIsHere();
if ('serviceWorker' in navigator) navigator.serviceWorker.register('/sw.js', { type: 'classic' });
