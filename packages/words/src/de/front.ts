import type { front as english } from '../en/front.ts';

export const front = {
  'front.sign-in.title': 'Anmelden',
  'front.sign-in.email': 'E-Mail',
  'front.sign-in.password': 'Passwort',
  'front.sign-in.do': 'Anmelden',
  'front.sign-in.doing': 'Anmeldung läuft…',
  'front.sign-in.wrong': 'E-Mail und Passwort gehören nicht zusammen. Beide prüfen und noch einmal versuchen.',
  'front.sign-in.too-many': 'Zu viele Versuche. Eine Minute warten, dann noch einmal versuchen.',
  'front.sign-in.no-network':
    'Die erste Anmeldung auf einem Gerät braucht ein Netz. Ein Netz suchen, dann noch einmal versuchen.',
  'front.sign-in.failed':
    'Das Amt hat nicht wie erwartet geantwortet. Noch einmal versuchen; bleibt es so, dem Amt Bescheid geben.',
  'front.sign-in.once': 'Nach der ersten Anmeldung arbeitet die Seite am Bienenstand ohne Netz.',
  'front.where': 'Wo arbeiten Sie gerade?',
  'front.hive': 'Am Bienenstand',
  'front.hive.about': 'Besuche und Untersuchungen, auf dem Telefon, ohne Netz',
  'front.district': 'Im Amt',
  'front.district.about': 'Besuche, sobald sie eintreffen, mit Befunden und Gründen',
  'front.sign-out': 'Abmelden',
  'front.settings': 'Einstellungen',
  'front.theme': 'Licht',
  'front.theme.paper': 'Papier',
  'front.theme.sun': 'Volle Sonne',
  'front.theme.dark': 'Dunkel',
  'front.language': 'Sprache',
  'front.opening': 'Was auf diesem Gerät liegt, wird geöffnet…',
  'front.opening.failed':
    'Was auf diesem Gerät liegt, ließ sich nicht öffnen. Gelöscht wurde nichts. Alle anderen Combside-Fenster schließen und neu öffnen.',
  'front.blocked':
    'Ein älteres Combside-Fenster hält den Speicher offen. Jenes schließen; dieses macht dann von selbst weiter.',
  'front.given-up':
    'Ein neueres Combside in einem anderen Fenster hat den Speicher übernommen. Dieses Fenster schließen. Alles Gespeicherte ist dort.',
  'front.update.ready': 'Eine neue Fassung liegt bereit.',
  'front.update.take': 'Jetzt wechseln',
  'front.update.later': 'Sie wartet, bis Ihr Besuch beendet ist.',
  'front.nowhere': 'Unter dieser Adresse gibt es nichts.',
  'front.nowhere.back': 'Zum Anfang',
  'front.broken': 'Diese Seite ist ausgefallen. Was gespeichert war, ist sicher.',
  'front.broken.again': 'Noch einmal öffnen',
  'front.broken.report': 'Fehlerbericht speichern (ohne persönliche Daten)',
} as const satisfies Record<keyof typeof english, string>;
