import type { ReactNode } from 'react';
import { useWords } from '../../ui/words-context.tsx';

/** A field with its label above it. */
export function Labelled({
  id,
  label,
  children,
}: {
  readonly id: string;
  readonly label: string;
  readonly children: ReactNode;
}) {
  return (
    <div className="labelled">
      <label htmlFor={id}>{label}</label>
      {children}
    </div>
  );
}

/** Why something is changed; it stays with the change. @param most characters */
export function Why({
  id,
  why,
  most,
  onWhy,
}: {
  readonly id: string;
  readonly why: string;
  readonly most: number;
  readonly onWhy: (why: string) => void;
}) {
  const words = useWords();
  return (
    <Labelled id={id} label={words.say('register.change.why')}>
      <input
        id={id}
        className="text-input"
        value={why}
        maxLength={most}
        onChange={(event) => onWhy(event.currentTarget.value)}
      />
    </Labelled>
  );
}
