import { type DiseaseId, diseases } from '@combside/science/signs/catalogue';
import { type ReactNode, useState } from 'react';
import type { Saving } from '../../device/drafts/open-draft.ts';
import type { Writing } from '../../device/write/use-write.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { Refusal, type Refused } from '../../ui/refusal.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { WriteTrouble } from '../../ui/write-status.tsx';
import { Screen } from '../screen/screen.tsx';

interface CloseScreenProps {
  readonly screen: {
    readonly title: string;
    readonly where: string;
    readonly saving: Saving;
    readonly undoBar: ReactNode;
  };
  /** What closing would state; null when signs were seen or the look does not stand yet. */
  readonly claimWords: string | null;
  readonly onTrouble: boolean;
  readonly suspected: DiseaseId | null;
  readonly onSuspect: (disease: DiseaseId | null) => void;
  readonly lookMissing: Refused | null;
  readonly label: string;
  readonly order: readonly DiseaseId[];
  readonly writing: Omit<Writing, 'write'>;
  readonly look: ReactNode;
  /** A test that was begun and would be left out. */
  readonly unfinished: ReactNode;
  /** Of a correction: where its reason is given. */
  readonly why: ReactNode;
  /** What the main button says in place of its usual words. */
  readonly doWords: string | null;
  readonly unexplained: boolean;
  readonly onClose: () => void;
  readonly onNotJudged: () => void;
  readonly onBack: () => void;
}

/** The last look before a colony is sealed: what will stand written, and whether the inspector suspects something. */
export function CloseScreen(props: CloseScreenProps) {
  const words = useWords();
  const { suspected } = props;
  const busy = props.writing.state === 'busy';
  const missing = props.onTrouble ? props.lookMissing : props.claimWords === null ? props.lookMissing : null;
  // Once asked for, the look stays in sight: it must not go away under the thumb with its last answer.
  const [lookAsked] = useState(missing !== null);
  return (
    <Screen
      {...props.screen}
      foot={
        <>
          <WriteTrouble writing={props.writing} />
          <Button look="main act" disabled={busy || missing !== null || props.unexplained} onClick={props.onClose}>
            {(!busy && props.doWords) ||
              words.say(
                busy
                  ? 'hive.status.saving'
                  : suspected !== null && props.onTrouble
                    ? 'hive.suspect.do'
                    : props.onTrouble
                      ? 'hive.suspect.close-without'
                      : 'hive.colony.close',
                {
                  label: props.label,
                  ...(suspected === null ? {} : { condition: sayWord(words, 'signs.condition.*.name', suspected) }),
                },
              )}
          </Button>
          <Button look="plain" onClick={props.onBack}>
            {words.say('hive.signs.back', { label: props.label })}
          </Button>
        </>
      }
    >
      {props.unfinished}
      {props.why}
      {props.claimWords !== null && !props.onTrouble && <p className="large-words">{props.claimWords}</p>}
      {missing && <Refusal refusal={missing} />}
      {lookAsked && props.look}
      {missing && (
        <Button look="wide" disabled={busy} onClick={props.onNotJudged}>
          {words.say('hive.colony.not-judged')}
        </Button>
      )}
      {props.onTrouble && (
        <>
          <p>{words.say('hive.suspect.is-yours')}</p>
          <Choice
            label={words.say('hive.suspect.which')}
            options={[
              { value: 'none', label: words.say('hive.suspect.nothing') },
              ...props.order.map((disease) => ({
                value: disease,
                label: sayWord(words, 'signs.condition.*.name', disease),
              })),
            ]}
            chosen={suspected ?? 'none'}
            onChoose={(value) => props.onSuspect(diseases.find((one) => one === value) ?? null)}
          />
          {suspected !== null && <p className="caution">{words.say('hive.suspect.first')}</p>}
        </>
      )}
    </Screen>
  );
}
