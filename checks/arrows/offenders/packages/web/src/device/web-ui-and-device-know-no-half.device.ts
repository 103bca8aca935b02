import { door } from '../district/door.ts';

export const offence = door;
