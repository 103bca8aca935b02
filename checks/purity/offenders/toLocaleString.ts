export const offence = (1.5).toLocaleString();
