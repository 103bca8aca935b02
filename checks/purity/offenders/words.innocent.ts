export function innocent(language: string, zone: string, options: Intl.NumberFormatOptions): string {
  const day = new Intl.DateTimeFormat(language, { timeZone: zone, dateStyle: 'long' }).format(0);
  return day + new Intl.NumberFormat(language, options).format(1);
}

export const midnight = (year: number) => new Date(Date.UTC(year, 0, 1)).toISOString();
