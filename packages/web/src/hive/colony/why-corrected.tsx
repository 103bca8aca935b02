import { Choice } from '../../ui/choice.tsx';
import { useWords } from '../../ui/words-context.tsx';

const reasons = [
  'hive.correct.why.slip',
  'hive.correct.why.forgotten',
  'hive.correct.why.counted',
  'hive.correct.why.told',
] as const;

interface WhyCorrectedProps {
  readonly reason: string;
  readonly onReason: (text: string) => void;
}

/** Why a record is corrected: by one key, or in one's own words. */
export function WhyCorrected({ reason, onReason }: WhyCorrectedProps) {
  const words = useWords();
  return (
    <section className="stack" aria-label={words.say('hive.correct.why')}>
      <Choice
        label={words.say('hive.correct.why')}
        options={reasons.map((id) => ({ value: id, label: words.say(id) }))}
        chosen={reasons.find((id) => words.say(id) === reason) ?? null}
        onChoose={(id) => onReason(words.say(id))}
      />
      <label className="stack close">
        {words.say('hive.correct.why.words')}
        <textarea
          className="text-input"
          rows={2}
          maxLength={500}
          value={reason}
          onChange={(event) => onReason(event.currentTarget.value)}
        />
      </label>
    </section>
  );
}
