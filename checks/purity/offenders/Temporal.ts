export const offence = Temporal.Now.instant();
