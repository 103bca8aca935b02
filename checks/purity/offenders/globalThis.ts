export const offence = globalThis;
