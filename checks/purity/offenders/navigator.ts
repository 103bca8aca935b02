export const offence = navigator.language;
