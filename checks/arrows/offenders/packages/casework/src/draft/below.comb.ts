import { door } from '../comb/door.ts';

export const allowed = door;
