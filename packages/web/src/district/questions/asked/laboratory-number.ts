import { DomainError } from '@combside/science/distributions/domain';
import { type LaboratoryLimits, type LoadClass, meaningOfLoad } from '@combside/science/laboratory/laboratory-limits';
import { meaningOfResult } from '@combside/science/laboratory/meaning-of-result';
import { type Answer, answered, type Figure, question, say, unstated } from '../question.ts';
import { askedShare } from './shared-fields.ts';

const reports = ['load', 'positive', 'negative'] as const;
const units = ['g', 'bee', 'ml'] as const;
const load = { kind: 'number', shown: 'number', from: 0, to: 1e12, step: 0.01, slideTo: null, start: null } as const;
const text = { kind: 'text', start: '' } as const;
const bands = [
  'priorLow',
  'priorHigh',
  'sensitivityLow',
  'sensitivityHigh',
  'specificityLow',
  'specificityHigh',
] as const;

/** The fields that hold a laboratory's own limits: what is kept for the next report of the same laboratory. */
export const limitFields = ['laboratory', 'method', 'material', 'unit', 'statedOn', 'source', 'classes'] as const;

/** What does this laboratory number mean? */
export const laboratoryNumber = question({
  id: 'laboratory-number',
  fields: {
    report: { kind: 'choice', options: reports, start: 'load' },
    load,
    lower: { ...load, optional: true },
    upper: { ...load, optional: true },
    unit: { kind: 'choice', options: units, start: null },
    laboratory: text,
    method: text,
    material: text,
    statedOn: { kind: 'day', start: '' },
    source: text,
    classes: { kind: 'lines', start: '' },
    priorLow: askedShare,
    priorHigh: askedShare,
    sensitivityLow: askedShare,
    sensitivityHigh: askedShare,
    specificityLow: askedShare,
    specificityHigh: askedShare,
  },
  inSight: ({ report }) =>
    report === 'load' ? ['report', 'load', 'lower', 'upper', ...limitFields] : ['report', ...bands],
  answer(stated) {
    if (stated.report !== 'load') return ofResult(stated.report, stated);
    const { load, lower, upper, unit, method, material } = stated;
    const takes = [
      'laboratory-number.takes.own-limits',
      'laboratory-number.takes.no-proof',
      'laboratory-number.takes.no-conversion',
    ];
    const sources = ['STE20'] as const;
    const asks = unstated({ load, unit, material, method });
    if (load === null || unit === null || asks.length > 0) return answered({ asks, takes, sources });
    if ((lower !== null && lower > load) || (upper !== null && upper < load)) {
      return answered({ refuses: say('laboratory-number.refuses.around'), takes, sources });
    }
    const stored = {
      laboratory: stated.laboratory,
      statedOn: stated.statedOn,
      source: stated.source,
      classes: stated.classes,
    };
    const missing = unstated(stored);
    // Nothing said of limits: then there are none. Half of them: the rest is asked for, never filled in.
    const none = missing.length === Object.keys(stored).length;
    if (!none && missing.length > 0) return answered({ asks: missing, takes, sources });
    const classes = none ? [] : readClasses(stated.classes);
    if (classes === null) return answered({ refuses: say('laboratory-number.refuses.classes'), takes, sources });
    const limits: LaboratoryLimits | null = none ? null : { ...stored, method, material, unit, classes };
    const values = { load: { number: load, decimals: 2 }, unit: { word: `laboratory-number.unit.${unit}` }, material };
    const figure: Figure = {
      kind: 'bands',
      x: { label: `laboratory-number.x.${unit}`, shown: 'number' },
      from: 0,
      to: null,
      scale: 'logarithmic from zero',
      rows: [
        { label: say('laboratory-number.row.load'), low: lower ?? load, value: load, high: upper ?? load },
        ...classes.map((one, i) => ({
          label: say('laboratory-number.row.class', { name: one.name }),
          low: one.from,
          value: null,
          high: classes[i + 1]?.from ?? null,
        })),
      ],
    };
    try {
      const found = meaningOfLoad({ load, lower, upper, unit, material, method, limits });
      const last = say('laboratory-number.says.no-proof');
      if (found.outcome === 'no limits stored') {
        return answered({ said: [say('laboratory-number.says.no-limits', values), last], figure, takes, sources });
      }
      const from = { laboratory: stated.laboratory, day: { day: stated.statedOn }, source: stated.source };
      return answered({
        said: [
          found.outcome === 'classed'
            ? say('laboratory-number.says.classed', {
                ...values,
                name: found.className ?? '',
                laboratory: stated.laboratory,
              })
            : say('laboratory-number.says.not-certain', {
                ...values,
                names: found.possibleClasses.join(', '),
                laboratory: stated.laboratory,
              }),
          say('laboratory-number.says.from', from),
          last,
        ],
        figure,
        takes,
        sources,
      });
    } catch (failure) {
      if (!(failure instanceof DomainError)) throw failure;
      return answered({ refuses: say('laboratory-number.refuses.classes'), takes, sources });
    }
  },
});

/** One class a line: the smallest load in it, then its name. Null when a line reads otherwise. */
export function readClasses(lines: string): LoadClass[] | null {
  const classes: LoadClass[] = [];
  for (const line of lines
    .split('\n')
    .map((one) => one.trim())
    .filter(Boolean)) {
    const parts = /^(\d+(?:[.,]\d+)?)\s+(\S.*)$/.exec(line);
    if (!parts) return null;
    const [, from, name] = parts as unknown as [string, string, string];
    classes.push({ from: Number(from.replace(',', '.')), name });
  }
  return classes.length === 0 ? null : classes;
}

function ofResult(
  result: 'positive' | 'negative',
  stated: Readonly<Record<(typeof bands)[number], number | null>>,
): Answer {
  const takes = ['laboratory-number.takes.bands', 'laboratory-number.takes.no-proof'];
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
