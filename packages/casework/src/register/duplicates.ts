import { metresBetween, type Point } from './distance.ts';
import { likeness, likenessKey, nameKey, numberKey, telephoneKey } from './likeness.ts';
import type { ApiaryStanding, KeeperStanding, RegisterRowsHeld } from './rows.ts';

/** Why two records look like one; each is the id of a sentence in `words`. */
export const duplicateReasons = [
  'register.duplicate.same-number',
  'register.duplicate.same-telephone',
  'register.duplicate.same-mail',
  'register.duplicate.same-name-and-address',
  'register.duplicate.like-name-same-address',
  'register.duplicate.same-name',
  'register.duplicate.same-place',
  'register.duplicate.same-keeper',
  'register.duplicate.keeper-not-known',
  'register.duplicate.like-name',
] as const;
export type DuplicateReason = (typeof duplicateReasons)[number];

/** Two records that may be one. `kept` is the older, of which the other would be read as part. */
export interface DuplicatePair {
  readonly type: 'keeper' | 'apiary';
  readonly kept: string;
  readonly other: string;
  readonly reasons: readonly { readonly id: DuplicateReason; readonly values: Readonly<Record<string, number>> }[];
  /** Larger is likelier; orders the list and says nothing else. */
  readonly weight: number;
}

/**
 * How far apart two positions of one site may be, in metres: what either is uncertain by, and the width of an apiary.
 * Rules of ours, no source.
 */
const widthOfApiary = 30;
const furthest = 1000;

/** From here on two names are taken to be spellings of one; a rule of ours, tried on the demonstration district. */
const alike = 0.9;

/** Larger groups that share a value, such as one telephone of a whole association, say nothing about any two of them. */
const largestGroup = 30;

/** Proposes records that may be one and the same. Nobody is merged by it: a person looks and decides. */
export function proposeDuplicates(held: RegisterRowsHeld): DuplicatePair[] {
  const pairs = [...keeperPairs(held.keepers.filter(stands)), ...apiaryPairs(held.apiaries.filter(stands))];
  return pairs.sort((a, b) => b.weight - a.weight || (a.kept + a.other < b.kept + b.other ? -1 : 1));
}

function stands(row: KeeperStanding | ApiaryStanding): boolean {
  return row.mergedInto === null;
}

type Reasons = Map<DuplicateReason, Readonly<Record<string, number>>>;

/** Collects reasons by pair; a pair that was told apart stays apart. */
class Pairs<Row extends KeeperStanding | ApiaryStanding> {
  private readonly found = new Map<string, { a: Row; b: Row; reasons: Reasons }>();

  add(one: Row, two: Row, reason: DuplicateReason, values: Readonly<Record<string, number>> = {}): void {
    if (one.id === two.id || one.notTheSame.includes(two.id) || two.notTheSame.includes(one.id)) return;
    const [a, b] = (one.id < two.id ? [one, two] : [two, one]) as [Row, Row];
    const key = `${a.id} ${b.id}`;
    const pair = this.found.get(key) ?? { a, b, reasons: new Map() };
    pair.reasons.set(reason, values);
    this.found.set(key, pair);
  }

  list(type: DuplicatePair['type'], weigh: (a: Row, b: Row, reasons: Reasons) => number): DuplicatePair[] {
    return [...this.found.values()].flatMap(({ a, b, reasons }) => {
      const weight = weigh(a, b, reasons);
      if (weight <= 0) return [];
      const told = [...reasons].map(([id, values]) => ({ id, values }));
      return [{ type, kept: a.id, other: b.id, reasons: told, weight }];
    });
  }
}

function keeperPairs(rows: readonly KeeperStanding[]): DuplicatePair[] {
  const pairs = new Pairs<KeeperStanding>();
  const inGroups = (
    key: (row: KeeperStanding) => string | null,
    each: (a: KeeperStanding, b: KeeperStanding) => void,
  ) => {
    for (const group of grouped(rows, key)) {
      if (group.length > largestGroup) continue;
      group.forEach((a, at) => {
        for (const b of group.slice(at + 1)) each(a, b);
      });
    }
  };
  inGroups(
    ({ body }) => numberKey(body.number ?? '') || null,
    (a, b) => pairs.add(a, b, 'register.duplicate.same-number'),
  );
  inGroups(
    ({ body }) => telephoneKey(body.telephone),
    (a, b) => {
      pairs.add(a, b, 'register.duplicate.same-telephone');
      const [left, right] = [nameKey(a.body.name), nameKey(b.body.name)];
      if (left !== right && likeness(left, right) >= alike) pairs.add(a, b, 'register.duplicate.like-name');
    },
  );
  inGroups(
    ({ body }) => body.email.trim().toLowerCase() || null,
    (a, b) => pairs.add(a, b, 'register.duplicate.same-mail'),
  );
  inGroups(
    ({ body }) => (body.addressWords.trim() === '' ? null : likenessKey(body.addressWords)),
    (a, b) => {
      const [left, right] = [nameKey(a.body.name), nameKey(b.body.name)];
      if (left === right) pairs.add(a, b, 'register.duplicate.same-name-and-address');
      else if (likeness(left, right) >= alike) pairs.add(a, b, 'register.duplicate.like-name-same-address');
    },
  );
  inGroups(
    ({ body }) => nameKey(body.name) || null,
    (a, b) => pairs.add(a, b, 'register.duplicate.same-name'),
  );
  return pairs.list('keeper', (a, b, reasons) => {
    const has = (id: DuplicateReason) => reasons.has(id);
    // Two numbers of one register are two keepers, whatever else they share.
    const numbers = [a.body.number, b.body.number].map((number) => numberKey(number ?? ''));
    const apart = numbers[0] !== '' && numbers[1] !== '' && numbers[0] !== numbers[1];
    const near = likeness(nameKey(a.body.name), nameKey(b.body.name));
    let weight = 0;
    if (has('register.duplicate.same-number')) weight += 5;
    if (has('register.duplicate.same-name-and-address')) weight += 4;
    if (has('register.duplicate.like-name-same-address')) weight += 2;
    if (has('register.duplicate.same-telephone')) weight += near >= alike ? 3 : 1;
    if (has('register.duplicate.same-mail')) weight += near >= alike ? 3 : 1;
    if (has('register.duplicate.same-name')) weight += 1;
    return apart ? weight - 3 : weight;
  });
}

function apiaryPairs(rows: readonly ApiaryStanding[]): DuplicatePair[] {
  const pairs = new Pairs<ApiaryStanding>();
  for (const group of grouped(rows, ({ body }) => numberKey(body.number ?? '') || null)) {
    if (group.length > largestGroup) continue;
    group.forEach((a, at) => {
      for (const b of group.slice(at + 1)) pairs.add(a, b, 'register.duplicate.same-number');
    });
  }
  for (const [a, b, metres] of nearPairs(rows)) {
    const sameKeeper = a.body.keeper !== null && a.body.keeper === b.body.keeper;
    const oneUnknown = (a.body.keeper === null) !== (b.body.keeper === null);
    const names = likeness(likenessKey(a.body.name), likenessKey(b.body.name));
    // Hives of two known keepers may well stand beside each other; only a like name makes one site of them.
    if (!sameKeeper && !oneUnknown && names < alike && a.body.keeper !== null) continue;
    pairs.add(a, b, 'register.duplicate.same-place', { metres: Math.round(metres) });
    if (sameKeeper) pairs.add(a, b, 'register.duplicate.same-keeper');
    else if (oneUnknown) pairs.add(a, b, 'register.duplicate.keeper-not-known');
    if (names >= alike) pairs.add(a, b, 'register.duplicate.like-name');
  }
  return pairs.list('apiary', (_a, _b, reasons) => {
    const has = (id: DuplicateReason) => reasons.has(id);
    const metres = reasons.get('register.duplicate.same-place')?.metres;
    let weight = 0;
    if (has('register.duplicate.same-number')) weight += 5;
    if (metres !== undefined) weight += 1 + 1 / (1 + metres / widthOfApiary);
    if (has('register.duplicate.same-keeper')) weight += 2;
    if (has('register.duplicate.keeper-not-known')) weight += 0.5;
    if (has('register.duplicate.like-name')) weight += 1;
    return weight;
  });
}

/**
 * Pairs whose positions may be one place, with their distance in metres; found by cells of longitude within bands of
 * latitude, so that a quarter of a million sites take a moment.
 */
function* nearPairs(rows: readonly ApiaryStanding[]): Generator<[ApiaryStanding, ApiaryStanding, number]> {
  const cells = new Map<string, ApiaryStanding[]>();
  for (const row of rows) {
    const { position } = row.body;
    if (position === null) continue;
    for (const name of cellsAround(position, 0)) {
      const list = cells.get(name);
      if (list) list.push(row);
      else cells.set(name, [row]);
    }
  }
  for (const row of rows) {
    const { position } = row.body;
    if (position === null) continue;
    for (const name of cellsAround(position, 1)) {
      for (const other of cells.get(name) ?? []) {
        if (row.id >= other.id || other.body.position === null) continue;
        const metres = metresBetween(position, other.body.position);
        const unsure = position.uncertaintyMetres + other.body.position.uncertaintyMetres;
        if (metres <= Math.min(furthest, widthOfApiary + unsure)) yield [row, other, metres];
      }
    }
  }
}

const bandDegrees = furthest / 111_000;

/** Names of the cell of a position, and of those around it so many cells far; each cell is at least `furthest` wide. */
function cellsAround({ latitude, longitude }: Point, far: number): string[] {
  const names = new Set<string>();
  const band = Math.floor(latitude / bandDegrees);
  for (let north = band - far; north <= band + far; north++) {
    // A band's cells are as wide in degrees as its narrower edge asks for, and close around the pole and the 180th meridian.
    const edge = Math.min(89.9, Math.max(Math.abs(north), Math.abs(north + 1)) * bandDegrees);
    const count = Math.max(1, Math.floor((360 * Math.cos((edge / 180) * Math.PI)) / bandDegrees));
    const at = Math.floor(((((longitude + 180) % 360) + 360) % 360) / (360 / count));
    for (let east = at - far; east <= at + far; east++) names.add(`${north} ${((east % count) + count) % count}`);
  }
  return [...names];
}

function grouped<Row>(rows: readonly Row[], key: (row: Row) => string | null): Row[][] {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const name = key(row);
    if (name === null) continue;
    const list = groups.get(name);
    if (list) list.push(row);
    else groups.set(name, [row]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}
