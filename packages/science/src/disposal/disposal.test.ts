import { describe, expect, it } from 'vitest';
import { seeded } from '../random/seeded.ts';
import { bathVolume, causticBath, causticKeepersCite, hypochloriteBath } from './baths.ts';
import { cautions } from './cautions.ts';
import { type Fuel, fuelForBurning, scorching } from './fire.ts';
import { type dippable, hotWaxDip } from './hot-wax-dip.ts';
import { irradiationConsignment } from './irradiation.ts';
import { killingDose } from './killing.ts';
import { coverOverAshes, lengthForPieces, pitForBurning } from './pit.ts';

const pit = {
  pieces: [{ count: 4, lengthCentimetres: 50, widthCentimetres: 40, heightCentimetres: 25 }],
  pitWidthMetres: 1,
  pitLengthMetres: 1,
  stackingHeightMetres: null,
  remainsHeightMetres: 0.2,
  coverMetres: coverOverAshes.value,
  beesDead: true,
};
const fire = {
  hives: 7,
  fuel: 'dry wood',
  kilogramsPerHive: 12,
  hivesAtOnce: 3,
  hoursPerFire: 2,
  beesDead: true,
} as const;
const dip = {
  item: 'boxes',
  pieces: 9,
  piecesPerDip: 2,
  celsius: 160,
  minutes: 10,
  vatLitres: 200,
  cleanAndDry: true,
  beesDead: true,
} as const;
const bleach = { stockPercent: 3, wantedPercent: 0.5, bathLitres: 60, minutes: 20, cleaned: true, beesDead: true };
const load = {
  boxes: 30,
  boxesPerUnit: 2,
  kilogramsPerBox: 8,
  unitHeightMetres: 0.6,
  unitsPerLayer: 4,
  packMinimumKiloGray: 20,
  deliveredMinimumKiloGray: null,
  freeOfBeesAndHoney: true,
  beesDead: true,
};
const kill = {
  agent: 'petrol',
  permittedByPack: [{ agent: 'petrol', article: 'cl. 0 (invented)' }],
  hives: 3,
  storeys: 2,
} as const;

describe('arithmetic of the guidance', () => {
  it('pit 1.0 by 1.0 m, remains 0.20 m, cover 0.61 m: depth 0.81 m and 0.81 m³ of soil (arithmetic; cover CA-FAC)', () => {
    const answer = pitForBurning(pit);
    expect(answer.pitDepth).toBeCloseTo(0.81, 12);
    expect(answer.soilToMove).toBeCloseTo(0.81, 12);
    expect(answer.volumeToBurn).toBeCloseTo(0.2, 12);
  });

  it('a pit takes whole hives, not their volume', () => {
    const hives = [{ count: 6, lengthCentimetres: 51, widthCentimetres: 41, heightCentimetres: 60 }];
    // By volume 0.6 m by 1.2 m stacked 1.05 m high would hold them; two find room there.
    const tight = { ...pit, pieces: hives, pitWidthMetres: 0.6, stackingHeightMetres: 1.05 };
    expect(() => pitForBurning({ ...tight, pitLengthMetres: 1.2 })).toThrow('pitLengthMetres must be');
    // Laid on the side, 41 cm along: one across, two in height where 51 cm stand upward, three such rows.
    expect(pitForBurning({ ...tight, pitLengthMetres: null }).pitLength).toBeCloseTo(3 * 0.41, 12);
    expect(() => pitForBurning({ ...tight, pitLengthMetres: null, pitWidthMetres: 0.4 })).toThrow('largest piece');
    expect(() => pitForBurning({ ...tight, pitLengthMetres: 0.3, stackingHeightMetres: null })).toThrow(
      'pitLengthMetres must be',
    );
  });

  it('never needs less than the volume, nor more than one piece behind the other', () => {
    const chance = seeded(11);
    for (let i = 0; i < 300; i++) {
      const one = {
        count: 1 + chance.integer(40),
        lengthCentimetres: 10 + chance.integer(60),
        widthCentimetres: 10 + chance.integer(60),
        heightCentimetres: 10 + chance.integer(60),
      };
      const wide = 0.7 + chance.uniform() * 3;
      const high = 0.7 + chance.uniform();
      const length = lengthForPieces([one], wide, high);
      const sides = [one.lengthCentimetres, one.widthCentimetres, one.heightCentimetres].map((side) => side / 100);
      const volume = one.count * sides.reduce((a, b) => a * b, 1);
      expect(length).not.toBeNull();
      expect(length ?? 0).toBeGreaterThanOrEqual(volume / (wide * high) - 1e-9);
      expect(length ?? 0).toBeLessThanOrEqual(one.count * Math.min(...sides) + 1e-9);
    }
  });

  it('works out the length from a stacking height', () => {
    const answer = pitForBurning({ ...pit, pitLengthMetres: null, stackingHeightMetres: 0.5, pitWidthMetres: 0.8 });
    expect(answer.pitLength).toBeCloseTo(0.2 / 0.4, 12);
  });

  it('fuel and time are hives times what was chosen', () => {
    expect(fuelForBurning(fire)).toMatchObject({ fuelKilograms: 84, fires: 3, hours: 6 });
    expect(fuelForBurning({ ...fire, fuel: 'comb wax alone', kilogramsPerHive: null }).fuelKilograms).toBe(0);
    expect(scorching({ boxes: 6, minutesPerBox: 4, acceptedByPack: true, beesDead: true }).minutes).toBe(24);
  });

  it('hot wax, 10 minutes: 4 to 6.7 log10 (MACHOVA93), half microcrystalline (WA-AFB22)', () => {
    const answer = hotWaxDip(dip);
    expect(answer.logReductionLow).toBeCloseTo(4, 12);
    expect(answer.logReductionHigh).toBeCloseTo(6.67, 2);
    expect(answer).toMatchObject({ dips: 5, minutesInWax: 50, microcrystallineLitres: 100, paraffinWaxLitres: 100 });
  });

  it('bleach of 3 % to 0.5 %: 1 part and 5 parts (NBU-HYPO), and which guidance that meets', () => {
    const answer = hypochloriteBath(bleach);
    expect(answer.partsWater).toBeCloseTo(5, 12);
    expect([answer.stockLitres, answer.waterLitres]).toEqual([10, 50]);
    expect(answer.meets).toEqual(['England and Wales, cleaned surfaces']);
    expect(hypochloriteBath({ ...bleach, wantedPercent: 1 }).meets).toContain('Poland (EU sheet)');
    expect(hypochloriteBath({ ...bleach, minutes: 10 }).meets).toEqual([]);
  });

  it('caustic, 1 lb to 10 US gallons is 1.2 % (common practice, no source), and is never called decontamination', () => {
    const answer = causticBath({ bathLitres: 37.9, gramsPerLitre: 454 / 37.9, minutes: 15, beesDead: true });
    expect(answer.strengthPercent).toBeCloseTo(1.2, 1);
    expect(answer.causticGrams).toBeCloseTo(454, 9);
    expect(454 / 37.9).toBeCloseTo(causticKeepersCite.gramsPerLitre.value, 1);
    expect(causticKeepersCite.gramsPerLitre.standing).toBe('common practice');
    expect(answer.decontaminates).toBe(false);
  });

  it('a tank of 60 by 50 by 40 cm holds 120 l', () => {
    const tank = { lengthCentimetres: 60, widthCentimetres: 50, depthCentimetres: 40 };
    expect(bathVolume({ ...tank, displacedLitres: 15 }).litres).toBeCloseTo(105, 12);
    expect(() => bathVolume({ ...tank, displacedLitres: 120 })).toThrow('displacedLitres');
  });

  it('15 kGy are 75 log10 on glass (GUZMAN11); units up to 25 kg, pallets under 2 m (WA-AFB22)', () => {
    const answer = irradiationConsignment({ ...load, deliveredMinimumKiloGray: 15 });
    expect(answer.logReduction).toBeCloseTo(75, 9);
    expect(answer.doseReached).toBe(false);
    expect(answer).toMatchObject({ units: 15, kilogramsPerUnit: 16, kilograms: 240, pallets: 2 });
    expect(irradiationConsignment(load).doseReached).toBeNull();
  });

  it('killing, where permitted: 500 ml up to 2 storeys, about 1 l to 4, closed 10 to 15 minutes (NZ-KILL)', () => {
    expect(killingDose(kill)).toMatchObject({ litres: 1.5, leastMinutesClosed: 10, mostMinutesClosed: 15 });
    expect(killingDose({ ...kill, storeys: 3 }).millilitresPerHive).toBe(1000);
  });
});

describe('what this room refuses', () => {
  it.each(['petrol', 'Gasoline', 'Benzin', 'a little petrol on dry wood'])('%s as fuel', (fuel) => {
    expect(() => fuelForBurning({ ...fire, fuel: fuel as Fuel })).toThrow('never petrol');
  });

  it('a killing agent the pack does not permit, and any agent when it permits none', () => {
    expect(() => killingDose({ ...kill, permittedByPack: [] })).toThrow("permitted by the jurisdiction's pack");
    expect(() => killingDose({ ...kill, permittedByPack: [{ agent: 'carbon dioxide', article: 's. 1' }] })).toThrow(
      'agent',
    );
    expect(() => killingDose({ ...kill, permittedByPack: [{ agent: 'petrol', article: '' }] })).toThrow('article');
  });

  it('living bees, in every treatment', () => {
    const living = { beesDead: false };
    for (const attempt of [
      () => pitForBurning({ ...pit, ...living }),
      () => fuelForBurning({ ...fire, ...living }),
      () => scorching({ boxes: 1, minutesPerBox: 1, acceptedByPack: true, ...living }),
      () => hotWaxDip({ ...dip, ...living }),
      () => hypochloriteBath({ ...bleach, ...living }),
      () => causticBath({ bathLitres: 1, gramsPerLitre: 1, minutes: 1, ...living }),
      () => irradiationConsignment({ ...load, ...living }),
    ]) {
      expect(attempt).toThrow('beesDead must be true');
    }
  });

  it('figures nobody published, unless somebody gives them', () => {
    const missing = undefined as unknown as number;
    expect(() => pitForBurning({ ...pit, pitWidthMetres: missing })).toThrow('no published figure exists');
    expect(() => pitForBurning({ ...pit, pitLengthMetres: null })).toThrow('stackingHeightMetres');
    expect(() => fuelForBurning({ ...fire, kilogramsPerHive: null })).toThrow('no published figure exists');
    expect(() => fuelForBurning({ ...fire, hoursPerFire: missing })).toThrow('no published figure exists');
    expect(() => causticBath({ bathLitres: 5, gramsPerLitre: missing, minutes: 15, beesDead: true })).toThrow(
      'no published',
    );
    expect(() => irradiationConsignment({ ...load, packMinimumKiloGray: missing })).toThrow('packMinimumKiloGray');
  });

  it('wax too cold, too hot or too short; wet wood; frames and masonite', () => {
    expect(() => hotWaxDip({ ...dip, celsius: 159 })).toThrow('celsius must be from 160');
    expect(() => hotWaxDip({ ...dip, celsius: 176 })).toThrow('vapour');
    expect(() => hotWaxDip({ ...dip, minutes: 9 })).toThrow('minutes must be 10 or more');
    expect(() => hotWaxDip({ ...dip, cleanAndDry: false })).toThrow('dry');
    for (const item of ['frames', 'masonite lids']) {
      expect(() => hotWaxDip({ ...dip, item: item as (typeof dippable)[number] })).toThrow('burned');
    }
  });

  it('units above 25 kg', () => {
    expect(() => irradiationConsignment({ ...load, kilogramsPerBox: 20 })).toThrow('at most 25 kg');
  });
});

describe('cautions', () => {
  it('open every answer, the local law first', () => {
    const answers = [
      pitForBurning(pit),
      fuelForBurning(fire),
      scorching({ boxes: 1, minutesPerBox: 1, acceptedByPack: true, beesDead: true }),
      hotWaxDip(dip),
      hypochloriteBath(bleach),
      causticBath({ bathLitres: 1, gramsPerLitre: 1, minutes: 1, beesDead: true }),
      bathVolume({ lengthCentimetres: 1, widthCentimetres: 1, depthCentimetres: 1, displacedLitres: 0 }),
      irradiationConsignment(load),
      killingDose(kill),
    ];
    for (const answer of answers) {
      expect(Object.keys(answer)[0]).toBe('cautions');
      expect(answer.cautions[0]).toBe('permit and local law decide');
      for (const id of answer.cautions) expect(Object.keys(cautions)).toContain(id);
    }
    const said = new Set(answers.flatMap((answer) => [...answer.cautions]));
    expect([...said].sort()).toEqual(Object.keys(cautions).sort());
  });
});
