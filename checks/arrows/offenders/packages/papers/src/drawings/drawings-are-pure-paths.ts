import { door } from '../door.ts';

export const offence = door;
