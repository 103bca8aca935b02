import type { Words } from '@combside/words/words';
import { sayWord } from '../../ui/say-sentence.ts';

/** A field of a register record by its name in words. */
export function sayField(words: Words, field: string): string {
  return sayWord(words, 'register.field.*', field);
}

/**
 * A value of a register record as text.
 *
 * @param names names of keepers and apiaries by identifier, as far as they are known
 */
export function sayValue(words: Words, field: string, value: unknown, names: ReadonlyMap<string, string>): string {
  if (value === null && (field === 'from' || field === 'to')) return words.say('register.movement.outside');
  if (value === null && field === 'quantity') return words.say('always.not-known');
  if (value === null || value === undefined || value === '') return words.say('register.nothing');
  switch (field) {
    case 'keeper':
    case 'apiary':
    case 'from':
    case 'to':
      return names.get(String(value)) ?? words.say('always.not-known');
    case 'lastConfirmedOn':
    case 'earliest':
    case 'latest':
      return words.day(String(value));
    case 'trade':
      return sayWord(words, 'register.trade.*', String(value));
    case 'hiveType':
      return sayWord(words, 'casework.hive-type.*', String(value));
    case 'hiveState':
      return sayWord(words, 'casework.hive-state.*', String(value));
    case 'position':
      return sayPosition(words, value as PositionSaid);
    case 'broodBoxes':
      return (value as readonly { box: string; frames: number }[])
        .map(({ box, frames }) => `${box} ${frames}`)
        .join(', ');
    case 'what':
      return sayWord(words, 'register.what.*', String(value));
    case 'how':
      return sayWord(words, 'register.movement.how.*', String(value));
    case 'knownBy':
      return sayWord(words, 'register.known-by.*', String(value));
    case 'happened':
      return words.say(value ? 'register.movement.happened.yes' : 'register.movement.happened.no');
    case 'colonies':
      return words.number((value as readonly unknown[]).length);
    case 'plan':
      return String((value as { hives: readonly unknown[] }).hives.length);
    default:
      return typeof value === 'number' ? words.number(value) : String(value);
  }
}

interface PositionSaid {
  readonly latitude: number;
  readonly longitude: number;
  readonly uncertaintyMetres: number;
  readonly how: string;
}

export function sayPosition(words: Words, position: PositionSaid): string {
  return words.say('register.position', {
    latitude: words.number(position.latitude, 5),
    longitude: words.number(position.longitude, 5),
    metres: words.unit(position.uncertaintyMetres, 'm'),
    how: sayWord(words, 'register.how.*', position.how),
  });
}
