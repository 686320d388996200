// @ts-check
/** A pressure log that is attached in place of readings by hand: what it shows, and what counts. */
import { html } from '/lib/lit-html/lit-html.js';
import { ref } from '/lib/lit-html/directives/ref.js';
import { ask } from '../engine.js';
import { clock } from '../clock.js';
import { TraceChart } from './trace.js';

export class LogWork {
  /** @param {import('./draft.js').Draft} draft @param {() => void} redraw */
  constructor(draft, redraw) {
    this.draft = draft;
    this.redraw = redraw;
    this.trouble = '';
    this.reading = '';
    this.open = false;
    /** @type {TraceChart | undefined} */
    this.chart = undefined;
    /** The log the chart is of. */
    this.drawn = '';
  }

  /** Reads a file; where it cannot be used, what was attached before stays. @param {File | undefined} file */
  async attach(file) {
    if (!file) return;
    this.reading = file.name;
    this.open = true;
    this.trouble = '';
    this.redraw();
    try {
      await this.draft.attach(await ask('readLog', file));
    } catch (e) {
      this.trouble = e instanceof Error ? e.message : String(e);
    }
    this.reading = '';
    this.redraw();
  }

  /** Has the chart made where the log is another. */
  async prepare() {
    const log = this.draft.data.log;
    const now = log?.sha256 ?? '';
    if (now === this.drawn) return;
    this.chart = log && new TraceChart(await this.draft.curves(), log.trace.recognised);
    this.drawn = now;
  }
}

/** @param {LogWork} w */
export function logPart(w) {
  const log = w.draft.data.log;
  const tests = log?.used.length;
  return html`<details class="sheet log" .open=${w.open} @toggle=${(/** @type {any} */ e) => { w.open = e.target.open; }}>
    <summary>${log ? html`Log ${log.name}: ${tests} ${tests === 1 ? 'reading' : 'readings'} from it` : 'Attach a pressure log'}</summary>
    ${log ? shown(w) : html`<p>A recorded log of the pressures, as CSV or as a candump log of the vehicle network, in place of readings by hand. It is read on this device.</p>`}
    ${w.trouble ? html`<p class="trouble" role="alert">${w.trouble} What was entered before is still there.</p>` : ''}
    ${w.reading ? html`<p class="wait" role="status">Reading ${w.reading} ...</p>` : ''}
    <p class="row"><label class="button">${log ? 'Another log' : 'Choose the log'}<input class="hidden" type="file" accept=".csv,.log,.txt,text/*" @change=${(/** @type {any} */ e) => { w.attach(e.target.files[0]); e.target.value = ''; }} /></label>
      ${log ? html`<button type="button" @click=${() => w.draft.detach().then(w.redraw)}>Take the log out</button>` : ''}</p>
  </details>`;
}

/** @param {LogWork} w */
function shown(w) {
  const { trace, used } = w.draft.data.log;
  return html`<p>${trace['written-as'] === 'csv' ? 'CSV' : 'candump log'}, ${trace.lines} lines, ${clock(trace.seconds)} long.${trace.simulated ? html` <b>It says that it comes from a simulated vehicle.</b>` : ''}</p>
    ${recognised(trace)}
    <div class="trace" role="img" aria-label="Pressures over time, with what was recognised" ${ref((where) => w.chart?.stand(where))}></div>
    ${used.length ? html`<h3>What counts</h3><ul class="checks">${used.map((/** @type {any} */ u) => html`<li>${counted(w, u)}</li>`)}</ul>` : ''}
    ${trace.notes.length ? html`<details><summary>Notes (${trace.notes.length})</summary><ul>${trace.notes.map((/** @type {any} */ n) => html`<li>${n.text}</li>`)}</ul></details>` : ''}`;
}

/** What was recognised, numbered as in the picture. @param {any} trace */
export function recognised(trace) {
  return trace.recognised.length
    ? html`<ol>${trace.recognised.map((/** @type {any} */ r) => html`<li><b>${clock(r.from)} to ${clock(r.to)}</b> ${r.text}.</li>`)}</ol>`
    : html`<p>No air test was recognised in it.</p>`;
}

/** @param {LogWork} w @param {any} u */
function counted(w, u) {
  const counts = w.draft.fromLog(u.check) !== undefined;
  const toggle = () => w.draft.change((d) => { d.leftOut = counts ? [...(d.leftOut ?? []), u.check] : d.leftOut.filter((/** @type {any} */ c) => c !== u.check); }).then(w.redraw);
  return html`<button type="button" aria-pressed=${counts} @click=${toggle}>${u.title}: ${counts ? 'from the log' : 'left out'}</button>`;
}

/** In place of the form of a check: that its reading comes from the log. @param {any} check @param {import('./draft.js').Draft} draft @param {() => void} redraw */
export function fromLog(check, draft, redraw) {
  const found = draft.data.log.trace.recognised.find((/** @type {any} */ r) => draft.data.log.used.some((/** @type {any} */ u) => u.check === check.id && u.from === r.from && u.to === r.to));
  return html`<fieldset class="entry"><legend>${check.title}</legend>
    <p><b>From the log.</b> ${found ? found.text + '.' : ''}</p>
    <button type="button" @click=${() => draft.change((d) => { d.leftOut = [...(d.leftOut ?? []), check.id]; }).then(redraw)}>Enter by hand instead</button>
  </fieldset>`;
}
