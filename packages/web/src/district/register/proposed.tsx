import type { Act } from '@combside/casework/act';
import {
  acceptApiaryChange,
  acceptColonyChange,
  openProposals,
  rejectChange,
} from '@combside/casework/register/settle';
import { withReason } from '@combside/casework/register/with-reason';
import type { Person } from '@combside/contract/people';
import type { ApiaryState, ColonyState } from '@combside/record/states';
import { newId } from '../../device/keys/new-id.ts';
import { Button } from '../../ui/button.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { type Names, nameOf } from './names-on-record.ts';
import { sayField, sayValue } from './say-value.ts';
import type { RecordWriting } from './use-record-writing.ts';

/** Changes that inspectors proposed and nobody answered. */
export function Proposed({
  state,
  colonies,
  people,
  names,
  writing,
}: {
  readonly state: ApiaryState | ColonyState;
  readonly colonies: readonly ColonyState[];
  readonly people: readonly Person[];
  readonly names: Names;
  readonly writing: RecordWriting;
}) {
  const words = useWords();
  const open = openProposals(state);
  if (open.length === 0) return null;
  return (
    <section className="caution stack close" aria-label={words.say('register.history.proposed')}>
      {open.map((one) => {
        const { field, from, to, reason } = one.body;
        const said = {
          field: sayField(words, field),
          from: sayValue(words, field, from, names),
          to: sayValue(words, field, to, names),
        };
        const accept = (): Act =>
          'apiary' in state ? acceptApiaryChange(state, one) : acceptColonyChange(state, one, colonies);
        return (
          <div key={one.written.entry} className="stack close">
            <p>
              <strong>{words.say('register.proposed', said)}</strong>
            </p>
            <p className="quiet">
              {words.say('register.proposed.by', {
                name: nameOf(people, one.written.by, words.say('always.not-known')),
                when: words.dayAndTime(one.written.at, timeZoneHere),
                why: reason,
              })}
            </p>
            <div className="buttons">
              <Button
                disabled={writing.state === 'busy'}
                onClick={() => void writing.write(() => withReason(accept(), reason, newId))}
              >
                {words.say('register.proposed.accept', said)}
              </Button>
              <Button
                disabled={writing.state === 'busy'}
                onClick={() => {
                  const why = words.say('register.proposed.rejected', said);
                  void writing.write(() => withReason(rejectChange(state, one), why, newId));
                }}
              >
                {words.say('register.proposed.reject', said)}
              </Button>
            </div>
          </div>
        );
      })}
    </section>
  );
}
