import { type Change, compareReadings, type SideFigures } from '@combside/casework/comb/compare-readings';
import { correctedReading } from '@combside/casework/comb/corrected-reading';
import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import { useCallback, useId, useMemo, useState } from 'react';
import { toUpright } from '../../device/comb/turn.ts';
import { Button } from '../../ui/button.tsx';
import { CombOverlay } from '../../ui/comb/comb-overlay.tsx';
import { Hatchings } from '../../ui/comb/hatching.tsx';
import { useCombShown } from '../../ui/comb/shown-comb.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useStoredPhotograph } from './use-stored-photograph.ts';

interface ComparedProps {
  readonly one: CombReadingBody;
  readonly other: CombReadingBody;
}

/** Two readings of one comb side: both pictures, both figures, and what may be said of a change. */
export function Compared({ one, other }: ComparedProps) {
  const words = useWords();
  const [overlay, setOverlay] = useState(true);
  const comparison = useMemo(() => compareReadings(one, other), [one, other]);
  const { earlier, later, change } = comparison;
  const [first, second] = one.observedAt <= other.observedAt ? [one, other] : [other, one];
  const figure = (of: (side: SideFigures) => string, difference: string, name: string) => (
    <tr>
      <th scope="row">{name}</th>
      <td>{earlier ? of(earlier) : ''}</td>
      <td>{later ? of(later) : ''}</td>
      <td>{difference}</td>
    </tr>
  );
  const changeWords = (of: Change | null | undefined, say: (value: number) => string) =>
    of
      ? words.say(`comb.screen.compare.${of.says}`, {
          difference: say(of.difference),
          low: say(of.low),
          high: say(of.high),
        })
      : words.say('comb.screen.compare.not-said');
  const area = (value: number) => words.number(value, 0);
  return (
    <div className="stack">
      <div className="comb-sides">
        {[first, second].map((body) => (
          <Side key={body.photograph.hash} body={body} overlay={overlay} />
        ))}
      </div>
      <Button aria-pressed={overlay} onClick={() => setOverlay(!overlay)}>
        {words.say('comb.screen.overlay')}
      </Button>
      {comparison.doubts.map((doubt) => (
        <p key={doubt} className="caution">
          {words.say(`comb.compare.${doubt}`)}
        </p>
      ))}
      <table className="numbers">
        <caption className="visually-hidden">{words.say('comb.screen.compare')}</caption>
        <thead>
          <tr>
            <td />
            {[first, second].map((body) => (
              <th key={body.photograph.hash} scope="col">
                {words.dayAndTime(body.observedAt, timeZoneHere)}
              </th>
            ))}
            <th scope="col">{words.say('comb.screen.compare.change')}</th>
          </tr>
        </thead>
        <tbody>
          {figure(
            (side) => area(side.brood.squareCentimetres),
            changeWords(change?.broodArea, area),
            words.say('comb.screen.compare.brood'),
          )}
          {figure(
            (side) =>
              side.solidness
                ? `${words.share(side.solidness.value)} (${words.share(side.solidness.low)} – ${words.share(side.solidness.high)})`
                : words.say('comb.screen.compare.too-few'),
            changeWords(change?.solidness, (value) => words.share(value)),
            words.say('comb.screen.compare.solidness'),
          )}
          {figure((side) => words.share(side.unread), '', words.say('comb.screen.compare.unread'))}
          {change?.shares.map((share) => (
            <tr key={share.class}>
              <th scope="row">{words.say(`comb.class.${share.class}`)}</th>
              <td>{words.share(share.earlier)}</td>
              <td>{words.share(share.later)}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">{words.say('comb.screen.compare.limits')}</p>
    </div>
  );
}

function Side({ body, overlay }: { readonly body: CombReadingBody; readonly overlay: boolean }) {
  const words = useWords();
  const id = useId();
  const corrected = useMemo(() => correctedReading(body), [body]);
  const photograph = useStoredPhotograph(body.photograph.hash, body.reader.picture);
  const there = photograph !== null && photograph !== 'failed' ? photograph : null;
  const turn = there?.turn;
  const upright = useCallback(
    (at: { readonly x: number; readonly y: number }) => (turn ? toUpright(turn, at) : at),
    [turn],
  );
  const nothing = useMemo(() => ({ address: '', ...body.reader.picture }), [body.reader.picture]);
  const comb = useCombShown(there ?? nothing, corrected?.cells ?? [], body.reader, upright);
  const when = words.dayAndTime(body.observedAt, timeZoneHere);
  return (
    <figure className="stack close">
      <figcaption>{when}</figcaption>
      {photograph === 'failed' && <p className="caution">{words.say('comb.screen.photograph-not-held')}</p>}
      {there && (
        <svg
          className="comb-side"
          viewBox={`0 0 ${there.width} ${there.height}`}
          role="img"
          aria-label={words.say('comb.screen.photograph-taken', { when })}
        >
          <Hatchings id={id} unit={there.width / 500} />
          <image href={there.address} width={there.width} height={there.height} preserveAspectRatio="none" />
          {overlay && <CombOverlay comb={comb} id={id} said={[]} second={[]} />}
        </svg>
      )}
    </figure>
  );
}
