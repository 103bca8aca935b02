import type { Language } from './language.ts';

/** A moment: milliseconds since 1970-01-01T00:00Z, or an ISO 8601 text that carries its own offset (`...Z`, `...+02:00`). */
export type Instant = number | string;

/** The units people read in Combside, each with the name Intl knows it by (CLDR). */
const unitNames = {
  mm: 'millimeter',
  cm: 'centimeter',
  m: 'meter',
  km: 'kilometer',
  g: 'gram',
  kg: 'kilogram',
  ml: 'milliliter',
  l: 'liter',
  min: 'minute',
  hour: 'hour',
  day: 'day',
  week: 'week',
  year: 'year',
  '°C': 'celsius',
  hectare: 'hectare',
  percent: 'percent',
} as const;

export type UnitOfMeasure = keyof typeof unitNames;

/** How a language writes numbers, units, days and hours. The same for every room, so it is made once per language. */
export interface Formats {
  /** A number with its separators. At most `decimals` places (default 2), or exactly so many with `exact`. */
  number(value: number, decimals?: number, exact?: 'exact'): string;
  /** A number with its unit: "12 mm". `long` writes it out: "12 millimetres". */
  unit(value: number, unit: UnitOfMeasure, width?: 'short' | 'long'): string;
  /** A share from 0 to 1 as per cent. */
  share(value: number, decimals?: number): string;
  /** A calendar day given as `YYYY-MM-DD`: "14 May 2026". A calendar day has no time zone. */
  day(day: string, width?: 'short' | 'long' | 'weekday'): string;
  /** The calendar day of a moment, in the given IANA time zone. */
  dayOf(instant: Instant, timeZone: string, width?: 'short' | 'long' | 'weekday'): string;
  /** The clock time of a moment, in the given IANA time zone, on the 24-hour clock: "10:42". */
  clockTime(instant: Instant, timeZone: string): string;
  /** Day and clock time of a moment, in the given IANA time zone. */
  dayAndTime(instant: Instant, timeZone: string): string;
  /** Several things in a row: "smell, pattern and cappings". */
  list(items: readonly string[], joined?: 'and' | 'or'): string;
  /** Which plural form a number takes. */
  pluralCategory(value: number, kind: 'cardinal' | 'ordinal'): Intl.LDMLPluralRule;
}

// British English: day before month, 24-hour clock, metre. Plain German of Germany.
const tags: Record<Language, string> = { en: 'en-GB', de: 'de-DE' };

const dayWidths = {
  short: { day: '2-digit', month: '2-digit', year: 'numeric' },
  long: { day: 'numeric', month: 'long', year: 'numeric' },
  weekday: { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

/**
 * The formats of one language. Every formatter is given its language, and every moment its time zone: nothing is
 * taken from the machine.
 */
export function createFormats(language: Language): Formats {
  const tag = tags[language];
  const kept = new Map<string, unknown>();
  // Making an Intl formatter costs far more than using it.
  const keep = <T>(key: string, make: () => T): T => {
    const found = kept.get(key);
    if (found !== undefined) return found as T;
    const made = make();
    kept.set(key, made);
    return made;
  };

  const moment = (instant: Instant, timeZone: string, options: Intl.DateTimeFormatOptions): string => {
    const at = readInstant(instant);
    const key = `moment ${timeZone} ${JSON.stringify(options)}`;
    return keep(key, () => new Intl.DateTimeFormat(tag, { ...options, timeZone, calendar: 'gregory' })).format(at);
  };

  const formats: Formats = {
    number(value, decimals = 2, exact) {
      const options = { maximumFractionDigits: decimals, minimumFractionDigits: exact ? decimals : 0 };
      return keep(`number ${decimals} ${exact}`, () => new Intl.NumberFormat(tag, options)).format(finite(value));
    },
    unit(value, unit, width = 'short') {
      const options = { style: 'unit', unit: unitNames[unit], unitDisplay: width, maximumFractionDigits: 2 } as const;
      const text = keep(`unit ${unit} ${width}`, () => new Intl.NumberFormat(tag, options)).format(finite(value));
      // A number never stands at the end of a line with its unit on the next.
      return text.replace(' ', '\u00a0');
    },
    share(value, decimals = 0) {
      const options = { style: 'percent', maximumFractionDigits: decimals } as const;
      return keep(`share ${decimals}`, () => new Intl.NumberFormat(tag, options)).format(finite(value));
    },
    day(day, width = 'long') {
      const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
      const at = parts ? Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) : Number.NaN;
      // Date.UTC rolls 31 February over into March; reading it back shows that.
      if (!Number.isFinite(at) || new Date(at).toISOString().slice(0, 10) !== day) {
        throw new RangeError(`"${day}" is not a calendar day; write YYYY-MM-DD`);
      }
      return moment(at, 'UTC', dayWidths[width]);
    },
    dayOf(instant, timeZone, width = 'long') {
      return moment(instant, timeZone, dayWidths[width]);
    },
    clockTime(instant, timeZone) {
      return moment(instant, timeZone, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
    },
    dayAndTime(instant, timeZone) {
      return `${formats.dayOf(instant, timeZone)}, ${formats.clockTime(instant, timeZone)}`;
    },
    list(items, joined = 'and') {
      const type = joined === 'and' ? 'conjunction' : 'disjunction';
      return keep(`list ${type}`, () => new Intl.ListFormat(tag, { type })).format(items);
    },
    pluralCategory(value, kind) {
      return keep(`plural ${kind}`, () => new Intl.PluralRules(tag, { type: kind })).select(finite(value));
    },
  };
  return formats;
}

function finite(value: number): number {
  if (!Number.isFinite(value))
    throw new RangeError(`${value} is not a number a person can read; check it before it is put into words`);
  return value;
}

function readInstant(instant: Instant): number {
  if (typeof instant === 'number') return finite(instant);
  // Without an offset a text means another moment on every machine, so it is refused.
  const at = /(Z|[+-]\d{2}:\d{2})$/.test(instant) ? Date.parse(instant) : Number.NaN;
  if (!Number.isFinite(at)) throw new RangeError(`"${instant}" is not a moment; write ISO 8601 with Z or an offset`);
  return at;
}
