export const offence = (at: { toLocaleDateString(): string }) => at.toLocaleDateString();
