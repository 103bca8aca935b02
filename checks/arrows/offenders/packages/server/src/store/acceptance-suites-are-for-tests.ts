import { door } from '@combside/record/acceptance/store-acceptance';

export const offence = door;
