import { daysBetween } from '@combside/calendar/instant';
import { releaseThisSeason } from '@combside/science/brood/release-this-season';
import { answered, type Figure, question, say, unstated, type WordUnder } from '../question.ts';
import { askedDay, dayIn } from './shared-fields.ts';

const days = { kind: 'number', shown: 'count', from: 0, to: 1000, step: 1, slideTo: 120, start: null } as const;

/** When does brood end, so can this case be released this season? The calendar only: the authority releases. */
export const thisSeason = question({
  id: 'this-season',
  fields: {
    countedFrom: askedDay,
    firstLookAfterDays: days,
    looks: { ...days, from: 1, to: 20, slideTo: 6 },
    daysBetweenLooks: days,
    lastEggsOn: askedDay,
    firstEggsOn: askedDay,
  },
  answer(stated) {
    const { firstLookAfterDays, looks, daysBetweenLooks } = stated;
    const parts = {
      takes: ['this-season.takes.law', 'this-season.takes.brood', 'this-season.takes.stated'],
      sources: ['NZ-DEV'],
    } as const;
    const countedFrom = dayIn(stated.countedFrom);
    const lastEggsOn = dayIn(stated.lastEggsOn);
    const firstEggsOn = dayIn(stated.firstEggsOn);
    if (
      countedFrom === null ||
      lastEggsOn === null ||
      firstLookAfterDays === null ||
      looks === null ||
      daysBetweenLooks === null
    ) {
      const asks = unstated({ countedFrom, firstLookAfterDays, looks, daysBetweenLooks, lastEggsOn });
      return answered({ asks, ...parts });
    }
    if (firstEggsOn !== null && firstEggsOn <= lastEggsOn) {
      return answered({ refuses: say('this-season.refuses.order'), ...parts });
    }
    const found = releaseThisSeason({
      countedFrom,
      firstLookAfterDays,
      looks,
      daysBetweenLooks,
      lastEggsOn,
      firstEggsOn,
    });
    const after = (day: string) => daysBetween(countedFrom, day);
    const [open, capped] = [found.lastOpenBrood ?? lastEggsOn, found.lastCappedBrood ?? lastEggsOn];
    const broodUntil = (name: WordUnder<'this-season.row'>, day: string) => ({
      label: say(`this-season.row.${name}`),
      low: Math.min(0, after(day)),
      value: null,
      high: after(day),
    });
    const rows = [
      broodUntil('open', open),
      broodUntil('capped', capped),
      ...found.looks.flatMap(({ earliest }, i) =>
        earliest === null
          ? []
          : [
              {
                label: say('this-season.row.look', { number: i + 1 }),
                low: after(earliest),
                value: after(earliest),
                high: after(earliest),
              },
            ],
      ),
    ];
    const figure: Figure = {
      kind: 'bands',
      x: { label: 'this-season.x', shown: 'number' },
      from: Math.min(0, ...rows.map((row) => row.low)),
      to: Math.max(1, ...rows.map((row) => row.high)),
      rows,
    };
    const waiting = found.looks.filter((look) => look.waitsForBrood).length;
    return answered({
      said: [
        found.thisSeason
          ? say('this-season.says.yes', { looks, day: { day: found.notBefore ?? countedFrom } })
          : found.notBefore === null
            ? say('this-season.says.no')
            : say('this-season.says.next', { looks, day: { day: found.notBefore } }),
        say('this-season.says.brood', { open: { day: open }, capped: { day: capped } }),
        ...(waiting > 0 ? [say('this-season.says.waits', { count: waiting })] : []),
        say('this-season.says.authority'),
      ],
      figure,
      ...parts,
    });
  },
});
