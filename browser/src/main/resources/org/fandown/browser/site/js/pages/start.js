// @ts-check
/** The first page: what one can do here. */
import { html, render } from '/lib/lit-html/lit-html.js';

const WORK = [
  ['practice', 'Practice', 'A truck with faults hidden in it. Sit in the cab, walk round it, find what is wrong.'],
  ['yard', 'Inspect a vehicle', 'The plan for your vehicle and place, one step at a time. Readings, stopwatch, verdict, report.'],
  ['rules', 'Rules', 'The limits for a vehicle in a place, each with its source. Two places side by side.'],
  ['vehicles', 'Vehicles', 'Vehicles of your own, from a file or a short form, for the yard, practice and rules.'],
  ['records', 'Records', 'What was inspected on this device and here: reports, defects, verdicts.'],
];

/** @param {HTMLElement} place */
export function show(place) {
  render(
    html`<h1>Is it safe to move?</h1>
      <p class="care">Chock the wheels before anything else, and never go under a vehicle whose wheels are not chocked.</p>
      <ul class="cards">
        ${WORK.map(
          ([path, title, text]) =>
            html`<li class="sheet"><h2>${title}</h2><p>${text}</p><a class="button main" href=${'#/' + path}>${title}</a></li>`,
        )}
      </ul>
      <p><a href="#/accounts">Accounts</a>: who may log in, once others than you use this site.</p>`,
    place,
  );
}
