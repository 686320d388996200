// @ts-check
/** The cab: what hands and feet can work. */
import { html } from '/lib/lit-html/lit-html.js';

const TRAVELS = [0, 25, 50, 100];

/** @param {import('./session.js').Session} s */
export function cab(s) {
  const runs = s.value('engine') > 0;
  /** @param {string} verb @param {string} name @param {string} title @param {string} pushed @param {string} pulled */
  const knob = (verb, name, title, pushed, pulled) =>
    html`<button class="knob" aria-pressed=${s.on(name)} @click=${() => s.act(verb, s.on(name) ? 'pull' : 'push')}>
      <span class="cap" aria-hidden="true"></span>${title} <b>${s.on(name) ? pushed : pulled}</b>
    </button>`;
  return html`<section class="sheet" aria-label="Controls">
    <div class="controls">
      <button aria-pressed=${s.on('key')} @click=${() => s.act('key', s.on('key') ? 'off' : 'on')}>Key <b>${s.on('key') ? 'on' : 'off'}</b></button>
      <button aria-pressed=${runs} @click=${() => s.act('engine', runs ? 'stop' : 'start')}>Engine <b>${runs ? 'running' : 'off'}</b></button>
      ${knob('parking-valve', 'parking knob in', 'Parking brakes', 'released', 'set')}
      ${s.tows ? knob('trailer-valve', 'trailer knob in', 'Trailer supply', 'open', 'closed') : ''}
    </div>
    <label>Engine speed, rpm
      <input type="range" min="600" max="2200" step="50" .value=${String(parseInt(s.deeds.last.get('throttle') ?? '600'))} @input=${(/** @type {any} */ e) => s.act('throttle', e.target.value + ' rpm')} /></label>
    <div class="row pedals">
      <button class="main pedal" @pointerdown=${(/** @type {PointerEvent} */ e) => press(e, s)} @pointerup=${() => lift(s)} @pointercancel=${() => lift(s)}
        @keydown=${(/** @type {KeyboardEvent} */ e) => isPress(e) && !e.repeat && press(e, s)} @keyup=${(/** @type {KeyboardEvent} */ e) => isPress(e) && lift(s)} @blur=${() => lift(s)}
        >Foot brake <b>hold, ${Math.round(s.value('foot brake'))} %</b></button>
      <fieldset class="holds"><legend>Foot stays at</legend>
        ${TRAVELS.map((t) => html`<button class="small" aria-pressed=${Math.round(s.value('foot brake')) === t} @click=${() => s.foot(t)}>${t} %</button>`)}
      </fieldset>
      ${s.tows
        ? html`<fieldset class="holds"><legend>Trailer hand valve</legend>
            ${[0, 50, 100].map((t) => html`<button class="small" aria-pressed=${Math.round(s.value('hand valve')) === t} @click=${() => s.act('hand-valve', t + ' %')}>${t} %</button>`)}
          </fieldset>`
        : ''}
      <fieldset class="holds"><legend>Gear</legend>
        ${['neutral', 'low', 'reverse'].map((g) => html`<button class="small" aria-pressed=${(s.deeds.last.get('gear') ?? 'neutral') === g} @click=${() => s.act('gear', g)}>${g}</button>`)}
        ${s.exercise.scenario.transmission === 'automatic' ? '' : [100, 40, 0].map((t) => html`<button class="small" @click=${() => s.act('clutch', t + ' %')}>clutch ${t} %</button>`)}
      </fieldset>
    </div>
    <p class="faint">Speed ${s.value('speed').toFixed(1)} km/h, moved ${s.value('way').toFixed(1)} m</p>
  </section>`;
}

/** @param {KeyboardEvent} e */
const isPress = (e) => e.key === ' ' || e.key === 'Enter';

/** The pedal stays down while finger or key does, wherever the finger slides. @param {any} e @param {any} s */
function press(e, s) {
  if (e.pointerId !== undefined) e.currentTarget.setPointerCapture(e.pointerId);
  s.pressed = true;
  s.foot(100);
}

/** @param {any} s */
function lift(s) {
  if (s.pressed) s.foot(0);
  s.pressed = false;
}
