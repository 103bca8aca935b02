import type { RopeTest } from '@combside/record/kinds/examination';
import type { Chance } from '@combside/science/random/seeded';
import { type ConditionId, signs } from '@combside/science/signs/catalogue';
import { linkOf } from '@combside/science/signs/links';
import type { Tap } from '../draft/tap.ts';

/** How often a colony of the demonstration shows a sign of its condition: inside the bands of the catalogue's words. */
const shownIn = { typical: 0.75, sometimes: 0.3, rare: 0.04, 'never described': 0 } as const;

/** How often an inspector meets a condition at all with a full look; early foulbrood is easily missed. Invented. */
const metIn: Readonly<Partial<Record<ConditionId, number>>> = {
  'american-foulbrood.early': 0.35,
  'american-foulbrood.advanced': 0.97,
};

/**
 * The taps an inspector makes over a living colony with these true conditions, drawn from the catalogue's own links. An
 * empty list is a look that met nothing.
 *
 * @param share frames seen of frames held: what is on the other frames is not met
 */
export function tapsForSigns(
  conditions: readonly ConditionId[],
  box: string,
  share: number,
  chance: Chance,
): readonly Tap[] {
  const taps: Tap[] = [];
  const told = new Set<string>();
  for (const condition of conditions) {
    if (chance.uniform() >= (metIn[condition] ?? 0.9) * share) continue;
    const many = condition === 'american-foulbrood.advanced' ? 'over 100' : chance.uniform() < 0.5 ? '11-100' : '1-10';
    for (const sign of signs) {
      const link = linkOf(sign.id, condition);
      if (!link || sign.ofHealthyBrood || sign.id === 'con.ropy' || told.has(sign.id)) continue;
      if (chance.uniform() >= shownIn[link.level]) continue;
      told.add(sign.id);
      taps.push({ tap: 'sign', sign: sign.id, outcome: 'seen' });
      if (sign.measure === 'cells') taps.push({ tap: 'sign count', sign: sign.id, count: many });
      if (sign.measure === 'degree') taps.push({ tap: 'sign amount', sign: sign.id, amount: 'marked' });
    }
    if (taps.length > 0 && linkOf('con.ropy', condition)?.level !== undefined) {
      taps.push({ tap: 'rope test', test: ropeTest(condition, box, chance) });
    }
  }
  return taps;
}

function ropeTest(condition: ConditionId, box: string, chance: Chance): RopeTest {
  const ropes = condition.startsWith('american-foulbrood') && chance.uniform() < 0.85;
  return {
    box,
    frame: null,
    side: null,
    tissue: 'moist brown',
    stick: 'rough and dry',
    threadMillimetres: ropes ? 15 + chance.integer(16) : 0,
    snapsBack: ropes ? true : null,
    colour: ropes ? 'coffee' : 'yellow',
  };
}
