// @ts-check
/** Rules: the limits in force for a vehicle in a place, each with its source; two places side by side. */
import { html, nothing, render } from '/lib/lit-html/lit-html.js';
import { askJson } from '../engine.js';
import { places, today, vehicles } from '../data.js';

/** @type {Record<string, string>} */
const PROVENANCE = {
  published: 'text read',
  'published-secondhand': 'second-hand',
  'common-practice': 'common practice, no source',
  'from-memory': 'from memory, not compared with its text',
};

/** @param {HTMLElement} place */
export async function show(place) {
  const [allPlaces, allVehicles, checks] = await Promise.all([places(), vehicles(), askJson('checks')]);
  const titles = new Map(checks.map((/** @type {any} */ c) => [c.id, c]));
  const state = {
    place: localStorage.getItem('place') ?? 'CA-ON',
    against: '',
    vehicle: localStorage.getItem('vehicle') ?? allVehicles[0].id,
    words: '',
    duties: false,
    here: /** @type {any} */ (undefined),
    there: /** @type {any} */ (undefined),
    trouble: '',
    asked: 0,
  };

  async function find() {
    const mine = ++state.asked;
    const vehicle = JSON.stringify((allVehicles.find((v) => v.id === state.vehicle) ?? allVehicles[0]).vehicle);
    try {
      const here = await askJson('rules', state.place, vehicle, today());
      const there = state.against ? await askJson('rules', state.against, vehicle, today()) : undefined;
      if (mine !== state.asked) return;
      Object.assign(state, { here, there, trouble: '' });
    } catch (e) {
      state.trouble = e instanceof Error ? e.message : String(e);
    }
    draw();
  }

  /** @param {'place' | 'against' | 'vehicle'} key @param {{value: string, text: string}[]} from @param {string} label */
  const choice = (key, from, label) =>
    html`<label>${label}
      <select name=${key} @change=${(/** @type {any} */ e) => { state[key] = e.target.value; if (key !== 'against') localStorage.setItem(key, state[key]); find(); }}>
        ${from.map((o) => html`<option value=${o.value} ?selected=${o.value === state[key]}>${o.text}</option>`)}
      </select></label>`;

  const named = allPlaces.map((p) => ({ value: p.code, text: p.name + ' (' + p.code + ')' }));

  /** Whether a rule is shown. @param {any} r */
  const wanted = (r) => {
    const duty = ['duty', 'new-vehicle', 'historic'].includes(r.standing);
    const text = (r.title + ' ' + r.check + ' ' + (r.limit?.text ?? '')).toLowerCase();
    return (state.duties || !duty) && state.words.toLowerCase().split(/\s+/).every((w) => text.includes(w));
  };

  function draw() {
    const groups = group(state.here?.rules ?? [], state.there?.rules ?? [], state.against !== '').map((g) => ({ ...g, here: g.here.filter(wanted), there: g.there.filter(wanted) })).filter((g) => g.here.length + g.there.length);
    render(
      html`<h1>Rules</h1>
        <div class="row">
          ${choice('place', named, 'Place')} ${choice('vehicle', allVehicles.map((v) => ({ value: v.id, text: v.name })), 'Vehicle')}
          ${choice('against', [{ value: '', text: 'no other place' }, ...named], 'Beside')}
          <label>Find<input type="search" .value=${state.words} @input=${(/** @type {any} */ e) => { state.words = e.target.value; draw(); }} /></label>
          <button aria-pressed=${state.duties} @click=${() => { state.duties = !state.duties; draw(); }}>Duties and construction too</button>
        </div>
        ${state.trouble ? html`<p class="trouble" role="alert">${state.trouble}</p>` : ''}
        <p class="faint" role="status">${groups.length} checks${state.there ? html`, ${groups.filter((g) => g.differs).length} differ` : ''}. Rule packs can be out of date: each limit says when it was last compared with its text.</p>
        ${groups.map(
          (g) => html`<section class="sheet">
            <h2>${titles.get(g.check)?.title ?? g.check} ${g.differs ? html`<span class="differs">differs</span>` : nothing}</h2>
            <div class=${state.there ? 'two' : ''}>
              <div>${state.there ? html`<h3>${state.place}</h3>` : ''}${g.here.length ? g.here.map(rule) : html`<p>No rule known.</p>`}</div>
              ${state.there ? html`<div><h3>${state.against}</h3>${g.there.length ? g.there.map(rule) : html`<p>No rule known.</p>`}</div>` : ''}
            </div>
          </section>`,
        )}`,
      place,
    );
  }
  await find();
}

/** Rules of both places by their check. @param {any[]} here @param {any[]} there @param {boolean} both */
function group(here, there, both) {
  const order = [...new Set([...here, ...there].map((r) => r.check))];
  return order.map((check) => {
    const a = here.filter((r) => r.check === check);
    const b = there.filter((r) => r.check === check);
    /** @param {any[]} rules */
    const limits = (rules) => [...new Set(rules.map((r) => r.limit?.text ?? ''))].sort().join('|');
    return { check, here: a, there: b, differs: both && limits(a) !== limits(b) };
  });
}

/** @param {any} r */
function rule(r) {
  return html`<div class="rule">
    <p><b>${r.title}</b></p>
    <p class="limits">${r.limit?.text ?? ''}</p>
    ${r.standing === 'required' ? '' : html`<p><b>${r.standing.replace(/-/g, ' ')}</b></p>`}
    ${r.words || r.note ? html`<details><summary>In words</summary><p>${r.words ?? ''}</p><p class="faint">${r.note ?? ''}</p></details>` : ''}
    <p class="faint">${r.source} (${PROVENANCE[r.provenance] ?? r.provenance}; last checked ${r['last-checked']}${r.place ? '; rule of ' + r.place : ''})</p>
  </div>`;
}
