export const offence = (at: { setFullYear(value: number): number }) => at.setFullYear(2026);
