import { changeApiary } from '@combside/casework/register/apiary';
import { apiaryPage } from '@combside/contract/apiary-page';
import { mergedInto } from '@combside/record/fold';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { useDistrictName } from '../district-name.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { ChangeForm } from './change-form.tsx';
import { Contested } from './contested.tsx';
import { History } from './history.tsx';
import { MergedInto } from './merged-into.tsx';
import { Movements } from './movements.tsx';
import { Page } from './page.tsx';
import { Proposed } from './proposed.tsx';
import { sayPosition } from './say-value.ts';
import { useRecordWriting } from './use-record-writing.ts';

const changeable = [
  { field: 'name', type: 'text' },
  { field: 'number', type: 'text' },
  { field: 'addressWords', type: 'text' },
  { field: 'coloniesRegistered', type: 'number' },
  { field: 'lastConfirmedOn', type: 'date' },
] as const;

/** An apiary as the register knows it: where, how sure, whose, what stands there, what came and went, and its history. */
export function ApiaryRecord({ apiary }: { readonly apiary: string }) {
  const words = useWords();
  const districtName = useDistrictName();
  const asked = useAsked(
    apiaryPage,
    `/api/apiaries/${apiary}`,
    (event) => event.apiary === apiary || event.about.type === 'movement',
  );
  const writing = useRecordWriting();
  const { answer } = asked;
  const body = answer?.apiary.apiary.current?.body;
  if (!answer || !body) return <Page asked={asked} />;

  const { people, keeper } = answer;
  const names = new Map(answer.otherEnds.map((one) => [one.apiary, one.name]));
  const keeperName = keeper?.keeper.current?.body.name;
  if (body.keeper && keeperName) names.set(body.keeper, keeperName);
  const into = mergedInto(answer.apiary);
  return (
    <main className="office-page stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>{body.name}</h2>
        <p>
          {[
            body.number && words.say('register.number', { number: body.number }),
            words.say('register.district-of', { district: districtName(body.district) }),
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
      </header>
      {into && <MergedInto state={answer.apiary} into={`/register/apiaries/${into}`} writing={writing} />}
      <WriteStatus writing={writing} />
      <Contested state={answer.apiary} people={people} names={names} writing={writing} />
      <Proposed state={answer.apiary} colonies={[]} people={people} names={names} writing={writing} />
      <ul className="facts">
        <li>
          {body.keeper ? (
            <Link href={`/register/keepers/${body.keeper}`}>
              {words.say('register.keeper-of', { name: keeperName ?? words.say('always.not-known') })}
            </Link>
          ) : (
            words.say('register.keeper-not-known')
          )}
        </li>
        <li>{body.position ? sayPosition(words, body.position) : words.say('register.position.none')}</li>
        {body.addressWords && <li>{body.addressWords}</li>}
        <li>
          {body.lastConfirmedOn
            ? words.say('register.confirmed', { day: words.day(body.lastConfirmedOn) })
            : words.say('register.confirmed.never')}
        </li>
        <li>
          {body.coloniesRegistered === null
            ? words.say('register.colonies-unknown')
            : words.say('register.colonies-registered', { count: body.coloniesRegistered })}
        </li>
      </ul>
      <ChangeForm
        key={answer.position}
        fields={changeable}
        body={body}
        change={(change) => changeApiary(answer.apiary, change as Partial<Omit<ApiaryBody, 'district'>>)}
        writing={writing}
      />
      {answer.mergedHere.length > 0 && (
        <section className="stack close" aria-labelledby="merged-title">
          <h3 id="merged-title">{words.say('register.merged-here')}</h3>
          <ul>
            {answer.mergedHere.map(({ id, name }) => (
              <li key={id}>
                <Link href={`/register/apiaries/${id}`}>{name}</Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      {answer.apiary.photographs.length > 0 && (
        <section className="stack close" aria-labelledby="photographs-title">
          <h3 id="photographs-title">{words.say('register.photographs')}</h3>
          <ul className="photographs">
            {answer.apiary.photographs.map(({ body: one, written }) => (
              <li key={written.entry}>
                <img
                  src={`/api/photographs/${one.hash}`}
                  loading="lazy"
                  alt={words.say('register.photograph', { when: words.dayAndTime(one.takenAt, timeZoneHere) })}
                />
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="stack close" aria-labelledby="colonies-title">
        <h3 id="colonies-title">{words.say('register.colonies')}</h3>
        {answer.colonies.length === 0 && <p className="quiet">{words.say('register.colonies.none')}</p>}
        <ul className="colony-lines">
          {answer.colonies.map((one) => (
            <li key={one.colony}>
              <Link href={`/register/colonies/${one.colony}`}>
                {words.say('register.colony', { label: one.label })}
              </Link>{' '}
              <span className="quiet">
                {[
                  one.hiveState && one.hiveState !== 'living' && sayWord(words, 'casework.hive-state.*', one.hiveState),
                  one.lastResult && sayWord(words, 'casework.result.*', one.lastResult),
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </li>
          ))}
        </ul>
      </section>
      <Movements movements={answer.movements} names={names} own={[{ apiary, name: body.name }]} people={people} />
      <section className="stack close" aria-labelledby="visits-title">
        <h3 id="visits-title">{words.say('register.visits')}</h3>
        {answer.visits.length === 0 && <p className="quiet">{words.say('register.visits.none')}</p>}
        <ul>
          {answer.visits.map((visit) => {
            const when = visit.endedAt ?? visit.startedAt ?? visit.plannedFor;
            return (
              <li key={visit.visit}>
                <Link href={`/visit/${visit.visit}`}>
                  {when ? words.dayAndTime(when, timeZoneHere) : words.say('always.not-known')}
                </Link>{' '}
                <span className="quiet">{visit.inspectorName ?? ''}</span>
              </li>
            );
          })}
        </ul>
      </section>
      <History state={answer.apiary} people={people} names={names} />
    </main>
  );
}
