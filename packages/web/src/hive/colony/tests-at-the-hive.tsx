import { dayOf } from '@combside/calendar/instant';
import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import type { Tap, TestForm } from '@combside/casework/draft/tap';
import { testsAtTheHive } from '@combside/casework/vocabulary';
import { drawCheck } from '@combside/papers/drawings/check-drawing';
import { figureOf } from '@combside/science/diagnosis/test-figures';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Drawn } from '../../ui/drawn.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useHiveDevice } from '../hive-device.tsx';

interface TestsAtTheHiveProps {
  readonly draft: ExaminationDraft;
  readonly onTap: (tap: Tap) => void;
}

/** A kit or the milk test, read here: which, what came of it, and what is printed on it. */
export function TestsAtTheHive({ draft, onTap }: TestsAtTheHiveProps) {
  const words = useWords();
  const device = useHiveDevice();
  const { test, result, batch, expires } = draft.testForm;
  const fill = (part: Partial<TestForm>) => onTap({ tap: 'test form', form: { ...draft.testForm, ...part } });
  const today = dayOf(device.now());
  const drawing = test && drawCheck(test);
  const keep = () => {
    if (test === null || result === null) return;
    onTap({
      tap: 'test',
      test: {
        test,
        material: figureOf(test).material,
        result,
        readOn: today,
        batch: batch.trim(),
        expires,
      },
    });
  };
  return (
    <section className="stack" aria-labelledby="tests-title">
      <h2 id="tests-title">{words.say('hive.tests.title')}</h2>
      {draft.tests.length > 0 && (
        <ul className="rows">
          {draft.tests.map((one, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two tests may be alike in every value; their place tells them apart
            <li key={index} className="kept-line">
              <span>
                {sayWord(words, 'signs.check.*.name', one.test)}: {sayWord(words, 'hive.tests.result.*', one.result)}
                {one.batch && ` · ${words.say('hive.tests.batch-line', { batch: one.batch })}`}
                {one.expires && ` · ${words.say('hive.tests.expires-line', { day: words.day(one.expires) })}`}
              </span>
              <Button look="plain" onClick={() => onTap({ tap: 'test removed', index })}>
                {words.say('hive.rope.remove')}
              </Button>
            </li>
          ))}
        </ul>
      )}
      <Choice
        label={words.say('hive.tests.which')}
        options={testsAtTheHive.map((id) => ({ value: id, label: sayWord(words, 'signs.check.*.name', id) }))}
        chosen={test}
        onChoose={(chosen) => fill({ test: chosen })}
      />
      {test && (
        <>
          <div className="rope-how">
            {drawing && <Drawn drawing={drawing} width={112} name="" />}
            <p>{sayWord(words, 'signs.check.*.how', test)}</p>
          </div>
          <Choice
            label={words.say('hive.tests.result')}
            options={[
              { value: 'positive', label: words.say('hive.tests.result.positive') },
              { value: 'negative', label: words.say('hive.tests.result.negative') },
              { value: 'failed', label: words.say('hive.tests.result.failed') },
            ]}
            chosen={result}
            onChoose={(chosen) => fill({ result: chosen })}
          />
          <label className="stack close">
            {words.say('hive.tests.batch')}
            <input
              className="text-input"
              maxLength={60}
              value={batch}
              onChange={(event) => fill({ batch: event.currentTarget.value })}
            />
          </label>
          <label className="stack close">
            {words.say('hive.tests.expires')}
            <input
              className="text-input"
              type="date"
              value={expires ?? ''}
              onChange={(event) => fill({ expires: event.currentTarget.value || null })}
            />
          </label>
          {expires !== null && expires < today && <p className="caution">{words.say('hive.tests.expired')}</p>}
          <Button look="wide act" disabled={result === null} onClick={keep}>
            {words.say('hive.tests.keep')}
          </Button>
        </>
      )}
    </section>
  );
}
