export const offence = new Date().toISOString();
