import { apiaryPage } from '@combside/contract/apiary-page';
import { owed } from '@combside/contract/owed';
import type { StateBase } from '@combside/record/states';
import { Link } from 'wouter';
import type { Session } from '../../app/session.ts';
import { NotesShown } from '../../ui/notes-shown.tsx';
import { ResultMark } from '../../ui/result-mark.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { VisitLineLink } from '../desk/visit-line-link.tsx';
import { useDeskAddress } from '../desk-address.ts';
import { useDistrictName } from '../district-name.tsx';
import { PageWaits } from '../office/page-waits.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { AskForVisit } from './ask-for-visit.tsx';
import { MovementLine } from './movement-line.tsx';

interface ApiaryPageProps {
  readonly session: Session;
  readonly apiary: string;
}

/** One apiary as a case note: its colonies, what is owed there, who and where, what came and went, its visits. */
export function ApiaryPage({ session, apiary }: ApiaryPageProps) {
  const words = useWords();
  const districtName = useDistrictName();
  const desk = useDeskAddress();
  const asked = useAsked(
    apiaryPage,
    `/api/apiaries/${apiary}`,
    (event) => event.apiary === apiary || event.about.id === apiary || event.about.type === 'movement',
  );
  const { answer } = asked;
  if (!answer) {
    return <PageWaits asked={asked} loading="district.apiary.loading" notThere="district.apiary.not-there" />;
  }
  const body = answer.apiary.apiary.current?.body;
  if (!body) return null;
  const keeper = answer.keeper?.keeper.current?.body;
  // What was taken back stays in the register, with its history.
  const movements = answer.movements.filter(({ movement }) => movement.current?.body.happened);
  const place = body.position;
  const degrees = (value: number) => `${words.number(value, 5, 'exact')}°`;
  return (
    <main className="office-page stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>{body.name}</h2>
        <p className="quiet">
          {[
            words.say('district.apiary'),
            words.say('district.apiary.district', { district: districtName(body.district) }),
            body.number && words.say('district.apiary.number', { number: body.number }),
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
        <p>
          <Link href={`/register/apiaries/${apiary}`}>{words.say('district.in-register')}</Link>
          {' · '}
          <Link href={`/combs?apiary=${apiary}`}>{words.say('district.combs.of-apiary')}</Link>
        </p>
        {answer.apiary.apiary.contested.length > 0 && (
          <p className="caution">{words.say('district.apiary.contested')}</p>
        )}
      </header>
      <section className="stack close" aria-labelledby="colonies-title">
        <h3 id="colonies-title">{words.say('district.colonies')}</h3>
        {answer.colonies.length === 0 && <p className="quiet">{words.say('planning.chance.none')}</p>}
        <ul className="colony-lines">
          {answer.colonies.map((colony) => (
            <li key={colony.colony}>
              <Link className="office-line place-line" href={desk.to(`/colony/${colony.colony}`)}>
                <ResultMark result={colony.lastResult} />
                <span>
                  <strong>{words.say('district.colony', { label: colony.label })}</strong>{' '}
                  {colony.lastResult
                    ? sayWord(words, 'casework.result.*', colony.lastResult)
                    : words.say('district.places.not-looked')}
                </span>
                <span className="quiet">
                  {[
                    colony.hiveState && colony.hiveState !== 'living'
                      ? sayWord(words, 'casework.hive-state.*', colony.hiveState)
                      : null,
                    colony.lastExaminedAt && words.dayOf(colony.lastExaminedAt, timeZoneHere),
                  ]
                    .filter(Boolean)
                    .join(' · ')}
                </span>
              </Link>
            </li>
          ))}
        </ul>
      </section>
      <OwedHere apiary={apiary} />
      <NotesShown
        notes={answer.apiary.notes as StateBase['notes']}
        nameOf={(person) => answer.people.find((one) => one.person === person)?.name ?? words.say('always.not-known')}
        timeZone={timeZoneHere}
      />
      <section className="stack close" aria-labelledby="where-title">
        <h3 id="where-title">{words.say('district.apiary.where')}</h3>
        <ul className="facts">
          <li>
            {keeper && body.keeper ? (
              <>
                {words.say('district.keeper', { name: keeper.name })}
                {' · '}
                {words.say('district.apiary.trade', { trade: sayWord(words, 'district.trade.*', keeper.trade) })}
              </>
            ) : (
              words.say('district.keeper-unknown')
            )}
          </li>
          {body.addressWords !== '' && <li>{words.say('district.apiary.address', { text: body.addressWords })}</li>}
          <li>
            {place
              ? words.say('district.apiary.position', {
                  latitude: degrees(place.latitude),
                  longitude: degrees(place.longitude),
                  metres: words.unit(place.uncertaintyMetres, 'm'),
                  how: sayWord(words, 'district.how.*', place.how),
                })
              : words.say('district.apiary.position-none')}
          </li>
          <li>
            {body.lastConfirmedOn
              ? words.say('district.apiary.confirmed', { day: words.day(body.lastConfirmedOn) })
              : words.say('district.apiary.confirmed-never')}
          </li>
          <li>
            {words.say('district.apiary.registered', {
              count: body.coloniesRegistered ?? words.say('district.count-unknown'),
            })}
          </li>
        </ul>
      </section>
      <section className="stack close" aria-labelledby="movements-title">
        <h3 id="movements-title">{words.say('district.apiary.movements')}</h3>
        {movements.length === 0 && <p className="quiet">{words.say('district.apiary.movements.none')}</p>}
        <ul className="facts">
          {movements.map((movement) => (
            <MovementLine key={movement.about.id} movement={movement} apiary={apiary} otherEnds={answer.otherEnds} />
          ))}
        </ul>
      </section>
      <section className="stack close" aria-labelledby="visits-title">
        <h3 id="visits-title">{words.say('district.apiary.visits')}</h3>
        <p>
          <Link className="button" href={`/planning?take=${apiary}`}>
            {words.say('district.apiary.plan')}
          </Link>
        </p>
        <AskForVisit session={session} apiary={answer.apiary} />
        {answer.visits.length === 0 && <p className="quiet">{words.say('district.apiary.visits.none')}</p>}
        <ul className="rows">
          {answer.visits.map((visit) => (
            <li key={visit.visit}>
              <VisitLineLink visit={visit} chosen={false} />
            </li>
          ))}
        </ul>
      </section>
    </main>
  );
}

/** Duties that stand open at this apiary, each with its article. */
function OwedHere({ apiary }: { readonly apiary: string }) {
  const words = useWords();
  const { answer } = useAsked(owed, '/api/owed', (event) => event.apiary === apiary);
  const duties = answer?.duties.filter((duty) => duty.apiary === apiary);
  if (!duties) return null;
  return (
    <section className="stack close" aria-labelledby="owed-title">
      <h3 id="owed-title">{words.say('district.owed.here')}</h3>
      {duties.length === 0 && <p className="quiet">{words.say('district.owed.here.none')}</p>}
      <ul className="facts">
        {duties.map((duty) => (
          <li key={`${duty.rule} ${duty.colony ?? ''} ${duty.condition ?? ''} ${duty.since}`}>
            <strong>{sayWord(words, 'casework.duty.*', duty.duty)}</strong>
            {duty.colonyLabel && ` · ${words.say('district.colony', { label: duty.colonyLabel })}`}
            {duty.condition && ` · ${sayWord(words, 'signs.condition.*.name', duty.condition)}`}
            {duty.late && (
              <>
                {' · '}
                <strong>{words.say('casework.duty-state.late')}</strong>
              </>
            )}
            <br />
            <span className="quiet">
              {[
                sayWord(words, 'casework.owed-by.*', duty.owedBy),
                words.say('district.owed.since', { day: words.dayOf(duty.since, timeZoneHere) }),
                duty.due
                  ? words.say('district.owed.by', { day: words.dayOf(duty.due, timeZoneHere) })
                  : duty.promptness && sayWord(words, 'casework.promptness.*', duty.promptness),
                duty.article,
              ]
                .filter(Boolean)
                .join(' · ')}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
