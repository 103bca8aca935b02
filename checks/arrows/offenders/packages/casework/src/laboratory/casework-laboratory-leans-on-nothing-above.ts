import { door } from '../plan/door.ts';

export const offence = door;
