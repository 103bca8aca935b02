export const offence = new Intl.DateTimeFormat('de', { dateStyle: 'long' }).format(0);
