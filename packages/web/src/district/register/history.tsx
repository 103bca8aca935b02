import { type HistoryEvent, historyOf } from '@combside/casework/register/history';
import type { Person } from '@combside/contract/people';
import type { StateBase } from '@combside/record/states';
import { sayWord } from '../../ui/say-sentence.ts';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { type Names, nameOf } from './names-on-record.ts';
import { sayField, sayValue } from './say-value.ts';

/** Every change with who, when and why, newest first. */
export function History({
  state,
  people,
  names,
  untitled = false,
}: {
  readonly state: StateBase;
  readonly people: readonly Person[];
  readonly names: Names;
  /** Whether the heading stands elsewhere already. */
  readonly untitled?: boolean;
}) {
  const words = useWords();
  const changes = (event: HistoryEvent) => event.what === 'changed' || event.what === 'contested';
  const Part = untitled ? 'div' : 'section';
  return (
    <Part className="stack close" {...(untitled ? {} : { 'aria-labelledby': 'history-title' })}>
      {!untitled && <h3 id="history-title">{words.say('register.history')}</h3>}
      <ol className="rows history">
        {historyOf(state).map((event) => (
          <li key={`${event.written.entry} ${event.what}`} className="stack close">
            <p>
              <strong>{sayWord(words, 'register.history.*', event.what)}</strong>{' '}
              <span className="quiet">
                {words.say('register.history.by', {
                  name: nameOf(people, event.written.by, words.say('always.not-known')),
                  when: words.dayAndTime(event.written.at, timeZoneHere),
                })}
              </span>
            </p>
            {event.fields.map(({ field, from, to }) => (
              <p key={field}>
                {words.say('register.change-from-to', {
                  field: sayField(words, field),
                  from: sayValue(words, field, from, names),
                  to: sayValue(words, field, to, names),
                })}
              </p>
            ))}
            {event.why !== null ? (
              <p>{event.what === 'noted' ? event.why : words.say('register.history.why', { why: event.why })}</p>
            ) : (
              changes(event) && <p className="quiet">{words.say('register.history.no-why')}</p>
            )}
          </li>
        ))}
      </ol>
    </Part>
  );
}
