export const offence = (at: { toLocaleTimeString(): string }) => at.toLocaleTimeString();
