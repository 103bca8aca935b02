import { door } from '@combside/record/nowhere';

export const offence = door;
