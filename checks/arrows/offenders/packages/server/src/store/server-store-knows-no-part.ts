import { door } from '../http/door.ts';

export const offence = door;
