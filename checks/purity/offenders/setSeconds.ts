export const offence = (at: { setSeconds(value: number): number }) => at.setSeconds(0);
