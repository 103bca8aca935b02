export const offence = global;
