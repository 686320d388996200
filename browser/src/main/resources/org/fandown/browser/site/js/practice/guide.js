// @ts-check
/** The guide of an exercise: which step is next and why, what it needs, what was done; and a step that is shown. */
import { html } from '/lib/lit-html/lit-html.js';
import { ask } from '../engine.js';
import { clock } from '../clock.js';
import { form } from './notes.js';

/** A step that is shown has a frame so often, s. */
const EVERY = 0.1;

/** How much faster than the truck a step can be watched. */
const RATES = [1, 4, 16];

export class Guide {
  /** @param {import('./session.js').Session} session @param {any} plan @param {number[]} shown steps that were shown before */
  constructor(session, plan, shown) {
    this.session = session;
    this.plan = plan;
    this.shown = new Set(shown);
    this.busy = false;
    this.trouble = '';
    /** The step that is shown. */
    this.showing = 0;
    /** The step that was done last. */
    this.did = 0;
    this.before = 0;
  }

  get now() {
    return this.session.guided ?? { at: 0, needs: [], open: [] };
  }

  /** Which step is next; 0 after the last. */
  get at() {
    const at = this.now.at;
    if (at !== this.before) {
      this.did = this.before;
      this.before = at;
    }
    return at;
  }

  /** What is kept of it on the device. */
  kept() {
    return { at: this.now.at, shown: [...this.shown] };
  }

  /** @param {number} number */
  async goTo(number) {
    await ask('guideTo', this.session.id, number);
    await this.session.look(0);
    await this.session.changed?.();
  }

  /** Lets the operator do the next step; what was seen of it is watched then. */
  async show() {
    this.busy = true;
    this.showing = this.at;
    this.shown.add(this.at);
    const from = this.session.time;
    try {
      const { frames, trouble } = await ask('show', this.session.id, EVERY);
      this.trouble = trouble;
      for (const frame of frames) this.session.keep(frame, true);
      await this.session.look(0);
      this.session.past.watch(from, this.session.time);
      await this.session.changed?.();
    } catch (e) {
      this.trouble = e instanceof Error ? e.message : String(e);
    }
    this.busy = false;
  }
}

/** @param {Guide} g @param {import('./notes.js').Notes} notes */
export function guide(g, notes) {
  if (g.busy) return html`<section class="sheet" aria-label="Guide"><p class="wait" role="status">The operator does it ...</p></section>`;
  if (g.session.past.film) return film(g);
  const step = g.plan.steps[g.at - 1];
  return html`<section class="sheet guide" aria-label="Guide">
    ${step
      ? html`<p class="row between"><span class="one-line">Step ${step.number} of ${g.plan.steps.length}</span>
            <span role="status">${g.did && g.did < g.at ? html`<span class="good">Done: ${g.plan.steps[g.did - 1].does}</span>` : ''}</span></p>
          ${g.trouble ? html`<p class="doubt" role="status">It could not be done: ${g.trouble}. That is a finding too.</p>` : ''}
          ${next(step)} ${needs(g.now.needs)} ${writes(g, notes)}`
      : html`<h2>Every step is done</h2><p>Say in your notes what follows: may this vehicle move?</p>`}
    <div class="row">
      ${step ? html`<button @click=${() => g.show()}>Show me</button> <button @click=${() => g.goTo(g.at + 1)}>Go on without it</button>` : ''}
      <button ?disabled=${g.at === 1} @click=${() => g.goTo((g.at || g.plan.steps.length + 1) - 1)}>Back one step</button>
    </div>
  </section>`;
}

/** @param {any} step */
function next(step) {
  const limits = [...new Set((step.rules ?? []).map((/** @type {any} */ r) => r.limit))].filter((l) => l !== 'yes');
  return html`<h2>${step.does}</h2>
    ${step.caution ? html`<p class="care">${step.caution}</p>` : ''}
    ${step['look-for'] ? html`<p>${step['look-for']}</p>` : ''}
    ${limits.length ? html`<p class="limits">Limit: ${limits.join('; ')}</p>` : ''}
    <p class="faint">Where: ${step.at}${step.helper ? ', with a second person at the pedal' : ''}</p>
    ${step.reasons.length ? html`<details><summary>Why now</summary><ul>${step.reasons.map((/** @type {any} */ r) => html`<li>${capital(r.why)}</li>`)}</ul></details>` : ''}`;
}

/** @param {any[]} all */
function needs(all) {
  const open = all.filter((n) => !n.holds);
  if (!all.length) return '';
  return html`<details ?open=${open.length > 0}><summary>Needed first: ${open.length ? open.length + ' of ' + all.length + ' missing' : 'all there'}</summary>
    <ul>${all.map((n) => html`<li class=${n.holds ? 'good' : 'bad'}>${n.need} <span class="faint">${n.why}</span></li>`)}</ul></details>`;
}

/** What is to be written down. @param {Guide} g @param {import('./notes.js').Notes} notes */
function writes(g, notes) {
  const open = notes.checks.filter((c) => (g.plan.steps[g.at - 1].checks ?? []).includes(c.id));
  return html`${open.map((c) => html`<button aria-pressed=${notes.open === c.id} @click=${() => notes.begin(c)}>I begin: ${c.title}</button>
    ${notes.open === c.id ? form(notes, c, () => {}) : ''}`)}`;
}

/** The step that is watched. @param {Guide} g */
function film(g) {
  const s = g.session;
  const film = s.past.film;
  if (!film) return '';
  const { from, to, now, rate } = film;
  const step = g.plan.steps[g.showing - 1];
  const lately = s.events.filter((e) => e.seconds >= from && e.seconds <= now && e.kind !== 'stated').slice(-4);
  return html`<section class="sheet guide" aria-label="Guide">
    <p class="row between"><b>Watch: the operator does it.</b> <span class="one-line">${clock(now - from)} of ${clock(to - from)}</span></p>
    <h2>${step?.does}</h2>${step?.['look-for'] ? html`<p>${step['look-for']}</p>` : ''}
    <progress max=${to - from} value=${now - from} aria-label="Watched"></progress>
    <ul class="seen">${lately.map((e) => html`<li>${e.text}</li>`)}</ul>
    <div class="row">${RATES.map((r) => html`<button class="small" aria-pressed=${rate === r} @click=${() => { film.rate = r; }}>${r === 1 ? 'as long as it takes' : r + ' times as fast'}</button>`)}
      <button class="small" @click=${() => { s.past.film = undefined; }}>To the end</button></div>
  </section>`;
}

/** @param {string} text */
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
