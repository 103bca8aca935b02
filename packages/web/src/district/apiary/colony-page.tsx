import { colonyPage } from '@combside/contract/colony-page';
import { Link } from 'wouter';
import { NotesShown } from '../../ui/notes-shown.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { PageWaits } from '../office/page-waits.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { ColonyNote } from './colony-note.tsx';

/** One colony with everything ever seen in it, newest first. */
export function ColonyPage({ colony }: { readonly colony: string }) {
  const words = useWords();
  const desk = useDeskAddress();
  const asked = useAsked(colonyPage, `/api/colonies/${colony}`, (event) => event.about.id === colony);
  const { answer } = asked;
  if (!answer) {
    return <PageWaits asked={asked} loading="district.colony.loading" notThere="district.colony.not-there" />;
  }
  const body = answer.colony.colony.current?.body;
  const label = body?.label ?? '';
  const nameOf = (person: string) =>
    answer.people.find((one) => one.person === person)?.name ?? words.say('always.not-known');
  return (
    <main className="office-page stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>{words.say('district.colony', { label })}</h2>
        {answer.apiary && (
          <p>
            <Link href={desk.to(`/apiary/${answer.apiary.apiary}`)}>
              {words.say('district.colony.at', { apiary: answer.apiary.name })}
            </Link>
          </p>
        )}
        {body && (
          <ul className="facts">
            <li>
              {words.say('district.colony.hive', {
                type: sayWord(words, 'casework.hive-type.*', body.hiveType),
                state: sayWord(words, 'casework.hive-state.*', body.hiveState),
              })}
            </li>
            <li>
              {words.say('district.colony.boxes', {
                boxes: words.list(
                  body.broodBoxes.map((one) => words.say('district.colony.box', { box: one.box, frames: one.frames })),
                ),
              })}
            </li>
          </ul>
        )}
      </header>
      <section className="stack" aria-labelledby="looks-title">
        <h3 id="looks-title">{words.say('district.colony.looks')}</h3>
        {answer.colony.examinations.length === 0 && <p className="quiet">{words.say('district.colony.looks.none')}</p>}
        {answer.colony.examinations.map((examination) => (
          <div key={examination.written.entry} className="stack close">
            <p className="look-day">
              {words.dayAndTime(examination.body.observedAt, timeZoneHere)} · {nameOf(examination.written.by)}
              {' · '}
              <Link href={desk.to(`/visit/${examination.body.visit}`)}>{words.say('district.colony.visit-page')}</Link>
            </p>
            <ColonyNote
              colony={{
                colony,
                label,
                hiveType: body?.hiveType ?? null,
                examinations: [examination],
                assessments: answer.colony.assessments.filter(
                  (one) => one.body.examination === examination.written.entry,
                ),
                // They are of the colony, not of one look: told once, below.
                notes: [],
              }}
              photographs={answer.photographs.filter((one) =>
                examination.body.photographs.some((taken) => taken.hash === one.hash),
              )}
              nameOf={nameOf}
            />
          </div>
        ))}
      </section>
      <NotesShown notes={answer.colony.notes} nameOf={nameOf} timeZone={timeZoneHere} />
    </main>
  );
}
