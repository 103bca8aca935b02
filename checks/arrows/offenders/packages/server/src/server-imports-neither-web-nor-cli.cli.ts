import { door } from '@combside/cli/door';

export const offence = door;
