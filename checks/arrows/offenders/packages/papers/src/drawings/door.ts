import { door as sources } from '@combside/sources/door';

export const door = sources;
