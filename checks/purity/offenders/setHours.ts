export const offence = (at: { setHours(value: number): number }) => at.setHours(0);
