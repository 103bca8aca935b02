declare const clock: { now(): number };

export const offence = clock.now();
