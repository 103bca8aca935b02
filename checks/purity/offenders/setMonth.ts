export const offence = (at: { setMonth(value: number): number }) => at.setMonth(4);
