import type { About, Entry } from './entry.ts';
import type { ApiaryBody } from './kinds/apiary.ts';
import type { ColonyBody } from './kinds/colony.ts';
import type { CorrectionBody } from './kinds/correction.ts';
import { lift } from './kinds/lift.ts';
import type { MovementBody } from './kinds/movement.ts';
import type { Kinds } from './kinds/registry.ts';
import type { VisitBody } from './kinds/visit.ts';
import { districtScope, everyoneScope } from './transport.ts';

/** What one entry says about where its entity belongs. */
export interface Placing {
  /** Scopes the entity now belongs to, besides those it follows. */
  readonly scopes: readonly string[];
  /** Who goes wherever whom goes, from now on. */
  readonly follows: readonly { readonly child: About; readonly parent: About }[];
}

const forEveryone: readonly string[] = ['device', 'server', 'laboratory'];
const nowhere: Placing = { scopes: [], follows: [] };

/**
 * Where an entry puts its entity. An apiary belongs to every district it ever stood in: what was found at the old stand
 * matters there too, and hives that wander come back. Colonies, visits, movements and the keeper go wherever the apiary goes.
 * Devices, what the office says of them, and what laboratories state are for everyone. Belonging only grows, so the order of arrival does not
 * matter.
 */
export function placingOf(entry: Entry, kinds: Kinds): Placing {
  const { about, kind, version } = entry.envelope;
  if (forEveryone.includes(about.type)) return { scopes: [everyoneScope], follows: [] };
  const folding = kinds.get(kind)?.fold;
  if (folding?.as === 'correction') {
    // A correction speaks for the register of its entity, when it has that register's shape.
    const read = lift(kinds, kind, version, entry.body);
    if (read.fault !== null) return nowhere;
    const { version: corrected, body } = read.body as CorrectionBody;
    return bodyPlacing(about, about.type, corrected, body, kinds);
  }
  return kind === about.type ? bodyPlacing(about, kind, version, entry.body, kinds) : nowhere;
}

function bodyPlacing(about: About, kind: string, version: number, body: unknown, kinds: Kinds): Placing {
  const read = lift(kinds, kind, version, body);
  if (read.fault !== null) return nowhere;
  const at = (apiary: string): About => ({ type: 'apiary', id: apiary });
  switch (kind) {
    case 'apiary': {
      const { district, keeper } = read.body as ApiaryBody;
      const follows = keeper === null ? [] : [{ child: { type: 'keeper', id: keeper }, parent: about }];
      return { scopes: [districtScope(district)], follows };
    }
    case 'colony':
      return { scopes: [], follows: [{ child: about, parent: at((read.body as ColonyBody).apiary) }] };
    case 'visit':
      return { scopes: [], follows: [{ child: about, parent: at((read.body as VisitBody).apiary) }] };
    case 'movement': {
      const { from, to } = read.body as MovementBody;
      const ends = [from, to].filter((end) => end !== null);
      return { scopes: [], follows: ends.map((end) => ({ child: about, parent: at(end) })) };
    }
    default:
      return nowhere;
  }
}
