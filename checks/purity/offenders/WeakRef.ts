export const offence = new WeakRef({});
