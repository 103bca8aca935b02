import { likenessKey } from '../likeness.ts';

/** What a column can mean. */
export const fields = [
  'siteRecord',
  'siteNumber',
  'siteName',
  'siteAddress',
  'latitude',
  'longitude',
  'uncertaintyMetres',
  'coloniesRegistered',
  'lastConfirmedOn',
  'keeperRecord',
  'keeperNumber',
  'keeperName',
  'keeperAddress',
  'telephone',
  'email',
  'language',
  'trade',
] as const;
export type Field = (typeof fields)[number];

/** The header under which a field is written out; reading knows it again whatever the language. */
export const headerOf: Readonly<Record<Field, string>> = {
  siteRecord: 'apiary record',
  siteNumber: 'apiary number',
  siteName: 'apiary name',
  siteAddress: 'apiary address',
  latitude: 'latitude',
  longitude: 'longitude',
  uncertaintyMetres: 'uncertainty in metres',
  coloniesRegistered: 'colonies registered',
  lastConfirmedOn: 'last confirmed on',
  keeperRecord: 'keeper record',
  keeperNumber: 'keeper number',
  keeperName: 'keeper name',
  keeperAddress: 'keeper address',
  telephone: 'telephone',
  email: 'e-mail',
  language: 'language',
  trade: 'trade',
};

/** Which column of a file holds what: one field for each column, or null where it is left out. */
export type Columns = readonly (Field | null)[];

/**
 * Headers met in practice, English and German, as `likenessKey` leaves them (common practice, no source). The first
 * field that knows a header gets the column.
 */
const known: Readonly<Record<Field, readonly string[]>> = {
  siteRecord: ['apiary record', 'site record', 'datensatz stand'],
  siteNumber: [
    ...['apiary number', 'site number', 'apiary no', 'site no', 'site id', 'apiary id', 'location number'],
    ...['standnummer', 'standort nr', 'standortnummer', 'stand nr', 'bienenstand nr', 'bienenstandnummer'],
  ],
  siteName: [
    ...['apiary name', 'apiary', 'site name', 'site', 'name of apiary', 'location name', 'location'],
    ...['stand', 'standname', 'bienenstand', 'standort', 'name des standes', 'standbezeichnung', 'bezeichnung'],
  ],
  siteAddress: [
    ...['apiary address', 'site address', 'location address', 'directions', 'place', 'parish'],
    ...['standadresse', 'adresse des standes', 'standort adresse', 'lage', 'lagebeschreibung', 'ort', 'gemarkung'],
  ],
  latitude: ['latitude', 'lat', 'y', 'northing degrees', 'breite', 'breitengrad', 'geographische breite'],
  longitude: ['longitude', 'lon', 'long', 'lng', 'x', 'lange', 'laengengrad', 'langengrad', 'geographische lange'],
  uncertaintyMetres: [
    ...['uncertainty in metres', 'uncertainty', 'accuracy', 'accuracy m', 'precision', 'coordinateuncertaintyinmeters'],
    ...['genauigkeit', 'genauigkeit m', 'unsicherheit', 'unsicherheit in metern'],
  ],
  coloniesRegistered: [
    ...['colonies registered', 'colonies', 'number of colonies', 'colony count', 'hives', 'number of hives'],
    ...['volker', 'volkerzahl', 'anzahl volker', 'zahl der volker', 'bienenvolker', 'anzahl bienenvolker'],
  ],
  lastConfirmedOn: [
    ...['last confirmed on', 'last confirmed', 'confirmed', 'confirmed on', 'date confirmed', 'date'],
    ...['zuletzt bestatigt', 'bestatigt am', 'stand vom', 'datum', 'meldedatum'],
  ],
  keeperRecord: ['keeper record', 'datensatz imker'],
  keeperNumber: [
    ...['keeper number', 'keeper no', 'keeper id', 'beekeeper number', 'beekeeper id', 'registration number', 'number'],
    ...['imkernummer', 'imker nr', 'betriebsnummer', 'registriernummer', 'nummer', 'nr'],
  ],
  keeperName: [
    ...['keeper name', 'keeper', 'beekeeper', 'beekeeper name', 'name of keeper', 'name', 'owner', 'owner name'],
    ...['imker', 'imkername', 'name des imkers', 'imkerin', 'halter', 'tierhalter', 'besitzer', 'vor und nachname'],
  ],
  keeperAddress: [
    ...['keeper address', 'beekeeper address', 'address', 'owner address', 'postal address'],
    ...['adresse', 'anschrift', 'adresse des imkers', 'anschrift imker', 'wohnort'],
  ],
  telephone: [
    ...['telephone', 'phone', 'tel', 'mobile', 'telephone number', 'phone number', 'mobile number'],
    ...['telefon', 'telefonnummer', 'handy', 'mobil', 'rufnummer'],
  ],
  email: ['e mail', 'email', 'mail', 'e mail address', 'email address', 'e mail adresse', 'mailadresse'],
  language: ['language', 'sprache'],
  trade: ['trade', 'kind of keeping', 'type of keeping', 'art der haltung', 'betriebsart', 'haltung'],
};

/**
 * Guesses what each column means. Never the same field twice: the column that names a field most plainly gets it.
 *
 * @param header as `Table.header`
 */
export function guessColumns(header: readonly string[]): Columns {
  const keys = header.map(likenessKey);
  const columns: (Field | null)[] = header.map(() => null);
  const given = new Set<Field>();
  const rank = (field: Field, key: string) => known[field].indexOf(key);
  const longest = Math.max(...fields.map((field) => known[field].length));
  for (let place = 0; place < longest; place++) {
    for (const field of fields) {
      if (given.has(field)) continue;
      const index = keys.findIndex((key, at) => columns[at] === null && key !== '' && rank(field, key) === place);
      if (index === -1) continue;
      columns[index] = field;
      given.add(field);
    }
  }
  return columns;
}

/** The name under which a matching is remembered: equal for files whose headers are the same words in the same order. */
export function headerFingerprint(header: readonly string[]): string {
  return header.map(likenessKey).join('\u001f');
}

/** A remembered matching, as far as it fits this header; null when it does not. */
export function rememberedColumns(header: readonly string[], kept: unknown): Columns | null {
  if (!Array.isArray(kept) || kept.length !== header.length) return null;
  const isField = (value: unknown): value is Field | null =>
    value === null || (fields as readonly unknown[]).includes(value);
  if (!kept.every(isField)) return null;
  const given = kept.filter((field) => field !== null);
  return new Set(given).size === given.length ? kept : null;
}
