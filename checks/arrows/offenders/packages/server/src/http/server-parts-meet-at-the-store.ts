import { door } from '../accounts/door.ts';

export const offence = door;
