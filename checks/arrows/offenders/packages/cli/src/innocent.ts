import { door as start } from '@combside/server/start';
import { door as papers } from '@combside/papers/door';

export const fine = [start, papers];
