import type { ColonyRecord, InspectionRecord, Sentence } from '@combside/casework/report/inspection-record';

/*
 * Invented visits, to try the paper on: nobody and nothing in them is real. One colony, six with a suspicion and a dead
 * hive, and forty.
 */

const hash = (seed: number): string =>
  Array.from({ length: 64 }, (_, index) => ((seed * 31 + index * index * 7 + index * 13) % 16).toString(16)).join('');
const id = (seed: number): string => {
  const hex = hash(seed);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-7${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
};

const ordinarySigns = [
  'pattern.spotty',
  'cap.sunken',
  'cap.dark_greasy',
  'cap.perforated',
  'age.coiled',
  'age.prepupa',
];

const asked = (answer: 'none' | 'yes' | 'not known' | null, lastOn: string | null = null, what = '') => ({
  asked: answer !== null,
  answer,
  lastOn,
  what,
});

/** A living colony, all nine brood frames looked at, nothing seen. */
export function inventedColony(label: string, change: Partial<ColonyRecord> = {}): ColonyRecord {
  return {
    id: `colony-${label}`,
    label,
    hiveState: 'living',
    result: 'nothing seen with this look',
    suspected: [],
    whyNotOpened: '',
    observedAt: '2026-05-14T08:12:00Z',
    look: {
      depth: 'full',
      boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'both' }],
      beesShaken: true,
      light: 'sun over the shoulder',
      hold: 'top bar toward the viewer',
      sealedBroodCombSides: 7.5,
    },
    signs: ordinarySigns.map((sign) => ({ sign, outcome: 'not seen', count: null, amount: null, places: [] })),
    ropeTests: [],
    finds: [],
    medicines: asked('none'),
    combChanges: asked('not known'),
    remarks: '',
    photographs: [],
    ...change,
  };
}

const suspectColony = (label: string): ColonyRecord =>
  inventedColony(label, {
    result: 'suspect',
    suspected: ['american-foulbrood'],
    look: {
      depth: 'full',
      boxes: [
        { box: 'lower', framesHeld: 9, framesSeen: 9, sides: 'both' },
        { box: 'upper', framesHeld: 5, framesSeen: 5, sides: 'both' },
      ],
      beesShaken: true,
      light: 'sun over the shoulder',
      hold: 'top bar toward the viewer',
      sealedBroodCombSides: 6.25,
    },
    signs: [
      { sign: 'pattern.spotty', outcome: 'seen', count: null, amount: 'marked', places: [] },
      {
        sign: 'cap.sunken',
        outcome: 'seen',
        count: '11-100',
        amount: null,
        places: [
          { box: 'lower', frame: 4, side: 'a', cellsOpened: 20, cellsAffected: 11 },
          { box: 'lower', frame: 5, side: 'b', cellsOpened: 12, cellsAffected: 3 },
          { box: 'upper', frame: 2, side: null, cellsOpened: null, cellsAffected: 4 },
        ],
      },
      { sign: 'cap.perforated', outcome: 'seen', count: '1-10', amount: null, places: [] },
      {
        sign: 'col.coffee',
        outcome: 'seen',
        count: '11-100',
        amount: null,
        places: [{ box: 'lower', frame: 4, side: 'a', cellsOpened: 20, cellsAffected: 11 }],
      },
      { sign: 'scale.hard_lower', outcome: 'seen', count: '1-10', amount: null, places: [] },
      { sign: 'odour.glue', outcome: 'not seen', count: null, amount: null, places: [] },
      { sign: 'tongue', outcome: 'not seen', count: null, amount: null, places: [] },
    ],
    ropeTests: [
      {
        box: 'lower',
        frame: 4,
        side: 'a',
        tissue: 'moist brown',
        stick: 'rough and dry',
        threadMillimetres: 25,
        snapsBack: true,
        colour: 'coffee',
      },
      {
        box: 'lower',
        frame: 5,
        side: 'b',
        tissue: 'part dry',
        stick: 'rough and dry',
        threadMillimetres: 0,
        snapsBack: null,
        colour: 'dark brown',
      },
    ],
    finds: [
      { find: 'varroa', outcome: 'seen', amount: 'slight' },
      { find: 'small-hive-beetle', outcome: 'not seen', amount: null },
      { find: 'tropilaelaps', outcome: 'not seen', amount: null },
    ],
    medicines: asked('yes', '2026-03-02', 'oxalic acid, trickled'),
    combChanges: asked('none'),
    remarks: 'Bees calm. The second frame from the gate side was put back last; the hive was closed at once.',
    photographs: [
      {
        hash: hash(3),
        mediaType: 'image/jpeg',
        bytes: 2_400_000,
        takenAt: '2026-05-14T08:31:00Z',
        caption: 'Lower box, frame 4, side A, before the rope test',
      },
      { hash: hash(11), mediaType: 'image/jpeg', bytes: 2_100_000, takenAt: '2026-05-14T08:36:00Z', caption: '' },
    ],
  });

const deadHive = (label: string): ColonyRecord =>
  inventedColony(label, {
    hiveState: 'dead',
    result: 'signs seen',
    look: {
      depth: 'part',
      boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 6, sides: 'both' }],
      beesShaken: null,
      light: 'torch',
      hold: 'top bar toward the viewer',
      sealedBroodCombSides: null,
    },
    signs: [
      { sign: 'scale.hard_lower', outcome: 'not seen', count: null, amount: null, places: [] },
      { sign: 'floor.mummies', outcome: 'seen', count: null, amount: 'slight', places: [] },
    ],
    medicines: null,
    combChanges: null,
  });

function record(colonies: readonly ColonyRecord[], more: Partial<InspectionRecord>): InspectionRecord {
  return {
    invented: true,
    district: 'District of Wendelau',
    authority: 'Veterinary Office of Wendelau',
    apiary: {
      id: 'WEN-0417',
      name: 'Hazel Bank',
      addressWords: 'Behind the old limekiln, 300 m up the forest track from Unterwendel',
      position: { latitude: 48.71234, longitude: 10.45678, uncertaintyMetres: 8 },
    },
    keeper: { name: 'Zofia Wąsik-Brändle', number: 'K-20931' },
    inspector: { name: 'Merle Aschoff', office: 'Veterinary Office of Wendelau', warrant: 'B-7' },
    visit: {
      id: id(1),
      startedAt: '2026-05-14T08:02:00Z',
      endedAt: '2026-05-14T10:11:00Z',
      timeZone: 'Europe/Berlin',
      reason: 'routine',
      power: 'consent',
      present: [
        { name: 'Zofia Wąsik-Brändle', role: 'keeper' },
        { name: 'Jorin Feddersen', role: 'witness' },
      ],
      temperatureCelsius: 14,
      warnings: [
        { warning: { id: 'casework.warned.cold', values: {} }, answer: 'Only until eleven, out of the wind.' },
      ],
      coloniesCounted: colonies.length,
    },
    colonies,
    plan: null,
    specimens: [],
    cleanDowns: [],
    remarks: '',
    stillOpen: [],
    nextSteps: [
      { id: 'casework.next.nothing-seen', values: { count: colonies.length } },
      { id: 'casework.next.keep-looking', values: {} },
      { id: 'casework.next.law-first', values: {} },
    ],
    proof: { entries: colonies.map((_, index) => id(index + 20)), contentHash: hash(5) },
    issue: { number: 1, replaces: null, handedOver: false },
    signatures: [],
    ...more,
  };
}

/** One colony, nothing seen, nobody has signed yet. */
export const inventedVisitOfOne: InspectionRecord = record([inventedColony('1')], {
  apiary: { id: 'WEN-0052', name: 'Mühlgarten', addressWords: 'Garden of the mill', position: null },
});

/** Six colonies: a suspicion, a dead hive, one unopened; a plan, a specimen, clean-downs, both signatures. */
export const inventedVisitOfSix: InspectionRecord = record(
  [
    inventedColony('1'),
    inventedColony('2'),
    inventedColony('3', {
      result: 'too little brood to judge',
      look: {
        depth: 'part',
        boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 4, sides: 'both' }],
        beesShaken: false,
        light: null,
        hold: null,
        sealedBroodCombSides: 0.25,
      },
      signs: [],
    }),
    suspectColony('4'),
    deadHive('5'),
    inventedColony('6', {
      result: 'not opened',
      whyNotOpened: 'Bees too defensive',
      look: null,
      observedAt: null,
      signs: [],
      medicines: null,
      combChanges: null,
    }),
  ],
  {
    plan: {
      hives: [0, 1, 2, 3, 4, 5].map((index) => ({
        colony: `colony-${index + 1}`,
        at: { east: (index % 3) * 2.4 + Math.floor(index / 3), north: -Math.floor(index / 3) * 3.5 },
      })),
      gate: { east: 9, north: 4 },
      track: [
        { east: -4, north: 4.6 },
        { east: 9, north: 4 },
        { east: 14, north: 5.5 },
      ],
    },
    specimens: [
      {
        id: 'WEN-26-0138-K',
        colony: 'colony-4',
        what: 'Piece of brood comb, 10 by 10 cm, in a paper bag',
        takenAt: '2026-05-14T08:44:00Z',
      },
    ],
    cleanDowns: [
      { after: '4', doneAt: '2026-05-14T08:52:00Z', gloves: 'changed', tool: 'flamed', phone: 'wiped' },
      { after: null, doneAt: '2026-05-14T10:06:00Z', gloves: 'changed', tool: 'replaced', phone: 'wiped' },
    ],
    remarks: 'The keeper sold two nuclei in April; she will send the buyers’ names to the office.',
    stillOpen: [{ id: 'casework.open.colony-not-opened', values: { colony: '6' } }],
    nextSteps: [
      { id: 'casework.next.close-hive', values: { colony: '4' } },
      { id: 'casework.next.specimen', values: { colony: '4' } },
      { id: 'casework.next.move-nothing', values: {} },
      { id: 'casework.next.reported', values: {} },
      { id: 'casework.next.not-confirmed', values: {} },
      { id: 'casework.next.too-little-brood', values: { colony: '3' } },
      { id: 'casework.next.dead-hive', values: { colony: '5' } },
      { id: 'casework.next.not-opened', values: { colony: '6' } },
      { id: 'casework.next.keep-looking', values: {} },
      { id: 'casework.next.tools', values: {} },
      { id: 'casework.next.law-first', values: {} },
    ],
    signatures: [
      { as: 'inspector', name: 'Merle Aschoff', at: '2026-05-14T10:12:00Z', path: '', how: null },
      {
        as: 'receiver',
        name: 'Zofia Wąsik-Brändle',
        at: '2026-05-14T10:14:00Z',
        path: 'M20 60C40 10 60 10 55 60C52 90 30 80 45 55C60 30 90 30 95 60L100 45L110 62L120 44C130 40 140 66 150 50C160 30 150 90 140 80C150 60 180 40 220 52',
        how: 'signed on the screen',
      },
    ],
  },
);

/** Forty colonies of all kinds, with long labels and much to say. */
export const inventedVisitOfForty: InspectionRecord = record(
  Array.from({ length: 40 }, (_, index) => {
    const label = index % 10 === 9 ? `Nucleus ${index + 1}` : `${index + 1}`;
    if (index % 13 === 12) return suspectColony(label);
    if (index % 11 === 10) return deadHive(label);
    if (index % 9 === 8) {
      return inventedColony(label, {
        result: 'masked, no conclusion',
        medicines: asked('yes', '2026-05-02', 'formic acid'),
        signs: [{ sign: 'mites', outcome: 'seen', count: null, amount: 'marked', places: [] }],
      });
    }
    if (index % 7 === 6) {
      return inventedColony(label, {
        result: 'not opened',
        whyNotOpened: 'Rain came on before this row was reached',
        look: null,
        observedAt: null,
        signs: [],
        medicines: null,
        combChanges: null,
      });
    }
    return inventedColony(label);
  }),
  {
    plan: {
      hives: Array.from({ length: 40 }, (_, index) => ({
        colony: `colony-${index % 10 === 9 ? `Nucleus ${index + 1}` : index + 1}`,
        at: { east: (index % 10) * 2.4, north: -Math.floor(index / 10) * 4 },
      })),
      gate: { east: 11, north: 6 },
      track: [
        { east: -3, north: 7 },
        { east: 11, north: 6 },
        { east: 26, north: 8 },
      ],
    },
    nextSteps: Array.from(
      { length: 40 },
      (_, index): Sentence => ({ id: 'casework.next.signs-seen', values: { colony: `${index + 1}` } }),
    ).filter((_, index) => index % 11 === 10),
  },
);
