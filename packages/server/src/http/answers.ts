import type { Problem } from '@combside/contract/hello';
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { z } from 'zod';
import { type ErrorCode, errors, ServerError } from '../store/errors.ts';

/** The one form of a refusal: code, message from the one table, and where. */
export function refuse(context: Context, code: ErrorCode, where: string | null = null): Response {
  const { status, message } = errors[code];
  return context.json({ code, message, where } satisfies Problem, status as ContentfulStatusCode);
}

/**
 * Reads a message's JSON by its schema.
 *
 * @throws ServerError `bad-json`, or `bad-request` with the path of the first fault, never its value
 */
export async function readMessage<Schema extends z.ZodType>(
  context: Context,
  schema: Schema,
): Promise<z.infer<Schema>> {
  const bytes = await context.req.arrayBuffer();
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (cause) {
    throw new ServerError('bad-json', undefined, { cause });
  }
  return checked(value, schema);
}

/** Reads the query of an address by its schema. @throws ServerError `bad-request` */
export function readQuery<Schema extends z.ZodType>(context: Context, schema: Schema): z.infer<Schema> {
  return checked(context.req.query(), schema);
}

function checked<Schema extends z.ZodType>(value: unknown, schema: Schema): z.infer<Schema> {
  const read = schema.safeParse(value);
  if (read.success) return read.data;
  const [first] = read.error.issues;
  throw new ServerError('bad-request', `${first?.path.join('.') || 'the message'}: ${first?.message ?? ''}`);
}
