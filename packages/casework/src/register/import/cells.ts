import { dayOn } from '@combside/calendar/day';

/**
 * A number as people write it: "1234.5", "1 234,5", "1.234,5", "1'234.5". Where a lone dot or comma could be either, it is
 * the decimal sign. Null when it is none.
 */
export function readNumber(text: string): number | null {
  const plain = text.replace(/[\s\u00a0\u202f'’]/g, '');
  if (!/^[+\-−]?[\d.,]+$/.test(plain)) return null;
  const sign = /^[-−]/.test(plain) ? -1 : 1;
  const digits = plain.replace(/^[+\-−]/, '');
  const lastDot = digits.lastIndexOf('.');
  const lastComma = digits.lastIndexOf(',');
  const decimal = lastDot > lastComma ? '.' : lastComma > -1 ? ',' : '';
  const thousands = decimal === '.' ? ',' : '.';
  const [whole = '', fraction, ...more] = decimal === '' ? [digits] : digits.split(decimal);
  if (more.length > 0) {
    // The same sign several times can only group thousands: 1.234.567
    return digits.includes(thousands) || !/^\d{1,3}([.,]\d{3})+$/.test(digits)
      ? null
      : sign * Number(digits.replace(/[.,]/g, ''));
  }
  const grouped = whole.includes(thousands);
  if (grouped && !new RegExp(`^\\d{1,3}(\\${thousands}\\d{3})+$`).test(whole)) return null;
  const ungrouped = whole.replaceAll(thousands, '');
  if (!/^\d*$/.test(ungrouped) || (fraction !== undefined && !/^\d*$/.test(fraction))) return null;
  if (ungrouped === '' && (fraction ?? '') === '') return null;
  return sign * Number(`${ungrouped || '0'}.${fraction || '0'}`);
}

/**
 * A coordinate in degrees: decimal, or degrees, minutes and seconds, with or without the letter of its hemisphere in
 * English or German (O for Ost). Null when it is none.
 */
export function readCoordinate(text: string, axis: 'latitude' | 'longitude'): number | null {
  const plain = text.trim().replace(/[′’]/g, "'").replace(/[″”“]/g, '"').replace(/''/g, '"').replace(/º/g, '°');
  const letters = axis === 'latitude' ? 'NS' : 'EOW';
  const split = new RegExp(`^([${letters}])?\\s*(.*?)\\s*([${letters}])?$`, 'i').exec(plain);
  const [, before, middle = '', after] = split ?? [];
  if (before && after) return null;
  const side = /[SW]/i.test(before ?? after ?? '') ? -1 : 1;
  const parts = /^([+\-−]?\d+)\s*[°\s]\s*(\d+(?:[.,]\d+)?)\s*(?:['\s]\s*(?:(\d+(?:[.,]\d+)?)\s*"?)?)?$/.exec(middle);
  if (parts) {
    const [degrees, minutes, seconds] = [parts[1], parts[2], parts[3] ?? '0'].map(
      (part) => readNumber(part ?? '') ?? 0,
    ) as [number, number, number];
    if (minutes >= 60 || seconds >= 60 || (degrees < 0 && side < 0)) return null;
    const size = Math.abs(degrees) + minutes / 60 + seconds / 3600;
    return (/^[-−]/.test(parts[1] ?? '') ? -1 : side) * size;
  }
  const value = readNumber(middle.replace(/°$/, ''));
  return value === null || (value < 0 && side < 0) ? null : value * side;
}

/** Which of the first two numbers of a date is the day, where the year comes last and dots do not already say so. */
export type DateOrder = 'day first' | 'month first';

/**
 * A calendar date as `YYYY-MM-DD`. Reads `2026-05-04`, `2026-05-04T10:00`, `4.5.2026` (day first, as everywhere where dots
 * are written), and `4/5/2026` or `4-5-2026` in the order given.
 *
 * @returns null when it is no date; `order` when it is one, but which number is the day cannot be known
 */
export function readDate(text: string, order: DateOrder | null): string | null | 'order' {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ][\d:.]+(?:Z|[+-]\d{2}:?\d{2})?)?$/.exec(text);
  if (iso) return dayFrom1900(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dotted = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(text);
  if (dotted) return dayFrom1900(Number(dotted[3]), Number(dotted[2]), Number(dotted[1]));
  const other = /^(\d{1,2})([/-])(\d{1,2})\2(\d{4})$/.exec(text);
  if (!other) return null;
  const [first, second, year] = [Number(other[1]), Number(other[3]), Number(other[4])];
  if (first === second) return dayFrom1900(year, first, second);
  if (order === null)
    return dayFrom1900(year, first, second) && dayFrom1900(year, second, first)
      ? 'order'
      : orderFree(year, first, second);
  return order === 'day first' ? dayFrom1900(year, second, first) : dayFrom1900(year, first, second);
}

function orderFree(year: number, first: number, second: number): string | null {
  return dayFrom1900(year, second, first) ?? dayFrom1900(year, first, second);
}

/**
 * The order of day and month in a column of dates, where one of them settles it: `13/05/2026` can only be day first.
 * Null when none does, or when they contradict one another.
 */
export function dateOrderOf(texts: Iterable<string>): DateOrder | null {
  let dayFirst = false;
  let monthFirst = false;
  for (const text of texts) {
    const other = /^(\d{1,2})([/-])(\d{1,2})\2\d{4}$/.exec(text.trim());
    if (!other) continue;
    if (Number(other[1]) > 12) dayFirst = true;
    if (Number(other[3]) > 12) monthFirst = true;
  }
  return dayFirst === monthFirst ? null : dayFirst ? 'day first' : 'month first';
}

/** Days before 1900 are slips of the hand here. */
function dayFrom1900(year: number, month: number, day: number): string | null {
  return year < 1900 ? null : dayOn(year, month, day);
}
