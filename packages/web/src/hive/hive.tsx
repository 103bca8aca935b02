import type { Language } from '@combside/words/language';
import { useEffect, useState } from 'react';
import type { Session } from '../app/session.ts';
import { SpeaksWords, useWords } from '../ui/words-context.tsx';
import { GivesHiveDevice, type HiveDevice } from './hive-device.tsx';
import { HiveScreens, hiveRooms } from './hive-screens.tsx';
import { openHiveDevice } from './open-hive-device.ts';

interface HiveProps {
  readonly session: Session;
  readonly language: Language;
}

/** The hive half: everything an inspector does at an apiary, with or without a network. */
export default function Hive({ session, language }: HiveProps) {
  return (
    <SpeaksWords language={language} rooms={hiveRooms}>
      <OpensField session={session} />
    </SpeaksWords>
  );
}

function OpensField({ session }: { readonly session: Session }) {
  const words = useWords();
  const [opened, setOpened] = useState<HiveDevice | 'failed' | 'blocked' | 'given up' | null>(null);
  useEffect(() => {
    let left = false;
    let close = () => {};
    openHiveDevice(session, {
      blocked: () => {
        if (!left) setOpened('blocked');
      },
      closed: () => {
        if (!left) setOpened('given up');
      },
    }).then(
      (device) => {
        close = device.close;
        if (left) close();
        else setOpened(device);
      },
      (failure: unknown) => {
        if (!left) setOpened('failed');
        // Handed on, so that the fault report has it.
        void Promise.reject(failure);
      },
    );
    return () => {
      left = true;
      close();
    };
  }, [session]);

  if (opened === null) return <p className="front field">{words.say('front.opening')}</p>;
  if (opened === 'blocked') return <p className="front field caution">{words.say('front.blocked')}</p>;
  if (opened === 'given up') return <p className="front field caution">{words.say('front.given-up')}</p>;
  if (opened === 'failed') return <p className="front field caution">{words.say('front.opening.failed')}</p>;
  return (
    <GivesHiveDevice device={opened}>
      <HiveScreens />
    </GivesHiveDevice>
  );
}
