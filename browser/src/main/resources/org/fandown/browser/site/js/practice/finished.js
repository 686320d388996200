// @ts-check
/** Exercises that are finished: kept among the records of this device, and opened again with their replay. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { places } from '../data.js';
import { put } from '../kept.js';
import { moment } from '../yard/draft.js';
import { After, after } from './after.js';
import { Session, clock } from './session.js';

/** What a record is called that is of an exercise. */
export const PRACTICE = 'practice';

/** Keeps a run that was marked; what is unfinished of it goes once the record is on the device. @param {import('./unfinished.js').Unfinished} kept @param {After} result */
export async function finished(kept, result) {
  const { id, exercise, mode, place } = kept.data;
  const made = moment();
  const marks = result.marks;
  const shown = kept.data.guide?.shown ?? [];
  const verdict = marks ? marks.kept + ' of ' + marks.of + (marks.passed ? ', passed' : ', not passed') : 'not marked';
  const record = { format: 'fandown-record/1', id, kind: PRACTICE, made, place, mode, shown, run: JSON.parse(result.run) };
  await put('records', { id, kind: PRACTICE, state: 'device', record, exercise, verdict, passed: marks?.passed ?? false, vehicle: exercise.title, place, made });
  await kept.forget();
}

/** Shows a record of an exercise. @param {HTMLElement} where @param {any} kept what the device keeps */
export async function showFinished(where, kept) {
  await places();
  const waiting = where.appendChild(document.createElement('div'));
  const session = await Session.resume(kept.exercise, JSON.stringify(kept.record.run), (seconds) =>
    render(html`<p class="wait" role="status">Being done again: ${clock(seconds)}</p>`, waiting),
  );
  session.pause();
  waiting.remove();
  const result = new After(session, kept.place);
  await result.mark();
  const draw = () =>
    render(
      html`<h1>${kept.vehicle}</h1>
        <p>${new Date(kept.made).toLocaleString()}, ${kept.place}. <span class="faint">An exercise${kept.record.mode === 'free' ? '' : ', ' + kept.record.mode}; kept on this device.${kept.record.shown?.length ? ' The operator showed ' + kept.record.shown.length + ' of its steps.' : ''}</span></p>
        <p class="row"><a class="button" href="#/records">All records</a></p>
        ${after(result)}`,
      where,
    );
  where.addEventListener('input', draw);
  draw();
  return () => session.close();
}
