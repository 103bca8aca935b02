import { door } from '../draft/door.ts';

export const offence = door;
