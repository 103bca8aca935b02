import type { SignId } from './catalogue.ts';

/** What the one drawing of a brood cell in section needs to know: plain data, drawn elsewhere. */
export interface CellDrawing {
  /** `cell`: one cell in section. `comb`: a patch of comb seen from the face. `hive`: the hive with its floor. */
  readonly scene: 'cell' | 'comb' | 'hive';
  readonly capping: 'none' | 'domed' | 'flat' | 'sunken' | 'perforated' | 'torn' | 'drone dome' | 'raised rim';
  readonly content:
    | 'empty'
    | 'egg'
    | 'several eggs'
    | 'coiled'
    | 'twisted'
    | 'stretched'
    | 'slumped'
    | 'pupa'
    | 'mummy'
    | 'fluffy'
    | 'sac'
    | 'dry';
  readonly scale: 'none' | 'lower wall' | 'mouth' | 'loose' | 'rubbery';
  readonly colour: 'none' | 'pearl' | 'yellow' | 'brown' | 'dark' | 'white' | 'grey';
  /** Length of a thread drawn out of the mouth, mm; 0 for none. */
  readonly thread: number;
  readonly tongue: boolean;
  readonly headUp: boolean;
  /** Pale breathing tubes show through the skin. */
  readonly tracheae: boolean;
  readonly shiny: boolean;
  readonly moist: boolean;
  readonly mites: number;
  readonly moth: boolean;
  /** Waves rising from the mouth: a smell. */
  readonly smell: 'none' | 'glue' | 'sour' | 'any';
  /** For a patch of comb: how the cells lie. */
  readonly patch: 'none' | 'compact' | 'spotty' | 'block dead' | 'line open' | 'one left behind' | 'scattered domes';
  /** For the hive: what lies on its floor, and how the bees cover the brood. */
  readonly hive: 'none' | 'mummies on the floor' | 'few bees';
}

const plain: CellDrawing = {
  scene: 'cell',
  capping: 'none',
  content: 'empty',
  scale: 'none',
  colour: 'none',
  thread: 0,
  tongue: false,
  headUp: false,
  tracheae: false,
  shiny: false,
  moist: false,
  mites: 0,
  moth: false,
  smell: 'none',
  patch: 'none',
  hive: 'none',
};

const cell = (change: Partial<CellDrawing>): CellDrawing => ({ ...plain, ...change });
const comb = (patch: CellDrawing['patch'], change: Partial<CellDrawing> = {}): CellDrawing => ({
  ...plain,
  scene: 'comb',
  patch,
  ...change,
});

/** How each sign is drawn. Lengths in millimetres. */
export const drawingOf: Readonly<Record<SignId, CellDrawing>> = {
  'odour.glue': cell({ content: 'slumped', colour: 'brown', smell: 'glue' }),
  'odour.sour': cell({ content: 'coiled', colour: 'yellow', smell: 'sour' }),
  'odour.any': cell({ smell: 'any' }),
  few_adults: { ...plain, scene: 'hive', hive: 'few bees' },
  mites: cell({ content: 'pupa', colour: 'pearl', mites: 3 }),
  'pattern.compact': comb('compact', { capping: 'domed', colour: 'pearl' }),
  'pattern.spotty': comb('spotty', { capping: 'domed' }),
  'age.all_together': comb('block dead', { colour: 'grey' }),
  'cap.sunken': cell({ capping: 'sunken', content: 'slumped', colour: 'brown' }),
  'cap.dark_greasy': cell({ capping: 'flat', colour: 'dark', moist: true, content: 'slumped' }),
  'cap.perforated': cell({ capping: 'perforated', content: 'stretched', colour: 'yellow' }),
  'cap.flattened': cell({ capping: 'flat', content: 'stretched', colour: 'white' }),
  'cap.late_unemerged': comb('one left behind', { capping: 'sunken' }),
  'cap.line_open': comb('line open', { capping: 'raised rim', content: 'pupa', colour: 'pearl' }),
  'cap.domed': comb('scattered domes', { capping: 'drone dome' }),
  'col.pearl': cell({ content: 'coiled', colour: 'pearl' }),
  'col.offwhite_yellow': cell({ content: 'stretched', colour: 'yellow' }),
  'col.coffee': cell({ content: 'slumped', colour: 'brown', moist: true }),
  'col.grey_black_shiny': cell({ content: 'stretched', colour: 'grey', shiny: true }),
  'age.coiled': cell({ content: 'coiled', colour: 'yellow' }),
  'age.twisted': cell({ content: 'twisted', colour: 'yellow' }),
  'age.prepupa': cell({ capping: 'torn', content: 'stretched', colour: 'brown' }),
  'age.pupa': cell({ capping: 'torn', content: 'pupa', colour: 'brown' }),
  'post.head_up': cell({ capping: 'torn', content: 'stretched', colour: 'brown', headUp: true }),
  'post.melted': cell({ capping: 'torn', content: 'slumped', colour: 'yellow', moist: true }),
  'con.tracheae': cell({ content: 'coiled', colour: 'yellow', tracheae: true }),
  'con.watery': cell({ content: 'slumped', colour: 'yellow', moist: true, thread: 3 }),
  'con.ropy': cell({ content: 'slumped', colour: 'brown', moist: true, thread: 25 }),
  'con.sac': cell({ content: 'sac', colour: 'yellow' }),
  'con.fluff': cell({ content: 'fluffy', colour: 'white' }),
  'con.mummy_loose': cell({ content: 'mummy', colour: 'white' }),
  'con.mummy_stone': cell({ content: 'mummy', colour: 'grey' }),
  'con.dry_unfed': cell({ content: 'dry', colour: 'grey' }),
  tongue: cell({ content: 'slumped', colour: 'brown', tongue: true }),
  'eggs.multi': cell({ content: 'several eggs' }),
  moth: comb('line open', { capping: 'raised rim', moth: true }),
  'scale.hard_lower': cell({ scale: 'lower wall', colour: 'dark' }),
  'scale.rubbery': cell({ scale: 'rubbery', colour: 'dark' }),
  'scale.mouth': cell({ scale: 'mouth', colour: 'dark' }),
  'scale.gondola': cell({ scale: 'loose', colour: 'dark' }),
  'floor.mummies': { ...plain, scene: 'hive', hive: 'mummies on the floor', colour: 'white' },
};
