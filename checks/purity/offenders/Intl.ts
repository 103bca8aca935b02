export const offence = new Intl.NumberFormat('en').format(1);
