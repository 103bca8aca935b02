export const offence = window.name;
