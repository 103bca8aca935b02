import { millisecondsOf } from '@combside/calendar/instant';
import type { Proposal } from '@combside/record/entry';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import type { ColonyBody } from '@combside/record/kinds/colony';
import { seeded } from '@combside/science/random/seeded';
import type { Act, Done } from '../act.ts';
import { type Ledger, newLedger } from '../demo/ledger.ts';
import { calmConditions, type StartVisit, startVisit } from '../examine/start-visit.ts';
import { newApiary } from '../register/apiary.ts';
import { newColony } from '../register/colony.ts';
import { newKeeper } from '../register/keeper.ts';

/** An invented apiary of three colonies, for tests: the acts are played on it, and its states are the record's own fold. */
export interface SmallSite {
  readonly ledger: Ledger;
  readonly keeper: string;
  readonly apiary: string;
  readonly colonies: readonly [string, string, string];
  readonly inspector: string;
  /** Writes what an act proposes, at a time. @throws when the act was refused */
  carryOut<Extra>(act: Act<Extra>, at: string): Done & Extra;
  write(proposals: readonly Proposal[], at: string): void;
  newId(): string;
}

export const arrival = '2027-05-04T09:00:00.000Z';

export const siteBody: ApiaryBody = {
  name: 'Test Bank',
  number: null,
  keeper: null,
  district: 'quillmoor',
  position: { latitude: 56, longitude: 3, uncertaintyMetres: 8, how: 'measured on site' },
  addressWords: 'behind the mill, Quillmoor (invented)',
  lastConfirmedOn: '2027-01-10',
  coloniesRegistered: 3,
  plan: null,
};

export const hive = (apiary: string, label: string): ColonyBody => ({
  apiary,
  label,
  hiveType: 'langstroth-deep',
  broodBoxes: [{ box: 'lower', frames: 9 }],
  hiveState: 'living',
});

export function smallSite(): SmallSite {
  const ledger = newLedger(seeded(5));
  const before = millisecondsOf('2027-01-10');
  const newId = () => ledger.newId(before);
  const keeper = newId();
  const apiary = newId();
  const colonies = [newId(), newId(), newId()] as const;
  const inspector = newId();
  const pen = (at: string) => ({ author: inspector, device: inspector, at: millisecondsOf(at) });
  const site: SmallSite = {
    ledger,
    keeper,
    apiary,
    colonies,
    inspector,
    newId,
    carryOut(act, at) {
      if (!act.ok) throw new Error(`refused: ${act.reason} ${JSON.stringify(act.values)}`);
      ledger.write(pen(at), act.proposals);
      return act;
    },
    write: (proposals, at) => ledger.write(pen(at), proposals),
  };
  const early = '2027-01-10T09:00:00.000Z';
  site.carryOut(
    newKeeper(keeper, {
      name: 'Invented Keeper',
      number: null,
      addressWords: '',
      telephone: '',
      email: '',
      language: 'en',
      trade: 'hobby',
    }),
    early,
  );
  site.carryOut(newApiary(apiary, { ...siteBody, keeper }), early);
  colonies.forEach((colony, place) => {
    site.carryOut(
      newColony({
        id: colony,
        body: hive(apiary, ['1', '2', '10'][place] as string),
        at: ledger.apiary(apiary),
        colonies: [],
      }),
      early,
    );
  });
  return site;
}

/** The start of a visit at the site, as calm as can be; `change` makes it otherwise. */
export function startAt(
  site: SmallSite,
  visit: string,
  change: Partial<StartVisit> = {},
): ReturnType<typeof startVisit> {
  return startVisit({
    visit,
    planned: null,
    apiary: site.ledger.apiary(site.apiary),
    colonies: site.ledger.coloniesOf(site.apiary),
    inspector: site.inspector,
    reason: 'routine',
    power: 'consent',
    startedAt: arrival,
    conditions: { ...calmConditions, temperatureCelsius: 20 },
    answers: {},
    people: [],
    coloniesCounted: 3,
    ...change,
  });
}
