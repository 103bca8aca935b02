export const offence = new Function('return 1');
