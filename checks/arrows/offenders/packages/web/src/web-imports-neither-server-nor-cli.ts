import { door } from '@combside/server/door';

export const offence = door;
