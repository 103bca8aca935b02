import { z } from 'zod';
import { calendarDate, identifier } from '../entry.ts';
import type { Kind } from './kind.ts';

/** A point on the site plan, in metres east and north of the plan's origin. */
const planPoint = z.strictObject({ east: z.number(), north: z.number() });

/** Where the bees stand: position with its uncertainty, the way there in words, and a plan of the hives. */
export const apiaryBody = z.strictObject({
  name: z.string().min(1).max(200),
  /** Its number in the official register of sites, where there is one. */
  number: z.string().max(60).nullable(),
  /** Null for a site found at the roadside whose keeper is not known yet. */
  keeper: identifier.nullable(),
  district: z.string().min(1).max(80),
  position: z
    .strictObject({
      /** WGS 84, degrees. */
      latitude: z.number().min(-90).max(90),
      longitude: z.number().min(-180).max(180),
      uncertaintyMetres: z.number().positive(),
      how: z.enum(['measured on site', 'from a map', 'from an address', 'told by the keeper', 'imported']),
    })
    .nullable(),
  addressWords: z.string().max(500),
  lastConfirmedOn: calendarDate.nullable(),
  coloniesRegistered: z.int().min(0).nullable(),
  plan: z
    .strictObject({
      hives: z.array(z.strictObject({ colony: identifier, at: planPoint })),
      gate: planPoint.nullable(),
      track: z.array(planPoint),
      /** Colonies in the order in which one walks past them. */
      walk: z.array(identifier),
    })
    .nullable(),
});
export type ApiaryBody = z.infer<typeof apiaryBody>;

export const apiary: Kind<ApiaryBody> = {
  kind: 'apiary',
  version: 2,
  about: ['apiary'],
  erasable: false,
  body: apiaryBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'apiary' },
  steps: [{ name: 'a site may have a number of its own', lift: (body) => ({ ...(body as ApiaryBody), number: null }) }],
};
