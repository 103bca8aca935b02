import { type ImportPlan, planImport } from '@combside/casework/register/import/plan-import';
import { readLines } from '@combside/casework/register/import/read-lines';
import type { LineFault, Table } from '@combside/casework/register/import/table';
import { newIdentifier } from '@combside/record/identifier';
import { webChance, webClock } from '../../../device/keys/web-ports.ts';
import { fetchRegister } from '../fetch-rows.ts';
import type { FromImporter, ToImporter, Wishes } from './messages.ts';
import { readFile } from './read-file.ts';

/** Reads, compares and plans beside the page, so that a hundred thousand rows hold nothing up. Ended to cancel. */
const scope = self as unknown as DedicatedWorkerGlobalScope;
const tell = (message: FromImporter) => scope.postMessage(message);

const shownRows = 3;
const shownLines = 20;

/** Uncertainty of a position that comes without one, in metres: nobody said how it was found. A rule of ours. */
const uncertaintyMetres = 100;

let table: Table | null = null;
let plan: ImportPlan | null = null;

scope.addEventListener('message', ({ data }: MessageEvent<ToImporter>) => {
  const work =
    data.ask === 'read' ? read(data.file, data.sheet) : data.ask === 'plan' ? makePlan(data.wishes) : handOver();
  work.catch((failure: unknown) => {
    tell({ told: 'failed' });
    // Handed on, so that the fault report has it.
    void Promise.reject(failure);
  });
});

async function read(file: File, sheet: string | null): Promise<void> {
  const found = await readFile(file, sheet);
  if (typeof found === 'string') {
    tell({ told: 'unreadable', why: found });
    return;
  }
  table = found.table;
  const { header, rows, faults } = table;
  const ofHeader = ['register.fault.no-header', 'register.fault.not-json', 'register.fault.not-features'];
  tell({
    told: 'read',
    file: {
      name: file.name,
      encoding: found.encoding,
      sheets: found.sheets,
      sheet: found.sheet,
      rows: rows.length,
      header,
      examples: rows.slice(0, shownRows).map(({ cells }) => cells),
      headerFaults: faults.filter((one) => ofHeader.includes(one.id)),
    },
  });
}

async function makePlan(wishes: Wishes): Promise<void> {
  if (!table) throw new Error('a plan was asked for before a file was read');
  plan = null;
  // The whole register one may read: a keeper known from another district is the same keeper.
  const held = await fetchRegister(null, (count) => tell({ told: 'fetching', count }));
  const { columns, dateOrder, today, district, language, reason } = wishes;
  const said = readLines(table, columns, { dateOrder, today });
  const of = table.rows.length;
  const newId = () => newIdentifier(webClock, webChance);
  const settings = { district, language, uncertaintyMetres, reason };
  const progress = (done: number) => tell({ told: 'planning', done, of });
  plan = planImport({ lines: said.lines, held, settings, newId, progress });
  const faults: LineFault[] = [...said.faults, ...plan.faults].sort((a, b) => a.line - b.line);
  tell({
    told: 'planned',
    preview: {
      sites: plan.sites,
      keepers: plan.keepers,
      entries: plan.proposals.length,
      faultyLines: new Set(faults.map(({ line }) => line)).size,
      faults,
      lines: plan.lines.slice(0, shownLines),
    },
  });
}

async function handOver(): Promise<void> {
  if (!plan) throw new Error('entries were asked for before a plan was made');
  tell({ told: 'taken', proposals: plan.proposals });
}
