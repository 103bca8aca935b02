export const offence = () => Date.now();
