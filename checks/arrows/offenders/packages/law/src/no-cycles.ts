import { there } from './round-again.ts';

export const here = () => there();
