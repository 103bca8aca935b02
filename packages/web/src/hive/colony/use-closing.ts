import type { Assessed } from '@combside/casework/assess/assess-examination';
import { draftFrom } from '@combside/casework/draft/draft-from-taps';
import type { Closing } from '@combside/casework/examine/closing';
import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import type { ColonyState } from '@combside/record/states';
import type { DiseaseId } from '@combside/science/signs/catalogue';
import { useWrite, type Writing } from '../../device/write/use-write.ts';
import { askReasoning } from '../../ui/reasoning/reasoning.ts';
import { useHiveDevice } from '../hive-device.tsx';
import type { VisitInHand } from '../visit/use-visit.ts';
import type { ColonyDraftInHand } from './use-colony-draft.ts';

/** What is corrected: the sealed examination, and the assessment that rests on it. */
export interface Corrected {
  readonly examined: ColonyState['examinations'][number];
  readonly assessed: ColonyState['assessments'][number] | null;
}

interface ToClose {
  readonly hand: ColonyDraftInHand;
  readonly known: VisitInHand;
  readonly colony: ColonyState;
  readonly circumstances: CircumstancesKnown | null;
  readonly corrects: Corrected | null;
}

/** How the colony is concluded, and what is suspected. */
interface Concluding {
  readonly closing: Closing;
  readonly suspected: readonly DiseaseId[];
}

/**
 * Closes a colony, or writes its correction, from the taps that stand when it is done: what another tab added meanwhile is
 * among them, and casework refuses a closing that does not fit it.
 */
export function useClosing(given: ToClose | null): Writing<Concluding, { readonly assessed: Assessed }> {
  const device = useHiveDevice();
  return useWrite(
    async ({ closing, suspected }: Concluding, fresh) => {
      if (!given) throw new Error('a colony is closed only once its draft is read');
      const { hand, known, colony, circumstances, corrects } = given;
      const taps = hand.now();
      // Another tab may have closed it since this screen was drawn.
      const now = (await fresh.state({ type: 'colony', id: colony.about.id })) ?? colony;
      const stated = {
        taps,
        colony: now,
        visit: known.visit,
        pack: device.pack,
        closing,
        suspected,
        known: circumstances,
      };
      if (!corrects) {
        const input = { ...stated, observedAt: device.now(), examinationId: device.book.newId() };
        return askReasoning({ ask: 'close', input });
      }
      const input = {
        ...stated,
        corrects: corrects.examined.written.entry,
        reason: draftFrom(taps, now).correctionReason,
        by: device.session.person,
        correctedAt: device.now(),
      };
      return askReasoning({ ask: 'correct', input });
    },
    () => ({ closes: given ? [given.hand] : [] }),
  );
}
