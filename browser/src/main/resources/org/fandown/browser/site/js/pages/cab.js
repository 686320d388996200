// @ts-check
/** The cab: what a driver sees and works, drawn anew with each frame. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { ask } from '../engine.js';
import { gauge } from '../draw/gauge.js';

/** Longest time a frame lets pass, s: a page that was hidden does not run on meanwhile. */
const MOST_STEP = 0.25;

/** @param {HTMLElement} place @param {{id: string, title: string, told: string, scenario: any}} exercise */
export async function cab(place, exercise) {
  const { id, names } = await ask('open', JSON.stringify(exercise.scenario));
  const index = new Map(names.map((n, i) => [n.name, i]));
  const state = { frame: new Float64Array(names.length), events: [], station: 'front', foot: 0, refused: '', running: true, last: 0 };
  const value = (name) => state.frame[index.get(name) ?? -1] ?? 0;
  const on = (name) => value(name) > 0;
  const has = (name) => index.has(name);

  const act = async (verb, what) => {
    state.refused = await ask('act', id, verb, what);
  };
  const foot = (travel) => {
    state.foot = travel;
    act('foot-brake', travel + ' %');
  };
  const knob = (verb, name, title, words) =>
    html`<button aria-pressed=${on(name)} @click=${() => act(verb, on(name) ? 'pull' : 'push')}>
      ${title}: ${on(name) ? words[0] : words[1]}
    </button>`;
  const lamp = (name, title) => html`<li class=${on(name) ? 'lamp lit' : 'lamp'}>${title}: ${on(name) ? 'on' : 'off'}</li>`;

  function draw() {
    render(
      html`<h1>${exercise.title}</h1>
        <p>${exercise.told}</p>
        <section class="sheet" aria-label="Dash">
          ${gauge(value('primary needle'), value('secondary needle'))}
          <p><span class="number">${Math.round(value('engine') / 50) * 50}</span> rpm <span class="number clock">${clock(value('time'))}</span></p>
          <ul class="lamps">
            ${lamp('low-air lamp', 'Low-air lamp')} ${lamp('low-air buzzer', 'Buzzer')} ${lamp('ABS lamp', 'ABS lamp')} ${lamp('purge', 'Purge heard')}
          </ul>
        </section>
        <section class="sheet" aria-label="Controls">
          <div class="row">
            <button aria-pressed=${on('key')} @click=${() => act('key', on('key') ? 'off' : 'on')}>Key: ${on('key') ? 'on' : 'off'}</button>
            <button @click=${() => act('engine', value('engine') > 0 ? 'stop' : 'start')}>${value('engine') > 0 ? 'Stop the engine' : 'Start the engine'}</button>
            ${knob('parking-valve', 'parking knob in', 'Parking brakes', ['released', 'set'])}
            ${has('control line-1') || exercise.tows ? knob('trailer-valve', 'trailer knob in', 'Trailer supply', ['open', 'closed']) : ''}
          </div>
          <label>Engine speed, rpm
            <input type="range" min="600" max="2200" step="50" value="600" @input=${(e) => act('throttle', e.target.value + ' rpm')} /></label>
          <button class="main pedal" @pointerdown=${() => foot(100)} @pointerup=${() => foot(0)} @pointercancel=${() => foot(0)}
            @keydown=${(e) => (e.key === ' ' || e.key === 'Enter') && !e.repeat && foot(100)}
            @keyup=${(e) => (e.key === ' ' || e.key === 'Enter') && foot(0)}>Foot brake: hold</button>
          <p role="status" class="bad-text">${state.refused}</p>
        </section>
        <section class="sheet" aria-label="What happened">
          <h2>What happened</h2>
          <ol class="events" reversed>${state.events.slice(-12).reverse().map((e) => html`<li>${clock(e.seconds)} ${e.text}</li>`)}</ol>
        </section>`,
      place,
    );
  }

  async function frame(now) {
    if (!state.running) return;
    const seconds = state.last ? Math.min(MOST_STEP, (now - state.last) / 1000) : 0;
    state.last = now;
    const got = await ask('step', id, seconds, state.events.length);
    if (!state.running) return;
    state.frame = got.frame;
    state.station = got.station;
    state.events.push(...got.events);
    draw();
    requestAnimationFrame(frame);
  }
  requestAnimationFrame(frame);
  return () => {
    state.running = false;
    ask('close', id);
  };
}

/** @param {number} seconds */
function clock(seconds) {
  const s = Math.floor(seconds);
  return Math.floor(s / 60) + ':' + String(s % 60).padStart(2, '0');
}
