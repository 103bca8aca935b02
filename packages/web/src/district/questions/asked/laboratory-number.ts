import { meaningOfResult } from '@combside/science/laboratory/meaning-of-result';
import { plateCount } from '@combside/science/laboratory/plate-count';
import { loadInPool } from '@combside/science/laboratory/pooled-load';
import {
  type Answer,
  answered,
  dashed,
  type Figure,
  type QuestionWord,
  question,
  type Said,
  say,
  unstated,
} from '../question.ts';
import { byLimits, type LoadRead, loadSaid, type StatedLimits } from './limits-of-laboratory.ts';
import { readPlates } from './plates.ts';
import { askedShare, confidence } from './shared-fields.ts';

const reports = ['load', 'plates', 'positive', 'negative'] as const;
const units = ['g', 'bee', 'ml'] as const;
const load = { kind: 'number', shown: 'number', from: 0, to: 1e12, step: 0.01, slideTo: null, start: null } as const;
const amount = { ...load, from: 0.001, to: 1e6, step: 0.001 } as const;
const counted = { ...load, to: 10_000, step: 1, optional: true } as const;
const text = { kind: 'text', start: '' } as const;
const bands = [
  'priorLow',
  'priorHigh',
  'sensitivityLow',
  'sensitivityHigh',
  'specificityLow',
  'specificityHigh',
] as const;

/** The fields that hold a laboratory's own limits. */
const limitFields = ['laboratory', 'method', 'material', 'statedOn', 'source', 'classes'] as const;
const countFields = ['countLowest', 'countHighest'] as const;

const takes = {
  ownLimits: 'laboratory-number.takes.own-limits',
  noProof: 'laboratory-number.takes.no-proof',
  noConversion: 'laboratory-number.takes.no-conversion',
} as const;

/** What does this laboratory number mean? */
export const laboratoryNumber = question({
  id: 'laboratory-number',
  fields: {
    report: { kind: 'choice', options: reports, start: 'load' },
    load,
    lower: { ...load, optional: true },
    upper: { ...load, optional: true },
    plates: { kind: 'lines', start: '' },
    suspension: amount,
    amount,
    parts: { ...load, from: 1, to: 1000, step: 1, optional: true },
    confidence,
    unit: { kind: 'choice', options: units, start: null },
    laboratory: text,
    method: text,
    material: text,
    statedOn: { kind: 'day', start: '' },
    source: text,
    classes: { kind: 'lines', start: '' },
    countLowest: counted,
    countHighest: { ...counted, from: 1 },
    priorLow: askedShare,
    priorHigh: askedShare,
    sensitivityLow: askedShare,
    sensitivityHigh: askedShare,
    specificityLow: askedShare,
    specificityHigh: askedShare,
  },
  inSight: ({ report }) => {
    if (report === 'load') return ['report', 'load', 'lower', 'upper', 'unit', ...limitFields, ...countFields];
    if (report === 'plates') {
      const plates = ['plates', 'suspension', 'amount', 'unit', 'parts', 'confidence'] as const;
      return ['report', ...plates, ...countFields, ...limitFields];
    }
    return ['report', ...bands];
  },
  answer(stated) {
    if (stated.report === 'load') return ofLoad(stated);
    if (stated.report === 'plates') return ofPlates(stated);
    return ofResult(stated.report, stated);
  },
});

interface StatedLoad extends StatedLimits {
  readonly load: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly unit: LoadRead['unit'] | null;
}

function ofLoad(stated: StatedLoad): Answer {
  const { load, lower, upper, unit, method, material } = stated;
  const parts = { takes: Object.values(takes), sources: ['STE20'] } as const;
  const asks = unstated({ load, unit, material, method });
  if (load === null || unit === null || asks.length > 0) return answered({ asks, ...parts });
  if ((lower !== null && lower > load) || (upper !== null && upper < load)) {
    return answered({ refuses: say('laboratory-number.refuses.around'), ...parts });
  }
  const values = { load: loadSaid(load), unit: { word: `laboratory-number.unit.${unit}` as const }, material };
  const meant = byLimits({ load, lower, upper, unit }, stated, [say('laboratory-number.says.no-limits', values)]);
  if ('asks' in meant) return answered({ asks: meant.asks, ...parts });
  if ('refuses' in meant) return answered({ refuses: meant.refuses, ...parts });
  const row = { label: say('laboratory-number.row.load'), low: lower ?? load, value: load, high: upper ?? load };
  return answered({
    said: [...meant.said, say('laboratory-number.says.no-proof')],
    figure: figureOf(unit, [row, ...meant.rows]),
    ...parts,
  });
}

function figureOf(unit: LoadRead['unit'], rows: Extract<Figure, { kind: 'bands' }>['rows']): Figure {
  const x = { label: `laboratory-number.x.${unit}`, shown: 'number' } as const;
  return { kind: 'bands', x, from: 0, to: null, scale: 'logarithmic from zero', rows };
}

interface StatedPlates extends StatedLimits {
  readonly plates: string;
  readonly suspension: number | null;
  readonly amount: number | null;
  readonly parts: number | null;
  readonly confidence: number;
  readonly unit: LoadRead['unit'] | null;
  readonly countLowest: number | null;
  readonly countHighest: number | null;
}

/** From plates to a load, and what the laboratory's limits make of it. */
function ofPlates(stated: StatedPlates): Answer {
  const { suspension, amount, unit, confidence, parts, countLowest, countHighest } = stated;
  const shared = {
    takes: [
      'laboratory-number.takes.plates',
      'laboratory-number.takes.germinate',
      ...(parts === null ? [] : (['laboratory-number.takes.pool'] as const)),
      ...Object.values(takes),
    ],
    sources: ['ISO7218', 'GARWOOD36', 'STE20'],
  } as const;
  const half = (countLowest === null) !== (countHighest === null);
  const asks = [
    ...unstated({ plates: stated.plates.trim(), suspension, amount, unit }),
    ...(half ? unstated({ countLowest, countHighest }) : []),
  ];
  if (suspension === null || amount === null || unit === null || asks.length > 0) return answered({ asks, ...shared });
  const plates = readPlates(stated.plates);
  if (plates === null) return answered({ refuses: say('laboratory-number.refuses.plates'), ...shared });
  if (countLowest !== null && countHighest !== null && countLowest > countHighest) {
    return answered({ refuses: say('laboratory-number.refuses.counting'), ...shared });
  }
  const countable =
    countLowest === null || countHighest === null ? null : { lowest: countLowest, highest: countHighest };
  const found = plateCount({ plates, suspensionMillilitres: suspension, amount, unit, countable, confidence });
  const word = { word: `laboratory-number.unit.${unit}` as const };
  const values = {
    unit: word,
    colonies: found.coloniesCounted,
    plates: found.used.length,
    confidence: { share: confidence },
    load: loadSaid(found.load ?? 0),
    lower: loadSaid(found.lower ?? 0),
    upper: loadSaid(found.upper ?? 0),
  };
  const said: Said[] = [
    found.reading === 'too many to count' && found.lower === null
      ? say('laboratory-number.says.plates.too-many-unknown')
      : say(`laboratory-number.says.plates.${dashed(found.reading)}`, values),
  ];
  if (found.reading !== 'too many to count' && found.leftOut.length > 0) {
    said.push(say('laboratory-number.says.plates.left-out', { count: found.leftOut.length }));
  }
  said.push(say('laboratory-number.says.plates.limit', { limit: loadSaid(found.detectionLimit), unit: word }));
  if (parts !== null && parts > 1) {
    const pool = loadInPool({ load: found.load ?? 0, parts, detectionLimit: found.detectionLimit });
    said.push(say('laboratory-number.says.plates.pool', { parts, least: loadSaid(pool.leastLoadCaught), unit: word }));
    if (found.load) {
      said.push(
        say('laboratory-number.says.plates.pool-one', { parts, most: loadSaid(found.load * parts), unit: word }),
      );
    }
  }
  const none = say('laboratory-number.says.plates.no-limits');
  const read = { load: found.load ?? found.lower ?? 0, lower: found.lower, upper: found.upper, unit };
  // Too many to count is no number that a class could be read from.
  const meant = found.load === null ? { said: [], rows: [] } : byLimits(read, stated, [none]);
  if ('asks' in meant) return answered({ said, asks: meant.asks, ...shared });
  if ('refuses' in meant) return answered({ refuses: meant.refuses, ...shared });
  const row = {
    label: say('laboratory-number.row.plates'),
    low: found.lower ?? 0,
    value: found.load,
    high: found.upper,
  };
  return answered({
    said: [...said, ...meant.said, say('laboratory-number.says.no-proof')],
    figure: found.lower === null ? null : figureOf(unit, [row, ...meant.rows]),
    ...shared,
  });
}

function ofResult(
  result: 'positive' | 'negative',
  stated: Readonly<Record<(typeof bands)[number], number | null>>,
): Answer {
  const takes: QuestionWord[] = ['laboratory-number.takes.bands', 'laboratory-number.takes.no-proof'];
  const sources = ['DOHOO03'] as const;
  const asks = bands.filter((name) => stated[name] === null);
  if (asks.length > 0) return answered({ asks, takes, sources });
  const band = (low: number | null, high: number | null) => {
    const [from, to] = [low as number, high as number];
    return { low: from, value: (from + to) / 2, high: to };
  };
  const prior = band(stated.priorLow, stated.priorHigh);
  const sensitivity = band(stated.sensitivityLow, stated.sensitivityHigh);
  const specificity = band(stated.specificityLow, stated.specificityHigh);
  if ([prior, sensitivity, specificity].some((one) => one.low > one.high)) {
    return answered({ refuses: say('laboratory-number.refuses.order'), takes, sources });
  }
  const found = meaningOfResult({ result, prior, sensitivity, specificity });
  if (found.low === null || found.high === null) {
    return answered({ refuses: say('laboratory-number.refuses.impossible'), takes, sources });
  }
  const share = (value: number) => ({ share: value });
  return answered({
    said: [
      say(`laboratory-number.says.${result}`, {
        low: share(found.low),
        high: share(found.high),
        before: share(prior.low),
        beforeHigh: share(prior.high),
      }),
      say('laboratory-number.says.no-proof'),
    ],
    figure: {
      kind: 'bands',
      x: { label: 'laboratory-number.x.chance', shown: 'share' },
      from: 0,
      to: 1,
      rows: [
        { label: say('laboratory-number.row.before'), low: prior.low, value: null, high: prior.high },
        { label: say('laboratory-number.row.after'), low: found.low, value: null, high: found.high },
      ],
    },
    takes,
    sources,
  });
}
