import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject, sign } from 'node:crypto';
import { chmod, link, mkdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Signer } from '@combside/record/ports';
import { ServerError } from './errors.ts';
import type { ServerKeys } from './open-server-office.ts';

/**
 * Signing keys in a folder, one PEM file per device, readable by their owner alone. A key is made when it is first asked
 * for; two processes that ask at once get the same one, because a file appears whole or not at all.
 */
export function keysIn(folder: string): ServerKeys {
  const signers = new Map<string, Promise<Signer>>();
  return {
    holds: (device) => holdsKey(folder, device),
    signerFor: (device) => {
      const known = signers.get(device) ?? readOrMake(folder, device);
      signers.set(device, known);
      return known;
    },
  };
}

async function holdsKey(folder: string, device: string): Promise<boolean> {
  return (await stat(pathOf(folder, device)).catch(() => null)) !== null;
}

/** @throws ServerError `key-unreadable` */
async function readOrMake(folder: string, device: string): Promise<Signer> {
  const path = pathOf(folder, device);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  try {
    if (!(await holdsKey(folder, device))) await make(path);
    const { mode } = await stat(path);
    // A restored copy may come back readable to others.
    if ((mode & 0o077) !== 0) await chmod(path, 0o600);
    return signerOf(createPrivateKey(await readFile(path)));
  } catch (cause) {
    throw new ServerError('key-unreadable', path, { cause });
  }
}

/** A signer whose key is written nowhere. */
export function newSigner(): Signer {
  return signerOf(generateKeyPairSync('ec', { namedCurve: 'P-256' }).privateKey);
}

async function make(path: string): Promise<void> {
  const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const half = `${path}.${process.pid}`;
  await writeFile(half, privateKey.export({ type: 'pkcs8', format: 'pem' }), { mode: 0o600, flush: true });
  // A link fails where the name exists, so the first of two processes wins and both read the same file.
  await link(half, path).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EEXIST') throw error;
  });
  await rm(half, { force: true });
}

function signerOf(key: KeyObject): Signer {
  const { x, y } = createPublicKey(key).export({ format: 'jwk' });
  const point = Buffer.concat([Buffer.from([4]), Buffer.from(x ?? '', 'base64url'), Buffer.from(y ?? '', 'base64url')]);
  return {
    publicKey: point.toString('base64url'),
    sign: async (bytes) => new Uint8Array(sign('sha256', bytes, { key, dsaEncoding: 'ieee-p1363' })),
  };
}

function pathOf(folder: string, device: string): string {
  return join(folder, `${device}.pem`);
}
