import { type PhotographReference, photographReference } from './examination.ts';
import type { Kind } from './kind.ts';

/** A photograph of the place itself, such as hives at the roadside. Its caption may name people, so it can be erased. */
export const photograph: Kind<PhotographReference> = {
  kind: 'photograph',
  version: 1,
  about: ['apiary'],
  erasable: true,
  body: photographReference,
  writer: 'anyone',
  fold: { as: 'list', into: 'photographs', newestFirstBy: (body) => body.takenAt },
  steps: [],
};
