import type { MiddlewareHandler } from 'hono';
import { addressHeader } from '../store/server-ports.ts';
import { refuse } from './answers.ts';

/**
 * What a page of ours may do. Styles may stand in attributes, because drawings and the map set them; scripts may not.
 * WebAssembly reads codes and combs; `blob:` shows a paper that the page has just made.
 */
const contentSecurityPolicy = (elsewhere: string): string =>
  [
    "default-src 'self'",
    "script-src 'self' 'wasm-unsafe-eval'",
    "style-src 'self' 'unsafe-inline'",
    `img-src 'self' data: blob:${elsewhere}`,
    "font-src 'self' data:",
    `connect-src 'self'${elsewhere}`,
    "worker-src 'self' blob:",
    "frame-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');

/**
 * Headers on every answer. Camera and position are for our own pages; nothing else is for anybody.
 *
 * @param tilesFrom the one foreign server that the map may fetch pictures from, where the office has set one
 */
export function securityHeaders(secure: boolean, tilesFrom: string | null = null): MiddlewareHandler {
  const policy = contentSecurityPolicy(tilesFrom === null ? '' : ` ${tilesFrom}`);
  return async (context, next) => {
    await next();
    const set = (name: string, value: string): void => {
      if (!context.res.headers.has(name)) context.res.headers.set(name, value);
    };
    set('content-security-policy', policy);
    set('x-content-type-options', 'nosniff');
    set('x-frame-options', 'DENY');
    set('referrer-policy', 'no-referrer');
    set('cross-origin-opener-policy', 'same-origin');
    set('cross-origin-resource-policy', 'same-origin');
    set('permissions-policy', 'camera=(self), geolocation=(self), microphone=(), payment=(), usb=()');
    if (secure) set('strict-transport-security', 'max-age=31536000');
  };
}

/**
 * Refuses a change that a page of somebody else asks for. Browsers send `Origin` with every such request; programs that
 * send none have no cookies to steal. Cookies are also `SameSite=Strict`: this is the second lock.
 */
export const sameOriginOnly: MiddlewareHandler = async (context, next) => {
  const { method } = context.req;
  const origin = context.req.header('origin');
  if (method !== 'GET' && method !== 'HEAD' && origin !== undefined && !sameHost(origin, context.req.url)) {
    return refuse(context, 'wrong-origin');
  }
  return next();
};

function sameHost(origin: string, asked: string): boolean {
  try {
    return new URL(origin).host === new URL(asked).host;
  } catch {
    return false;
  }
}

/** Answers of the API are for one person at one moment; a photograph says otherwise for itself. */
export const noStore: MiddlewareHandler = async (context, next) => {
  await next();
  if (!context.res.headers.has('cache-control')) context.res.headers.set('cache-control', 'no-store');
};

/** Says from which address a request came, for the sign-in limit; what the client claims is thrown away. */
export const cameFrom: MiddlewareHandler = async (context, next) => {
  const socket = (context.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming?.socket;
  context.req.raw.headers.set(addressHeader, socket?.remoteAddress ?? '127.0.0.1');
  return next();
};
