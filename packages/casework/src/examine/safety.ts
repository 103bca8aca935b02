import type { SourceId } from '@combside/sources/bibliography';

/** One line of a safety card: the id of its sentence, and where it comes from. No source: common practice. */
export interface SafetyLine {
  readonly id: string;
  readonly sources: readonly SourceId[];
}

/** The card for stings. Works without network; it defers to a doctor and to the local emergency number. */
export const stingCard = [
  { id: 'casework.safety.sting.known-allergy', sources: ['SAFE-BK'] },
  { id: 'casework.safety.sting.leave', sources: ['PENRITH'] },
  { id: 'casework.safety.sting.call', sources: ['PENRITH'] },
  { id: 'casework.safety.sting.injector', sources: ['PENRITH'] },
  { id: 'casework.safety.sting.late', sources: ['STING'] },
  { id: 'casework.safety.sting.local-number', sources: [] },
] as const satisfies readonly SafetyLine[];

/** The card for working alone. */
export const loneWorkCard = [
  { id: 'casework.safety.alone.reaction-unknown', sources: ['PENRITH'] },
  { id: 'casework.safety.alone.phone', sources: ['PENRITH'] },
  { id: 'casework.safety.alone.somebody-knows', sources: [] },
  { id: 'casework.safety.alone.way-out', sources: ['NBU-INSP'] },
] as const satisfies readonly SafetyLine[];

/** What a person is about to do that can hurt. */
export const situations = [
  'opening a hive',
  'lighting the smoker',
  'lifting',
  'stonebrood',
  'caustics',
  'flaming',
] as const;
export type Situation = (typeof situations)[number];

const byOccasion = {
  'opening a hive': [
    { id: 'casework.safety.opening.veil', sources: [] },
    { id: 'casework.safety.opening.exit', sources: ['NBU-INSP'] },
  ],
  'lighting the smoker': [
    { id: 'casework.safety.smoker.dry-grass', sources: ['NBU-INSP'] },
    { id: 'casework.safety.smoker.fire-ban', sources: [] },
  ],
  lifting: [{ id: 'casework.safety.lifting', sources: ['BOX-KG'] }],
  stonebrood: [
    { id: 'casework.safety.stonebrood.respirator', sources: ['BB-FUN-2.1'] },
    { id: 'casework.safety.stonebrood.no-shaking', sources: [] },
  ],
  caustics: [
    { id: 'casework.safety.caustics.protection', sources: ['NBU-STER'] },
    { id: 'casework.safety.caustics.soda', sources: ['APNOTES'] },
  ],
  flaming: [{ id: 'casework.safety.flaming', sources: [] }],
} as const satisfies Record<Situation, readonly SafetyLine[]>;

/** The cautions that go with what is about to be done. */
export function cautionsFor(situation: Situation): readonly (typeof byOccasion)[Situation][number][] {
  return byOccasion[situation];
}
