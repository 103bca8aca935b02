import type { demo as reference } from '../en/demo.ts';

/** Was die Befehlszeile sagt, während sie den Hauptweg vorführt. Jede Zahl darin stammt aus dem, was wirklich geschah. */
export const demo = {
  'demo.title': 'Ein Besuch von der Beute bis ins Amt, im erfundenen Bezirk Quillmoor',
  'demo.step': '{number}. {what}',
  'demo.server': 'Amt gestartet, mit eigenem Datenbestand, unter {address}',
  'demo.planted': '{entries} signierte Einträge aus zwei erfundenen Jahren gespeichert; {accounts} Konten angelegt',
  'demo.phone': 'Telefon von {name}: {fetched} Einträge geholt, {apiaries} Stände darauf, Signatur des Amtes geprüft',
  'demo.today':
    'Heute: {visits, plural, one {# Besuch} other {# Besuche}}; zuerst {apiary} um {time}, Anlass: {reason}',
  'demo.signal-lost': 'Kein Netz mehr. Von hier an ist das Telefon allein.',
  'demo.started': 'Besuch begonnen: {registered} Völker im Register, {counted} gezählt',
  'demo.warning': 'Warnung: {text}',
  'demo.colony': 'Volk {label}: {result}',
  'demo.reasoning': 'Abwägung: {text}',
  'demo.order': 'Der Reihe nach: {conditions}',
  'demo.basis':
    'Verdacht {basis, select, inspector {durch den Bienensachverständigen} other {nach der Regel in {article}}}',
  'demo.owed': 'Vor dem nächsten Volk: {text}',
  'demo.clean-down': 'Reinigung beantwortet {where, select, exit {am Ausgang} other {nach Volk {where}}}',
  'demo.ended':
    'Besuch beendet: {opened} von {count} Völkern geöffnet, {open, plural, =0 {nichts offen} one {# Punkt offen} other {# Punkte offen}}',
  'demo.paper': 'Schriftliches Ergebnis: PDF mit {bytes} Byte unter {path}',
  'demo.fingerprint': 'Fingerabdruck des Inhalts: {hash}',
  'demo.duty': 'Zu tun: {duty}, {owedBy}, {when} ({article})',
  'demo.sealed': '{entries} Einträge auf dem Telefon gesiegelt, {waiting} warten auf ein Netz',
  'demo.chain':
    'Kette des Telefons Eintrag für Eintrag geprüft: {faults, plural, =0 {kein Fehler} one {# Fehler} other {# Fehler}}',
  'demo.signal-found': 'Netz gefunden: {sent} Einträge gesendet, {refused} abgelehnt, {waiting} warten',
  'demo.office':
    '{name} im Amt liest den Besuch: {examinations} Untersuchungen, {suspects} mit Verdacht, wie auf dem Telefon',
  'demo.all-worked': 'Alle Schritte sind gelungen.',
  'demo.failed': 'Dieser Schritt ist nicht gelungen: {reason}',
} as const satisfies Record<keyof typeof reference, string>;
