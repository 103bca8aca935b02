export const offence = new Intl.NumberFormat().format(1);
