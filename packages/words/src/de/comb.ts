import type { comb as english } from '../en/comb.ts';

/** Was über die Auswertung eines Wabenfotos gesagt wird. */
export const comb = {
  'comb.verdict.read': 'Ausgewertet',
  'comb.verdict.refused': 'Nicht ausgewertet',
  'comb.reason.not-a-picture': 'Diese Datei ist kein lesbares Bild. Möglich sind JPEG, PNG, WebP, AVIF, TIFF oder GIF.',
  'comb.reason.damaged':
    'Die Datei ist beschädigt oder unvollständig. Noch einmal von der Kamera kopieren oder neu fotografieren.',
  'comb.reason.file-too-large':
    'Das Bild hat mehr Bildpunkte, als hier ausgewertet werden können. Auf höchstens 50 Megapixel verkleinern.',
  'comb.reason.picture-too-small':
    'Das Bild ist zu klein. Das Foto so verwenden, wie es die Kamera aufgenommen hat, keine Vorschau.',
  'comb.reason.no-comb':
    'Keine Wabe mit erkennbaren Zellen gefunden. Kamera gerade vor die Wabe halten, die Wabe das Bild füllen lassen, neu fotografieren.',
  'comb.reason.cells-too-small':
    'Die Zellen sind zu klein. Näher herangehen oder das Foto in voller Größe verwenden: Jede Zelle braucht mindestens 8 Bildpunkte.',
  'comb.reason.out-of-focus':
    'Das Bild ist unscharf. Ruhig halten, zum Scharfstellen auf die Wabe tippen, neu fotografieren.',
  'comb.reason.too-dark':
    'Das Bild ist zu dunkel. Die Wabe zum Licht drehen, den eigenen Schatten wegnehmen, neu fotografieren.',
  'comb.reason.too-bright': 'Das Bild ist zu hell. Die Wabe aus der prallen Sonne drehen, neu fotografieren.',
  'comb.reason.under-bees': 'Zu viel der Wabe ist von Bienen bedeckt. Bienen abstoßen und neu fotografieren.',
  'comb.reason.reader-failed':
    'Die Auswertung ist dreimal abgebrochen. Das Foto auf dem Gerät auswerten, mit dem es gemacht wurde, oder neu fotografieren.',
  'comb.reason.never-a-diagnosis':
    'Eine Messung, keine Diagnose. Wenn kein Zelldeckel auffällt, heißt das nicht, dass der Brut nichts fehlt.',
  'comb.reason.scale-not-visible':
    'Schorf ist auf einem Foto von vorn nicht zu sehen: Wabe kippen und die unteren Zellwände betrachten.',
  'comb.reason.contents-untested':
    'Der Inhalt offener Zellen wurde erst an drei echten Fotos geprüft und war dort oft falsch erkannt: nur als Hinweis nehmen.',
  'comb.reason.contents-uncertain':
    'Die Zellen sind auf diesem Bild klein: Verdeckelt und offen lassen sich unterscheiden, der Inhalt offener Zellen ist unsicher.',
  'comb.reason.unlike-learnt':
    'Diese Wabe sieht anders aus als die, an denen das Lesen gelernt wurde. Für die meisten Zellen fällt deshalb keine Entscheidung: selbst angeben, was darin ist.',
  'comb.reason.eggs-not-visible': 'Stifte und kleinste Maden sind bei dieser Größe nicht zu sehen.',
  'comb.reason.cappings-not-measured':
    'Die Zelldeckel wurden nicht vermessen: Dafür braucht jede Zelle etwa 25 Bildpunkte. Die fragliche Stelle näher aufnehmen.',
  'comb.reason.much-hidden': 'Mehr als ein Drittel der Wabe ließ sich nicht auswerten.',
  'comb.reason.few-cells': 'Weniger als 100 Zellen gefunden: Die Zahlen sagen wenig über die Wabenseite.',
  'comb.class.sealed-worker-brood': 'Verdeckelte Arbeiterinnenbrut',
  'comb.class.sealed-drone-brood': 'Verdeckelte Drohnenbrut',
  'comb.class.sealed-honey': 'Verdeckelter Honig',
  'comb.class.open-empty': 'Offen, leer',
  'comb.class.egg-or-larva': 'Stift oder Made',
  'comb.class.nectar': 'Nektar',
  'comb.class.pollen': 'Pollen',
  'comb.class.hidden': 'Unter einer Biene oder verdeckt',
  'comb.class.not-decided': 'Nicht entschieden',
  'comb.cells': '{count, plural, one {# Zelle} other {# Zellen}}',
  'comb.pitch': '{pixels} Bildpunkte von Zelle zu Zelle',
  'comb.brood-area':
    'Brut: {cells, plural, one {# Zelle} other {# Zellen}}, etwa {area} cm² (zwischen {low} und {high})',
  'comb.solidness':
    'Geschlossenheit der verdeckelten Brut: {share} ({missed} Lücken bei {sealed} verdeckelten Zellen; Pollen, Nektar und verdeckte Zellen zählen nicht)',
  'comb.solidness.too-few': 'Geschlossenheit: zu wenige Zellen in verdeckelten Flächen',
  'comb.stages':
    'Stifte {egg}, Maden {larva}, verdeckelt {sealed}; bei gleichmäßiger Eilage wären es etwa {steady} Stifte und Maden auf so viele verdeckelte Zellen',
  'comb.plane.corners-set': 'Lage der Wabe: nach den angegebenen Ecken des Rähmchens',
  'comb.plane.corners-found': 'Lage der Wabe: nach den Ecken des Rähmchens, gefunden bei',
  'comb.plane.lattice': 'Lage der Wabe: nach ihren Zellen, ohne Ecken eines Rähmchens',
  'comb.plane.tilt': 'um etwa {degrees}° zur Kamera geneigt',
  'comb.plane.tilt-small': 'um weniger als etwa {degrees}° zur Kamera geneigt',
  'comb.unread': 'Nicht auswertbar: {share}',
  'comb.second-look':
    '{count, plural, =0 {Kein Zelldeckel fällt gegenüber seinen Nachbarn auf.} one {# Zelldeckel fällt gegenüber seinen Nachbarn auf: noch einmal ansehen.} other {# Zelldeckel fallen gegenüber ihren Nachbarn auf: noch einmal ansehen.}}',
  'comb.second-look.brightness': 'dunkler als seine Nachbarn',
  'comb.second-look.colour': 'andere Farbe als seine Nachbarn',
  'comb.second-look.sunken': 'wirkt eingesunken',
  'comb.second-look.perforation': 'wirkt durchlöchert',
  'comb.second-look.at': 'bei {x}, {y}',
  'comb.stage.looking': 'Bild wird geprüft',
  'comb.stage.lattice': 'Zellen werden gesucht',
  'comb.stage.cells': 'Zellen werden ausgewertet',
  'comb.stage.cappings': 'Zelldeckel werden vermessen',
  'comb.stage.reading': 'Es wird gezählt',
  'comb.stage.opening': 'Foto wird geöffnet',
  'comb.screen.title': 'Wabe von Volk {label}',
  'comb.screen.photographs': 'Fotos',
  'comb.screen.photograph-taken': 'Foto von {when}',
  'comb.screen.photograph-elsewhere':
    'Das Foto ist nicht auf diesem Gerät. Ausgewertet werden kann es dort, wo es aufgenommen wurde, oder im Amt.',
  'comb.screen.read': 'Wabe auswerten',
  'comb.screen.go-on': 'Auswertung fortsetzen',
  'comb.screen.look-at': 'Auswertung ansehen',
  'comb.screen.running': 'Die Wabe wird ausgewertet',
  'comb.screen.stop': 'Auswertung abbrechen',
  'comb.screen.stopped': 'Abgebrochen. Nichts wurde ausgewertet, das Foto bleibt bei der Untersuchung.',
  'comb.screen.failed':
    'Die Auswertung ist abgebrochen. Das Foto ist noch da. Andere Programme auf diesem Gerät schließen und noch einmal versuchen.',
  'comb.screen.not-read': 'Dieses Foto wurde nicht ausgewertet. Es bleibt bei der Untersuchung.',
  'comb.screen.back': 'Zurück zu Volk {label}',
  'comb.screen.draft-back':
    'Diese Auswertung wurde schon begonnen. Sie ist noch nicht aufgenommen; alles, was Sie dazu gesagt haben, ist da.',
  'comb.screen.keep': 'Zur Untersuchung nehmen',
  'comb.screen.kept':
    'Aufgenommen, fotografiert {when}. Noch hat niemand zugestimmt, deshalb zählt sie beim Abwägen nicht mit.',
  'comb.screen.kept-accepted': 'Aufgenommen, fotografiert {when}. Von einem Menschen angesehen und bestätigt.',
  'comb.screen.correct': 'Berichtigung eintragen',
  'comb.screen.corrected-because': 'Berichtigt {when}: {reason}',
  'comb.screen.newer':
    'Diese Auswertung stammt von einer neueren Fassung des Programms. Sie bleibt erhalten, lässt sich hier aber nicht zeigen.',
  'comb.screen.picture':
    'Foto der Wabe, {count, plural, one {# Zelle} other {# Zellen}}. Pfeiltasten führen von Zelle zu Zelle, die Ziffern 1 bis 9 sagen, was die Zelle enthält, Bild-ab führt zum nächsten Zelldeckel zum Nachsehen.',
  'comb.screen.how':
    'Auf eine Zelle tippen, um sie groß zu sehen. Bild gedrückt halten, um es ohne Zeichnung zu sehen.',
  'comb.screen.how-keys':
    'Pfeiltasten führen von Zelle zu Zelle, die Ziffern 1 bis 9 sagen, was sie enthält, Bild-ab führt zum nächsten Zelldeckel zum Nachsehen, Strg und Z nehmen zurück.',
  'comb.screen.overlay': 'Auswertung einzeichnen',
  'comb.screen.lens': 'Eine Zelle, vergrößert',
  'comb.screen.lens.back': 'Zurück zur ganzen Wabe',
  'comb.screen.step.left': 'Zelle links',
  'comb.screen.step.right': 'Zelle rechts',
  'comb.screen.step.up': 'Zelle darüber',
  'comb.screen.step.down': 'Zelle darunter',
  'comb.screen.cell.ask': 'Was enthält diese Zelle?',
  'comb.screen.cell.as-read': 'wie ausgewertet',
  'comb.screen.cell.read': 'Zelle {cell} von {count}: {what}. So ausgewertet, mit {share}.',
  'comb.screen.cell.agreed': 'Zelle {cell} von {count}: {what}. Sie haben nachgesehen und stimmen zu.',
  'comb.screen.cell.corrected': 'Zelle {cell} von {count}: {what}, von Ihnen angesehen. Ausgewertet war: {read}.',
  'comb.screen.undo': 'Letzte Angabe zu einer Zelle zurücknehmen',
  'comb.screen.photograph-not-opened':
    'Das Foto ließ sich nicht öffnen. Es bleibt erhalten; diese Seite noch einmal öffnen.',
  'comb.screen.reading-before': 'Zurück zur bisherigen Auswertung',
  'comb.screen.corners': 'Ecken der Wabe',
  'comb.screen.corners.set': 'Ecken der Wabe setzen',
  'comb.screen.corners.when':
    'Füllt die Wabe nur einen Teil des Bildes, ihre Ecken setzen: Dann wird nur dieser Teil ausgewertet.',
  'comb.screen.corners.found':
    'Die Ringe stehen, wo der Rahmen gefunden wurde. Sitzt einer falsch: ziehen oder dorthin tippen, wo er hingehört.',
  'comb.screen.corners.how':
    'Jeden Ring auf eine Ecke der Wabe ziehen oder dorthin tippen. Ausgewertet wird nur, was zwischen den Ringen liegt.',
  'comb.screen.corners.how-keys': 'Pfeiltasten verschieben diese Ecke, mit der Umschalttaste in größeren Schritten.',
  'comb.screen.corners.crossed':
    'Die Linien zwischen den Ringen kreuzen sich oder knicken nach innen. Ringe verschieben, bis die Linien einmal um die Wabe laufen.',
  'comb.screen.corners.too-small': 'Dieser Ausschnitt ist zu klein zum Auswerten. Die Ringe weiter auseinanderziehen.',
  'comb.screen.corners.read': 'Diesen Ausschnitt auswerten',
  'comb.screen.corners.whole': 'Das ganze Bild auswerten',
  'comb.screen.corners.back': 'Zurück ohne Auswertung',
  'comb.screen.corners.count': 'Ecken sind gesetzt: Ausgewertet wird nur, was dazwischen liegt.',
  'comb.screen.corners.were-set': 'Ausgewertet wurde nur der Ausschnitt zwischen den gesetzten Ecken.',
  'comb.screen.corners.ask':
    '{count, plural, =0 {Der bisherigen Auswertung haben Sie zugestimmt.} one {Zu einer Zelle dieser Auswertung haben Sie etwas gesagt. Ihre Angabe geht mit, wenn die Zelle an ihrer Stelle wiedergefunden wird; sonst, etwa außerhalb der Ecken, entfällt sie.} other {Zu # Zellen dieser Auswertung haben Sie etwas gesagt. Ihre Angaben gehen mit, wo die Zelle an ihrer Stelle wiedergefunden wird; sonst, etwa außerhalb der Ecken, entfallen sie.}} Die neue Auswertung ansehen und ihr neu zustimmen.',
  'comb.screen.corners.go-on': 'Neu auswerten',
  'comb.screen.corners.leave': 'Auswertung lassen, wie sie ist',
  'comb.screen.corners.carried':
    '{of, plural, one {{along, plural, =0 {Die Zelle, zu der Sie etwas gesagt haben, wurde nicht wiedergefunden: Die Angabe ist entfallen.} other {Ihre Angabe zu einer Zelle ging mit.}}} other {Von Ihren Angaben zu # Zellen gingen {along} mit.}}',
  'comb.screen.corner.top-left': 'Ecke oben links',
  'comb.screen.corner.top-right': 'Ecke oben rechts',
  'comb.screen.corner.bottom-right': 'Ecke unten rechts',
  'comb.screen.corner.bottom-left': 'Ecke unten links',
  'comb.screen.corner.at': '{across} vom linken Rand, {down} vom oberen Rand',
  'comb.screen.corner.in-hand': '{corner}: {where}',
  'comb.screen.corner.step.left': '{corner}: ein Schritt nach links',
  'comb.screen.corner.step.right': '{corner}: ein Schritt nach rechts',
  'comb.screen.corner.step.up': '{corner}: ein Schritt nach oben',
  'comb.screen.corner.step.down': '{corner}: ein Schritt nach unten',
  'comb.screen.second-look': 'Zelldeckel zum Nachsehen',
  'comb.screen.second-look.one': '{place}: {why}',
  'comb.screen.second-look.next': 'Nächster Zelldeckel zum Nachsehen',
  'comb.screen.figures': 'Was die Zellen ergeben',
  'comb.screen.key': 'Zellen jeder Art mit ihrer Schraffur',
  'comb.screen.solidness':
    'Geschlossenheit der verdeckelten Brut: {share} ({missed} Lücken bei {sealed} verdeckelten Zellen)',
  'comb.screen.solidness.how': 'So wird die Geschlossenheit gezählt',
  'comb.screen.solidness.method':
    'Eine geschlossene Fläche ist dort, wo auf allen Seiten verdeckelte Brut liegt: An jeder Stelle im Abstand von zwei Schritten liegen mindestens zwei verdeckelte Zellen nahe, und kein breiteres Band offener Zellen. In der Fläche sind offene Zellen ohne Vorräte Lücken; Pollen, Nektar, verdeckelter Honig, verdeckte und nicht entschiedene Zellen zählen nicht. Geschlossenheit ist verdeckelt geteilt durch verdeckelt und Lücken. Ein nur zwei Zellen breites Band junger Brut gilt als Lücken. Ein Verfahren dieses Programms: Ein veröffentlichtes wurde nicht gefunden.',
  'comb.screen.agreement.limits':
    'Wer nur falsche Zellen antippt, macht diese Zahl klein: Sie sagt nichts über die Treffsicherheit.',
  'comb.screen.set-aside':
    '{count, plural, one {# Berichtigung} other {# Berichtigungen}} einer neueren Fassung des Programms sind hier nicht lesbar.',
  'comb.screen.limits': 'Was diese Auswertung sonst nicht sagen kann ({count})',
  'comb.screen.place': 'Welche Wabenseite ist das?',
  'comb.screen.evidence': 'Stehen Sie zu dieser Auswertung?',
  'comb.screen.evidence.what':
    'Nur eine Auswertung, die ein Mensch angesehen und bestätigt hat, zählt beim Abwägen mit: als Brutbild und als Menge der gesehenen Brut.',
  'comb.screen.agree': 'Angesehen, ich stimme zu',
  'comb.screen.photograph-not-held': 'Das Foto ist noch nicht im Amt oder kam nicht an. Die Zahlen stehen hier.',
  'comb.screen.kept-by': 'Aufgenommen von {name}.',
  'comb.screen.corrected-by': 'Berichtigt von {name}, {when}: {reason}',
  'comb.screen.why': 'Warum wird berichtigt?',
  'comb.screen.place.box': 'Zarge',
  'comb.screen.place.frame': 'Wabe',
  'comb.screen.place.side': 'Seite',
  'comb.screen.place.unknown': 'nicht bekannt',
  'comb.screen.compare': 'Dieselbe Wabenseite bei anderen Besuchen',
  'comb.screen.compare.with': 'Daneben stellen',
  'comb.screen.compare.nothing': 'nichts',
  'comb.screen.compare.change': 'Veränderung',
  'comb.screen.compare.brood': 'Brut, cm²',
  'comb.screen.compare.solidness': 'Geschlossenheit der verdeckelten Brut',
  'comb.screen.compare.unread': 'Nicht auswertbar',
  'comb.screen.compare.too-few': 'zu wenige Zellen in verdeckelten Flächen',
  'comb.screen.compare.not-said': 'keine Aussage',
  'comb.screen.compare.more': 'mehr: {difference} (zwischen {low} und {high})',
  'comb.screen.compare.less': 'weniger: {difference} (zwischen {low} und {high})',
  'comb.screen.compare.within-error': 'keine Veränderung über den Fehler hinaus (zwischen {low} und {high})',
  'comb.screen.compare.limits':
    'Waben werden zwischen Besuchen umgehängt: Dass es dieselbe Wabe ist und nicht nur derselbe Platz, sagt kein Foto. Die Arten sind Anteile der Zellen, die sich entscheiden ließen.',
  'comb.corrected': '{count, plural, one {# Zelle von Hand berichtigt} other {# Zellen von Hand berichtigt}}',
  'comb.agreement': 'Bei {share} der angesehenen Zellen stimmen Sie mit der Auswertung überein',
  // Zwei Auswertungen derselben Wabenseite nebeneinander.
  'comb.compare.other-place':
    'Das ist nicht dieselbe Seite derselben Wabe: Über eine Veränderung lässt sich nichts sagen.',
  'comb.compare.place-not-known':
    'Wabe oder Seite wurde nicht angegeben. Ob es dieselbe Wabenseite ist, weiß niemand; eine Veränderung wird nicht genannt.',
  'comb.compare.other-reader':
    'Die beiden wurden mit verschiedenen Programmversionen ausgewertet. Zum Vergleichen das ältere Foto neu auswerten.',
  'comb.compare.much-unread':
    'Mehr als die Hälfte einer Wabenseite ließ sich nicht auswerten; eine Veränderung wird nicht genannt.',
  'comb.compare.unreadable':
    'Eine der Auswertungen stammt von einer neueren Programmversion. Nach der Aktualisierung ist sie zu sehen.',
  'comb.compare.other-extent':
    'Die Fotos zeigen verschiedene Teile der Seite; die Flächen werden deshalb nicht verglichen.',
  'comb.compare.some-unread':
    'Mehr als drei Zehntel einer Wabenseite ließen sich nicht auswerten: Die Zahlen sind unsicher.',
  'comb.compare.few-cells': 'Weniger als 100 Zellen gefunden: Die Zahlen sagen wenig.',
  'comb.compare.not-accepted': 'Eine der Auswertungen hat noch niemand bestätigt.',
  'comb.compare.more': 'mehr',
  'comb.compare.less': 'weniger',
  'comb.compare.within-error': 'keine Veränderung über den Fehler hinaus',
  'comb.command.usage':
    'combside read FOTO oder ORDNER [--json] [--language en|de] [--corners x,y,x,y,x,y,x,y | --region "x,y x,y x,y ..."]',
  'comb.command.progress': '{number} von {count}: {file}',
  'comb.command.stopped': 'Angehalten nach {done} von {count}. Was oben steht, ist vollständig.',
  'comb.table.file': 'Foto',
  'comb.table.verdict': 'Ergebnis',
  'comb.table.pitch': 'px je Zelle',
  'comb.table.cells': 'Zellen',
  'comb.table.brood': 'Brut',
  'comb.table.solidness': 'geschlossen',
  'comb.table.unread': 'ungelesen',
  'comb.table.second-look': 'nachsehen',
  'comb.command.missing': 'Es gibt keine Datei und keinen Ordner „{path}“.',
  'comb.command.empty-folder': 'Im Ordner „{path}“ sind keine Bilder.',
  'comb.command.bad-region':
    'Der Ausschnitt „{text}“ besteht nicht aus drei oder mehr Ecken, geschrieben als x,y mit Leerzeichen dazwischen.',
  'comb.command.bad-corners':
    'Die Ecken „{text}“ sind nicht acht Zahlen x,y,x,y,x,y,x,y, die Ecke für Ecke um die Öffnung des Rähmchens gehen.',
  'comb.command.corners-or-region': 'Entweder die Ecken des Rähmchens oder einen Ausschnitt angeben, nicht beides.',
  'comb.command.bad-option': 'Die Option „{option}“ ist nicht bekannt.',
} as const satisfies Record<keyof typeof english, string>;
