import type { InspectionRecord } from '@combside/casework/report/inspection-record';
import type { Block } from '../../layout/paper-definition.ts';
import { isSuspect, type PaperWords } from '../phrases.ts';

/** Clean-downs; that none was recorded is said where there is a suspicion. */
export function cleanDownSection(record: InspectionRecord, words: PaperWords): Block[] {
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
