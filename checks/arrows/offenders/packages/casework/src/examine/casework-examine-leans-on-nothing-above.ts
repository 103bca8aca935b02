import { door } from '../report/door.ts';

export const offence = door;
