import { dayOf, instantOf } from '@combside/calendar/instant';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import type { ColonyBody } from '@combside/record/kinds/colony';
import type { KeeperBody } from '@combside/record/kinds/keeper';
import type { Chance } from '@combside/science/random/seeded';
import { newApiary } from '../register/apiary.ts';
import { newColony } from '../register/colony.ts';
import { newKeeper } from '../register/keeper.ts';
import { carriedOut } from './carried-out.ts';
import { firstNames, lastNames, placeEnds, placeStarts, roads } from './names.ts';
import { demoDistrict, officeLead } from './people.ts';
import { demoSizes, type World } from './world.ts';

/** The ids of what was entered, by the part each plays in the story. */
export interface DemoRegister {
  readonly keepers: readonly string[];
  readonly apiaries: readonly string[];
  /** Colonies by apiary, in walking order. */
  readonly colonies: Readonly<Record<string, readonly string[]>>;
  /** The six-colony apiary of the main journey. */
  readonly journey: string;
  /** Apiaries of the keeper in whose hives the outbreak began. */
  readonly source: readonly string[];
  readonly migratory: readonly string[];
  readonly wrongLead: string;
  readonly lookAlikes: readonly string[];
}

/** Where the made-up island lies: open sea, so that nobody is at home there. */
const island = { latitude: 56, longitude: 3, spread: 0.22 };

/** Two years and a month before today, so that the first visits find a register. */
const registerDay = 760;

const hiveTypes = ['langstroth-deep', 'national-brood', 'dadant-blatt', 'zander'] as const;

/** Enters 40 keepers, 60 apiaries and 400 colonies. */
export function enterRegister(world: World): DemoRegister {
  const { chance, ledger } = world;
  const pen = { author: officeLead.id, device: officeLead.device.id, at: world.at(registerDay, 9) };
  const trades: KeeperBody['trade'][] = Array.from({ length: demoSizes.keepers }, (_, index) =>
    index < 34 ? 'hobby' : index < 39 ? 'sideline' : 'migratory',
  );
  const keepers = trades.map((trade, index) => {
    const id = ledger.newId(pen.at);
    ledger.write(pen, carriedOut(newKeeper(id, keeperBody(index, trade))).proposals);
    return id;
  });

  // One apiary for every hobby keeper and a second for five of them, three for each sideline keeper, six for the migratory.
  const owners = [
    ...keepers.slice(0, 34),
    ...keepers.slice(0, 5),
    ...keepers.slice(34, 39).flatMap((id) => [id, id, id]),
    ...Array.from({ length: 6 }, () => keepers[39] as string),
  ];
  const sizes = sizesFor(owners.length, chance);
  const colonies: Record<string, string[]> = {};
  const apiaries = owners.map((owner, index) => {
    const id = ledger.newId(pen.at);
    const size = sizes[index] as number;
    const ids = Array.from({ length: size }, () => ledger.newId(pen.at));
    const unknownOwner = index === 20 || index === 31;
    ledger.write(pen, carriedOut(newApiary(id, apiaryBody(world, index, unknownOwner ? null : owner, ids))).proposals);
    const type = index === journeyIndex ? 'langstroth-deep' : (hiveTypes[chance.integer(4)] as string);
    ids.forEach((colony, place) => {
      const body = colonyBody(id, place, type, index === journeyIndex ? 9 : 7 + chance.integer(4), chance);
      const boxes = index === journeyIndex ? body.broodBoxes.slice(0, 1) : body.broodBoxes;
      // The label is new at this apiary, so no other colony has to be looked at.
      const act = newColony({ id: colony, body: { ...body, broodBoxes: boxes }, at: ledger.apiary(id), colonies: [] });
      ledger.write(pen, carriedOut(act).proposals);
    });
    colonies[id] = ids;
    return id;
  });
  const named = (index: number) => apiaries[index] as string;
  return {
    keepers,
    apiaries,
    colonies,
    journey: named(journeyIndex),
    source: [39, 40].map(named),
    migratory: apiaries.slice(54),
    wrongLead: named(12),
    lookAlikes: [17, 23, 28, 45].map(named),
  };
}

const journeyIndex = 7;

function keeperBody(index: number, trade: KeeperBody['trade']): KeeperBody {
  const first = firstNames[(index * 7) % firstNames.length] as string;
  const last = lastNames[(index * 11 + Math.floor(index / 20)) % lastNames.length] as string;
  return {
    name: `${first} ${last}`,
    number: `QM-${String(1000 + index)}`,
    addressWords: 'an invented person in an invented place',
    telephone: '',
    email: '',
    language: index % 9 === 4 ? 'de' : 'en',
    trade,
  };
}

/** Sixty sizes that add up to 400, six of them at the apiary of the journey. */
function sizesFor(count: number, chance: Chance): number[] {
  const sizes = Array.from({ length: count }, (_, index) => {
    if (index === journeyIndex) return 6;
    if (index < 39) return 3 + chance.integer(4);
    return index < 54 ? 7 + chance.integer(5) : 11 + chance.integer(5);
  });
  let rest = demoSizes.colonies - sizes.reduce((sum, size) => sum + size, 0);
  for (let index = 0; rest !== 0; index = (index + 1) % count) {
    const size = sizes[index] as number;
    if (index === journeyIndex || (rest < 0 && size <= 3)) continue;
    sizes[index] = size + Math.sign(rest);
    rest -= Math.sign(rest);
  }
  return sizes;
}

function apiaryBody(world: World, index: number, keeper: string | null, colonies: readonly string[]): ApiaryBody {
  const { chance } = world;
  const name =
    index === journeyIndex
      ? 'Hazel Bank'
      : `${placeStarts[index % placeStarts.length]} ${placeEnds[(index + Math.floor(index / 20) * 3) % placeEnds.length]}`;
  const sure = chance.uniform();
  const perRow = 5;
  const hives = colonies.map((colony, place) => ({
    colony,
    at: { east: 4 + (place % perRow) * 3, north: 3 + Math.floor(place / perRow) * 4 },
  }));
  return {
    name,
    number: `QM-S-${String(100 + index)}`,
    keeper,
    district: demoDistrict,
    position:
      index === 33
        ? null
        : {
            latitude: round(island.latitude + chance.between(-island.spread, island.spread)),
            longitude: round(island.longitude + chance.between(-island.spread, island.spread)),
            uncertaintyMetres: sure < 0.7 ? 8 : sure < 0.9 ? 60 : 400,
            how: sure < 0.7 ? 'measured on site' : sure < 0.9 ? 'from a map' : 'told by the keeper',
          },
    addressWords: `behind ${roads[index % roads.length]}, Quillmoor (invented)`,
    lastConfirmedOn: dayOf(instantOf(world.at(registerDay + chance.integer(300), 12))),
    coloniesRegistered: colonies.length,
    plan: {
      hives,
      gate: { east: 0, north: 0 },
      track: [
        { east: -6, north: -2 },
        { east: 0, north: 0 },
        { east: 4, north: 1 },
      ],
      walk: [...colonies],
    },
  };
}

function colonyBody(apiary: string, place: number, hiveType: string, frames: number, chance: Chance): ColonyBody {
  const two = chance.uniform() < 0.25;
  return {
    apiary,
    label: String(place + 1),
    hiveType,
    broodBoxes: [{ box: 'lower', frames }, ...(two ? [{ box: 'upper', frames }] : [])],
    hiveState: 'living',
  };
}

function round(degrees: number): number {
  return Math.round(degrees * 1e5) / 1e5;
}
