export const offence = Reflect.ownKeys({});
