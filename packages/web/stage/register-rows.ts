import type { RegisterRows } from '@combside/contract/register-rows';
import type { Plugin } from 'vite';

const idOf = (number: number) => `01900000-0000-7000-8000-0000000002${String(number).padStart(2, '0')}`;

function keeperRow(number: number, name: string, telephone: string): RegisterRows['rows'][number] {
  return {
    type: 'keeper',
    id: idOf(number),
    standing: [idOf(number)],
    mergedInto: null,
    notTheSame: [],
    body: {
      name,
      number: null,
      addressWords: 'Mühlenwiesenweg 12, hinter dem Schulgarten (invented)',
      telephone,
      email: '',
      language: '',
      trade: 'hobby',
    },
  };
}

/** Two records of what is one keeper. Invented. */
const rows: Readonly<Record<string, RegisterRows>> = {
  keeper: {
    rows: [
      keeperRow(1, 'Ansel Wether (invented)', '030 5551111'),
      keeperRow(2, 'Ansel Wethr (invented)', '0305551111'),
    ],
    next: null,
  },
  apiary: { rows: [], next: null },
};

/** Answers the workers of the screens, which no page can stand in for: they ask for the register as it stands. */
export function answersWorkers(): Plugin {
  return {
    name: 'register rows for workers',
    configureServer({ middlewares }) {
      middlewares.use('/api/register/rows', (asked, answer) => {
        const type = new URLSearchParams(asked.url?.split('?')[1]).get('type') ?? '';
        answer.setHeader('content-type', 'application/json').end(JSON.stringify(rows[type]));
      });
    },
  };
}
