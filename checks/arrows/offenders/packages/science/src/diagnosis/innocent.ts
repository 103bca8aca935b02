import { door as signs } from '../signs/door.ts';
import { door as brood } from '../brood/door.ts';
import { door as laws } from '../distributions/door.ts';
import { door as sources } from '@combside/sources/door';

export const fine = [signs, brood, laws, sources];
