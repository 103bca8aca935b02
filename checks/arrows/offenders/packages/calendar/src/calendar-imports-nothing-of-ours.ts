import { door } from '@combside/sources/door';

export const offence = door;
