export const offence = new Date();
