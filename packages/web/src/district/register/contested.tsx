import { settleContested } from '@combside/casework/register/settle';
import type { Person } from '@combside/contract/people';
import type { ApiaryState, ColonyState, KeeperState, MovementState } from '@combside/record/states';
import { Button } from '../../ui/button.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { type Names, nameOf } from './names-on-record.ts';
import { sayField, sayValue } from './say-value.ts';
import type { RecordWriting } from './use-record-writing.ts';

/** Values that did not see each other, side by side, until somebody says which stands. */
export function Contested({
  state,
  people,
  names,
  writing,
}: {
  readonly state: ApiaryState | ColonyState | KeeperState | MovementState;
  readonly people: readonly Person[];
  readonly names: Names;
  readonly writing: RecordWriting;
}) {
  const words = useWords();
  const register =
    'apiary' in state
      ? state.apiary
      : 'colony' in state
        ? state.colony
        : 'movement' in state
          ? state.movement
          : state.keeper;
  if (register.contested.length === 0) return null;
  const values = [...(register.current ? [register.current] : []), ...register.contested];
  const bodies = values.map(({ body }) => body as Record<string, unknown>);
  const fields = Object.keys(bodies[0] ?? {}).filter(
    (field) => new Set(bodies.map((body) => JSON.stringify(body[field]))).size > 1,
  );
  return (
    <section className="caution stack close" aria-labelledby="contested-title">
      <h3 id="contested-title">{words.say('register.contested')}</h3>
      <div className="side-by-side">
        {values.map(({ written, body }, index) => (
          <div key={written.entry} className="stack close">
            <p className="quiet">
              {words.say('register.history.by', {
                name: nameOf(people, written.by, words.say('always.not-known')),
                when: words.dayAndTime(written.at, timeZoneHere),
              })}
              {index === 0 && ` · ${words.say('register.contested.now')}`}
            </p>
            <dl className="fields">
              {fields.map((field) => (
                <div key={field}>
                  <dt>{sayField(words, field)}</dt>
                  <dd>{sayValue(words, field, (body as Record<string, unknown>)[field], names)}</dd>
                </div>
              ))}
            </dl>
            <Button
              disabled={writing.state === 'busy'}
              onClick={() => void writing.write(() => settleContested(state, written.entry))}
            >
              {words.say('register.contested.choose')}
            </Button>
          </div>
        ))}
      </div>
    </section>
  );
}
