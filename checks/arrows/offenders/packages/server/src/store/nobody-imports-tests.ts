import { door } from './sealing.test.ts';

export const offence = door;
