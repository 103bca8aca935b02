import { door } from '../sampling/door.ts';

export const offence = door;
