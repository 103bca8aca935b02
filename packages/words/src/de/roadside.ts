import type { roadside as reference } from '../en/roadside.ts';

export const roadside = {
  'roadside.open': 'Bienenstand nicht im Register',
  'roadside.title': 'Am Wegrand gefunden',
  'roadside.where': 'Wo Sie stehen',
  'roadside.finding': 'Standort wird bestimmt…',
  'roadside.found': '{latitude}, {longitude}, auf {metres} genau',
  'roadside.unsure': 'Nur auf {metres} genau. Kurz im Freien warten oder neu messen.',
  'roadside.denied':
    'Das Telefon gibt seinen Standort nicht preis. In den Einstellungen des Browsers erlauben, dann neu messen.',
  'roadside.failed': 'Noch kein Standort. Ins Freie gehen und neu messen.',
  'roadside.again': 'Neu messen',
  'roadside.near': '{name} steht im Register, {metres} von hier. Ist er es?',
  'roadside.near.it-is': 'Er ist es',
  'roadside.photograph': 'Foto',
  'roadside.photograph.take': 'Foto aufnehmen',
  'roadside.photograph.again': 'Noch eines aufnehmen',
  'roadside.photograph.kept': 'Foto auf diesem Telefon gespeichert',
  'roadside.photograph.of': 'Eben aufgenommenes Foto',
  'roadside.count': 'Von hier gesehene Beuten',
  'roadside.count.unstated': 'nicht gezählt',
  'roadside.words': 'Wie man hinfindet (nicht nötig)',
  'roadside.name': 'Wegrand {day}, {time}',
  'roadside.district': 'Bezirk',
  'roadside.keep': 'Diesen Bienenstand festhalten',
  'roadside.kept': 'Hier gespeichert. Wem er gehört, lässt sich später klären.',
  'roadside.visit': 'Besuch dort beginnen',
  'roadside.safety':
    'Auf dem Weg bleiben. Grund nur mit dem Recht dazu betreten, nie ohne Schutzkleidung an die Beuten gehen.',
} as const satisfies Record<keyof typeof reference, string>;
