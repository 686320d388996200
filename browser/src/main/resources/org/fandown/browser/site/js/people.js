// @ts-check
/** Who is logged in here. Without the server that stays open, and everything on the device goes on as ever. */

/**
 * @typedef {object} Me
 * @property {boolean} accounts whether one has to log in at all
 * @property {string} [name] of who is logged in
 * @property {string} [role] such as site-manager
 * @property {string} [token] what changes something shows it
 */

/** @type {Me | undefined} */
let me;
/** @type {Promise<Me | undefined> | undefined} */
let asking;
/** @type {Set<() => void>} */
const listeners = new Set();
const others = new BroadcastChannel('fandown-people');

/** Names of roles as people read them, the most careful first. @type {[string, string][]} */
export const ROLES = [['learner', 'learner'], ['driver', 'driver'], ['instructor', 'instructor'], ['mechanic', 'mechanic'], ['site-manager', 'site manager']];

/** @param {string | undefined} role */
export const roleTitle = (role) => ROLES.find(([name]) => name === role)?.[1] ?? '';

/** Who is logged in, as far as is known; undefined while the server was never reached. */
export const known = () => me;

/** Whether one may look after accounts: a site manager, or anybody while there are none. */
export const mayManage = () => me !== undefined && (!me.accounts || me.role === 'site-manager');

/** Whether the server keeps nothing of this device before somebody logs in. */
export const mustLogIn = () => me !== undefined && me.accounts && !me.name;

/** Calls back whenever somebody logged in or out. @param {() => void} listener @returns {() => void} */
export function onPeople(listener) {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** @param {Me} now */
function learn(now) {
  const changed = JSON.stringify(now) !== JSON.stringify(me);
  me = now;
  if (changed) for (const listener of listeners) listener();
  return changed;
}

/** Asks the server anew; without it, what is known stays. @returns {Promise<Me | undefined>} */
export function whoIsHere() {
  asking ??= fetch('/api/me')
    .then(async (answer) => {
      if (answer.ok) learn(await answer.json());
    })
    .catch(() => {})
    .then(() => {
      asking = undefined;
      return me;
    });
  return asking;
}

others.addEventListener('message', () => whoIsHere());

/** An answer that is no success, as an error with the server's words. @param {Response} answer */
export async function orRefused(answer) {
  if (answer.ok) return answer;
  const text = await answer.text();
  throw new Error(text.startsWith('{') ? JSON.parse(text).title : text);
}

/**
 * Sends something that changes something. Where the session has ended it says so and changes nothing here.
 * @param {string} path @param {BodyInit} body @param {string} [type]
 * @returns {Promise<Response>}
 */
export async function send(path, body, type = 'application/json') {
  if (!me) await whoIsHere();
  const post = () =>
    fetch(path, { method: 'POST', headers: { 'Content-Type': type, ...(me?.token ? { 'X-Fandown-Token': me.token } : {}) }, body });
  let answer = await post();
  // Somebody may have logged in or out in another window meanwhile.
  if (answer.status === 403 && me?.token) {
    const before = me.token;
    await whoIsHere();
    if (me.token !== before) answer = await post();
  }
  if (answer.status === 401 && me?.name) learn({ accounts: true });
  return answer;
}

/** @param {string} path @param {object} form */
export const sendForm = async (path, form) => orRefused(await send(path, JSON.stringify(form)));

/** @param {Response} answer */
async function begun(answer) {
  learn(await answer.json());
  others.postMessage('changed');
}

/** @param {string} name @param {string} password */
export const logIn = async (name, password) => begun(await sendForm('/api/log-in', { name, password }));

/** @param {string} old @param {string} fresh */
export const changePassword = async (old, fresh) => begun(await sendForm('/api/me/password', { old, new: fresh }));

export async function logOut() {
  const answer = await send('/api/log-out', '');
  if (!answer.ok && answer.status !== 401) throw new Error('Logging out did not work (' + answer.status + '). Next: try again.');
  learn({ accounts: true });
  others.postMessage('changed');
}
