export const offence = (at: number) => new Intl.DateTimeFormat('de', { timeZone: 'UTC' }).format(at);
