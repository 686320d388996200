// @ts-check
/** Exercises that are finished: kept among the records, sent like them, and opened again with their replay. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { PRACTICE, put } from '../kept.js';
import { asFile, sendButton, stateWords, when, whereIs } from '../records/sent.js';
import { onSync, sync } from '../sync.js';
import { After, after, marksShown } from './after.js';
import { clock } from '../clock.js';
import { resume } from './opening.js';

/**
 * Keeps a run that was marked; what is unfinished of it goes once the record is on the device. The
 * server marks it again; what was not marked here stays here.
 * @param {import('./unfinished.js').Unfinished} kept @param {After} result
 */
export async function finished(kept, result) {
  const { id, exercise, mode, place } = kept.data;
  const { made, marks } = result;
  const shown = kept.data.guide?.shown ?? [];
  const verdict = marks ? marks.kept + ' of ' + marks.of + (marks.passed ? ', passed' : ', not passed') : 'not marked';
  const record = { format: 'fandown-record/1', id, kind: PRACTICE, made, place, mode, shown, run: JSON.parse(result.run), marks };
  await put('records', { id, state: marks ? 'here' : 'device', record, verdict, vehicle: exercise.scenario.vehicle.name, place, made });
  await kept.forget();
  sync();
}

/** The exercise that a run was made in. @param {any} run */
const exerciseOf = ({ scenario }) => ({ id: 'done', title: scenario.title, told: scenario.told ?? '', scenario });

/** Shows a record of an exercise: its marks at once, trace and replay when it is done again. @param {HTMLElement} where @param {any} record */
export async function showFinished(where, record) {
  const file = asFile(record);
  let it = await whereIs(record.id);
  /** @type {After | undefined} */
  let result;
  let far = 0;
  const draw = () =>
    render(
      html`<h1>${record.run.scenario.title}</h1>
        <p><b>Exercise on a simulated vehicle</b>: ${record.run.scenario.vehicle.name}${record.mode === 'free' ? '' : ', ' + record.mode}.
          ${record.shown.length ? 'The operator showed ' + record.shown.length + ' of its steps.' : ''}</p>
        <p><span class="one-line">${when(record.made)},</span> <span class="one-line">${record.place}.</span> <span class="faint">${stateWords(it)}</span></p>
        <p class="row">${sendButton(record.id, it)} ${file.link} <a class="button" href="#/records/practice">All exercises</a></p>
        ${result ? after(result) : html`${marksShown(record.marks)}<p class="wait" role="status">Being done again for trace and replay: ${clock(far)} of ${clock(record.run.ticks / 50)}</p>`}`,
      where,
    );
  const stop = onSync(async () => {
    it = await whereIs(record.id);
    draw();
  });
  draw();
  const opened = resume(exerciseOf(record.run), JSON.stringify(record.run), (seconds) => { far = seconds; draw(); });
  opened.then((session) => {
    session.pause();
    result = new After(session, record.place, record.made);
    result.marks = record.marks;
    result.trouble = session.refused;
    draw();
  }).catch((e) => { where.append(Object.assign(document.createElement('p'), { className: 'trouble', textContent: e.message })); });
  where.addEventListener('input', draw);
  return () => {
    stop();
    file.drop();
    opened.then((session) => session.close(), () => {});
  };
}
