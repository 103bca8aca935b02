/**
 * Words of a visit that the record leaves open, so that an older office keeps what a newer phone wrote. What is closed
 * stands with the schema of its kind in the record.
 */
import { figureOf, type TestId, testIds } from '@combside/science/diagnosis/test-figures';

/** Why a visit is made. Common practice, no source. */
export const visitReasons = [
  'routine',
  'suspicion reported',
  'contact',
  'zone',
  'look again',
  'sale or migration',
  'request',
  'unregistered site',
] as const;
export type VisitReason = (typeof visitReasons)[number];

/** By what right the inspector stands at the hives; the local law says which exist. */
export const powers = ['consent', 'power of entry', 'order', 'owner not found'] as const;
export type Power = (typeof powers)[number];

/** Who may be present. */
export const roles = [
  'keeper',
  'deputy of the keeper',
  'inspector',
  'veterinarian',
  'land owner',
  'witness',
  'police',
] as const;
export type Role = (typeof roles)[number];

/** Found at the same opening, recorded with or without a suspicion. Some start duties of a pack, none has a posterior. */
export const finds = [
  'small-hive-beetle',
  'small-hive-beetle-larvae',
  'tropilaelaps',
  'varroa',
  'wax-moth',
  'bee-louse',
  'asian-hornet',
] as const;
export type Find = (typeof finds)[number];

/** What may be measured at a hive, each in one unit. */
export const measurements = {
  'sealed brood': { unit: 'comb sides', low: 0, high: 60 },
  'open brood': { unit: 'comb sides', low: 0, high: 60 },
  eggs: { unit: 'comb sides', low: 0, high: 60 },
  bees: { unit: 'comb sides', low: 0, high: 120 },
  'spaces between combs occupied': { unit: 'spaces', low: 0, high: 60 },
  'mites on a sample': { unit: 'mites per 100 bees', low: 0, high: 200 },
  'mites fallen': { unit: 'mites a day', low: 0, high: 2000 },
  'hive weight': { unit: 'kg', low: 0, high: 250 },
  'inside width of the frame': { unit: 'mm', low: 50, high: 700 },
  'inside height of the frame': { unit: 'mm', low: 50, high: 500 },
} as const;
export type Measurement = keyof typeof measurements;

/** The tests that are read at the hive itself; the laboratory's come back as entries of the laboratory. */
export const testsAtTheHive: readonly TestId[] = testIds.filter((id) => figureOf(id).place === 'hive');
