/** The languages Combside speaks. English is the reference; every other catalogue is checked against it by type. */
export const languages = ['en', 'de'] as const;

export type Language = (typeof languages)[number];

/** The first of the wished languages (BCP 47 tags such as `de-AT`, best first) that we speak; English when none is. */
export function chooseLanguage(wished: readonly string[]): Language {
  for (const tag of wished) {
    const primary = tag.toLowerCase().split('-')[0];
    const spoken = languages.find((language) => language === primary);
    if (spoken) return spoken;
  }
  return 'en';
}
