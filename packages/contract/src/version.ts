/**
 * The protocol version: phones send it with every message (`Combside-Protocol`), the server answers with its own.
 * Raise it when any message or entry kind changes shape, add a line to the history, and pin the new hash in
 * `version.test.ts`. A change an older phone cannot live with also raises `oldestServed`.
 */
export const protocolVersion = 5;

/** The oldest phone the server still serves. It must keep being able to hand over what it recorded. */
export const oldestServed = 1;

/** What each version brought, oldest first. */
export const protocolHistory: readonly { readonly version: number; readonly brought: string }[] = [
  {
    version: 1,
    brought:
      'hello, push, pull, scopes, checkpoint, people, photographs, live events; districts, visits, apiaries, and the pages of a visit, an apiary and a colony',
  },
  {
    version: 2,
    brought:
      'movements of bees, merged records, reasons for changes, photographs of a site, numbers of sites; the register: rows, search, keepers, what waits to be settled',
  },
  {
    version: 3,
    brought:
      'tests read at the hive, in examinations; what was known before the look and what the inspector changed of it, in assessments',
  },
  {
    version: 4,
    brought:
      'what is owed, the map, planning, the programme’s figures; the gravest word about an apiary in lists, notes on the colonies of a visit',
  },
  {
    version: 5,
    brought:
      'readings of comb photographs, and which of them an assessment weighed; movements on the pages of a keeper and of a colony; visits found by words and results; laboratories and the limits they stated; stored photographs of combs listed, sent small, read by the server and taken back unread; movements taken back',
  },
];

/** Header that carries the protocol version, both ways. */
export const protocolHeader = 'combside-protocol';
