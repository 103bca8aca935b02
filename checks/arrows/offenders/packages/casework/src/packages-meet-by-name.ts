import { door } from '../../science/src/sampling/door.ts';

export const offence = door;
