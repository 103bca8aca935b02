import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { fromBase64Url, toBase64Url } from '@combside/record/bytes';
import { canonicalBytes } from '@combside/record/canonical';
import { entry, identifier, instant, sha256Hex } from '@combside/record/entry';
import type { Signer } from '@combside/record/ports';
import type { StoredEntry } from '@combside/record/store';
import { checkpoint } from '@combside/record/transport';
import { z } from 'zod';
import { ServerError } from '../store/errors.ts';
import { verifier } from '../store/node-ports.ts';
import type { WholeRecord } from './records.ts';

/**
 * An export is a text of lines, each JSON: first a heading, then every entry, chain by chain, last a manifest with the
 * SHA-256 of all bytes before it, the office's checkpoint, and the office's signature over both. Nothing in it needs
 * this program to be read.
 */
const heading = z.object({
  format: z.literal('combside export'),
  version: z.literal(1),
  madeAt: instant,
  office: z.object({ device: identifier, publicKey: z.string() }),
});
const line = z.object({ entry, receivedAt: instant.nullable(), refused: z.string().nullable(), hash: sha256Hex });
const manifest = z.object({
  manifest: z.object({ bytes: z.int(), sha256: sha256Hex, entries: z.int(), checkpoint }),
  signature: z.string(),
});

/** What was written. */
export interface ExportWritten {
  readonly entries: number;
  readonly bytes: number;
  readonly sha256: string;
}

/** Writes the whole record to a file, which appears under its name only when it is whole. */
export async function writeExport(
  record: WholeRecord & { readonly sign: () => Promise<z.infer<typeof checkpoint>> },
  signer: Signer,
  path: string,
  now: Date,
): Promise<ExportWritten> {
  const half = `${path}.${process.pid}.half`;
  const file = await open(half, 'wx', 0o600);
  const hash = createHash('sha256');
  let bytes = 0;
  let entries = 0;
  const write = async (value: unknown): Promise<void> => {
    const text = Buffer.from(`${JSON.stringify(value)}\n`);
    hash.update(text);
    bytes += text.length;
    await file.write(text);
  };
  try {
    // Signed first: entries that arrive meanwhile lie beyond its heads, which does no harm.
    const signed = await record.sign();
    await write({ format: 'combside export', version: 1, madeAt: now.toISOString(), office: record.office });
    for await (const chain of record.chains()) {
      for (const kept of chain) await write(kept);
      entries += chain.length;
    }
    const sha256 = hash.copy().digest('hex');
    const content = { bytes, sha256, entries, checkpoint: signed };
    const exported = { entries, bytes, sha256 };
    const signature = toBase64Url(await signer.sign(canonicalBytes(content)));
    await file.write(`${JSON.stringify({ manifest: content, signature })}\n`);
    await file.sync();
    await file.close();
    await rename(half, path);
    return exported;
  } catch (error) {
    await file.close().catch(() => undefined);
    await rm(half, { force: true });
    throw error;
  }
}

/** What an export says about itself, besides its entries. */
export interface ReadExport extends WholeRecord {
  /** What is wrong with the file as a file; empty when its bytes are those the office signed. */
  readonly faults: readonly (
    | 'no manifest'
    | 'bytes changed'
    | 'manifest not signed by the office'
    | 'entries missing'
  )[];
}

/**
 * Reads an export and checks its bytes against its manifest.
 *
 * @throws ServerError `export-unreadable` with the line that cannot be read
 */
export async function readExport(path: string): Promise<ReadExport> {
  const hash = createHash('sha256');
  const chains = new Map<string, StoredEntry[]>();
  const faults: ReadExport['faults'][number][] = [];
  let head: z.infer<typeof heading> | undefined;
  let end: z.infer<typeof manifest> | undefined;
  let bytes = 0;
  let entries = 0;
  let number = 0;
  const input = createReadStream(path);
  // `for await` over the lines would not see an error of the file itself.
  const failed = new Promise<never>((_done, fail) => {
    input.once('error', (cause) => fail(new ServerError('export-unreadable', path, { cause })));
  });
  failed.catch(() => undefined);
  const reading = (async () => {
    for await (const text of createInterface({ input, crlfDelay: 0 })) {
      number += 1;
      const value = parsed(text, `${path}, line ${number}`);
      if (head === undefined) {
        head = shaped(heading, value, `${path}, line ${number}`);
      } else if (typeof value === 'object' && value !== null && 'manifest' in value) {
        end = shaped(manifest, value, `${path}, line ${number}`);
        continue;
      } else {
        const { entry: one, receivedAt, refused, hash: link } = shaped(line, value, `${path}, line ${number}`);
        const { device } = one.envelope;
        const chain = chains.get(device) ?? [];
        chain.push({ entry: { ...one, body: one.body ?? null }, receivedAt, refused, hash: link });
        chains.set(device, chain);
        entries += 1;
      }
      const raw = Buffer.from(`${text}\n`);
      hash.update(raw);
      bytes += raw.length;
    }
  })();
  await Promise.race([reading, failed]);
  if (head === undefined) throw new ServerError('export-unreadable', `${path} is empty`);
  if (end === undefined) faults.push('no manifest');
  else {
    const content = end.manifest;
    if (content.bytes !== bytes || content.sha256 !== hash.digest('hex')) faults.push('bytes changed');
    if (content.entries !== entries) faults.push('entries missing');
    const signed = await signedBy(head.office.publicKey, content, end.signature);
    if (!signed) faults.push('manifest not signed by the office');
  }
  return {
    office: head.office,
    faults,
    chains: async function* () {
      for (const device of [...chains.keys()].sort()) yield chains.get(device) as StoredEntry[];
    },
    checkpoint: async () => end?.manifest.checkpoint ?? null,
  };
}

async function signedBy(publicKey: string, content: unknown, signature: string): Promise<boolean> {
  try {
    return await verifier.verify(publicKey, canonicalBytes(content), fromBase64Url(signature));
  } catch {
    return false;
  }
}

function parsed(text: string, where: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new ServerError('export-unreadable', where, { cause });
  }
}

function shaped<Schema extends z.ZodType>(schema: Schema, value: unknown, where: string): z.infer<Schema> {
  const read = schema.safeParse(value);
  if (read.success) return read.data;
  const issue = read.error.issues[0];
  throw new ServerError('export-unreadable', `${where}, ${issue?.path.join('.')}: ${issue?.message}`);
}
