import { visitPage } from '@combside/contract/visit-page';
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

/** One visit as a case note: what happened, what was seen and why, who and where. It grows while entries arrive. */
export function VisitPage({ visit }: { readonly visit: string }) {
  const words = useWords();
  const desk = useDeskAddress();
  const asked = useAsked(visitPage, `/api/visits/${visit}`, (event) => event.visit === visit);
  const { answer } = asked;
  if (!answer) {
    return <PageWaits asked={asked} loading="district.page.loading" notThere="district.not-there" />;
  }

  const at = (instant: string) => words.dayAndTime(instant, timeZoneHere);
  const nameOf = (person: string) =>
    answer.people.find((one) => one.person === person)?.name ?? words.say('always.not-known');
  const labelOf = (colony: string) => answer.colonies.find((one) => one.colony === colony)?.label ?? '';
  const body = answer.visit.visit.current?.body;
  const keeper = answer.keeper?.keeper.current?.body;
  const examined = answer.colonies.filter((one) => one.examinations.length > 0);
  return (
    <main className="office-page stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>
          {answer.apiary ? (
            <Link href={desk.to(`/apiary/${answer.apiary.apiary}`)}>{answer.apiary.name}</Link>
          ) : (
            words.say('district.apiary-unknown')
          )}
        </h2>
        {body && (
          <p>
            {[
              body.startedAt
                ? words.say('district.started', { when: at(body.startedAt) })
                : body.plannedFor && words.say('district.planned-for', { when: at(body.plannedFor) }),
              body.endedAt && words.say('district.ended', { when: at(body.endedAt) }),
            ]
              .filter(Boolean)
              .join(' · ')}
          </p>
        )}
        <p className="quiet">{words.say('district.arrived', { when: at(answer.arrivedAt) })}</p>
      </header>
      {body && (
        <ul className="facts">
          <li>{words.say('district.by', { name: nameOf(body.inspector) })}</li>
          <li>{keeper ? words.say('district.keeper', { name: keeper.name }) : words.say('district.keeper-unknown')}</li>
          <li>{words.say('district.reason', { reason: sayWord(words, 'casework.visit-reason.*', body.reason) })}</li>
          {body.startedAt && (
            <li>{words.say('district.power', { power: sayWord(words, 'casework.power.*', body.power) })}</li>
          )}
          {answer.visit.attendance.current && (
            <li>
              {words.say('district.present', {
                people: words.list(answer.visit.attendance.current.body.people.map((one) => one.name)),
              })}
            </li>
          )}
          {body.startedAt && (
            <li>
              {words.say('district.count', {
                counted: body.coloniesCounted ?? words.say('district.count-unknown'),
                registered: answer.apiary?.coloniesRegistered ?? words.say('district.count-unknown'),
              })}
            </li>
          )}
          {body.temperatureCelsius !== null && (
            <li>{words.say('district.temperature', { temperature: words.unit(body.temperatureCelsius, '°C') })}</li>
          )}
        </ul>
      )}
      <section className="stack" aria-labelledby="colonies-title">
        <h3 id="colonies-title">{words.say('district.colonies')}</h3>
        {answer.photographs.length > 0 && (
          <p>
            <Link href={`/combs?visit=${visit}`}>{words.say('district.combs.of-visit')}</Link>
          </p>
        )}
        {examined.length === 0 && <p className="quiet">{words.say('district.colonies.none')}</p>}
        {examined.map((colony) => (
          <ColonyNote
            key={colony.colony}
            colony={colony}
            photographs={answer.photographs.filter((one) => one.colony === colony.colony)}
            nameOf={nameOf}
          />
        ))}
        {body?.leftOpen.map((one) => (
          <p key={one.colony}>{words.say('district.left-open', { label: labelOf(one.colony), reason: one.reason })}</p>
        ))}
      </section>
      {answer.visit.cleanDowns.length > 0 && (
        <section className="stack close" aria-labelledby="clean-title">
          <h3 id="clean-title">{words.say('district.clean-downs')}</h3>
          <ul>
            {answer.visit.cleanDowns.map(({ body: clean, written }) => {
              const values = {
                gloves: sayWord(words, 'casework.gloves.*', clean.gloves),
                tool: sayWord(words, 'casework.tool.*', clean.tool),
                phone: sayWord(words, 'casework.phone.*', clean.phone),
              };
              return (
                <li key={written.entry}>
                  {clean.after === null
                    ? words.say('district.clean-down.exit', values)
                    : words.say('district.clean-down.after', { ...values, label: labelOf(clean.after) })}
                </li>
              );
            })}
          </ul>
        </section>
      )}
      <NotesShown notes={answer.visit.notes} nameOf={nameOf} timeZone={timeZoneHere} />
      {answer.visit.handovers.map(({ body: handed, written }) => (
        <p key={written.entry}>
          {words.say('district.handed-over', {
            when: at(handed.handedOverAt),
            how: sayWord(words, 'papers.signatures.how.*', handed.how),
          })}
        </p>
      ))}
      {body?.endedAt && answer.visit.handovers.length === 0 && (
        <p className="finding owed">{words.say('district.not-handed-over')}</p>
      )}
      {answer.visit.unknown.length > 0 && <p className="caution">{words.say('district.newer')}</p>}
    </main>
  );
}
