export const offence = new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 }).format(1);
