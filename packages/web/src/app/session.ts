/** Who is signed in on this device. Kept here so that the hive opens without a network. */
export interface Session {
  readonly person: string;
  readonly name: string;
  readonly role: 'inspector' | 'office' | 'server';
  readonly districts: readonly string[];
  /** Id of the rule pack in force. */
  readonly pack: string;
}

const key = 'combside.session';

/** The person who signed in last on this device, or null. Works without a network. */
export function keptSession(): Session | null {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null') as Session | null;
  } catch {
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
  localStorage.setItem(key, JSON.stringify(session));
  return session;
}

/** Signs out. What was recorded stays on the device until it has reached the office. */
export async function signOut(): Promise<void> {
  localStorage.removeItem(key);
  await fetch('/api/auth/sign-out', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{}',
  }).catch(() => undefined);
}
