import type { signs as reference } from '../en/signs.ts';

export const signs = {
  'signs.group.outside-and-opening': 'Außen und beim Öffnen',
  'signs.group.pattern': 'Brutbild',
  'signs.group.cappings': 'Zelldeckel',
  'signs.group.contents': 'Zellinhalt',
  'signs.group.lower-wall': 'Untere Zellwand',
  'signs.group.hive-floor': 'Beutenboden',

  'signs.sign.odour.glue.name': 'Geruch nach Leim oder Fäulnis',
  'signs.sign.odour.sour.name': 'Saurer Geruch',
  'signs.sign.odour.any.name': 'Anderer übler Geruch',
  'signs.sign.few_adults.name': 'Zu wenig Bienen für die Brut',
  'signs.sign.mites.name': 'Viele Milben, verkrüppelte Flügel',
  'signs.sign.pattern.compact.name': 'Geschlossenes Brutnest, gewölbte Deckel',
  'signs.sign.pattern.spotty.name': 'Lückiges Brutnest',
  'signs.sign.age.all_together.name': 'Offene und verdeckelte Brut zugleich tot',
  'signs.sign.cap.sunken.name': 'Eingesunkene Zelldeckel',
  'signs.sign.cap.dark_greasy.name': 'Dunkle, fettige Zelldeckel',
  'signs.sign.cap.perforated.name': 'Löchrige Zelldeckel',
  'signs.sign.cap.flattened.name': 'Flache Zelldeckel',
  'signs.sign.cap.late_unemerged.name': 'Einzelne stehen gebliebene Deckelzellen',
  'signs.sign.cap.line_open.name': 'Lebende Puppen in einer Reihe offen',
  'signs.sign.cap.domed.name': 'Buckelbrut auf Arbeiterinnenzellen',
  'signs.sign.col.pearl.name': 'Perlweiße, pralle Brut',
  'signs.sign.col.offwhite_yellow.name': 'Mattweiße bis gelbe Brut',
  'signs.sign.col.coffee.name': 'Kaffeebraune Reste',
  'signs.sign.col.grey_black_shiny.name': 'Graue bis schwarze, glänzende Brut',
  'signs.sign.age.coiled.name': 'Als Rundmade tot, Zelle offen',
  'signs.sign.age.twisted.name': 'Verdrehte oder verlagerte Made',
  'signs.sign.age.prepupa.name': 'Als Streckmade auf der unteren Zellwand tot',
  'signs.sign.age.pupa.name': 'Tote Puppe',
  'signs.sign.post.head_up.name': 'Kopfende angehoben und dunkler',
  'signs.sign.post.melted.name': 'Zusammengesackt, ohne Segmente',
  'signs.sign.con.tracheae.name': 'Tracheen als helle Linien sichtbar',
  'signs.sign.con.watery.name': 'Wässrig oder breiig, reißt kurz ab',
  'signs.sign.con.ropy.name': 'Zieht einen gleichmäßigen Faden von 10 mm oder mehr',
  'signs.sign.con.sac.name': 'Lässt sich als Säckchen herausziehen',
  'signs.sign.con.fluff.name': 'Weißer, watteartiger Belag',
  'signs.sign.con.mummy_loose.name': 'Lose Kalkmumien',
  'signs.sign.con.mummy_stone.name': 'Steinharte Mumien mit Pulver',
  'signs.sign.con.dry_unfed.name': 'Trockene Maden ohne Futter',
  'signs.sign.tongue.name': 'Feiner Faden quer durch die Zelle (Puppenzunge)',
  'signs.sign.eggs.multi.name': 'Mehrere Eier in einer Zelle',
  'signs.sign.moth.name': 'Gespinstgänge, Wachsmottenlarven',
  'signs.sign.scale.hard_lower.name': 'Dunkler Schorf, fest an der unteren Zellwand',
  'signs.sign.scale.rubbery.name': 'Gummiartiger Schorf, löst sich',
  'signs.sign.scale.mouth.name': 'Reste am Zellmund eingetrocknet',
  'signs.sign.scale.gondola.name': 'Kahnförmiger Schorf, lose',
  'signs.sign.floor.mummies.name': 'Mumien auf dem Boden oder am Flugloch',

  'signs.condition.american-foulbrood.name': 'Amerikanische Faulbrut',
  'signs.condition.american-foulbrood.early.name': 'Amerikanische Faulbrut, Beginn',
  'signs.condition.american-foulbrood.advanced.name': 'Amerikanische Faulbrut, fortgeschritten',
  'signs.condition.european-foulbrood.name': 'Europäische Faulbrut',
  'signs.condition.chalkbrood.name': 'Kalkbrut',
  'signs.condition.sacbrood.name': 'Sackbrut',
  'signs.condition.varroa-damage.name': 'Varroaschaden an der Brut',
  'signs.condition.chilled-or-starved.name': 'Verkühlte oder verhungerte Brut',
  'signs.condition.stonebrood.name': 'Steinbrut',
  'signs.condition.queen-failure.name': 'Versagende Königin oder Drohnenmütterchen',
  'signs.condition.bald-brood.name': 'Kahlbrut oder Wachsmotte',
  'signs.condition.half-moon.name': 'Halbmondsyndrom',

  'signs.check.open-cells.name': 'Verdächtige Zellen öffnen',
  'signs.check.open-cells.how':
    'Deckel mit der Ecke des Stockmeißels abheben, Farbe und Form ansehen. Eingesunkene, löchrige, verfärbte Deckel wählen und Deckelzellen zwischen viel jüngerer Brut. Zehn oder mehr, nicht eine.',
  'signs.check.rope-test.name': 'Streichholzprobe, drei Zellen',
  'signs.check.rope-test.how':
    'Kaffeebraune, zusammengesackte Reste wählen. Mit einem trockenen, rauen Hölzchen umrühren und langsam herausziehen. Faden in Millimetern messen und sehen, ob er zurückschnellt. Für jede Zelle ein neues Hölzchen; es bleibt in der Beute oder verbrennt im Smoker.',
  'signs.check.scale-search.name': 'Untere Zellwände auf Schorf absuchen',
  'signs.check.scale-search.how':
    'Bienen ab. Wabe am Oberträger halten, Oberträger zu Ihnen, Licht über die Schulter, etwa 35 Grad steil in die Zellen sehen. Schorf hat die Farbe alter Waben.',
  'signs.check.every-frame-shaken.name': 'Jede Brutwabe ohne Bienen ansehen',
  'signs.check.every-frame-shaken.how':
    'Jede Brutwabe etwas anheben und in der Zarge ruckartig senken, damit die Bienen auf den Boden fallen. Beide Seiten Reihe für Reihe ansehen, Waben in ihrer Ordnung zurückhängen.',
  'signs.check.look-into-open-cells.name': 'In offene Zellen sehen',
  'signs.check.look-into-open-cells.how':
    'Junge Maden in offenen Zellen ansehen: eingerollt oder verdreht, gelb, mit hellen Tracheen.',
  'signs.check.search-tongue.name': 'Nach einer Puppenzunge suchen',
  'signs.check.search-tongue.how':
    'In Zellen mit Resten auf einen feinen Faden achten, der quer durch die Zelle steht. Keiner besagt fast nichts.',
  'signs.check.look-for-mites.name': 'Nach Milben sehen',
  'signs.check.look-for-mites.how':
    'Bienen und Puppen auf Milben, verkrüppelte Flügel und angefressene Puppen ansehen.',
  'signs.check.look-at-eggs.name': 'Die Eier ansehen',
  'signs.check.look-at-eggs.how': 'Sonne über die Schulter: wie viele Eier in einer Zelle, und wo sie stehen.',
  'signs.check.search-floor.name': 'Beutenboden und Flugloch ansehen',
  'signs.check.search-floor.how': 'Auf weiße, graue oder schwarze Mumien auf dem Boden und vor dem Flugloch achten.',
  'signs.check.holst-milk.name': 'Milchprobe',
  'signs.check.holst-milk.how':
    'Ein Schorf oder Ausstrich in 3 bis 4 ml Magermilchpulver in Wasser (1 %), bei 37 °C: hellt sie in 10 bis 20 Minuten auf, ist Amerikanische Faulbrut wahrscheinlich. Nicht ganz zuverlässig.',
  'signs.check.lateral-flow-afb.name': 'Schnelltest, Amerikanische Faulbrut',
  'signs.check.lateral-flow-afb.how':
    'Eine Made mit Zeichen in den Puffer, 20 Sekunden schütteln, zwei Tropfen, waagerecht halten, ablesen, wenn die Kontrolllinie steht. Charge und Verfall aufschreiben.',
  'signs.check.lamp-afb.name': 'LAMP am Stand, Amerikanische Faulbrut',
  'signs.check.lamp-afb.how': 'Nach Anleitung, mit einer Made, die Zeichen zeigt. Charge und Verfall aufschreiben.',
  'signs.check.lateral-flow-efb.name': 'Schnelltest, Europäische Faulbrut',
  'signs.check.lateral-flow-efb.how':
    'Eine Made mit Zeichen in den Puffer, 20 Sekunden schütteln, zwei Tropfen, waagerecht halten, ablesen, wenn die Kontrolllinie steht. Charge und Verfall aufschreiben.',
  'signs.check.microscopy-brood-afb.name': 'Mikroskopie von Brut, Amerikanische Faulbrut',
  'signs.check.microscopy-brood-afb.how':
    'Maden oder Puppen mit Zeichen einsenden, oder eine Made dünn auf einem Objektträger ausgestrichen und getrocknet.',
  'signs.check.culture-brood-afb.name': 'Kultur aus Brut, Amerikanische Faulbrut',
  'signs.check.culture-brood-afb.how':
    'Wabenstück mit möglichst viel toter Brut und ohne Honig einsenden, in Papier, nie in Plastik.',
  'signs.check.pcr-brood-afb.name': 'PCR aus Brut, Amerikanische Faulbrut',
  'signs.check.pcr-brood-afb.how': 'Maden oder Puppen mit Zeichen einsenden, oder das Hölzchen aus der Zelle.',
  'signs.check.culture-bees-afb.name': 'Kultur aus Bienen, Amerikanische Faulbrut',
  'signs.check.culture-bees-afb.how':
    'Mehr als 100 Bienen von den Brutwaben einsenden. Positiv heißt Sporen, noch nicht Krankheit. Kein Alkohol, außer das Labor will es.',
  'signs.check.culture-honey-afb.name': 'Kultur aus Honig, Amerikanische Faulbrut',
  'signs.check.culture-honey-afb.how': 'Honig aus dem Brutnest einsenden, verschlossen, so viel das Labor verlangt.',
  'signs.check.culture-debris-afb.name': 'Kultur aus Gemüll, Amerikanische Faulbrut',
  'signs.check.culture-debris-afb.how': 'Nur wenn weder Bienen noch Honig aus dem Brutnest zu haben sind.',
  'signs.check.microscopy-brood-efb.name': 'Mikroskopie von Brut, Europäische Faulbrut',
  'signs.check.microscopy-brood-efb.how': 'Einzelne Maden mit Zeichen einsenden.',
  'signs.check.qpcr-bees-efb.name': 'qPCR aus Bienen, Europäische Faulbrut',
  'signs.check.qpcr-bees-efb.how': 'Etwa 100 Bienen aus dem Brutnest einsenden, gekühlt oder gefroren.',
  'signs.check.pcr-bees-efb.name': 'PCR aus Bienen, Europäische Faulbrut',
  'signs.check.pcr-bees-efb.how': 'Etwa 100 Bienen aus dem Brutnest einsenden, gekühlt oder gefroren.',
  'signs.check.pcr-honey-efb.name': 'PCR aus Honig, Europäische Faulbrut',
  'signs.check.pcr-honey-efb.how': 'Honig aus dem Brutnest einsenden, verschlossen, so viel das Labor verlangt.',
  'signs.check.pcr-debris-efb.name': 'PCR aus Gemüll, Europäische Faulbrut',
  'signs.check.pcr-debris-efb.how': 'Gemüll vom Beutenboden einsenden, so viel das Labor verlangt.',

  'signs.rope-test-made': 'Streichholzprobe',
  'signs.pattern-measured': 'Brutbild, aus einem Foto gemessen',
  'signs.reason.measured.for':
    '{what}: zu {solid} % geschlossen, auf {error} genau ({sides, plural, one {eine Wabenseite} other {# Wabenseiten}}): spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} für {condition}.',
  'signs.reason.measured.against':
    '{what}: zu {solid} % geschlossen, auf {error} genau ({sides, plural, one {eine Wabenseite} other {# Wabenseiten}}): spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} gegen {condition}.',
  'signs.reason.measured.neither':
    '{what}: zu {solid} % geschlossen, auf {error} genau ({sides, plural, one {eine Wabenseite} other {# Wabenseiten}}): {strength, select, nothing {ändert fast nichts für {condition}} other {ändert wenig für {condition}}}.',
  'signs.reason.seen.for':
    '{what}, gesehen: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} für {condition}.',
  'signs.reason.seen.against':
    '{what}, gesehen: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} gegen {condition}.',
  'signs.reason.seen.neither':
    '{what}, gesehen: {strength, select, nothing {ändert fast nichts für {condition}} other {ändert wenig für {condition}}}.',
  'signs.reason.not-seen.for':
    '{what}, gesucht und nicht gesehen: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} für {condition}.',
  'signs.reason.not-seen.against':
    '{what}, gesucht und nicht gesehen: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} gegen {condition}.',
  'signs.reason.not-seen.neither':
    '{what}, gesucht und nicht gesehen: {strength, select, nothing {ändert fast nichts für {condition}} other {ändert wenig für {condition}}}.',
  'signs.reason.positive.for':
    '{what}, positiv: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} für {condition}.',
  'signs.reason.positive.against':
    '{what}, positiv: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} gegen {condition}.',
  'signs.reason.positive.neither':
    '{what}, positiv: {strength, select, nothing {ändert fast nichts für {condition}} other {ändert wenig für {condition}}}.',
  'signs.reason.negative.for':
    '{what}, negativ: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} für {condition}.',
  'signs.reason.negative.against':
    '{what}, negativ: spricht {strength, select, weak {etwas} fair {deutlich} strong {stark} other {}} gegen {condition}.',
  'signs.reason.negative.neither':
    '{what}, negativ: {strength, select, nothing {ändert fast nichts für {condition}} other {ändert wenig für {condition}}}.',

  'signs.silent.not-asked-in-this-hive':
    '{what}: zählt nicht, weil eine tote Beute oder gelagerte Waben es nicht zeigen.',
  'signs.silent.masked':
    '{what}, nicht gesehen: zählt nicht, weil ein Arzneimittel oder neue Waben es verdecken können.',
  'signs.silent.view-hides-it': '{what}, nicht gesehen: zählt nicht, weil dieser Blick es nicht zeigen konnte.',
  'signs.silent.pattern-counted-once': '{what}: das Brutbild zählt einmal, als lückig oder nicht.',
  'signs.silent.odour-counted-once': '{what}: der Geruch zählt einmal, nach seiner Art.',
  'signs.silent.bees-uncap-diseased-brood': '{what}, nicht gesehen: zählt nicht, weil Bienen kranke Brut entdeckeln.',
  'signs.silent.scale-does-not-rope': '{what}, kein Faden: zählt nicht, weil trockener Schorf keinen Faden zieht.',
  'signs.silent.tissue-does-not-rope':
    '{what}, kein Faden: zählt nicht, weil zu frische oder halb trockene Reste oft keinen ziehen.',
  'signs.silent.poor-stick': '{what}, kein Faden: zählt nicht, weil ein glattes oder nasses Hölzchen nicht haftet.',
  'signs.silent.does-not-snap-back': '{what}: zählt nicht als positiv, weil der Faden nicht zurückschnellte.',
  'signs.silent.rope-test-says-it': '{what}: zählt einmal, durch die Streichholzprobe.',
  'signs.silent.kit-expired': '{what}: zählt nicht, weil der Test verfallen war.',
  'signs.silent.test-failed': '{what}: zählt nicht, weil der Test misslang.',
  'signs.silent.photograph-beside-the-eye':
    '{what}: zählt nicht, weil zählt, was an den Waben zum Brutbild gesagt wurde.',
  'signs.silent.photograph-masked':
    '{what}: zählt nicht, weil ein Arzneimittel oder neue Waben Lücken verdecken können.',
  'signs.silent.photograph-without-look': '{what}: zählt nicht, weil bei diesem Blick keine Wabe gezogen wurde.',
  'signs.silent.test-counted-once': '{what}: Wiederholungen an einem Volk zählen einmal.',

  'signs.state-name.suspicion-stands': 'verdächtig',
  'signs.state-name.remains-suspect': 'weiterhin verdächtig',
  'signs.state-name.contaminated-not-clinical': 'belastet, nicht erkrankt',
  'signs.state-name.masked': 'verdeckt, kein Schluss',
  'signs.state-name.too-little-brood': 'zu wenig Brut zum Urteilen',
  'signs.state-name.not-looked': 'Waben nicht angesehen',
  'signs.state-name.look-too-narrow': 'Blick zu eng, um das Volk zu beurteilen',
  'signs.state-name.nothing-seen': 'mit diesem Blick nichts gesehen',
  'signs.state-name.signs-seen': 'Zeichen gesehen',
  'signs.state-name.signs-unexplained': 'Zeichen gesehen, ungeklärt',

  'signs.state.suspicion-stands': 'Der Verdacht besteht.',
  'signs.state.remains-suspect':
    'Weiterhin verdächtig: verschwundene Zeichen heben einen Verdacht nicht auf. Völker verlieren ihre Zeichen zeitweise.',
  'signs.state.contaminated-not-clinical':
    'Belastet, nicht erkrankt: Sporen gefunden, kein Zeichen gesehen. Das ist noch nicht die Krankheit; nachsehen.',
  'signs.state.masked': 'Verdeckt, kein Schluss: ein Arzneimittel oder neue Waben können die Zeichen verdecken.',
  'signs.state.too-little-brood': 'Zu wenig Brut zum Urteilen.',
  'signs.state.not-looked': 'Die Waben wurden nicht angesehen.',
  'signs.state.look-too-narrow': 'Nichts gesehen, und der Blick war zu eng, um das Volk zu beurteilen.',
  'signs.state.nothing-seen': 'Mit diesem Blick nichts gesehen.',
  'signs.state.signs-seen': 'Zeichen gesehen. An erster Stelle: {condition}.',
  'signs.state.signs-unexplained': 'Zeichen gesehen, die keiner der genannten Befunde gut erklärt.',

  'signs.line.suspicion': 'Der Verdacht besteht. Zuerst: {step}',
  'signs.line.condition-and-check': 'An erster Stelle: {condition}. Als Nächstes: {check}',
  'signs.line.condition': 'An erster Stelle: {condition}.',
  'signs.line.state-and-check': 'Bisher: {state}. Als Nächstes: {check}',
  'signs.line.state': 'Bisher: {state}.',

  'signs.likelihood.almost-sure': 'fast sicher',
  'signs.likelihood.likely': 'wahrscheinlich',
  'signs.likelihood.possible': 'möglich',
  'signs.likelihood.cannot-be-left-aside': 'nicht außer Acht zu lassen',
  'signs.likelihood.nothing-points-to-it': 'nichts deutet darauf hin',

  'signs.first.close-the-hive': 'Beute schließen.',
  'signs.first.move-nothing': 'Nichts bewegen: keine Bienen, Waben, keinen Honig, kein Gerät.',
  'signs.first.take-a-specimen': 'Probe nehmen.',
  'signs.first.clean-down': 'Vor dem nächsten Volk reinigen: Handschuhe, Stockmeißel, Telefon.',
  'signs.first.notify': 'Anzeigen, wie es das örtliche Recht verlangt.',

  'signs.not-possible.done': '{check}: getan.',
  'signs.not-possible.no-living-brood': '{check}: keine lebende Brut da.',
  'signs.not-possible.no-moist-remains': '{check}: braucht feuchte, braune Reste.',
  'signs.not-possible.no-remains': '{check}: braucht Reste oder Schorf.',
  'signs.not-possible.no-sealed-brood': '{check}: keine verdeckelte Brut da.',
  'signs.not-possible.no-bees': '{check}: keine lebenden Bienen da.',
  'signs.not-possible.kit-not-at-hand': '{check}: kein Test zur Hand.',
  'signs.not-possible.too-far-dried': '{check}: die Reste sind zu trocken.',

  'signs.missed.one-in':
    'Ein Volk mit {cells, plural, one {# kranken Zelle} other {# kranken Zellen}} hätte bei diesem Blick in etwa {percent} von 100 Fällen nichts gezeigt.',
  'signs.missed.everything':
    'Dieser Blick hätte ein Volk mit {cells, plural, one {# kranken Zelle} other {# kranken Zellen}} übersehen.',
  'signs.missed.too-little-brood': 'Zu wenig Brut zum Urteilen: nichts zu sehen besagt hier nichts.',

  'signs.limit.no-combs-seen': 'Keine Waben angesehen',
  'signs.limit.not-every-frame': 'Nicht jede Brutwabe angesehen',
  'signs.limit.frames-not-said': 'Zahl der angesehenen Waben nicht angegeben',
  'signs.limit.one-side-only': 'Nur eine Seite der Waben',
  'signs.limit.bees-left-on': 'Bienen blieben darauf',
  'signs.limit.shaking-not-said': 'Ob abgestoßen wurde, ist nicht angegeben',
  'signs.limit.poor-light': 'Schwaches Licht',
  'signs.limit.light-not-said': 'Licht nicht angegeben',
  'signs.limit.top-bar-away': 'So gehalten, dass Schorf nicht zu sehen ist',
  'signs.limit.hold-not-said': 'Haltung der Wabe nicht angegeben',
  'signs.limit.no-cells-opened': 'Keine Deckelzellen geöffnet',
  'signs.limit.cells-left-unopened': 'Verdächtige Zellen blieben ungeöffnet',
  'signs.limit.little-sealed-brood': 'Wenig verdeckelte Brut',
  'signs.limit.sealed-brood-not-said': 'Menge der verdeckelten Brut nicht angegeben',

  'signs.onset.at-least':
    'Falls es Amerikanische Faulbrut ist, liegt die erste Ansteckung mindestens {days, plural, one {# Tag} other {# Tage}} zurück. Wie viel länger, ist offen.',
  'signs.onset.often-months':
    'Falls es Amerikanische Faulbrut ist, liegt die erste Ansteckung mindestens {days, plural, one {# Tag} other {# Tage}} zurück; nach Erfahrung bedeutet so viel Schorf Monate. Wie viel länger, ist offen.',

  'signs.caution.respirator':
    'Steinbrut kann Menschen schaden: Lunge, Augen und Wunden. Vor dem Weiterarbeiten Atemschutz und Augenschutz.',
  'signs.caution.do-not-shake': 'Waben nicht abstoßen.',
  'signs.caution.never-certain-from-a-look':
    'Ein Blick beweist nie, dass ein Volk frei von Krankheit ist, noch dass es krank ist.',

  'signs.advice.second-cell': 'Anderswo in der Beute nach {from} oder {to} weiteren solchen Zellen suchen.',
  'signs.advice.laboratory-sample': 'Eine Probe für das Labor nehmen.',
  'signs.advice.laboratory-to-separate': '{one} und {other} sehen hier gleich aus. Das Labor soll sie trennen.',
  'signs.advice.repeat-with-rough-dry-stick': 'Streichholzprobe mit einem rauen, trockenen Hölzchen wiederholen.',
  'signs.advice.recheck-short-thread':
    'Ein kurzer Faden ist kein Nachweis. Andere Zellen versuchen; sonst Probe nehmen oder das Volk kennzeichnen und {months, plural, one {# Monat} other {# Monate}} oder länger immer wieder ansehen.',
  'signs.advice.treat-mites-and-look-again':
    'Milben behandeln lassen, {days, plural, one {# Tag} other {# Tage}} warten und wieder ansehen: Varroaschaden kann Faulbrut verdecken.',
  'signs.advice.keep-opening-cells':
    'Bisher geöffnet: {opened} von {suspicious} verdächtigen Zellen. Die ungeöffneten sind durch die anderen nicht beantwortet.',
  'signs.advice.question-stays-open':
    '{condition} erklärt das Gesehene, und Faulbrut ist damit nicht ausgeschlossen. In {days, plural, one {# Tag} other {# Tagen}} wieder ansehen.',
  'signs.advice.look-again-after-masking':
    'In {days, plural, one {# Tag} other {# Tagen}} wieder ansehen, wenn nichts mehr die Zeichen verdeckt.',
  'signs.advice.look-at-every-frame': 'Jede Brutwabe beidseitig ohne Bienen und bei gutem Licht ansehen.',
  'signs.advice.look-again-contaminated': 'Sporen ohne Zeichen: die Brut wieder ansehen, auch die der Völker ringsum.',
  'signs.advice.specimen-though-signs-gone': 'Probe nehmen, obwohl die Zeichen verschwunden sind.',

  'signs.prior.assumed': 'Vorab angenommen, Fachurteil',
  'signs.prior.district-count': 'Verdächtige oder bestätigte unter den durchgesehenen Völkern des Bezirks',
  'signs.prior.earlier-case-at-apiary': 'Früherer Fall an diesem Bienenstand',
  'signs.prior.contact-of-case': 'Kontakt zu einem Fall, durch Nachverfolgung gefunden',
  'signs.prior.honey-positive': 'Sporen in Honig oder Bienen dieses Betriebs gefunden',
  'signs.prior.earlier-suspicion': 'Verdacht aus einem früheren Blick',
  'signs.prior.changed-by-hand': 'Von der prüfenden Person geändert: {reason}',

  'signs.expert-band': 'Spanne nach Fachurteil',
  'signs.no-published-figure': 'keine veröffentlichte Zahl',
} as const satisfies Record<keyof typeof reference, string>;
