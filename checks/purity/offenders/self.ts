export const offence = self;
