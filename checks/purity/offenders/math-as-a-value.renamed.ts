const M = Math;

export const offence = M.random();
