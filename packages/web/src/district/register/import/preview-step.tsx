import type { LinePlan } from '@combside/casework/register/import/plan-import';
import { writeSeparatedText } from '@combside/casework/register/import/separated-text';
import { useId, useState } from 'react';
import { Button } from '../../../ui/button.tsx';
import { useWords } from '../../../ui/words-context.tsx';
import { saveFile } from '../save-file.ts';
import { sayField } from '../say-value.ts';
import { FaultTable } from './fault-table.tsx';
import type { Preview } from './messages.ts';

interface PreviewStepProps {
  readonly name: string;
  readonly preview: Preview;
  readonly onBack: () => void;
  readonly onCancel: () => void;
  readonly onWrite: () => void;
}

/** So many faults stand on the screen; the saved list holds all. */
const shownFaults = 200;

/** What would happen, and every line that cannot be read in. Nothing is written yet. */
export function PreviewStep({ name, preview, onBack, onCancel, onWrite }: PreviewStepProps) {
  const words = useWords();
  const id = useId();
  const [leavesOut, setLeavesOut] = useState(false);
  const { sites, keepers, entries, faultyLines, faults, lines } = preview;
  const blocked = faultyLines > 0 && !leavesOut;
  const counts = ({ created, changed, same }: Preview['sites']) => ({
    created: words.number(created),
    changed: words.number(changed),
    same: words.number(same),
  });
  const records = sites.created + sites.changed + keepers.created + keepers.changed;
  const saveFaults = () => {
    const head = ['line', 'column', 'value', 'what'].map((one) =>
      words.say(`register.import.faults.${one as 'line' | 'column' | 'value' | 'what'}`),
    );
    const rows = faults.map((one) => [
      String(one.line),
      one.column === null ? '' : `${one.column} ${one.header}`,
      one.value,
      words.say(one.id, one.values),
    ]);
    saveFile(`${name}.faults.csv`, `\uFEFF${writeSeparatedText([head, ...rows])}`, 'text/csv');
  };
  return (
    <>
      <section className="stack close" aria-labelledby={`${id}would`}>
        <h3 id={`${id}would`}>{words.say('register.import.would')}</h3>
        <p>{words.say('register.import.sites', counts(sites))}</p>
        <p>{words.say('register.import.keepers', counts(keepers))}</p>
        {entries === 0 && <p role="status">{words.say('register.import.nothing-new')}</p>}
      </section>
      {faultyLines > 0 && (
        <section className="stack close" aria-labelledby={`${id}faults`}>
          <h3 id={`${id}faults`}>{words.say('register.import.faults', { count: faultyLines })}</h3>
          {faults.length > shownFaults && (
            <p className="quiet">
              {words.say('register.import.faults.shown', { shown: shownFaults, count: faults.length })}
            </p>
          )}
          <FaultTable faults={faults.slice(0, shownFaults)} />
          <div>
            <Button look="plain" onClick={saveFaults}>
              {words.say('register.import.faults.save')}
            </Button>
          </div>
          <label>
            <input
              type="checkbox"
              checked={leavesOut}
              onChange={(event) => setLeavesOut(event.currentTarget.checked)}
            />{' '}
            {words.say('register.import.leave-out')}
          </label>
        </section>
      )}
      {blocked && entries > 0 && <p className="quiet">{words.say('register.import.blocked')}</p>}
      <div className="buttons">
        {entries > 0 && (
          <Button look="act" disabled={blocked} onClick={onWrite}>
            {words.say('register.import.do', { count: records })}
          </Button>
        )}
        <Button onClick={onBack}>{words.say('register.import.back')}</Button>
        <Button onClick={onCancel}>{words.say('register.import.cancel')}</Button>
      </div>
      {lines.length > 0 && (
        <section className="stack close" aria-labelledby={`${id}lines`}>
          <h3 id={`${id}lines`}>{words.say('register.import.lines')}</h3>
          <div className="scrolls">
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.say('register.import.faults.line')}</th>
                  <th scope="col">{words.say('register.import.lines.apiary')}</th>
                  <th scope="col">{words.say('register.import.lines.keeper')}</th>
                </tr>
              </thead>
              <tbody>
                {lines.map((line) => (
                  <tr key={line.line}>
                    <td>{line.line}</td>
                    <td>
                      <Does does={line.site} />
                    </td>
                    <td>
                      <Does does={line.keeper} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </section>
      )}
    </>
  );
}

function Does({ does }: { readonly does: LinePlan['site'] }) {
  const words = useWords();
  if (!does) return <>–</>;
  const fields = words.list(does.fields.map((field) => sayField(words, field)));
  return (
    <>
      {does.name}{' '}
      <span className="quiet">
        {does.does === 'changed'
          ? words.say('register.import.does.changed', { fields })
          : words.say(`register.import.does.${does.does}`)}
      </span>
    </>
  );
}
