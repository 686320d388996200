// @ts-check
/** A recorded trace as a picture, with the recognised tests marked and numbered in it. */
import uPlot from '/lib/uplot/dist/uPlot.esm.js';
import { clock } from '../clock.js';

const HEIGHT = 280;

/** What is drawn, and how: lines differ by more than their colour. */
const LINES = [
  { id: 'primary', color: '--first', width: 2.5 },
  { id: 'secondary', color: '--second', width: 2.5, dash: [9, 5] },
  { id: 'supply', color: '--faint', width: 1.5, dash: [2, 4] },
  { id: 'application', color: '--bad', width: 1.5 },
];

export class TraceChart {
  /** @param {any[]} curves @param {{from: number, to: number}[]} marks */
  constructor(curves, marks) {
    this.curves = curves;
    this.marks = marks;
    /** @type {Element | undefined} */
    this.where = undefined;
  }

  /** Draws into a place once that stands on the page. @param {Element | undefined} where */
  stand(where) {
    if (!where || where === this.where) return;
    this.where = where;
    requestAnimationFrame(() => this.draw(/** @type {HTMLElement} */ (where)));
  }

  /** @param {HTMLElement} where */
  draw(where) {
    const css = getComputedStyle(where);
    const color = (/** @type {string} */ name) => css.getPropertyValue(name);
    const drawn = LINES.map((line) => ({ ...line, curve: this.curves.find((c) => c.id === line.id) })).filter((l) => l.curve);
    if (!drawn.length) return;
    const axis = { stroke: css.color, grid: { stroke: color('--line'), width: 0.5 } };
    const times = (/** @type {any} */ c) => c.points.filter((/** @type {unknown} */ _, /** @type {number} */ i) => i % 2 === 0);
    const values = (/** @type {any} */ c) => c.points.filter((/** @type {unknown} */ _, /** @type {number} */ i) => i % 2 === 1);
    const plot = new uPlot(
      {
        width: Math.max(280, where.clientWidth),
        height: HEIGHT,
        scales: { x: { time: false }, y: { range: (_, low, high) => [0, Math.max(140, high + 5)] } },
        axes: [{ ...axis, values: (_, ticks) => ticks.map(clock) }, { ...axis, label: 'psi' }],
        series: [
          { label: 'time', value: (_, v) => (v == null ? '' : clock(v)) },
          ...drawn.map((l) => ({
            label: l.curve.title + ', psi', stroke: color(l.color), width: l.width, dash: l.dash, spanGaps: true,
            value: (/** @type {unknown} */ _, /** @type {any} */ v) => (v == null ? '' : v.toFixed(1)),
          })),
        ],
        hooks: { draw: [(u) => this.mark(u, css)] },
      },
      uPlot.join(drawn.map((l) => [Array.from(times(l.curve)), Array.from(values(l.curve))])),
      where,
    );
    new ResizeObserver(() => where.clientWidth && plot.setSize({ width: where.clientWidth, height: HEIGHT })).observe(where);
  }

  /** Each test as a numbered span above the curves. @param {any} u @param {CSSStyleDeclaration} css */
  mark(u, css) {
    const pen = u.ctx;
    const by = devicePixelRatio;
    pen.save();
    pen.strokeStyle = pen.fillStyle = css.color;
    pen.font = '600 ' + 13 * by + 'px system-ui, sans-serif';
    pen.lineWidth = 2 * by;
    pen.setLineDash([]);
    this.marks.forEach((m, i) => {
      const from = u.valToPos(m.from, 'x', true);
      const to = Math.max(from + 2 * by, u.valToPos(m.to, 'x', true));
      const top = u.bbox.top + (6 + (i % 3) * 15) * by;
      pen.strokeRect(from, top, to - from, 1);
      pen.globalAlpha = 0.09;
      pen.fillRect(from, top, to - from, u.bbox.top + u.bbox.height - top);
      pen.globalAlpha = 1;
      pen.fillText(String(i + 1), to + 3 * by, top + 5 * by);
    });
    pen.restore();
  }
}
