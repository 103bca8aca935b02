import { openDB } from 'idb';

/** Who is signed in on this device. Kept here so that the hive opens without a network. */
export interface Session {
  readonly person: string;
  readonly name: string;
  readonly role: 'inspector' | 'office' | 'server';
  readonly districts: readonly string[];
  /** Id of the rule pack in force. */
  readonly pack: string;
}

const shelf = 'session';
const place = 'signed in';

/**
 * Does something with the kept session, strictly durable when it returns. Not in localStorage: the browser writes that
 * some seconds later, and a phone that stopped before would lock its inspector out until the next network.
 */
async function keeping<T>(mode: IDBTransactionMode, work: (kept: KeptShelf) => Promise<T>): Promise<T> {
  const database = await openDB('combside session', 1, { upgrade: (opened) => void opened.createObjectStore(shelf) });
  try {
    const transaction = database.transaction(shelf, mode, { durability: 'strict' });
    const kept = transaction.store as unknown as KeptShelf;
    const result = await work(kept);
    await transaction.done;
    return result;
  } finally {
    database.close();
  }
}

interface KeptShelf {
  get(key: string): Promise<unknown>;
  put(value: unknown, key: string): Promise<unknown>;
  delete(key: string): Promise<unknown>;
}

/** The person who signed in last on this device, or null. Works without a network. */
export async function keptSession(): Promise<Session | null> {
  try {
    return ((await keeping('readonly', (kept) => kept.get(place))) as Session | undefined) ?? null;
  } catch {
    // A browser that keeps nothing here still lets people sign in.
    return null;
  }
}

export type SignInResult =
  | { readonly ok: true; readonly session: Session }
  | { readonly ok: false; readonly reason: 'wrong' | 'too many tries' | 'no network' | 'failed' };

/**
 * Signs in at the office. Needs a network once; afterwards the hive side works without it.
 */
export async function signIn(email: string, password: string): Promise<SignInResult> {
  let answer: Response;
  try {
    answer = await fetch('/api/auth/sign-in/email', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ email, password }),
    });
  } catch {
    return { ok: false, reason: 'no network' };
  }
  if (answer.status === 401 || answer.status === 403) return { ok: false, reason: 'wrong' };
  if (answer.status === 429) return { ok: false, reason: 'too many tries' };
  if (!answer.ok) return { ok: false, reason: 'failed' };
  const session = await askWhoIsSignedIn();
  return session ? { ok: true, session } : { ok: false, reason: 'failed' };
}

/** Asks the server who this browser is signed in as, and keeps the answer. Null when nobody is. */
export async function askWhoIsSignedIn(): Promise<Session | null> {
  const answer = await fetch('/api/me');
  if (!answer.ok) return null;
  const session = (await answer.json()) as Session;
  await keeping('readwrite', (kept) => kept.put(session, place));
  return session;
}

/** Signs out. What was recorded stays on the device until it has reached the office. */
export async function signOut(): Promise<void> {
  await keeping('readwrite', (kept) => kept.delete(place));
  await fetch('/api/auth/sign-out', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{}',
  }).catch(() => undefined);
}
