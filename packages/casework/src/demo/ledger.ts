import { instantAt, tick } from '@combside/record/clock';
import type { Entry, Proposal } from '@combside/record/entry';
import { fold } from '@combside/record/fold';
import { newIdentifier } from '@combside/record/identifier';
import type {
  ApiaryState,
  ColonyState,
  KeeperState,
  LaboratoryState,
  MovementState,
  VisitState,
} from '@combside/record/states';
import type { Chance as Draws } from '@combside/science/random/seeded';

/** One entry to be: what is proposed, by whom, on which device, at what time of its clock. */
export interface Sown {
  readonly proposal: Proposal & { readonly id: string };
  readonly author: string;
  readonly device: string;
  /** Milliseconds since 1970 UTC. */
  readonly at: number;
}

/** Who writes, on what, at what time. */
export interface Pen {
  readonly author: string;
  readonly device: string;
  readonly at: number;
}

/**
 * A record in memory without signatures, so that acts can be played one after the other on the states that the earlier
 * ones left behind. The states come from the record's own fold; what was played is then sealed for real, elsewhere.
 */
export interface Ledger {
  /** A fresh identifier, the same for the same seed and time. */
  newId(at: number): string;
  write(pen: Pen, proposals: readonly Proposal[]): void;
  keeper(id: string): KeeperState;
  laboratory(id: string): LaboratoryState;
  apiary(id: string): ApiaryState;
  colony(id: string): ColonyState;
  visit(id: string): VisitState;
  movement(id: string): MovementState;
  /** Colonies that the register says stand at an apiary, and all that once did. */
  coloniesOf(apiary: string): ColonyState[];
  readonly sown: readonly Sown[];
}

const noSignature = 'A'.repeat(86);
const noHash = '0'.repeat(64);

/** @param draws chance for identifiers only */
export function newLedger(draws: Draws): Ledger {
  const entries = new Map<string, Entry[]>();
  const states = new Map<string, unknown>();
  const byApiary = new Map<string, Set<string>>();
  const sown: Sown[] = [];
  let clock: string | null = null;

  const bytes = (count: number) => Uint8Array.from({ length: count }, () => draws.integer(256));
  const newId = (at: number) => newIdentifier({ now: () => at }, { bytes });

  function state<T>(type: string, id: string): T {
    const key = `${type}/${id}`;
    const known = states.get(key);
    if (known) return known as T;
    const found = entries.get(key);
    if (!found) throw new RangeError(`the ledger has no ${type} ${id}; write it first`);
    const made = fold({ type, id }, found);
    states.set(key, made);
    return made as T;
  }

  return {
    sown,
    newId,
    write(pen, proposals) {
      for (const given of proposals) {
        const proposal = { ...given, id: given.id ?? newId(pen.at) };
        clock = tick(clock, pen.at);
        const key = `${proposal.about.type}/${proposal.about.id}`;
        const list = entries.get(key) ?? [];
        list.push({
          envelope: {
            format: 1,
            id: proposal.id,
            kind: proposal.kind,
            version: proposal.version,
            about: proposal.about,
            by: pen.author,
            device: pen.device,
            seq: sown.length + 1,
            at: instantAt(pen.at),
            clock,
            replaces: [...proposal.replaces],
            bodyHash: noHash,
            prev: null,
            signature: noSignature,
          },
          salt: 'A'.repeat(22),
          body: proposal.body,
        });
        entries.set(key, list);
        states.delete(key);
        sown.push({ proposal, author: pen.author, device: pen.device, at: pen.at });
        if (proposal.kind === 'colony') {
          const { apiary } = proposal.body as { readonly apiary: string };
          const there = byApiary.get(apiary) ?? new Set();
          there.add(proposal.about.id);
          byApiary.set(apiary, there);
        }
      }
    },
    laboratory: (id) => state<LaboratoryState>('laboratory', id),
    keeper: (id) => state<KeeperState>('keeper', id),
    apiary: (id) => state<ApiaryState>('apiary', id),
    colony: (id) => state<ColonyState>('colony', id),
    visit: (id) => state<VisitState>('visit', id),
    movement: (id) => state<MovementState>('movement', id),
    coloniesOf: (apiary) => [...(byApiary.get(apiary) ?? [])].map((id) => state<ColonyState>('colony', id)),
  };
}
