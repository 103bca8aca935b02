export const offence = Date();
