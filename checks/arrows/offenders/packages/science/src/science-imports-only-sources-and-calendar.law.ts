import { door } from '@combside/law/door';

export const offence = door;
