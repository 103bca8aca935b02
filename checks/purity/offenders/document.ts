export const offence = document.title;
