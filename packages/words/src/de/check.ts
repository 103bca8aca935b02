import type { check as english } from '../en/check.ts';

export const check = {
  'check.depth.entry': 'Geprüft: jeder Inhalt gegen seine Prüfsumme, jede Unterschrift gegen ihren Schlüssel.',
  'check.depth.chain':
    'Geprüft: jeder Inhalt und jede Unterschrift, und dass jede Kette ohne Lücke und Abzweig von einem Gerät ausgeht, für das das Amt bürgt.',
  'check.depth.copy':
    'Geprüft: jeder Inhalt, jede Unterschrift und jede Kette, und dass bis zu den Kettenenden, die das Amt am {at} unterschrieben hat, nichts fehlt.',
  'check.counted':
    '{entries, plural, one {# Eintrag} other {# Einträge}} in {chains, plural, one {# Kette} other {# Ketten}}; {refused} abgelehnt, {erased} mit gelöschtem Inhalt.',
  'check.holds': 'Die Aufzeichnungen halten der Prüfung stand.',
  'check.fails':
    '{findings, plural, one {Eines hält der Prüfung nicht stand:} other {# Dinge halten der Prüfung nicht stand:}}',
  'check.finding': 'Gerät {device}, Eintrag {seq}: {fault}',
  'check.of-the-whole': 'das Ganze: {fault}',
  'check.more': 'und {count} weitere',
  'check.key-of-its-own':
    'Der Schlüssel stammt aus der Datei selbst: Das zeigt, dass die Datei in sich stimmt, nicht, von wem sie ist. Mit --key den Schlüssel angeben, den das Amt genannt hat.',
  'check.key': 'Schlüssel des Amts: {key}',
  'check.exported':
    '{entries, plural, one {# Eintrag} other {# Einträge}} nach {path} geschrieben, {bytes} Byte, SHA-256 {hash}.',
} as const satisfies Readonly<Record<keyof typeof english, string>>;
