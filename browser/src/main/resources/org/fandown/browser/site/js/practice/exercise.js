// @ts-check
/** An exercise as it goes on: operate the truck, walk round it, conclude, and be marked. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { ask, askJson } from '../engine.js';
import { places, today } from '../data.js';
import { clock } from '../clock.js';
import { open, resume } from './opening.js';
import { dash } from './dash.js';
import { cab } from './cab.js';
import { walk } from './walk.js';
import { inside } from './inside.js';
import { Notes, notes } from './notes.js';
import { After, after } from './after.js';
import { Guide, guide } from './guide.js';
import { moment } from '../yard/draft.js';
import { Sound } from './sound.js';
import { finished } from './finished.js';

/** @param {HTMLElement} place @param {import('./unfinished.js').Unfinished} kept */
export async function exercise(place, kept) {
  const { exercise: what, mode, place: rulesOf } = kept.data;
  const [session] = await Promise.all([stand(place, kept), places()]);
  const mine = await writer(session, kept);
  const lead = session.plan && new Guide(session, session.plan, kept.data.guide?.shown ?? []);
  /** @type {After | undefined} */
  let result;

  /** Where one can be. @type {{id: string, title: string, show: () => any, dash: boolean}[]} */
  const views = [
    { id: 'cab', title: 'Cab', show: () => cab(session.seen), dash: true },
    { id: 'walk', title: 'Walk round', show: () => walk(session.seen, mine), dash: false },
    { id: 'notes', title: 'Notes', show: () => notes(mine), dash: true },
    ...(mode === 'test' ? [] : [{ id: 'inside', title: 'Inside', show: () => inside(session.seen), dash: true }]),
    { id: 'past', title: 'What happened', show: () => happened(session), dash: false },
  ];
  const sound = new Sound();
  let view = views[0];
  /** @param {any} v */
  const choose = (v) => {
    view = v;
    if (v.id === 'cab') session.act('stand', 'cab');
  };

  const state = async () => ({ run: await ask('run', session.id, what.title), notes: mine.kept(), lap: session.lap, guide: lead?.kept() });
  session.changed = () => kept.keep(state);

  const conclude = async () => {
    session.pause();
    result = new After(session, rulesOf, moment());
    await result.mark();
    await finished(kept, result);
    session.draw?.();
    /** @type {HTMLElement | null} */ (place.querySelector('h1'))?.focus();
  };

  session.draw = () => {
    session.listens = sound.on;
    if (sound.on) sound.follow(session.seen);
    if (mine.done && !result) conclude();
    if (session.running) kept.keepBy(session.time, state);
    render(
      html`<h1 tabindex="-1">${what.title}</h1>
        ${result
          ? after(result)
          : html`<p>${what.told}</p>
              <nav class="views" aria-label="Views">
                ${views.map((v) => html`<button aria-pressed=${v === view} @click=${() => choose(v)}>${v.title}</button>`)}
                <button aria-pressed=${sound.on} @click=${() => sound.toggle()}>Sound</button>
              </nav>
              ${lead ? guide(lead, mine) : ''}
              <div ?inert=${session.past.film !== undefined || lead?.busy}>
                ${view.dash ? dash(session.seen) : ''}
                <p class="refused" role="status">${session.refused || kept.trouble}</p>
                ${view.show()}
              </div>`}`,
      place,
    );
  };
  place.addEventListener('input', () => result && session.draw?.());
  session.begin();
  return async (/** @type {'left' | import('./hold.js').Way} */ how) => {
    sound.close();
    session.pause();
    if (how === 'given') await kept.keep(state);
    if (how === 'taken') kept.over = true;
    session.close();
    // One that was only looked at is nothing to go on with.
    if (how === 'left' && !session.events.some((e) => e.kind !== 'sign')) kept.forget();
  };
}

/** The truck as it is found, or as it was left. @param {HTMLElement} place @param {import('./unfinished.js').Unfinished} kept */
async function stand(place, kept) {
  const { exercise: what, run, lap, mode, begun } = kept.data;
  const lead = mode === 'guided' ? { place: kept.data.place, day: begun.slice(0, 10), at: kept.data.guide?.at ?? 1 } : undefined;
  if (lead) await places();
  if (!run) return open(what, lead);
  const waiting = place.appendChild(document.createElement('div'));
  const whole = JSON.parse(run).ticks / 50;
  const session = await resume(what, run, (seconds) =>
    render(html`<p class="wait" role="status">Being put as you left it: ${clock(seconds)} of ${clock(whole)}</p>`, waiting),
    lead,
  );
  waiting.remove();
  session.lap = lap ?? 0;
  return session;
}

/** @param {import('./session.js').Session} session @param {import('./unfinished.js').Unfinished} kept */
async function writer(session, kept) {
  const { exercise: what, place, notes: before } = kept.data;
  await places();
  const vehicle = JSON.stringify(what.scenario.vehicle);
  const [plan, checks, parts] = await Promise.all([session.plan ?? askJson('plan', place, vehicle, today(), 0, false), askJson('checks'), askJson('parts', vehicle)]);
  const ids = [...new Set(plan.steps.flatMap((/** @type {any} */ s) => s.checks ?? []))];
  return new Notes(session, place, ids.map((id) => checks.find((/** @type {any} */ c) => c.id === id)), parts, before);
}

/** @param {import('./session.js').Session} s */
function happened(s) {
  return html`<section class="sheet" aria-label="What happened">
    <ol class="events">${s.events.map((e) => html`<li><b>${clock(e.seconds)}</b> <span class=${e.kind === 'hazard' || e.kind === 'refused' ? 'bad' : ''}>${e.text}</span></li>`)}</ol>
    <p class="faint">The simulation takes ${(100 * s.share).toFixed(1)} % of a frame.</p>
  </section>`;
}
