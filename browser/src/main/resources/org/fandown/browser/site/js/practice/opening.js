// @ts-check
/** Makes an exercise stand: as it is found, or as it was left. */
import { ask } from '../engine.js';
import { EVERY } from './past.js';
import { Session } from './session.js';

/** So much of a run is done again before the page says how far it is, s. */
const REDONE = 20;

/** By whose rules a guide leads, and where it is. @typedef {{place: string, day: string, at: number}} Lead */

/**
 * An exercise as it is found.
 * @param {any} exercise {id, title, told, scenario} @param {Lead} [lead]
 */
export const open = (exercise, lead) => make(exercise, JSON.stringify(exercise.scenario), false, lead);

/** @param {any} exercise @param {string} document @param {boolean} isRun @param {Lead} [lead] */
async function make(exercise, document, isRun, lead) {
  const { id, names, network } = await ask('open', document, isRun);
  const session = new Session(exercise, id, names);
  session.network = network;
  await session.look(0);
  const psi = Math.round(Math.min(session.value('primary needle'), session.value('secondary needle')));
  if (lead) session.plan = await ask('guide', id, lead.place, lead.day, Math.max(0, psi));
  return session;
}

/**
 * Takes a run up where it was left, by doing it all again.
 * @param {any} exercise @param {string} run @param {(seconds: number) => void} soFar told how far it is @param {Lead} [lead]
 */
export async function resume(exercise, run, soFar, lead) {
  const session = await make(exercise, run, true, lead);
  let done = false;
  while (!done) {
    const got = await ask('redo', session.id, REDONE, EVERY);
    done = got.done;
    for (const frame of got.frames) session.keep(frame);
    if (done && !got.same) session.refused = 'The program has changed since this was left: what you did was done again, but the needles may stand a little otherwise.';
    soFar(session.time);
  }
  if (lead) await ask('guideTo', session.id, lead.at);
  await session.look(0);
  return session;
}
