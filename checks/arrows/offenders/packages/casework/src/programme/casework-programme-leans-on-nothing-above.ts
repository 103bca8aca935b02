import { door } from '../assess/door.ts';

export const offence = door;
