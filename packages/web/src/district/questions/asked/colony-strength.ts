import { frameKinds } from '@combside/science/brood/comb-constants';
import { broodBalance, eggsPerDay } from '@combside/science/brood/development-calendar';
import { beesOnCombs, broodCells, type Judged } from '@combside/science/brood/strength';
import type { SourceId } from '@combside/sources/bibliography';
import {
  answered,
  dashed,
  type QuestionWord,
  question,
  type Said,
  say,
  unstated,
  type WordUnder,
} from '../question.ts';
import { askedShare } from './shared-fields.ts';

type FrameName = keyof typeof frameKinds;
const frames = [...(Object.keys(frameKinds) as FrameName[]), 'measured'] as const;
const sides = { kind: 'number', shown: 'number', from: 0, to: 200, step: 0.05, slideTo: 40, start: null } as const;
const constant = {
  kind: 'number',
  shown: 'number',
  from: 0.1,
  to: 1000,
  step: 0.1,
  slideTo: null,
  start: null,
} as const;

/** How strong is this colony: bees by comb sides covered, brood by comb sides filled, eggs a day? */
export const colonyStrength = question({
  id: 'colony-strength',
  fields: {
    frame: { kind: 'choice', options: frames, start: null },
    sideArea: { ...constant, from: 10, to: 5000, step: 1 },
    covered: { ...sides, from: 0.05 },
    beesPerArea: constant,
    error: askedShare,
    eggs: { ...sides, optional: true },
    larvae: { ...sides, optional: true },
    capped: { ...sides, optional: true },
    cellsPerArea: { ...constant, to: 10 },
  },
  inSight: ({ frame, eggs, larvae, capped }) => [
    'frame',
    ...(frame === 'measured' ? (['sideArea'] as const) : []),
    'covered',
    'beesPerArea',
    'error',
    'eggs',
    'larvae',
    'capped',
    ...(eggs || larvae || capped ? (['cellsPerArea'] as const) : []),
  ],
  answer(stated) {
    const { frame, covered, beesPerArea, error, eggs, larvae, capped, cellsPerArea } = stated;
    const brood = Boolean(eggs || larvae || capped);
    const kind = frame === null || frame === 'measured' ? null : frameKinds[frame];
    const area = frame === 'measured' ? stated.sideArea : (kind?.sideArea.value ?? null);
    const sources: SourceId[] = ['BB-STR-4.2', 'IMD', 'SIM69', ...(kind?.sideArea.sources ?? [])];
    if (brood) sources.push('CELLRACE', 'RATIO');
    const takes: QuestionWord[] = [
      'colony-strength.takes.judged',
      'colony-strength.takes.constants',
      ...(brood ? (['colony-strength.takes.steady'] as const) : []),
    ];
    const parts = { takes, sources: [...new Set(sources)] };
    const asks = unstated({
      frame,
      ...(frame === 'measured' ? { sideArea: area } : {}),
      covered,
      beesPerArea,
      error,
      ...(brood ? { cellsPerArea } : {}),
    });
    if (area === null || covered === null || beesPerArea === null || error === null || asks.length > 0) {
      return answered({ asks, ...parts });
    }
    // So many whole sides, each covered alike: the sum is what was judged.
    const bees = beesOnCombs({
      sides: [{ squareCentimetres: area * Math.ceil(covered), covered: covered / Math.ceil(covered) }],
      beesPerSquareDecimetre: beesPerArea,
      errorByEye: error,
    }).bees;
    const whole = (value: number) => ({ number: Math.round(value), decimals: 0 });
    const ends = (one: Judged) => ({ value: whole(one.value), low: whole(one.low), high: whole(one.high) });
    const said: Said[] = [
      say('colony-strength.says.bees', { ...ends(bees), covered: { number: covered, decimals: 2 } }),
    ];
    const row = (name: WordUnder<'colony-strength.row'>, one: Judged) => ({
      label: say(`colony-strength.row.${name}`),
      low: Math.round(one.low),
      value: Math.round(one.value),
      high: Math.round(one.high),
    });
    const rows = [row('bees', bees)];
    if (brood && cellsPerArea !== null) {
      const filled = { eggs: eggs ?? 0, larvae: larvae ?? 0, capped: capped ?? 0 };
      const all = Math.ceil(filled.eggs + filled.larvae + filled.capped);
      const cells = broodCells({
        sides: [
          {
            squareCentimetres: area * all,
            eggs: filled.eggs / all,
            larvae: filled.larvae / all,
            capped: filled.capped / all,
          },
        ],
        cellsPerSquareCentimetre: cellsPerArea,
        errorByEye: error,
      });
      // Only what was judged is counted: a stage left out is not none.
      for (const stage of ['eggs', 'larvae', 'capped'] as const) {
        if (stated[stage] === null) continue;
        said.push(say(`colony-strength.says.${stage}`, ends(cells[stage])));
        rows.push(row(stage, cells[stage]));
      }
      if (filled.capped > 0) {
        said.push(say('colony-strength.says.laying', { rate: whole(eggsPerDay(cells.capped.value)) }));
      }
      // The ratio can be read only where every stage was judged.
      if (eggs !== null && larvae !== null && capped !== null) {
        const balance = broodBalance({ egg: filled.eggs, larva: filled.larvae, capped: filled.capped });
        said.push(say(`colony-strength.says.balance.${dashed(balance)}`));
      }
    }
    return answered({
      said,
      figure: { kind: 'bands', x: { label: 'colony-strength.x', shown: 'number' }, from: 0, to: null, rows },
      ...parts,
    });
  },
});
