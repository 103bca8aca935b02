import type { About } from '../entry.ts';
import type { ApiaryBody } from '../kinds/apiary.ts';
import type { AssessmentBody } from '../kinds/assessment.ts';
import type { CleanDownBody } from '../kinds/clean-down.ts';
import type { ColonyBody } from '../kinds/colony.ts';
import type { CombReadingBody } from '../kinds/comb-reading.ts';
import type { ExaminationBody } from '../kinds/examination.ts';
import type { MergeBody } from '../kinds/merge.ts';
import type { ProposedChangeBody } from '../kinds/proposed-change.ts';
import type { VisitBody } from '../kinds/visit.ts';

/** What an entry says, through a correction: the kind, and the body in its newest version. */
export interface Statement {
  readonly kind: string;
  readonly about: About;
  readonly body: unknown;
}

/**
 * The entities that a statement names beside the one it is about. A movement names none: bees cross borders, and whoever
 * may write at one end may say where the other is.
 */
export function entitiesNamed({ kind, about, body }: Statement): About[] {
  switch (kind) {
    case 'apiary': {
      const { keeper, plan } = body as ApiaryBody;
      const drawn = [...(plan?.hives.map((hive) => hive.colony) ?? []), ...(plan?.walk ?? [])];
      return [...(keeper === null ? [] : [{ type: 'keeper', id: keeper }]), ...drawn.map(colony)];
    }
    case 'colony':
      return [apiary((body as ColonyBody).apiary)];
    case 'visit': {
      const said = body as VisitBody;
      return [apiary(said.apiary), ...said.leftOpen.map((left) => colony(left.colony))];
    }
    case 'examination':
    case 'comb-reading': {
      const said = body as ExaminationBody | CombReadingBody;
      return [visit(said.visit), apiary(said.apiary)];
    }
    case 'assessment':
      return [visit((body as AssessmentBody).visit)];
    case 'clean-down': {
      const { after } = body as CleanDownBody;
      return after === null ? [] : [colony(after)];
    }
    case 'proposed-change': {
      const said = body as ProposedChangeBody;
      return said.visit === null ? [] : [visit(said.visit)];
    }
    case 'merge':
      return [{ type: about.type, id: (body as MergeBody).other }];
    default:
      return [];
  }
}

/** Kinds that tell of one visit to one colony: visit, apiary and colony have to belong together. */
export const findingKinds: readonly string[] = ['examination', 'comb-reading', 'assessment', 'clean-down'];

const apiary = (id: string): About => ({ type: 'apiary', id });
const visit = (id: string): About => ({ type: 'visit', id });
const colony = (id: string): About => ({ type: 'colony', id });
