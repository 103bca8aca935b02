import { door } from '../tracing/door.ts';

export const offence = door;
