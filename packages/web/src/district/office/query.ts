import { ask, type Schema } from '../../device/ask/ask.ts';
import { NotAnswered, type Outcome } from '../../device/ask/not-answered.ts';

/** What was asked of the office: the newest answer stays in sight while a newer one is on its way, or fails to come. */
export interface Query<Answer> {
  readonly answer: Answer | null;
  /** When the office gave this answer, as an instant; null while there is none. */
  readonly answeredAt: string | null;
  readonly state: 'asking' | 'there' | 'failed' | 'not there' | 'wrong address';
  /** Why it failed; null unless it did. */
  readonly failure: Outcome | null;
  again(): void;
}

/** What the office said: an answer, or that there is none. The latter is no failure: it takes the place of what was kept. */
export type Said<Answer> =
  | { readonly state: 'there'; readonly answer: Answer }
  | { readonly state: 'not there' | 'wrong address'; readonly answer: null };

/** Asks the office. @throws NotAnswered when it said nothing that tells whether there is an answer */
export async function said<Answer>(schema: Schema<Answer>, address: string): Promise<Said<Answer>> {
  try {
    return { state: 'there', answer: await ask(schema, address) };
  } catch (error) {
    const outcome = error instanceof NotAnswered ? error.outcome : null;
    // A page in a district that is not granted is, for whoever asks, not there.
    if (outcome === 'not there' || outcome === 'not granted') return { state: 'not there', answer: null };
    if (outcome === 'wrong address') return { state: 'wrong address', answer: null };
    throw error;
  }
}

/** How a question stands, as the query library has it. */
interface Standing {
  /** False until this place has had a word from the office, however much it has in sight. */
  readonly isFetchedAfterMount: boolean;
  readonly error: Error | null;
  /** In milliseconds since 1970. */
  readonly dataUpdatedAt: number;
  refetch(): unknown;
}

/** Reads a standing as screens do. @param last what the office said last; undefined when it has said nothing yet */
export function queryOf<Answer>(standing: Standing, last: Said<Answer> | undefined): Query<Answer> {
  const { isFetchedAfterMount, error, dataUpdatedAt } = standing;
  const answer = last?.answer ?? null;
  // While it is asked again, what failed is still what is known.
  const state = !isFetchedAfterMount ? 'asking' : error || !last ? 'failed' : last.state;
  return {
    answer,
    answeredAt: answer === null ? null : new Date(dataUpdatedAt).toISOString(),
    state,
    failure: state !== 'failed' ? null : error instanceof NotAnswered ? error.outcome : 'office fault',
    again: () => void standing.refetch(),
  };
}
