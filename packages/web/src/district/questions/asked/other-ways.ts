import { bathVolume, causticBath, type GuidanceName, hypochloriteBath } from '@combside/science/disposal/baths';
import { type CautionId, cautionsOfMethod } from '@combside/science/disposal/cautions';
import { scorching } from '@combside/science/disposal/fire';
import { type dippable, hotWax, hotWaxDip } from '@combside/science/disposal/hot-wax-dip';
import { irradiation, irradiationConsignment } from '@combside/science/disposal/irradiation';
import { type Answer, answered, type Figure, say, unstated, type WordUnder } from '../question.ts';

/** What is done with hives and boxes; burning has a file of its own. */
export const ways = ['burn', 'scorch', 'hot wax', 'hypochlorite', 'caustic', 'irradiate'] as const;
export type Way = (typeof ways)[number];
export type OtherWay = Exclude<Way, 'burn'>;

/** Said before anything is asked, whatever was stated. */
const cautionsOf: Readonly<Record<OtherWay, readonly CautionId[]>> = {
  scorch: [...cautionsOfMethod.scorching, 'no petrol on a fire'],
  'hot wax': cautionsOfMethod.hotWaxDip,
  hypochlorite: cautionsOfMethod.hypochloriteBath,
  caustic: cautionsOfMethod.causticBath,
  irradiate: cautionsOfMethod.irradiation,
};

/** The inputs of each way, in the order in which they are asked for. */
export const fieldsOf = {
  scorch: ['beesDead', 'accepted', 'boxes', 'minutesPerBox'],
  'hot wax': ['beesDead', 'cleanAndDry', 'item', 'boxes', 'piecesPerDip', 'celsius', 'dipMinutes', 'vatLitres'],
  hypochlorite: [
    'beesDead',
    'cleaned',
    'tankLength',
    'tankWidth',
    'liquidDepth',
    'displaced',
    'stockPercent',
    'wantedPercent',
    'bathMinutes',
  ],
  caustic: ['beesDead', 'tankLength', 'tankWidth', 'liquidDepth', 'displaced', 'gramsPerLitre', 'bathMinutes'],
  irradiate: [
    'beesDead',
    'freeOfHoney',
    'boxes',
    'boxesPerUnit',
    'boxKilograms',
    'unitHeight',
    'unitsPerLayer',
    'leastDose',
    'deliveredDose',
  ],
} as const satisfies Readonly<Record<OtherWay, readonly string[]>>;

type YesNo = 'yes' | 'no' | null;

/** What was stated of any of these ways. */
export interface StatedWay {
  readonly beesDead: YesNo;
  readonly accepted: YesNo;
  readonly cleanAndDry: YesNo;
  readonly cleaned: YesNo;
  readonly freeOfHoney: YesNo;
  readonly item: (typeof dippable)[number] | null;
  readonly boxes: number | null;
  readonly minutesPerBox: number | null;
  readonly piecesPerDip: number | null;
  readonly celsius: number | null;
  readonly dipMinutes: number | null;
  readonly vatLitres: number | null;
  readonly tankLength: number | null;
  readonly tankWidth: number | null;
  readonly liquidDepth: number | null;
  readonly displaced: number | null;
  readonly stockPercent: number | null;
  readonly wantedPercent: number | null;
  readonly bathMinutes: number | null;
  readonly gramsPerLitre: number | null;
  readonly boxesPerUnit: number | null;
  readonly boxKilograms: number | null;
  readonly unitHeight: number | null;
  readonly unitsPerLayer: number | null;
  readonly leastDose: number | null;
  readonly deliveredDose: number | null;
}

/** A number of which `unstated` has shown that it is there. */
type There<T> = { readonly [Name in keyof T]: NonNullable<T[Name]> };

const number = (value: number, decimals: number) => ({ number: value, decimals });

/** What a way other than burning takes: its cautions first, then what is still asked for, then the figures. */
export function otherWay(way: OtherWay, stated: StatedWay): Answer {
  const parts = { cautions: cautionsOf[way], takes: takesOf[way], sources: sourcesOf[way] };
  const refuse = (what: WordUnder<'burn-and-bury.refuses'>) =>
    answered({ ...parts, refuses: say(`burn-and-bury.refuses.${what}`) });
  if (stated.beesDead === 'no') return refuse('alive');
  if (way === 'scorch' && stated.accepted === 'no') return refuse('not-accepted');
  if (way === 'hot wax' && stated.cleanAndDry === 'no') return refuse('wet');
  if (way === 'hypochlorite' && stated.cleaned === 'no') return refuse('dirty');
  if (way === 'irradiate' && stated.freeOfHoney === 'no') return refuse('honey');
  const needed = Object.fromEntries(
    fieldsOf[way].filter((name) => name !== 'deliveredDose').map((name) => [name, stated[name]]),
  );
  const asks = unstated(needed);
  if (asks.length > 0) return answered({ ...parts, asks });
  const there = stated as There<StatedWay>;
  if (way === 'irradiate') {
    if (there.boxesPerUnit * there.boxKilograms > irradiation.heaviestUnit.value) return refuse('too-heavy');
    const dose = stated.deliveredDose ?? there.leastDose;
    return answered({ ...parts, said: ofIrradiation(there, stated.deliveredDose), figure: ofDose(dose) });
  }
  if (way === 'scorch') return answered({ ...parts, said: ofScorching(there) });
  if (way === 'hot wax') return answered({ ...parts, said: ofHotWax(there), figure: ofDipTime(there.dipMinutes) });
  const holds = (there.tankLength * there.tankWidth * there.liquidDepth) / 1000;
  if (there.displaced >= holds) return refuse('displaced');
  if (way === 'caustic') return answered({ ...parts, said: ofCaustic(there) });
  if (there.wantedPercent > there.stockPercent) return refuse('too-strong');
  return answered({ ...parts, said: ofHypochlorite(there), figure: ofStrength(there) });
}

const takesOf: Readonly<Record<OtherWay, Answer['takes']>> = {
  scorch: ['burn-and-bury.takes.chosen-time', 'burn-and-bury.takes.scorch'],
  'hot wax': ['burn-and-bury.takes.hot-wax', 'burn-and-bury.takes.not-dipped'],
  hypochlorite: ['burn-and-bury.takes.bleach', 'burn-and-bury.takes.guidances'],
  caustic: ['burn-and-bury.takes.caustic'],
  irradiate: ['burn-and-bury.takes.dose', 'burn-and-bury.takes.pallet'],
};

const sourcesOf: Readonly<Record<OtherWay, Answer['sources']>> = {
  scorch: ['CA-FAC'],
  'hot wax': ['WA-AFB22', 'BTHENET', 'MACHOVA93'],
  hypochlorite: ['NBU-HYPO', 'BTHENET', 'WA-AFB22'],
  caustic: ['WA-AFB22'],
  irradiate: ['GUZMAN11', 'CJM62', 'FL-5B54', 'WA-AFB22'],
};

function ofScorching({ boxes, minutesPerBox }: There<StatedWay>): Answer['said'] {
  const { minutes } = scorching({ boxes, minutesPerBox, acceptedByPack: true, beesDead: true });
  return [say('burn-and-bury.says.scorch', { boxes, minutes: number(minutes, 0) })];
}

function ofHotWax(stated: There<StatedWay>): Answer['said'] {
  const { item, boxes: pieces, piecesPerDip, celsius, dipMinutes: minutes, vatLitres } = stated;
  const dip = hotWaxDip({
    item,
    pieces,
    piecesPerDip,
    celsius,
    minutes,
    vatLitres,
    cleanAndDry: true,
    beesDead: true,
  });
  return [
    say('burn-and-bury.says.dips', { dips: dip.dips, minutes: number(dip.minutesInWax, 0), pieces }),
    say('burn-and-bury.says.wax', {
      microcrystalline: number(dip.microcrystallineLitres, 1),
      paraffin: number(dip.paraffinWaxLitres, 1),
    }),
    say('burn-and-bury.says.heat', {
      low: number(dip.logReductionLow, 1),
      high: number(dip.logReductionHigh, 1),
    }),
  ];
}

function tank({ tankLength, tankWidth, liquidDepth, displaced }: There<StatedWay>): number {
  return bathVolume({
    lengthCentimetres: tankLength,
    widthCentimetres: tankWidth,
    depthCentimetres: liquidDepth,
    displacedLitres: displaced,
  }).litres;
}

/** Powers of ten of spores killed, by the slowest D-value, against the minutes in the wax. */
function ofDipTime(minutes: number): Figure {
  const slowest = hotWax.decimalReductionMinutes.high;
  return curve('dip', 'min', minutes, (value) => value / slowest);
}

/** The same against the dose. */
function ofDose(dose: number): Figure {
  return curve('dose', 'number', dose, (value) => value / irradiation.decimalReductionDose.value);
}

/** Bleach for this tank against the strength of the bath. */
function ofStrength(stated: There<StatedWay>): Figure {
  const litres = tank(stated);
  const { stockPercent, wantedPercent } = stated;
  return curve('strength', 'number', wantedPercent, (value) => (litres * Math.min(value, stockPercent)) / stockPercent);
}

/** A line from nothing to twice what was stated, with what was stated on it. */
function curve(
  name: WordUnder<'burn-and-bury.x'> & WordUnder<'burn-and-bury.y'>,
  shown: 'min' | 'number',
  at: number,
  of: (value: number) => number,
): Figure {
  return {
    kind: 'curve',
    x: { label: `burn-and-bury.x.${name}`, shown },
    y: { label: `burn-and-bury.y.${name}`, shown: name === 'strength' ? 'l' : 'number' },
    points: Array.from({ length: 21 }, (_, i) => [(at * i) / 10, of((at * i) / 10)] as const),
    marked: [at, of(at)],
  };
}

const guidanceId = {
  'England and Wales, cleaned surfaces': 'england',
  'Poland (EU sheet)': 'poland',
  'Western Australia, metal floors': 'australia',
} as const satisfies Readonly<Record<GuidanceName, WordUnder<'burn-and-bury.says.meets'>>>;

function ofHypochlorite(stated: There<StatedWay>): Answer['said'] {
  const bath = hypochloriteBath({
    stockPercent: stated.stockPercent,
    wantedPercent: stated.wantedPercent,
    bathLitres: tank(stated),
    minutes: stated.bathMinutes,
    cleaned: true,
    beesDead: true,
  });
  return [
    say('burn-and-bury.says.bleach', {
      stock: number(bath.stockLitres, 1),
      water: number(bath.waterLitres, 1),
      parts: number(bath.partsWater, 1),
    }),
    ...(bath.meets.length === 0
      ? [say('burn-and-bury.says.meets.none')]
      : bath.meets.map((name) => say(`burn-and-bury.says.meets.${guidanceId[name]}`))),
  ];
}

function ofCaustic(stated: There<StatedWay>): Answer['said'] {
  const litres = tank(stated);
  const { gramsPerLitre, bathMinutes: minutes } = stated;
  const bath = causticBath({ bathLitres: litres, gramsPerLitre, minutes, beesDead: true });
  return [
    say('burn-and-bury.says.caustic', {
      kilograms: number(bath.causticGrams / 1000, 2),
      litres: number(litres, 1),
      percent: number(bath.strengthPercent, 2),
      minutes: number(bath.minutes, 0),
    }),
    say('burn-and-bury.says.caustic-only-cleans'),
  ];
}

function ofIrradiation(stated: There<StatedWay>, delivered: number | null): Answer['said'] {
  const sent = irradiationConsignment({
    boxes: stated.boxes,
    boxesPerUnit: stated.boxesPerUnit,
    kilogramsPerBox: stated.boxKilograms,
    unitHeightMetres: stated.unitHeight,
    unitsPerLayer: stated.unitsPerLayer,
    packMinimumKiloGray: stated.leastDose,
    deliveredMinimumKiloGray: delivered,
    freeOfBeesAndHoney: true,
    beesDead: true,
  });
  const asked = number(stated.leastDose, 1);
  return [
    say('burn-and-bury.says.consignment', {
      units: sent.units,
      each: number(sent.kilogramsPerUnit, 1),
      pallets: sent.pallets,
      kilograms: number(sent.kilograms, 0),
    }),
    sent.doseReached === null
      ? say('burn-and-bury.says.dose-waits', { asked })
      : say(`burn-and-bury.says.dose-${sent.doseReached ? 'reached' : 'missed'}`, {
          asked,
          delivered: number(delivered ?? 0, 1),
        }),
    say('burn-and-bury.says.dose', {
      dose: number(delivered ?? stated.leastDose, 1),
      log: number(sent.logReduction, 0),
    }),
  ];
}
