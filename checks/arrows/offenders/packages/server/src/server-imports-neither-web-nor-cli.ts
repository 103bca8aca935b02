import { door } from '@combside/web/door';

export const offence = door;
