export const offence = { performance };
