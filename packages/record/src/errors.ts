/**
 * The record's errors, in one table. `code` is stable and is what the edges translate; `message` is for a maintainer.
 */
export const recordErrors = {
  'unknown kind': 'this program does not know the kind or its newest version; update the program',
  'wrong body': 'the body does not have the shape of its kind; correct the fields named here',
  'wrong about': 'this kind cannot be about such an entity',
  'unknown entry': 'an entry named here is not in this book; fetch it first',
  'not erasable': 'only kinds that hold personal data can be erased; write a correction instead',
  'head moved': 'another writer appended to this chain meanwhile; read the head again and repeat',
  'entry clash': 'another entry already stands at this place of the chain, or under this identifier',
  'own entry broken': 'an entry of this very device does not verify; it is kept aside, send a fault report',
  'no identity': 'this store has no device identity yet; open the book first',
  'wrong person': 'this store belongs to another person; sign in as that person, or start with an empty store',
  'wrong server': 'the office answers with another key than the one this copy knows; ask the office before going on',
  'bad clock': 'the text is not a hybrid clock reading',
  'bad instant': 'the text or number is not an instant between the years 1970 and 9999',
  'bad bytes': 'the text is not what it should encode',
} as const;
export type RecordErrorCode = keyof typeof recordErrors;

export class RecordError extends Error {
  readonly code: RecordErrorCode;

  /** @param where what was wrong and where, for example the entry's identifier and field */
  constructor(code: RecordErrorCode, where: string, cause?: unknown) {
    super(`${code}: ${where} (${recordErrors[code]})`, cause === undefined ? undefined : { cause });
    this.name = 'RecordError';
    this.code = code;
  }
}
