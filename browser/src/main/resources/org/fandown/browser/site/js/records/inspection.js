// @ts-check
/** The record of a real inspection: verdict, defects, findings, log, and the report to print. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { ref } from '/lib/lit-html/directives/ref.js';
import { ask, askJson } from '../engine.js';
import { onSync } from '../sync.js';
import { defectList } from '../yard/defects.js';
import { recognised } from '../yard/log.js';
import { findings, verdict } from '../yard/review.js';
import { afterwards, beside, serversWord, storyOf } from './story.js';
import { TraceChart } from '../yard/trace.js';
import { asFile, sendButton, stateWords, when, whereIs } from './sent.js';

/** @param {HTMLElement} place @param {any} record */
export async function showInspection(place, record) {
  const judgement = await askJson('judge', JSON.stringify(record.inspection));
  const file = asFile(record);
  const chart = record.log?.packed && new TraceChart((await ask('unpackLog', record.log.name, record.log.packed)).curves, record.log.trace.recognised);
  let asked = 0;
  const redraw = async () => {
    const mine = ++asked;
    const story = await storyOf(record, judgement);
    const it = await whereIs(record.id);
    if (mine !== asked) return;
    render(
      html`<h1>${record.inspection.vehicle.name}</h1>
        <p><span class="one-line">${when(record.made)},</span> <span class="one-line">${record.inspection.place}.</span> <span class="faint">${stateWords(it)}</span></p>
        ${verdict(judgement)}
        ${serversWord(story, judgement)}
        <div class="row">
          ${it.state === 'there' ? html`<a class="button main" href=${'/api/records/' + record.id + '/report.pdf'} target="_blank" rel="noopener">Report, PDF</a>` : sendButton(record.id, it)}
          ${file.link}
          <a class="button" href="#/records">All records</a>
        </div>
        <h2>What is wrong</h2>
        ${defectList(judgement.defects, record.photos ?? [], (d) => beside(record, story.defects[judgement.defects.indexOf(d)], redraw))}
        ${record.inspection.notes?.length ? html`<ul>${record.inspection.notes.map((/** @type {any} */ n) => html`<li>${n}</li>`)}</ul>` : ''}
        ${record.log ? logOf(record.log, chart) : ''}
        ${afterwards(record, story, redraw)}
        ${it.state === 'there' ? handOver(record.id) : ''}
        <h2>Findings</h2>
        ${findings(judgement)}`,
      place,
    );
  };
  await redraw();
  const stop = onSync(redraw);
  return () => {
    stop();
    file.drop();
  };
}

/** What an auditor or an officer is given. @param {string} id */
function handOver(id) {
  return html`<details class="sheet"><summary>Hand over, for an audit or at the roadside</summary>
    <p>This report and what followed it, each signed report and record, and the seals that prove that nothing was changed.</p>
    <p><a class="button" href=${'/api/records/' + id + '/hand-over.zip'}>Package, ZIP</a></p>
    <p>Or let the other phone read this, in the same network:</p>
    <img class="code" src=${'/api/records/' + id + '/code.svg'} alt="Code with the address of the package" loading="lazy" />
  </details>`;
}

/** A log that was attached. @param {any} log @param {TraceChart | undefined} chart */
function logOf(log, chart) {
  return html`<section class="sheet" aria-label="Log"><h2>Log ${log.name}</h2>
    <p>${log.bytes} bytes, SHA-256 <code>${log.sha256}</code>.${chart ? '' : ' The log was too long to travel with the record; what was read from it did.'}</p>
    ${chart ? html`<div class="trace" role="img" aria-label="Pressures over time, with what was recognised" ${ref((where) => chart.stand(where))}></div>` : ''}
    ${recognised(log.trace)}</section>`;
}
