import './result.css';
import { handOver } from '@combside/casework/report/hand-over';
import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import { makeInspectionRecord } from '@combside/casework/report/make-inspection-record';
import { drawStateMark } from '@combside/papers/drawings/state-mark';
import { spokenShortForm } from '@combside/papers/inspection/short-form';
import type { HandoverBody } from '@combside/record/kinds/handover';
import type { KeeperState } from '@combside/record/states';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useWrite } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Drawn } from '../../ui/drawn.tsx';
import { Refusal, type Refused } from '../../ui/refusal.tsx';
import { SpeaksWords, useWords, useWordsOf } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { useEntity, useHiveDevice } from '../hive-device.tsx';
import { Screen } from '../screen/screen.tsx';
import { useVisit, type VisitInHand } from '../visit/use-visit.ts';
import { SignaturePad } from './signature-pad.tsx';

/** The written result: as a paper made on the phone, and as the same words large on the screen. */
export function ResultScreen({ visit }: { readonly visit: string }) {
  const { language } = useWords();
  const known = useVisit(visit);
  const keeper = useEntity('keeper', known?.apiary.apiary.current?.body.keeper ?? '');
  if (!known || keeper === undefined) return null;
  return (
    <SpeaksWords language={language} rooms={['always', 'front', 'hive', 'signs', 'casework', 'papers']}>
      <Result known={known} keeper={keeper} />
    </SpeaksWords>
  );
}

const ways = [
  ['paper shared', 'hive.result.how.shared'],
  ['signed on the screen', 'hive.result.how.signed'],
  ['read out', 'hive.result.how.read'],
  ['left at the site', 'hive.result.how.left'],
  ['refused', 'hive.result.how.refused'],
] as const;

function Result({ known, keeper }: { readonly known: VisitInHand; readonly keeper: KeeperState | null }) {
  const words = useWords();
  const device = useHiveDevice();
  const paperWords = useWordsOf<'papers' | 'casework' | 'signs'>();
  const record = useRecord(known, keeper);
  const [how, setHow] = useState<HandoverBody['how'] | null>(null);
  const [receiver, setReceiver] = useState(keeper?.keeper.current?.body.name ?? '');
  const [signature, setSignature] = useState('');
  const handing = useWrite((contentHash: string) =>
    handOver({
      visit: known.visit,
      how,
      receiver,
      signaturePath: signature,
      handedOverAt: device.now(),
      contentHash,
    }),
  );
  if (record === undefined) return null;
  if ('reason' in record) {
    return (
      <Screen title={words.say('hive.result.title')} where={known.apiary.apiary.current?.body.name ?? ''}>
        <Refusal refusal={record} />
      </Screen>
    );
  }

  const spoken = spokenShortForm(record, paperWords);
  const { issue } = record;
  const handed = issue.handedOver ? known.visit.handovers.at(-1) : null;
  const keep = async () => {
    if (!(await handing.write(record.proof.contentHash))) return;
    // A signature is given for what was read; a corrected result asks for its own.
    setHow(null);
    setSignature('');
  };

  return (
    <Screen
      title={words.say('hive.result.title')}
      where={known.apiary.apiary.current?.body.name ?? ''}
      foot={
        <Link className="button wide" href="/">
          {words.say('hive.result.to-today')}
        </Link>
      }
    >
      {issue.replaces !== null && !issue.handedOver && (
        <p className="caution">
          {words.say('hive.result.outdated', { time: words.dayAndTime(issue.replaces, device.timeZone) })}
        </p>
      )}
      <PaperButtons key={record.proof.contentHash} record={record} />
      <article className="stack large-words" aria-label={words.say('hive.result.large')}>
        <p>
          <strong>{spoken.place}</strong>
          <br />
          {spoken.when}
        </p>
        {spoken.replaces && (
          <p>
            <strong>{spoken.replaces}</strong>
          </p>
        )}
        {spoken.summary.map((line, index) => (
          <p key={line} className="mark">
            {index === 0 && spoken.mark && <Drawn drawing={drawStateMark(spoken.mark)} width={28} name="" />}
            {line}
          </p>
        ))}
        <ul className="rows">
          {spoken.colonies.map((colony) => (
            <li key={colony.label} className="kept-line">
              <span className="mark">
                <Drawn drawing={drawStateMark(colony.mark)} width={28} name="" />
                {words.say('hive.visit.state', { label: colony.label, state: colony.result })}
              </span>
            </li>
          ))}
        </ul>
        <p>{spoken.whatItSays}</p>
        {spoken.stillOpen.length > 0 && (
          <>
            <h2>{words.say('hive.end.open')}</h2>
            <ul className="stack close">
              {spoken.stillOpen.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
        <h2>{words.say('hive.result.next-steps')}</h2>
        <ol className="stack close">
          {spoken.nextSteps.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
        <ul className="caution stack close">
          {spoken.cautions.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </article>
      {handed ? (
        <p className="caution">
          {words.say('hive.result.handed-over', {
            time: words.dayAndTime(handed.body.handedOverAt, device.timeZone),
          })}
        </p>
      ) : (
        <section className="stack" aria-labelledby="hand-over-title">
          <h2 id="hand-over-title">{words.say('hive.result.hand-over')}</h2>
          <Choice
            label={words.say('hive.result.how')}
            options={ways.map(([value, id]) => ({ value, label: words.say(id) }))}
            chosen={how}
            onChoose={setHow}
          />
          <label className="stack close">
            {words.say('hive.result.receiver')}
            <input
              className="text-input"
              value={receiver}
              onChange={(event) => setReceiver(event.currentTarget.value)}
            />
          </label>
          {how === 'signed on the screen' && <SignaturePad path={signature} onPath={setSignature} />}
          <WriteTrouble writing={handing} />
          <Button look="main act" disabled={how === null || handing.state === 'busy'} onClick={() => void keep()}>
            {words.say('hive.result.hand-over')}
          </Button>
        </section>
      )}
    </Screen>
  );
}

function useRecord(known: VisitInHand, keeper: KeeperState | null): InspectionRecord | Refused | undefined {
  const device = useHiveDevice();
  const [record, setRecord] = useState<InspectionRecord | Refused | undefined>();
  useEffect(() => {
    let left = false;
    void makeInspectionRecord(
      {
        ...known,
        keeper,
        pack: device.pack,
        inspector: { name: device.session.name, office: device.pack.jurisdiction, warrant: null },
        authority: device.pack.jurisdiction,
        timeZone: device.timeZone,
      },
      device.hasher,
    ).then((made) => {
      if (!left) setRecord(made);
    });
    return () => {
      left = true;
    };
  }, [device, known, keeper]);
  return record;
}

type Making = 'not yet' | 'making' | 'failed' | { readonly file: File; readonly url: string };

/** The paper as PDF, made on the phone when asked for: shown, shared, or saved. */
function PaperButtons({ record }: { readonly record: InspectionRecord }) {
  const words = useWords();
  const paperWords = useWordsOf<'papers' | 'casework' | 'signs'>();
  const [paper, setPaper] = useState<Making>('not yet');
  const made = typeof paper === 'object' ? paper : null;
  useEffect(() => () => void (made && URL.revokeObjectURL(made.url)), [made]);

  const make = async () => {
    setPaper('making');
    try {
      const [{ inspectionPdf }, { fetchPaperFonts }] = await Promise.all([
        import('@combside/papers/inspection/inspection-pdf'),
        import('./paper-fonts.ts'),
      ]);
      const bytes = await inspectionPdf(record, paperWords, await fetchPaperFonts());
      const file = new File([bytes as BlobPart], fileName(record), {
        type: 'application/pdf',
      });
      setPaper({ file, url: URL.createObjectURL(file) });
    } catch {
      setPaper('failed');
    }
  };

  if (made) {
    const share = { files: [made.file], title: made.file.name };
    return (
      <section className="stack close">
        <a className="button act wide" href={made.url} target="_blank" rel="noopener">
          {words.say('hive.result.show')}
        </a>
        {navigator.canShare?.(share) && (
          <Button look="wide" onClick={() => void navigator.share(share).catch(() => undefined)}>
            {words.say('hive.result.share')}
          </Button>
        )}
        <a className="button wide" href={made.url} download={made.file.name}>
          {words.say('hive.result.save')}
        </a>
      </section>
    );
  }
  return (
    <section className="stack close">
      {paper === 'failed' && <p className="caution">{words.say('hive.result.failed')}</p>}
      <Button look="wide act" disabled={paper === 'making'} onClick={() => void make()}>
        {words.say(paper === 'making' ? 'hive.result.making' : 'hive.result.make')}
      </Button>
    </section>
  );
}

/** Told apart on the phone that keeps both: a later issue carries its number. */
function fileName({ apiary, visit, issue }: InspectionRecord): string {
  const number = issue.number > 1 ? ` ${issue.number}` : '';
  return `${apiary.name} ${visit.startedAt.slice(0, 10)}${number}.pdf`;
}
