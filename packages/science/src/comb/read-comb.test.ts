import { describe, expect, it } from 'vitest';
import { coarseClass } from './cells/cell-classes.ts';
import { withinFrame } from './frame/comb-plane.ts';
import { paintComb } from './painter/paint-comb.ts';
import { drawSettings, type FixedSettings } from './painter/settings.ts';
import type { Picture } from './photograph/picture.ts';
import { ReadingCancelled, type ReadStage, readComb } from './read-comb.ts';
import { scoreCells } from './reading/score-reading.ts';

/** Square-on, no bees, good light: what any reader must read. Held-out family: never used for tuning or training. */
const plain: FixedSettings = {
  width: 420,
  height: 320,
  frame: 'comb only',
  glove: false,
  brush: false,
  beeCover: 0,
  tiltX: 0,
  tiltY: 0,
  light: { shadow: 1, gradient: 0.1, exposure: 1 },
  content: { kind: 'brood nest', missed: 0.08 },
  camera: { shallow: 0, noise: 2, jpeg: 84 },
};

function painted(seed: number, fixed: FixedSettings) {
  return paintComb(drawSettings('held-out', seed, { ...plain, ...fixed }), seed);
}

function scored(seed: number, fixed: FixedSettings) {
  const picture = painted(seed, fixed);
  const result = readComb(picture);
  const score = scoreCells(
    result.cells,
    picture.cells.map((cell) => ({ ...cell, coarse: coarseClass(cell.class) })),
    picture.width,
    picture.height,
  );
  return { result, score };
}

/** A picture turned clockwise by a quarter (`side`) or by a half. */
function turnedPicture(picture: Picture, side: boolean): Picture {
  const { width, height } = picture;
  const data = new Uint8ClampedArray(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const to = side ? x * height + (height - 1 - y) : (height - 1 - y) * width + (width - 1 - x);
      for (let c = 0; c < 3; c++) data[3 * to + c] = picture.data[3 * (y * width + x) + c] as number;
    }
  }
  return side ? { width: height, height: width, data } : { width, height, data };
}

describe('readComb on painted combs of the held-out family', () => {
  it.each([
    ['level', { pitch: 26, turn: 0 }],
    ['turned by 17 degrees', { pitch: 26, turn: 0.3 }],
    ['turned by 131 degrees', { pitch: 26, turn: 2.29 }],
    ['tilted by 25 degrees', { pitch: 26, turn: 0.1, tiltX: 0.436 }],
    ['pitch 9', { pitch: 9, turn: 0.2, width: 260, height: 200 }],
    ['pitch 60', { pitch: 60, turn: 0.05, width: 640, height: 480 }],
  ] as const)('finds the cells: %s', (_name, fixed) => {
    const { result, score } = scored(7, { ...fixed, camera: { ...plain.camera, blur: 0.03 * fixed.pitch + 0.3 } });
    expect(result.verdict).toBe('read');
    expect(result.pitchPx).toBeGreaterThan(fixed.pitch * 0.85);
    expect(result.pitchPx).toBeLessThan(fixed.pitch * 1.15);
    expect(score.wanted).toBeGreaterThan(30);
    expect(score.hit / score.wanted).toBeGreaterThan(0.95);
    expect(score.hit / (score.hit + score.false)).toBeGreaterThan(0.97);
    expect(score.coarse.right / score.coarse.decided).toBeGreaterThan(0.9);
  });

  it('reaches over capped honey and past a glove', () => {
    let wanted = 0;
    let hit = 0;
    let found = 0;
    for (const seed of [600_000, 600_001, 600_002]) {
      const { score } = scored(seed, {
        pitch: 18,
        beeCover: 0.08,
        glove: true,
        content: { kind: 'stores', honeyWalls: 0.2 },
        camera: { ...plain.camera, blur: 0.8 },
      });
      wanted += score.wantedVisible;
      hit += score.hitVisible;
      found += score.hit + score.false;
      expect(score.false).toBeLessThan(0.03 * score.wanted);
    }
    expect(found).toBeGreaterThan(600);
    expect(hit / wanted).toBeGreaterThan(0.98);
  });

  it('reads a picture alike however the camera was held', () => {
    const picture = painted(21, { pitch: 30, width: 480, height: 360, content: { kind: 'all sealed', sick: 0.1 } });
    const upright = readComb(picture);
    expect(upright.cells.length).toBeGreaterThan(100);
    for (const [name, side] of [
      ['a quarter turn', true],
      ['a half turn', false],
    ] as const) {
      const turned = turnedPicture(picture, side);
      const result = readComb(turned);
      let met = 0;
      let alike = 0;
      let sunkenOff = 0;
      let cappings = 0;
      for (const cell of upright.cells) {
        const x = side ? picture.height - 1 - cell.y : picture.width - 1 - cell.x;
        const y = side ? cell.x : picture.height - 1 - cell.y;
        const other = result.cells.find((one) => Math.hypot(one.x - x, one.y - y) < 0.2 * cell.pitch);
        if (!other) continue;
        met++;
        if (other.coarse === cell.coarse) alike++;
        if (!cell.capping || !other.capping) continue;
        cappings++;
        sunkenOff += Math.abs(cell.capping.sunken.value - other.capping.sunken.value);
      }
      expect(met / upright.cells.length, name).toBeGreaterThan(0.97);
      expect(alike / met, name).toBeGreaterThan(0.95);
      expect(cappings, name).toBeGreaterThan(50);
      expect(sunkenOff / cappings, name).toBeLessThan(0.15);
    }
  });

  it('tells a solid from a gappy comb', () => {
    const kind = { ...plain.content, kind: 'all sealed', pollenPatches: 0, drone: 0, sick: 0 } as const;
    const good = readComb(painted(9, { pitch: 20, content: { ...kind, missed: 0.03 } }));
    const bad = readComb(painted(9, { pitch: 20, content: { ...kind, missed: 0.3 } }));
    expect(good.reading?.solidness?.value).toBeGreaterThan(0.92);
    expect(bad.reading?.solidness?.value).toBeLessThan(0.8);
    expect(bad.reading?.solidness?.value).toBeGreaterThan(0.6);
  });

  it('ranks sick cappings first for a second look, as measurements', () => {
    const seed = 12;
    const picture = painted(seed, {
      pitch: 38,
      width: 560,
      height: 420,
      content: { kind: 'all sealed', missed: 0.02, sick: 0.06, pollenPatches: 0, drone: 0, cappingSpread: 0.08 },
      light: { ...plain.light, direct: 0.5 },
    });
    const result = readComb(picture);
    const looks = result.reading?.secondLook ?? [];
    expect(looks.length).toBeGreaterThan(0);
    const truthAt = (n: number) => {
      const cell = result.cells[n];
      return picture.cells.find((t) => cell && Math.hypot(t.x - cell.x, t.y - cell.y) < 0.3 * t.pitch);
    };
    const first = looks.slice(0, 5).map((look) => truthAt(look.cell));
    const sick = first.filter((cell) => cell && cell.sickness !== 'none').length;
    expect(sick).toBeGreaterThanOrEqual(Math.min(3, first.length));
    for (const look of looks) {
      const capping = result.cells[look.cell]?.capping;
      expect(capping?.outlying).toBe(look.outlying);
      expect(capping?.sunken.confidence).toBeGreaterThanOrEqual(0);
      expect(capping?.sunken.confidence).toBeLessThanOrEqual(1);
    }
  });
});

describe('the plane', () => {
  const whole: FixedSettings = {
    width: 480,
    height: 360,
    pitch: 15,
    turn: 0.05,
    bend: 0,
    frame: 'whole frame',
    tiltX: 0.38,
    tiltY: 0.15,
    camera: { ...plain.camera, blur: 0.7 },
  };
  const framed = painted(41, whole);
  const opening = framed.opening ?? [];
  /** The painter's own figures: the opening takes 0.76 of the width and 0.72 of the height, in pitches. */
  const sides = [(0.76 * 480) / 15, (0.72 * 360) / 15] as const;
  const tilt = (Math.acos(Math.cos(0.38) * Math.cos(0.15)) * 180) / Math.PI;

  it('follows from the corners of a frame seen whole', () => {
    const { plane, cells } = readComb(framed);
    expect(plane?.by).toBe('corners-found');
    plane?.corners?.forEach(([x, y], n) => {
      const [u, v] = opening[n] as readonly [number, number];
      expect(Math.hypot(x - u, y - v)).toBeLessThan(5);
    });
    expect(Math.abs((plane?.sides?.[0] ?? 0) - sides[0])).toBeLessThan(1.5);
    expect(Math.abs((plane?.sides?.[1] ?? 0) - sides[1])).toBeLessThan(1.5);
    expect(Math.abs((plane?.tiltDegrees ?? 0) - tilt)).toBeLessThan(5);
    // No cell is read on the wood.
    const within = withinFrame(opening);
    for (const { x, y, pitch } of cells) {
      // A corner found may be a third of a pitch off: cells twice as large are let stand so much further out.
      const by = 2 * pitch * Math.sqrt(0.75);
      expect(within({ column: 0, row: 0, x, y, ax: 2 * pitch, ay: 0, bx: pitch, by, seen: 1 })).toBe(true);
    }
  });

  it('follows from the corners a person set, as they stand', () => {
    const region = opening.map(([x, y], n) => [x + (n % 2 ? 3 : -3), y + 2] as const);
    const { plane, verdict } = readComb(framed, { region });
    expect(verdict).toBe('read');
    expect(plane?.by).toBe('corners-set');
    expect(plane?.corners).toEqual(region);
    expect(Math.abs((plane?.tiltDegrees ?? 0) - tilt)).toBeLessThan(6);
  });

  it('follows from the lattice where no frame is seen, and in a region that is no frame', () => {
    const bare = readComb(painted(7, { pitch: 22, turn: 0.1, tiltX: 0.436, bend: 0 }));
    expect(bare.plane).toMatchObject({ by: 'lattice', corners: null, sides: null });
    expect(Math.abs((bare.plane?.tiltDegrees ?? 0) - 25)).toBeLessThan(5);
    const half = readComb(framed, {
      region: [
        [0, 0],
        [240, 0],
        [250, 180],
        [240, 360],
        [0, 360],
      ],
    });
    expect(half.plane?.by).toBe('lattice');
  });

  it('is given in pixels of the picture, large ones too', () => {
    const times = 5;
    const { width, height, data } = framed;
    const large = new Uint8ClampedArray(width * height * 3 * times * times);
    for (let y = 0; y < height * times; y++) {
      for (let x = 0; x < width * times; x++) {
        const from = 3 * (Math.floor(y / times) * width + Math.floor(x / times));
        const to = 3 * (y * width * times + x);
        for (let c = 0; c < 3; c++) large[to + c] = data[from + c] as number;
      }
    }
    const { plane } = readComb({ width: width * times, height: height * times, data: large });
    expect(plane?.by).toBe('corners-found');
    plane?.corners?.forEach(([x, y], n) => {
      const [u, v] = opening[n] as readonly [number, number];
      expect(Math.hypot(x - (times * (u + 0.5) - 0.5), y - (times * (v + 0.5) - 0.5))).toBeLessThan(5 * times);
    });
  });

  it('is not told for a refused picture', () => {
    expect(readComb(painted(7, { pitch: 6.6, turn: 0, camera: { ...plain.camera, blur: 0.3 } })).plane).toBeNull();
  });
});

describe('what readComb refuses and says', () => {
  it('always says that it is no diagnosis and cannot see scale', () => {
    const { result } = scored(7, { pitch: 26, turn: 0 });
    expect(result.reasons).toEqual(expect.arrayContaining(['never-a-diagnosis', 'scale-not-visible']));
  });

  it.each([
    ['cells-too-small', { pitch: 6.6, turn: 0, camera: { ...plain.camera, blur: 0.3 } }],
    ['out-of-focus', { pitch: 26, turn: 0, camera: { ...plain.camera, blur: 11, noise: 0.5 } }],
  ] as const)('%s', (why, fixed) => {
    const result = readComb(painted(7, fixed));
    expect(result.verdict).toBe('refused');
    expect(result.reasons).toEqual([why]);
    expect(result.cells).toEqual([]);
    expect(result.reading).toBeUndefined();
  });

  it('refuses a comb under bees', () => {
    const result = readComb(painted(7, { pitch: 20, beeCover: 0.97 }));
    expect(result.verdict).toBe('refused');
    expect(['under-bees', 'no-comb']).toContain(result.reasons[0]);
  });

  it('refuses thumbnails and malformed pictures', () => {
    expect(readComb({ width: 90, height: 90, data: new Uint8Array(90 * 90 * 3) }).reasons).toEqual([
      'picture-too-small',
    ]);
    expect(() => readComb({ width: 90, height: 90, data: new Uint8Array(7) })).toThrow(RangeError);
    expect(() =>
      readComb(painted(7, { pitch: 26 }), {
        region: [
          [0, 0],
          [1, 1],
        ],
      }),
    ).toThrow(/three corners/);
  });
});

describe('progress and stopping', () => {
  const picture = painted(7, { pitch: 26, turn: 0 });

  it('tells each stage once it is reached, never backwards', () => {
    const told: [ReadStage, number][] = [];
    readComb(picture, {}, { progress: (stage, done) => told.push([stage, done]) });
    expect(told.map(([stage]) => stage)).toEqual(['looking', 'lattice', 'cells', 'cappings', 'reading', 'reading']);
    const shares = told.map(([, done]) => done);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });

  it('stops when asked to, early and late', () => {
    for (const after of [0, 3, 12]) {
      let asked = 0;
      expect(() => readComb(picture, {}, { cancelled: () => asked++ >= after })).toThrow(ReadingCancelled);
    }
  });

  it('gives the same answer twice, and for RGBA as for RGB', () => {
    const rgba = new Uint8ClampedArray(picture.width * picture.height * 4);
    for (let k = 0; k < picture.width * picture.height; k++) {
      for (let c = 0; c < 3; c++) rgba[4 * k + c] = picture.data[3 * k + c] as number;
      rgba[4 * k + 3] = 255;
    }
    const one = readComb(picture);
    expect(readComb(picture)).toEqual(one);
    expect(readComb({ width: picture.width, height: picture.height, data: rgba })).toEqual(one);
  });
});
