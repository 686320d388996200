// @ts-check
/** The list of records: of vehicles or, apart from them, of exercises; found by any word. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { PRACTICE, all } from '../kept.js';
import { mustLogIn, whoIsHere } from '../people.js';
import { onSync } from '../sync.js';
import { stateWords, when } from './sent.js';

const VEHICLE_KIND = 'inspection';

/** What is found by on this device, as the server finds by its own. @param {any} r */
const wordsOf = (r) => (r.record.kind === PRACTICE ? r.record.run.scenario.title : Object.values(r.record.inspection.report ?? {}).join(' '));

/** @param {any} r what the device keeps */
const rowOf = (r) => ({ id: r.id, kind: r.record.kind, made: r.made, place: r.place, vehicle: r.vehicle, verdict: r.verdict.replace(/-/g, ' '), state: r.state, reason: r.reason, words: wordsOf(r) });

/** @param {string} kind @param {string} words */
async function fromServer(kind, words) {
  const answer = await fetch('/api/records?kind=' + kind + '&words=' + encodeURIComponent(words));
  if (answer.status === 401) await whoIsHere();
  if (!answer.ok) throw new Error('The server does not answer (' + answer.status + ').');
  return (await answer.json()).records.map((/** @type {any} */ r) => ({ ...r, state: 'there' }));
}

/** @param {any} r @param {string[]} wanted */
const fits = (r, wanted) => {
  const text = [r.id, r.made, r.place, r.vehicle, r.verdict, r.words].join(' ').toLowerCase();
  return wanted.every((w) => text.includes(w));
};

/** @param {HTMLElement} place @param {boolean} practice whether exercises are listed */
export async function list(place, practice) {
  const kind = practice ? PRACTICE : VEHICLE_KIND;
  const state = { words: '', rows: /** @type {any[]} */ ([]), server: true, asked: 0 };

  async function find() {
    const mine = ++state.asked;
    const here = (await all('records')).filter((r) => r.record.kind === kind).map(rowOf);
    let there = [];
    let server = true;
    try {
      there = await fromServer(kind, state.words);
    } catch {
      server = false;
    }
    if (mine !== state.asked) return;
    const wanted = state.words.toLowerCase().split(/\s+/).filter(Boolean);
    const known = new Set(there.map((/** @type {any} */ r) => r.id));
    state.server = server;
    state.rows = [...here.filter((r) => fits(r, wanted) && !known.has(r.id)), ...there].sort((a, b) => Date.parse(b.made) - Date.parse(a.made));
    draw();
  }

  function draw() {
    render(
      html`<h1>Records</h1>
        <nav class="views" aria-label="Kind of record">
          <a class="button" href="#/records" aria-current=${practice ? 'false' : 'true'}>Vehicles</a>
          <a class="button" href="#/records/practice" aria-current=${practice ? 'true' : 'false'}>Practice</a>
        </nav>
        ${practice ? html`<p>Exercises on simulated vehicles. None is an inspection of a real one.</p>` : ''}
        <label>Find by ${practice ? 'exercise, vehicle, place or marks' : 'plate, name, vehicle, place or verdict'}
          <input type="search" .value=${state.words} @input=${(/** @type {any} */ e) => { state.words = e.target.value; find(); }} /></label>
        ${state.server || !mustLogIn() ? '' : html`<p class="doubt">Nobody is logged in. These are the records of this device; nothing of them is lost, and what is not sent yet is sent once you <a href="#/log-in">log in</a>.</p>`}
        ${state.server || mustLogIn() ? '' : html`<p class="doubt">The server is not there. These are the records of this device; what is not sent yet is sent when it is back.</p>`}
        <ul class="cards" aria-live="polite">${state.rows.map(card)}</ul>
        ${state.rows.length ? '' : html`<p>Nothing found.</p>`}`,
      place,
    );
  }
  await find();
  return onSync(find);
}

/** How good it is. @param {any} r */
function style(r) {
  if (r.kind === PRACTICE) return / not |^not /.test(r.verdict) ? 'bad' : 'good';
  return r.verdict === 'fit to move' ? 'good' : r.verdict === 'not fit to move' ? 'bad' : 'doubt';
}

/** @param {any} r */
function card(r) {
  const exercise = r.kind === PRACTICE;
  const title = exercise ? r.words : r.vehicle;
  return html`<li class="sheet"><p class=${'verdict-line ' + style(r)}>${r.verdict}</p>
    <h2>${title}</h2>
    ${exercise ? html`<p>Exercise${title === r.vehicle ? '' : ', simulated ' + r.vehicle}</p>` : ''}
    <p><span class="one-line">${when(r.made)},</span> <span class="one-line">${r.place}</span></p><p class="faint">${stateWords(r)}</p>
    <a class="button" href=${'#/records/' + r.id}>Open<span class="hidden">: ${title}</span></a></li>`;
}
