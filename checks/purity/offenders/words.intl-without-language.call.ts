export const offence = Intl.NumberFormat('en').format(1);
