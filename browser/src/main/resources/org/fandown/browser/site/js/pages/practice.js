// @ts-check
/** Practice: choose an exercise, then operate the truck and walk round it. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { scenarios } from '../data.js';
import { Session, clock } from '../practice/session.js';
import { dash } from '../practice/dash.js';
import { cab } from '../practice/cab.js';
import { walk } from '../practice/walk.js';
import { inside } from '../practice/inside.js';

/** @param {HTMLElement} place @param {string[]} rest */
export async function show(place, rest) {
  const all = await scenarios();
  const chosen = all.find((s) => s.id === rest[0]);
  if (chosen) return exercise(place, chosen);
  render(
    html`<h1>Practice</h1>
      <p>Nobody gets hurt here, and no school can put these faults on a real truck.</p>
      <ul class="cards">
        ${all.map(
          (s) =>
            html`<li class="sheet"><h2>${s.title}</h2><p>${s.told}</p><p class="faint">${s.vehicleName}</p><a class="button main" href=${'#/practice/' + s.id}>Begin<span class="hidden">: ${s.title}</span></a></li>`,
        )}
      </ul>`,
    place,
  );
}

/** Where one can be: what each shows beside the head. */
const VIEWS = [
  { id: 'cab', title: 'Cab', show: cab, dash: true },
  { id: 'walk', title: 'Walk round', show: walk, dash: false },
  { id: 'inside', title: 'Inside', show: inside, dash: true },
  { id: 'past', title: 'What happened', show: happened, dash: false },
];

/** @param {HTMLElement} place @param {any} what */
async function exercise(place, what) {
  const session = await Session.open(what);
  let view = VIEWS[0];
  session.draw = () =>
    render(
      html`<h1>${what.title}</h1>
        <p>${what.told}</p>
        <nav class="views" aria-label="Views">
          ${VIEWS.map((v) => html`<button aria-pressed=${v === view} @click=${() => { view = v; if (v.id === 'cab') session.act('stand', 'cab'); }}>${v.title}</button>`)}
        </nav>
        ${view.dash ? dash(session) : ''}
        <p class="refused" role="status">${session.refused}</p>
        ${view.show(session)}`,
      place,
    );
  return () => session.close();
}

/** @param {Session} s */
function happened(s) {
  return html`<section class="sheet" aria-label="What happened">
    <ol class="events">${s.events.map((e) => html`<li><b>${clock(e.seconds)}</b> <span class=${e.kind === 'hazard' || e.kind === 'refused' ? 'bad' : ''}>${e.text}</span></li>`)}</ol>
    <p class="faint">The simulation takes ${(100 * s.share).toFixed(1)} % of a frame.</p>
  </section>`;
}
