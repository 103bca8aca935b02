import type { always as reference } from '../en/always.ts';

export const always = {
  'always.program': 'Combside',
  'always.invented': 'Erfundenes Beispiel',
  'always.language.en': 'English',
  'always.language.de': 'Deutsch',
  'always.back': 'Zurück',
  'always.back-to': 'Zurück zu {place}',
  'always.close': 'Schließen',
  'always.undo': 'Rückgängig',
  'always.more': 'Mehr',
  'always.less': 'Weniger',
  'always.yes': 'Ja',
  'always.no': 'Nein',
  'always.not-asked': 'Nicht gefragt',
  'always.not-known': 'Nicht bekannt',
  'always.none': 'Keine',
  'always.n-of-m': '{n} von {m}',
  'always.signed-in': 'Angemeldet: {name}',
  'always.saved.here': 'Hier gespeichert',
  'always.saved.not-yet': 'Noch nicht gespeichert',
  'always.saved.office': 'Im Amt angekommen',
  'always.network.none': 'Kein Netz',
  'always.network.present': 'Netz gefunden',
  'always.apiary': '{count, plural, one {# Bienenstand} other {# Bienenstände}}',
  'always.colony': '{count, plural, one {# Volk} other {# Völker}}',
  'always.newer-version': 'Mit einer neueren Fassung geschrieben',
  'always.went-wrong': 'Das hat nicht geklappt. Was vorher gespeichert war, ist noch da.',
  'always.write.busy': 'Wird geschrieben…',
  'always.write.written': 'Geschrieben. Es ist auf dem Weg zum Amt.',
  'always.write.sent': 'Geschrieben und beim Amt.',
  'always.write.no-store':
    'Dieser Browser gibt keinen Speicher, oder ein anderes Fenster hält ihn. Andere Fenster von Combside schließen und noch einmal versuchen.',
  'always.write.failed.storage full':
    'Nicht geschrieben: Der Speicher dieses Geräts ist voll. Ihre Eingaben sind noch da. Schaffen Sie Platz, zum Beispiel indem Fotos an das Amt gehen, und versuchen Sie es noch einmal.',
  'always.write.failed.store closed':
    'Nicht geschrieben: Dieses Fenster hat seinen Speicher verloren. Notieren Sie, was Sie hier eingegeben haben, und öffnen Sie Combside neu. Was vorher gespeichert war, ist noch da.',
  'always.write.failed.no answer':
    'Nicht geschrieben: Dafür werden die neuesten Einträge des Amts gebraucht, und das Amt hat nicht geantwortet. Ihre Eingaben sind noch da. Versuchen Sie es noch einmal, wenn eine Verbindung da ist.',
  'always.write.failed.other':
    'Nicht geschrieben. Ihre Eingaben sind noch da: Versuchen Sie es noch einmal. Wenn es so bleibt, speichern Sie einen Fehlerbericht.',
} as const satisfies Record<keyof typeof reference, string>;
