import { door } from '../register/door.ts';

export const offence = door;
