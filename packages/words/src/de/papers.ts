import type { papers as reference } from '../en/papers.ts';

export const papers = {
  'papers.page': 'Seite {page} von {pages}',
  'papers.invented':
    'Erfundenes Beispiel. Keine wirkliche Person, kein wirklicher Bienenstand, kein wirklicher Befund.',
  'papers.invented-short': 'Erfundenes Beispiel',
  'papers.draft': 'Entwurf: die Kontrolle ist noch nicht beendet',
  'papers.newer-word': '{word} (mit einer neueren Fassung geschrieben)',

  'papers.inspection.title': 'Kontrollbericht',
  'papers.inspection.replaces':
    'Ergebnis Nr. {number}, berichtigt. Es ersetzt das am {when} übergebene Ergebnis: dieses nicht mehr verwenden.',
  'papers.inspection.title-at': 'Kontrollbericht: {apiary}, {day}',
  'papers.inspection.footer': 'Kontrollbericht · {apiary} · {day} · Inhalt {hash}',
  'papers.inspection.what-it-says':
    'Dieses Papier sagt, was bei dieser Kontrolle gesehen und wie danach gesucht wurde. Eine Durchsicht kann einen leichten Befall übersehen, und eine Ansteckung ohne Anzeichen. Sie schließt eine Krankheit nicht aus.',

  'papers.summary.title': 'Ergebnis',
  'papers.summary.suspect':
    '{count, plural, one {# Volk ist verdächtig} other {# Völker sind verdächtig}}: {colonies}.',
  'papers.summary.suspect-of': 'Verdacht auf: {conditions}. Ein Verdacht ist kein bestätigter Ausbruch.',
  'papers.summary.nothing-seen':
    '{count, plural, one {Bei dieser Durchsicht nichts gesehen in # Volk} other {Bei dieser Durchsicht nichts gesehen in # Völkern}} von {all}.',
  'papers.summary.signs':
    '{count, plural, one {Anzeichen gesehen, Ursache nicht geklärt, in # Volk} other {Anzeichen gesehen, Ursache nicht geklärt, in # Völkern}}: {colonies}.',
  'papers.summary.masked':
    '{count, plural, one {Kein Schluss möglich bei # Volk, weil etwas anderes das Brutbild verdeckt} other {Kein Schluss möglich bei # Völkern, weil etwas anderes das Brutbild verdeckt}}: {colonies}.',
  'papers.summary.too-little':
    '{count, plural, one {Zu wenig Brut für ein Urteil bei # Volk} other {Zu wenig Brut für ein Urteil bei # Völkern}}: {colonies}.',
  'papers.summary.not-judged':
    '{count, plural, one {# Volk wurde geöffnet und nicht beurteilt} other {# Völker wurden geöffnet und nicht beurteilt}}: {colonies}.',
  'papers.summary.not-opened':
    '{count, plural, one {# Volk wurde nicht geöffnet} other {# Völker wurden nicht geöffnet}}: {colonies}.',
  'papers.summary.and-more': '{some} und {count} weitere',
  'papers.summary.no-colonies': 'Bei dieser Kontrolle ist kein Volk aufgenommen.',

  'papers.visit.title': 'Kontrolle',
  'papers.visit.apiary': 'Bienenstand',
  'papers.visit.where': 'Standort',
  'papers.visit.position': '{latitude}, {longitude}, auf {metres} genau',
  'papers.visit.keeper': 'Imkerin oder Imker',
  'papers.visit.keeper-unknown': 'Noch nicht bekannt',
  'papers.visit.name-number': '{name}, Nr. {number}',
  'papers.visit.inspector': 'Bienensachverständige Person',
  'papers.visit.time': 'Beginn und Ende',
  'papers.visit.from-to': '{day}, {from} bis {to}',
  'papers.visit.from': '{day}, ab {from}',
  'papers.visit.reason': 'Anlass',
  'papers.visit.power': 'Rechtsgrundlage',
  'papers.visit.present': 'Anwesend',
  'papers.visit.nobody': 'Niemand außer der sachverständigen Person',
  'papers.visit.name-role': '{name} ({role})',
  'papers.visit.temperature': 'Lufttemperatur',
  'papers.visit.warnings': 'Hinweise zu Beginn',
  'papers.visit.warning': '{warning}. Antwort: {answer}',
  'papers.visit.colonies': 'Völker',
  'papers.visit.colonies-counted': '{count} am Stand gezählt, {opened} geöffnet',
  'papers.visit.colonies-not-counted': '{opened} geöffnet; am Stand nicht gezählt',

  'papers.plan.title': 'Der Bienenstand',
  'papers.plan.caption': 'Beuten, wie sie stehen, Norden oben, in der Reihenfolge des Rundgangs (gepunktet).',
  'papers.plan.in-words': 'Plan des Bienenstands. In der Reihenfolge des Rundgangs: {colonies}.',
  'papers.plan.colony': '{label}: {result}',

  'papers.glance.title': 'Volk für Volk',
  'papers.glance.colony': 'Volk',
  'papers.glance.hive': 'Beute',
  'papers.glance.looked-at': 'Was angesehen wurde',
  'papers.glance.result': 'Ergebnis',

  'papers.look.frames': '{seen} von {held} Brutwaben',
  'papers.look.in-box': '{box}: {frames}',
  'papers.look.not-opened': 'Nicht geöffnet. {why}',

  'papers.missed.title': 'Was diese Durchsicht übersehen haben kann',
  'papers.missed.colonies': '{count, plural, one {Volk {colonies}} other {Völker {colonies}}}: {what}',
  'papers.missed.full':
    'Jede Brutwabe wurde angesehen. Wenige kranke Zellen unter vielen, und eine Ansteckung noch ohne Anzeichen, können trotzdem ungesehen bleiben.',
  'papers.missed.frames':
    'Nicht jede Brutwabe wurde auf beiden Seiten angesehen. Krankes auf einer nicht angesehenen Seite wurde nicht gesehen.',
  'papers.missed.bees-on':
    'Die Bienen blieben auf den Waben. Sie verdecken Zellen, und ein leichter Befall wird unter ihnen leicht übersehen.',
  'papers.missed.frames-and-bees':
    'Nicht jede Brutwabe wurde auf beiden Seiten angesehen, und die Bienen blieben auf den Waben. Krankes, das nicht angesehen wurde oder unter Bienen lag, wurde nicht gesehen.',
  'papers.missed.tops': 'Es wurde keine Brut angesehen. Diese Durchsicht sagt nichts über die Brut.',
  'papers.missed.scale':
    'Die Waben wurden nicht so gehalten, dass man die unteren Zellwände sieht. Dunkle Schorfe dort wurden nicht gesehen.',
  'papers.missed.empty-full':
    'Alle Waben wurden auf Schorfe angesehen. Ein einzelner Schorf in alten dunklen Waben kann trotzdem ungesehen bleiben.',

  'papers.detail.title': 'Was gefunden wurde',
  'papers.detail.colony': 'Volk {label}: {result}',
  'papers.detail.suspected': 'Verdacht auf',
  'papers.detail.looked-at': 'Angesehen',
  'papers.detail.at': 'Geöffnet um',
  'papers.detail.sealed-brood': 'Verdeckelte Brut',
  'papers.detail.comb-sides': '{count, plural, one {{text} Wabenseite} other {{text} Wabenseiten}}',
  'papers.detail.medicines': 'Arzneimittel laut Imker',
  'papers.detail.comb-changes': 'Waben erneuert laut Imker',
  'papers.detail.answer-what': '{answer}: {what}',
  'papers.detail.answer-last-on': '{answer}, zuletzt am {day}',
  'papers.detail.remarks': 'Bemerkungen',

  'papers.signs.title': 'Anzeichen in Volk {label}',
  'papers.signs.sign': 'Anzeichen',
  'papers.signs.how-many': 'Wie viel',
  'papers.signs.where': 'Wo',
  'papers.signs.drawn': 'Zeichnung: {sign}',
  'papers.signs.place': '{box}, Wabe {frame}, Seite {side}',
  'papers.signs.place-frame': '{box}, Wabe {frame}',
  'papers.signs.place-side': '{box}, Seite {side}',
  'papers.signs.side.a': 'A',
  'papers.signs.side.b': 'B',
  'papers.signs.affected-of': '{place}: {affected} von {opened} geöffneten Zellen',
  'papers.signs.affected': '{place}: {affected, plural, one {# Zelle} other {# Zellen}}',
  'papers.signs.opened': '{place}: {opened, plural, one {# Zelle geöffnet} other {# Zellen geöffnet}}',
  'papers.signs.not-seen-title': 'Gesucht und nicht gesehen',
  'papers.signs.not-seen': '{count, plural, one {Volk {colonies}} other {Völker {colonies}}}: {signs}.',
  'papers.signs.not-looked': 'Nach einem Anzeichen, das nirgends auf diesem Papier steht, wurde nicht gesucht.',

  'papers.rope.title': 'Streichholzproben in Volk {label}',
  'papers.rope.where': 'Wo',
  'papers.rope.remains': 'Zellinhalt',
  'papers.rope.thread': 'Faden',
  'papers.rope.snaps': 'Schnellt zurück',
  'papers.rope.colour': 'Farbe',
  'papers.rope.stick': 'Hölzchen',
  'papers.rope.none-drawn': 'zieht keinen Faden',
  'papers.rope.yes': 'ja',
  'papers.rope.no': 'nein',
  'papers.rope.not-said': 'keine Angabe',
  'papers.rope.drawn': 'Streichholzprobe: ein Faden von {length}',

  'papers.finds.seen': 'Außerdem gefunden',
  'papers.finds.not-seen': 'Gesucht, nicht gefunden',
  'papers.finds.amount': '{find} ({amount})',

  'papers.photographs.title': 'Fotos',
  'papers.photographs.of-colony': 'Fotos von Volk {label}',
  'papers.photographs.taken': 'Aufgenommen',
  'papers.photographs.hash': 'SHA-256 des Originals',
  'papers.photographs.no-caption': 'ohne Beschriftung',

  'papers.specimens.title': 'Entnommene Proben',
  'papers.specimens.id': 'Nummer',
  'papers.specimens.colony': 'Volk',
  'papers.specimens.what': 'Was',
  'papers.specimens.taken': 'Entnommen',
  'papers.specimens.none': 'Es wurde keine Probe entnommen.',

  'papers.remarks.title': 'Bemerkungen',

  'papers.clean-down.title': 'Reinigung',
  'papers.clean-down.when': 'Wann',
  'papers.clean-down.after': 'nach Volk {label}',
  'papers.clean-down.exit': 'beim Verlassen',
  'papers.clean-down.when-where': '{time}, {where}',
  'papers.clean-down.gloves': 'Handschuhe',
  'papers.clean-down.tool': 'Stockmeißel',
  'papers.clean-down.phone': 'Telefon',
  'papers.clean-down.none': 'Es ist keine Reinigung aufgezeichnet.',
  'papers.clean-down.soda': 'Waschsoda reinigt. Sporen der Faulbrut tötet es nicht ab.',

  'papers.open.title': 'Noch offen',
  'papers.open.nothing': 'Von dieser Kontrolle ist nichts offen.',
  'papers.open.suspicion':
    '{count, plural, one {Der Verdacht bei Volk {colonies} bleibt offen, bis die Behörde ihn bestätigt oder aufhebt.} other {Der Verdacht bei den Völkern {colonies} bleibt offen, bis die Behörde ihn bestätigt oder aufhebt.}}',
  'papers.open.laboratory':
    '{count, plural, one {Das Labor hat eine Probe zu beantworten.} other {Das Labor hat # Proben zu beantworten.}}',

  'papers.next.title': 'Wie es weitergeht',

  'papers.cautions.title': 'Vorsicht',
  'papers.cautions.stings':
    'Stiche: Wer eine schwere Allergie hat, arbeitet nicht an Bienen. Bei Schwindel, Atemnot oder Unwohlsein nach einem Stich sofort dorthin gehen, wo ein Rettungswagen hinkommt, und Hilfe rufen.',
  'papers.cautions.lifting':
    'Heben: Eine volle Zarge wiegt bis zu 36 kg. Zu zweit heben und den Weg hinaus frei halten.',
  'papers.cautions.fire':
    'Feuer: Völker oder Gerät nur auf Anordnung verbrennen, so wie es das örtliche Recht erlaubt, nach einem Blick auf die Waldbrandstufe, mit Wasser zur Hand und nicht allein. Niemals Benzin anzünden.',
  'papers.cautions.caustics':
    'Ätznatron und Bleichlauge verätzen Augen und Haut: Schutzbrille, feste wasserdichte Handschuhe und Stiefel, nie miteinander mischen, nur durch dafür geschulte Leute.',
  'papers.cautions.drugs':
    'Arzneimittel für Bienen nur so, wie sie am Ort zugelassen sind, und nie, um Anzeichen einer anzeigepflichtigen Seuche zu verdecken.',
  'papers.cautions.law':
    'Dieses Papier gibt Rat. Was Sie tun müssen, sagen das örtliche Recht und die Bescheide der Behörde.',

  'papers.signatures.title': 'Unterschriften',
  'papers.signatures.inspector': 'Bienensachverständige Person',
  'papers.signatures.receiver': 'Erhalten von',
  'papers.signatures.name-at': '{name}, {at}',
  'papers.signatures.typed': 'Der getippte Name steht für die Unterschrift.',
  'papers.signatures.drawn': 'Unterschrift von {name}',
  'papers.signatures.missing': 'Noch nicht unterschrieben',
  'papers.signatures.how.paper shared': 'Papier weitergegeben',
  'papers.signatures.how.signed on the screen': 'auf dem Bildschirm unterschrieben',
  'papers.signatures.how.read out': 'vorgelesen',
  'papers.signatures.how.left at the site': 'am Stand hinterlegt',
  'papers.signatures.how.refused': 'Annahme verweigert',

  'papers.proof.title': 'Wie sich dieses Papier prüfen lässt',
  'papers.proof.says':
    'Es entstand aus Einträgen, die signiert sind und nie geändert werden. Das Amt kann jeden davon zeigen; eine Berichtigung ist ein eigener Eintrag.',
  'papers.proof.content': 'Inhalt (SHA-256)',
  'papers.proof.visit': 'Kontrolle',
  'papers.proof.entries': 'Einträge',
} as const satisfies Record<keyof typeof reference, string>;
