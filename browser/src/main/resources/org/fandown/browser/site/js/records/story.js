// @ts-check
/** What became of each defect of a report: put right, certified as not needing it, reviewed; and the forms to say so. */
import { html } from '/lib/lit-html/lit-html.js';
import { all, put } from '../kept.js';
import { sync } from '../sync.js';
import { moment } from '../yard/draft.js';
import { when } from './sent.js';

/** @typedef {{record: string, made: string, by: string, outcome?: string, work?: string, waiting?: boolean}} Happened */
/** @typedef {{defect: number, text: string, words: string, open: boolean, events: Happened[]}} Defect */
/** @typedef {{defects: Defect[], server: boolean, because: string[], verdict: string, keep: {until: string, rule: string}[]}} Story */

/** @type {Record<string, string>} */
const OUTCOMES = { repaired: 'put right', 'not-needed': 'needs no repair for safe driving' };

/** What the server tells of a report; without it, what this device knows. @param {any} record @param {any} judgement @returns {Promise<Story>} */
export async function storyOf(record, judgement) {
  const story = (await asked(record.id)) ?? alone(judgement);
  for (const kept of await all('records')) {
    const { repair, review } = kept.record;
    if (kept.state === 'there' || (repair ?? review)?.of !== record.id) continue;
    const event = { record: kept.id, made: kept.made, by: (repair ?? review).by, waiting: true };
    for (const defect of story.defects) {
      const item = repair?.settled.find((/** @type {any} */ s) => s.defect === defect.defect);
      if (item) Object.assign(defect, { words: OUTCOMES[item.outcome], open: false });
      if (item || review) defect.events.push({ ...event, ...item });
    }
  }
  return story;
}

/** @param {string} id @returns {Promise<Story | undefined>} */
async function asked(id) {
  try {
    const answer = await fetch('/api/records/' + id + '/defects');
    if (!answer.ok) return undefined;
    const { defects, dates = [], because = [], verdict } = await answer.json();
    return { defects, because, verdict, server: true, keep: dates.filter((/** @type {any} */ d) => d.sense === 'keep') };
  } catch {
    return undefined;
  }
}

/** @param {any} judgement @returns {Story} */
function alone(judgement) {
  const defects = judgement.defects.map((/** @type {any} */ d, /** @type {number} */ i) => ({ defect: i + 1, text: (d.wheel ? d.wheel + ': ' : '') + d.text, words: 'reported', open: true, events: [] }));
  return { defects, server: false, because: [], verdict: '', keep: [] };
}

/** Keeps a record that follows a report, and sends it. @param {any} record @param {string} kind @param {any} content */
async function keep(record, kind, content) {
  const id = crypto.randomUUID();
  const made = moment();
  const own = { format: record.format, id, kind, made, [kind]: { of: record.id, ...content } };
  await put('records', { id, state: 'here', record: own, verdict: kind, vehicle: record.inspection.vehicle.name, place: record.inspection.place, made });
  await sync();
}

/** @param {SubmitEvent} e */
const entered = (e) => Object.fromEntries([...new FormData(/** @type {HTMLFormElement} */ (e.target))].map(([k, v]) => [k, String(v).trim()]));

/** @param {Happened} e */
const event = (e) => html`<li>${e.outcome ? OUTCOMES[e.outcome] : 'reviewed'} by ${e.by}, ${when(e.made)}${e.work ? ': ' + e.work : ''}${e.waiting ? html` <span class="faint">(not yet sent)</span>` : ''}</li>`;

/** The form under an open defect. @param {any} record @param {Defect} defect @param {() => void} redraw */
function settle(record, defect, redraw) {
  const send = async (/** @type {SubmitEvent} */ e) => {
    e.preventDefault();
    const { outcome, work, by, firm } = entered(e);
    await keep(record, 'repair', { settled: [{ defect: defect.defect, outcome, work }], by, ...(firm ? { firm } : {}) });
    redraw();
  };
  return html`<details class="settle"><summary>Say what was done</summary>
    <form @submit=${send}>
      <fieldset class="choice"><legend>This defect</legend>
        <label><input type="radio" name="outcome" value="repaired" required /> was put right</label>
        <label><input type="radio" name="outcome" value="not-needed" /> needs no repair for safe driving</label></fieldset>
      <label>What was done, or why nothing is needed<input name="work" required autocomplete="off" /></label>
      <label>Your name<input name="by" required autocomplete="name" /></label>
      <label>For whom (shop or carrier)<input name="firm" autocomplete="organization" /></label>
      <p class="faint">You certify this. It is kept as a record of its own and cannot be taken back, only corrected by another.</p>
      <button class="main">Certify</button>
    </form></details>`;
}

/** Beside a defect: where it stands, what happened, and the form. @param {any} record @param {Defect | undefined} defect @param {() => void} redraw */
export function beside(record, defect, redraw) {
  if (!defect) return '';
  return html`<p class=${defect.open ? 'bad' : 'good'}>${defect.words}</p>
    ${defect.events.length ? html`<ol class="events">${defect.events.map(event)}</ol>` : ''}
    ${defect.open ? settle(record, defect, redraw) : ''}`;
}

/** Until when the place wants the report kept: each day once, with its rules. @param {{until: string, rule: string}[]} dates */
function keepUntil(dates) {
  const days = [...new Set(dates.map((d) => d.until.slice(0, 10)))].sort();
  return days.map((day) => html`<p>Keep this report until <strong class="one-line">${day}</strong>
    <span class="faint">(${dates.filter((d) => d.until.startsWith(day)).map((d) => 'rule ' + d.rule).join(', ')})</span>. Nothing kept here is ever deleted.</p>`);
}

/** The next driver's review, and how long the report is kept. @param {any} record @param {Story} story @param {() => void} redraw */
export function afterwards(record, story, redraw) {
  const send = async (/** @type {SubmitEvent} */ e) => {
    e.preventDefault();
    await keep(record, 'review', { by: entered(e).by });
    redraw();
  };
  return html`${keepUntil(story.keep)}
    <details class="sheet"><summary>Review by the next driver</summary>
      <form @submit=${send}><p>I have reviewed this report and, where defects are listed, what was certified about them.</p>
        <label>Your name<input name="by" required autocomplete="name" /></label><button class="main">Reviewed</button></form></details>`;
}

/** What the server found that the device did not know. @param {Story} story @param {any} judgement */
export function serversWord(story, judgement) {
  const ours = judgement.verdict.replace(/-/g, ' ');
  return story.server && story.verdict !== ours
    ? html`<section class="sheet" role="note"><h2>The server's verdict: ${story.verdict}</h2><ul>${story.because.map((b) => html`<li>${b}</li>`)}</ul></section>`
    : '';
}
