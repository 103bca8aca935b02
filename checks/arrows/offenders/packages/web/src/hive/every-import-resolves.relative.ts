import { door } from './nowhere.ts';

export const offence = door;
