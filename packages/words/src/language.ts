/** The languages Combside speaks. English is the reference; every other catalogue is checked against it by type. */
export const languages = ['en', 'de'] as const;

export type Language = (typeof languages)[number];
