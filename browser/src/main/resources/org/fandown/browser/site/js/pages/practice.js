// @ts-check
/** Practice: choose an exercise, or go on with one that is not finished. */
import { html, nothing, render } from '/lib/lit-html/lit-html.js';
import { places, scenarios, vehicles } from '../data.js';
import { askToStay } from '../kept.js';
import { Own, own } from '../practice/own.js';
import { Unfinished } from '../practice/unfinished.js';
import { Hold } from '../practice/hold.js';
import { exercise } from '../practice/exercise.js';

const USUAL_PLACE = 'CA-ON';

/** How an exercise can be done, the usual way first. */
const MODES = [
  ['guided', 'Guided'],
  ['free', 'Practise'],
  ['test', 'Test'],
];

/** @param {HTMLElement} place @param {string[]} rest the exercise and how it is done, or 'run' and one that was begun */
export async function show(place, rest) {
  if (rest[0] === 'run') return run(place, rest[1]);
  const all = await scenarios();
  const chosen = all.find((s) => s.id === rest[0]);
  if (chosen) return begin(chosen, MODES.some(([m]) => m === rest[1]) ? rest[1] : 'free');
  const mine = new Own(await places(), await vehicles(), begin);
  const open = (await Unfinished.list()).filter((u) => u.run);
  const draw = () => render(choices(all, mine, open, draw), place);
  draw();
}

/** @param {any} what @param {any} mode */
async function begin(what, mode) {
  const made = await Unfinished.begin(what, mode, what.scenario.place ?? USUAL_PLACE);
  askToStay();
  location.replace('#/practice/run/' + made.data.id);
}

/** An exercise that was begun, in this window alone. @param {HTMLElement} place @param {string} id */
async function run(place, id) {
  /** @type {(() => void) | undefined} */
  let leave;
  let left = false;
  const elsewhere = () =>
    render(
      html`<h1>This exercise is open in another window</h1>
        <p>It goes on there. What was done there is kept, and can be gone on with here instead.</p>
        <p class="row"><button class="main" @click=${() => { render(html`<p class="wait" role="status">Being taken over ...</p>`, place); Hold.takeOver(id).then(begin); }}>Go on here</button>
          <a class="button" href="#/practice">Choose another</a></p>`,
      place,
    );
  const begin = async (/** @type {Hold | undefined} */ hold) => {
    if (!hold || left) return hold ? hold.end() : elsewhere();
    const kept = await Unfinished.find(id);
    if (!kept) {
      hold.end();
      return gone(place);
    }
    render(nothing, place);
    const begun = exercise(place, kept);
    hold.goes = async (way) => {
      leave = undefined;
      await (await begun)(way);
      elsewhere();
    };
    const stop = await begun;
    leave = () => { stop('left').then(() => hold.end()); };
    if (left) leave();
  };
  await begin(await Hold.take(id));
  return () => {
    left = true;
    leave?.();
  };
}

/** @param {HTMLElement} place */
function gone(place) {
  render(
    html`<h1>This exercise is not here any more</h1>
      <p>It was finished or thrown away, or it was begun on another device. What is finished stands under <a href="#/records">Records</a>.</p>
      <p><a class="button main" href="#/practice">Choose an exercise</a></p>`,
    place,
  );
}

/** @param {any[]} all @param {Own} mine @param {any[]} open @param {() => void} draw */
function choices(all, mine, open, draw) {
  return html`<h1>Practice</h1>
    <p>Nobody gets hurt here, and no school can put these faults on a real truck. Guided, you are told each step with its reason and can have it shown; in a test you do not see inside the air system.</p>
    ${open.length ? html`<h2>Not finished yet</h2><ul class="cards">${open.map((u) => unfinished(u, open, draw))}</ul><h2>Begin</h2>` : ''}
    <ul class="cards">
      ${all.map(
        (s) =>
          html`<li class="sheet"><h2>${s.title}</h2><p>${s.told}</p><p class="faint">${s.vehicleName}</p>
            <div class="row">${MODES.map(
              ([mode, title], i) => html`<a class=${i ? 'button' : 'button main'} href=${'#/practice/' + s.id + '/' + mode}>${title}<span class="hidden">: ${s.title}</span></a>`,
            )}</div></li>`,
      )}
    </ul>
    ${own(mine, MODES, draw)}`;
}

/** @param {any} u @param {any[]} open @param {() => void} draw */
function unfinished(u, open, draw) {
  const away = async () => {
    if (!confirm('Throw this unfinished exercise away?')) return;
    await new Unfinished(u).forget();
    open.splice(open.indexOf(u), 1);
    draw();
  };
  return html`<li class="sheet"><h3>${u.exercise.title}</h3>
    <p>Begun ${u.begun.slice(0, 16).replace('T', ' ')}${u.mode === 'free' ? '' : ', ' + u.mode}</p>
    <div class="row"><a class="button main" href=${'#/practice/run/' + u.id}>Go on<span class="hidden">: ${u.exercise.title}</span></a>
      <button @click=${away}>Throw away<span class="hidden">: ${u.exercise.title}</span></button></div></li>`;
}
