import { me } from '@combside/contract/people';
import { type IDBPDatabase, openDB } from 'idb';
import { ask, send } from '../device/ask/ask.ts';
import { NotAnswered } from '../device/ask/not-answered.ts';

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
  try {
    await send('/api/auth/sign-in/email', { message: { email, password } });
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
  const session = await askWhoIsSignedIn();
  return session ? { ok: true, session } : { ok: false, reason: 'failed' };
}

function reasonOf(error: unknown): Extract<SignInResult, { ok: false }>['reason'] {
  switch (error instanceof NotAnswered ? error.outcome : null) {
    case 'not signed in':
    case 'not granted':
      return 'wrong';
    case 'too many tries':
      return 'too many tries';
    case 'no connection':
      return 'no network';
    default:
      return 'failed';
  }
}

/** Asks the server who this browser is signed in as, and keeps the answer. Null when nobody is. */
async function askWhoIsSignedIn(): Promise<Session | null> {
  let session: Session;
  try {
    session = await ask(me, '/api/me');
  } catch (error) {
    if (error instanceof NotAnswered && error.outcome !== 'no connection') return null;
    throw error;
  }
  await keep(session);
  return session;
}

/** Signs out. What was recorded stays on the device until it has reached the office. */
export async function signOut(): Promise<void> {
  await keep(null);
  await send('/api/auth/sign-out', { message: {} }).catch(() => undefined);
}
