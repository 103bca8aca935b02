import { writeFileSync } from 'node:fs';
import { drawingOf } from '@combside/science/signs/drawing';
import { drawApiaryPlan } from './apiary-plan.ts';
import { drawCombSection } from './cell-section.ts';
import type { CombSectionParameters } from './cell-section-parameters.ts';
import { drawCombSide } from './comb-side.ts';
import type { Drawing } from './drawing.ts';
import { drawSign } from './sign-drawing.ts';
import { type ColonyState, colonyStates, drawStateMark } from './state-mark.ts';
import { drawingToSvg } from './svg.ts';

// One sheet of every drawing at 40 and 160 px, in colour and in grey, to be looked at: npx tsx gallery.ts sheet.html
const cells: Record<string, CombSectionParameters> = {
  empty: { cells: [{}] },
  egg: { cells: [{ content: 'egg' }] },
  'several eggs': { cells: [{ content: 'egg', eggs: 4 }] },
  'coiled, pearl': { cells: [{ content: 'coiled' }] },
  'coiled, yellow, breathing tubes': { cells: [{ content: 'coiled', colour: 'yellow', tracheae: true }] },
  'coiled, brown': { cells: [{ content: 'coiled', colour: 'brown' }] },
  'coiled, unfed': { cells: [{ content: 'coiled', unfed: true }] },
  'twisted, yellow': { cells: [{ content: 'twisted', colour: 'yellow' }] },
  'stretched, domed': { cells: [{ content: 'stretched', capping: 'domed' }] },
  'stretched, head raised': { cells: [{ content: 'stretched', colour: 'yellow', headRaised: true }] },
  'stretched, fluff': { cells: [{ content: 'stretched', colour: 'white', fluff: true }] },
  'slumped, yellow': { cells: [{ content: 'slumped', colour: 'yellow' }] },
  'slumped, brown, sunken': { cells: [{ content: 'slumped', colour: 'brown', capping: 'sunken', cappingDark: true }] },
  'slumped, watery': { cells: [{ content: 'slumped', colour: 'yellow', watery: true }] },
  'coiled, watery': { cells: [{ content: 'coiled', colour: 'yellow', watery: true }] },
  'pupa, pearl': { cells: [{ content: 'pupa' }] },
  'pupa, dead, domed': { cells: [{ content: 'pupa', colour: 'brown', capping: 'domed' }] },
  'pupa, grey': { cells: [{ content: 'pupa', colour: 'grey' }] },
  'mummy, white': { cells: [{ content: 'mummy', colour: 'white' }] },
  'mummy, dark': { cells: [{ content: 'mummy', colour: 'dark' }] },
  'mummy, fluff': { cells: [{ content: 'mummy', colour: 'white', fluff: true }] },
  'mummy, powder': { cells: [{ content: 'mummy', colour: 'yellow', powder: true }] },
  sac: { cells: [{ content: 'sac' }] },
  'dry larva': { cells: [{ content: 'dry', colour: 'grey', unfed: true }] },
  pollen: { cells: [{ content: 'pollen' }] },
  nectar: { cells: [{ content: 'nectar' }] },
  'capping domed': { cells: [{ capping: 'domed' }] },
  'capping flat': { cells: [{ capping: 'flat' }] },
  'capping sunken': { cells: [{ capping: 'sunken' }] },
  'capping sunken, dark': { cells: [{ capping: 'sunken', cappingDark: true }] },
  'capping dark, flat': { cells: [{ capping: 'flat', cappingDark: true }] },
  'capping perforated': { cells: [{ capping: 'perforated', cappingDark: true }] },
  'capping torn': { cells: [{ capping: 'torn' }] },
  'drone dome': { cells: [{ capping: 'drone dome', content: 'pupa' }] },
  'scale, lower wall': { cells: [{ scale: 'lower wall' }] },
  'scale, lower wall, tongue': { cells: [{ scale: 'lower wall', tongue: true }] },
  'slumped, tongue': { cells: [{ content: 'slumped', colour: 'brown', tongue: true }] },
  'scale, mouth': { cells: [{ scale: 'mouth' }] },
  'scale, loose': { cells: [{ scale: 'loose' }] },
  'scale, rubbery': { cells: [{ scale: 'rubbery' }] },
  'scale, loose, brown': { cells: [{ scale: 'loose', colour: 'brown' }] },
  'thread 0 mm': { cells: [{ content: 'slumped', colour: 'brown', threadMillimetres: 0 }] },
  'thread 8 mm': { cells: [{ content: 'slumped', colour: 'brown', threadMillimetres: 8 }] },
  'thread 15 mm': { cells: [{ content: 'slumped', colour: 'brown', threadMillimetres: 15 }] },
  'thread 35 mm': { cells: [{ content: 'slumped', colour: 'brown', threadMillimetres: 35 }] },
  mites: { cells: [{ content: 'pupa', mites: 3, capping: 'torn' }] },
  'raised rim': { cells: [{ content: 'pupa', raisedRim: true }] },
  moth: { cells: [{ content: 'pupa', moth: true }] },
  'smell of glue': { cells: [{ content: 'slumped', colour: 'brown' }], smell: 'glue' },
  'smell, sour': { cells: [{ content: 'coiled', colour: 'yellow' }], smell: 'sour' },
  'smell, other': { cells: [{}], smell: 'other' },
  'mummies on the floor': { cells: [{ content: 'mummy', colour: 'white' }], floor: 'mummies' },
  'scales on the floor': { cells: [{}], floor: 'scales' },
  'dead brood on the floor': { cells: [{}], floor: 'dead brood' },
  compact: { cells: [{ capping: 'domed' }, { capping: 'domed' }, { capping: 'domed' }] },
  spotty: { cells: [{ capping: 'domed' }, {}, { capping: 'flat' }] },
  'opened in a line': {
    cells: [
      { content: 'pupa', raisedRim: true },
      { content: 'pupa', raisedRim: true },
      { content: 'pupa', raisedRim: true },
    ],
  },
  'drone domes between': { cells: [{ capping: 'domed' }, { capping: 'drone dome' }, { capping: 'domed' }] },
  'left behind': { cells: [{ content: 'egg' }, { capping: 'flat', cappingDark: true }, { content: 'egg' }] },
  'all ages dead': {
    cells: [
      { content: 'coiled', colour: 'grey' },
      { content: 'stretched', colour: 'grey' },
      { content: 'pupa', colour: 'dark', capping: 'domed' },
    ],
  },
  'few bees': { cells: [{ content: 'coiled' }, { content: 'coiled' }], bees: 'few' },
  'many bees': { cells: [{ content: 'coiled' }, { content: 'coiled' }], bees: 'many' },
};

const sides: Record<string, Drawing> = {
  'comb side, all seen': drawCombSide({ brood: 0.5, pollen: 0.1, honey: 0.2 }),
  'comb side, sealed part': drawCombSide({ brood: 0.6, sealed: 0.5, pollen: 0.08, honey: 0.15 }),
  'comb side, 60 % seen': drawCombSide({ brood: 0.4, pollen: 0.1, honey: 0.3, seen: 0.6 }),
  'comb side, unseen': drawCombSide({ brood: 0, pollen: 0, honey: 0, seen: 0 }),
  'comb side, honey only': drawCombSide({ brood: 0, pollen: 0, honey: 0.9 }),
  'comb side, full of brood': drawCombSide({ brood: 0.9, pollen: 0.05, honey: 0.05 }),
};
const signs = Object.fromEntries(Object.entries(drawingOf).map(([sign, drawing]) => [sign, drawSign(drawing)]));
const marks = Object.fromEntries(colonyStates.map((state) => [state, drawStateMark(state)]));
const hive = (id: number, east: number, north: number, state: ColonyState = 'not opened') => ({
  id: `${id}`,
  label: `${id}`,
  at: { east, north },
  state,
});
const row = (count: number) =>
  Array.from({ length: count }, (_, i) =>
    hive(i + 1, (i % 10) * 2.5, -Math.floor(i / 10) * 4, colonyStates[i % 7] as ColonyState),
  );
const plan = (hives: ReturnType<typeof row>): Drawing =>
  drawApiaryPlan({
    hives,
    gate: { east: 8, north: 5 },
    track: [
      { east: -4, north: 6 },
      { east: 8, north: 5 },
      { east: 20, north: 8 },
    ],
    walk: hives.map((one) => one.id),
    scaleText: (metres) => `${metres} m`,
  });
const plans: Record<string, Drawing> = {
  'plan of 1': plan([hive(1, 0, 0, 'suspect')]),
  'plan of 6': plan([
    hive(1, 0, 0, 'nothing seen'),
    hive(2, 2.2, 0.3, 'nothing seen'),
    hive(3, 4.5, 0, 'signs seen'),
    hive(4, 1, -4, 'suspect'),
    hive(5, 3.4, -4.2, 'nothing seen'),
    hive(6, 7, -3),
  ]),
  'plan of 40': plan(row(40)),
};

const figure = (name: string, drawing: Drawing, large: number, small: number) =>
  `<figure>${drawingToSvg(drawing, large, name)}<div>${drawingToSvg(drawing, small, name)}<span class="grey">${drawingToSvg(drawing, small, name)}</span></div><figcaption>${name}</figcaption></figure>`;
const every = (drawings: Record<string, Drawing>, large: number, small: number) =>
  `<section style="grid-template-columns:repeat(auto-fill,minmax(${large + 10}px,1fr))">${Object.entries(drawings)
    .map(([name, drawing]) => figure(name, drawing, large, small))
    .join('')}</section>`;
const sections = Object.fromEntries(
  Object.entries(cells).map(([name, parameters]) => [name, drawCombSection(parameters)]),
);
const style =
  'body{background:#FBF8F1;font:13px sans-serif;margin:8px}section{display:grid;gap:8px;margin-bottom:16px}figure{margin:0;border:1px solid #ddd;padding:4px}.grey{filter:grayscale(1)}figcaption{font-size:12px}';
writeFileSync(
  process.argv[2] as string,
  `<!doctype html><meta charset="utf-8"><title>Drawings</title><style>${style}</style>${every(signs, 160, 40)}${every(sections, 160, 40)}${every(sides, 240, 80)}${every(marks, 80, 24)}${every(plans, 360, 180)}`,
);
