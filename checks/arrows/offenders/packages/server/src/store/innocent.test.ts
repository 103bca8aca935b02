import { door } from '@combside/record/acceptance/store-acceptance';
import { readFileSync } from 'node:fs';

export const fine = [door, readFileSync];
