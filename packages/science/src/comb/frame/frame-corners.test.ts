import { describe, expect, it } from 'vitest';
import { seeded } from '../../random/seeded.ts';
import { paintComb } from '../painter/paint-comb.ts';
import { drawSettings, type FixedSettings } from '../painter/settings.ts';
import { GreyPyramid } from '../photograph/grey-pyramid.ts';
import type { Picture } from '../photograph/picture.ts';
import { type FrameCorners, findFrameCorners } from './frame-corners.ts';

const cornersIn = (picture: Picture): FrameCorners | null => findFrameCorners(new GreyPyramid(picture));

/** Held-out family: the thresholds were chosen on the other one. The painter bends wood with the rows; real wood is straight. */
function painted(seed: number, fixed: FixedSettings) {
  const settings = drawSettings('held-out', seed, { width: 440, height: 330, bend: 0, ...fixed });
  return { ...paintComb(settings, seed), pitch: settings.pitch };
}

/**
 * A frame drawn without the painter: busy ground inside a quadrilateral, pale strips along its sides, a plain or a leafy
 * ground beyond. Its corners are known because they were put there.
 */
function drawn(corners: readonly (readonly [number, number])[], width = 600, height = 440, leafy = false): Picture {
  const chance = seeded(3);
  const data = new Uint8ClampedArray(width * height * 3);
  const spots = Float32Array.from({ length: 200 * 200 }, () => chance.uniform());
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      // Distance beyond the side that is furthest behind.
      let beyond = -Infinity;
      for (let n = 0; n < corners.length; n++) {
        const [ax, ay] = corners[n] as readonly [number, number];
        const [bx, by] = corners[(n + 1) % corners.length] as readonly [number, number];
        beyond = Math.max(beyond, ((x - ax) * (by - ay) - (y - ay) * (bx - ax)) / Math.hypot(bx - ax, by - ay));
      }
      const spot = spots[(Math.floor(y / 6) % 200) * 200 + (Math.floor(x / 6) % 200)] as number;
      const leaf = 40 + 120 * (spots[(Math.floor(y / 4) % 200) * 200 + (Math.floor(x / 4) % 200)] as number);
      const value = beyond < 0 ? 30 + 110 * spot : beyond < 22 ? 205 : leafy ? leaf : 120;
      for (let c = 0; c < 3; c++) data[3 * (y * width + x) + c] = value + 4 * chance.normal();
    }
  }
  return { width, height, data };
}

function furthest(
  found: readonly (readonly [number, number])[],
  true_: readonly (readonly [number, number])[],
): number {
  return Math.max(
    ...found.map(([x, y], n) => {
      const [u, v] = true_[n] as readonly [number, number];
      return Math.hypot(x - u, y - v);
    }),
  );
}

describe('corners of a frame', () => {
  it.each([
    [
      'square-on',
      [
        [90, 80],
        [510, 80],
        [510, 360],
        [90, 360],
      ],
      false,
    ],
    [
      'turned',
      [
        [150, 60],
        [540, 160],
        [470, 390],
        [80, 290],
      ],
      false,
    ],
    [
      'tilted, far side smaller',
      [
        [160, 90],
        [440, 90],
        [530, 360],
        [70, 360],
      ],
      false,
    ],
    [
      'leaves behind',
      [
        [90, 80],
        [510, 100],
        [500, 370],
        [80, 350],
      ],
      true,
    ],
  ] as [string, [number, number][], boolean][])('are found in a drawing to a pixel: %s', (_name, corners, leafy) => {
    const found = cornersIn(drawn(corners, 600, 440, leafy));
    expect(found).not.toBeNull();
    expect(furthest(found?.corners ?? [], corners)).toBeLessThan(1);
    expect(found?.confidence).toBeGreaterThanOrEqual(0.5);
    expect(found?.confidence).toBeLessThanOrEqual(1);
  });

  it.each([
    ['plain', 21, { pitch: 12, turn: 0, beeCover: 0.1 }],
    ['large cells', 22, { pitch: 32, turn: 0.05, beeCover: 0 }],
    ['half under bees', 23, { pitch: 20, turn: -0.1, beeCover: 0.45 }],
    ['tilted by 28 degrees', 24, { pitch: 18, turn: 0, tiltX: 0.45, tiltY: 0.2 }],
  ] as [string, number, FixedSettings][])('are found on a painted comb to half a pitch: %s', (_name, seed, fixed) => {
    const picture = painted(seed, {
      glove: false,
      brush: false,
      tiltX: 0.1,
      tiltY: 0.1,
      ...fixed,
      frame: 'whole frame',
    });
    const found = cornersIn(picture);
    expect(found).not.toBeNull();
    expect(picture.opening).toHaveLength(4);
    expect(furthest(found?.corners ?? [], picture.opening ?? [])).toBeLessThan(0.5 * picture.pitch);
  });

  it('begin at the corner nearest to the top left and go round clockwise', () => {
    // Turned by 40 degrees: the left corner is the one nearest to the top left.
    const corners: [number, number][] = [
      [110, 190],
      [330, 40],
      [490, 250],
      [270, 400],
    ];
    const found = cornersIn(drawn(corners));
    expect(furthest(found?.corners ?? [], corners)).toBeLessThan(1.5);
  });

  it('are not told where a frame is not seen whole', () => {
    for (let seed = 0; seed < 2; seed++) {
      expect(cornersIn(painted(seed, { frame: 'comb only' })), `comb only ${seed}`).toBeNull();
      expect(cornersIn(painted(seed, { frame: 'one edge' })), `one edge ${seed}`).toBeNull();
    }
    // The right side lies outside the picture.
    expect(
      cornersIn(
        drawn([
          [90, 80],
          [700, 80],
          [700, 360],
          [90, 360],
        ]),
      ),
    ).toBeNull();
  });

  it('are not told for plain, noisy and tiny pictures', () => {
    const chance = seeded(5);
    const plain: Picture = { width: 300, height: 200, data: new Uint8Array(300 * 200 * 3).fill(140) };
    const noise: Picture = {
      width: 300,
      height: 200,
      data: Uint8Array.from({ length: 300 * 200 * 3 }, () => chance.integer(256)),
    };
    const tiny: Picture = { width: 40, height: 30, data: new Uint8Array(40 * 30 * 3).fill(90) };
    for (const picture of [plain, noise, tiny]) expect(cornersIn(picture)).toBeNull();
  });
});
