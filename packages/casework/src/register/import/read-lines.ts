import type { KeeperBody } from '@combside/record/kinds/keeper';
import { likenessKey } from '../likeness.ts';
import { type DateOrder, dateOrderOf, readCoordinate, readDate, readNumber } from './cells.ts';
import { type Columns, type Field, fields } from './columns.ts';
import { readCell } from './separated-text.ts';
import { type FaultId, type LineFault, lineFault, type Table, type TableRow } from './table.ts';

/** What a line says of a site; null where it says nothing. */
export interface SiteSaid {
  readonly record: string | null;
  readonly number: string | null;
  readonly name: string | null;
  readonly addressWords: string | null;
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly uncertaintyMetres: number | null;
  readonly coloniesRegistered: number | null;
  readonly lastConfirmedOn: string | null;
}

/** What a line says of a keeper; null where it says nothing. */
export interface KeeperSaid {
  readonly record: string | null;
  readonly number: string | null;
  readonly name: string | null;
  readonly addressWords: string | null;
  readonly telephone: string | null;
  readonly email: string | null;
  readonly language: string | null;
  readonly trade: KeeperBody['trade'] | null;
}

/** A line that could be read. `site` or `keeper` is null where the line holds nothing of it. */
export interface LineSaid {
  readonly line: number;
  readonly site: SiteSaid | null;
  readonly keeper: KeeperSaid | null;
}

export interface LinesRead {
  readonly lines: readonly LineSaid[];
  readonly faults: readonly LineFault[];
  /** Order of day and month that was found or given; null when no date needed it. */
  readonly dateOrder: DateOrder | null;
}

export interface ReadingOptions {
  /** Order of day and month as the person said it; null: as the column itself tells. */
  readonly dateOrder: DateOrder | null;
  /** The day of the import, `YYYY-MM-DD`: nothing was confirmed after it. */
  readonly today: string;
}

/** Longest texts that the register holds. */
const longest: Partial<Record<Field, number>> = {
  siteNumber: 60,
  siteName: 200,
  siteAddress: 500,
  keeperNumber: 60,
  keeperName: 200,
  keeperAddress: 500,
  telephone: 60,
  email: 200,
  language: 20,
};

const trades: Readonly<Record<KeeperBody['trade'], readonly string[]>> = {
  hobby: ['hobby', 'hobbyist', 'amateur', 'freizeit', 'freizeitimkerei', 'hobbyimkerei', 'hobbyimker'],
  sideline: ['sideline', 'side line', 'part time', 'nebenerwerb', 'nebenerwerbsimkerei'],
  commercial: ['commercial', 'professional', 'full time', 'haupterwerb', 'erwerbsimkerei', 'berufsimkerei'],
  migratory: ['migratory', 'wandering', 'wanderimker', 'wanderimkerei'],
  'not known': ['not known', 'unknown', 'unbekannt', 'nicht bekannt', '?'],
};

const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/**
 * Reads the lines of a table by what its columns mean. A line with a fault is not among `lines`. An empty cell says
 * nothing; it never takes something out of the register.
 */
export function readLines(table: Table, columns: Columns, options: ReadingOptions): LinesRead {
  const place = new Map<Field, number>();
  columns.forEach((field, index) => {
    if (field) place.set(field, index);
  });
  const dates = place.get('lastConfirmedOn');
  const dateOrder =
    options.dateOrder ??
    (dates === undefined ? null : dateOrderOf(table.rows.map((row) => readCell(row.cells[dates] ?? ''))));
  const broken = new Set(table.faults.map((fault) => fault.line));
  const faults: LineFault[] = [...table.faults];
  const lines: LineSaid[] = [];
  for (const row of table.rows) {
    if (broken.has(row.line)) continue;
    const reading = new LineReading(row, table.header, place, { ...options, dateOrder });
    const said = reading.read();
    if (reading.faults.length > 0) faults.push(...reading.faults);
    else if (said) lines.push(said);
  }
  return { lines, faults: faults.sort((a, b) => a.line - b.line), dateOrder };
}

class LineReading {
  readonly faults: LineFault[] = [];
  private readonly row: TableRow;
  private readonly header: readonly string[];
  private readonly place: ReadonlyMap<Field, number>;
  private readonly options: ReadingOptions;

  constructor(row: TableRow, header: readonly string[], place: ReadonlyMap<Field, number>, options: ReadingOptions) {
    this.row = row;
    this.header = header;
    this.place = place;
    this.options = options;
  }

  read(): LineSaid | null {
    const site: SiteSaid = {
      record: this.record('siteRecord'),
      number: this.text('siteNumber'),
      name: this.text('siteName'),
      addressWords: this.text('siteAddress'),
      ...this.position(),
      uncertaintyMetres: this.number('uncertaintyMetres', 1e-6, 20_100_000),
      coloniesRegistered: this.whole('coloniesRegistered', 0, 100_000),
      lastConfirmedOn: this.date('lastConfirmedOn'),
    };
    const keeper: KeeperSaid = {
      record: this.record('keeperRecord'),
      number: this.text('keeperNumber'),
      name: this.text('keeperName'),
      addressWords: this.text('keeperAddress'),
      telephone: this.text('telephone'),
      email: this.email(),
      language: this.text('language'),
      trade: this.trade(),
    };
    const saysSite = Object.values(site).some((value) => value !== null);
    const saysKeeper = Object.values(keeper).some((value) => value !== null);
    if (!saysSite && !saysKeeper && this.faults.length === 0) {
      // A line whose only cells stand in columns that are left out says nothing, which should be seen.
      this.faults.push(lineFault('register.fault.line-says-nothing', this.row.line));
    }
    if (this.faults.length > 0) return null;
    return { line: this.row.line, site: saysSite ? site : null, keeper: saysKeeper ? keeper : null };
  }

  private cell(field: Field): string {
    const at = this.place.get(field);
    if (at === undefined) return '';
    const text = readCell(this.row.cells[at] ?? '');
    if (/\uFFFD|(?![\t\n\v\f\r])\p{Cc}/u.test(text)) {
      this.fault('register.fault.unreadable-letter', field, text);
      return '';
    }
    return text;
  }

  private fault(id: FaultId, field: Field, value: string, values: LineFault['values'] = {}): null {
    const index = this.place.get(field) ?? 0;
    const where = { column: index + 1, header: this.header[index] ?? '', value };
    this.faults.push(lineFault(id, this.row.line, where, values));
    return null;
  }

  private text(field: Field): string | null {
    const text = this.cell(field);
    if (text === '') return null;
    const most = longest[field] ?? 500;
    return text.length > most ? this.fault('register.fault.too-long', field, text, { most }) : text;
  }

  private record(field: 'siteRecord' | 'keeperRecord'): string | null {
    const text = this.cell(field).toLowerCase();
    if (text === '') return null;
    return uuid.test(text) ? text : this.fault('register.fault.record-not-read', field, text);
  }

  private number(field: Field, from: number, to: number): number | null {
    const text = this.cell(field);
    if (text === '') return null;
    const value = readNumber(text);
    if (value === null) return this.fault('register.fault.number-not-read', field, text);
    return value < from || value > to
      ? this.fault('register.fault.number-out-of-range', field, text, { from, to })
      : value;
  }

  private whole(field: Field, from: number, to: number): number | null {
    const value = this.number(field, from, to);
    return value === null || Number.isInteger(value)
      ? value
      : this.fault('register.fault.number-not-whole', field, this.cell(field));
  }

  private coordinate(field: 'latitude' | 'longitude', most: number): number | null {
    const text = this.cell(field);
    if (text === '') return null;
    const value = readCoordinate(text, field);
    if (value === null) return this.fault('register.fault.coordinate-not-read', field, text);
    if (Math.abs(value) > most) {
      return this.fault('register.fault.number-out-of-range', field, text, { from: -most, to: most });
    }
    return Math.round(value * 1e7) / 1e7;
  }

  private position(): { latitude: number | null; longitude: number | null } {
    const before = this.faults.length;
    const latitude = this.coordinate('latitude', 90);
    const longitude = this.coordinate('longitude', 180);
    if (this.faults.length > before) return { latitude: null, longitude: null };
    if ((latitude === null) !== (longitude === null)) {
      const missing = latitude === null ? 'latitude' : 'longitude';
      this.fault('register.fault.position-half', missing, '');
    } else if (latitude === 0 && longitude === 0) {
      this.fault('register.fault.position-zero', 'latitude', '0, 0');
    }
    return { latitude, longitude };
  }

  private date(field: 'lastConfirmedOn'): string | null {
    const text = this.cell(field);
    if (text === '') return null;
    const date = readDate(text, this.options.dateOrder);
    if (date === 'order') return this.fault('register.fault.date-order-unknown', field, text);
    if (date === null) return this.fault('register.fault.date-not-read', field, text);
    return date > this.options.today ? this.fault('register.fault.date-in-future', field, text) : date;
  }

  private email(): string | null {
    const text = this.text('email');
    if (text === null) return null;
    return /^[^\s@]+@[^\s@]+\.[^\s@.]+$/.test(text) ? text : this.fault('register.fault.mail-not-read', 'email', text);
  }

  private trade(): KeeperBody['trade'] | null {
    const text = this.cell('trade');
    if (text === '') return null;
    const key = text === '?' ? text : likenessKey(text);
    const found = (Object.keys(trades) as KeeperBody['trade'][]).find((trade) => trades[trade].includes(key));
    return found ?? this.fault('register.fault.word-unknown', 'trade', text, { words: Object.keys(trades).join(', ') });
  }
}

/** Fields that make a file worth reading: something that names a site or a keeper. */
export function namesSomething(columns: Columns): boolean {
  const naming: readonly Field[] = fields.filter((field) => /Record$|Number$|Name$|^siteAddress$/.test(field));
  return columns.some((field) => field !== null && naming.includes(field));
}
