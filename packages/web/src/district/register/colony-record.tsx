import { colonyPage } from '@combside/contract/colony-page';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { Contested } from './contested.tsx';
import { History } from './history.tsx';
import { Movements } from './movements.tsx';
import { Page } from './page.tsx';
import { Proposed } from './proposed.tsx';
import { sayValue } from './say-value.ts';
import { useRecordWriting } from './use-record-writing.ts';

/** A colony as the register knows it, when it was looked at, and its history. */
export function ColonyRecord({ colony }: { readonly colony: string }) {
  const words = useWords();
  const asked = useAsked(
    colonyPage,
    `/api/colonies/${colony}`,
    (event) => event.about.id === colony || event.about.type === 'movement',
  );
  const writing = useRecordWriting();
  const { answer } = asked;
  const body = answer?.colony.colony.current?.body;
  if (!answer || !body) return <Page asked={asked} />;
  const names = new Map(answer.otherEnds.map((one) => [one.apiary, one.name]));
  if (answer.apiary) names.set(answer.apiary.apiary, answer.apiary.name);
  return (
    <main className="office-page stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>{words.say('register.colony', { label: body.label })}</h2>
        {answer.apiary && (
          <p>
            <Link href={`/register/apiaries/${answer.apiary.apiary}`}>
              {words.say('register.colony-at', { name: answer.apiary.name })}
            </Link>
          </p>
        )}
      </header>
      <WriteStatus writing={writing} />
      <Contested state={answer.colony} people={answer.people} names={names} writing={writing} />
      <Proposed state={answer.colony} colonies={[]} people={answer.people} names={names} writing={writing} />
      <ul className="facts">
        <li>{sayWord(words, 'casework.hive-state.*', body.hiveState)}</li>
        <li>{sayValue(words, 'hiveType', body.hiveType, names)}</li>
        <li>{sayValue(words, 'broodBoxes', body.broodBoxes, names)}</li>
      </ul>
      <Movements
        movements={answer.movements}
        names={names}
        own={answer.apiary ? [answer.apiary] : []}
        colony={colony}
        mayRecord={body.hiveState !== 'gone'}
        people={answer.people}
      />
      <section className="stack close" aria-labelledby="visits-title">
        <h3 id="visits-title">{words.say('register.visits')}</h3>
        {answer.colony.examinations.length === 0 && <p className="quiet">{words.say('register.visits.none')}</p>}
        <ul>
          {answer.colony.examinations.map((one) => {
            const result = answer.colony.assessments.find(({ body: said }) => said.examination === one.written.entry);
            return (
              <li key={one.written.entry}>
                <Link href={`/visit/${one.body.visit}`}>{words.dayAndTime(one.body.observedAt, timeZoneHere)}</Link>{' '}
                <span className="quiet">
                  {sayWord(words, 'casework.depth.*', one.body.depth)}
                  {result && ` · ${sayWord(words, 'casework.result.*', result.body.result)}`}
                </span>
              </li>
            );
          })}
        </ul>
      </section>
      <History state={answer.colony} people={answer.people} names={names} />
    </main>
  );
}
