import { door } from '@combside/contract/door';

export const offence = door;
