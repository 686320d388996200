// @ts-check
/** What is seen from the driver's seat: needles, speed of the engine, lamps, clock. */
import { html } from '/lib/lit-html/lit-html.js';
import { gauge } from '../draw/gauge.js';
import { clock } from '../clock.js';

/** @param {import('./session.js').Session} s */
export function dash(s) {
  /** @param {string} name @param {string} title */
  const lamp = (name, title) =>
    html`<li class=${s.on(name) ? 'lamp lit' : 'lamp'}><span aria-hidden="true">${s.on(name) ? '\u25CF' : '\u25CB'}</span> ${title}<span class="hidden">: ${s.on(name) ? 'on' : 'off'}</span></li>`;
  return html`<section class="sheet dash" aria-label="Dash">
    ${gauge(s.value('primary needle'), s.value('secondary needle'))}
    <div class="beside">
      <p class="row figures">
        <span><span class="number">${Math.round(s.value('engine') / 50) * 50}</span> rpm</span>
        <span><span class="number">${clock(s.time)}</span> clock</span>
        <span><span class="number">${clock(s.time - s.lap)}</span> lap</span>
        <button class="small" @click=${() => { s.lap = s.time; }}>Lap</button>
      </p>
      <ul class="lamps">
        ${lamp('low-air lamp', 'Low air')} ${lamp('low-air buzzer', 'Buzzer')} ${lamp('ABS lamp', 'ABS')}
        ${s.tows ? lamp('trailer ABS lamp', 'Trailer ABS') : ''} ${lamp('stop lamps', 'Stop lamps')} ${lamp('purge', 'Purge')}
      </ul>
    </div>
  </section>`;
}
