import { keepFault } from '../../app/faults.ts';
import { NotAnswered, outcomeOf } from './not-answered.ts';

/** A schema of the contract, as far as it is used here. */
export interface Schema<Answer> {
  safeParse(
    said: unknown,
  ):
    | { success: true; data: Answer }
    | { success: false; error: { issues: readonly { code: string; path: readonly PropertyKey[] }[] } };
}

/** How a question is asked, where a plain `GET` does not do. */
export interface Manner {
  /** Sent as JSON, by `POST`. */
  readonly message?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  readonly signal?: AbortSignal;
  /** The browser's own, unless a test gives another. */
  readonly fetch?: typeof fetch;
}

/**
 * Asks the office, and reads what it says by its schema.
 *
 * @param schema of the answer, from the contract
 * @param address path and query, such as `/api/owed`
 * @throws NotAnswered with the outcome; `not understood` is also kept as a fault
 */
export async function ask<Answer>(schema: Schema<Answer>, address: string, manner: Manner = {}): Promise<Answer> {
  const answer = await send(address, manner);
  let said: unknown;
  try {
    said = await answer.json();
  } catch (cause) {
    throw new NotAnswered('no connection', `${address}: the answer broke off`, cause);
  }
  const read = schema.safeParse(said);
  if (read.success) return read.data;
  keepFault(new AnswerNotUnderstood(read.error.issues), '');
  throw new NotAnswered('not understood', address);
}

/**
 * Asks the office for what is not read here: bytes, or only whether it is done.
 *
 * @throws NotAnswered unless it says that all is well
 */
export async function send(address: string, manner: Manner = {}): Promise<Response> {
  const { message, headers, signal, fetch: asked = fetch } = manner;
  let answer: Response;
  try {
    answer = await asked(address, {
      ...(message === undefined ? {} : { method: 'POST', body: JSON.stringify(message) }),
      headers: { ...(message === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
      ...(signal && { signal }),
    });
  } catch (cause) {
    throw new NotAnswered('no connection', address, cause);
  }
  if (!answer.ok) throw new NotAnswered(outcomeOf(answer.status), `${address}: ${answer.status}`);
  return answer;
}

/** The fault of an answer that does not fit: which field, and how; never what stood there. */
class AnswerNotUnderstood extends Error {
  constructor(issues: readonly { code: string; path: readonly PropertyKey[] }[]) {
    super('an answer of the office does not fit its schema');
    const [first] = issues;
    // A part of the path that is no plain word may be the id of somebody.
    const place = first?.path.map((part) => (/^[a-z]+$/i.test(String(part)) ? String(part) : '*')).join('.');
    this.name = `AnswerNotUnderstood ${place} ${first?.code}`;
  }
}
