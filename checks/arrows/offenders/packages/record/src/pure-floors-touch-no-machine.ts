import { readFileSync } from 'node:fs';

export const offence = readFileSync;
