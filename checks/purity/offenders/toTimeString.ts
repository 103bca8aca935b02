export const offence = (at: { toTimeString(): string }) => at.toTimeString();
