import type { Tap } from '../draft/tap.ts';
import type { Closing } from '../examine/closing.ts';
import { type Conditions, calmConditions } from '../examine/start-visit.ts';

/** One step of the main journey, as an inspector makes it. Labels are those of the apiary of the journey. */
export type WalkStep =
  | {
      readonly step: 'start';
      readonly conditions: Conditions;
      readonly coloniesCounted: number;
      readonly answers: Readonly<Record<string, string>>;
    }
  | {
      readonly step: 'colony';
      readonly label: string;
      readonly taps: readonly Tap[];
      readonly closing: Closing;
      readonly suspected: readonly string[];
    }
  | { readonly step: 'clean down'; readonly after: string | null }
  | { readonly step: 'end' };

const nothingSeen = (label: string): WalkStep => ({
  step: 'colony',
  label,
  taps: [],
  closing: 'nothing seen',
  suspected: [],
});

/**
 * The main journey: six colonies, of which one is truly suspect (American foulbrood, advanced) and one is a dead hive
 * with scale. Suspect ones come last, as the walk of an inspector would have it.
 */
export const walkthrough: readonly WalkStep[] = [
  {
    step: 'start',
    conditions: { ...calmConditions, temperatureCelsius: 19 },
    coloniesCounted: 6,
    answers: {},
  },
  nothingSeen('1'),
  nothingSeen('2'),
  nothingSeen('3'),
  nothingSeen('5'),
  {
    step: 'colony',
    label: '4',
    taps: [
      { tap: 'everything looked at' },
      { tap: 'light', light: 'sun over the shoulder' },
      { tap: 'hold', hold: 'top bar toward the viewer' },
      { tap: 'sealed brood', combSides: 5.5 },
      { tap: 'sign', sign: 'odour.glue', outcome: 'seen' },
      { tap: 'sign amount', sign: 'odour.glue', amount: 'slight' },
      { tap: 'sign', sign: 'pattern.spotty', outcome: 'seen' },
      { tap: 'sign amount', sign: 'pattern.spotty', amount: 'marked' },
      { tap: 'sign', sign: 'cap.sunken', outcome: 'seen' },
      { tap: 'sign count', sign: 'cap.sunken', count: '11-100' },
      { tap: 'sign', sign: 'cap.perforated', outcome: 'seen' },
      { tap: 'sign count', sign: 'cap.perforated', count: '11-100' },
      { tap: 'sign', sign: 'col.coffee', outcome: 'seen' },
      {
        tap: 'cells at',
        sign: 'col.coffee',
        place: { box: 'lower', frame: 4, side: 'a' },
        cellsOpened: 12,
        cellsAffected: 9,
      },
      {
        tap: 'cells at',
        sign: 'col.coffee',
        place: { box: 'lower', frame: 5, side: 'b' },
        cellsOpened: 10,
        cellsAffected: 4,
      },
      { tap: 'sign', sign: 'scale.hard_lower', outcome: 'seen' },
      { tap: 'sign count', sign: 'scale.hard_lower', count: '11-100' },
      { tap: 'sign', sign: 'con.mummy_loose', outcome: 'not seen' },
      {
        tap: 'rope test',
        test: {
          box: 'lower',
          frame: 4,
          side: 'a',
          tissue: 'moist brown',
          stick: 'rough and dry',
          threadMillimetres: 25,
          snapsBack: true,
          colour: 'coffee',
        },
      },
      { tap: 'medicines', answer: { asked: true, answer: 'none', lastOn: null, what: '' } },
      { tap: 'find', find: 'varroa', outcome: 'seen', amount: 'slight' },
    ],
    closing: 'signs seen',
    suspected: ['american-foulbrood'],
  },
  { step: 'clean down', after: '4' },
  {
    step: 'colony',
    label: '6',
    taps: [
      { tap: 'hive state', state: 'dead' },
      { tap: 'everything looked at' },
      { tap: 'light', light: 'torch' },
      { tap: 'sign', sign: 'scale.hard_lower', outcome: 'seen' },
      { tap: 'sign count', sign: 'scale.hard_lower', count: 'over 100' },
      { tap: 'sign', sign: 'moth', outcome: 'not seen' },
    ],
    closing: 'signs seen',
    suspected: [],
  },
  { step: 'clean down', after: '6' },
  { step: 'clean down', after: null },
  { step: 'end' },
];
