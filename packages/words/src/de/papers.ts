import type { papers as reference } from '../en/papers.ts';

export const papers = {
  'papers.page': 'Seite {page} von {pages}',
  'papers.invented':
    'Erfundenes Beispiel. Keine wirkliche Person, kein wirklicher Bienenstand, kein wirklicher Befund.',
  'papers.invented-short': 'Erfundenes Beispiel',
  'papers.draft': 'Entwurf: die Kontrolle ist noch nicht beendet',
  'papers.newer-word': '{word} (mit einer neueren Fassung geschrieben)',
  'papers.not-stated': 'keine Angabe',

  'papers.inspection.title': 'Kontrollbericht',
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
  'papers.summary.no-colonies': 'Bei dieser Kontrolle ist kein Volk aufgenommen.',

  'papers.result.suspect': 'Verdächtig',
  'papers.result.remains-suspect': 'Weiterhin verdächtig',
  'papers.result.nothing-seen': 'Bei dieser Durchsicht nichts gesehen',
  'papers.result.signs-seen': 'Anzeichen gesehen, Ursache nicht geklärt',
  'papers.result.masked': 'Verdeckt, kein Schluss möglich',
  'papers.result.too-little-brood': 'Zu wenig Brut für ein Urteil',
  'papers.result.not-judged': 'Geöffnet, nicht beurteilt',
  'papers.result.not-opened': 'Nicht geöffnet',

  'papers.visit.title': 'Kontrolle',
  'papers.visit.authority': 'Behörde',
  'papers.visit.district': 'Bezirk',
  'papers.visit.apiary': 'Bienenstand',
  'papers.visit.apiary-id': 'Nummer des Bienenstands',
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
  'papers.visit.warning': '{warning} Antwort: {answer}',
  'papers.visit.colonies': 'Völker',
  'papers.visit.colonies-counted': '{count} am Stand gezählt, {opened} geöffnet',
  'papers.visit.colonies-not-counted': '{opened} geöffnet; am Stand nicht gezählt',

  'papers.plan.title': 'Der Bienenstand',
  'papers.plan.caption': 'Beuten, wie sie stehen, Norden oben, in der Reihenfolge des Rundgangs (gepunktet).',
  'papers.plan.in-words': 'Plan des Bienenstands. In der Reihenfolge des Rundgangs: {colonies}.',
  'papers.plan.colony': '{label}: {result}',
  'papers.plan.marks': 'Zeichen',

  'papers.glance.title': 'Volk für Volk',
  'papers.glance.colony': 'Volk',
  'papers.glance.hive': 'Beute',
  'papers.glance.looked-at': 'Was angesehen wurde',
  'papers.glance.result': 'Ergebnis',
  'papers.hive-state.living': 'Lebend',
  'papers.hive-state.dead': 'Tot',
  'papers.hive-state.stored-combs': 'Gelagerte Waben',

  'papers.look.frames': '{seen} von {held} Brutwaben',
  'papers.look.sides.both': 'beide Seiten',
  'papers.look.sides.one': 'eine Seite',
  'papers.look.shaken.yes': 'Bienen abgestoßen',
  'papers.look.shaken.no': 'Bienen auf den Waben gelassen',
  'papers.look.in-box': '{box}: {frames}',
  'papers.look.depth.tops': 'Nur die Oberträger angesehen',
  'papers.look.depth.outside': 'Nur von außen angesehen',
  'papers.look.depth.laboratory': 'Nur Probe für das Labor',
  'papers.look.hold.toward': 'Oberträger zum Betrachter',
  'papers.look.hold.away': 'Oberträger vom Betrachter weg',
  'papers.look.hold.flat': 'flach gehalten',
  'papers.look.light.sun': 'Sonne über der Schulter',
  'papers.look.light.torch': 'mit der Lampe',
  'papers.look.light.shade': 'im Schatten',
  'papers.look.light.poor': 'bei schlechtem Licht',
  'papers.look.not-opened': 'Nicht geöffnet. {why}',
  'papers.look.not-opened-no-reason': 'Nicht geöffnet',

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
  'papers.detail.answer.none': 'keine',
  'papers.detail.answer.yes': 'ja',
  'papers.detail.answer.not-known': 'nicht bekannt',
  'papers.detail.answer.not-asked': 'nicht gefragt',
  'papers.detail.answer-what': '{answer}: {what}',
  'papers.detail.answer-last-on': '{answer}, zuletzt am {day}',
  'papers.detail.remarks': 'Bemerkungen',

  'papers.signs.title': 'Anzeichen in Volk {label}',
  'papers.signs.drawing': 'Zeichnung',
  'papers.signs.sign': 'Anzeichen',
  'papers.signs.how-many': 'Wie viel',
  'papers.signs.where': 'Wo',
  'papers.signs.drawn': 'Zeichnung: {sign}',
  'papers.signs.count.few': '1 bis 10 Zellen auf einer Wabe',
  'papers.signs.count.some': '11 bis 100 Zellen auf einer Wabe',
  'papers.signs.count.many': 'über 100 Zellen auf einer Wabe',
  'papers.signs.amount.slight': 'leicht',
  'papers.signs.amount.marked': 'deutlich',
  'papers.signs.seen': 'gesehen',
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
  'papers.rope.stick.rough': 'rau und trocken',
  'papers.rope.stick.smooth': 'glatt oder nass',
  'papers.rope.tissue.fresh': 'zu frisch',
  'papers.rope.tissue.moist': 'feucht, braun',
  'papers.rope.tissue.part-dry': 'halb trocken',
  'papers.rope.tissue.dry': 'trockener Schorf',
  'papers.rope.colour.white': 'weiß',
  'papers.rope.colour.yellow': 'gelb',
  'papers.rope.colour.coffee': 'kaffeebraun',
  'papers.rope.colour.dark-brown': 'dunkelbraun',
  'papers.rope.colour.black': 'schwarz',
  'papers.rope.colour.grey': 'grau',
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
  'papers.photographs.caption': 'Was darauf ist',
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
  'papers.clean-down.gloves.changed': 'gewechselt',
  'papers.clean-down.gloves.not-changed': 'nicht gewechselt',
  'papers.clean-down.gloves.none': 'keine getragen',
  'papers.clean-down.tool': 'Stockmeißel',
  'papers.clean-down.tool.flamed': 'abgeflammt',
  'papers.clean-down.tool.replaced': 'ausgetauscht',
  'papers.clean-down.tool.not-done': 'weder abgeflammt noch ausgetauscht',
  'papers.clean-down.phone': 'Telefon',
  'papers.clean-down.phone.wiped': 'abgewischt',
  'papers.clean-down.phone.not-wiped': 'nicht abgewischt',
  'papers.clean-down.none': 'Es ist keine Reinigung aufgezeichnet.',
  'papers.clean-down.soda': 'Waschsoda reinigt. Sporen der Faulbrut tötet es nicht ab.',

  'papers.open.title': 'Noch offen',
  'papers.open.nothing': 'Von dieser Kontrolle ist nichts offen.',
  'papers.open.not-opened':
    '{count, plural, one {Volk {colonies} wurde nicht geöffnet und ist noch anzusehen.} other {Die Völker {colonies} wurden nicht geöffnet und sind noch anzusehen.}}',
  'papers.open.suspicion':
    '{count, plural, one {Der Verdacht bei Volk {colonies} bleibt offen, bis die Behörde ihn bestätigt oder aufhebt.} other {Der Verdacht bei den Völkern {colonies} bleibt offen, bis die Behörde ihn bestätigt oder aufhebt.}}',
  'papers.open.masked':
    '{count, plural, one {Volk {colonies} ist noch einmal anzusehen, wenn das, was das Brutbild verdeckt, behandelt ist.} other {Die Völker {colonies} sind noch einmal anzusehen, wenn das, was das Brutbild verdeckt, behandelt ist.}}',
  'papers.open.too-little':
    '{count, plural, one {Volk {colonies} ist noch einmal anzusehen, wenn Brut da ist.} other {Die Völker {colonies} sind noch einmal anzusehen, wenn Brut da ist.}}',
  'papers.open.laboratory':
    '{count, plural, one {Das Labor hat eine Probe zu beantworten.} other {Das Labor hat # Proben zu beantworten.}}',

  'papers.next.title': 'Wie es weitergeht',
  'papers.next.close':
    '{count, plural, one {Volk {colonies} geschlossen halten, mit engem Flugloch, damit keine fremden Bienen räubern.} other {Die Völker {colonies} geschlossen halten, mit engem Flugloch, damit keine fremden Bienen räubern.}}',
  'papers.next.move-nothing':
    'Keine Bienen, Brut, Waben, keinen Honig und kein Gerät an diesen Bienenstand oder von ihm weg bringen, bis die Behörde entschieden hat.',
  'papers.next.do-not-treat':
    'An einem verdächtigen Volk nichts selbst behandeln, vernichten oder reinigen. Wer das darf und wie, sagt das örtliche Recht.',
  'papers.next.hear': 'Sie erfahren, was das Labor antwortet und was das Recht dann verlangt.',
  'papers.next.keep-looking': 'Die Brut weiter selbst ansehen und tote oder verfärbte Brut sofort melden.',
  'papers.next.look-again':
    'Ein verdächtiges Volk kann seine Anzeichen eine Zeit lang verlieren. Der Verdacht endet damit nicht.',

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
  'papers.signatures.how.paper-shared': 'Papier weitergegeben',
  'papers.signatures.how.signed-on-the-screen': 'auf dem Bildschirm unterschrieben',
  'papers.signatures.how.read-out': 'vorgelesen',
  'papers.signatures.how.left-at-the-site': 'am Stand hinterlegt',
  'papers.signatures.how.refused': 'Annahme verweigert',

  'papers.proof.title': 'Wie sich dieses Papier prüfen lässt',
  'papers.proof.says':
    'Es entstand aus Einträgen, die signiert sind und nie geändert werden. Das Amt kann jeden davon zeigen; eine Berichtigung ist ein eigener Eintrag.',
  'papers.proof.content': 'Inhalt (SHA-256)',
  'papers.proof.visit': 'Kontrolle',
  'papers.proof.entries': 'Einträge',
} as const satisfies Record<keyof typeof reference, string>;
