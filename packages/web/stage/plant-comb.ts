import { type ReadingPart, readingPart } from '@combside/casework/comb/propose-reading';
import { toHex } from '@combside/record/bytes';
import { paintComb } from '@combside/science/comb/painter/paint-comb';
import { drawSettings } from '@combside/science/comb/painter/settings';
import { readComb } from '@combside/science/comb/read-comb';
import sharp from 'sharp';
import type { TestProject } from 'vitest/node';
import { sealedBrood } from '../e2e/comb-picture.ts';
import { webHasher } from '../src/device/keys/web-ports.ts';

/** A photograph of a comb, and what the machine reads on it. */
export interface PlantedComb {
  /** JPEG, in base64. */
  readonly file: string;
  readonly hash: string;
  readonly part: ReadingPart;
}

declare module 'vitest' {
  interface ProvidedContext {
    readonly comb: PlantedComb;
  }
}

const size = { width: 440, height: 560 };

/** Paints a small comb of sealed brood and reads it, once for every screen that shows one. */
export default async function plantComb(project: TestProject): Promise<void> {
  const painted = paintComb(drawSettings('held-out', 41, { ...sealedBrood, ...size }), 41);
  const result = readComb({ ...size, data: painted.data });
  const part = result.verdict === 'read' ? readingPart({ result, picture: size }) : null;
  if (part === null) throw new Error('the painted comb cannot be read');
  const file = await sharp(Buffer.from(painted.data.buffer), { raw: { ...size, channels: 3 } })
    .jpeg({ quality: 80 })
    .toBuffer();
  project.provide('comb', {
    file: file.toString('base64'),
    hash: toHex(await webHasher.sha256(new Uint8Array(file))),
    part,
  });
}
