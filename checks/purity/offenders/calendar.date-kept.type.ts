export const offence = (at: Date) => at.getTime();
