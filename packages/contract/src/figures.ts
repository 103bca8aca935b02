import { calendarDate, identifier, instant } from '@combside/record/entry';
import { z } from 'zod';

const period = {
  district: z.string().max(80).optional(),
  /** Both included, as days in UTC. */
  from: z.iso.date(),
  to: z.iso.date(),
};

/** Query of `GET /api/figures`. Without a district: all that are granted. */
export const figuresAsked = z.strictObject(period);
export type FiguresAsked = z.infer<typeof figuresAsked>;

/** One number: a count, or a count out of another with its 95 % interval. */
export const figureLine = z.object({
  /** Which number it is, in parts: `prevalence`, `american-foulbrood`, `full`. */
  id: z.array(z.string()),
  count: z.int(),
  of: z.int().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
});
export type FigureLine = z.infer<typeof figureLine>;

export const figures = z.object({
  figures: z.array(figureLine),
  from: calendarDate,
  to: calendarDate,
  /** When it was counted: the same record gives the same numbers. */
  countedAt: instant,
  position: z.int(),
});
export type Figures = z.infer<typeof figures>;

/** Query of `GET /api/figures/records`: the examinations behind one number. `figure` is its id, joined by `|`. */
export const figureRecordsAsked = z.strictObject({ ...period, figure: z.string().max(200) });
export type FigureRecordsAsked = z.infer<typeof figureRecordsAsked>;

export const figureRecord = z.object({
  examination: identifier,
  colony: identifier,
  colonyLabel: z.string().nullable(),
  visit: identifier,
  apiary: identifier,
  apiaryName: z.string().nullable(),
  observedAt: instant.nullable(),
  depth: z.string(),
  hiveState: z.string(),
  reason: z.string().nullable(),
  result: z.string().nullable(),
  suspected: z.array(z.string()),
  basis: z.string().nullable(),
});
export type FigureRecord = z.infer<typeof figureRecord>;

/** At most 5,000 of `count` records, oldest first. */
export const figureRecords = z.object({ records: z.array(figureRecord), count: z.int() });
export type FigureRecords = z.infer<typeof figureRecords>;
