// @ts-check
/** A vehicle from above, front at the top, drawn from its file: any units, any axles. */
import { svg, html } from '/lib/lit-html/lit-html.js';

const WIDE = 360;
const AXLE = 68;
const CAB = 92;
const GAP = 70;
const WHEEL = 84;

/**
 * The places of a vehicle, from front to rear.
 * @param {any} vehicle
 * @returns {{height: number, units: any[], axles: any[], couplings: any[]}}
 */
export function plan(vehicle) {
  let y = 46;
  let number = 0;
  /** @type {any[]} */
  const units = [];
  /** @type {any[]} */
  const axles = [];
  /** @type {any[]} */
  const couplings = [];
  vehicle.units.forEach((/** @type {any} */ unit, /** @type {number} */ u) => {
    const top = y;
    y += u === 0 ? CAB : 56;
    unit.axles.forEach((/** @type {any} */ axle) => {
      number += 1;
      axles.push({ number, y, axle, steer: axle.position === 'steer' });
      y += AXLE;
    });
    units.push({ number: u + 1, top, bottom: y, unit });
    if (u + 1 < vehicle.units.length) {
      couplings.push({ number: u + 1, y: y + GAP / 2 });
      y += GAP;
    }
  });
  return { height: y + 46, units, axles, couplings };
}

/**
 * The drawing. Each place can be chosen by touch and by key.
 * @param {any} vehicle
 * @param {{at: string, chocked: (wheel: string) => boolean, says: (wheel: string) => string, choose: (place: string) => void}} what
 */
export function vehicleDrawing(vehicle, what) {
  const p = plan(vehicle);
  /** @param {string} place @param {string} title @param {any} inner */
  const target = (place, title, inner) =>
    svg`<g class=${what.at === place ? 'place here' : 'place'} role="button" tabindex="0" aria-label=${title} aria-pressed=${what.at === place}
      @click=${() => what.choose(place)} @keydown=${(/** @type {KeyboardEvent} */ e) => (e.key === 'Enter' || e.key === ' ') && (e.preventDefault(), what.choose(place))}>${inner}</g>`;
  /** @param {any} a @param {'L' | 'R'} side */
  const wheel = (a, side) => {
    const id = a.number + side;
    const x = side === 'L' ? 14 : WIDE - 14 - WHEEL;
    const chocked = what.chocked(id);
    const says = what.says(id);
    return target(
      id,
      'Wheel ' + id + (chocked ? ', chocked' : '') + (says ? ', ' + says : ''),
      svg`<rect x=${x} y=${a.y} width=${WHEEL} height="54" rx="12" class="tyre" />
        <text x=${x + WHEEL / 2} y=${a.y + 24} text-anchor="middle" class="on-tyre">${id}</text>
        <text x=${x + WHEEL / 2} y=${a.y + 44} text-anchor="middle" class="on-tyre small">${says}</text>
        ${chocked ? svg`<path d=${'M' + (x + 8) + ' ' + (a.y - 7) + 'h' + (WHEEL - 16) + 'v7h-' + (WHEEL - 16) + 'z M' + (x + 8) + ' ' + (a.y + 54) + 'h' + (WHEEL - 16) + 'v7h-' + (WHEEL - 16) + 'z'} class="chock" />` : ''}`,
    );
  };
  return html`<svg class="vehicle" viewBox=${'0 0 ' + WIDE + ' ' + p.height} role="group" aria-label=${vehicle.name + ', from above, front at the top'}>
    ${target('front', 'In front of the vehicle', svg`<rect x="110" y="4" width="140" height="36" rx="10" class="spot" /><text x="180" y="28" text-anchor="middle">front</text>`)}
    ${p.units.map(
      (u) => svg`<rect x="92" y=${u.top} width=${WIDE - 184} height=${u.bottom - u.top} rx="16" class="body" />
        ${p.axles.filter((a) => a.y > u.top && a.y < u.bottom).map((a) => svg`<line x1="60" x2=${WIDE - 60} y1=${a.y + 27} y2=${a.y + 27} class="axle" />`)}`,
    )}
    ${target('cab', 'At the cab', svg`<rect x="112" y="60" width="136" height="52" rx="12" class="spot" /><text x="180" y="92" text-anchor="middle">cab</text>`)}
    ${p.units.map((u) => {
      const y = Math.max(u.top + 124, u.bottom - 64);
      const middle = u.number === 1 ? y : u.bottom - 60;
      return target('reservoirs ' + u.number, 'Reservoirs of unit ' + u.number, svg`<rect x="118" y=${middle} width="124" height="46" rx="23" class="spot" /><text x="180" y=${middle + 29} text-anchor="middle">reservoirs</text>`);
    })}
    ${p.couplings.map((c) => target('coupling ' + c.number, 'Trailer lines behind unit ' + c.number, svg`<path d=${'M130 ' + (c.y - 35) + 'v70 M230 ' + (c.y - 35) + 'v70'} class="lines" /><rect x="118" y=${c.y - 23} width="124" height="46" rx="10" class="spot" /><text x="180" y=${c.y + 6} text-anchor="middle">lines</text>`))}
    ${p.axles.map((a) => [wheel(a, 'L'), wheel(a, 'R')])}
    ${target('rear', 'Behind the vehicle', svg`<rect x="110" y=${p.height - 40} width="140" height="36" rx="10" class="spot" /><text x="180" y=${p.height - 16} text-anchor="middle">rear</text>`)}
  </svg>`;
}
