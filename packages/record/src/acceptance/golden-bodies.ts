/**
 * One body of every version of every kind ever shipped, invented. `make-golden.ts` sealed each once; the files it wrote in
 * kinds/golden are never made again. A new kind or version adds a line here.
 */
const id = (number: number) => `01900000-0000-7000-8000-${String(number).padStart(12, '0')}`;
const hash = 'ab'.repeat(32);
const instant = '2026-05-04T08:31:05.120Z';

const asked = { asked: true, answer: 'none', lastOn: null, what: '' };
const place = { box: 'lower', frame: 4, side: 'a' };

export const sampleBodies: Readonly<Record<string, { readonly about: string; readonly body: unknown }>> = {
  'keeper.1': {
    about: 'keeper',
    body: {
      name: 'Invented O\'Keeper "the elder" (ąß🐝)',
      number: 'K-17',
      addressWords: 'Straße 7',
      telephone: '',
      email: '',
      language: 'de',
      trade: 'hobby',
    },
  },
  'apiary.1': {
    about: 'apiary',
    body: {
      name: 'Hazel Bank',
      keeper: id(1),
      district: 'north',
      position: { latitude: 54.123, longitude: -2.345, uncertaintyMetres: 12, how: 'measured on site' },
      addressWords: 'behind the mill',
      lastConfirmedOn: '2025-05-04',
      coloniesRegistered: 6,
      plan: {
        hives: [{ colony: id(2), at: { east: 1.5, north: -2 } }],
        gate: { east: 0, north: 0 },
        track: [{ east: -1, north: 0 }],
        walk: [id(2)],
      },
    },
  },
  'apiary.2': {
    about: 'apiary',
    body: {
      name: 'Hazel Bank',
      number: 'A-4',
      keeper: null,
      district: 'north',
      position: null,
      addressWords: '',
      lastConfirmedOn: null,
      coloniesRegistered: null,
      plan: null,
    },
  },
  'colony.1': {
    about: 'colony',
    body: {
      apiary: id(3),
      label: '7b',
      hiveType: 'langstroth-deep',
      broodBoxes: [{ box: 'lower', frames: 9 }],
      hiveState: 'living',
    },
  },
  'visit.1': {
    about: 'visit',
    body: {
      apiary: id(3),
      inspector: id(4),
      reason: 'routine',
      power: 'consent',
      plannedFor: null,
      startedAt: instant,
      endedAt: null,
      coloniesCounted: 6,
      warnings: [{ warning: 'too cold', answer: 'went on' }],
      temperatureCelsius: 14.5,
      leftOpen: [{ colony: id(2), reason: 'rain' }],
    },
  },
  'movement.1': {
    about: 'movement',
    body: {
      from: id(3),
      to: null,
      what: 'nuclei',
      quantity: 4,
      colonies: [],
      how: 'sold',
      earliest: '2026-04-01',
      latest: '2026-04-30',
      knownBy: 'told by the keeper',
    },
  },
  'attendance.1': { about: 'visit', body: { people: [{ name: 'Invented Person', role: 'keeper' }] } },
  'examination.1': {
    about: 'colony',
    body: {
      visit: id(5),
      apiary: id(3),
      observedAt: instant,
      hiveState: 'living',
      depth: 'part',
      claim: 'signs seen',
      boxes: [{ box: 'lower', framesHeld: 9, framesSeen: 4, sides: 'both' }],
      beesShaken: true,
      light: 'torch',
      hold: null,
      sealedBroodCombSides: 6.25,
      signs: [
        {
          sign: 'sunken-cappings',
          outcome: 'seen',
          count: '11-100',
          amount: null,
          places: [{ ...place, cellsOpened: 10, cellsAffected: 3 }],
        },
      ],
      ropeTests: [
        {
          ...place,
          tissue: 'moist brown',
          stick: 'rough and dry',
          threadMillimetres: 25,
          snapsBack: true,
          colour: 'coffee',
        },
      ],
      finds: [{ find: 'small-hive-beetle', outcome: 'not seen', amount: null }],
      medicines: asked,
      combChanges: { ...asked, answer: 'yes', lastOn: '2026-03-01', what: 'foundation' },
      measurements: [{ what: 'temperature', value: 14.5, unit: 'Cel' }],
      remarks: '',
      photographs: [{ hash, mediaType: 'image/jpeg', bytes: 12345, takenAt: instant, caption: '' }],
    },
  },
  'assessment.1': {
    about: 'colony',
    body: {
      examination: id(6),
      visit: id(5),
      statedAt: instant,
      result: 'suspect',
      suspected: ['afb'],
      basis: 'inspector',
      rule: null,
      differential: [{ condition: 'afb', probability: 0.875, low: 0.5, high: 0.975 }],
      nextCheck: null,
      scienceVersion: '1',
      pack: { id: 'quillmoor', version: '1' },
    },
  },
  'clean-down.1': {
    about: 'visit',
    body: {
      after: id(2),
      doneAt: instant,
      gloves: 'changed',
      tool: 'flamed',
      phone: 'wiped',
      wentOnAfterWarning: false,
      remarks: '',
    },
  },
  'handover.1': {
    about: 'visit',
    body: { handedOverAt: instant, how: 'read out', receiver: 'keeper', signaturePath: '', contentHash: hash },
  },
  'proposed-change.1': {
    about: 'apiary',
    body: { visit: id(5), field: 'coloniesRegistered', from: 6, to: 7, reason: 'counted' },
  },
  'merge.1': { about: 'keeper', body: { other: id(7), verdict: 'same', reason: 'same number' } },
  'reason.1': { about: 'apiary', body: { explains: id(8), text: 'the keeper telephoned' } },
  'photograph.1': {
    about: 'apiary',
    body: { hash, mediaType: 'image/jpeg', bytes: 12345, takenAt: instant, caption: 'at the roadside' },
  },
  'correction.1': {
    about: 'colony',
    body: { corrects: id(9), reason: 'typed wrong', version: 1, body: { text: 'as it should be' } },
  },
  'note.1': { about: 'colony', body: { text: 'Zeile 1\nZeile 2 – "quoted" \'; --' } },
  'erasure.1': { about: 'keeper', body: { entries: [id(10)], reason: 'retention over' } },
  'resealing.1': {
    about: 'device',
    body: { predecessor: id(11), originals: [{ entry: id(12), seq: 7, envelopeHash: hash }] },
  },
  'countersignature.1': { about: 'device', body: { entry: id(13), envelopeHash: hash } },
  'clock-flag.1': { about: 'colony', body: { entry: id(14), aheadMilliseconds: 90_000_000 } },
  'refusal.1': { about: 'device', body: { entry: id(15), seq: 3, envelopeHash: hash, reason: 'not your district' } },
};
