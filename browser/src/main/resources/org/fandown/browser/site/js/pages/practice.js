// @ts-check
/** Practice: choose an exercise, operate the truck and walk round it, conclude, and be marked. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { askJson } from '../engine.js';
import { places, scenarios, today, vehicles } from '../data.js';
import { Session, clock } from '../practice/session.js';
import { dash } from '../practice/dash.js';
import { cab } from '../practice/cab.js';
import { walk } from '../practice/walk.js';
import { inside } from '../practice/inside.js';
import { Notes, notes } from '../practice/notes.js';
import { After, after } from '../practice/after.js';
import { Own, own } from '../practice/own.js';
import { Sound } from '../practice/sound.js';

/** @param {HTMLElement} place @param {string[]} rest */
export async function show(place, rest) {
  const all = await scenarios();
  const chosen = all.find((s) => s.id === rest[0]);
  if (chosen) return exercise(place, chosen, rest[1] === 'test');
  /** @type {(() => void) | undefined} */
  let leave;
  let begun = false;
  const mine = new Own(await places(), await vehicles(), async (made) => {
    begun = true;
    place.replaceChildren();
    const fresh = place.appendChild(document.createElement('div'));
    leave = await exercise(fresh, made, made.test);
  });
  const draw = () => begun || render(choices(all, mine, draw), place);
  draw();
  return () => leave?.();
}

/** @param {any[]} all @param {Own} mine @param {() => void} draw */
function choices(all, mine, draw) {
  return html`<h1>Practice</h1>
    <p>Nobody gets hurt here, and no school can put these faults on a real truck. In a test you do not see inside the air system.</p>
    <ul class="cards">
      ${all.map(
        (s) =>
          html`<li class="sheet"><h2>${s.title}</h2><p>${s.told}</p><p class="faint">${s.vehicleName}</p>
            <div class="row"><a class="button main" href=${'#/practice/' + s.id}>Practise<span class="hidden">: ${s.title}</span></a>
            <a class="button" href=${'#/practice/' + s.id + '/test'}>Test<span class="hidden">: ${s.title}</span></a></div></li>`,
      )}
    </ul>
    ${own(mine, draw)}`;
}

const USUAL_PLACE = 'CA-ON';

/** @param {HTMLElement} place @param {any} what @param {boolean} test */
async function exercise(place, what, test) {
  const [session] = await Promise.all([Session.open(what), places()]);
  const rulesOf = what.scenario.place ?? USUAL_PLACE;
  const vehicle = JSON.stringify(what.scenario.vehicle);
  const [plan, checks, parts] = await Promise.all([askJson('plan', rulesOf, vehicle, today(), 0, false), askJson('checks'), askJson('parts', vehicle)]);
  const ids = [...new Set(plan.steps.flatMap((s) => s.checks ?? []))];
  const mine = new Notes(session, rulesOf, ids.map((id) => checks.find((c) => c.id === id)), parts);
  /** @type {After | undefined} */
  let result;

  /** Where one can be. @type {{id: string, title: string, show: () => any, dash: boolean}[]} */
  const views = [
    { id: 'cab', title: 'Cab', show: () => cab(session), dash: true },
    { id: 'walk', title: 'Walk round', show: () => walk(session), dash: false },
    { id: 'notes', title: 'Notes', show: () => notes(mine), dash: true },
    ...(test ? [] : [{ id: 'inside', title: 'Inside', show: () => inside(session), dash: true }]),
    { id: 'past', title: 'What happened', show: () => happened(session), dash: false },
  ];
  const sound = new Sound();
  let view = views[0];
  const choose = (v) => {
    view = v;
    if (v.id === 'cab') session.act('stand', 'cab');
  };

  session.draw = () => {
    session.listens = sound.on;
    if (sound.on) sound.follow(session);
    if (mine.done && !result) {
      result = new After(session, rulesOf);
      session.pause();
      result.mark().then(session.draw);
    }
    render(
      html`<h1>${what.title}</h1>
        ${result
          ? after(result)
          : html`<p>${what.told}</p>
              <nav class="views" aria-label="Views">
                ${views.map((v) => html`<button aria-pressed=${v === view} @click=${() => choose(v)}>${v.title}</button>`)}
                <button aria-pressed=${sound.on} @click=${() => sound.toggle()}>Sound</button>
              </nav>
              ${view.dash ? dash(session) : ''}
              <p class="refused" role="status">${session.refused}</p>
              ${view.show()}`}`,
      place,
    );
  };
  place.addEventListener('input', () => result && session.draw?.());
  return () => {
    sound.close();
    session.close();
  };
}

/** @param {Session} s */
function happened(s) {
  return html`<section class="sheet" aria-label="What happened">
    <ol class="events">${s.events.map((e) => html`<li><b>${clock(e.seconds)}</b> <span class=${e.kind === 'hazard' || e.kind === 'refused' ? 'bad' : ''}>${e.text}</span></li>`)}</ol>
    <p class="faint">The simulation takes ${(100 * s.share).toFixed(1)} % of a frame.</p>
  </section>`;
}
