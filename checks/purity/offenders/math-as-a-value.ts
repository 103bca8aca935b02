const { random } = Math;

export const offence = random();
