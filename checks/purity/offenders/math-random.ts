export const offence = Math.random();
