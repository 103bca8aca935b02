import type { Door } from '@combside/science/sampling/door';

export type Offence = Door;
