import { cellDegrees, darwinCore, fewestKeepers } from '@combside/casework/register/export/darwin-core';
import { registerGeoJson } from '@combside/casework/register/export/geojson';
import { registerTable } from '@combside/casework/register/export/register-table';
import { writeSeparatedText } from '@combside/casework/register/import/separated-text';
import { useId, useState } from 'react';
import type { Session } from '../../app/session.ts';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';
import { useDistrictName } from '../district-name.tsx';
import { fetchRegister } from './fetch-rows.ts';
import { Labelled } from './labelled.tsx';
import { saveFile } from './save-file.ts';

type Form = 'table' | 'geojson' | 'darwin';

/** The register of one district as a file: the whole for the office's own hands, or generalised for the public. */
export function ExportPage({ session }: { readonly session: Session }) {
  const words = useWords();
  const districtName = useDistrictName();
  const id = useId();
  const [district, setDistrict] = useState(session.districts[0] ?? '');
  const [said, setSaid] = useState<{ text: string; failed?: true } | null>(null);
  const [busy, setBusy] = useState(false);

  const write = async (form: Form) => {
    setBusy(true);
    try {
      const held = await fetchRegister(district, (count) =>
        setSaid({ text: words.say('register.duplicates.reading', { count }) }),
      );
      // A byte order mark, so that spreadsheets read the letters as UTF-8.
      const text = (table: readonly (readonly string[])[]) => `\uFEFF${writeSeparatedText(table)}`;
      if (form === 'darwin') {
        const { table, cells, cellsSuppressed, sitesSuppressed, sitesWithoutPosition } = darwinCore(held, district);
        saveFile(`${district}-darwin-core.csv`, text(table), 'text/csv');
        const counts = { cells, suppressed: cellsSuppressed, sites: sitesSuppressed, nowhere: sitesWithoutPosition };
        setSaid({ text: words.say('register.export.darwin.done', counts) });
        return;
      }
      const table = registerTable(held);
      if (form === 'table') saveFile(`${district}-register.csv`, text(table), 'text/csv');
      else saveFile(`${district}-register.geojson`, registerGeoJson(table), 'application/geo+json');
      setSaid({ text: words.say('register.export.done', { rows: table.length - 1 }) });
    } catch {
      setSaid({ text: words.say('register.failed'), failed: true });
    } finally {
      setBusy(false);
    }
  };

  const forms: readonly { readonly form: Form; readonly about: string }[] = [
    { form: 'table', about: words.say('register.export.table.about') },
    { form: 'geojson', about: words.say('register.export.geojson.about') },
    {
      form: 'darwin',
      about: words.say('register.export.darwin.about', { degrees: cellDegrees, keepers: fewestKeepers }),
    },
  ];
  return (
    <>
      <h2>{words.say('register.export')}</h2>
      <p className="quiet">{words.say('register.export.intro')}</p>
      <Labelled id={id} label={words.say('register.field.district')}>
        <select
          id={id}
          className="text-input"
          value={district}
          onChange={(event) => setDistrict(event.currentTarget.value)}
        >
          {session.districts.map((one) => (
            <option key={one} value={one}>
              {districtName(one)}
            </option>
          ))}
        </select>
      </Labelled>
      {forms.map(({ form, about }) => (
        <div key={form} className="stack close">
          <div>
            <Button disabled={busy} onClick={() => void write(form)}>
              {words.say(`register.export.${form}`)}
            </Button>
          </div>
          <p className="quiet">{about}</p>
        </div>
      ))}
      <p role="status" className={said?.failed ? 'caution' : undefined}>
        {said?.text}
      </p>
    </>
  );
}
