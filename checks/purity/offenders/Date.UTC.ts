export const offence = Date.UTC(2026, 4, 4);
