import type { About, Entry, Proposal } from '../entry.ts';
import { RecordError } from '../errors.ts';
import { aboutKey } from '../store.ts';
import type { OfficeContext } from './office.ts';
import { writeAtDesk } from './write-at-desk.ts';

/** See `Office.erase`. */
export async function eraseBodies(
  office: OfficeContext,
  ids: readonly string[],
  reason: string,
  by: string,
): Promise<Entry[]> {
  const { store, kinds } = office;
  const groups = await erasableByEntity(office, ids);
  const around = await store.entriesAbout([...groups.values()].map(({ about }) => about));
  const proposals: Proposal[] = [];
  for (const [entity, { about, ids: named }] of groups) {
    const erased = [...named];
    // A correction repeats the body it corrects, so it has to go with it.
    for (const { entry } of around.get(entity) ?? []) {
      const { corrects } = (entry.body ?? {}) as { corrects?: string };
      const isCorrection = kinds.get(entry.envelope.kind)?.fold.as === 'correction';
      if (isCorrection && erased.includes(corrects ?? '')) erased.push(entry.envelope.id);
    }
    const body = { entries: [...new Set(erased)], reason };
    proposals.push({ kind: 'erasure', version: 1, about, replaces: [], body });
  }
  return writeAtDesk(office, proposals, by);
}

interface ErasableOfEntity {
  readonly about: About;
  readonly ids: string[];
}

/** The entries to erase, by the entity they are about. @throws RecordError `not erasable`, `unknown entry` */
async function erasableByEntity(
  { store, kinds }: OfficeContext,
  ids: readonly string[],
): Promise<Map<string, ErasableOfEntity>> {
  const found = await store.byId(ids);
  const groups = new Map<string, ErasableOfEntity>();
  for (const id of ids) {
    const kept = found.get(id);
    if (kept === undefined) throw new RecordError('unknown entry', id);
    const { kind, about } = kept.entry.envelope;
    if (kinds.get(kind)?.erasable !== true) throw new RecordError('not erasable', `${kind} ${id}`);
    const group = groups.get(aboutKey(about)) ?? { about, ids: [] };
    group.ids.push(id);
    groups.set(aboutKey(about), group);
  }
  return groups;
}
