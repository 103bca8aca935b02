export const offence = (at: { setDate(value: number): number }) => at.setDate(4);
