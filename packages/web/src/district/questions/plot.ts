import type { Words } from '@combside/words/words';
import * as Plot from '@observablehq/plot';
import type { Axis, Figure } from './question.ts';
import { sayAnswer, sayShown } from './spoken.ts';

const ink = 'currentColor';
const act = 'var(--act)';

/**
 * Draws one figure as an svg that only eyes see: it is hidden from assistive technology, which gets the label of the
 * frame around it and the table beside it. The axes are named outside of it, in text that can break.
 *
 * @param room px of width, and of the text; the height follows
 */
export function draw(figure: Figure, words: Words, room: { width: number; text: number }): Element {
  const { width, text: size } = room;
  const tick = (axis: Axis) => (value: number) => sayShown(words, axis.shown, value);
  const shared = {
    width,
    marginLeft: 4.4 * size,
    marginBottom: 2 * size,
    marginTop: size,
    marginRight: 1.5 * size,
    style: { fontSize: `${size}px`, fontFamily: 'inherit', background: 'none', overflow: 'visible' },
  };
  const ticks = (left: number) => Math.max(2, Math.floor((width - left) / (6 * size)));
  let drawn: Element;
  if (figure.kind === 'curve') {
    const height = Math.max(11 * size, Math.min(360, 0.6 * width));
    const points = figure.points.map(([x, y]) => ({ x, y: y ?? Number.NaN }));
    drawn = Plot.plot({
      ...shared,
      height,
      x: { label: null, tickFormat: tick(figure.x), ticks: ticks(4.4 * size) },
      y: {
        label: null,
        tickFormat: tick(figure.y),
        ticks: Math.min(5, Math.max(2, Math.floor(height / (3 * size)))),
        zero: true,
        grid: true,
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
    const furthest = Math.max(...rows.flatMap((row) => [row.low, row.value ?? 0, row.high ?? 2 * row.low]));
    const high = figure.to ?? 1.1 * (furthest || 1);
    const longest = Math.max(...rows.map((row) => row.label.length));
    const left = Math.min(0.45 * width, (longest * 0.55 + 1) * size);
    const lines = Math.ceil((longest * 0.55 * size) / left);
    drawn = Plot.plot({
      ...shared,
      marginLeft: left,
      height: rows.length * Math.max(3, 1.4 * lines + 1) * size + 3 * size,
      x: {
        label: null,
        tickFormat: tick(figure.x),
        ticks: figure.scale ? powersOfTen(high, ticks(left)) : ticks(left),
        domain: [figure.from ?? 0, high],
        grid: true,
        ...(figure.scale ? { type: 'symlog' as const } : {}),
      },
      y: { label: null, domain: rows.map((row) => row.label), tickSize: 0, axis: null },
      marks: [
        Plot.axisY({ tickSize: 0, label: null, lineWidth: (left / size) * 0.95 }),
        Plot.ruleY(rows, { x1: 'low', x2: (row) => row.high ?? high, y: 'label', stroke: ink, strokeWidth: 3 }),
        Plot.tickX(
          rows.flatMap((row) => [row.low, row.high].filter((x) => x !== null).map((x) => ({ x, label: row.label }))),
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

/** 0, 1, 10, 100... up to a number, as many as there is room for. */
function powersOfTen(to: number, room: number): number[] {
  const last = Math.floor(Math.log10(Math.max(1, to)));
  const stride = Math.max(1, Math.ceil((last + 1) / Math.max(1, room)));
  return [0, ...Array.from({ length: Math.floor(last / stride) + 1 }, (_, i) => 10 ** (last - i * stride))];
}
