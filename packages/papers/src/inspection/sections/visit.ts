import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import { capital, type PaperWords, whenWords, wordFor } from '../phrases.ts';
import { fact } from './fact.ts';

/** Where, when, by whom and under which power the apiary was visited. */
export function visitSection(record: InspectionRecord, words: PaperWords): Block[] {
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
  return [
    { kind: 'heading', level: 2, text: words.say('papers.visit.title') },
    {
      kind: 'facts',
      facts: [
        ...fact(words, 'papers.visit.apiary', apiary.name),
        ...fact(words, 'papers.visit.where', where.join('\n')),
        ...fact(
          words,
          'papers.visit.keeper',
          keeper ? withNumber(keeper.name, keeper.number) : words.say('papers.visit.keeper-unknown'),
        ),
        ...fact(
          words,
          'papers.visit.inspector',
          [withNumber(inspector.name, inspector.warrant), inspector.office].filter(Boolean).join(', '),
        ),
        ...fact(words, 'papers.visit.time', whenWords(words, visit)),
        ...fact(words, 'papers.visit.reason', wordFor(words, 'casework.visit-reason.*', visit.reason)),
        ...fact(words, 'papers.visit.power', wordFor(words, 'casework.power.*', visit.power)),
        ...fact(
          words,
          'papers.visit.present',
          visit.present
            .map(({ name, role }) =>
              words.say('papers.visit.name-role', { name, role: wordFor(words, 'casework.role.*', role) }),
            )
            .join(', ') || words.say('papers.visit.nobody'),
        ),
        ...fact(
          words,
          'papers.visit.temperature',
          visit.temperatureCelsius === null ? '' : words.unit(visit.temperatureCelsius, '°C'),
        ),
        ...fact(
          words,
          'papers.visit.warnings',
          visit.warnings
            .map(({ warning, answer }) => {
              const said = capital(wordFor(words, 'casework.warned.*', warning.id.replace('casework.warned.', '')));
              return answer ? words.say('papers.visit.warning', { warning: said, answer }) : said;
            })
            .join('\n'),
        ),
        ...fact(
          words,
          'papers.visit.colonies',
          visit.coloniesCounted === null
            ? words.say('papers.visit.colonies-not-counted', { opened })
            : words.say('papers.visit.colonies-counted', { count: visit.coloniesCounted, opened }),
        ),
      ],
    },
  ];
}
