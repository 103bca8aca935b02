import type { Pack } from '@combside/law/pack';
import type { ColonyState } from '@combside/record/states';
import { maskingEnd } from '../assess/masking-end.ts';
import type { WalkedColony } from '../examine/walk.ts';
import { examinationAt } from '../examine/walk.ts';
import type { Sentence } from './inspection-record.ts';
import type { NextStep } from './next-step-ids.ts';

/**
 * What comes next, in plain sentences for the keeper: what to do now, what will be done, and that the authority's word
 * goes first. No probability, no condition of another keeper.
 */
export function nextSteps({
  walked,
  colonies,
  visit,
  pack,
}: {
  readonly walked: readonly WalkedColony[];
  readonly colonies: readonly ColonyState[];
  readonly visit: string;
  readonly pack: Pack;
}): Sentence[] {
  const steps: Sentence[] = [];
  const say = (id: NextStep, values: Sentence['values'] = {}): void => {
    steps.push({ id: `casework.next.${id}`, values });
  };
  const suspects = walked.filter((one) => one.word === 'suspect');
  for (const one of suspects) {
    if (one.hiveState === 'living') say('close-hive', { colony: one.label });
    say('specimen', { colony: one.label });
  }
  if (suspects.length > 0) {
    say('move-nothing');
    say('reported');
    say('not-confirmed');
  }
  let nothingSeen = 0;
  for (const one of walked) {
    const colony = colonies.find((candidate) => candidate.about.id === one.colony);
    const examined = colony ? examinationAt(colony, visit)?.body : undefined;
    if (one.hiveState === 'dead') say('dead-hive', { colony: one.label });
    if (one.hiveState === 'stored combs') say('stored-combs', { colony: one.label });
    if (one.word === 'not opened') say('not-opened', { colony: one.label });
    if (one.word === 'signs seen') say('signs-seen', { colony: one.label });
    if (one.word === 'too little brood to judge') say('too-little-brood', { colony: one.label });
    if (one.word === 'masked, no conclusion' && examined) {
      const until = maskingEnd(examined, pack);
      say('masked', { colony: one.label, until: until === null ? '' : { moment: until } });
    }
    if (one.word === 'nothing seen with this look') nothingSeen += 1;
    const reported = examined?.finds.some(
      (find) => find.outcome === 'seen' && pack.notifiableFinds.some((rule) => rule.find === find.find),
    );
    if (reported) say('find', { colony: one.label });
  }
  if (nothingSeen > 0) say('nothing-seen', { count: nothingSeen });
  say('keep-looking');
  if (suspects.length > 0) say('tools');
  say('law-first');
  return steps;
}
