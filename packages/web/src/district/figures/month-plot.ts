import * as Plot from '@observablehq/plot';

/** One month: colonies opened, and those of them that were suspected. */
export interface MonthCount {
  readonly month: string;
  readonly opened: number;
  readonly suspect: number;
}

/**
 * Draws the months as plain bars with the suspected on a row of notches above. For eyes only: it is hidden from assistive
 * technology, which gets the label of the frame around it and the table below.
 */
export function drawMonths(
  months: readonly MonthCount[],
  width: number,
  say: { readonly opened: string; readonly month: (month: string) => string; readonly number: (n: number) => string },
): Element {
  const most = Math.max(1, ...months.map((one) => one.opened));
  const narrow = width / Math.max(1, months.length) < 72;
  // Where numbers would run into each other, the table below has them.
  const numbered = say.number(most).length * 9 < (width - 56) / Math.max(1, months.length);
  const drawn = Plot.plot({
    width,
    height: Math.max(240, Math.min(320, 0.4 * width)),
    marginLeft: 56,
    marginBottom: narrow ? 84 : 56,
    marginTop: 40,
    style: { fontSize: '14px', fontFamily: 'inherit', background: 'none', overflow: 'visible' },
    x: {
      type: 'band',
      domain: months.map((one) => one.month),
      label: null,
      tickFormat: say.month,
      tickSize: 0,
      tickRotate: narrow ? -50 : 0,
      padding: 0.25,
    },
    y: {
      label: say.opened,
      labelArrow: 'none',
      grid: true,
      zero: true,
      domain: [0, most * 1.3],
      tickFormat: say.number,
      ticks: 5,
    },
    marks: [
      Plot.barY(months, { x: 'month', y: 'opened', fill: 'var(--sheet)', stroke: 'currentColor', strokeWidth: 1.5 }),
      numbered
        ? Plot.text(months, { x: 'month', y: 'opened', text: (one: MonthCount) => say.number(one.opened), dy: -8 })
        : null,
      Plot.dot(
        months.filter((one) => one.suspect > 0),
        {
          x: 'month',
          y: most * 1.24,
          symbol: 'triangle',
          rotate: 180,
          r: 7,
          fill: '#D55E00',
          stroke: 'currentColor',
          strokeWidth: 1.5,
        },
      ),
      Plot.text(
        months.filter((one) => one.suspect > 0),
        { x: 'month', y: most * 1.24, text: (one: MonthCount) => say.number(one.suspect), dx: 16, fontWeight: 'bold' },
      ),
      Plot.ruleY([0], { stroke: 'currentColor' }),
    ],
  });
  drawn.setAttribute('aria-hidden', 'true');
  return drawn;
}
