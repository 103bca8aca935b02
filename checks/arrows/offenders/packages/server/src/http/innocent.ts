import { door } from '../store/door.ts';

export const fine = door;
