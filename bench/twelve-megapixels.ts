import sharp from 'sharp';
import { paintComb } from '../packages/science/src/comb/painter/paint-comb.ts';
import { drawSettings } from '../packages/science/src/comb/painter/settings.ts';

/** A painted comb, eighty cells across, enlarged three times to 4000 x 3000, as JPEG: read in Node and in Chromium. */
export async function twelveMegapixels(): Promise<Buffer> {
  const settings = drawSettings('held-out', 77, {
    width: 1333,
    height: 1000,
    pitch: 16.3,
    turn: 0.02,
    beeCover: 0.08,
    frame: 'comb only',
    glove: false,
    brush: false,
    light: { shadow: 1 },
    content: { kind: 'brood nest' },
    camera: { blur: 0.6, shallow: 0, jpeg: 0 },
  });
  const painted = paintComb(settings, 77);
  return sharp(Buffer.from(painted.data.buffer), { raw: { width: 1333, height: 1000, channels: 3 } })
    .resize(4000, 3000, { fit: 'fill', kernel: 'cubic' })
    .jpeg({ quality: 90 })
    .toBuffer();
}
