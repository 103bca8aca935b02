import { door } from '../examine/door.ts';

export const offence = door;
