// @ts-check
/** Practice: choose an exercise, then operate the truck. */
import { html, render } from '/lib/lit-html/lit-html.js';
import { scenarios } from '../data.js';
import { cab } from './cab.js';

/** @param {HTMLElement} place @param {string[]} rest */
export async function show(place, rest) {
  const all = await scenarios();
  const chosen = all.find((s) => s.id === rest[0]);
  if (chosen) return cab(place, chosen);
  render(
    html`<h1>Practice</h1>
      <p>Nobody gets hurt here, and no school can put these faults on a real truck.</p>
      <ul class="cards">
        ${all.map(
          (s) =>
            html`<li class="sheet"><h2>${s.title}</h2><p>${s.told}</p><p class="faint">${s.vehicleName}</p><a class="button main" href=${'#/practice/' + s.id}>Begin<span class="skip">: ${s.title}</span></a></li>`,
        )}
      </ul>`,
    place,
  );
}
