import { door } from '../comb/door.ts';

export const offence = door;
