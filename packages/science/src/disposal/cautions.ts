import type { SourceId } from '@combside/sources/bibliography';

/*
 * What is said before any number of this room. Each answer opens with `cautions`, a list of these ids; the sentences
 * stand in words, under `disposal.caution.<id>`.
 */

/** One caution and where it comes from; without sources it is common practice. */
export interface Caution {
  readonly sources: readonly SourceId[];
}

export const cautions = {
  'permit and local law decide': { sources: ['CA-FAC'] },
  'ask about fire bans': { sources: ['CA-FAC'] },
  'keep clear of ground water': { sources: [] },
  'bees are dead first': { sources: ['CA-FAC', 'FL-5B54'] },
  'two people, water at hand': { sources: [] },
  'no petrol on a fire': { sources: ['NZ-KILL'] },
  'honey must not reach bees': { sources: [] },
  'wait, do not light': { sources: ['NZ-KILL'] },
  'check that they are dead': { sources: ['NZ-KILL'] },
  'only what the label allows': { sources: [] },
  'hot wax burns': { sources: ['WA-AFB22'] },
  'wax vapour burns': { sources: ['WA-AFB22'] },
  'wet wood boils over': { sources: ['WA-AFB22'] },
  'lid, never water': { sources: [] },
  'hot wax is not kerosene': { sources: [] },
  'log time and temperature': { sources: ['MACHOVA93'] },
  'eyes, gloves, boots, air': { sources: ['NBU-STER'] },
  'never mix with acid': { sources: [] },
  'caustic into water': { sources: [] },
  'heat caustic slowly': { sources: [] },
  'no aluminium or zinc': { sources: [] },
  'caustic cleans only': { sources: ['WA-AFB22'] },
  'lift by two': { sources: ['WA-AFB22', 'BOX-KG'] },
  'dose from the certificate': { sources: ['GUZMAN11'] },
} as const satisfies Record<string, Caution>;

export type CautionId = keyof typeof cautions;

/** Said with every answer of the room. */
export const always = ['permit and local law decide', 'bees are dead first'] as const satisfies readonly CautionId[];

/** What is said before each way of treating hives and boxes, here and wherever the way is offered. */
export const cautionsOfMethod = {
  scorching: [...always, 'ask about fire bans', 'two people, water at hand'],
  hotWaxDip: [
    ...always,
    'ask about fire bans',
    'hot wax burns',
    'wax vapour burns',
    'wet wood boils over',
    'lid, never water',
    'hot wax is not kerosene',
    'log time and temperature',
  ],
  hypochloriteBath: [...always, 'eyes, gloves, boots, air', 'never mix with acid', 'keep clear of ground water'],
  causticBath: [
    ...always,
    'eyes, gloves, boots, air',
    'caustic into water',
    'heat caustic slowly',
    'no aluminium or zinc',
    'caustic cleans only',
    'keep clear of ground water',
  ],
  irradiation: [...always, 'lift by two', 'dose from the certificate', 'honey must not reach bees'],
} as const satisfies Record<string, readonly CautionId[]>;
