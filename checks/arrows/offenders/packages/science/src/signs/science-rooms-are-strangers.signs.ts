import { door } from '../brood/door.ts';

export const offence = door;
