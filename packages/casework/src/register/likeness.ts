/**
 * A text as it is compared: small letters without accents (ä, ö, ü as a, o, u; ß as ss), every other sign a blank,
 * blanks single. "Straße 7,  Müllers-Hof" becomes "strasse 7 mullers hof".
 */
export function likenessKey(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('ø', 'o')
    .replaceAll('æ', 'ae')
    .replaceAll('ł', 'l')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** A number of a register as it is compared: letters and digits only, capitals, no leading zeros. Empty when it holds none. */
export function numberKey(number: string): string {
  return number
    .normalize('NFKD')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]+/gu, '')
    .replace(/^0+(?=.)/, '');
}

/**
 * A telephone number as it is compared: its last nine digits, which leaves out country codes and the trunk zero. Null
 * for fewer than seven digits: too short to tell people apart.
 */
export function telephoneKey(telephone: string): string | null {
  const digits = telephone.replace(/\D+/g, '');
  return digits.length < 7 ? null : digits.slice(-9);
}

/**
 * How alike two texts are, from 0 (nothing in common) to 1 (the same): Jaro's measure with Winkler's weight for a common
 * beginning of up to four letters.
 * Source: Winkler (1990), String Comparator Metrics and Enhanced Decision Rules, Proceedings of the Section on Survey
 * Research Methods, American Statistical Association (from memory).
 */
export function likeness(left: string, right: string): number {
  if (left === right) return left === '' ? 0 : 1;
  const a = [...left];
  const b = [...right];
  if (a.length === 0 || b.length === 0) return 0;
  const reach = Math.max(0, Math.floor(Math.max(a.length, b.length) / 2) - 1);
  const taken = new Array<boolean>(b.length).fill(false);
  const inA: string[] = [];
  a.forEach((letter, at) => {
    for (let other = Math.max(0, at - reach); other <= Math.min(b.length - 1, at + reach); other++) {
      if (taken[other] || b[other] !== letter) continue;
      taken[other] = true;
      inA.push(letter);
      return;
    }
  });
  const inB = b.filter((_, at) => taken[at]);
  const common = inA.length;
  if (common === 0) return 0;
  const swapped = inA.filter((letter, at) => letter !== inB[at]).length / 2;
  const jaro = (common / a.length + common / b.length + (common - swapped) / common) / 3;
  let beginning = 0;
  while (beginning < 4 && beginning < a.length && a[beginning] === b[beginning]) beginning += 1;
  return jaro + beginning * 0.1 * (1 - jaro);
}

/** The words of a name in alphabetical order, so that "Bell, Ann" and "Ann Bell" are the same. */
export function nameKey(name: string): string {
  return likenessKey(name).split(' ').sort().join(' ');
}
