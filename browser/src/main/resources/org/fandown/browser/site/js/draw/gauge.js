// @ts-check
/** A gauge with two needles over one scale: one whole, one hollow, so that colour is not needed. */
import { html, svg } from '/lib/lit-html/lit-html.js';

const MOST = 150;
const FROM = -210;
const TO = 30;

/** Degrees on the dial. @param {number} psi */
const turn = (psi) => FROM + ((TO - FROM) * Math.max(0, Math.min(MOST, psi))) / MOST;

/** @param {number} degrees @param {number} radius */
function at(degrees, radius) {
  const a = (degrees * Math.PI) / 180;
  return [160 + radius * Math.cos(a), 150 + radius * Math.sin(a)];
}

function ticks() {
  const out = [];
  for (let psi = 0; psi <= MOST; psi += 5) {
    const long = psi % 30 === 0;
    const [x1, y1] = at(turn(psi), 128);
    const [x2, y2] = at(turn(psi), long ? 108 : psi % 10 === 0 ? 116 : 121);
    out.push(svg`<line x1=${x1} y1=${y1} x2=${x2} y2=${y2} stroke="currentColor" stroke-width=${long ? 4 : 2} />`);
    if (long) {
      const [x, y] = at(turn(psi), 90);
      out.push(svg`<text x=${x} y=${y + 6} text-anchor="middle" style="font-size:19px">${psi}</text>`);
    }
  }
  return out;
}

const scale = ticks();

/**
 * The gauge; numbers beside it say the same.
 * @param {number} primary psi @param {number} secondary psi
 */
export function gauge(primary, secondary) {
  const words = 'primary ' + Math.round(primary) + ' psi, secondary ' + Math.round(secondary) + ' psi';
  return html`<figure class="gauge">
    <svg viewBox="20 10 280 220" role="img" aria-label=${'Air pressure: ' + words}>
      ${scale}
      <g transform=${'rotate(' + turn(secondary) + ' 160 150)'}>
        <path d="M160 142 L276 150 L160 158 Z" fill="var(--sheet)" stroke="var(--second)" stroke-width="4" />
      </g>
      <g transform=${'rotate(' + turn(primary) + ' 160 150)'}>
        <path d="M150 146 L270 150 L150 154 Z" fill="var(--first)" />
      </g>
      <circle cx="160" cy="150" r="11" fill="currentColor" />
      <text x="160" y="196" text-anchor="middle">psi</text>
    </svg>
    <figcaption class="row needles">
      <span><b class="whole" aria-hidden="true">&#9650;</b> primary <span class="number">${Math.round(primary)}</span></span>
      <span><b class="hollow" aria-hidden="true">&#9651;</b> secondary <span class="number">${Math.round(secondary)}</span></span>
    </figcaption>
  </figure>`;
}
