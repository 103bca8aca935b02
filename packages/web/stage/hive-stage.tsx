import '../src/ui/tokens.css';
import '../src/ui/controls.css';
import '../src/hive/hive.css';
import { loadPack } from '@combside/law/load-pack';
import { openBook } from '@combside/record/book/open-book';
import { toHex } from '@combside/record/bytes';
import { memoryDeviceStore } from '@combside/record/memory-store';
import type { FoldedState } from '@combside/record/store';
import type { Language } from '@combside/words/language';
import { inject } from 'vitest';
import { storedDrafts } from '../src/device/drafts/stored-drafts.ts';
import { webChance, webHasher, webVerifier } from '../src/device/keys/web-ports.ts';
import type { Photographs } from '../src/device/photographs/photographs.ts';
import type { SyncStatus } from '../src/device/sync/start-sync.ts';
import type { HiveDevice, NotTaken } from '../src/hive/hive-device.tsx';
import { GivesHiveDevice } from '../src/hive/hive-device.tsx';
import { HiveScreens, hiveRooms } from '../src/hive/hive-screens.tsx';
import { SpeaksWords } from '../src/ui/words-context.tsx';
import { firstInstant, stageZone } from './day.ts';
import { inspector } from './inspector.ts';
import { keysInMemory } from './keys-in-memory.ts';
import { raise } from './raise.tsx';

/** What is otherwise on this phone than on a whole one, online, with its day's round. */
export interface PhoneOtherwise {
  readonly sync?: Partial<SyncStatus>;
  readonly isEmpty?: boolean;
  /** What it holds besides its round. */
  readonly besides?: readonly FoldedState[];
  readonly storageKept?: boolean;
  readonly notTaken?: readonly NotTaken[];
  /** Does something on the phone before the screen opens. */
  readonly before?: (device: HiveDevice) => Promise<void>;
}

/** A signed entry that the office did not take. */
export const refusedEntry: NotTaken = {
  id: '01900000-0000-7000-8000-0000000000a1',
  kind: 'examination',
  at: firstInstant,
  reason: 'may not write',
};

/** A name of words as long as a place in Germany can have them. Invented. */
const longName = 'Oberunterwaldwiesenbrückenmühlenbach am Honigbienenschutzgebietsrand';

/** A thousand apiaries of long names on the phone, with a visit planned at each. */
export function thousandVisits(): readonly FoldedState[] {
  const { states, planned } = inject('record');
  const copies = (id: string) => {
    const text = JSON.stringify(states.find(({ summary }) => summary.about.id === id));
    return Array.from({ length: 1000 }, (_, number) => {
      const numbered = (old: string) => old.slice(0, -4) + String(number).padStart(4, '0');
      return JSON.parse(
        text
          .replaceAll(planned.visit, numbered(planned.visit))
          .replaceAll(planned.apiary, numbered(planned.apiary))
          .replaceAll(`"${planned.name}"`, `"${longName} ${number}"`),
      ) as FoldedState;
    });
  };
  return [...copies(planned.visit), ...copies(planned.apiary)];
}

/** Opens a screen of the hive half on a phone whose record stands in memory. @param path below `/hive` */
export async function raiseHive(path: string, language: Language, otherwise: PhoneOtherwise = {}): Promise<HiveDevice> {
  const device = await phoneOnTheStage(otherwise);
  await otherwise.before?.(device);
  await raise(
    '/hive',
    path,
    <SpeaksWords language={language} rooms={hiveRooms}>
      <GivesHiveDevice device={device}>
        <HiveScreens />
      </GivesHiveDevice>
    </SpeaksWords>,
    language,
  );
  return device;
}

async function phoneOnTheStage(otherwise: PhoneOtherwise): Promise<HiveDevice> {
  const { entries, states } = inject('record');
  const store = memoryDeviceStore();
  if (!otherwise.isEmpty) await store.commit({ entries, states });
  if (otherwise.besides) await store.commit({ states: otherwise.besides });
  const clock = { now: () => Date.parse(firstInstant) };
  const book = await openBook(
    { store, hasher: webHasher, verifier: webVerifier, clock, chance: webChance, keys: keysInMemory() },
    { person: inspector.person },
  );
  const status: SyncStatus = {
    network: true,
    sending: false,
    waiting: 0,
    refused: otherwise.notTaken?.length ?? 0,
    lastExchangeAt: firstInstant,
    failure: null,
    faults: [],
    ...otherwise.sync,
  };
  const nobody = () => () => undefined;
  const done = async () => undefined;
  const storage = { kept: otherwise.storageKept ?? true, used: 0.1 };
  return {
    session: inspector,
    book,
    hasher: webHasher,
    timeZone: stageZone,
    pack: await loadPack(inspector.pack),
    now: () => firstInstant,
    drafts: storedDrafts(store),
    photographs: photographsInMemory(),
    notTaken: async () => otherwise.notTaken ?? [],
    names: async () => ({ [inspector.person]: inspector.name }),
    sync: {
      status: () => status,
      subscribe: nobody,
      run: done,
      count: done,
      wake: () => undefined,
      stop: () => undefined,
    },
    storage: { status: () => storage, subscribe: nobody, look: done },
    close: () => undefined,
  };
}

function photographsInMemory(): Photographs {
  const kept = new Map<string, Blob>();
  return {
    async keep(file, takenAt) {
      const bytes = new Uint8Array(await file.arrayBuffer());
      const hash = toHex(await webHasher.sha256(bytes));
      kept.set(hash, file);
      return { hash, mediaType: file.type, bytes: bytes.length, takenAt, caption: '' };
    },
    open: async (hash) => kept.get(hash) ?? null,
    waiting: async () => [],
    uploadOf: async () => null,
    noteUpload: async () => undefined,
    noteSent: async () => undefined,
  };
}
