import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { Readable } from 'node:stream';
import type { MapBackground } from '@combside/contract/map';
import type { Context } from 'hono';
import { refuse } from './answers.ts';

/** Where the archive of tiles is asked for. */
const archiveAddress = '/api/map/tiles.pmtiles';

/** What lies behind the apiaries on the map, beyond the land and borders that the program brings along. */
export type Background =
  | { readonly kind: 'none' }
  /** An archive of tiles (PMTiles version 3) on this machine. */
  | { readonly kind: 'archive'; readonly path: string }
  /** Picture tiles of somebody's server: an address with {z}, {x} and {y}. */
  | { readonly kind: 'tiles'; readonly address: string };

/**
 * Reads the setting: nothing, the path of a `.pmtiles` file, or an `https:` address with {z}, {x} and {y}.
 *
 * @returns null when it is none of these
 */
export function readBackground(setting: string | undefined): Background | null {
  if (setting === undefined || setting === '') return { kind: 'none' };
  if (setting.endsWith('.pmtiles') && !/^[a-z]+:\/\//i.test(setting)) return { kind: 'archive', path: setting };
  const whole = ['{z}', '{x}', '{y}'].every((part) => setting.includes(part));
  return whole && /^https?:\/\/[^/{}\s;,'"]+\//.test(setting) ? { kind: 'tiles', address: setting } : null;
}

/** The foreign server that pages may fetch pictures from, or null. */
export function foreignOrigin(background: Background): string | null {
  return background.kind === 'tiles' ? new URL(background.address.replaceAll(/[{}]/g, '0')).origin : null;
}

/** What the map is told about its background. */
export function backgroundTold(background: Background): MapBackground {
  if (background.kind === 'archive') return { kind: 'archive', address: archiveAddress };
  return background.kind === 'tiles' ? background : { kind: 'none', address: null };
}

/** The archive, whole or the range asked for (RFC 9110, section 14): a map reads a few kilobytes here and there. */
export async function archiveOf(context: Context, background: Background): Promise<Response> {
  if (background.kind !== 'archive') return refuse(context, 'not-found');
  const size = await stat(background.path).then(
    (found) => found.size,
    () => null,
  );
  if (size === null) return refuse(context, 'not-found');
  const headers = {
    'content-type': 'application/octet-stream',
    'accept-ranges': 'bytes',
    'content-encoding': 'identity',
  };
  const asked = context.req.header('range');
  if (asked === undefined) {
    const body = Readable.toWeb(createReadStream(background.path)) as ReadableStream;
    return new Response(body, { headers: { ...headers, 'content-length': String(size) } });
  }
  const range = rangeIn(asked, size);
  if (!range) return new Response(null, { status: 416, headers: { ...headers, 'content-range': `bytes */${size}` } });
  const { start, end } = range;
  const body = Readable.toWeb(createReadStream(background.path, { start, end })) as ReadableStream;
  return new Response(body, {
    status: 206,
    headers: {
      ...headers,
      'content-length': String(end - start + 1),
      'content-range': `bytes ${start}-${end}/${size}`,
    },
  });
}

/** One range of bytes, both ends included; null where it lies outside or is not one range. */
function rangeIn(header: string, size: number): { start: number; end: number } | null {
  const found = /^bytes=(\d{1,15})-(\d{0,15})$/.exec(header.trim());
  if (!found) return null;
  const start = Number(found[1]);
  const end = found[2] === '' ? size - 1 : Math.min(Number(found[2]), size - 1);
  return start <= end && start < size ? { start, end } : null;
}
