import './today.css';
import { visitsToMake } from '@combside/casework/plan/today';
import type { ApiaryState, VisitState } from '@combside/record/states';
import type { VisitSummary } from '@combside/record/summary';
import { useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import { dayEdges } from '../../app/day-in-zone.ts';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice, useStorageStatus, useSummaries, useSyncStatus } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';

/** What is to be done today, what is under way, and the way to any other apiary. */
export function Today() {
  const words = useWords();
  const device = useHiveDevice();
  const storage = useStorageStatus();
  const sync = useSyncStatus();
  const rows = useSummaries('visit', { inspector: device.session.person });
  const day = dayEdges(device.now(), device.timeZone);
  const wanted = useMemo(
    () => rows?.filter((row) => row.endedAt === null || (row.endedAt >= day.start && row.endedAt < day.end)),
    [rows, day.start, day.end],
  );
  const opened = useOpened(wanted);
  // Half a district is worse than none: visits would stand here as planned that were made long ago.
  const firstFetch = sync.lastExchangeAt === null && sync.network && sync.failure === null;
  if (!wanted || !opened || firstFetch) {
    return (
      <Screen title={words.say('hive.today.title')}>
        <p>{words.say(firstFetch ? 'hive.today.fetching' : 'front.opening')}</p>
      </Screen>
    );
  }

  const visits = visitsToMake({
    visits: opened.visits,
    apiaries: opened.apiaries,
    inspector: device.session.person,
    day,
  });
  const running = visits.filter((visit) => visit.state === 'running');
  const planned = visits.filter((visit) => visit.state !== 'running');
  const ended = wanted.filter((row) => row.endedAt !== null);
  const nameOf = (apiary: string | null) =>
    opened.apiaries.find((one) => one.about.id === apiary)?.apiary.current?.body.name ?? words.say('always.not-known');
  const colonies = (count: number | null) =>
    count === null ? words.say('hive.today.colonies-unknown') : words.say('hive.today.colonies', { count });

  return (
    <Screen
      title={words.say('hive.today.title')}
      beside={words.dayOf(device.now(), device.timeZone, 'weekday')}
      foot={
        <Link className="button wide" href="/find">
          {words.say('hive.today.find')}
        </Link>
      }
    >
      {!storage.kept && <p className="caution">{words.say('hive.storage.not-kept')}</p>}
      {sync.refused > 0 && (
        <Link className="button wide" href="/not-taken">
          {words.say('hive.status.not-taken', { count: sync.refused })}
        </Link>
      )}
      {running.length > 0 && (
        <section className="stack close">
          <h2>{words.say('hive.today.under-way')}</h2>
          <ul className="rows">
            {running.map((visit) => (
              <li key={visit.visit}>
                <Link className="visit-card" href={`/visit/${visit.visit}`}>
                  <span className="name">{visit.name}</span>
                  <span>{colonies(visit.coloniesRegistered)}</span>
                  {visit.startedAt && (
                    <span className="quiet">
                      {words.say('hive.today.since', { time: words.dayAndTime(visit.startedAt, device.timeZone) })}
                    </span>
                  )}
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="stack close">
        <h2>{words.say('hive.today.planned', { count: planned.length })}</h2>
        {visits.length === 0 && <p className="quiet">{words.say('hive.today.empty')}</p>}
        <ul className="rows">
          {planned.map((visit) => (
            <li key={visit.visit}>
              <Link className="visit-card" href={`/start/visit/${visit.visit}/apiary/${visit.apiary}`}>
                <span className="name">{visit.name}</span>
                <span>
                  {colonies(visit.coloniesRegistered)} · {sayWord(words, 'casework.visit-reason.*', visit.reason)}
                </span>
                <span className="quiet">
                  {visit.addressWords}
                  {visit.plannedFor && visit.state !== 'today' && (
                    <>
                      {' · '}
                      {words.say(visit.state === 'late' ? 'hive.today.late' : 'hive.today.later', {
                        day: words.dayOf(visit.plannedFor, device.timeZone),
                      })}
                    </>
                  )}
                </span>
              </Link>
            </li>
          ))}
        </ul>
      </section>
      {ended.length > 0 && (
        <section className="stack close">
          <h2>{words.say('hive.today.done')}</h2>
          <ul className="rows">
            {ended.map((visit) => (
              <li key={visit.about.id}>
                <Link className="visit-card" href={`/visit/${visit.about.id}/result`}>
                  <span className="name">{nameOf(visit.apiary)}</span>
                  {visit.endedAt && (
                    <span className="quiet">
                      {words.say('hive.today.ended-at', { time: words.clockTime(visit.endedAt, device.timeZone) })}
                    </span>
                  )}
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      <a className="button plain" href="/front">
        {words.say('front.settings')}
      </a>
    </Screen>
  );
}

/** The full states of the few visits of today and of their apiaries; the other thousands stay rows. */
function useOpened(rows: readonly VisitSummary[] | undefined) {
  const { book } = useHiveDevice();
  const [opened, setOpened] = useState<{ visits: VisitState[]; apiaries: ApiaryState[] } | undefined>();
  useEffect(() => {
    if (!rows) return;
    let left = false;
    const read = async () => {
      const visits = await Promise.all(rows.map((row) => book.state({ type: 'visit', id: row.about.id })));
      const ids = [...new Set(rows.flatMap((row) => (row.apiary === null ? [] : [row.apiary])))];
      const apiaries = await Promise.all(ids.map((id) => book.state({ type: 'apiary', id })));
      if (!left) {
        setOpened({
          visits: visits.filter((one) => one !== null),
          apiaries: apiaries.filter((one) => one !== null),
        });
      }
    };
    void read();
    return () => {
      left = true;
    };
  }, [book, rows]);
  return opened;
}
