export const offence = Atomics;
