import { expect, test } from 'vitest';
import { fields, guessColumns, headerFingerprint, headerOf, rememberedColumns } from './columns.ts';

test('headers in practice are known again', () => {
  expect(guessColumns(['Imker-Nr.', 'Name', 'Telefon', 'Standort', 'Breite', 'Länge', 'Völker', 'Bemerkung'])).toEqual([
    ...['keeperNumber', 'keeperName', 'telephone', 'siteName', 'latitude', 'longitude', 'coloniesRegistered'],
    null,
  ]);
  expect(guessColumns(['Keeper name', 'Apiary', 'LAT', 'lon', 'Number of hives'])).toEqual([
    ...['keeperName', 'siteName', 'latitude', 'longitude', 'coloniesRegistered'],
  ]);
});

test('our own headers are known again, each as what it is', () => {
  expect(guessColumns(fields.map((field) => headerOf[field]))).toEqual(fields);
});

test('no field is given twice; the plainer header gets it', () => {
  expect(guessColumns(['Name', 'Keeper name'])).toEqual([null, 'keeperName']);
});

test('a matching is remembered for the same header, and only where it fits', () => {
  expect(headerFingerprint(['Name', 'Länge'])).toBe(headerFingerprint(['NAME ', 'lange']));
  expect(headerFingerprint(['a', 'b'])).not.toBe(headerFingerprint(['a b']));
  expect(rememberedColumns(['a', 'b'], ['siteName', null])).toEqual(['siteName', null]);
  expect(rememberedColumns(['a', 'b'], ['siteName'])).toBeNull();
  expect(rememberedColumns(['a', 'b'], ['siteName', 'siteName'])).toBeNull();
  expect(rememberedColumns(['a', 'b'], ['siteName', 'mood'])).toBeNull();
});
