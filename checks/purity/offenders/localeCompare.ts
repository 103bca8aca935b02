export const offence = ['b', 'a'].sort((a, b) => a.localeCompare(b));
