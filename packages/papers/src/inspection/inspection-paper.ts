import type { ColonyRecord, InspectionRecord, Signature } from '@combside/casework/report/inspection-record';
import { isSign } from '@combside/science/signs/catalogue';
import { drawingOf } from '@combside/science/signs/drawing';
import { saySentence } from '@combside/words/sentence';
import { drawApiaryPlan } from '../drawings/apiary-plan.ts';
import { drawSign } from '../drawings/sign-drawing.ts';
import { drawSignature } from '../drawings/signature.ts';
import { drawStateMark } from '../drawings/state-mark.ts';
import type { Block, Cell, PaperDefinition } from '../layout/paper-definition.ts';
import { cautionWords } from './cautions.ts';
import {
  askedWords,
  capital,
  cellsWords,
  conditionName,
  couldHaveMissed,
  isSuspect,
  lookWords,
  markOfResult,
  type PaperWords,
  placeWords,
  replacesWords,
  signName,
  whenWords,
  wordFor,
} from './phrases.ts';
import { stillOpenWords } from './still-open.ts';
import { labels, summaryOf } from './summary.ts';

/**
 * The written result of a visit, as a paper: first what it came to, then the visit, the colonies, what was found, what
 * is open and what comes next. No probability, no other keeper, no more than was seen.
 */
export function inspectionPaper(record: InspectionRecord, words: PaperWords): PaperDefinition {
  const day = words.dayOf(record.visit.startedAt, record.visit.timeZone);
  const apiary = record.apiary.name;
  const title = words.say('papers.inspection.title-at', { apiary, day });
  const hash = record.proof.contentHash.slice(0, 16);
  return {
    title,
    author: record.authority || record.inspector.name,
    language: words.language,
    instant: Date.parse(record.visit.endedAt ?? record.visit.startedAt),
    header: record.invented ? `${title} · ${words.say('papers.invented-short')}` : title,
    footer: words.say('papers.inspection.footer', { apiary, day, hash }),
    pageOf: (page, pages) => words.say('papers.page', { page, pages }),
    blocks: [
      ...head(record, words),
      ...visitFacts(record, words),
      ...plan(record, words),
      ...glance(record, words),
      ...found(record, words),
      ...notSeen(record, words),
      ...missed(record, words),
      ...specimens(record, words),
      ...remarks(record, words),
      ...cleanDown(record, words),
      ...open(record, words),
      ...signatures(record, words),
      ...proof(record, words),
    ],
  };
}

function head(record: InspectionRecord, words: PaperWords): Block[] {
  const summary = summaryOf(record, words);
  const replaces = replacesWords(words, record);
  const place = [record.authority, record.district].filter(Boolean).join(' · ');
  return [
    ...(place ? [{ kind: 'paragraph', text: place, size: 'small' } as const] : []),
    { kind: 'heading', level: 1, text: words.say('papers.inspection.title') },
    {
      kind: 'paragraph',
      size: 'large',
      text: [{ text: record.apiary.name, bold: true }, { text: ` · ${whenWords(words, record.visit)}` }],
    },
    ...(record.invented
      ? [{ kind: 'paragraph', text: [{ text: words.say('papers.invented'), bold: true }] } as const]
      : []),
    ...(replaces ? [{ kind: 'paragraph', text: [{ text: replaces, bold: true }] } as const] : []),
    ...(record.visit.endedAt === null
      ? [{ kind: 'paragraph', text: [{ text: words.say('papers.draft'), bold: true }] } as const]
      : []),
    {
      kind: 'statement',
      mark: summary.mark ? drawStateMark(summary.mark) : null,
      alternative: words.say('papers.summary.title'),
      lines: [...summary.sentences, words.say('papers.inspection.what-it-says')],
    },
  ];
}

function visitFacts(record: InspectionRecord, words: PaperWords): Block[] {
  const { apiary, visit, keeper, inspector } = record;
  const opened = record.colonies.filter((one) => one.look !== null).length;
  const withNumber = (name: string, number: string | null): string =>
    number ? words.say('papers.visit.name-number', { name, number }) : name;
  const where = [
    apiary.addressWords,
    apiary.position
      ? words.say('papers.visit.position', {
          latitude: words.number(apiary.position.latitude, 5, 'exact'),
          longitude: words.number(apiary.position.longitude, 5, 'exact'),
          metres: words.unit(apiary.position.uncertaintyMetres, 'm'),
        })
      : '',
  ].filter(Boolean);
  const fact = (id: Parameters<PaperWords['say']>[0], value: string): { name: string; value: string }[] =>
    value ? [{ name: words.say(id), value }] : [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.visit.title') },
    {
      kind: 'facts',
      facts: [
        ...fact('papers.visit.apiary', apiary.name),
        ...fact('papers.visit.where', where.join('\n')),
        ...fact(
          'papers.visit.keeper',
          keeper ? withNumber(keeper.name, keeper.number) : words.say('papers.visit.keeper-unknown'),
        ),
        ...fact(
          'papers.visit.inspector',
          [withNumber(inspector.name, inspector.warrant), inspector.office].filter(Boolean).join(', '),
        ),
        ...fact('papers.visit.time', whenWords(words, visit)),
        ...fact('papers.visit.reason', wordFor(words, 'casework.visit-reason.*', visit.reason)),
        ...fact('papers.visit.power', wordFor(words, 'casework.power.*', visit.power)),
        ...fact(
          'papers.visit.present',
          visit.present
            .map(({ name, role }) =>
              words.say('papers.visit.name-role', { name, role: wordFor(words, 'casework.role.*', role) }),
            )
            .join(', ') || words.say('papers.visit.nobody'),
        ),
        ...fact(
          'papers.visit.temperature',
          visit.temperatureCelsius === null ? '' : words.unit(visit.temperatureCelsius, '°C'),
        ),
        ...fact(
          'papers.visit.warnings',
          visit.warnings
            .map(({ warning, answer }) => {
              const said = capital(wordFor(words, 'casework.warned.*', warning.id.replace('casework.warned.', '')));
              return answer ? words.say('papers.visit.warning', { warning: said, answer }) : said;
            })
            .join('\n'),
        ),
        ...fact(
          'papers.visit.colonies',
          visit.coloniesCounted === null
            ? words.say('papers.visit.colonies-not-counted', { opened })
            : words.say('papers.visit.colonies-counted', { count: visit.coloniesCounted, opened }),
        ),
      ],
    },
  ];
}

function plan(record: InspectionRecord, words: PaperWords): Block[] {
  if (!record.plan) return [];
  const byId = new Map(record.colonies.map((one) => [one.id, one]));
  const hives = record.plan.hives.flatMap(({ colony, at }) => {
    const one = byId.get(colony);
    return one ? [{ id: colony, label: one.label, at, state: markOfResult[one.result] }] : [];
  });
  if (hives.length === 0) return [];
  const drawing = drawApiaryPlan({
    hives,
    gate: record.plan.gate,
    track: record.plan.track,
    walk: record.colonies.map((one) => one.id),
    scaleText: (metres) => words.unit(metres, 'm'),
  });
  const inWords = record.colonies.map((one) =>
    words.say('papers.plan.colony', { label: one.label, result: resultWord(one, words) }),
  );
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, text: words.say('papers.plan.title') },
        {
          kind: 'figure',
          drawing,
          width: 330,
          alternative: words.say('papers.plan.in-words', { colonies: inWords.join('; ') }),
          caption: words.say('papers.plan.caption'),
        },
      ],
    },
  ];
}

const resultWord = (colony: ColonyRecord, words: PaperWords): string => words.say(`casework.result.${colony.result}`);

function marked(colony: ColonyRecord, words: PaperWords): Cell {
  const word = capital(resultWord(colony, words));
  return { drawing: drawStateMark(markOfResult[colony.result]), width: 13, alternative: word, text: word };
}

function glance(record: InspectionRecord, words: PaperWords): Block[] {
  if (record.colonies.length === 0) return [];
  const title = words.say('papers.glance.title');
  return [
    { kind: 'heading', level: 2, text: title },
    {
      kind: 'table',
      summary: title,
      columns: [
        { title: words.say('papers.glance.colony'), width: 14 },
        { title: words.say('papers.glance.hive'), width: 15 },
        { title: words.say('papers.glance.looked-at'), width: 39 },
        { title: words.say('papers.glance.result'), width: 32 },
      ],
      rows: record.colonies.map((one) => [
        [{ text: one.label, bold: true }],
        capital(words.say(`casework.hive-state.${one.hiveState}`)),
        lookWords(words, one),
        marked(one, words),
      ]),
    },
  ];
}

/** Whether a colony has more to tell than a line of the table. */
function tells(colony: ColonyRecord): boolean {
  return (
    isSuspect(colony) ||
    colony.signs.some((one) => one.outcome === 'seen') ||
    colony.ropeTests.length > 0 ||
    colony.finds.some((one) => one.outcome === 'seen') ||
    colony.remarks !== '' ||
    colony.photographs.length > 0 ||
    colony.medicines?.answer === 'yes' ||
    colony.combChanges?.answer === 'yes'
  );
}

function found(record: InspectionRecord, words: PaperWords): Block[] {
  const telling = record.colonies.filter(tells);
  if (telling.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.detail.title') },
    ...telling.flatMap((one) => detail(one, record, words)),
  ];
}

function detail(colony: ColonyRecord, record: InspectionRecord, words: PaperWords): Block[] {
  const { label, look } = colony;
  const fact = (id: Parameters<PaperWords['say']>[0], value: string): { name: string; value: string }[] =>
    value ? [{ name: words.say(id), value }] : [];
  const findWords = (outcome: 'seen' | 'not seen'): string =>
    colony.finds
      .filter((one) => one.outcome === outcome)
      .map((one) => {
        const find = wordFor(words, 'casework.find.*', one.find);
        return one.amount
          ? words.say('papers.finds.amount', { find, amount: words.say(`casework.amount.${one.amount}`) })
          : find;
      })
      .join(', ');
  const light = look
    ? [
        look.light ? words.say(`casework.light.${look.light}`) : '',
        look.hold && colony.hiveState === 'living' ? words.say(`casework.hold.${look.hold}`) : '',
      ].filter(Boolean)
    : [];
  const sealed = look?.sealedBroodCombSides ?? null;
  const blocks: Block[] = [
    {
      kind: 'heading',
      level: 3,
      text: words.say('papers.detail.colony', { label, result: resultWord(colony, words) }),
    },
    {
      kind: 'facts',
      facts: [
        ...fact(
          'papers.detail.suspected',
          words.list(colony.suspected.map((condition) => conditionName(words, condition))),
        ),
        ...fact('papers.detail.at', colony.observedAt ? words.clockTime(colony.observedAt, record.visit.timeZone) : ''),
        ...fact('papers.detail.looked-at', [lookWords(words, colony), ...light].join(', ')),
        ...fact(
          'papers.detail.sealed-brood',
          sealed === null ? '' : words.say('papers.detail.comb-sides', { count: sealed, text: words.number(sealed) }),
        ),
        ...fact('papers.detail.medicines', colony.medicines ? askedWords(words, colony.medicines) : ''),
        ...fact('papers.detail.comb-changes', colony.combChanges ? askedWords(words, colony.combChanges) : ''),
        ...fact('papers.finds.seen', findWords('seen')),
        ...fact('papers.finds.not-seen', findWords('not seen')),
        ...fact('papers.detail.remarks', colony.remarks),
      ],
    },
    ...signsTable(colony, words),
    ...ropeTable(colony, words),
    ...photographsTable(colony, record, words),
  ];
  // What is short stays on one page; a long finding would leave half a page empty.
  const short = colony.signs.filter((one) => one.outcome === 'seen').length <= 2 && colony.ropeTests.length === 0;
  return short ? [{ kind: 'together', blocks }] : blocks;
}

function signsTable(colony: ColonyRecord, words: PaperWords): Block[] {
  const seen = colony.signs.filter((one) => one.outcome === 'seen');
  if (seen.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: words.say('papers.signs.title', { label: colony.label }),
      columns: [
        { title: words.say('papers.signs.sign'), width: 48 },
        { title: words.say('papers.signs.how-many'), width: 22 },
        { title: words.say('papers.signs.where'), width: 34 },
      ],
      rows: seen.map((one) => {
        const name = capital(signName(words, one.sign));
        const amount = one.count
          ? words.say(`casework.count.${one.count}`)
          : one.amount
            ? words.say(`casework.amount.${one.amount}`)
            : words.say('casework.outcome.seen');
        return [
          isSign(one.sign)
            ? {
                drawing: drawSign(drawingOf[one.sign]),
                width: 34,
                alternative: words.say('papers.signs.drawn', { sign: name }),
                text: name,
              }
            : name,
          capital(amount),
          one.places.map((place) => cellsWords(words, place)).join('\n'),
        ];
      }),
    },
  ];
}

function ropeTable(colony: ColonyRecord, words: PaperWords): Block[] {
  if (colony.ropeTests.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: words.say('papers.rope.title', { label: colony.label }),
      columns: [
        { title: words.say('papers.rope.thread'), width: 30 },
        { title: words.say('papers.rope.snaps'), width: 16 },
        { title: words.say('papers.rope.colour'), width: 18 },
        { title: words.say('papers.rope.remains'), width: 18 },
        { title: words.say('papers.rope.stick'), width: 20 },
        { title: words.say('papers.rope.where'), width: 22 },
      ],
      rows: colony.ropeTests.map((one) => {
        const length = words.unit(one.threadMillimetres, 'mm');
        return [
          {
            drawing: drawSign({ ...drawingOf['con.ropy'], thread: Math.max(1, one.threadMillimetres) }),
            width: 34,
            alternative: words.say('papers.rope.drawn', { length }),
            text: one.threadMillimetres > 0 ? length : words.say('papers.rope.none-drawn'),
          },
          one.snapsBack === null
            ? words.say('papers.rope.not-said')
            : words.say(one.snapsBack ? 'papers.rope.yes' : 'papers.rope.no'),
          one.colour ? words.say(`casework.colour.${one.colour}`) : words.say('papers.rope.not-said'),
          words.say(`casework.tissue.${one.tissue}`),
          words.say(`casework.stick.${one.stick}`),
          placeWords(words, one),
        ];
      }),
    },
  ];
}

function photographsTable(colony: ColonyRecord, record: InspectionRecord, words: PaperWords): Block[] {
  if (colony.photographs.length === 0) return [];
  return [
    {
      kind: 'table',
      summary: words.say('papers.photographs.of-colony', { label: colony.label }),
      columns: [
        { title: words.say('papers.photographs.title'), width: 30 },
        { title: words.say('papers.photographs.taken'), width: 17 },
        { title: words.say('papers.photographs.hash'), width: 53 },
      ],
      rows: colony.photographs.map((one) => [
        one.caption || words.say('papers.photographs.no-caption'),
        words.clockTime(one.takenAt, record.visit.timeZone),
        one.hash,
      ]),
    },
  ];
}

/** Signs that were looked for and not seen, colonies with the same list in one line. */
function notSeen(record: InspectionRecord, words: PaperWords): Block[] {
  const groups = new Map<string, ColonyRecord[]>();
  for (const colony of record.colonies) {
    const signs = colony.signs.filter((one) => one.outcome === 'not seen').map((one) => signName(words, one.sign));
    if (signs.length > 0) add(groups, signs.join('; '), colony);
  }
  if (groups.size === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.signs.not-seen-title') },
    {
      kind: 'list',
      items: [...groups].map(([signs, colonies]) =>
        words.say('papers.signs.not-seen', { count: colonies.length, colonies: labels(words, colonies), signs }),
      ),
    },
    { kind: 'paragraph', text: words.say('papers.signs.not-looked') },
  ];
}

function missed(record: InspectionRecord, words: PaperWords): Block[] {
  const groups = new Map<string, ColonyRecord[]>();
  for (const colony of record.colonies) {
    const id = couldHaveMissed(colony);
    if (id) add(groups, words.say(id), colony);
  }
  if (groups.size === 0) return [];
  return [
    { kind: 'heading', level: 2, text: words.say('papers.missed.title') },
    {
      kind: 'list',
      items: [...groups].map(([what, colonies]) =>
        words.say('papers.missed.colonies', { count: colonies.length, colonies: labels(words, colonies), what }),
      ),
    },
  ];
}

function add(groups: Map<string, ColonyRecord[]>, key: string, colony: ColonyRecord): void {
  const group = groups.get(key);
  if (group) group.push(colony);
  else groups.set(key, [colony]);
}

function specimens(record: InspectionRecord, words: PaperWords): Block[] {
  const title = words.say('papers.specimens.title');
  if (record.specimens.length === 0) {
    return record.colonies.some(isSuspect)
      ? [
          { kind: 'heading', level: 2, text: title },
          { kind: 'paragraph', text: words.say('papers.specimens.none') },
        ]
      : [];
  }
  return [
    { kind: 'heading', level: 2, text: title },
    {
      kind: 'table',
      summary: title,
      columns: [
        { title: words.say('papers.specimens.id'), width: 26 },
        { title: words.say('papers.specimens.colony'), width: 14 },
        { title: words.say('papers.specimens.what'), width: 42 },
        { title: words.say('papers.specimens.taken'), width: 18 },
      ],
      rows: record.specimens.map((one) => [
        [{ text: one.id, bold: true }],
        record.colonies.find((colony) => colony.id === one.colony)?.label ?? one.colony,
        one.what,
        words.clockTime(one.takenAt, record.visit.timeZone),
      ]),
    },
  ];
}

function remarks(record: InspectionRecord, words: PaperWords): Block[] {
  return record.remarks
    ? [
        { kind: 'heading', level: 2, text: words.say('papers.remarks.title') },
        { kind: 'paragraph', text: record.remarks },
      ]
    : [];
}

function cleanDown(record: InspectionRecord, words: PaperWords): Block[] {
  const title = words.say('papers.clean-down.title');
  if (record.cleanDowns.length === 0) {
    return record.colonies.some(isSuspect)
      ? [
          { kind: 'heading', level: 2, text: title },
          { kind: 'paragraph', text: words.say('papers.clean-down.none') },
        ]
      : [];
  }
  return [
    { kind: 'heading', level: 2, text: title },
    {
      kind: 'table',
      summary: title,
      columns: [
        { title: words.say('papers.clean-down.when'), width: 34 },
        { title: words.say('papers.clean-down.gloves'), width: 22 },
        { title: words.say('papers.clean-down.tool'), width: 24 },
        { title: words.say('papers.clean-down.phone'), width: 20 },
      ],
      rows: record.cleanDowns.map((one) => [
        words.say('papers.clean-down.when-where', {
          time: words.clockTime(one.doneAt, record.visit.timeZone),
          where:
            one.after === null
              ? words.say('papers.clean-down.exit')
              : words.say('papers.clean-down.after', { label: one.after }),
        }),
        words.say(`casework.gloves.${one.gloves}`),
        words.say(`casework.tool.${one.tool}`),
        words.say(`casework.phone.${one.phone}`),
      ]),
    },
    { kind: 'paragraph', text: words.say('papers.clean-down.soda') },
  ];
}

function open(record: InspectionRecord, words: PaperWords): Block[] {
  const section = (title: string, items: readonly string[]): Block[] => [
    { kind: 'heading', level: 2, text: title },
    { kind: 'list', items },
  ];
  const stillOpen = stillOpenWords(record, words);
  const next = record.nextSteps.map((step) =>
    saySentence<'papers' | 'casework' | 'signs'>(words, step, record.visit.timeZone),
  );
  return [
    ...(stillOpen.length > 0
      ? section(words.say('papers.open.title'), stillOpen)
      : [
          { kind: 'heading', level: 2, text: words.say('papers.open.title') } as const,
          { kind: 'paragraph', text: words.say('papers.open.nothing') } as const,
        ]),
    ...(next.length > 0 ? section(words.say('papers.next.title'), next) : []),
    ...section(words.say('papers.cautions.title'), cautionWords(record, words)),
  ];
}

function signatures(record: InspectionRecord, words: PaperWords): Block[] {
  const line = (as: Signature['as'], given: Signature | undefined) => {
    const title = words.say(`papers.signatures.${as}`);
    if (!given) return { title, drawing: null, alternative: '', below: words.say('papers.signatures.missing') };
    const at = words.dayAndTime(given.at, record.visit.timeZone);
    const below = [
      words.say('papers.signatures.name-at', { name: given.name, at }),
      given.how ? words.say(`papers.signatures.how.${given.how}`) : '',
      given.path || given.how === 'refused' ? '' : words.say('papers.signatures.typed'),
    ].filter(Boolean);
    return {
      title,
      drawing: given.path ? drawSignature(given.path) : null,
      alternative: words.say('papers.signatures.drawn', { name: given.name }),
      below: below.join('\n'),
    };
  };
  const inspector = record.signatures.findLast((one) => one.as === 'inspector');
  const receiver = record.signatures.findLast((one) => one.as === 'receiver');
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', level: 2, text: words.say('papers.signatures.title') },
        { kind: 'signatures', lines: [line('inspector', inspector), line('receiver', receiver)] },
      ],
    },
  ];
}

function proof(record: InspectionRecord, words: PaperWords): Block[] {
  const { entries } = record.proof;
  return [
    { kind: 'heading', level: 2, text: words.say('papers.proof.title') },
    { kind: 'paragraph', size: 'small', text: words.say('papers.proof.says') },
    {
      kind: 'facts',
      facts: [
        { name: words.say('papers.proof.content'), value: record.proof.contentHash },
        { name: words.say('papers.proof.visit'), value: record.visit.id },
      ],
    },
    ...(entries.length > 0
      ? [
          {
            kind: 'paragraph',
            size: 'small',
            text: [{ text: `${words.say('papers.proof.entries')}: `, bold: true }, { text: entries.join(', ') }],
          } as const,
        ]
      : []),
  ];
}
