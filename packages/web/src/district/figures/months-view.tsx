import type { FigureLine } from '@combside/contract/figures';
import { useEffect, useRef, useState } from 'react';
import { useFetched } from '../../ui/use-fetched.ts';
import { useWords } from '../../ui/words-context.tsx';
import type { MonthCount } from './month-plot.ts';
import { sayMonth } from './say-figure.ts';

/** The one plot of the page. Its library is fetched for it alone. */
export function MonthsView({ figures }: { readonly figures: readonly FigureLine[] }) {
  const words = useWords();
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  const draw = useFetched(() => import('./month-plot.ts').then(({ drawMonths }) => drawMonths));
  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    const watch = new ResizeObserver(() => setWidth(Math.floor(box.clientWidth)));
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  useEffect(() => {
    if (!draw || draw === 'failed' || width === 0) return;
    const drawn = draw(monthsOf(figures), width, {
      opened: words.say('programme.plot.opened'),
      month: (month) => sayMonth(words, month),
      number: (n) => words.number(n),
    });
    frame.current?.replaceChildren(drawn);
  }, [draw, figures, words, width]);

  return (
    <section className="stack close" aria-labelledby="plot-title">
      <h3 id="plot-title">{words.say('programme.plot')}</h3>
      <div ref={frame} className="month-plot" role="img" aria-label={words.say('programme.plot.label')} />
      {draw === 'failed' && <p className="quiet">{words.say('programme.plot.failed')}</p>}
    </section>
  );
}

/** Every month from the first to the last, empty ones included. */
export function monthsOf(figures: readonly FigureLine[]): MonthCount[] {
  const count = (what: string, month: string) =>
    figures.find((one) => one.id[0] === 'month' && one.id[1] === what && one.id[2] === month)?.count ?? 0;
  const named = figures.flatMap((one) => (one.id[0] === 'month' && one.id[2] ? [one.id[2]] : [])).sort();
  const first = named[0];
  const last = named.at(-1);
  const months: MonthCount[] = [];
  if (!first || !last) return months;
  for (let month = first; month <= last; month = monthAfter(month)) {
    months.push({ month, opened: count('opened', month), suspect: count('suspect', month) });
  }
  return months;
}

function monthAfter(month: string): string {
  const [year = 0, number = 0] = month.split('-').map(Number);
  return number === 12 ? `${year + 1}-01` : `${year}-${String(number + 1).padStart(2, '0')}`;
}
