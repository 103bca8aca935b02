import { readFileSync } from 'node:fs';
import stranger from 'stranger';

export const fine = [readFileSync, stranger];
