import { door } from '../laboratory/door.ts';

export const offence = door;
