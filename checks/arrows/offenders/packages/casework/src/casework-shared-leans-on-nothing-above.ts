import { door } from './result/door.ts';

export const offence = door;
