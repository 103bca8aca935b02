import { daysBetween } from '@combside/calendar/instant';
import type { DaySpan } from '@combside/science/brood/calendar-day';
import { ageOf, cellDates, cellStages } from '@combside/science/brood/cell-dates';
import { DomainError } from '@combside/science/distributions/domain';
import { answered, type Figure, question, say, unstated } from '../question.ts';
import { askedDay, dayIn } from './shared-fields.ts';

const castes = ['worker', 'drone', 'queen'] as const;
const events = ['laid', 'hatches', 'capped', 'emerges'] as const;

/** When was this cell laid, when will it emerge? */
export const whenLaid = question({
  id: 'when-laid',
  fields: {
    caste: { kind: 'choice', options: castes, start: 'worker' },
    stage: { kind: 'choice', options: cellStages, start: null },
    seenOn: askedDay,
  },
  answer({ caste, stage, seenOn }) {
    const parts = {
      takes: ['when-laid.takes.mean', 'when-laid.takes.stage'],
      sources: ['DEV-CASTE', 'NZ-DEV'],
    } as const;
    const day = dayIn(seenOn);
    if (stage === null || day === null) return answered({ asks: unstated({ stage, seenOn: day }), ...parts });
    try {
      ageOf(caste, stage);
    } catch (failure) {
      if (!(failure instanceof DomainError)) throw failure;
      return answered({ refuses: say('when-laid.refuses.worker-only'), ...parts });
    }
    const dates = cellDates({ caste, stage, seenOn: day });
    const span = ({ earliest, latest }: DaySpan) => ({ from: { day: earliest }, to: { day: latest } });
    const rows = events.map((event) => ({
      label: say(`when-laid.row.${event}`),
      low: daysBetween(day, dates[event].earliest),
      value: null,
      high: daysBetween(day, dates[event].latest),
    }));
    const figure: Figure = {
      kind: 'bands',
      x: { label: 'when-laid.x', shown: 'number' },
      from: Math.min(...rows.map((row) => row.low)),
      to: Math.max(...rows.map((row) => row.high)),
      rows,
    };
    return answered({
      said: [
        say('when-laid.says.laid', span(dates.laid)),
        say('when-laid.says.emerges', span(dates.emerges)),
        say('when-laid.says.capped', span(dates.capped)),
      ],
      figure,
      ...parts,
    });
  },
});
