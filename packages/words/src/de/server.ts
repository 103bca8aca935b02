import type { server as english } from '../en/server.ts';

export const server = {
  'server.open': 'Combside ist offen unter {address}',
  'server.port-taken': 'Port {asked} ist von einem anderen Programm belegt; benutzt wird Port {used}.',
  'server.database': 'Die Aufzeichnungen liegen in {place}.',
  'server.attached': 'Ein anderer Prozess führt die Aufzeichnungen in diesem Ordner bereits; beide arbeiten daran.',
  'server.elsewhere':
    'Die Dateien der Aufzeichnungen liegen in {folder}: PostgreSQL läuft nicht als root, und unter anderem Namen erreicht es {asked} nicht.',
  'server.pages-missing':
    'Die Seiten sind noch nicht gebaut ({folder} fehlt): Es antworten nur die Adressen unter /api.',
  'server.open-to-network':
    'Vorsicht: {host} ist von anderen Rechnern aus erreichbar, und Passwörter gingen ungeschützt über das Netz. Einen TLS-Proxy davorsetzen und --address https://… angeben.',
  'server.clock':
    'Für eine Probe: Dieser Server hält {now} für die jetzige Zeit. Was nun eingetragen wird, trägt sie auf Dauer.',
  'server.clock-refused':
    'Die Option --clock ist für Tests und Proben nur auf diesem Rechner: weglassen, oder --host, --address und DATABASE_URL weglassen.',
  'server.demo.withheld':
    'Das Beispielgebiet wird hier nicht angelegt: Es ist nur für dieses Gerät allein, nie für eine angegebene Datenbank.',
  'server.demo.making': 'Das Gebiet ist leer; das erfundene Beispielgebiet wird angelegt…',
  'server.demo.made':
    '{entries, plural, one {# Eintrag} other {# Einträge}} des Beispielgebiets in {seconds} s gespeichert.',
  'server.demo.invented': 'Gebiet, Personen und Besuche des Beispiels sind erfunden.',
  'server.demo.accounts': 'Beispielkonten (Passwort für alle: {password})',
  'server.demo.inspector': 'Inspektion, {districts}',
  'server.demo.office': 'Amt, alle Gebiete',
  'server.stop-how': 'Beenden mit Strg-C.',
  'server.stopping': 'Wird beendet; Gespeichertes bleibt gespeichert.',
  'server.stopped': 'Beendet.',
  'server.failed': 'Combside konnte nicht starten: {why}',
  'server.usage':
    'Aufruf: start [--data ORDNER] [--port NUMMER] [--host ADRESSE] [--address URL] [--pack ID] [--web ORDNER] [--map DATEI] [--clock ZEITPUNKT] [--demo]',
  'server.option-unknown': 'Die Option {option} gibt es nicht.',
  'server.option-value': 'Die Option {option} braucht einen passenden Wert; angegeben: {value}',
} as const satisfies Readonly<Record<keyof typeof english, string>>;
