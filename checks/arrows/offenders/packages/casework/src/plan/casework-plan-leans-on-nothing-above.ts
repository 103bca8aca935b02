import { door } from '../programme/door.ts';

export const offence = door;
