import { door } from '../hive/door.ts';

export const offence = door;
