export const offence = (year: number) => new Date(year, 0, 1).toISOString();
