export const offence = 'i'.toLocaleUpperCase();
