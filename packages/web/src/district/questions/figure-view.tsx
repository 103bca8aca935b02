import { useEffect, useRef, useState } from 'react';
import { useFetched } from '../../ui/use-fetched.ts';
import { useWords } from '../../ui/words-context.tsx';
import type { Figure } from './question.ts';
import { sayAnswer, sayShown } from './spoken.ts';

/** The one small plot of an answer, and the same numbers as a table beside it. The plotting library comes when needed. */
export function FigureView({ figure, title }: { readonly figure: Figure; readonly title: string }) {
  const words = useWords();
  const frame = useRef<HTMLDivElement>(null);
  // Drawn again when the room changes, or the size of the text.
  const [room, setRoom] = useState({ width: 0, text: 16 });
  const draw = useFetched(() => import('./plot.ts').then(({ draw }) => draw));
  const labels = {
    x: words.say(`questions.${figure.x.label}`),
    y: figure.kind === 'curve' ? words.say(`questions.${figure.y.label}`) : '',
  };

  useEffect(() => {
    const box = frame.current;
    if (!box) return;
    const watch = new ResizeObserver(() => {
      const width = Math.floor(box.clientWidth);
      const text = Number.parseFloat(getComputedStyle(box).fontSize);
      setRoom((before) => (before.width === width && before.text === text ? before : { width, text }));
    });
    // The names of the axes around it grow with the text.
    watch.observe(box.parentElement ?? box);
    return () => watch.disconnect();
  }, []);
  useEffect(() => {
    if (!draw || draw === 'failed' || room.width === 0) return;
    frame.current?.replaceChildren(draw(figure, words, room));
  }, [draw, figure, words, room]);

  return (
    <div className={`figure ${figure.kind}`}>
      <div
        className="plot"
        role="img"
        aria-label={words.say('questions.plot-of', { title, x: labels.x, y: labels.y || labels.x })}
      >
        {labels.y && <span>{labels.y}</span>}
        <div ref={frame} />
        <span className="across">{labels.x}</span>
      </div>
      {draw === 'failed' && <p className="quiet">{words.say('questions.plot-failed')}</p>}
      <FigureTable figure={figure} labels={labels} />
    </div>
  );
}

function FigureTable({ figure, labels }: { readonly figure: Figure; readonly labels: { x: string; y: string } }) {
  const words = useWords();
  const number = (value: number | null) => (value === null ? '–' : sayShown(words, figure.x.shown, value));
  if (figure.kind === 'bands') {
    return (
      <table>
        <thead>
          <tr>
            <th scope="col">{labels.x}</th>
            <th scope="col">{words.say('questions.low')}</th>
            <th scope="col">{words.say('questions.value')}</th>
            <th scope="col">{words.say('questions.high')}</th>
          </tr>
        </thead>
        <tbody>
          {figure.rows.map((row) => {
            const label = sayAnswer(words, row.label);
            return (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td>{number(row.low)}</td>
                <td>{number(row.value)}</td>
                <td>{number(row.high)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    );
  }
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{labels.x}</th>
          <th scope="col">{labels.y}</th>
        </tr>
      </thead>
      <tbody>
        {rowsOf(figure).map(([x, y]) => (
          <tr key={x} className={x === figure.marked?.[0] ? 'marked' : undefined}>
            <td>{number(x)}</td>
            <td>{y === null ? words.say('questions.none-enough') : sayShown(words, figure.y.shown, y)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** About eight points of a curve, its ends and the answer among them. */
function rowsOf({ points, marked }: Extract<Figure, { kind: 'curve' }>): (readonly [number, number | null])[] {
  const step = Math.max(1, Math.ceil((points.length - 1) / 7));
  const rows = points.filter((_, i) => i % step === 0 || i === points.length - 1);
  if (marked && !rows.some(([x]) => x === marked[0])) rows.push(marked);
  return rows.sort((a, b) => a[0] - b[0]);
}
