import { door as http } from './http/door.ts';
import { door as store } from './store/door.ts';

export const door = http + store;
