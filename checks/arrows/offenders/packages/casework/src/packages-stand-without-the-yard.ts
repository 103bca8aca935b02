import { door } from '../../../checks/door.ts';

export const offence = door;
