export const ordinal = (day: string) => Date.parse(`${day}T00:00:00.000Z`) / 86_400_000;
export const day = (ordinal: number) => new Date(ordinal * 86_400_000).toISOString().slice(0, 10);
export const length = (year: number, month: number) => new Date(Date.UTC(year, month, 0)).getUTCDate();
