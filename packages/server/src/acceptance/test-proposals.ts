import type { Proposal } from '@combside/record/entry';
import type { ApiaryBody } from '@combside/record/kinds/apiary';
import type { AssessmentBody } from '@combside/record/kinds/assessment';
import type { ColonyBody } from '@combside/record/kinds/colony';
import type { CorrectionBody } from '@combside/record/kinds/correction';
import type { ExaminationBody, PhotographReference } from '@combside/record/kinds/examination';
import type { KeeperBody } from '@combside/record/kinds/keeper';
import type { MovementBody } from '@combside/record/kinds/movement';
import { kinds } from '@combside/record/kinds/registry';
import type { VisitBody } from '@combside/record/kinds/visit';

/** Proposals for tests of the server: well formed, invented, and no more than that. */

function propose<Body>(
  kind: string,
  type: string,
  id: string,
  body: Body,
  replaces: readonly string[] = [],
): Proposal<Body> {
  return { kind, version: kinds.get(kind)?.version ?? 1, about: { type, id }, body, replaces };
}

export function keeperProposal(id: string, name: string): Proposal<KeeperBody> {
  return propose('keeper', 'keeper', id, {
    name,
    number: 'K-17',
    addressWords: 'Mill Lane 3',
    telephone: '',
    email: '',
    language: 'en',
    trade: 'hobby',
  });
}

export function apiaryProposal(
  id: string,
  district: string,
  changes: Partial<ApiaryBody> = {},
  replaces: readonly string[] = [],
): Proposal<ApiaryBody> {
  const body: ApiaryBody = {
    name: 'Hazel Bank',
    number: null,
    keeper: null,
    district,
    position: { latitude: 55.9, longitude: 2.9, uncertaintyMetres: 10, how: 'measured on site' },
    addressWords: 'behind the chapel',
    lastConfirmedOn: null,
    coloniesRegistered: 2,
    plan: null,
    ...changes,
  };
  return propose('apiary', 'apiary', id, body, replaces);
}

export function colonyProposal(id: string, apiary: string, label: string): Proposal<ColonyBody> {
  return propose('colony', 'colony', id, {
    apiary,
    label,
    hiveType: 'langstroth-deep',
    broodBoxes: [{ box: 'lower', frames: 9 }],
    hiveState: 'living',
  });
}

export function visitProposal(id: string, apiary: string, inspector: string): Proposal<VisitBody> {
  return propose('visit', 'visit', id, {
    apiary,
    inspector,
    reason: 'routine',
    power: 'consent',
    plannedFor: null,
    startedAt: '2026-05-04T08:00:00.000Z',
    endedAt: null,
    coloniesCounted: 2,
    warnings: [],
    temperatureCelsius: 17,
    leftOpen: [],
  });
}

export function examinationProposal(
  colony: string,
  visit: string,
  apiary: string,
  photographs: readonly PhotographReference[] = [],
  remarks = '',
): Proposal<ExaminationBody> {
  const notAsked = { asked: false, answer: null, lastOn: null, what: '' };
  return propose('examination', 'colony', colony, {
    visit,
    apiary,
    observedAt: '2026-05-04T08:30:00.000Z',
    hiveState: 'living',
    depth: 'full',
    claim: 'signs seen',
    boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'both' }],
    beesShaken: true,
    light: null,
    hold: null,
    sealedBroodCombSides: null,
    signs: [{ sign: 'cap.sunken', outcome: 'seen', count: '1-10', amount: null, places: [] }],
    ropeTests: [],
    tests: [],
    finds: [],
    medicines: notAsked,
    combChanges: notAsked,
    measurements: [],
    remarks,
    photographs: [...photographs],
  });
}

export function assessmentProposal(colony: string, visit: string, examination: string): Proposal<AssessmentBody> {
  return propose('assessment', 'colony', colony, {
    examination,
    visit,
    statedAt: '2026-05-04T08:40:00.000Z',
    result: 'suspect',
    suspected: ['american-foulbrood'],
    basis: 'inspector',
    rule: null,
    differential: [{ condition: 'american-foulbrood', probability: 0.7, low: 0.4, high: 0.9 }],
    nextCheck: 'rope-test',
    circumstances: null,
    priorChanges: [],
    combReadings: [],
    scienceVersion: '1',
    pack: { id: 'quillmoor', version: '1' },
  });
}

export function movementProposal(id: string, from: string, to: string): Proposal<MovementBody> {
  return propose('movement', 'movement', id, {
    from,
    to,
    what: 'colonies',
    quantity: 2,
    colonies: [],
    how: 'sold',
    earliest: '2026-04-01',
    latest: '2026-04-03',
    knownBy: 'told by the keeper',
    happened: true,
  });
}

export function noteProposal(type: string, id: string, text: string): Proposal<{ text: string }> {
  return propose('note', type, id, { text });
}

/** Says what an entry about the same entity as `said` should have said, in a version of its kind. */
export function correctionProposal(
  said: Proposal,
  corrects: string,
  version: number,
  body: unknown,
): Proposal<CorrectionBody> {
  return propose('correction', said.about.type, said.about.id, { corrects, reason: 'misheard', version, body });
}
