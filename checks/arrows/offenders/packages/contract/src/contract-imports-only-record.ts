import { door } from '@combside/casework/door';

export const offence = door;
