import { AsyncLocalStorage } from 'node:async_hooks';
import { createHash, randomBytes } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdir, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Readable } from 'node:stream';
import { largestPhotograph, photographAnnouncement } from '@combside/contract/photograph';
import type { WallClock } from '@combside/record/ports';
import { FileStore } from '@tus/file-store';
import { Server } from '@tus/server';
import { sql } from 'kysely';
import type { Database } from '../store/database.ts';
import { type ErrorCode, errors } from '../store/errors.ts';
import { mayRead, type Rights } from '../store/rights.ts';
import type { PhotographsPort } from '../store/server-ports.ts';
import { smallPhotograph } from './small-photograph.ts';

/** Where uploads are begun and continued. */
export const uploadsPath = '/api/uploads';

/** Uploads that stood still for so long are given up; the phone begins again. In milliseconds. */
const givenUpAfter = 7 * 24 * 3600 * 1000;

export interface Photographs extends PhotographsPort {
  /** Where the bytes of a photograph lie, whether or not they have arrived. */
  readonly pathOf: (hash: string) => string;
  /** Takes in uploads that were whole when the server died, and forgets those given up. */
  readonly settle: (now: Date) => Promise<void>;
}

/**
 * Photographs by their SHA-256, as files in `folder`: `ab/abcdef...`. Bytes arrive resumably (tus 1.0) in `arriving/`
 * and move to their place only when their hash is the one announced.
 */
export async function openPhotographs(database: Database, folder: string, clock: WallClock): Promise<Photographs> {
  const arriving = join(folder, 'arriving');
  await mkdir(arriving, { recursive: true, mode: 0o700 });
  const uploader = new AsyncLocalStorage<string>();
  const pathOf = (hash: string): string => join(folder, hash.slice(0, 2), hash);

  const takeIn = async (id: string, now: Date): Promise<ErrorCode | null> => {
    const upload = await uploadOf(database, id);
    if (!upload) return 'not-found';
    const path = join(arriving, id);
    const hash = createHash('sha256');
    for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
    const right = hash.digest('hex') === upload.hash;
    if (right) {
      const target = pathOf(upload.hash);
      await mkdir(dirname(target), { recursive: true, mode: 0o700 });
      await rename(path, target);
      await syncFile(target);
      await database.sql
        .insertInto('combside.photographs')
        .values({
          hash: upload.hash,
          bytes: upload.bytes,
          media_type: upload.media_type,
          uploaded_by: upload.person,
          received_at: now.toISOString(),
        })
        .onConflict((conflict) => conflict.column('hash').doNothing())
        .execute();
    }
    await forget(database, arriving, id);
    return right ? null : 'photograph-hash';
  };

  const server = new Server({
    path: uploadsPath,
    datastore: new FileStore({ directory: arriving }),
    maxSize: largestPhotograph,
    relativeLocation: true,
    allowedOrigins: [],
    namingFunction: () => randomBytes(16).toString('hex'),
    // Anything but a name of ours never becomes a path.
    getFileIdFromRequest: (_request, last) => (last !== undefined && /^[0-9a-f]{32}$/.test(last) ? last : undefined),
    onIncomingRequest: async (request, id) => {
      if (request.method === 'POST') return;
      const upload = await uploadOf(database, id);
      if (upload?.person !== uploader.getStore()) throw asUploadError('not-found');
    },
    onUploadCreate: async (_request, upload) => {
      const announced = photographAnnouncement.safeParse(upload.metadata);
      if (!announced.success || !upload.size) throw asUploadError('photograph-announcement');
      const { hash, mediaType } = announced.data;
      await database.sql
        .insertInto('combside.photograph_uploads')
        .values({
          id: upload.id,
          hash,
          bytes: upload.size,
          media_type: mediaType,
          person: uploader.getStore() ?? '',
          begun_at: new Date(clock.now()).toISOString(),
        })
        .execute();
      return {};
    },
    onUploadFinish: async (_request, upload) => {
      const refused = await takeIn(upload.id, new Date(clock.now()));
      if (refused) throw asUploadError(refused);
      return {};
    },
  });

  return {
    handleUpload: (request, person) => uploader.run(person, () => server.handleWeb(request as never)),

    open: async (hash, rights) => {
      const found = await readable(database, hash, rights);
      if (!found) return null;
      const stream = createReadStream(pathOf(hash));
      return {
        body: Readable.toWeb(stream) as ReadableStream<Uint8Array>,
        bytes: found.bytes,
        mediaType: found.media_type,
      };
    },

    small: async (hash, rights) => ((await readable(database, hash, rights)) ? smallPhotograph(pathOf(hash)) : null),

    readable: async (hash, rights) => (await readable(database, hash, rights)) !== null,

    pathOf,

    held: async (hashes) => {
      if (hashes.length === 0) return [];
      const rows = await database.sql
        .selectFrom('combside.photographs')
        .select('hash')
        .where('hash', 'in', [...new Set(hashes)])
        .execute();
      return rows.map((row) => row.hash);
    },

    settle: async (now) => {
      const rows = await database.sql.selectFrom('combside.photograph_uploads').selectAll().execute();
      for (const row of rows) {
        const found = await stat(join(arriving, row.id)).catch(() => null);
        if (found?.size === row.bytes) await takeIn(row.id, now);
        else if (now.getTime() - row.begun_at.getTime() > givenUpAfter) await forget(database, arriving, row.id);
      }
      const known = new Set(rows.map((row) => row.id));
      for (const name of await readdir(arriving)) {
        const path = join(arriving, name);
        const { mtimeMs } = await stat(path).catch(() => ({ mtimeMs: now.getTime() }));
        const old = now.getTime() - mtimeMs > givenUpAfter;
        if (old && !known.has(name.replace(/[.]json$/, ''))) await rm(path, { force: true });
      }
    },
  };
}

function uploadOf(database: Database, id: string) {
  return database.sql.selectFrom('combside.photograph_uploads').selectAll().where('id', '=', id).executeTakeFirst();
}

async function forget(database: Database, arriving: string, id: string): Promise<void> {
  await rm(join(arriving, id), { force: true });
  await rm(join(arriving, `${id}.json`), { force: true });
  await database.sql.deleteFrom('combside.photograph_uploads').where('id', '=', id).execute();
}

async function syncFile(path: string): Promise<void> {
  const file = await open(path, 'r');
  await file.sync();
  await file.close();
}

/**
 * A photograph may be seen by who sent it, and by whoever may read an entity of which the sender showed it: naming the
 * hash of another's photograph opens nothing.
 */
async function readable(
  database: Database,
  hash: string,
  rights: Rights,
): Promise<{ readonly bytes: number; readonly media_type: string } | null> {
  const photograph = await database.sql
    .selectFrom('combside.photographs')
    .select(['bytes', 'media_type', 'uploaded_by'])
    .where('hash', '=', hash)
    .executeTakeFirst();
  if (!photograph) return null;
  if (photograph.uploaded_by === rights.person || rights.districts === 'all') return photograph;
  const found = await sql<{ district: string }>`
    select distinct apiary.district from combside.photograph_references reference
    join combside.states state on state.entity_type = reference.entity_type and state.entity_id = reference.entity_id
    join combside.states apiary on apiary.entity_type = 'apiary'
      and apiary.entity_id = case state.entity_type when 'apiary' then state.entity_id else state.apiary end
    where reference.hash = ${hash} and apiary.district is not null and exists (
      select from combside.entries shown
      where shown.about_type = reference.entity_type and shown.about_id = reference.entity_id
        and shown.by = ${photograph.uploaded_by} and shown.refused is null
        and position(${hash} in shown.body::text) > 0)`.execute(database.sql);
  return found.rows.some((row) => mayRead(rights, row.district)) ? photograph : null;
}

/** What the upload library throws to answer with a status and a body. */
function asUploadError(code: ErrorCode): { status_code: number; body: string } {
  const { status, message } = errors[code];
  return { status_code: status, body: JSON.stringify({ code, message, where: null }) };
}
