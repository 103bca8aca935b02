import '../../ui/comb/comb.css';
import type { PhotographReference } from '@combside/record/kinds/examination';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { useEntity, useHiveDevice } from '../hive-device.tsx';
import { combDraftPrefix } from './use-comb-draft.ts';

interface CombPhotographsProps {
  readonly visit: string;
  readonly colony: string;
  readonly photographs: readonly PhotographReference[];
}

/** The photographs of a colony at a visit, each with the way to reading the comb on it. */
export default function CombPhotographs(props: CombPhotographsProps) {
  const { language } = useWords();
  return (
    <SpeaksWords language={language} rooms={['always', 'comb']}>
      <Photographs {...props} />
    </SpeaksWords>
  );
}

function Photographs({ visit, colony, photographs }: CombPhotographsProps) {
  const words = useWords();
  const device = useHiveDevice();
  const state = useEntity('colony', colony);
  const [drafts, setDrafts] = useState<ReadonlySet<string>>(new Set());
  useEffect(() => {
    let left = false;
    void device.drafts.all(combDraftPrefix(visit, colony)).then((kept) => {
      if (!left) setDrafts(new Set(Object.keys(kept).map((key) => key.split('/')[0] ?? '')));
    });
    return () => {
      left = true;
    };
  }, [device, visit, colony]);
  const read = new Set(
    (state?.combReadings ?? []).filter((one) => one.body.visit === visit).map((one) => one.body.photograph.hash),
  );
  return (
    <ul className="comb-photographs" aria-label={words.say('comb.screen.photographs')}>
      {photographs.map((one) => (
        <li key={one.hash}>
          <Thumbnail photograph={one} />
          <Link className="button" href={`/visit/${visit}/comb/${colony}/${one.hash}`}>
            {words.say(
              drafts.has(one.hash)
                ? 'comb.screen.go-on'
                : read.has(one.hash)
                  ? 'comb.screen.look-at'
                  : 'comb.screen.read',
            )}
          </Link>
        </li>
      ))}
    </ul>
  );
}

function Thumbnail({ photograph }: { readonly photograph: PhotographReference }) {
  const words = useWords();
  const device = useHiveDevice();
  const [address, setAddress] = useState<string | null>(null);
  const { hash } = photograph;
  useEffect(() => {
    let made: string | null = null;
    let left = false;
    void device.photographs.open(hash).then((blob) => {
      if (left || !blob) return;
      made = URL.createObjectURL(blob);
      setAddress(made);
    });
    return () => {
      left = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [device, hash]);
  const taken = words.say('comb.screen.photograph-taken', {
    when: words.clockTime(photograph.takenAt, device.timeZone),
  });
  return address === null ? <span className="quiet">{taken}</span> : <img src={address} alt={taken} decoding="async" />;
}
