export const offence = (at: { getYear(): number }) => at.getYear();
