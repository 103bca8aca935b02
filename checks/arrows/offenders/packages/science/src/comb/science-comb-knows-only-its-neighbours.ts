import { door } from '../diagnosis/door.ts';

export const offence = door;
