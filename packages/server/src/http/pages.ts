import { realpath } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { serveStatic } from '@hono/node-server/serve-static';
import { Hono } from 'hono';
import { except } from 'hono/combine';
import { etag } from 'hono/etag';
import { refuse } from './answers.ts';

/**
 * The built web app as its build left it, packed forms included. Files whose name carries their hash (`assets/`) never
 * change and are kept for a year; everything else, the service worker above all, is asked for again each time, by its tag.
 * An address that names no file is one of the app's own and gets its page.
 */
export function webPages(folder: string): Hono {
  const pages = new Hono();
  const file = serveStatic({ root: folder, precompressed: true });
  const page = serveStatic({ root: folder, path: 'index.html', precompressed: true });

  pages.use(except('/assets/*', etag()));
  pages.use(async (context, next) => {
    await next();
    if (!context.res.ok) return;
    const isAsset = context.req.path.startsWith('/assets/') && extname(context.req.path) !== '';
    context.header('cache-control', isAsset ? 'public, max-age=31536000, immutable' : 'no-cache');
    context.header('vary', 'accept-encoding');
  });
  pages.on(['GET', 'HEAD'], '*', async (context, next) =>
    (await liesIn(folder, context.req.path)) ? file(context, next) : next(),
  );
  pages.on(['GET', 'HEAD'], '*', (context, next) => (extname(context.req.path) === '' ? page(context, next) : next()));
  pages.on(['GET', 'HEAD'], '*', (context) => refuse(context, 'not-found'));
  pages.all('*', (context) => refuse(context, 'method-not-allowed'));
  return pages;
}

/** Whether an address names something in the folder; names with a dot in front are not for others, and links lead nowhere. */
async function liesIn(folder: string, address: string): Promise<boolean> {
  if (/[/\\][.]/.test(address)) return false;
  try {
    const [root, path] = await Promise.all([realpath(folder), realpath(join(folder, address))]);
    return path === root || path.startsWith(root + sep);
  } catch {
    return false;
  }
}
