import { door } from '@combside/words/door';

export const offence = door;
