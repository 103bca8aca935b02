import { door } from '../examine/door.ts';

export const allowed = door;
