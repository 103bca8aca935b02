import { describe, expect, it } from 'vitest';
import { seeded } from '../../random/seeded.ts';
import { coarseClass, type DecidedClass } from '../cells/cell-classes.ts';
import { contentFiller, type PaintedCell } from '../painter/fill-comb.ts';
import { drawSettings } from '../painter/settings.ts';
import { agreement, type ReadCell, readCells, withCorrections } from './reading.ts';

/** A rectangle of lattice cells, `wide` columns, classes in order row by row. */
function comb(classes: readonly DecidedClass[], wide: number): ReadCell[] {
  return classes.map((name, k) => ({
    column: k % wide,
    row: Math.floor(k / wide),
    class: name,
    coarse: coarseClass(name),
  }));
}

function spread(counts: Partial<Record<DecidedClass, number>>): DecidedClass[] {
  // Every other class is strewn evenly among the sealed cells, so that no two of them meet.
  const others = Object.entries(counts).flatMap(([name, n]) =>
    name === 'sealed-worker-brood' ? [] : new Array<DecidedClass>(n).fill(name as DecidedClass),
  );
  const sealed = counts['sealed-worker-brood'] ?? 0;
  const all = new Array<DecidedClass>(sealed + others.length).fill('sealed-worker-brood');
  const step = all.length / (others.length + 1);
  others.forEach((name, k) => {
    all[Math.floor((k + 1) * step)] = name;
  });
  return all;
}

const painted: Readonly<Record<PaintedCell['content'], DecidedClass>> = {
  worker: 'sealed-worker-brood',
  drone: 'sealed-drone-brood',
  honey: 'sealed-honey',
  empty: 'open-empty',
  egg: 'egg-or-larva',
  larva: 'egg-or-larva',
  nectar: 'nectar',
  pollen: 'pollen',
};

describe('solidness', () => {
  it('gives the share counted by eye on a real comb: 221 sealed, 11 open', () => {
    // Counted on a photograph of healthy brood (bottom band): 221 sealed and 11 open of 232 decided cells, 95 % sealed.
    const reading = readCells(comb(spread({ 'sealed-worker-brood': 221, 'open-empty': 11 }), 29));
    // Two sealed cells in the corners of the window have too few cells around them to be judged.
    expect(reading.solidness).toMatchObject({ sealed: 219, missed: 11, leftOut: 0 });
    expect(reading.solidness?.value).toBeCloseTo(0.953, 2);
  });

  it('does not count pollen as missed: 82 sealed, 8 open, 13 pollen', () => {
    // Same photograph, middle window: 80 % sealed of all that is seen, because of a pollen patch; still healthy.
    // Too few for a figure, so three such windows stand one below the other.
    const window = spread({ 'sealed-worker-brood': 82, 'open-empty': 8, pollen: 13 });
    const reading = readCells(comb([...window, ...window, ...window], 13));
    expect(reading.solidness).toMatchObject({ sealed: 244, missed: 24, leftOut: 39 });
    expect(reading.solidness?.value).toBeCloseTo(82 / 90, 2);
    const sealedOfSeen = reading.counts['sealed-worker-brood'] / reading.cells;
    expect(sealedOfSeen).toBeCloseTo(0.796, 3);
  });

  it('leaves open cells outside the brood alone', () => {
    const rows: DecidedClass[] = [
      ...new Array<DecidedClass>(300).fill('sealed-worker-brood'),
      ...new Array<DecidedClass>(120).fill('open-empty'),
    ];
    const reading = readCells(comb(rows, 12));
    expect(reading.solidness).toMatchObject({ value: 1, missed: 0 });
  });

  it.each([
    // [radius of the nest in cells, share of its cells missing, off by at most]: the truth is how the nest was made.
    [20, 0.05, 0.02],
    [20, 0.33, 0.04],
    [20, 0.5, 0.06],
    [12, 0.05, 0.02],
    [12, 0.33, 0.05],
  ])(
    'of a ragged round nest %i cells across the middle and %f of it missing is off by at most %f',
    (radius, gaps, most) => {
      const chance = seeded(radius + Math.round(1000 * gaps));
      let off = 0;
      const nests = 10;
      for (let nest = 0; nest < nests; nest++) {
        const rim = Array.from({ length: 24 }, () => radius * (1 + chance.between(-0.12, 0.12)));
        const cells: ReadCell[] = [];
        let brood = 0;
        let sealed = 0;
        for (let row = -radius - 8; row <= radius + 8; row++) {
          for (let column = -2 * radius - 8; column <= 2 * radius + 8; column++) {
            const x = column + row / 2;
            const y = row * Math.sqrt(0.75);
            const sector = Math.floor(((Math.atan2(y, x) + Math.PI) / (2 * Math.PI)) * 24) % 24;
            const inside = Math.hypot(x, y) <= (rim[sector] as number);
            const isSealed = inside && chance.uniform() >= gaps;
            brood += inside ? 1 : 0;
            sealed += isSealed ? 1 : 0;
            const name: DecidedClass = isSealed ? 'sealed-worker-brood' : 'open-empty';
            cells.push({ column, row, class: name, coarse: coarseClass(name) });
          }
        }
        off += (readCells(cells).solidness?.value ?? Number.NaN) - sealed / brood;
      }
      expect(Math.abs(off / nests)).toBeLessThan(most);
    },
  );

  it.each([
    // [share of the sealed cells that the painter leaves out, off by at most]
    [0.03, 0.03],
    [0.15, 0.03],
    [0.4, 0.03],
    [0.55, 0.04],
  ])('of painted nests with a band of young brood and %f missing is off by at most %f in the mean', (gaps, most) => {
    let off = 0;
    let told = 0;
    for (let seed = 1; seed <= 12; seed++) {
      const content = { kind: 'brood nest', missed: gaps, pollenPatches: 3, drone: 0 } as const;
      const settings = drawSettings('tuning', seed, { content });
      const [halfWidth, halfHeight] = [38, 21];
      const fill = contentFiller(settings, seeded(seed), halfWidth, halfHeight);
      const cells: ReadCell[] = [];
      for (let row = -24; row <= 24; row++) {
        for (let column = -52; column <= 52; column++) {
          const [u, v] = [column + row / 2, row * Math.sqrt(0.75)];
          if (Math.abs(u) > halfWidth || Math.abs(v) > halfHeight) continue;
          const name = painted[fill(u, v).content];
          cells.push({ column, row, class: name, coarse: coarseClass(name) });
        }
      }
      const read = readCells(cells).solidness;
      if (!read) continue;
      off += read.value - (1 - gaps);
      told++;
    }
    expect(told).toBeGreaterThan(6);
    expect(Math.abs(off / told)).toBeLessThan(most);
  });

  it('says nothing from a handful of cells', () => {
    expect(readCells(comb(spread({ 'sealed-worker-brood': 180, 'open-empty': 12 }), 16)).solidness).toBeUndefined();
  });
});

describe('areas and stages', () => {
  it('turns 400 worker cells into 100 cm2, between 91 and 105', () => {
    // 4.0 (3.8 to 4.4) worker cells per cm2 of one side [CELLRACE].
    const { brood } = readCells(comb(new Array<DecidedClass>(400).fill('sealed-worker-brood'), 20)).areas;
    expect(brood.squareCentimetres).toBeCloseTo(100, 6);
    expect(brood.low).toBeCloseTo(90.9, 1);
    expect(brood.high).toBeCloseTo(105.3, 1);
  });

  it('expects three eggs and larvae for four sealed cells', () => {
    // Steady laying gives egg : larva : capped = 1 : 2 : 4 [RATIO].
    const reading = readCells(comb(new Array<DecidedClass>(40).fill('sealed-worker-brood'), 8));
    expect(reading.stages.steadyEggAndLarvaForSealed).toBeCloseTo(30, 6);
  });

  it('reads nothing from no cells', () => {
    expect(readCells([])).toMatchObject({ cells: 0, unread: 1 });
  });
});

describe('corrections', () => {
  const cells = comb(['open-empty', 'pollen', 'sealed-worker-brood', 'hidden'], 2);

  it('stand beside the machine, which is kept', () => {
    const corrected = withCorrections(cells, [{ column: 1, row: 1, class: 'sealed-honey' }]);
    expect(corrected[3]).toMatchObject({ class: 'sealed-honey', coarse: 'sealed', corrected: true });
    expect(cells[3]?.class).toBe('hidden');
    expect(corrected[0]).toBe(cells[0]);
  });

  it('are refused for a cell that is not there', () => {
    expect(() => withCorrections(cells, [{ column: 9, row: 0, class: 'pollen' }])).toThrow(/9,0/);
  });

  it('agree as Cohen says: the worked table of 50 proposals', () => {
    // The often printed example: both yes 20, both no 15, yes/no 5, no/yes 10: agreement 0.7, kappa 0.4 (from memory).
    const pairs = [
      ...new Array(20).fill({ machine: 'pollen', person: 'pollen' }),
      ...new Array(15).fill({ machine: 'nectar', person: 'nectar' }),
      ...new Array(5).fill({ machine: 'pollen', person: 'nectar' }),
      ...new Array(10).fill({ machine: 'nectar', person: 'pollen' }),
    ] as { machine: 'pollen' | 'nectar'; person: 'pollen' | 'nectar' }[];
    const found = agreement(pairs);
    expect(found?.share).toBeCloseTo(0.7, 9);
    expect(found?.kappa).toBeCloseTo(0.4, 9);
    expect(agreement([])).toBeUndefined();
  });
});
