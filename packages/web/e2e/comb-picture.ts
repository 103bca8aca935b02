import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type PaintedComb, paintComb } from '@combside/science/comb/painter/paint-comb';
import { drawSettings, type FixedSettings } from '@combside/science/comb/painter/settings';
import sharp from 'sharp';

/** A painted comb whose every cell is known, as a file of a camera held on its side: stored lying, shown upright. */
export interface CombPhotograph {
  readonly file: Buffer;
  /** In pixels of the comb alone. */
  readonly painted: PaintedComb;
  /** Of the comb alone. */
  readonly width: number;
  readonly height: number;
}

/** A frame round the comb, from the inside: the gap in shadow, pale wood, and a meadow beyond; widths in pixels. */
const frame = [
  { wide: 4, background: '#2a2018' },
  { wide: 34, background: '#e0cda4' },
  { wide: 60, background: '#5d6a45' },
];
/** Pixels from the edge of a framed photograph to the comb. */
export const framedBy = 98;

/** Sealed brood, some of it left open or sick, hardly a bee; cells large enough for their cappings to be measured. */
export const sealedBrood: FixedSettings = {
  pitch: 34,
  beeCover: 0.03,
  frame: 'comb only',
  glove: false,
  brush: false,
  light: { shadow: 1, exposure: 1 },
  content: { kind: 'all sealed', missed: 0.08, sick: 0.02, pollenPatches: 4 },
  camera: { blur: 0.8, shallow: 0, jpeg: 0 },
};

/** A comb of sealed brood, held a little aslant. */
export async function combPhotograph(width = 1080, height = 1440, seed = 41, framed = false): Promise<CombPhotograph> {
  const painted = paintComb(
    drawSettings('held-out', seed, { ...sealedBrood, width, height, turn: 0.03, tiltX: 0.05, tiltY: 0.03 }),
    seed,
  );
  // Turned back by a quarter and marked with orientation 6, as a phone held upright stores its pictures.
  let picture = sharp(Buffer.from(painted.data.buffer), { raw: { width, height, channels: 3 } });
  for (const { wide, background } of framed ? frame : []) {
    const part = await picture.png({ compressionLevel: 0 }).toBuffer();
    picture = sharp(part).extend({ top: wide, bottom: wide, left: wide, right: wide, background });
  }
  const file = await sharp(await picture.png({ compressionLevel: 0 }).toBuffer())
    .rotate(-90)
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 88 })
    .toBuffer();
  return { file, painted, width, height };
}

/** A real photograph that nobody can read: a frame in hand, almost wholly under bees (CC0; see the manifest beside it). */
export function frameUnderBees(): Buffer {
  return readFileSync(join(import.meta.dirname, '../../science/src/comb/reference/f-frame-in-hand.jpg'));
}
