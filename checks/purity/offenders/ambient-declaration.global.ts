declare global {
  const somewhere: number;
}

export const offence = 1;
