import './photographs-page.css';
import { type CombPhotographs, combPhotographs } from '@combside/contract/comb-photographs';
import { type CombStanding, combStanding } from '@combside/contract/comb-standing';
import type { Language } from '@combside/words/language';
import { useId, useState } from 'react';
import { Link } from 'wouter';
import { ask } from '../../device/ask/ask.ts';
import { Button } from '../../ui/button.tsx';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { PageWaits } from '../office/page-waits.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';
import { askReading } from './ask-reading.ts';
import { type CombsAddress, useCombsAddress } from './combs-address.ts';
import { PhotographLine } from './photograph-line.tsx';
import { useFollow } from './use-follow.ts';

/** Entries that change what stands on the list. */
const changing: ReadonlySet<string> = new Set(['examination', 'comb-reading', 'correction', 'colony', 'apiary']);

/** The stored photographs of combs, newest first: how each stands, and which of them the office's machine shall read. */
export default function PhotographsPage({ language }: { readonly language: Language }) {
  return (
    <SpeaksWords language={language} rooms={['always', 'district', 'comb', 'front']}>
      <Photographs />
    </SpeaksWords>
  );
}

function Photographs() {
  const words = useWords();
  const address = useCombsAddress();
  const asked = useAsked(combPhotographs, address.asked, (event) => changing.has(event.kind));
  const { answer } = asked;
  useFollow(answer !== null && answer.waiting + answer.reading > 0, asked.again);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  /** What there is to say of the choice of all: that there were more, or none. */
  const [ofAll, setOfAll] = useState<'most-chosen' | 'none-to-choose' | null>(null);
  const [failed, setFailed] = useState(false);

  /** Does something at the office; what fails is said, and nothing chosen is lost. */
  const attempt = async (work: () => Promise<void>) => {
    setFailed(false);
    try {
      await work();
      asked.again();
    } catch {
      setFailed(true);
    }
  };
  const choose = (hashes: readonly string[], say: typeof ofAll = null) => {
    setChosen(new Set(hashes));
    setOfAll(say);
  };
  const chooseAll = () =>
    attempt(async () => {
      const { photographs, next } = await photographsOf(address, 'not-read');
      choose(
        photographs.map((one) => one.hash),
        photographs.length === 0 ? 'none-to-choose' : next === null ? null : 'most-chosen',
      );
    });
  const askForReading = () =>
    attempt(async () => {
      await askReading('ask', [...chosen]);
      choose([]);
    });
  const cancel = () =>
    attempt(async () => {
      const { photographs } = await photographsOf(address, 'waiting');
      if (photographs.length > 0) {
        await askReading(
          'cancel',
          photographs.map((one) => one.hash),
        );
      }
    });

  if (!answer) {
    return <PageWaits asked={asked} loading="district.combs.loading" notThere="district.combs.not-there" />;
  }
  const { photographs, next, waiting, reading } = answer;
  return (
    <main className="office-page comb-photographs stack">
      <Unanswered asked={asked} />
      <Head address={address} />
      <div className="comb-choosing">
        <ShowSuch address={address} />
        <Button onClick={() => void chooseAll()}>{words.say('district.combs.choose-all')}</Button>
        {chosen.size > 0 && (
          <>
            <Button look="act" onClick={() => void askForReading()}>
              {words.say('district.combs.ask', { count: chosen.size })}
            </Button>
            <Button look="plain" onClick={() => choose([])}>
              {words.say('district.combs.choose-none')}
            </Button>
          </>
        )}
      </div>
      {ofAll && (
        <p className="quiet" role="status">
          {words.say(`district.combs.${ofAll}`, { count: chosen.size })}
        </p>
      )}
      {failed && (
        <p className="caution" role="alert">
          {words.say('district.combs.failed')}
        </p>
      )}
      <div role="status">
        {waiting + reading > 0 && <p>{words.say('district.combs.queue', { waiting, reading })}</p>}
      </div>
      {waiting > 0 && (
        <p className="comb-choosing">
          <Button onClick={() => void cancel()}>{words.say('district.combs.cancel')}</Button>
          <span className="quiet">{words.say('district.combs.cancel.what')}</span>
        </p>
      )}
      {photographs.length === 0 && (
        <p>{words.say(address.standing || !address.isNewest ? 'district.combs.none-such' : 'district.combs.none')}</p>
      )}
      <ul className="comb-lines" aria-label={words.say('district.combs.list')}>
        {photographs.map((one) => (
          <li key={`${one.colony} ${one.hash}`}>
            <PhotographLine
              photograph={one}
              isChosen={chosen.has(one.hash)}
              onChoose={(isChosen) =>
                choose([...chosen].filter((hash) => hash !== one.hash).concat(isChosen ? one.hash : []))
              }
            />
          </li>
        ))}
      </ul>
      {(next !== null || !address.isNewest) && (
        <nav className="comb-choosing" aria-label={words.say('district.combs.pages')}>
          {!address.isNewest && (
            <Link className="button" href={address.page(null)}>
              {words.say('district.combs.newest')}
            </Link>
          )}
          {next !== null && (
            <Link className="button" href={address.page(next)} onClick={() => scrollTo(0, 0)}>
              {words.say('district.combs.older')}
            </Link>
          )}
        </nav>
      )}
    </main>
  );
}

/** @throws NotAnswered when the office does not answer */
function photographsOf(address: CombsAddress, standing: CombStanding): Promise<CombPhotographs> {
  return ask(combPhotographs, address.askedOf(standing));
}

function Head({ address }: { readonly address: CombsAddress }) {
  const words = useWords();
  const { visit, apiary } = address;
  return (
    <header className="stack close">
      <h2>
        {words.say(
          visit ? 'district.combs.title.visit' : apiary ? 'district.combs.title.apiary' : 'district.combs.title',
        )}
      </h2>
      {(visit !== null || apiary !== null) && (
        <p>
          <Link href={visit ? `/visit/${visit}` : `/apiary/${apiary}`}>
            {words.say(visit ? 'district.combs.to-visit' : 'district.combs.to-apiary')}
          </Link>
          {' · '}
          <Link href="/combs">{words.say('district.combs.everywhere')}</Link>
        </p>
      )}
      <p className="quiet">{words.say('district.combs.what')}</p>
    </header>
  );
}

/** Shows only the photographs that stand in one way. */
function ShowSuch({ address }: { readonly address: CombsAddress }) {
  const words = useWords();
  const id = useId();
  return (
    <div className="comb-such">
      <label htmlFor={id}>{words.say('district.combs.show')}</label>
      <select
        id={id}
        className="text-input"
        value={address.standing ?? ''}
        onChange={(event) => address.show(combStanding.safeParse(event.target.value).data ?? null)}
      >
        <option value="">{words.say('district.combs.show.all')}</option>
        {combStanding.options.map((one) => (
          <option key={one} value={one}>
            {words.say(`district.comb.standing.${one}`)}
          </option>
        ))}
      </select>
    </div>
  );
}
