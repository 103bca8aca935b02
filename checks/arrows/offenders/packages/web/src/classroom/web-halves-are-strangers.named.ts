import { door } from '@combside/web/hive/door';

export const offence = door;
