import type { DemoRegister } from './register.ts';
import type { TrueCondition, TrueHiveState, Truth } from './truth.ts';
import type { World } from './world.ts';

/**
 * What is really so. American foulbrood began two seasons ago in a weak hive of a sideline keeper, went with a moved
 * colony to the second apiary, by robbing from the first dead hive to its neighbour, and with sold nuclei to the apiary
 * of the journey. All else that looks like it is something else.
 */
export function hideTruth(world: World, register: DemoRegister): Truth {
  const { chance } = world;
  const at = (apiary: string, place: number): string => register.colonies[apiary]?.[place] as string;
  const [first, second] = register.source as readonly [string, string];
  const journey = register.journey;
  const conditions: TrueCondition[] = [];
  const hiveStates: TrueHiveState[] = [];
  const foulbrood = (colony: string, began: number, advanced: number, ended = 0): void => {
    conditions.push({ colony, condition: 'american-foulbrood.early', began, ended: advanced });
    conditions.push({ colony, condition: 'american-foulbrood.advanced', began: advanced, ended });
  };
  foulbrood(at(first, 0), 640, 520, 300);
  hiveStates.push({ colony: at(first, 0), state: 'dead', since: 300 });
  foulbrood(at(first, 1), 330, 230);
  foulbrood(at(second, 0), 430, 300);
  foulbrood(at(journey, 3), 300, 150);
  foulbrood(at(journey, 5), 320, 200, 60);
  hiveStates.push({ colony: at(journey, 5), state: 'dead', since: 60 });

  const [sacbrood, varroa, chalkbrood, bald] = register.lookAlikes as readonly [string, string, string, string];
  for (let place = 0; place < 3; place++) {
    conditions.push({ colony: at(sacbrood, place), condition: 'sacbrood', began: 420, ended: 0 });
    conditions.push({ colony: at(varroa, place), condition: 'varroa-damage', began: 400, ended: 0 });
    conditions.push({ colony: at(chalkbrood, place), condition: 'chalkbrood', began: 700, ended: 0 });
    conditions.push({ colony: at(bald, place), condition: 'bald-brood', began: 380, ended: 0 });
  }
  conditions.push({ colony: at(register.wrongLead, 1), condition: 'varroa-damage', began: 360, ended: 0 });

  // Ordinary trouble, here and there.
  const spoken = new Set([...register.source, journey, register.wrongLead, ...register.lookAlikes]);
  const ordinary = ['chalkbrood', 'sacbrood', 'varroa-damage', 'queen-failure', 'chilled-or-starved'] as const;
  for (const apiary of register.apiaries) {
    if (spoken.has(apiary)) continue;
    for (const colony of register.colonies[apiary] ?? []) {
      const draw = chance.uniform();
      if (draw < 0.08) {
        const began = 120 + chance.integer(600);
        const condition = ordinary[chance.integer(ordinary.length)] as (typeof ordinary)[number];
        conditions.push({ colony, condition, began, ended: Math.max(0, began - 150 - chance.integer(250)) });
      } else if (draw < 0.1) {
        hiveStates.push({ colony, state: 'dead', since: 40 + chance.integer(500) });
      } else if (draw < 0.112) {
        hiveStates.push({ colony, state: 'stored combs', since: 100 + chance.integer(500) });
      }
    }
  }
  return {
    conditions,
    hiveStates,
    outbreak: [first, second, journey],
    spread: [
      { from: first, to: second, by: 'moved colony', day: 430 },
      { from: first, to: journey, by: 'sold nuclei', day: 380 },
      { from: first, to: first, by: 'robbing', day: 330 },
    ],
    wrongLead: register.wrongLead,
    lookAlikes: [
      { apiary: sacbrood, condition: 'sacbrood' },
      { apiary: varroa, condition: 'varroa-damage' },
      { apiary: chalkbrood, condition: 'chalkbrood' },
      { apiary: bald, condition: 'bald-brood' },
    ],
    journey: {
      apiary: journey,
      colonies: Object.fromEntries((register.colonies[journey] ?? []).map((id, place) => [String(place + 1), id])),
      suspect: at(journey, 3),
      dead: at(journey, 5),
    },
  };
}
