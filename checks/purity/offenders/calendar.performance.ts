export const offence = () => performance.now();
