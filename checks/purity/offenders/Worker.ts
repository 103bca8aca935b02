export const offence = Worker;
