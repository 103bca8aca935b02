import type { SeverityAt } from '@combside/casework/assess/whole-reasoning';
import { timeZoneHere } from '../time-zone.ts';
import { useWords } from '../words-context.tsx';

/** How much of the brood showed something, by the standard comb score, over the visits. */
export function SeverityOverVisits({ severities }: { readonly severities: readonly SeverityAt[] }) {
  const words = useWords();
  const latest = severities.at(-1);
  if (!latest) return null;
  return (
    <section className="stack close">
      <h2>{words.say('reasoning.severity')}</h2>
      <p>
        {words.say('reasoning.severity-line', {
          sum: latest.severity.sum,
          mean: words.number(latest.severity.mean, 2),
          frames: latest.severity.frames.length,
        })}
      </p>
      <p className="quiet">{words.say('reasoning.severity-scale')}</p>
      {severities.length > 1 && (
        <table className="numbers">
          <caption>{words.say('reasoning.severity-visits')}</caption>
          <thead>
            <tr>
              <th scope="col">{words.say('reasoning.severity-day')}</th>
              <th scope="col">{words.say('reasoning.severity-sum')}</th>
              <th scope="col">{words.say('reasoning.severity-mean')}</th>
              <th scope="col">{words.say('reasoning.severity-frames')}</th>
            </tr>
          </thead>
          <tbody>
            {severities.map((one) => (
              <tr key={one.observedAt}>
                <th scope="row">{words.dayOf(one.observedAt, timeZoneHere)}</th>
                <td>{one.severity.sum}</td>
                <td>{words.number(one.severity.mean, 2)}</td>
                <td>{one.severity.frames.length}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
