import { type Columns, type Field, fields } from '@combside/casework/register/import/columns';
import { namesSomething } from '@combside/casework/register/import/read-lines';
import { useId } from 'react';
import type { Session } from '../../../app/session.ts';
import { Button } from '../../../ui/button.tsx';
import { useWords } from '../../../ui/words-context.tsx';
import { useDistrictName } from '../../district-name.tsx';
import { Labelled } from '../labelled.tsx';
import { FaultTable } from './fault-table.tsx';
import type { FileShown, Wishes } from './messages.ts';

interface ColumnsStepProps {
  readonly session: Session;
  readonly file: FileShown;
  readonly columns: Columns;
  readonly remembered: boolean;
  readonly wishes: Pick<Wishes, 'district' | 'dateOrder'>;
  readonly onColumns: (columns: Columns) => void;
  readonly onSheet: (sheet: string) => void;
  readonly onWishes: (wishes: Pick<Wishes, 'district' | 'dateOrder'>) => void;
  readonly onPlan: () => void;
  readonly onCancel: () => void;
}

/** What each column means, with the first rows beside it. */
export function ColumnsStep(props: ColumnsStepProps) {
  const { session, file, columns, remembered, wishes, onColumns, onSheet, onWishes, onPlan, onCancel } = props;
  const words = useWords();
  const districtName = useDistrictName();
  const id = useId();
  const given = columns.filter((field) => field !== null);
  const twice = new Set(given).size < given.length;
  const nothing = !namesSomething(columns);
  const isListed = session.districts.includes(wishes.district);
  const canGoOn = !twice && !nothing && file.headerFaults.length === 0 && wishes.district.trim() !== '';
  return (
    <>
      <p>
        {words.say('register.import.read', {
          name: file.name,
          rows: file.rows,
          columns: file.header.length,
          encoding: file.encoding === 'sheet' ? words.say('register.import.sheet') : file.encoding,
        })}
      </p>
      {file.sheets.length > 1 && (
        <Labelled id={`${id}sheet`} label={words.say('register.import.which-sheet')}>
          <select
            id={`${id}sheet`}
            className="text-input"
            value={file.sheet ?? ''}
            onChange={(event) => onSheet(event.currentTarget.value)}
          >
            {file.sheets.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </Labelled>
      )}
      {file.headerFaults.length > 0 && <FaultTable faults={file.headerFaults} />}
      <section className="stack close" aria-labelledby={`${id}columns`}>
        <h3 id={`${id}columns`}>{words.say('register.import.columns')}</h3>
        <p className="quiet">
          {words.say(remembered ? 'register.import.columns.remembered' : 'register.import.columns.guessed')}
        </p>
        <div className="scrolls">
          <table>
            <thead>
              <tr>
                <th scope="col">{words.say('register.import.columns.header')}</th>
                <th scope="col">{words.say('register.import.columns.means')}</th>
                <th scope="col">{words.say('register.import.columns.examples')}</th>
              </tr>
            </thead>
            <tbody>
              {file.header.map((name, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the file
                <tr key={at}>
                  <th scope="row">{name || `${at + 1}`}</th>
                  <td>
                    <select
                      className="text-input"
                      aria-label={`${words.say('register.import.columns.means')}: ${name || at + 1}`}
                      value={columns[at] ?? ''}
                      onChange={(event) => {
                        const chosen = (event.currentTarget.value || null) as Field | null;
                        onColumns(columns.map((field, place) => (place === at ? chosen : field)));
                      }}
                    >
                      <option value="">{words.say('register.column.none')}</option>
                      {fields.map((field) => (
                        <option key={field} value={field}>
                          {words.say(`register.column.${field}`)}
                        </option>
                      ))}
                    </select>
                  </td>
                  <td className="quiet">{file.examples.map((cells) => cells[at] || '–').join(' · ')}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </section>
      {twice && <p className="caution">{words.say('register.import.columns.twice')}</p>}
      {nothing && <p className="caution">{words.say('register.import.columns.nothing')}</p>}
      <Labelled id={`${id}district`} label={words.say('register.import.district')}>
        <select
          id={`${id}district`}
          className="text-input"
          value={isListed ? wishes.district : ''}
          onChange={(event) => onWishes({ ...wishes, district: event.currentTarget.value })}
        >
          {session.districts.map((one) => (
            <option key={one} value={one}>
              {districtName(one)}
            </option>
          ))}
          {session.role === 'office' && <option value="">{words.say('register.import.district.new')}</option>}
        </select>
      </Labelled>
      {!isListed && (
        <Labelled id={`${id}new`} label={words.say('register.import.district.which')}>
          <input
            id={`${id}new`}
            className="text-input"
            value={wishes.district}
            maxLength={80}
            onChange={(event) => onWishes({ ...wishes, district: event.currentTarget.value })}
          />
        </Labelled>
      )}
      {given.includes('lastConfirmedOn') && (
        <Labelled id={`${id}dates`} label={words.say('register.import.dates')}>
          <select
            id={`${id}dates`}
            className="text-input"
            value={wishes.dateOrder ?? ''}
            onChange={(event) =>
              onWishes({ ...wishes, dateOrder: (event.currentTarget.value || null) as Wishes['dateOrder'] })
            }
          >
            <option value="">{words.say('register.import.dates.auto')}</option>
            <option value="day first">{words.say('register.import.dates.day')}</option>
            <option value="month first">{words.say('register.import.dates.month')}</option>
          </select>
        </Labelled>
      )}
      <div className="buttons">
        <Button look="act" disabled={!canGoOn} onClick={onPlan}>
          {words.say('register.import.preview')}
        </Button>
        <Button onClick={onCancel}>{words.say('register.import.cancel')}</Button>
      </div>
    </>
  );
}
