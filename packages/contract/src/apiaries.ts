import { calendarDate, identifier } from '@combside/record/entry';
import { z } from 'zod';

/** Query of `GET /api/apiaries`. Without a district: all that are granted. */
export const apiariesAsked = z.strictObject({
  district: z.string().max(80).optional(),
  /** Any part of the name, the address words, or the keeper's name or number. */
  search: z.string().max(200).optional(),
  /** west,south,east,north in degrees; west > east crosses the 180th meridian. */
  box: z
    .string()
    .regex(/^-?\d+(\.\d+)?(,-?\d+(\.\d+)?){3}$/, 'expected west,south,east,north in degrees')
    .optional(),
  limit: z.coerce.number().int().min(1).max(500).default(50),
  /** `next` of the page before. */
  after: z.string().max(400).optional(),
});
export type ApiariesAsked = z.infer<typeof apiariesAsked>;

export const apiaryLine = z.object({
  apiary: identifier,
  name: z.string(),
  number: z.string().nullable(),
  district: z.string(),
  keeper: identifier.nullable(),
  keeperName: z.string().nullable(),
  latitude: z.number().nullable(),
  longitude: z.number().nullable(),
  uncertaintyMetres: z.number().nullable(),
  lastConfirmedOn: calendarDate.nullable(),
  coloniesRegistered: z.int().nullable(),
  /** The gravest of the words last stated about its colonies; null where none was looked at. */
  mark: z.string().nullable(),
});
export type ApiaryLine = z.infer<typeof apiaryLine>;

/** Apiaries by name. `next` is null on the last page. */
export const apiaries = z.object({ apiaries: z.array(apiaryLine), next: z.string().nullable() });
export type Apiaries = z.infer<typeof apiaries>;
