import { changeKeeper } from '@combside/casework/register/keeper';
import { keeperPage } from '@combside/contract/keeper-page';
import { mergedInto } from '@combside/record/fold';
import type { KeeperBody } from '@combside/record/kinds/keeper';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteStatus } from '../../ui/write-status.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { ChangeForm } from './change-form.tsx';
import { Contested } from './contested.tsx';
import { History } from './history.tsx';
import { MergedInto } from './merged-into.tsx';
import { Movements } from './movements.tsx';
import { Page } from './page.tsx';
import { useRecordWriting } from './use-record-writing.ts';

const changeable = [
  { field: 'name', type: 'text' },
  { field: 'number', type: 'text' },
  { field: 'addressWords', type: 'text' },
  { field: 'telephone', type: 'tel' },
  { field: 'email', type: 'email' },
] as const;

/** A keeper with the apiaries, and everything that was written about the person. */
export function KeeperRecord({ keeper }: { readonly keeper: string }) {
  const words = useWords();
  const asked = useAsked(
    keeperPage,
    `/api/keepers/${keeper}`,
    (event) =>
      event.about.id === keeper ||
      event.about.type === 'apiary' ||
      event.about.type === 'movement' ||
      event.kind === 'merge',
  );
  const writing = useRecordWriting();
  const { answer } = asked;
  const body = answer?.keeper.keeper.current?.body;
  if (!answer || !body) return <Page asked={asked} />;
  const names = new Map(answer.otherEnds.map((one) => [one.apiary, one.name]));
  const into = mergedInto(answer.keeper);
  return (
    <main className="office-page stack">
      <Unanswered asked={asked} />
      <header className="stack close">
        <h2>{body.name}</h2>
        <p>
          {[
            body.number && words.say('register.number', { number: body.number }),
            body.trade !== 'not known' && sayWord(words, 'register.trade.*', body.trade),
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
      </header>
      {into && <MergedInto state={answer.keeper} into={`/register/keepers/${into}`} writing={writing} />}
      <WriteStatus writing={writing} />
      <Contested state={answer.keeper} people={answer.people} names={names} writing={writing} />
      <ul className="facts">
        {body.addressWords && <li>{body.addressWords}</li>}
        {body.telephone && <li>{body.telephone}</li>}
        {body.email && <li>{body.email}</li>}
      </ul>
      <ChangeForm
        key={answer.position}
        fields={changeable}
        body={body}
        change={(change) => changeKeeper(answer.keeper, change as Partial<KeeperBody>)}
        writing={writing}
      />
      <section className="stack close" aria-labelledby="apiaries-title">
        <h3 id="apiaries-title">{words.say('register.apiaries')}</h3>
        <ul className="rows">
          {answer.apiaries.map((one) => (
            <li key={one.apiary}>
              <Link className="office-line" href={`/register/apiaries/${one.apiary}`}>
                <strong>{one.name}</strong>
                <span className="quiet">
                  {one.coloniesRegistered === null
                    ? words.say('register.colonies-unknown')
                    : words.say('register.colonies-registered', { count: one.coloniesRegistered })}
                </span>
              </Link>
            </li>
          ))}
        </ul>
      </section>
      <Movements movements={answer.movements} names={names} own={answer.apiaries} people={answer.people} />
      {answer.mergedHere.length > 0 && (
        <section className="stack close" aria-labelledby="merged-title">
          <h3 id="merged-title">{words.say('register.merged-here')}</h3>
          <ul>
            {answer.mergedHere.map(({ id, name }) => (
              <li key={id}>
                <Link href={`/register/keepers/${id}`}>{name}</Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      <History state={answer.keeper} people={answer.people} names={names} />
    </main>
  );
}
