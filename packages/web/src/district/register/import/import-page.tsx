import type { Columns } from '@combside/casework/register/import/columns';
import type { Proposal } from '@combside/record/entry';
import { useEffect, useId, useRef, useState } from 'react';
import { dayInZone } from '../../../app/day-in-zone.ts';
import type { Session } from '../../../app/session.ts';
import { Button } from '../../../ui/button.tsx';
import { timeZoneHere } from '../../../ui/time-zone.ts';
import { useWords } from '../../../ui/words-context.tsx';
import { ColumnsStep } from './columns-step.tsx';
import type { FileShown, FromImporter, Preview, ToImporter, Wishes } from './messages.ts';
import { PreviewStep } from './preview-step.tsx';
import { largestFile, type Unreadable } from './read-file.ts';
import { columnsFor, rememberColumns } from './remembered-columns.ts';
import { WritingStep } from './writing-step.tsx';

type Step =
  | { readonly at: 'file'; readonly unreadable: Unreadable | 'failed' | null; readonly cancelled?: true }
  | { readonly at: 'reading'; readonly name: string }
  | { readonly at: 'columns' }
  | { readonly at: 'planning'; readonly said: string }
  | { readonly at: 'preview'; readonly preview: Preview }
  | { readonly at: 'taking' }
  | { readonly at: 'writing'; readonly proposals: readonly Proposal[] };

/** Choose a file, say what its columns mean, see what would happen, write it: nothing is written before the last step. */
export function ImportPage({ session }: { readonly session: Session }) {
  const words = useWords();
  const [step, setStep] = useState<Step>({ at: 'file', unreadable: null });
  const [file, setFile] = useState<FileShown | null>(null);
  const [columns, setColumns] = useState<Columns>([]);
  const [remembered, setRemembered] = useState(false);
  const [wishes, setWishes] = useState<Pick<Wishes, 'district' | 'dateOrder'>>({
    district: session.districts[0] ?? '',
    dateOrder: null,
  });
  const worker = useRef<Worker | null>(null);
  const source = useRef<File | null>(null);
  const end = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(() => () => worker.current?.terminate(), []);

  const ask = (message: ToImporter) => worker.current?.postMessage(message);
  const hear = (message: FromImporter) => {
    switch (message.told) {
      case 'read': {
        const found = columnsFor(message.file.header);
        setFile(message.file);
        setColumns(found.columns);
        setRemembered(found.remembered);
        setStep({ at: 'columns' });
        break;
      }
      case 'unreadable':
        setStep({ at: 'file', unreadable: message.why });
        break;
      case 'failed':
        setStep({ at: 'file', unreadable: 'failed' });
        break;
      case 'fetching':
        setStep({ at: 'planning', said: words.say('register.import.fetching', { count: message.count }) });
        break;
      case 'planning':
        setStep({
          at: 'planning',
          said: words.say('register.import.planning', { done: message.done, of: message.of }),
        });
        break;
      case 'planned':
        setStep({ at: 'preview', preview: message.preview });
        break;
      case 'taken':
        setStep({ at: 'writing', proposals: message.proposals });
        break;
    }
  };
  const choose = (chosen: File, sheet: string | null = null) => {
    source.current = chosen;
    end();
    const fresh = new Worker(new URL('./import-worker.ts', import.meta.url), { type: 'module' });
    fresh.addEventListener('message', ({ data }: MessageEvent<FromImporter>) => hear(data));
    fresh.addEventListener('error', () => setStep({ at: 'file', unreadable: 'failed' }));
    worker.current = fresh;
    setStep({ at: 'reading', name: chosen.name });
    ask({ ask: 'read', file: chosen, sheet });
  };
  const cancel = () => {
    end();
    setStep({ at: 'file', unreadable: null, cancelled: true });
  };
  const plan = () => {
    if (!file) return;
    rememberColumns(file.header, columns);
    setStep({ at: 'planning', said: words.say('register.import.fetching', { count: 0 }) });
    const reason = words.say('register.import.reason', { name: file.name.slice(0, 500) });
    ask({
      ask: 'plan',
      wishes: {
        ...wishes,
        columns,
        reason,
        language: words.language,
        today: dayInZone(new Date().toISOString(), timeZoneHere),
      },
    });
  };

  return (
    <>
      <h2>{words.say('register.import')}</h2>
      {step.at === 'file' && <ChooseFile step={step} onChoose={choose} />}
      {step.at === 'reading' && (
        <>
          <p role="status">{words.say('register.import.reading', { name: step.name })}</p>
          <Button onClick={cancel}>{words.say('register.import.cancel')}</Button>
        </>
      )}
      {step.at === 'columns' && file && (
        <ColumnsStep
          session={session}
          file={file}
          columns={columns}
          remembered={remembered}
          wishes={wishes}
          onColumns={(next) => {
            setRemembered(false);
            setColumns(next);
          }}
          onSheet={(sheet) => source.current && choose(source.current, sheet)}
          onWishes={setWishes}
          onPlan={plan}
          onCancel={cancel}
        />
      )}
      {(step.at === 'planning' || step.at === 'taking') && (
        <>
          <p role="status">{step.at === 'planning' ? step.said : words.say('register.loading')}</p>
          <Button onClick={cancel}>{words.say('register.import.cancel')}</Button>
        </>
      )}
      {step.at === 'preview' && file && (
        <PreviewStep
          name={file.name}
          preview={step.preview}
          onBack={() => setStep({ at: 'columns' })}
          onCancel={cancel}
          onWrite={() => {
            setStep({ at: 'taking' });
            ask({ ask: 'take' });
          }}
        />
      )}
      {step.at === 'writing' && (
        <WritingStep
          proposals={step.proposals}
          onAgain={() => {
            end();
            setStep({ at: 'file', unreadable: null });
          }}
          onCancelled={cancel}
        />
      )}
    </>
  );
}

interface ChooseFileProps {
  readonly step: Extract<Step, { at: 'file' }>;
  readonly onChoose: (file: File) => void;
}

/** The first step: which file; and why the last one could not be read. */
function ChooseFile({ step, onChoose }: ChooseFileProps) {
  const words = useWords();
  const id = useId();
  return (
    <>
      <p>{words.say('register.import.intro')}</p>
      {step.cancelled && <p role="status">{words.say('register.import.cancelled')}</p>}
      {step.unreadable && (
        <p className="caution" role="alert">
          {step.unreadable === 'failed'
            ? words.say('register.failed')
            : words.say('register.import.cannot', {
                why:
                  step.unreadable === 'too-large'
                    ? words.say('register.import.cannot.too-large', { most: largestFile / 1e6 })
                    : words.say(`register.import.cannot.${step.unreadable}`),
              })}
        </p>
      )}
      <label className="button act file-choice" htmlFor={id}>
        {words.say('register.import.choose')}
        <input
          id={id}
          className="visually-hidden"
          type="file"
          accept=".csv,.tsv,.txt,.xlsx,.json,.geojson,text/csv,application/geo+json"
          onChange={(event) => {
            const chosen = event.currentTarget.files?.[0];
            // The same file may be chosen again after it was mended.
            if (chosen) onChoose(chosen);
            event.currentTarget.value = '';
          }}
        />
      </label>
    </>
  );
}
