import { daysBetween } from '@combside/calendar/instant';
import type { DaySpan } from '@combside/science/brood/calendar-day';
import { earliestSigns } from '@combside/science/diagnosis/earliest-sign';
import { answered, question, say, type WordUnder } from '../question.ts';
import { askedDay, dayIn } from './shared-fields.ts';

/** When is the earliest sign after an exposure to American foulbrood? There is never a last day. */
export const earliestSign = question({
  id: 'earliest-sign',
  fields: { exposedOn: askedDay },
  answer({ exposedOn }) {
    const parts = {
      takes: ['earliest-sign.takes.very-day', 'earliest-sign.takes.no-end'],
      sources: ['GEN05', 'NZ-TIME', 'BOOKLET', 'MAAREC-SCALE'],
    } as const;
    const day = dayIn(exposedOn);
    if (day === null) return answered({ asks: ['exposedOn'], ...parts });
    const found = earliestSigns({ exposedOn: day });
    const row = (name: WordUnder<'earliest-sign.row'>, { earliest, latest }: DaySpan) => ({
      label: say(`earliest-sign.row.${name}`),
      low: daysBetween(day, earliest),
      value: null,
      high: daysBetween(day, latest),
    });
    const span = ({ earliest, latest }: DaySpan) => ({ from: { day: earliest }, to: { day: latest } });
    return answered({
      said: [
        say('earliest-sign.says.dead', span(found.deadBrood)),
        say('earliest-sign.says.published', span(found.signsAsPublished)),
        say('earliest-sign.says.rope', { to: { day: found.firstRemainsRopeUntil.latest } }),
        say('earliest-sign.says.scale', span(found.scale)),
        say('earliest-sign.says.no-end'),
      ],
      figure: {
        kind: 'bands',
        x: { label: 'earliest-sign.x', shown: 'number' },
        from: 0,
        to: null,
        rows: [
          row('dead', found.deadBrood),
          row('published', found.signsAsPublished),
          row('all-dead', found.firstLarvaeAllDead),
          row('rope', found.firstRemainsRopeUntil),
          row('scale', found.scale),
        ],
      },
      ...parts,
    });
  },
});
