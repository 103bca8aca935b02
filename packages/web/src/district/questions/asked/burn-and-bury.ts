import { always, type CautionId } from '@combside/science/disposal/cautions';
import { fuelForBurning, fuels } from '@combside/science/disposal/fire';
import { dippable, hotWax } from '@combside/science/disposal/hot-wax-dip';
import { lengthForPieces, pitForBurning } from '@combside/science/disposal/pit';
import { answered, type Figure, type QuestionWord, question, type Said, say, unstated } from '../question.ts';
import { fieldsOf, otherWay, ways } from './other-ways.ts';
import { readPieces } from './things-for-the-pit.ts';

const measure = (shown: 'cm' | 'm', to: number, step: number) =>
  ({ kind: 'number', shown, from: step, to, step, start: null }) as const;

const whole = (to: number, slideTo: number | null = null) =>
  ({ kind: 'number', shown: 'count', from: 1, to, step: 1, slideTo, start: null }) as const;
const figure = (shown: 'number' | 'min' | 'l' | '°C' | 'kg' | 'cm' | 'm', from: number, to: number, step: number) =>
  ({ kind: 'number', shown, from, to, step, slideTo: null, start: null }) as const;
const yesNo = { kind: 'choice', options: ['yes', 'no'], start: null } as const;

/** Said before anything is asked, whatever was stated. */
const cautions: readonly CautionId[] = [
  ...always,
  'ask about fire bans',
  'keep clear of ground water',
  'no petrol on a fire',
  'two people, water at hand',
  'honey must not reach bees',
  'lift by two',
];

/**
 * What do I need to burn and bury, or to scorch, dip, bathe or irradiate? Only the way itself starts chosen, since the
 * question names it; no figure has a default.
 */
export const burnAndBury = question({
  id: 'burn-and-bury',
  fields: {
    way: { kind: 'choice', options: ways, start: 'burn' },
    beesDead: yesNo,
    hives: { kind: 'number', shown: 'count', from: 1, to: 500, step: 1, slideTo: 50, start: null },
    length: measure('cm', 200, 1),
    width: measure('cm', 200, 1),
    height: measure('cm', 300, 1),
    others: { kind: 'lines', start: '' },
    pitWidth: measure('m', 20, 0.1),
    stacking: measure('m', 5, 0.1),
    remains: measure('m', 3, 0.05),
    cover: measure('m', 5, 0.01),
    fuel: { kind: 'choice', options: fuels, start: null },
    fuelPerHive: { kind: 'number', shown: 'kg', from: 0.5, to: 200, step: 0.5, slideTo: 50, start: null },
    atOnce: { kind: 'number', shown: 'count', from: 1, to: 100, step: 1, slideTo: 20, start: null },
    hoursPerFire: { kind: 'number', shown: 'hour', from: 0.5, to: 48, step: 0.5, slideTo: 12, start: null },
    accepted: yesNo,
    cleanAndDry: yesNo,
    cleaned: yesNo,
    freeOfHoney: yesNo,
    item: { kind: 'choice', options: dippable, start: null },
    boxes: whole(5000, 100),
    minutesPerBox: figure('min', 0.5, 240, 0.5),
    piecesPerDip: whole(100),
    celsius: figure('°C', hotWax.lowestCelsius.value, hotWax.flammableVapourAboveCelsius.value, 1),
    dipMinutes: figure('min', hotWax.leastMinutes.value, 240, 1),
    vatLitres: figure('l', 1, 5000, 1),
    tankLength: figure('cm', 1, 1000, 1),
    tankWidth: figure('cm', 1, 1000, 1),
    liquidDepth: figure('cm', 1, 500, 1),
    displaced: figure('l', 0, 5000, 0.1),
    stockPercent: figure('number', 0.1, 100, 0.1),
    wantedPercent: figure('number', 0.1, 100, 0.1),
    bathMinutes: figure('min', 1, 1440, 1),
    gramsPerLitre: figure('number', 0.1, 500, 0.1),
    boxesPerUnit: whole(20),
    boxKilograms: figure('kg', 0.1, 100, 0.1),
    unitHeight: figure('m', 0.01, 1.99, 0.01),
    unitsPerLayer: whole(100),
    leastDose: figure('number', 0.1, 100, 0.1),
    deliveredDose: { ...figure('number', 0, 200, 0.1), optional: true },
  },
  inSight: ({ way, fuel }) => [
    'way',
    ...(way === 'burn'
      ? ([
          'beesDead',
          'hives',
          'length',
          'width',
          'height',
          'others',
          'pitWidth',
          'stacking',
          'remains',
          'cover',
          'fuel',
          ...(fuel === 'comb wax alone' ? [] : (['fuelPerHive'] as const)),
          'atOnce',
          'hoursPerFire',
        ] as const)
      : fieldsOf[way]),
  ],
  answer(stated) {
    if (stated.way !== 'burn') return otherWay(stated.way, stated);
    const { beesDead, hives, length, width, height, pitWidth, stacking, remains, cover } = stated;
    const { fuel, fuelPerHive, atOnce, hoursPerFire } = stated;
    const takes: QuestionWord[] = [
      'burn-and-bury.takes.geometry',
      'burn-and-bury.takes.chosen',
      'burn-and-bury.takes.takes-all',
    ];
    const sources = ['CA-FAC', 'WA-AFB22', 'NZ-KILL'] as const;
    if (beesDead === 'no') return answered({ cautions, refuses: say('burn-and-bury.refuses.alive'), takes, sources });

    const others = readPieces(stated.others);
    if (others === null) return answered({ cautions, refuses: say('burn-and-bury.refuses.pieces'), takes, sources });

    const said: Said[] = [];
    let figure: Figure | null = null;
    const ready = beesDead === 'yes' && hives !== null;
    const measured = length !== null && width !== null && height !== null && pitWidth !== null;
    if (ready && measured && stacking !== null && remains !== null && cover !== null) {
      const pieces = [
        { count: hives, lengthCentimetres: length, widthCentimetres: width, heightCentimetres: height },
        ...others,
      ];
      if (lengthForPieces(pieces, pitWidth, stacking) === null) {
        return answered({ cautions, refuses: say('burn-and-bury.refuses.does-not-fit'), takes, sources });
      }
      const dug = pitForBurning({
        pieces,
        pitWidthMetres: pitWidth,
        pitLengthMetres: null,
        stackingHeightMetres: stacking,
        remainsHeightMetres: remains,
        coverMetres: cover,
        beesDead: true,
      });
      const metres = (value: number) => ({ number: value, decimals: 2 });
      said.push(
        say('burn-and-bury.says.pit', {
          hives,
          length: metres(dug.pitLength),
          width: metres(pitWidth),
          depth: metres(dug.pitDepth),
          soil: metres(dug.soilToMove),
          volume: metres(dug.volumeToBurn),
        }),
      );
      figure = {
        kind: 'curve',
        x: { label: 'burn-and-bury.x', shown: 'm' },
        y: { label: 'burn-and-bury.y', shown: 'm' },
        points: Array.from({ length: 31 }, (_, i) => pitWidth * (0.5 + i / 20)).flatMap((wide) => {
          const long = lengthForPieces(pieces, wide, stacking);
          return long === null ? [] : [[wide, long] as const];
        }),
        marked: [pitWidth, dug.pitLength],
      };
    }
    if (ready && fuel !== null && atOnce !== null && hoursPerFire !== null) {
      if (fuel === 'comb wax alone' || fuelPerHive !== null) {
        const burning = fuelForBurning({
          hives,
          fuel,
          kilogramsPerHive: fuelPerHive,
          hivesAtOnce: atOnce,
          hoursPerFire,
          beesDead: true,
        });
        const values = { fires: burning.fires, hours: { number: burning.hours, decimals: 1 } };
        said.push(
          fuel === 'comb wax alone'
            ? say('burn-and-bury.says.fire-wax', values)
            : say('burn-and-bury.says.fire', {
                ...values,
                kilograms: { number: burning.fuelKilograms, decimals: 1 },
                fuel: { word: `burn-and-bury.fuel.${fuel}` },
              }),
        );
      }
    }
    const asks = unstated({
      beesDead,
      hives,
      length,
      width,
      height,
      pitWidth,
      stacking,
      remains,
      cover,
      fuel,
      ...(fuel === 'comb wax alone' ? {} : { fuelPerHive }),
      atOnce,
      hoursPerFire,
    });
    return answered({ cautions, said, asks, figure, takes, sources });
  },
});
