import { z } from 'zod';

/** `GET /api/districts`: the districts granted to whoever asks, with what stands in each. */
export const districts = z.object({
  districts: z.array(
    z.object({
      district: z.string(),
      /** True for the demo: an invented place. */
      invented: z.boolean(),
      apiaries: z.int(),
      colonies: z.int(),
      visits: z.int(),
    }),
  ),
});
export type Districts = z.infer<typeof districts>;
