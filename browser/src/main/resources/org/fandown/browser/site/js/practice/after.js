// @ts-check
/** After an exercise: marks with feedback, the trace with what happened in it, and a replay. */
import { html } from '/lib/lit-html/lit-html.js';
import { ref } from '/lib/lit-html/directives/ref.js';
import uPlot from '/lib/uplot/dist/uPlot.esm.js';
import { ask, askJson } from '../engine.js';
import { dash } from './dash.js';
import { inside } from './inside.js';
import { clock } from '../clock.js';

export class After {
  /** @param {import('./session.js').Session} session @param {string} place @param {string} made the moment it ended; the rules of that day count */
  constructor(session, place, made) {
    this.session = session;
    this.place = place;
    this.made = made;
    /** @type {any} */
    this.marks = undefined;
    this.trouble = '';
    this.at = session.time;
    this.placed = false;
  }

  /** Has the run marked. */
  async mark() {
    try {
      this.run = await ask('run', this.session.id, this.session.exercise.title);
      this.marks = await askJson('mark', this.run, this.place, this.made.slice(0, 10));
    } catch (e) {
      this.trouble = e instanceof Error ? e.message : String(e);
    }
  }

  /** Draws the trace into its place once that stands on the page. @param {Element | undefined} where */
  stand(where) {
    if (where && !this.placed) requestAnimationFrame(() => this.draw(/** @type {HTMLElement} */ (where)));
    this.placed ||= where !== undefined;
  }

  /** @param {HTMLElement} where */
  draw(where) {
    const css = getComputedStyle(where);
    const past = this.session.past.frames;
    /** @param {string} name */
    const column = (name) => past.map((p) => p.frame[this.session.index.get(name) ?? 0]);
    const axis = { stroke: css.color, grid: { stroke: css.getPropertyValue('--line'), width: 0.5 } };
    const plot = new uPlot(
      {
        width: where.clientWidth,
        height: 260,
        legend: { show: false },
        scales: { x: { time: false }, y: { range: [0, 150] } },
        axes: [{ ...axis, values: (_, ticks) => ticks.map(clock) }, { ...axis, label: 'psi', stroke: css.color }],
        series: [
          { label: 'time', value: (_, v) => (v == null ? '' : clock(v)) },
          { label: 'primary psi', stroke: css.getPropertyValue('--first'), width: 2 },
          { label: 'secondary psi', stroke: css.getPropertyValue('--second'), width: 2, dash: [8, 4] },
        ],
        hooks: { draw: [(u) => marksOf(u, this.session.events, css)] },
      },
      [past.map((p) => p.seconds), column('primary needle'), column('secondary needle')],
      where,
    );
    new ResizeObserver(() => plot.setSize({ width: where.clientWidth, height: 260 })).observe(where);
  }
}

/** Marks what happened as lines on the trace. @param {any} u @param {any[]} events @param {CSSStyleDeclaration} css */
function marksOf(u, events, css) {
  const pen = u.ctx;
  pen.save();
  pen.strokeStyle = css.getPropertyValue('--bad');
  for (const e of events) {
    if (e.kind !== 'hazard' && e.kind !== 'sign') continue;
    const x = u.valToPos(e.seconds, 'x', true);
    const high = e.kind === 'hazard';
    pen.lineWidth = high ? 3 : 1;
    pen.beginPath();
    pen.moveTo(x, high ? u.bbox.top : u.bbox.top + u.bbox.height - 14);
    pen.lineTo(x, u.bbox.top + u.bbox.height);
    pen.stroke();
  }
  pen.restore();
}

/** @param {any} m marks, nothing where there are none */
export function marksShown(m) {
  return m
    ? html`<section class="sheet" aria-label="Marks">
        <h2>Marks</h2>
        <p class=${'number ' + (m.passed ? 'good' : 'bad')}>${m.kept} of ${m.of}, ${m.passed ? 'passed' : 'not passed'}</p>
        <p>${m.critical ? 'A safety error fails the run whatever the marks.' : 'Needed: ' + m.needed + '.'} ${m['sheet-note'] ?? ''}</p>
        ${m.items.filter((/** @type {any} */ i) => i.feedback.length).map(item)}
        <details><summary>In order</summary><ul>${m.items.filter((/** @type {any} */ i) => !i.feedback.length).map((/** @type {any} */ i) => html`<li class="good">${i.title}</li>`)}</ul></details>
        <p class="faint">${m.care}</p>
      </section>`
    : '';
}

/** @param {After} a */
export function after(a) {
  return html`${a.trouble ? html`<p class="trouble" role="alert">${a.trouble}</p>` : ''}
    ${a.marks || a.trouble ? marksShown(a.marks) : html`<p class="wait">Being marked ...</p>`}
    <section class="sheet" aria-label="Trace">
      <h2>Trace</h2>
      <div class="trace" ${ref((where) => a.stand(where))}></div>
      <label>Replay: ${clock(a.at)}
        <input type="range" min="0" max=${Math.max(1, a.session.time).toFixed(0)} step="1" .value=${String(Math.round(a.at))} @input=${(/** @type {any} */ e) => { a.at = Number(e.target.value); }} /></label>
      <p class="faint">${(a.session.events.findLast((e) => e.seconds <= a.at) ?? { text: '' }).text}</p>
    </section>
    ${dash(a.session.at(a.at))} ${inside(a.session.at(a.at))}`;
}

/** @param {any} i */
function item(i) {
  return html`<h3 class="bad">${i.title}: ${i.deducted ? '-' + i.deducted : 'noted'}${i.critical ? ' (safety)' : ''}</h3>
    <ul>${i.feedback.map((/** @type {any} */ f) => html`<li><b>${clock(f.seconds)}</b> ${f.happened} ${f.spoiled ?? ''} <b>Instead:</b> ${f.instead}</li>`)}</ul>`;
}
