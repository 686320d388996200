// @ts-check
/** Records: those of this device and those the server keeps; found by any word, opened, printed. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { ref } from '/lib/lit-html/directives/ref.js';
import { ask, askJson } from '../engine.js';
import { places } from '../data.js';
import { all, get } from '../kept.js';
import { onSync, sync } from '../sync.js';
import { defectList } from '../yard/defects.js';
import { recognised } from '../yard/log.js';
import { TraceChart } from '../yard/trace.js';
import { PRACTICE, showFinished } from '../practice/finished.js';
import { findings, verdict } from '../yard/review.js';

/** @type {Record<string, string>} */
const STATES = { device: 'an exercise, kept on this device', here: 'on this device, not yet sent', there: 'kept by the server', refused: 'refused by the server' };

/** @param {HTMLElement} place @param {string[]} rest */
export function show(place, rest) {
  return rest[0] ? open(place, rest[0]) : list(place);
}

/** @param {HTMLElement} place */
async function list(place) {
  const state = { words: '', rows: /** @type {any[]} */ ([]), server: true, asked: 0 };

  async function find() {
    const mine = ++state.asked;
    const here = (await all('records')).map((r) => ({ id: r.id, made: r.made, place: r.place, vehicle: r.vehicle, verdict: r.verdict.replace(/-/g, ' '), passed: r.passed, state: r.state, words: JSON.stringify(r.record.inspection?.report ?? r.record.mode) }));
    let there = [];
    state.server = true;
    try {
      const answer = await fetch('/api/records?words=' + encodeURIComponent(state.words));
      there = (await answer.json()).records.map((/** @type {any} */ r) => ({ ...r, state: 'there' }));
    } catch {
      state.server = false;
    }
    if (mine !== state.asked) return;
    const wanted = state.words.toLowerCase().split(/\s+/).filter(Boolean);
    /** @param {any} r */
    const fits = (r) => wanted.every((w) => [r.id, r.made, r.place, r.vehicle, r.verdict, r.words].join(' ').toLowerCase().includes(w));
    const known = new Set(there.map((/** @type {any} */ r) => r.id));
    state.rows = [...here.filter((r) => fits(r) && !known.has(r.id)), ...there].sort((a, b) => Date.parse(b.made) - Date.parse(a.made));
    draw();
  }

  function draw() {
    render(
      html`<h1>Records</h1>
        <label>Find by plate, name, vehicle, place or verdict
          <input type="search" .value=${state.words} @input=${(/** @type {any} */ e) => { state.words = e.target.value; find(); }} /></label>
        ${state.server ? '' : html`<p class="doubt">The server is not there. These are the records of this device; what is not sent yet is sent when it is back.</p>`}
        <ul class="cards" aria-live="polite">
          ${state.rows.map(
            (r) => html`<li class="sheet"><h2>${r.vehicle}</h2>
              <p class=${r.passed || r.verdict === 'fit to move' ? 'good' : r.passed === false || r.verdict === 'not fit to move' ? 'bad' : 'doubt'}>${r.verdict}</p>
              <p>${new Date(r.made).toLocaleString()}, ${r.place}</p><p class="faint">${STATES[r.state]}</p>
              <a class="button" href=${'#/records/' + r.id}>Open<span class="hidden">: ${r.vehicle}</span></a></li>`,
          )}
        </ul>
        ${state.rows.length ? '' : html`<p>Nothing found.</p>`}`,
      place,
    );
  }
  await find();
  return onSync(find);
}

/** @param {HTMLElement} place @param {string} id */
async function open(place, id) {
  const here = await get('records', id);
  if (here?.kind === PRACTICE) return showFinished(place, here);
  const record = here?.record ?? (await fromServer(id));
  await places();
  const judgement = await askJson('judge', JSON.stringify(record.inspection));
  const blob = new Blob([JSON.stringify(record, null, 2)], { type: 'application/json' });
  const file = URL.createObjectURL(blob);
  const chart = record.log?.packed && new TraceChart((await ask('unpackLog', record.log.name, record.log.packed)).curves, record.log.trace.recognised);
  const redraw = async () => {
    const now = await get('records', id);
    const state = now?.state ?? 'there';
    render(
      html`<h1>${record.inspection.vehicle.name}</h1>
        <p>${new Date(record.made).toLocaleString()}, ${record.inspection.place}. <span class="faint">${STATES[state]}${now?.reason ? ': ' + now.reason : ''}</span></p>
        ${verdict(judgement)}
        <div class="row">
          ${state === 'there' ? html`<a class="button main" href=${'/api/records/' + id + '/report.pdf'} target="_blank" rel="noopener">Report, PDF</a>` : html`<button @click=${() => sync()}>Send now</button>`}
          <a class="button" href=${file} download=${'inspection-' + id + '.json'}>JSON</a>
          <a class="button" href="#/records">All records</a>
        </div>
        <h2>What is wrong</h2>
        ${defectList(judgement.defects, record.photos ?? [], () => html`<p class="faint">open</p>`)}
        ${record.inspection.notes?.length ? html`<ul>${record.inspection.notes.map((/** @type {any} */ n) => html`<li>${n}</li>`)}</ul>` : ''}
        ${record.log ? logOf(record.log, chart) : ''}
        <h2>Findings</h2>
        ${findings(judgement)}`,
      place,
    );
  };
  await redraw();
  const stop = onSync(redraw);
  return () => {
    stop();
    URL.revokeObjectURL(file);
  };
}

/** A log that was attached. @param {any} log @param {TraceChart | undefined} chart */
function logOf(log, chart) {
  return html`<section class="sheet" aria-label="Log"><h2>Log ${log.name}</h2>
    <p>${log.bytes} bytes, SHA-256 <code>${log.sha256}</code>.${chart ? '' : ' The log was too long to travel with the record; what was read from it did.'}</p>
    ${chart ? html`<div class="trace" role="img" aria-label="Pressures over time, with what was recognised" ${ref((where) => chart.stand(where))}></div>` : ''}
    ${recognised(log.trace)}</section>`;
}

/** @param {string} id */
async function fromServer(id) {
  const answer = await fetch('/api/records/' + encodeURIComponent(id));
  if (!answer.ok) throw new Error('There is no such record here or at the server.');
  return answer.json();
}
