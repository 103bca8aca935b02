import { here } from './no-cycles.ts';

export const there = (): unknown => here();
