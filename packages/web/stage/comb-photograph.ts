import type { CombReadingBody } from '@combside/record/kinds/comb-reading';
import type { PhotographReference } from '@combside/record/kinds/examination';
import type { Folded } from '@combside/record/states';
import { inject } from 'vitest';
import { firstInstant } from './day.ts';
import { inspector } from './inspector.ts';

const { file, hash, part } = inject('comb');
const { running } = inject('record');

/** The photograph of the planted comb. */
export const combFile = new Blob([Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0))], {
  type: 'image/jpeg',
});

export const combTaken: PhotographReference = {
  hash,
  mediaType: combFile.type,
  bytes: combFile.size,
  takenAt: firstInstant,
  caption: '',
};

/** A reading of it as the record keeps it, corrected in one cell. @param number tells one from another */
export function combKept(number: number): Folded<CombReadingBody> {
  const entry = `01900000-0000-7000-8000-0000000004${String(number).padStart(2, '0')}`;
  const written = { entry, by: inspector.person, device: entry, at: firstInstant, clock: '1' };
  const body: CombReadingBody = {
    visit: running.visit,
    apiary: running.apiary,
    observedAt: firstInstant,
    photograph: { ...combTaken, hash: number === 0 ? hash : hash.replace(/^../, '00') },
    place: { box: 'brood box 1', frame: 4, side: 'a' },
    ...part,
    corrections: [{ cell: 0, class: 'pollen' }],
    accepted: true,
  };
  return { written, body, original: body, corrections: [{ written, reason: 'tapped the wrong line', body }] };
}
