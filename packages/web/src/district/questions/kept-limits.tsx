import { useEffect, useState } from 'react';
import type { Session } from '../../app/session.ts';
import { Button } from '../../ui/button.tsx';
import { sayId } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskDevice } from '../use-desk-device.ts';
import { limitFields, readClasses } from './asked/laboratory-number.ts';
import type { Value, Values } from './inputs-in-address.ts';

const prefix = 'laboratory-limits/';

interface KeptLimitsProps {
  readonly session: Session;
  readonly values: Values;
  readonly onUse: (limits: Readonly<Record<string, Value>>) => void;
}

/** The limits laboratories stated, kept on this desk as they were typed: by whom, when, where it is written. */
export function KeptLimits({ session, values, onUse }: KeptLimitsProps) {
  const words = useWords();
  const { device } = useDeskDevice(session);
  const [kept, setKept] = useState<readonly (readonly [string, Values])[]>([]);
  const read = async () => {
    if (device) setKept(Object.entries(await device.drafts.all(prefix)) as [string, Values][]);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: read once the store is open, and after each change
  useEffect(() => void read(), [device]);
  const mine = Object.fromEntries(limitFields.map((name) => [name, values[name] ?? null]));
  const whole = limitFields.every((name) => mine[name]) && readClasses(String(mine.classes)) !== null;
  // Dated limits stand beside older ones of the same laboratory; nothing stated is ever written over by a later day.
  const key = [mine.laboratory, mine.method, mine.material, mine.unit, mine.statedOn].join(' · ');
  const known = kept.some(([name]) => name === key);
  return (
    <section className="stack close" aria-label={sayId(words, 'questions.limits')}>
      <h3>{sayId(words, 'questions.limits')}</h3>
      {kept.length === 0 && <p className="quiet">{sayId(words, 'questions.limits.none')}</p>}
      <ul className="stack close">
        {kept.map(([name, limits]) => (
          <li key={name}>
            <Button look="wide" onClick={() => onUse(limits as Record<string, Value>)}>
              {name}
            </Button>
          </li>
        ))}
      </ul>
      {whole && !known && device && (
        <Button onClick={() => void device.drafts.save(prefix + key, mine).then(read)}>
          {sayId(words, 'questions.limits.keep')}
        </Button>
      )}
    </section>
  );
}
