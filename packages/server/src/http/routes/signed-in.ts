import { identifier } from '@combside/record/entry';
import type { Context, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { ServerError } from '../../store/errors.ts';
import type { Rights } from '../../store/rights.ts';
import type { SignedIn } from '../../store/server-ports.ts';
import { refuse } from '../answers.ts';

/** What is known of a request behind the question who asks. */
export type SignedInEnv = { Variables: { readonly signedIn: SignedIn } };

/** What the person who asks may read and write. */
export function rightsOf(context: Context<SignedInEnv>): Rights {
  return context.get('signedIn').rights;
}

/** @throws ServerError `not-found` for what cannot be an identifier */
export function identifierIn(address: string): string {
  if (!identifier.safeParse(address).success) throw new ServerError('not-found');
  return address;
}

/** Refuses a longer message before it is read. */
export function atMost(bytes: number): MiddlewareHandler {
  return bodyLimit({ maxSize: bytes, onError: (context) => refuse(context, 'too-large') });
}
