import { oldestServed, protocolHeader, protocolVersion } from '@combside/contract/version';
import type { MiddlewareHandler } from 'hono';
import { refuse } from './answers.ts';

/** Refuses a phone that speaks another protocol, with the word that tells it what to do. */
export const spokenHere: MiddlewareHandler = async (context, next) => {
  const said = context.req.header(protocolHeader);
  context.header(protocolHeader, String(protocolVersion));
  if (said === undefined || !/^\d{1,6}$/.test(said)) return refuse(context, 'bad-request', protocolHeader);
  if (Number(said) < oldestServed) return refuse(context, 'protocol-too-old');
  if (Number(said) > protocolVersion) return refuse(context, 'protocol-too-new');
  return next();
};
