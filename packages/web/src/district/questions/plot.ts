import type { Words } from '@combside/words/words';
import * as Plot from '@observablehq/plot';
import type { Axis, Figure } from './question.ts';
import { sayAnswer, sayShown } from './spoken.ts';

const ink = 'currentColor';
const act = 'var(--act)';

/**
 * Draws one figure as an svg that only eyes see: it is hidden from assistive technology, which gets the label of the
 * frame around it and the table beside it.
 *
 * @param width px of room; the height follows
 */
export function draw(figure: Figure, words: Words, width: number, labels: { x: string; y: string }): Element {
  const tick = (axis: Axis) => (value: number) => sayShown(words, axis.shown, value);
  const size = parseFloat(getComputedStyle(document.documentElement).fontSize) * 0.875;
  const shared = {
    width,
    marginLeft: 4.4 * size,
    marginBottom: 3.4 * size,
    marginTop: 2 * size,
    marginRight: 1.5 * size,
    style: { fontSize: `${size}px`, fontFamily: 'inherit', background: 'none', overflow: 'visible' },
  };
  const ticks = Math.max(3, Math.floor(width / (7 * size)));
  let drawn: Element;
  if (figure.kind === 'curve') {
    const points = figure.points.map(([x, y]) => ({ x, y: y ?? Number.NaN }));
    drawn = Plot.plot({
      ...shared,
      height: Math.min(360, 0.6 * width),
      x: { label: labels.x, tickFormat: tick(figure.x), ticks, labelAnchor: 'center', labelArrow: 'none' },
      y: {
        label: labels.y,
        tickFormat: tick(figure.y),
        ticks: 5,
        zero: true,
        grid: true,
        labelArrow: 'none',
        ...(figure.y.shown === 'share' ? { domain: [0, 1] } : {}),
      },
      marks: [
        ...(figure.level === undefined ? [] : [Plot.ruleY([figure.level], { stroke: ink, strokeDasharray: '6 4' })]),
        Plot.ruleY([0], { stroke: ink }),
        Plot.line(points, { x: 'x', y: 'y', stroke: ink, strokeWidth: 2 }),
        ...(figure.marked
          ? [Plot.dot([figure.marked], { x: '0', y: '1', r: 7, fill: act, stroke: 'var(--ground)', strokeWidth: 2 })]
          : []),
      ],
    });
  } else {
    const rows = figure.rows.map((row) => ({ ...row, label: sayAnswer(words, row.label) }));
    const high = figure.to ?? Math.max(...rows.map((row) => row.high)) * 1.1;
    const longest = Math.max(...rows.map((row) => row.label.length));
    const left = Math.min(0.45 * width, (longest * 0.55 + 1) * size);
    const lines = Math.ceil((longest * 0.55 * size) / left);
    drawn = Plot.plot({
      ...shared,
      marginLeft: left,
      height: rows.length * Math.max(3, 1.4 * lines + 1) * size + 6 * size,
      x: {
        label: labels.x,
        tickFormat: tick(figure.x),
        ticks: Math.max(3, Math.floor(ticks * 0.6)),
        domain: [figure.from ?? 0, high],
        grid: true,
        labelAnchor: 'center',
        labelArrow: 'none',
        ...(figure.scale ? { type: 'symlog' as const } : {}),
      },
      y: { label: null, domain: rows.map((row) => row.label), tickSize: 0, axis: null },
      marks: [
        Plot.axisY({ tickSize: 0, label: null, lineWidth: (left / size) * 0.95 }),
        Plot.ruleY(rows, { x1: 'low', x2: 'high', y: 'label', stroke: ink, strokeWidth: 3 }),
        Plot.tickX(
          rows.flatMap((row) => [row.low, row.high].map((x) => ({ x, label: row.label }))),
          {
            x: 'x',
            y: 'label',
            stroke: ink,
            strokeWidth: 2,
            insetTop: 8,
            insetBottom: 8,
          },
        ),
        Plot.dot(
          rows.filter((row) => row.value !== null),
          { x: 'value', y: 'label', r: 6, fill: act },
        ),
      ],
    });
  }
  drawn.setAttribute('aria-hidden', 'true');
  return drawn;
}
