import { useEffect, useState } from 'react';
import type { Saving } from '../../device/drafts/open-draft.ts';
import { warnFrom } from '../../device/storage-watch.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice, useStorageStatus, useSyncStatus } from '../hive-device.tsx';

/** Always in sight: the apiary, the time, the network, whether what was tapped is saved, and who is signed in. */
export function StatusLine({ saving = 'saved', where }: { readonly saving?: Saving; readonly where?: string }) {
  const words = useWords();
  const device = useHiveDevice();
  const sync = useSyncStatus();
  const storage = useStorageStatus();
  const now = useMinute(device.now);
  const net = !sync.network
    ? words.say('hive.status.no-network')
    : sync.failure !== null
      ? words.say(sync.failure === 'not signed in' ? 'hive.status.sign-in-again' : 'hive.status.office-silent')
      : sync.sending
        ? words.say('hive.status.sending')
        : sync.waiting === null
          ? words.say('hive.status.counting')
          : sync.waiting > 0
            ? words.say('hive.status.waiting', { count: sync.waiting })
            : words.say('hive.status.at-office');
  const isLost = saving === 'failed' || saving === 'nowhere';
  return (
    <div className="status">
      {where && <strong>{where}</strong>}
      <span>
        {words.clockTime(now, device.timeZone)} ·{' '}
        {sync.network && sync.failure === 'not signed in' ? <a href="/sign-in">{net}</a> : net}
        {sync.refused > 0 && ` · ${words.say('hive.status.not-taken', { count: sync.refused })}`}
      </span>
      <span role="status" className={isLost ? 'not-saved' : undefined}>
        {words.say(isLost ? 'hive.status.not-saved' : saving === 'saving' ? 'hive.status.saving' : 'hive.status.saved')}
      </span>
      <span>{device.session.name}</span>
      {storage.used !== null && storage.used >= warnFrom && (
        <span className="not-saved">{words.say('hive.storage.full', { share: words.share(storage.used) })}</span>
      )}
    </div>
  );
}

function useMinute(now: () => string): string {
  const [at, setAt] = useState(now);
  useEffect(() => {
    const timer = setInterval(() => setAt(now()), 15_000);
    return () => clearInterval(timer);
  }, [now]);
  return at;
}
