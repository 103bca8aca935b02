import { emptyDigest, extendDigest } from '../chain.ts';
import { signCheckpoint } from '../checkpoint.ts';
import { instantAt } from '../clock.ts';
import type { Checkpoint } from '../transport.ts';
import type { OfficeContext } from './office.ts';

/** See `Office.checkpoint`. */
export function stateCheckpoint(office: OfficeContext, scope: string | null, position: number): Promise<Checkpoint> {
  return scope === null ? checkpointOfRecord(office) : checkpointOfScope(office, scope, position);
}

async function checkpointOfRecord({ store, hasher, signer, clock, key }: OfficeContext): Promise<Checkpoint> {
  const at = instantAt(clock.now());
  const heads = await store.heads();
  let digest = emptyDigest;
  for (const { hash } of heads) digest = await extendDigest(hasher, digest, hash);
  return signCheckpoint(signer, { scope: null, position: heads.length, digest, heads, at, office: key.device });
}

async function checkpointOfScope(
  { store, signer, clock, key }: OfficeContext,
  scope: string,
  position: number,
): Promise<Checkpoint> {
  const at = instantAt(clock.now());
  const reached = position === 0 ? null : ((await store.placement(scope, position)) ?? (await store.tail(scope)));
  const content = { position: reached?.position ?? 0, digest: reached?.digest ?? emptyDigest };
  return signCheckpoint(signer, { scope, ...content, heads: null, at, office: key.device });
}
