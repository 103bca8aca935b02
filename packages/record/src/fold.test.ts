import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sampleHash, sampleId } from './acceptance/samples.ts';
import { instantAt } from './clock.ts';
import type { About, Entry } from './entry.ts';
import { byClock, flaggedIn, fold, foldVersion, foldVersionOf, summarise } from './fold.ts';
import type { Kind } from './kinds/kind.ts';
import { note } from './kinds/note.ts';
import { kinds, kindTable } from './kinds/registry.ts';
import type { ColonyState, KeeperState } from './states.ts';

const colony: About = { type: 'colony', id: sampleId(1, 1) };
const keeper: About = { type: 'keeper', id: sampleId(1, 2) };
const start = 1_777_883_465_120;

let made = 0;
function entryOf(
  kind: string,
  body: unknown,
  options: { about?: About; version?: number; at?: number; replaces?: string[]; id?: string; device?: number } = {},
): Entry {
  made++;
  const milliseconds = start + (options.at ?? made);
  return {
    envelope: {
      format: 1,
      id: options.id ?? sampleId(2, made),
      kind,
      version: options.version ?? kinds.get(kind)?.version ?? 1,
      about: options.about ?? colony,
      by: sampleId(3, 1),
      device: sampleId(4, options.device ?? 1),
      seq: made,
      at: instantAt(milliseconds),
      clock: `${String(milliseconds).padStart(18, '0')}.000000`,
      replaces: options.replaces ?? [],
      bodyHash: sampleHash(made),
      prev: sampleHash(made, 'prev'),
      signature: 'A'.repeat(86),
    },
    salt: 'A'.repeat(22),
    body,
  };
}

function colonyBody(label: string) {
  return { apiary: sampleId(5, 1), label, hiveType: 'langstroth-deep', broodBoxes: [], hiveState: 'living' };
}

function colonyOf(entries: readonly Entry[]): ColonyState {
  return fold(colony, entries) as ColonyState;
}

describe('a register', () => {
  test('a value that was seen is superseded, whatever the clocks say', () => {
    const first = entryOf('colony', colonyBody('first'), { at: 5000 });
    const second = entryOf('colony', colonyBody('second'), { at: 10, replaces: [first.envelope.id] });
    const { colony: register } = colonyOf([first, second]);
    expect(register.current?.body.label).toBe('second');
    expect(register.contested).toEqual([]);
    expect(register.history.map(({ body }) => body.label)).toEqual(['second', 'first']);
  });

  test('two that did not see each other contest: the later is current until one replaces both', () => {
    const first = entryOf('colony', colonyBody('first'));
    const seen = [first.envelope.id];
    const here = entryOf('colony', colonyBody('here'), { at: 100, replaces: seen });
    const there = entryOf('colony', colonyBody('there'), { at: 200, replaces: seen });
    const open = colonyOf([there, first, here]).colony;
    expect(open.current?.body.label).toBe('there');
    expect(open.contested.map(({ body }) => body.label)).toEqual(['here']);
    expect(summarise(colonyOf([there, first, here])).contested).toBe(true);
    const both = [here.envelope.id, there.envelope.id];
    const settled = colonyOf([
      there,
      first,
      entryOf('colony', colonyBody('settled'), { at: 50, replaces: both }),
      here,
    ]);
    expect(settled.colony.current?.body.label).toBe('settled');
    expect(settled.colony.contested).toEqual([]);
    expect(summarise(settled).contested).toBe(false);
  });

  test('an entry flagged for its clock loses the tie', () => {
    const honest = entryOf('colony', colonyBody('honest'), { at: 100 });
    const ahead = entryOf('colony', colonyBody('ahead'), { at: 900 * 86_400_000 });
    expect(colonyOf([honest, ahead]).colony.current?.body.label).toBe('ahead');
    const flag = entryOf('clock-flag', { entry: ahead.envelope.id, aheadMilliseconds: 899 * 86_400_000 });
    const state = colonyOf([honest, ahead, flag]);
    expect(state.colony.current?.body.label).toBe('honest');
    expect(state.colony.contested.map(({ body }) => body.label)).toEqual(['ahead']);
    expect(state.clockFlagged).toEqual([{ entry: ahead.envelope.id, aheadMilliseconds: 899 * 86_400_000 }]);
  });

  test('entries that replace each other in a circle both stand', () => {
    const [a, b] = [sampleId(6, 1), sampleId(6, 2)];
    const one = entryOf('colony', colonyBody('one'), { id: a, replaces: [b] });
    const two = entryOf('colony', colonyBody('two'), { id: b, replaces: [a] });
    expect(colonyOf([one, two]).colony.current?.body.label).toBe('two');
    expect(colonyOf([one, two]).colony.contested).toHaveLength(1);
  });

  test('an erased value is gone, and does not bring back the one it superseded', () => {
    const body = (name: string) => ({
      name,
      number: null,
      addressWords: '',
      telephone: '',
      email: '',
      language: '',
      trade: 'hobby',
    });
    const first = entryOf('keeper', body('first'), { about: keeper });
    const second = entryOf('keeper', body('second'), { about: keeper, replaces: [first.envelope.id] });
    const erased: Entry = { ...second, salt: null, body: null };
    const state = fold(keeper, [first, erased]) as KeeperState;
    expect(state.keeper.current).toBeNull();
    expect(state.erased.map(({ written, kind }) => [written.entry, kind])).toEqual([[second.envelope.id, 'keeper']]);
    expect(summarise(state)).toMatchObject({ name: '', number: null });
  });
});

describe('lists and corrections', () => {
  const examination = (observedAt: string) => ({
    visit: sampleId(5, 2),
    apiary: sampleId(5, 1),
    observedAt,
    hiveState: 'living',
    depth: 'full',
    claim: 'nothing seen',
    boxes: [],
    beesShaken: true,
    light: null,
    hold: null,
    sealedBroodCombSides: null,
    signs: [],
    ropeTests: [],
    tests: [],
    finds: [],
    medicines: { asked: false, answer: null, lastOn: null, what: '' },
    combChanges: { asked: false, answer: null, lastOn: null, what: '' },
    measurements: [],
    remarks: '',
    photographs: [],
  });

  test('examinations never merge; the newest observation comes first, however late it was written', () => {
    const late = entryOf('examination', examination('2026-05-01T10:00:00.000Z'), { at: 5000 });
    const early = entryOf('examination', examination('2026-05-09T10:00:00.000Z'), { at: 10 });
    const { examinations } = colonyOf([late, early]);
    expect(examinations.map(({ body }) => body.observedAt.slice(8, 10))).toEqual(['09', '01']);
    expect(summarise(colonyOf([late, early]))).toMatchObject({
      examinations: 2,
      lastExaminedAt: '2026-05-09T10:00:00.000Z',
    });
  });

  test('a correction changes how an entry reads; the original and the reason stay', () => {
    const wrong = entryOf('note', { text: 'wrong' });
    const correct = (text: string, reason: string) =>
      entryOf('correction', { corrects: wrong.envelope.id, reason, version: 1, body: { text } });
    const [first, second] = [correct('better', 'typed wrong'), correct('right', 'still wrong')];
    const [read] = colonyOf([second, wrong, first]).notes;
    expect(read?.body).toEqual({ text: 'right' });
    expect(read?.original).toEqual({ text: 'wrong' });
    expect(read?.corrections.map(({ reason }) => reason)).toEqual(['typed wrong', 'still wrong']);
    const astray = entryOf('correction', { corrects: sampleId(9, 9), reason: 'x', version: 1, body: { text: 'y' } });
    expect(colonyOf([astray]).notes).toEqual([]);
  });
});

describe('what a newer program wrote', () => {
  const newerNote: Kind = {
    ...(note as Kind),
    version: 2,
    body: note.body.and(note.body) as Kind['body'],
    steps: [{ name: 'text is trimmed', lift: (body) => ({ text: (body as { text: string }).text.trim() }) }],
  };
  const weather: Kind = { ...(note as Kind), kind: 'weather', fold: { as: 'list', into: 'weather' } };
  const newer = kindTable([...[...kinds.values()].filter(({ kind }) => kind !== 'note'), newerNote, weather]);

  test('is kept as unknown, and applied after the update', () => {
    const entries = [
      entryOf('note', { text: ' old ' }),
      entryOf('note', { text: 'new' }, { version: 2 }),
      entryOf('weather', { text: 'rain' }, { version: 1 }),
    ];
    const before = fold(colony, entries);
    expect(before.unknown.map(({ kind, version }) => [kind, version])).toEqual([
      ['note', 2],
      ['weather', 1],
    ]);
    expect(before.notes).toHaveLength(1);
    expect(summarise(before).writtenByNewer).toBe(true);
    const after = fold(colony, entries, newer);
    expect(after.unknown).toEqual([]);
    expect(after.notes.map(({ body }) => body.text)).toEqual(['old', 'new']);
    expect((after as unknown as { weather: unknown[] }).weather).toHaveLength(1);
  });

  test('makes the fold’s version grow, so that states are folded again', () => {
    expect(foldVersionOf(newer)).toBeGreaterThan(foldVersion);
    expect(foldVersionOf(kinds)).toBe(foldVersion);
  });

  test('a table of kinds refuses doubles and missing steps', () => {
    expect(() => kindTable([note as Kind, note as Kind])).toThrow('listed twice');
    expect(() => kindTable([{ ...(note as Kind), version: 2 }])).toThrow('has 0 steps');
  });
});

describe('laws of the fold', () => {
  // Entries of one colony: register changes that saw some of the earlier ones, notes, corrections, clock flags.
  const story = fc
    .array(
      fc.record({
        act: fc.constantFrom('colony', 'note', 'correction', 'clock-flag'),
        at: fc.integer({ min: 0, max: 1000 }),
        device: fc.integer({ min: 1, max: 3 }),
        seen: fc.array(fc.nat(30), { maxLength: 3 }),
      }),
      { minLength: 1, maxLength: 25 },
    )
    .map((acts) => {
      const entries: Entry[] = [];
      for (const { act, at, device, seen } of acts) {
        const named = seen.flatMap((i) => entries[i]?.envelope.id ?? []);
        const about = named[0] ?? sampleId(8, 8);
        const options = { at, device, replaces: act === 'colony' ? named : [] };
        if (act === 'colony') entries.push(entryOf('colony', colonyBody(`hive ${entries.length}`), options));
        else if (act === 'note') entries.push(entryOf('note', { text: `note ${entries.length}` }, options));
        else if (act === 'correction') {
          const body = { corrects: about, reason: 'because', version: 1, body: { text: `n${entries.length}` } };
          entries.push(entryOf('correction', body, options));
        } else entries.push(entryOf('clock-flag', { entry: about, aheadMilliseconds: 1 }, options));
      }
      return entries;
    });

  test('order and repetition do not matter', () => {
    fc.assert(
      fc.property(story, fc.infiniteStream(fc.nat()), (entries, dice) => {
        const shuffled = [...entries, ...entries.slice(0, 3)]
          .map((entry) => ({ entry, key: dice.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        expect(fold(colony, shuffled)).toEqual(fold(colony, entries));
      }),
      { seed: 20_260_504, numRuns: 300 },
    );
  });

  test('every register value is current, contested or superseded, and each stays in the history', () => {
    fc.assert(
      fc.property(story, (entries) => {
        const { colony: register } = colonyOf(entries);
        const written = entries.filter(({ envelope }) => envelope.kind === 'colony').map(({ envelope }) => envelope);
        expect(register.history.map((item) => item.written.entry).sort()).toEqual(written.map(({ id }) => id).sort());
        const replaced = new Set(written.flatMap(({ replaces }) => replaces));
        const standing = [...register.contested, ...(register.current === null ? [] : [register.current])];
        const expected = written.filter(({ id }) => !replaced.has(id)).map(({ id }) => id);
        expect(standing.map((item) => item.written.entry).sort()).toEqual(expected.sort());
        expect(register.current === null).toBe(written.length === 0);
      }),
      { seed: 20_260_505, numRuns: 300 },
    );
  });

  test('the order by clock is total', () => {
    fc.assert(
      fc.property(story, (entries) => {
        const order = byClock(flaggedIn(entries));
        for (const a of entries) {
          for (const b of entries) {
            expect(Math.sign(order(a, b)) + Math.sign(order(b, a))).toBe(0);
            if (a !== b) expect(order(a, b)).not.toBe(0);
          }
        }
      }),
      { seed: 20_260_506, numRuns: 50 },
    );
  });
});
