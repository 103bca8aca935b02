/**
 * From the lines of a file to the entries that bring the register to say the same.
 *
 * WHO IS MEANT. A line names its keeper and its site by our own record, else by their number, else by what else it says:
 * a keeper by name together with an equal telephone, mail or address; a site by name together with its position or
 * address. Where nothing fits, it is new. Where several fit, the line is faulty: a person has to decide.
 *
 * TWICE CHANGES NOTHING. Whatever a first import entered is found again by the same rule, and a value that stands there
 * already is no change. Empty cells say nothing. So the same file gives no entry the second time.
 *
 * NOT BY HALVES. The plan is made for all lines before anything is written. Faulty lines are listed, and nothing is
 * proposed for a line that names a faulty one's record; whether to go on without them is the person's word.
 */
import type { Proposal } from '@combside/record/entry';
import { type ApiaryBody, apiary } from '@combside/record/kinds/apiary';
import { type KeeperBody, keeper } from '@combside/record/kinds/keeper';
import { reason } from '@combside/record/kinds/reason';
import { changedFields } from '../change.ts';
import { metresBetween, type Point } from '../distance.ts';
import { likenessKey, nameKey, numberKey, telephoneKey } from '../likeness.ts';
import type { ApiaryStanding, KeeperStanding, RegisterRowsHeld } from '../rows.ts';
import type { KeeperSaid, LineSaid, SiteSaid } from './read-lines.ts';
import { readCell } from './separated-text.ts';
import { type FaultId, type LineFault, lineFault } from './table.ts';

export interface ImportSettings {
  /** District into which new sites go. A site of another district is not changed. */
  readonly district: string;
  /** Language of new keepers where the file says none. */
  readonly language: string;
  /** Uncertainty in metres of a position where the file says none. */
  readonly uncertaintyMetres: number;
  /** Why, for each record that is entered or changed; for example the name of the file. Empty: none is given. */
  readonly reason: string;
}

export interface ImportCounts {
  readonly created: number;
  readonly changed: number;
  readonly same: number;
}

/** What a line would do, for the preview. */
export interface LinePlan {
  readonly line: number;
  readonly site: { readonly name: string; readonly does: Doing; readonly fields: readonly string[] } | null;
  readonly keeper: { readonly name: string; readonly does: Doing; readonly fields: readonly string[] } | null;
}
export type Doing = 'created' | 'changed' | 'same';

export interface ImportPlan {
  readonly proposals: readonly Proposal[];
  readonly keepers: ImportCounts;
  readonly sites: ImportCounts;
  readonly lines: readonly LinePlan[];
  readonly faults: readonly LineFault[];
}

/**
 * A position so far from the middle of the file's others, in metres, is a slip of the pen; a rule of ours, no source. It
 * needs so many others to have a middle.
 */
const strayMetres = 500_000;
const fewestForMiddle = 5;

/** Two records of one site by name lie at most so far apart, in metres; a rule of ours, no source. */
const sameSiteMetres = 250;

/** What an import is planned from. */
export interface ImportToPlan {
  readonly lines: readonly LineSaid[];
  /** The register as it stands; keepers and apiaries read as part of another are passed over. */
  readonly held: RegisterRowsHeld;
  readonly settings: ImportSettings;
  /** Makes identifiers. */
  readonly newId: () => string;
  /** Told of the number of lines done, now and then. */
  readonly progress?: (done: number) => void;
}

/** What the lines of a file would enter and change, each line whole or not at all. */
export function planImport({ lines, held, settings, newId, progress }: ImportToPlan): ImportPlan {
  const keepers = keeperDesk(held.keepers);
  const sites = siteDesk(held.apiaries);
  const middle = middleOf(lines);
  const faults: LineFault[] = [];
  const plans: LinePlan[] = [];

  lines.forEach((said, index) => {
    if (index % 1000 === 0) progress?.(index);
    const own: LineFault[] = [];
    const fault = (id: FaultId, value: string, values: LineFault['values'] = {}) => {
      own.push(lineFault(id, said.line, { value }, values));
      return null;
    };
    const siteFound = said.site ? sites.find(said.site, fault) : null;
    const keeperFound = said.keeper ? keepers.find(said.keeper, siteFound?.body.keeper ?? null, fault) : null;
    if (own.length > 0) {
      faults.push(...own);
      return;
    }
    const keeperDraft = said.keeper ? keeperWith(keeperFound, said.keeper, settings, fault) : null;
    const siteDraft = said.site ? siteWith(siteFound, said.site, settings, fault) : null;
    if (siteDraft && !samePosition(siteFound?.before?.position, siteDraft.position)) {
      strayFrom(middle, siteDraft.position, fault);
    }
    if (own.length > 0) {
      faults.push(...own);
      return;
    }
    // Both are looked at before either is entered, so that a line never goes in by halves.
    const keeperId = keeperDraft && (keeperFound?.id ?? newId());
    const keeperEntry = keeperDraft && { found: keeperFound, body: keeperDraft, says: saysOf(said.keeper) };
    const siteEntry = siteDraft && {
      found: siteFound,
      body: keeperId ? { ...siteDraft, keeper: keeperId } : siteDraft,
      says: keeperId ? [...saysOf(said.site), 'keeper'] : saysOf(said.site),
    };
    if (keeperEntry) clashOf(keeperEntry, fault);
    if (siteEntry) clashOf(siteEntry, fault);
    if (own.length > 0) {
      faults.push(...own);
      return;
    }
    const keeperItem = keeperEntry && keepers.enter(keeperEntry, keeperId ?? '', said.line);
    const siteItem = siteEntry && sites.enter(siteEntry, siteFound?.id ?? newId(), said.line);
    plans.push({
      line: said.line,
      site: siteItem ? { name: siteItem.body.name, ...doingOf(siteItem) } : null,
      keeper: keeperItem ? { name: keeperItem.body.name, ...doingOf(keeperItem) } : null,
    });
  });
  progress?.(lines.length);

  const proposals: Proposal[] = [];
  for (const item of keepers.items()) proposals.push(...proposalsFor(item, 'keeper', keeper, settings, newId));
  for (const item of sites.items()) proposals.push(...proposalsFor(item, 'apiary', apiary, settings, newId));
  return {
    proposals,
    keepers: countsOf(keepers.items()),
    sites: countsOf(sites.items()),
    lines: plans,
    faults: faults.sort((a, b) => a.line - b.line),
  };
}

/** The middle of the positions of a file: the median of either coordinate, which a few wrong ones do not move. */
function middleOf(lines: readonly LineSaid[]): Point | null {
  const latitudes: number[] = [];
  const longitudes: number[] = [];
  for (const { site } of lines) {
    if (site === null || site.latitude === null || site.longitude === null) continue;
    latitudes.push(site.latitude);
    longitudes.push(site.longitude);
  }
  if (latitudes.length < fewestForMiddle) return null;
  const median = (values: number[]) => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
  return { latitude: median(latitudes), longitude: median(longitudes) };
}

function strayFrom(middle: Point | null, position: ApiaryBody['position'], complain: Complain): void {
  if (middle === null || position === null) return;
  const { latitude, longitude } = position;
  const metres = metresBetween(middle, position);
  if (metres <= strayMetres) return;
  const exchanged = { latitude: longitude, longitude: latitude };
  const swapped = Math.abs(longitude) <= 90 && metresBetween(middle, exchanged) <= strayMetres;
  const kilometres = Math.round(metres / 1000);
  const value = `${latitude}, ${longitude}`;
  complain(swapped ? 'register.fault.position-swapped' : 'register.fault.position-far', value, { kilometres });
}

/** A record that lines of the file named, as it stood and as it is to be. */
interface Item<Body> {
  readonly id: string;
  readonly before: Body | null;
  readonly standing: readonly string[];
  body: Body;
  /** Fields of which a line of this file has spoken, and the first line that named the record. */
  readonly spoken: Set<string>;
  line: number;
}

type Complain = (id: FaultId, value: string, values?: LineFault['values']) => null;

/** What a line would do to a record: its body then, and the fields of which the line speaks. */
interface Entry<Body> {
  readonly found: Item<Body> | null;
  readonly body: Body;
  readonly says: readonly string[];
}

/** Refuses what a line may not do: change what is contested, or contradict an earlier line about the same record. */
function clashOf<Body extends object>({ found, body }: Entry<Body>, complain: Complain): void {
  if (!found) return;
  const changed = changedFields(found.body, body);
  if (changed.length > 0 && found.standing.length > 1) complain('register.fault.contested', nameIn(body));
  const field = changed.find((one) => found.spoken.has(one));
  if (field) complain('register.fault.twice-in-file', nameIn(body), { other: found.line, field });
}

function nameIn(body: object): string {
  return String((body as { name?: unknown }).name ?? '');
}

/** Top-level fields of a record of which a line speaks. */
function saysOf(said: object | null): string[] {
  const spoken = Object.entries(said ?? {}).flatMap(([field, value]) => (value === null ? [] : [field]));
  return spoken.some((field) => field === 'latitude' || field === 'uncertaintyMetres')
    ? [...spoken, 'position']
    : spoken;
}

/** Enters what lines say, and keeps what was touched in the order in which it was first named. */
function entering<Body extends object>(add: (item: Item<Body>) => void) {
  const touched = new Set<Item<Body>>();
  return {
    items: (): Iterable<Item<Body>> => touched,
    enter({ found, body, says }: Entry<Body>, id: string, line: number): Item<Body> {
      const item = found ?? { id, before: null, standing: [], body, spoken: new Set<string>(), line };
      if (!touched.has(item)) item.line = line;
      touched.add(item);
      const isNew = !found || changedFields(item.body, body).length > 0;
      item.body = body;
      for (const field of says) item.spoken.add(field);
      if (isNew) add(item);
      return item;
    },
  };
}

function keeperDesk(rows: readonly KeeperStanding[]) {
  const byId = new Map<string, Item<KeeperBody>>();
  const byNumber = new Map<string, Set<Item<KeeperBody>>>();
  const byName = new Map<string, Set<Item<KeeperBody>>>();
  const add = (item: Item<KeeperBody>) => {
    byId.set(item.id, item);
    put(byNumber, numberKey(item.body.number ?? ''), item);
    put(byName, keeperKey(item.body.name), item);
  };
  for (const row of rows) if (row.mergedInto === null) add(itemOf(row));

  return {
    ...entering<KeeperBody>(add),
    /** @param atSite the keeper whom the register names for the line's site */
    find(said: KeeperSaid, atSite: string | null, complain: Complain): Item<KeeperBody> | null {
      if (said.record) return byId.get(said.record) ?? complain('register.fault.record-not-there', said.record);
      const number = numberKey(said.number ?? '');
      if (number !== '') {
        const found = [...(byNumber.get(number) ?? [])];
        if (found.length === 1) return found[0] ?? null;
        if (found.length > 1)
          return complain('register.fault.several-match', said.number ?? '', { count: found.length });
      }
      if (!said.name) return null;
      const namesakes = [...(byName.get(keeperKey(said.name)) ?? [])].filter(
        ({ body }) => (number === '' || body.number === null) && !contradicts(body, said),
      );
      const sure = namesakes.filter((item) => item.id === atSite || agrees(item.body, said));
      if (sure.length > 1) return complain('register.fault.several-match', said.name, { count: sure.length });
      return sure[0] ?? null;
    },
  };
}

/** A name that holds neither letters nor digits is compared as it stands. */
function keeperKey(name: string): string {
  return nameKey(name) || name.trim();
}

function siteKey(name: string): string {
  return likenessKey(name) || name.trim();
}

function contradicts(body: KeeperBody, said: KeeperSaid): boolean {
  const differ = (a: string, b: string | null, key: (text: string) => string | null) =>
    a !== '' && b !== null && key(a) !== key(b);
  return (
    differ(body.telephone, said.telephone, telephoneKey) ||
    differ(body.email, said.email, (text) => text.toLowerCase()) ||
    differ(body.addressWords, said.addressWords, likenessKey)
  );
}

/** An equal telephone, mail or address; or neither side has any. */
function agrees(body: KeeperBody, said: KeeperSaid): boolean {
  const equal = (a: string, b: string | null, key: (text: string) => string | null) =>
    a !== '' && b !== null && key(a) === key(b);
  if (equal(body.telephone, said.telephone, telephoneKey)) return true;
  if (equal(body.email, said.email, (text) => text.toLowerCase())) return true;
  if (equal(body.addressWords, said.addressWords, likenessKey)) return true;
  return !body.telephone && !body.email && !body.addressWords && !said.telephone && !said.email && !said.addressWords;
}

function siteDesk(rows: readonly ApiaryStanding[]) {
  const byId = new Map<string, Item<ApiaryBody>>();
  const byNumber = new Map<string, Set<Item<ApiaryBody>>>();
  const byName = new Map<string, Set<Item<ApiaryBody>>>();
  const add = (item: Item<ApiaryBody>) => {
    byId.set(item.id, item);
    put(byNumber, numberKey(item.body.number ?? ''), item);
    put(byName, siteKey(item.body.name), item);
  };
  for (const row of rows) if (row.mergedInto === null) add(itemOf(row));

  return {
    ...entering<ApiaryBody>(add),
    find(said: SiteSaid, complain: Complain): Item<ApiaryBody> | null {
      if (said.record) return byId.get(said.record) ?? complain('register.fault.record-not-there', said.record);
      const number = numberKey(said.number ?? '');
      if (number !== '') {
        const found = [...(byNumber.get(number) ?? [])];
        if (found.length === 1) return found[0] ?? null;
        if (found.length > 1)
          return complain('register.fault.several-match', said.number ?? '', { count: found.length });
      }
      const name = siteNameOf(said);
      if (name === null) return null;
      const fitting = [...(byName.get(siteKey(name)) ?? [])].filter(
        ({ body }) => (number === '' || body.number === null) && samePlace(body, said),
      );
      if (fitting.length > 1) return complain('register.fault.several-match', name, { count: fitting.length });
      return fitting[0] ?? null;
    },
  };
}

function samePlace(body: ApiaryBody, said: SiteSaid): boolean {
  if (said.latitude !== null && said.longitude !== null) {
    const at = { latitude: said.latitude, longitude: said.longitude };
    return body.position !== null && metresBetween(body.position, at) <= sameSiteMetres;
  }
  return likenessKey(body.addressWords) === likenessKey(said.addressWords ?? '');
}

/** A site without a name of its own is called by its address, or by its number. */
function siteNameOf(said: SiteSaid): string | null {
  return said.name ?? said.addressWords?.slice(0, 200) ?? said.number;
}

function keeperWith(
  found: Item<KeeperBody> | null,
  said: KeeperSaid,
  settings: ImportSettings,
  complain: Complain,
): KeeperBody | null {
  const before = found?.body;
  const name = said.name ?? before?.name ?? null;
  if (name === null) return complain('register.fault.keeper-without-name', said.number ?? said.telephone ?? '');
  return {
    name: kept(said.name, before?.name) ?? name,
    number: kept(said.number, before?.number ?? null),
    addressWords: kept(said.addressWords, before?.addressWords) ?? '',
    telephone: kept(said.telephone, before?.telephone) ?? '',
    email: kept(said.email, before?.email) ?? '',
    language: kept(said.language, before?.language) ?? settings.language,
    trade: said.trade ?? before?.trade ?? 'not known',
  };
}

/** What a line says, or what stands there where it says nothing or the same but for blanks around it. */
function kept<Before extends string | null | undefined>(said: string | null, before: Before): string | Before {
  const same = said === null || (typeof before === 'string' && [before.trim(), readCell(before)].includes(said));
  return same ? before : said;
}

function siteWith(
  found: Item<ApiaryBody> | null,
  said: SiteSaid,
  settings: ImportSettings,
  complain: Complain,
): ApiaryBody | null {
  const before = found?.body;
  if (before && before.district !== settings.district) {
    return complain('register.fault.other-district', before.name, { district: before.district });
  }
  const name = said.name ?? before?.name ?? siteNameOf(said);
  if (name === null) return complain('register.fault.site-without-name', '');
  return {
    name: kept(said.name, before?.name) ?? name,
    number: kept(said.number, before?.number ?? null),
    keeper: before?.keeper ?? null,
    district: settings.district,
    position: positionWith(before?.position ?? null, said, settings),
    addressWords: kept(said.addressWords, before?.addressWords) ?? '',
    lastConfirmedOn: said.lastConfirmedOn ?? before?.lastConfirmedOn ?? null,
    coloniesRegistered: said.coloniesRegistered ?? before?.coloniesRegistered ?? null,
    plan: before?.plan ?? null,
  };
}

/** The same coordinates keep how they were found; others come from this file. */
function positionWith(
  before: ApiaryBody['position'],
  said: SiteSaid,
  settings: ImportSettings,
): ApiaryBody['position'] {
  const { latitude, longitude } = said;
  if (latitude === null || longitude === null) return before;
  if (before && near(before.latitude, latitude) && near(before.longitude, longitude)) {
    return said.uncertaintyMetres === null ? before : { ...before, uncertaintyMetres: said.uncertaintyMetres };
  }
  const uncertaintyMetres = said.uncertaintyMetres ?? settings.uncertaintyMetres;
  return { latitude, longitude, uncertaintyMetres, how: 'imported' };
}

function samePosition(before: ApiaryBody['position'] | undefined, after: ApiaryBody['position']): boolean {
  return !!before && !!after && near(before.latitude, after.latitude) && near(before.longitude, after.longitude);
}

/** Equal to the seventh decimal place, to which coordinates are read: about a centimetre. */
function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 0.6e-7;
}

function itemOf<Body>(row: {
  readonly id: string;
  readonly standing: readonly string[];
  readonly body: Body;
}): Item<Body> {
  return { id: row.id, before: row.body, standing: row.standing, body: row.body, spoken: new Set(), line: 0 };
}

function put<Item>(map: Map<string, Set<Item>>, key: string, item: Item): void {
  if (key === '') return;
  const list = map.get(key);
  if (list) list.add(item);
  else map.set(key, new Set([item]));
}

function doingOf<Body extends object>(item: Item<Body>): { does: Doing; fields: readonly string[] } {
  if (!item.before) return { does: 'created', fields: [] };
  const fields = changedFields(item.before, item.body);
  return { does: fields.length > 0 ? 'changed' : 'same', fields };
}

function countsOf<Body extends object>(items: Iterable<Item<Body>>): ImportCounts {
  const counts = { created: 0, changed: 0, same: 0 };
  for (const item of items) counts[doingOf(item).does] += 1;
  return counts;
}

function proposalsFor<Body extends object>(
  item: Item<Body>,
  type: 'keeper' | 'apiary',
  kind: { readonly kind: string; readonly version: number },
  settings: ImportSettings,
  newId: () => string,
): Proposal[] {
  const { does } = doingOf(item);
  if (does === 'same') return [];
  const about = { type, id: item.id };
  const entered = { kind: kind.kind, version: kind.version, about, body: item.body, replaces: item.standing };
  if (settings.reason === '') return [entered];
  const id = newId();
  const body = { explains: id, text: settings.reason };
  return [
    { ...entered, id },
    { kind: reason.kind, version: reason.version, about, body, replaces: [] },
  ];
}
