export const offence = (at: { setMinutes(value: number): number }) => at.setMinutes(0);
