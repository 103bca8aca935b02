import { door } from '../demo/door.ts';

export const offence = door;
