export const offence = crypto.randomUUID();
