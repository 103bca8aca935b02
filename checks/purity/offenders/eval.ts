export const offence = eval('1');
