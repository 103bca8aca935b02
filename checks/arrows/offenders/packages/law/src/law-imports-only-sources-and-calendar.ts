import { door } from '@combside/record/door';

export const offence = door;
