export const offence = (at: number) => new Date(at);
