import type { Apiaries, ApiaryLine } from '@combside/contract/apiaries';
import type { FigureLine, Figures } from '@combside/contract/figures';
import type { DutyLine, Owed } from '@combside/contract/owed';
import type { People } from '@combside/contract/people';
import type { Planning, RankedLine } from '@combside/contract/planning';
import type { VisitLine, Visits } from '@combside/contract/visits';
import { firstInstant, stageDay } from './day.ts';

// Answers of an office for the looks of the desk. All of it is invented, the numbers too: only the words are the trade's.

const idOf = (kind: number, number: number) =>
  `01900000-0000-7000-8000-${String(kind).padStart(4, '0')}${String(number).padStart(8, '0')}`;
const inspectorName = 'Ines Marrowby';

/** One line of the register. @param name may be as long as a test likes */
function apiaryLine(number: number, name: string): ApiaryLine {
  return {
    apiary: idOf(1, number),
    name,
    number: `QM-${1000 + number}`,
    district: 'quillmoor',
    keeper: idOf(2, number),
    keeperName: 'Tamsin Oakendale (invented)',
    latitude: 56.4,
    longitude: 3.4,
    uncertaintyMetres: 8,
    lastConfirmedOn: '2026-01-10',
    coloniesRegistered: 6,
    mark: number % 3 === 0 ? 'suspect' : 'nothing seen with this look',
  };
}

function visitLine(number: number, name: string, made: boolean): VisitLine {
  return {
    visit: idOf(3, number),
    apiary: idOf(1, number),
    apiaryName: name,
    district: 'quillmoor',
    inspector: idOf(4, 1),
    inspectorName,
    reason: 'suspicion reported',
    plannedFor: firstInstant,
    startedAt: made ? firstInstant : null,
    endedAt: made ? firstInstant : null,
    colonies: made ? 6 : 0,
    results: made
      ? [
          { result: 'suspect', colonies: 1 },
          { result: 'too little brood to judge', colonies: 5 },
        ]
      : [],
  };
}

function dutyLine(number: number, name: string, duty: string): DutyLine {
  return {
    duty,
    rule: duty,
    owedBy: 'inspector',
    condition: 'american-foulbrood',
    apiary: idOf(1, number),
    apiaryName: name,
    colony: null,
    colonyLabel: null,
    since: firstInstant,
    notBefore: null,
    due: number % 2 === 0 ? firstInstant : null,
    promptness: number % 2 === 0 ? null : 'at once',
    late: number % 2 === 0,
    article: 'art. 4 (invented)',
  };
}

const everyGround = [
  'suspicion reported',
  'case nearby',
  'owner link',
  'trade',
  'request',
  'time since last visit',
  'unconfirmed site',
] as const;

function rankedLine(number: number, name: string): RankedLine {
  return {
    ...apiaryLine(number, name),
    points: 100 - (number % 100),
    grounds: everyGround.map((ground) => ({
      ground,
      held: 1,
      points: 10,
      from: idOf(1, 7),
      fromName: name,
      metres: 1234,
      days: 56,
    })),
    lastVisitedOn: '2025-06-01',
    colonies: 6,
    suspect: number % 3 === 0,
    toOpen: 4,
    chance: 0.8,
    planned: [{ visit: idOf(3, number), inspectorName, plannedFor: firstInstant, reason: 'routine' }],
    asked: [{ visit: idOf(5, number), reason: 'look again' }],
  };
}

const share = (id: readonly string[]): FigureLine => ({ id: [...id], count: 12, of: 345, low: 0.018, high: 0.06 });
const count = (id: readonly string[]): FigureLine => ({ id: [...id], count: 1234, of: null, low: null, high: null });

const everyFigure: FigureLine[] = [
  count(['inspected']),
  count(['colonies', 'full']),
  count(['apiaries', 'part']),
  count(['examinations', 'laboratory only']),
  count(['suspicions', 'american-foulbrood', 'pack rule', 'full']),
  share(['prevalence', 'american-foulbrood', 'full']),
  share(['apiary prevalence', 'american-foulbrood', 'full']),
  share(['within', 'american-foulbrood']),
  share(['incidence', 'american-foulbrood']),
  share(['coverage', 'colonies']),
  share(['yield', 'suspicion reported']),
  count(['yield colonies', 'suspicion reported']),
  share(['found by', 'a laboratory']),
  count(['finds', 'varroa']),
  count(['month', 'opened', '2026-05']),
  count(['month', 'suspect', '2026-05']),
];

/** What an office answers that knows so many apiaries, with visits, duties and a ranking. @param name of the n-th */
export function officeOf(apiaries: number, name: (number: number) => string): Readonly<Record<string, unknown>> {
  const numbers = Array.from({ length: apiaries }, (_, number) => number);
  const owed: Owed = {
    visits: numbers.map((one) => visitLine(one, name(one), false)),
    more: apiaries >= 500,
    duties: numbers.map((one) => dutyLine(one, name(one), one % 2 === 0 ? 'look at all colonies' : 'serve notice')),
    now: firstInstant,
    position: 1,
  };
  const lines: Apiaries = { apiaries: numbers.map((one) => apiaryLine(one, name(one))), next: null };
  const made: Visits = { visits: numbers.map((one) => visitLine(one, name(one), true)), next: null };
  const ranked: Planning = {
    // No page of the desk asks for more.
    apiaries: numbers.slice(0, 150).map((one) => rankedLine(one, name(one))),
    ranked: apiaries,
    today: stageDay,
    position: 1,
  };
  const counted: Figures = {
    figures: apiaries === 0 ? [] : everyFigure,
    from: '2025-06-02',
    to: stageDay,
    countedAt: firstInstant,
    position: 1,
  };
  const people: People = {
    people: [{ person: idOf(4, 1), name: inspectorName, role: 'inspector', active: true }],
  };
  return { owed, apiaries: lines, visits: made, planning: ranked, figures: counted, people };
}
