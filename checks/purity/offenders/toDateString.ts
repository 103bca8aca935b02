export const offence = (at: { toDateString(): string }) => at.toDateString();
