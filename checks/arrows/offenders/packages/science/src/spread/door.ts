export type Door = number;
export const door = 1;
