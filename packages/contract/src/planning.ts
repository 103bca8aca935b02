import { calendarDate, identifier, instant } from '@combside/record/entry';
import { z } from 'zod';
import { apiaryLine } from './apiaries.ts';

/** Query of `GET /api/planning`: apiaries by how much speaks for a visit. Without a district: all that are granted. */
export const planningAsked = z.strictObject({
  district: z.string().max(80).optional(),
  /** Points of each ground, in the order of casework, with commas; the usual ones when left out. */
  weights: z
    .string()
    .regex(/^\d+(\.\d+)?(,\d+(\.\d+)?){0,19}$/, 'expected numbers with commas')
    .optional(),
  /** Id of the rule of how many colonies to open. */
  rule: z.string().max(60).optional(),
  /** Sensitivity of one full look, 0 to 1. */
  sensitivity: z.coerce.number().min(0).max(1).optional(),
  limit: z.coerce.number().int().min(1).max(500).default(100),
});
export type PlanningAsked = z.infer<typeof planningAsked>;

export const groundLine = z.object({
  ground: z.string(),
  /** How far it holds, 0 to 1, and what it adds. */
  held: z.number(),
  points: z.number(),
  from: identifier.nullable(),
  fromName: z.string().nullable(),
  metres: z.number().nullable(),
  days: z.int().nullable(),
});
export type GroundLine = z.infer<typeof groundLine>;

export const rankedLine = z.object({
  ...apiaryLine.shape,
  points: z.number(),
  grounds: z.array(groundLine),
  lastVisitedOn: calendarDate.nullable(),
  /** Hives that stand there, or as registered where none is known one by one. */
  colonies: z.int(),
  suspect: z.boolean(),
  toOpen: z.int(),
  /** Chance to find the disease when one colony has it; null where none stands. */
  chance: z.number().nullable(),
  /** Visits with a day that are not made yet. */
  planned: z.array(
    z.object({ visit: identifier, inspectorName: z.string().nullable(), plannedFor: instant, reason: z.string() }),
  ),
  /** What was asked for and has no day. */
  asked: z.array(z.object({ visit: identifier, reason: z.string() })),
});
export type RankedLine = z.infer<typeof rankedLine>;

export const planning = z.object({
  apiaries: z.array(rankedLine),
  /** How many were ranked. */
  ranked: z.int(),
  today: calendarDate,
  position: z.int(),
});
export type Planning = z.infer<typeof planning>;
