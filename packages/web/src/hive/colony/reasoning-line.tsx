import type { ReasoningLine } from '@combside/casework/assess/line';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';

interface ReasoningLineButtonProps {
  readonly line: ReasoningLine | null;
  readonly failed: boolean;
  /** Null where its reasons stand below already. */
  readonly onOpen: (() => void) | null;
}

/** The reasoning, always in sight as one line in words; it opens to its reasons. */
export function ReasoningLineButton({ line, failed, onOpen }: ReasoningLineButtonProps) {
  const words = useWords();
  const name = (disease: string) => sayWord(words, 'signs.condition.*.name', disease);
  const [first, ...others] = line?.order.slice(0, 3) ?? [];
  const said = (
    <span>
      {failed ? (
        words.say('always.went-wrong')
      ) : line === null ? (
        words.say('reasoning.working')
      ) : (
        <>
          <strong>{first ? name(first) : sayWord(words, 'signs.state-name.*', line.state)}</strong>
          {others.length > 0 && (
            <span className="quiet">{words.say('reasoning.then', { others: words.list(others.map(name)) })}</span>
          )}
          {line.firstStep ? (
            <span>{sayWord(words, 'signs.first.*', line.firstStep)}</span>
          ) : (
            line.nextCheck && (
              <span>
                {words.say('reasoning.next-is', { check: sayWord(words, 'signs.check.*.name', line.nextCheck) })}
              </span>
            )
          )}
        </>
      )}
    </span>
  );
  if (!onOpen) {
    return (
      <p className="reasoning-line" role="status">
        {said}
      </p>
    );
  }
  return (
    <button type="button" className="reasoning-line" onClick={onOpen}>
      {said}
      <span>{words.say('reasoning.open')}</span>
    </button>
  );
}
