import { door as sampling } from '../sampling/door.ts';
import { door as draws } from '../random/door.ts';

export const fine = [sampling, draws];
