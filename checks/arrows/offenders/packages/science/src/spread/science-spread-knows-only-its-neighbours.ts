import { door } from '../signs/door.ts';

export const offence = door;
