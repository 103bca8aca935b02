import { useEffect, useState } from 'react';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { type NotTaken, useHiveDevice, useSyncStatus } from '../hive-device.tsx';
import { BackButton } from '../screen/back-button.tsx';
import { Screen } from '../screen/screen.tsx';

/** Entries the office did not take, each with the reason. They stay on the phone; nothing that was written is lost. */
export function NotTakenScreen() {
  const words = useWords();
  const device = useHiveDevice();
  const { refused } = useSyncStatus();
  const [entries, setEntries] = useState<readonly NotTaken[] | undefined>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new count means that there is something new to read
  useEffect(() => {
    let left = false;
    void device.notTaken().then((kept) => {
      if (!left) setEntries(kept);
    });
    return () => {
      left = true;
    };
  }, [device, refused]);
  return (
    <Screen title={words.say('hive.not-taken.title')} foot={<BackButton />}>
      <p>{words.say('hive.not-taken.kept')}</p>
      {entries?.length === 0 && <p className="quiet">{words.say('hive.not-taken.none')}</p>}
      <ul className="rows">
        {entries?.map((entry) => (
          <li key={entry.id} className="open-line stack close">
            <p>
              <strong>{sayWord(words, 'hive.kind.*', entry.kind)}</strong>{' '}
              <span className="quiet">{words.dayAndTime(entry.at, device.timeZone)}</span>
            </p>
            <p>{sayWord(words, 'hive.not-taken.reason.*', entry.reason)}</p>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
