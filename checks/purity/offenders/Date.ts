export const offence = new Date(0);
