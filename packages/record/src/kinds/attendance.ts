import { z } from 'zod';
import type { Kind } from './kind.ts';

/** Who was present at a visit. Names are personal data, so they stand apart from the visit itself. */
export const attendanceBody = z.strictObject({
  people: z.array(z.strictObject({ name: z.string().min(1).max(200), role: z.string().min(1).max(60) })).max(30),
});
export type AttendanceBody = z.infer<typeof attendanceBody>;

export const attendance: Kind<AttendanceBody> = {
  kind: 'attendance',
  version: 1,
  about: ['visit'],
  erasable: true,
  body: attendanceBody,
  writer: 'anyone',
  fold: { as: 'register', into: 'attendance' },
  steps: [],
};
