import { checks } from '@combside/science/diagnosis/checks';
import { drawingOf } from '@combside/science/signs/drawing';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ApiaryPlanParameters, drawApiaryPlan } from './apiary-plan.ts';
import { drawCellSection, drawCombSection } from './cell-section.ts';
import type { CellSectionParameters } from './cell-section-parameters.ts';
import { drawCheck } from './check-drawing.ts';
import { drawCombSide } from './comb-side.ts';
import type { Drawing } from './drawing.ts';
import { drawSign } from './sign-drawing.ts';
import { colonyStates, drawStateMark } from './state-mark.ts';
import { drawingToSvg } from './svg.ts';

/** Every number pair of a path, read independently of the pen that wrote it. */
function pointsOf(d: string): [number, number][] {
  expect(d).toMatch(/^[MLCZ0-9 .e-]+$/);
  const numbers = (d.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  const points: [number, number][] = [];
  for (let i = 0; i + 1 < numbers.length; i += 2) points.push([numbers[i] as number, numbers[i + 1] as number]);
  return points;
}

function expectOnPlate(drawing: Drawing): void {
  const off: string[] = [];
  for (const shape of drawing.shapes) {
    for (const [x, y] of pointsOf(shape.d)) {
      const on = x >= -0.5 && x <= drawing.width + 0.5 && y >= -0.5 && y <= drawing.height + 0.5;
      if (!on) off.push(`${shape.role} at ${x}, ${y}`);
    }
  }
  expect(drawing.shapes.length).toBeGreaterThan(0);
  expect(off).toEqual([]);
}

const cell = fc.record(
  {
    capping: fc.constantFrom('none', 'domed', 'flat', 'sunken', 'perforated', 'torn', 'drone dome'),
    cappingDark: fc.boolean(),
    content: fc.constantFrom(
      ...(['empty', 'egg', 'coiled', 'twisted', 'stretched', 'slumped'] as const),
      ...(['pupa', 'mummy', 'sac', 'dry', 'pollen', 'nectar'] as const),
    ),
    colour: fc.constantFrom('pearl', 'yellow', 'brown', 'dark', 'white', 'grey'),
    scale: fc.constantFrom('none', 'lower wall', 'mouth', 'loose', 'rubbery'),
    threadMillimetres: fc.integer({ min: 0, max: 120 }),
    tongue: fc.boolean(),
    headRaised: fc.boolean(),
    tracheae: fc.boolean(),
    fluff: fc.boolean(),
    powder: fc.boolean(),
    unfed: fc.boolean(),
    watery: fc.boolean(),
    shiny: fc.boolean(),
    mites: fc.integer({ min: 0, max: 3 }),
    eggs: fc.integer({ min: 1, max: 4 }),
    raisedRim: fc.boolean(),
    moth: fc.boolean(),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<CellSectionParameters>;

describe('cell in section', () => {
  test('whatever is asked for stays on the plate', () => {
    expect.hasAssertions();
    fc.assert(
      fc.property(
        fc.array(cell, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(undefined, 'glue', 'sour', 'other'),
        fc.constantFrom(undefined, 'mummies', 'scales', 'dead brood'),
        fc.constantFrom(undefined, 'few', 'many'),
        (cells, smell, floor, bees) => {
          expectOnPlate(
            drawCombSection({
              cells: cells.map(({ threadMillimetres, ...others }) =>
                cells.length === 1 && threadMillimetres !== undefined ? { ...others, threadMillimetres } : others,
              ),
              ...(smell ? { smell } : {}),
              ...(cells.length === 1 && floor ? { floor } : {}),
              ...(cells.length > 1 && bees ? { bees } : {}),
            } as Parameters<typeof drawCombSection>[0]),
          );
        },
      ),
      { seed: 20260514, numRuns: 300 },
    );
  });

  test('two different cells never look the same', () => {
    const seen = new Map<string, CellSectionParameters>();
    const variants: CellSectionParameters[] = [
      ...(['none', 'domed', 'flat', 'sunken', 'perforated', 'torn', 'drone dome'] as const).map((capping) => ({
        capping,
      })),
      ...(
        ['egg', 'coiled', 'twisted', 'stretched', 'slumped', 'pupa', 'mummy', 'sac', 'dry', 'pollen', 'nectar'] as const
      ).map((content) => ({ content })),
      ...(['lower wall', 'mouth', 'loose', 'rubbery'] as const).map((scale) => ({ scale })),
      ...(['yellow', 'brown', 'dark', 'grey'] as const).map((colour) => ({ content: 'slumped' as const, colour })),
      ...[0, 12, 30].map((threadMillimetres) => ({ content: 'slumped' as const, threadMillimetres })),
      { capping: 'sunken', cappingDark: true },
      { scale: 'lower wall', tongue: true },
      { content: 'egg', eggs: 3 },
      { content: 'pupa', mites: 2 },
    ];
    for (const parameters of variants) {
      const key = JSON.stringify(drawCellSection(parameters).shapes);
      expect(seen.get(key), JSON.stringify(parameters)).toBeUndefined();
      seen.set(key, parameters);
    }
  });

  test('the mouth is at the left and lies higher than the base, by the 9 to 14 degrees of TILT', () => {
    const walls = drawCellSection({}).shapes.find((shape) => shape.role === 'walls');
    const [mouth, corner] = pointsOf(walls?.d ?? '') as [[number, number], [number, number]];
    expect(mouth[0]).toBeLessThan(corner[0]);
    const degrees = (Math.atan2(corner[1] - mouth[1], corner[0] - mouth[0]) * 180) / Math.PI;
    expect(degrees).toBeGreaterThanOrEqual(9);
    expect(degrees).toBeLessThanOrEqual(14);
  });

  test('nectar stands level, though the cell does not', () => {
    const nectar = drawCellSection({ content: 'nectar' }).shapes.find((shape) => shape.role === 'body');
    const [a, b] = pointsOf(nectar?.d ?? '') as [[number, number], [number, number]];
    expect(Math.abs(a[1] - b[1])).toBeLessThan(1.5);
    expect(b[0] - a[0]).toBeGreaterThan(20);
  });

  test('a longer thread moves the stick farther away', () => {
    const stick = (millimetres: number) => {
      const shape = drawCellSection({ content: 'slumped', threadMillimetres: millimetres }).shapes.find(
        (one) => one.role === 'stick',
      );
      return (pointsOf(shape?.d ?? '')[0] as [number, number])[1];
    };
    expect(stick(35)).toBeLessThan(stick(20));
    expect(stick(20)).toBeLessThan(stick(5));
    expect(() => stick(Number.NaN)).toThrow('measure 0 to 300 mm');
  });

  test('refuses a comb of no cells or too many', () => {
    expect(() => drawCombSection({ cells: [] })).toThrow('1 to 3 cells');
    expect(() => drawCombSection({ cells: [{}, {}, {}, {}] })).toThrow('1 to 3 cells');
  });
});

describe('comb side', () => {
  // The comb lies between (8, 12) and (112, 60). What is painted last at a point is what the eye sees there.
  function areasSeen(drawing: Drawing): Map<string, number> {
    const polygons = drawing.shapes
      .filter((shape) => ['honey', 'pollen', 'brood', 'sealed brood'].includes(shape.role))
      .map((shape) => ({ role: shape.role, points: pointsOf(shape.d) }));
    const counts = new Map<string, number>();
    const n = 100;
    for (let i = 0; i < n; i += 1) {
      for (let j = 0; j < n; j += 1) {
        const x = 8 + (104 * (i + 0.5)) / n;
        const y = 12 + (48 * (j + 0.5)) / n;
        const top = polygons.findLast(({ points }) => inside(points, x, y));
        if (top) counts.set(top.role, (counts.get(top.role) ?? 0) + 1 / (n * n));
      }
    }
    return counts;
  }

  function inside(points: readonly [number, number][], x: number, y: number): boolean {
    let within = false;
    points.forEach(([ax, ay], index) => {
      const [bx, by] = points[(index + 1) % points.length] as [number, number];
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within;
    });
    return within;
  }

  test('areas are the shares asked for, counted on a grid of points', () => {
    expect.hasAssertions();
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (brood, ofRest, honeyOfRest, sealed) => {
          const pollen = (1 - brood) * ofRest * 0.9;
          const honey = (1 - brood - pollen) * honeyOfRest * 0.98;
          const seen = areasSeen(drawCombSide({ brood, pollen, honey, sealed }));
          const close = (role: string, share: number) =>
            expect(Math.abs((seen.get(role) ?? 0) - share), `${role} of ${share}`).toBeLessThan(0.02);
          close('sealed brood', brood * sealed);
          close('brood', brood * (1 - sealed));
          close('pollen', pollen);
          close('honey', honey);
        },
      ),
      { seed: 20260514, numRuns: 25 },
    );
  });

  test('the part not looked at is hatched, and only that part', () => {
    const drawing = drawCombSide({ brood: 0.4, pollen: 0.1, honey: 0.2, seen: 0.25 });
    expectOnPlate(drawing);
    const unseen = drawing.shapes.filter((shape) => shape.role === 'unseen').flatMap((shape) => pointsOf(shape.d));
    expect(unseen.length).toBeGreaterThan(10);
    expect(Math.min(...unseen.map(([x]) => x))).toBeCloseTo(8 + 104 * 0.25, 1);
    const whole = drawCombSide({ brood: 0.4, pollen: 0.1, honey: 0.2 });
    expect(whole.shapes.some((shape) => shape.role === 'unseen')).toBe(false);
  });

  test('refuses more than a comb', () => {
    expect(() => drawCombSide({ brood: 0.8, pollen: 0.2, honey: 0.2 })).toThrow('at most 1');
    expect(() => drawCombSide({ brood: Number.NaN, pollen: 0, honey: 0 })).toThrow(
      'the share of brood is NaN; give 0 to 1',
    );
  });
});

describe('apiary plan', () => {
  const parameters = (count: number): ApiaryPlanParameters => ({
    hives: Array.from({ length: count }, (_, index) => ({
      id: `h${index}`,
      label: `${index + 1}`,
      at: { east: (index % 8) * 2, north: -Math.floor(index / 8) * 3 },
      state: 'not opened' as const,
    })),
    gate: { east: 7, north: 5 },
    track: [
      { east: -3, north: 5 },
      { east: 7, north: 5 },
    ],
    walk: ['h0'],
    scaleText: (metres) => `${metres} m`,
  });

  test.each([1, 2, 6, 40])('%i hives: on the plate, none upon another, every label there', (count) => {
    const plan = drawApiaryPlan(parameters(count));
    expectOnPlate(plan);
    const boxes = plan.shapes.filter((shape) => shape.role === 'outline').map((shape) => pointsOf(shape.d));
    expect(boxes).toHaveLength(count);
    boxes.forEach((box, index) => {
      for (const other of boxes.slice(index + 1)) {
        const [a, , c] = box as [number, number][];
        const [p, , r] = other as [number, number][];
        const apart =
          (c?.[0] ?? 0) <= (p?.[0] ?? 0) ||
          (r?.[0] ?? 0) <= (a?.[0] ?? 0) ||
          (c?.[1] ?? 0) <= (p?.[1] ?? 0) ||
          (r?.[1] ?? 0) <= (a?.[1] ?? 0);
        expect(apart).toBe(true);
      }
    });
    expect(plan.labels.filter((label) => /^\d+$/.test(label.text))).toHaveLength(count);
  });

  test('north is up and east is right; the scale bar is as long as it says', () => {
    const plan = drawApiaryPlan({
      ...parameters(2),
      hives: [
        { id: 'a', label: 'a', at: { east: 0, north: 0 }, state: 'suspect' },
        { id: 'b', label: 'b', at: { east: 12, north: 4 }, state: 'suspect' },
      ],
      gate: null,
      track: [],
      walk: [],
    });
    const [a, b] = plan.shapes
      .filter((shape) => shape.role === 'outline')
      .map((shape) => pointsOf(shape.d)[0] as [number, number]);
    if (!a || !b) throw new Error('two hives were asked for');
    expect(b[0]).toBeGreaterThan(a[0]);
    expect(b[1]).toBeLessThan(a[1]);
    const bar = pointsOf(plan.shapes.find((shape) => shape.role === 'scale bar')?.d ?? '');
    const metres = Number.parseFloat(plan.labels.find((label) => label.text.endsWith(' m'))?.text ?? '');
    const unitsPerMetre = (b[0] - a[0]) / 12;
    expect(((bar[2]?.[0] ?? 0) - (bar[1]?.[0] ?? 0)) / unitsPerMetre).toBeCloseTo(metres, 1);
  });

  test('refuses a plan of nothing and points that are none', () => {
    expect(() => drawApiaryPlan({ ...parameters(1), hives: [] })).toThrow('list the colonies instead');
    expect(() => drawApiaryPlan({ ...parameters(1), gate: { east: Number.NaN, north: 0 } })).toThrow(
      'both must be metres',
    );
  });
});

test('every sign of the catalogue has a drawing of its own', () => {
  const seen = new Map<string, string>();
  for (const [sign, drawing] of Object.entries(drawingOf)) {
    const drawn = drawSign(drawing);
    expectOnPlate(drawn);
    const key = JSON.stringify(drawn.shapes);
    expect(seen.get(key), `${sign} looks like`).toBeUndefined();
    seen.set(key, sign);
  }
  expect(seen.size).toBe(Object.keys(drawingOf).length);
  expect(seen.size).toBeGreaterThan(30);
});

test('every check at the hive is drawn on its plate, and none of the laboratory', () => {
  for (const check of checks) {
    const drawing = drawCheck(check.id);
    expect(drawing === null, check.id).toBe(check.place === 'laboratory');
    if (drawing) expectOnPlate(drawing);
  }
  // Looking for scale is a matter of the hold (TILT): the line of sight ends in a cell, below the eye.
  const hold = drawCheck('scale-search');
  const sight = pointsOf(hold?.shapes.find((one) => one.role === 'line of sight')?.d ?? '');
  expect(sight[1]?.[1]).toBeGreaterThan(sight[0]?.[1] as number);
});

test('every state has a mark of its own that reads without colour', () => {
  const colourless = colonyStates.map((state) => {
    const drawing = drawStateMark(state);
    expectOnPlate(drawing);
    return JSON.stringify(drawing.shapes.map(({ d, dash }) => [d, dash])) + (state === 'confirmed' ? 'filled' : '');
  });
  expect(new Set(colourless).size).toBe(colonyStates.length);
});

test('SVG names the drawing and guards its mark-up', () => {
  const svg = drawingToSvg(drawStateMark('suspect'), 40, 'Colony <7> & "8"');
  expect(svg).toContain('<title>Colony &#60;7&#62; &#38; &#34;8&#34;</title>');
  expect(svg).toContain('vector-effect="non-scaling-stroke"');
});
