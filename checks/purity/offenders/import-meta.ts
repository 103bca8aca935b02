export const offence = import.meta;
