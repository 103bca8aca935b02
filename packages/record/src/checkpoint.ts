import { fromBase64Url, toBase64Url } from './bytes.ts';
import { canonicalBytes } from './canonical.ts';
import { emptyDigest, extendDigest } from './chain.ts';
import type { Hasher, Signer, Verifier } from './ports.ts';
import type { Head } from './store.ts';
import type { Checkpoint } from './transport.ts';

/** The office signs what it holds. @returns the checkpoint with its signature */
export async function signCheckpoint(signer: Signer, content: Omit<Checkpoint, 'signature'>): Promise<Checkpoint> {
  return { ...content, signature: toBase64Url(await signer.sign(canonicalBytes(content))) };
}

/** True when the checkpoint bears the signature of this key. Says nothing about whose key it is. */
export function checkpointIsSigned(verifier: Verifier, checkpoint: Checkpoint, publicKey: string): Promise<boolean> {
  const { signature, ...content } = checkpoint;
  return verifier.verify(publicKey, canonicalBytes(content), fromBase64Url(signature));
}

/**
 * Depth "copy" of one scope: are these the entries the office gave out, none missing, none too many, in its order.
 *
 * @param links envelope hashes of the copy's scope in the order of the office
 */
export async function matchesScope(hasher: Hasher, checkpoint: Checkpoint, links: readonly string[]): Promise<boolean> {
  if (links.length !== checkpoint.position) return false;
  let digest = emptyDigest;
  for (const link of links) digest = await extendDigest(hasher, digest, link);
  return digest === checkpoint.digest;
}

/**
 * Depth "copy" of the whole record: does each chain reach at least to the head the office signed, through that very
 * envelope. Chains may have grown since.
 *
 * @param linkAt envelope hash of a device's entry at a seq, null when the copy has none there
 * @returns the heads that the copy does not hold
 */
export async function headsMissing(
  checkpoint: Checkpoint,
  linkAt: (device: string, seq: number) => Promise<string | null>,
): Promise<Head[]> {
  const missing: Head[] = [];
  for (const head of checkpoint.heads ?? []) {
    if ((await linkAt(head.device, head.seq)) !== head.hash) missing.push(head);
  }
  return missing;
}
