import { door } from '@combside/papers/door';

export const offence = door;
