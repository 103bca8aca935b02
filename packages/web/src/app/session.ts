import { type IDBPDatabase, openDB } from 'idb';

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
 * Opens the shelf where the session is kept. Not localStorage: the browser writes that some seconds later, and a phone
 * that stopped before would lock its inspector out until the next network.
 */
async function keeping<T>(work: (database: SessionDatabase) => Promise<T>): Promise<T> {
  const database: SessionDatabase = await openDB('combside session', 1, {
    upgrade: (opened) => void opened.createObjectStore(shelf),
  });
  try {
    return await work(database);
  } finally {
    database.close();
  }
}
type SessionDatabase = IDBPDatabase<{ session: { key: string; value: Session } }>;

/** Keeps the session, or none; strictly durable when it returns. */
async function keep(session: Session | null): Promise<void> {
  await keeping(async (database) => {
    const transaction = database.transaction(shelf, 'readwrite', { durability: 'strict' });
    if (session) await transaction.store.put(session, place);
    else await transaction.store.delete(place);
    await transaction.done;
  });
}

/** The person who signed in last on this device, or null. Works without a network. */
export async function keptSession(): Promise<Session | null> {
  try {
    return (await keeping((database) => database.get(shelf, place))) ?? null;
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
  await keep(session);
  return session;
}

/** Signs out. What was recorded stays on the device until it has reached the office. */
export async function signOut(): Promise<void> {
  await keep(null);
  await fetch('/api/auth/sign-out', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{}',
  }).catch(() => undefined);
}
