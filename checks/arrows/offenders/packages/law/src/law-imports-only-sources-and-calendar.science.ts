import { door } from '@combside/science/door';

export const offence = door;
