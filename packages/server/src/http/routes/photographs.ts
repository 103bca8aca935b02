import { photographHash, photographsAsked } from '@combside/contract/photograph';
import { Hono } from 'hono';
import type { PhotographsPort } from '../../store/server-ports.ts';
import { readMessage, refuse } from '../answers.ts';
import { atMost, rightsOf, type SignedInEnv } from './signed-in.ts';

const photographHeaders = {
  // The name is the hash of the bytes; the person's own cache may keep it.
  'cache-control': 'private, max-age=31536000, immutable',
  'content-security-policy': "default-src 'none'; sandbox",
} as const;

/** Photographs by the hash of their bytes, whole and small, and the way to send them in pieces. */
export function photographRoutes(photographs: PhotographsPort): Hono<SignedInEnv> {
  const app = new Hono<SignedInEnv>();
  app.post('/photographs/held', atMost(256 * 1024), async (context) => {
    const { hashes } = await readMessage(context, photographsAsked);
    return context.json({ held: await photographs.held(hashes) });
  });
  app.get('/photographs/:hash', async (context) => {
    const hash = photographHash.safeParse(context.req.param('hash'));
    const found = hash.success ? await photographs.open(hash.data, rightsOf(context)) : null;
    if (!found) return refuse(context, 'not-found');
    return new Response(found.body, {
      headers: {
        'content-type': found.mediaType,
        'content-length': String(found.bytes),
        ...photographHeaders,
      },
    });
  });
  app.get('/photographs/:hash/small', async (context) => {
    const hash = photographHash.safeParse(context.req.param('hash'));
    const found = hash.success ? await photographs.small(hash.data, rightsOf(context)) : null;
    if (!found) return refuse(context, 'not-found');
    return new Response(found, { headers: { 'content-type': 'image/jpeg', ...photographHeaders } });
  });
  for (const address of ['/uploads', '/uploads/*']) {
    app.all(address, (context) => photographs.handleUpload(context.req.raw, rightsOf(context).person));
  }
  return app;
}
