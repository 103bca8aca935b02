import { door } from '@combside/server/store/door';

export const offence = door;
