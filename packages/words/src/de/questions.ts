import type { questions as reference } from '../en/questions.ts';

/** Die Rechnungen des Amtes, jede als Frage. */
export const questions = {
  'questions.all': 'Fragen',
  'questions.choose': 'Links eine Frage wählen.',
  'questions.unknown': 'Unter dieser Adresse gibt es keine Frage. Links eine wählen.',
  'questions.inputs': 'Was Sie angeben',
  'questions.cautions': 'Vor allem anderen',
  'questions.takes': 'Was dabei vorausgesetzt wird',
  'questions.sources': 'Woher das stammt',
  'questions.asks': 'Noch anzugeben: {fields}. Dafür ist kein Wert veröffentlicht, oder es ist eine Tatsache vor Ort.',
  'questions.quoted': '„{text}“',
  'questions.left-out': 'Der Link enthielt etwas, das zu dieser Frage nicht passt; es blieb weg: {what}',
  'questions.slow': 'Das dauert einen Augenblick und wird erst auf Wunsch gerechnet.',
  'questions.slow.work-out': 'Ausrechnen',
  'questions.slow.working': 'Wird ausgerechnet …',
  'questions.slow.failed': 'Das ließ sich nicht ausrechnen. Ihre Angaben sind noch da.',
  'questions.slider': '{label}: Schieber',
  'questions.not-stated': 'noch nicht angegeben',
  'questions.range': 'Von {from} bis {to}.',
  'questions.range.whole': 'Eine ganze Zahl von {from} bis {to}.',
  'questions.over': 'über {share}',
  'questions.under': 'unter {share}',
  'questions.months': '{count, plural, one {# Monat} other {# Monate}}',
  'questions.unit.share': '%',
  'questions.unit.cm': 'cm',
  'questions.unit.m': 'm',
  'questions.unit.kg': 'kg',
  'questions.unit.l': 'l',
  'questions.unit.min': 'min',
  'questions.unit.°C': '°C',
  'questions.unit.hour': 'h',
  'questions.unit.month': 'Monate',
  'questions.plot-of': 'Kurve zu „{title}“: {x}; {y}. Die Zahlen stehen in der Tabelle daneben.',
  'questions.plot-failed': 'Die Kurve ließ sich nicht laden. Die Zahlen stehen in der Tabelle.',
  'questions.low': 'Von',
  'questions.value': 'Wert',
  'questions.high': 'Bis',
  'questions.none-enough': 'nicht einmal alle',
  'questions.keep': 'Als Notiz aufheben',
  'questions.keep.which': 'Zu welchem Stand? Ein Teil seines Namens oder des Namens des Imkers',
  'questions.keep.none': 'Kein Stand heißt so ähnlich.',
  'questions.keep.on': 'Bei {name} aufheben ({keeper})',
  'questions.keep.on-case': 'Beim Verdacht in {name} aufheben, Besuch vom {day}',
  'questions.keep.case': '{name}, Besuch vom {day}',
  'questions.keep.kept': 'Als Notiz bei {name} aufgehoben. Sie ist unterwegs zum Amt.',
  'questions.keep.at-office': 'Als Notiz bei {name} aufgehoben und beim Amt angekommen.',
  'questions.keep.open': '{name} öffnen',
  'questions.keep.leave': 'Doch nicht',
  'questions.note.input': '{label}: {value}',
  'questions.note.no-link': 'Die Angaben waren zu lang für einen Link; sie stehen oben.',
  'questions.note.sources': 'Quellen: {keys}',
  'questions.limits': 'Grenzwerte, wie Labore sie angeben',
  'questions.limits.none':
    'Noch keine festgehalten. So eintragen, wie das Labor sie angibt; dann lassen sie sich für alle Bezirke aufheben.',
  'questions.limits.keep': 'Diese Grenzwerte für alle Bezirke aufheben',
  'questions.limits.use': '{laboratory}: {method}, {material}, je {unit}, Stand {day}',
  'questions.limits.from': 'Steht in: {source}. Eingetragen von {name}, {when}.',
  'questions.limits.corrected': 'Berichtigt von {name}, {when}: {reason}.',
  'questions.limits.this-desk': 'Nur auf diesem Rechner, von einer früheren Fassung des Programms:',
  'questions.limits.share': 'Diese für alle Bezirke aufheben',
  'questions.limits.why': 'Die Angaben weichen von dem ab, was für diesen Tag festgehalten ist. Was ist daran falsch?',
  'questions.limits.correct': 'Das Festgehaltene berichtigen',
  'questions.limits.failed': 'Das Amt ist nicht erreichbar; die dort aufgehobenen Grenzwerte fehlen hier.',
  'questions.limits.on-its-way': 'Festgehalten. Sie sind unterwegs zum Amt.',
  'questions.limits.at-office': 'Festgehalten und beim Amt: Alle Bezirke sehen sie.',
  'questions.takes.random':
    'Die Völker sind wie ausgelost. Wer die verdächtigen zuerst öffnet, findet mehr, als hier steht.',
  'questions.takes.same-eye':
    'Jedes befallene Volk wird mit derselben Wahrscheinlichkeit gefunden, gleich in welchem Stadium, und jede Durchsicht steht für sich.',
  'questions.takes.no-false-alarm': 'Jeder Fund wird bestätigt; kein Volk gilt aus Versehen als befallen.',
  'questions.refuses.coin':
    'Ein solcher Test sagt nicht mehr als eine Münze: Was er findet und was er in Ruhe lässt, muss zusammen über 100 % ergeben.',

  'questions.how-many-to-open': 'Wie viele Völker muss ich öffnen?',
  'questions.how-many-to-open.about':
    'So viele, dass mindestens ein befallenes Volk gefunden wird, wenn so viele befallen sind.',
  'questions.how-many-to-open.colonies': 'Völker am Stand',
  'questions.how-many-to-open.affected': 'Befall, der nicht entgehen soll',
  'questions.how-many-to-open.affected.hint':
    'Als Anteil aller Völker. Sie wählen ihn: Hier ist keiner vorgeschrieben.',
  'questions.how-many-to-open.sensitivity': 'Wahrscheinlichkeit, ein befallenes Volk bei der Durchsicht zu erkennen',
  'questions.how-many-to-open.sensitivity.hint':
    'Für das Auge eines Sachverständigen ist kein Wert veröffentlicht. 100 % hieße: nie etwas übersehen.',
  'questions.how-many-to-open.confidence': 'Gewünschte Sicherheit',
  'questions.how-many-to-open.says.open':
    '{open} von {colonies} Völkern öffnen: Sind mindestens {affected} befallen, wird so mit {confidence} Sicherheit wenigstens eines gefunden.',
  'questions.how-many-to-open.says.all': 'Alle zu öffnen fände mit {chance} Wahrscheinlichkeit wenigstens eines.',
  'questions.how-many-to-open.says.not-enough':
    'Selbst alle {colonies} reichen für {confidence} nicht: Sind {affected} befallen, findet auch die Durchsicht aller nur mit {chance} Wahrscheinlichkeit eines. Noch einmal oder genauer durchsehen.',
  'questions.how-many-to-open.x': 'Anteil befallener Völker',
  'questions.how-many-to-open.y': 'Zu öffnende Völker',
  'questions.how-many-to-open.takes.level':
    'Die Zahl der befallenen Völker wird auf ganze Völker aufgerundet, mindestens eines.',

  'questions.finding-none': 'Was sagt es, dass nichts gefunden wurde?',
  'questions.finding-none.about': 'Nichts gefunden. Wie viele befallene Völker können trotzdem da sein?',
  'questions.finding-none.colonies': 'Völker am Stand',
  'questions.finding-none.opened': 'Geöffnete Völker ohne Fund',
  'questions.finding-none.sensitivity': 'Wahrscheinlichkeit, ein befallenes Volk bei der Durchsicht zu erkennen',
  'questions.finding-none.sensitivity.hint':
    'Für das Auge eines Sachverständigen ist kein Wert veröffentlicht. 100 % hieße: nie etwas übersehen.',
  'questions.finding-none.confidence': 'Gewünschte Sicherheit',
  'questions.finding-none.says.up-to':
    '{left, plural, =0 {Mit {confidence} Sicherheit wäre schon ein einziges befallenes Volk gefunden worden.} one {Bis zu # Volk von {colonies} ({share}) kann noch befallen sein: Erst mehr wären mit {confidence} Sicherheit aufgefallen.} other {Bis zu # Völker von {colonies} ({share}) können noch befallen sein: Erst mehr wären mit {confidence} Sicherheit aufgefallen.}}',
  'questions.finding-none.says.nothing':
    'Es schließt nichts aus: Selbst wenn alle {colonies} befallen wären, hätten {opened} geöffnete es nicht mit {confidence} Sicherheit gezeigt.',
  'questions.finding-none.says.one':
    'Ein einziges befallenes Volk wäre mit {chance} Wahrscheinlichkeit gefunden worden.',
  'questions.finding-none.refuses.more':
    'Es sind mehr geöffnet ({opened}), als da sind ({colonies}). Beide Zahlen ansehen.',
  'questions.finding-none.x': 'Befallene Völker',
  'questions.finding-none.y': 'Wahrscheinlichkeit, eines gefunden zu haben',
  'questions.finding-none.takes.none-seen':
    'Nichts gesehen heißt nicht, dass nichts da ist; keine Zahl von Durchsichten macht daraus null.',

  'questions.how-frequent': 'Wie häufig ist es wirklich?',
  'questions.how-frequent.about': 'So viele positiv von so vielen untersuchten: Was steckt dahinter?',
  'questions.how-frequent.positives': 'Positiv',
  'questions.how-frequent.tested': 'Untersucht oder geöffnet',
  'questions.how-frequent.reading': 'Was ist über den Test bekannt?',
  'questions.how-frequent.reading.counted': 'Nichts: wie gezählt',
  'questions.how-frequent.reading.known': 'Wie oft er recht hat, als genau bekannt',
  'questions.how-frequent.reading.estimated': 'Wie oft er in einer Prüfung recht hatte',
  'questions.how-frequent.sensitivity': 'Befallene Völker, die er findet',
  'questions.how-frequent.sensitivity.hint': 'Vom Labor oder aus einer Studie. Nichts ist vorgegeben.',
  'questions.how-frequent.specificity': 'Nicht befallene Völker, die er in Ruhe lässt',
  'questions.how-frequent.specificity.hint': 'Wer genau 100 % annimmt, übersieht einen Fehlalarm unter hundert.',
  'questions.how-frequent.diseasedFound': 'Prüfung: befallene, die er fand',
  'questions.how-frequent.diseasedTested': 'Prüfung: befallene insgesamt',
  'questions.how-frequent.freeNegative': 'Prüfung: nicht befallene, die er in Ruhe ließ',
  'questions.how-frequent.freeTested': 'Prüfung: nicht befallene insgesamt',
  'questions.how-frequent.confidence': 'Gewünschte Sicherheit',
  'questions.how-frequent.says.counted':
    '{positives} von {tested} sind {estimate}; mit {confidence} Sicherheit liegt es zwischen {lower} und {upper}.',
  'questions.how-frequent.says.known':
    'Bei diesem Test bedeuten {positives} von {tested} etwa {estimate} wirklich befallene, mit {confidence} Sicherheit zwischen {lower} und {upper}.',
  'questions.how-frequent.says.below-zero':
    'Der Test gibt allein schon mehr Fehlalarme, als positive gezählt wurden; die Schätzung bleibt bei 0 stehen.',
  'questions.how-frequent.says.estimated':
    'Ist der Test nur aus dieser Prüfung bekannt, bedeuten {positives} von {tested} am ehesten etwa {estimate}; mit {confidence} liegt es zwischen {lower} und {upper}.',
  'questions.how-frequent.refuses.more':
    'Es sind mehr positiv ({positives}), als untersucht wurden ({tested}). Beide Zahlen ansehen.',
  'questions.how-frequent.refuses.trial':
    'In der Prüfung sind mehr richtig, als untersucht wurden. Die vier Zahlen ansehen.',
  'questions.how-frequent.x': 'Anteil der Völker',
  'questions.how-frequent.row.counted': 'Wie gezählt (Wilson)',
  'questions.how-frequent.row.exact': 'Wie gezählt (exakte Grenzen)',
  'questions.how-frequent.row.known': 'Um den Test berichtigt',
  'questions.how-frequent.row.estimated': 'Berichtigt, Test aus der Prüfung',
  'questions.how-frequent.takes.counted': 'Der Test gilt als immer richtig. Das ist er nicht.',
  'questions.how-frequent.takes.known': 'Wie oft der Test recht hat, gilt als genau bekannt und in jedem Volk gleich.',
  'questions.how-frequent.takes.estimated':
    'Vor der Erhebung gilt jeder Anteil von 0 bis 100 % als gleich wahrscheinlich, und die Völker der Prüfung waren wie diese.',

  'questions.free-since': 'Ist der Bezirk frei, und seit wann?',
  'questions.free-since.about':
    'Frei heißt hier: unter dem Befall, den die Untersuchungsrunden finden sollten. Es ist eine Wahrscheinlichkeit, nie eine Feststellung des Rechts.',
  'questions.free-since.prior': 'Annahme vor der ersten Runde, dass er frei war',
  'questions.free-since.prior.hint': '50 % sagt: Wir wussten es nicht.',
  'questions.free-since.introduction': 'Wahrscheinlichkeit einer Einschleppung je Runde',
  'questions.free-since.introduction.hint': 'Kein Wert veröffentlicht. Für dieselbe Zeitspanne wie eine Runde.',
  'questions.free-since.round': 'Wahrscheinlichkeit, dass eine Runde sie gefunden hätte',
  'questions.free-since.round.hint':
    'Der ganzen Runde, wäre so viel Befall da gewesen. Nicht der einzelnen Durchsicht.',
  'questions.free-since.rounds': 'Runden ohne Fund',
  'questions.free-since.first': 'Tag der ersten Runde',
  'questions.free-since.apart': 'Zeit von Runde zu Runde',
  'questions.free-since.aim': 'Angestrebte Wahrscheinlichkeit',
  'questions.free-since.says.reached':
    'Nach {rounds, plural, one {# Runde} other {# Runden}} beträgt die Wahrscheinlichkeit {freedom}; die angestrebten {aim} hält sie seit Runde {since}.',
  'questions.free-since.says.reached-on':
    'Nach {rounds, plural, one {# Runde} other {# Runden}} beträgt die Wahrscheinlichkeit {freedom}; die angestrebten {aim} hält sie seit Runde {since}, am {day}.',
  'questions.free-since.says.not-yet':
    'Noch nicht: Nach {rounds, plural, one {# Runde} other {# Runden}} beträgt die Wahrscheinlichkeit {freedom}, weniger als die angestrebten {aim}.',
  'questions.free-since.says.needed':
    'Es braucht {needed, plural, one {# Runde} other {# Runden}} ohne Fund, {more} mehr als gemacht.',
  'questions.free-since.says.never':
    'Mit solchen Runden wird sie nie erreicht: Was hereinkommt, überwiegt, was sie finden, und die Wahrscheinlichkeit bleibt bei {plateau} stehen.',
  'questions.free-since.x': 'Runden',
  'questions.free-since.y': 'Wahrscheinlichkeit, frei zu sein',
  'questions.free-since.takes.level': 'Frei heißt: unter dem Befall, den die Runden finden sollten, nicht: gar keiner.',
  'questions.free-since.takes.negative': 'Keine Runde hat etwas gefunden. Ein bestätigter Fund beendet die Reihe.',
  'questions.free-since.takes.independent':
    'Jede Runde steht für sich, findet gleich gut, und was hereinkommt, kommt gleichmäßig. Eine ausgefallene Runde zählt wie eine, die nichts finden kann.',

  'questions.do-two-agree': 'Stimmen zwei Sachverständige überein?',
  'questions.do-two-agree.about':
    'Zwei Personen oder zwei Tests haben dieselben Völker beurteilt, ohne voneinander zu wissen.',
  'questions.do-two-agree.groups': 'Was liegt vor?',
  'questions.do-two-agree.groups.one': 'Eine Gruppe von Völkern: Stimmen sie überein?',
  'questions.do-two-agree.groups.two': 'Zwei Gruppen, eine mit viel mehr Befall: Wie gut ist jeder?',
  'questions.do-two-agree.both': 'Beide: befallen',
  'questions.do-two-agree.firstOnly': 'Nur der erste',
  'questions.do-two-agree.secondOnly': 'Nur der zweite',
  'questions.do-two-agree.neither': 'Keiner von beiden',
  'questions.do-two-agree.both2': 'Zweite Gruppe, beide: befallen',
  'questions.do-two-agree.firstOnly2': 'Zweite Gruppe: nur der erste',
  'questions.do-two-agree.secondOnly2': 'Zweite Gruppe: nur der zweite',
  'questions.do-two-agree.neither2': 'Zweite Gruppe: keiner von beiden',
  'questions.do-two-agree.says.kappa':
    'Sie stimmen bei {agreed} von {all} überein ({observed}); über den Zufall hinaus beträgt die Übereinstimmung (Kappa) {kappa}, zwischen {lower} und {upper}.',
  'questions.do-two-agree.says.kappa-alone':
    'Sie stimmen bei {agreed} von {all} überein ({observed}); über den Zufall hinaus beträgt die Übereinstimmung (Kappa) {kappa}. Ein Bereich lässt sich hier für Kappa nicht berechnen: siehe die zweite Zahl.',
  'questions.do-two-agree.says.chance':
    'Rein zufällig stimmten sie bei {expected} überein. Um die Seltenheit berichtigt (PABAK): {pabak}, zwischen {lower} und {upper}.',
  'questions.do-two-agree.says.one-answer':
    'Sie stimmen bei {agreed} von {all} überein ({observed}). Alles bekam dieselbe Antwort; ob das mehr als Zufall ist, lässt sich nicht sagen.',
  'questions.do-two-agree.says.two':
    'Der erste findet etwa {first} der befallenen Völker, der zweite {second}; von den nicht befallenen lässt der erste {firstRight} in Ruhe, der zweite {secondRight}.',
  'questions.do-two-agree.refuses.empty': 'Eine Gruppe ist leer. In jeder muss mindestens ein Volk gezählt sein.',
  'questions.do-two-agree.x': 'Übereinstimmung über den Zufall hinaus',
  'questions.do-two-agree.x.share': 'Anteil der Völker',
  'questions.do-two-agree.row.kappa': 'Kappa',
  'questions.do-two-agree.row.pabak': 'PABAK',
  'questions.do-two-agree.row.first-finds': 'Erster findet befallene',
  'questions.do-two-agree.row.second-finds': 'Zweiter findet befallene',
  'questions.do-two-agree.row.first-right': 'Erster lässt andere in Ruhe',
  'questions.do-two-agree.row.second-right': 'Zweiter lässt andere in Ruhe',
  'questions.do-two-agree.row.group-one': 'Befallen, erste Gruppe',
  'questions.do-two-agree.row.group-two': 'Befallen, zweite Gruppe',
  'questions.do-two-agree.takes.same':
    'Beide haben dieselben Völker am selben Tag beurteilt, jeder ohne das Urteil des anderen zu kennen.',
  'questions.do-two-agree.takes.rare':
    'Kappa sinkt, wo fast kein Volk etwas zeigt, auch wenn die beiden kaum je verschieden urteilen. Ein Wort wie „gut“ steht hier deshalb nicht dabei.',
  'questions.do-two-agree.takes.same-eye': 'Jeder urteilt in beiden Gruppen gleich gut.',
  'questions.do-two-agree.takes.independent':
    'Irrt der eine, so irrt der andere deshalb nicht eher. Suchen beide dasselbe Anzeichen, gilt das nicht, und beide erscheinen zu gut.',
  'questions.do-two-agree.takes.differ':
    'Der Befall ist in den Gruppen verschieden, und beide haben öfter recht als eine Münze. Die Balken sind Mittelwert und zwei Standardabweichungen.',

  'questions.laboratory-number': 'Was bedeutet diese Zahl des Labors?',
  'questions.laboratory-number.about':
    'Gelesen nach den Grenzwerten des Labors, das sie gemeldet hat. Andere gibt es nicht: Keine ließen sich bestätigen.',
  'questions.laboratory-number.report': 'Der Befund lautet',
  'questions.laboratory-number.report.load': 'eine Keimzahl',
  'questions.laboratory-number.report.plates': 'gezählte Kolonien auf Platten',
  'questions.laboratory-number.report.positive': 'positiv',
  'questions.laboratory-number.report.negative': 'negativ',
  'questions.laboratory-number.load': 'Gemeldete Keimzahl',
  'questions.laboratory-number.lower': 'Von, wenn im Befund angegeben',
  'questions.laboratory-number.upper': 'Bis, wenn im Befund angegeben',
  'questions.laboratory-number.plates': 'Die Platten',
  'questions.laboratory-number.plates.hint':
    'Je Zeile eine: Verdünnung (1 für unverdünnt, 1:100 oder 0,01), ausgestrichene Milliliter, gezählte Kolonien; „-“ für nicht zählbar viele.',
  'questions.laboratory-number.suspension': 'Suspension mit der ganzen Probe, ml',
  'questions.laboratory-number.amount': 'Probe darin: Gramm, Bienen oder Milliliter',
  'questions.laboratory-number.parts': 'Zusammengelegte Proben, falls gepoolt',
  'questions.laboratory-number.parts.hint': 'Etwa Proben mehrerer Völker zu gleichen Teilen.',
  'questions.laboratory-number.confidence': 'Gewünschte Sicherheit des Bereichs',
  'questions.laboratory-number.unit': 'Koloniebildende Einheiten je',
  'questions.laboratory-number.unit.g': 'Gramm',
  'questions.laboratory-number.unit.bee': 'Biene',
  'questions.laboratory-number.unit.ml': 'Milliliter',
  'questions.laboratory-number.laboratory': 'Labor',
  'questions.laboratory-number.method': 'Verfahren, wie im Befund genannt',
  'questions.laboratory-number.material': 'Probenart, wie im Befund genannt',
  'questions.laboratory-number.statedOn': 'Seine Grenzwerte angegeben am',
  'questions.laboratory-number.source': 'Wo seine Grenzwerte stehen',
  'questions.laboratory-number.source.hint': 'Keine Personen nennen: Alle dürfen es lesen.',
  'questions.laboratory-number.countLowest': 'Kolonien je Platte, die es zählt: von',
  'questions.laboratory-number.countLowest.hint': 'Nur, wenn das Labor es angibt. Sonst gilt jede gezählte Platte.',
  'questions.laboratory-number.countHighest': 'Kolonien je Platte, die es zählt: bis',
  'questions.laboratory-number.classes': 'Seine Klassen',
  'questions.laboratory-number.classes.hint':
    'Eine je Zeile: die kleinste Keimzahl, dann das Wort des Labors. Die erste beginnt bei 0.',
  'questions.laboratory-number.priorLow': 'Wahrscheinlichkeit des Befalls vor dem Test: von',
  'questions.laboratory-number.priorLow.hint': 'Für ein Volk wie dieses, hier und jetzt. Kein Wert veröffentlicht.',
  'questions.laboratory-number.priorHigh': 'Wahrscheinlichkeit des Befalls vor dem Test: bis',
  'questions.laboratory-number.sensitivityLow': 'Befallene Völker, die der Test findet: von',
  'questions.laboratory-number.sensitivityLow.hint': 'Vom Labor oder aus einer Studie. Nichts ist vorgegeben.',
  'questions.laboratory-number.sensitivityHigh': 'Befallene Völker, die der Test findet: bis',
  'questions.laboratory-number.specificityLow': 'Nicht befallene, die er in Ruhe lässt: von',
  'questions.laboratory-number.specificityLow.hint': 'Genau 100 % hieße: nie ein Fehlalarm.',
  'questions.laboratory-number.specificityHigh': 'Nicht befallene, die er in Ruhe lässt: bis',
  'questions.laboratory-number.says.no-limits':
    '{load} je {unit} in „{material}“ ist nur eine Zahl: Von diesem Labor sind hier keine Grenzwerte angegeben, und andere, nach denen sie zu lesen wäre, gibt es nicht.',
  'questions.laboratory-number.says.classed': '{load} je {unit} heißt nach den Grenzwerten von {laboratory} „{name}“.',
  'questions.laboratory-number.says.not-certain':
    '{load} je {unit} fällt nicht sicher in eine einzige Klasse von {laboratory}: Der Bereich berührt {names}.',
  'questions.laboratory-number.says.from': 'Grenzwerte von {laboratory}, angegeben am {day}; nachzulesen in: {source}.',
  'questions.laboratory-number.says.no-proof': 'Sie beweist keinen Befall des Volkes und schließt keinen aus.',
  'questions.laboratory-number.says.plates.counted':
    '{load} koloniebildende Einheiten je {unit}, mit {confidence} Sicherheit zwischen {lower} und {upper}: {colonies, plural, one {# Kolonie} other {# Kolonien}} auf {plates, plural, one {einer Platte} other {# Platten}}.',
  'questions.laboratory-number.says.plates.below-counting-range':
    'Etwa {load} koloniebildende Einheiten je {unit}, zwischen {lower} und {upper}: nur geschätzt, denn keine Platte erreicht die Zahl, ab der das Labor zählt ({colonies, plural, one {# Kolonie} other {# Kolonien}} auf {plates, plural, one {einer Platte} other {# Platten}}).',
  'questions.laboratory-number.says.plates.none-grown':
    'Auf {plates, plural, one {der Platte} other {# Platten}} ist nichts gewachsen: mit {confidence} Sicherheit sind es höchstens {upper} koloniebildende Einheiten je {unit}. Das ist nicht null.',
  'questions.laboratory-number.says.plates.too-many-to-count':
    'Auf allen Platten nicht zählbar viele: mindestens {lower} koloniebildende Einheiten je {unit}. Um eine höhere Verdünnung bitten.',
  'questions.laboratory-number.says.plates.too-many-unknown':
    'Auf allen Platten nicht zählbar viele, und die höchste Zahl, die das Labor zählt, ist nicht angegeben: Daraus folgt kein Wert. Um eine höhere Verdünnung bitten.',
  'questions.laboratory-number.says.plates.left-out':
    '{count, plural, one {# Platte blieb} other {# Platten blieben}} außen vor: außerhalb dessen, was das Labor zählt.',
  'questions.laboratory-number.says.plates.limit':
    'Eine einzige Kolonie auf allen Platten zusammen bedeutet {limit} je {unit}: Weniger zeigt sich nicht.',
  'questions.laboratory-number.says.plates.pool':
    'In einem Pool aus {parts} muss eine einzelne positive Probe mindestens {least} je {unit} enthalten, damit sich eine Kolonie zeigt.',
  'questions.laboratory-number.says.plates.pool-one':
    'Käme alles aus einer der {parts}, enthielte diese etwa {most} je {unit}.',
  'questions.laboratory-number.says.plates.no-limits':
    'Das ist nur eine Zahl: Grenzwerte dieses Labors sind hier nicht angegeben, und andere, nach denen man sie lesen könnte, gibt es nicht.',
  'questions.laboratory-number.says.positive':
    'Nach einem positiven Befund liegt die Wahrscheinlichkeit des Befalls zwischen {low} und {high}; davor waren es {before} bis {beforeHigh}.',
  'questions.laboratory-number.says.negative':
    'Nach einem negativen Befund liegt die Wahrscheinlichkeit des Befalls zwischen {low} und {high}; davor waren es {before} bis {beforeHigh}.',
  'questions.laboratory-number.refuses.around': 'Der Bereich muss die Keimzahl einschließen. Die drei Zahlen ansehen.',
  'questions.laboratory-number.refuses.plates':
    'Die Platten sind nicht lesbar. Je Zeile: Verdünnung (höchstens 1), Milliliter, Kolonien (oder „-“), etwa 1:100 0,1 37.',
  'questions.laboratory-number.refuses.counting':
    '„Von“ ist größer als „bis“. Beide Zahlen der Kolonien je Platte ansehen.',
  'questions.laboratory-number.refuses.classes':
    'Die Klassen lassen sich nicht lesen. Eine je Zeile, erst die Zahl, dann das Wort; die erste ab 0, jede weitere höher.',
  'questions.laboratory-number.refuses.order': 'Ein „von“ liegt über seinem „bis“. Die sechs Zahlen ansehen.',
  'questions.laboratory-number.refuses.impossible':
    'Mit diesen Werten könnte es einen solchen Befund nicht geben. Die Enden bei 0 und 100 % ansehen.',
  'questions.laboratory-number.x.g': 'Koloniebildende Einheiten je Gramm',
  'questions.laboratory-number.x.bee': 'Koloniebildende Einheiten je Biene',
  'questions.laboratory-number.x.ml': 'Koloniebildende Einheiten je Milliliter',
  'questions.laboratory-number.x.chance': 'Wahrscheinlichkeit des Befalls',
  'questions.laboratory-number.row.load': 'Dieser Befund',
  'questions.laboratory-number.row.plates': 'Diese Platten',
  'questions.laboratory-number.row.class': '„{name}“',
  'questions.laboratory-number.row.before': 'Vor dem Test',
  'questions.laboratory-number.row.after': 'Nach dem Befund',
  'questions.laboratory-number.takes.own-limits':
    'Es zählen nur die Grenzwerte des meldenden Labors, für sein eigenes Verfahren und seine Probenart, wie an jenem Tag angegeben.',
  'questions.laboratory-number.takes.plates':
    'Kolonien verteilen sich nur zufällig auf die Platten, und jede wuchs aus einer Einheit. Platten, die das Labor zählt, werden nach der Probenmenge gewichtet, die auf ihnen liegt.',
  'questions.laboratory-number.takes.germinate':
    'Nur ein Teil der Sporen bildet Kolonien (oft heißt es: weniger als eine von zehn, aus der Erinnerung): Gezählt sind Kolonien, nicht Sporen.',
  'questions.laboratory-number.takes.pool': 'Die Proben eines Pools sind gleiche Teile, gut gemischt.',
  'questions.laboratory-number.takes.no-proof':
    'Keine einzelne Keimzahl zeigt die Krankheit an: Die Anzeichen am Volk entscheiden, und das Recht.',
  'questions.laboratory-number.takes.no-conversion': 'Honig, Bienen und Gemüll werden nie ineinander umgerechnet.',
  'questions.laboratory-number.takes.bands':
    'Jeder Wert kann irgendwo in seinem Bereich liegen; die Antwort ist der weiteste, der daraus folgt. Sie bestätigt keinen Fall.',

  'questions.burn-and-bury': 'Was brauche ich zum Vernichten oder Entseuchen?',
  'questions.burn-and-bury.about':
    'Genehmigung, Feuerverbot, Grundwasser und örtliches Recht entscheiden. Wo kein Wert veröffentlicht ist, wird gefragt und nie etwas vorgegeben.',
  'questions.burn-and-bury.way': 'Was geschehen soll',
  'questions.burn-and-bury.way.burn': 'Verbrennen und vergraben',
  'questions.burn-and-bury.way.scorch': 'Zargen ausflammen',
  'questions.burn-and-bury.way.hot wax': 'In heißes Wachs tauchen',
  'questions.burn-and-bury.way.hypochlorite': 'Bad mit Hypochlorit (Bleichlauge)',
  'questions.burn-and-bury.way.caustic': 'Bad mit Natronlauge',
  'questions.burn-and-bury.way.irradiate': 'Zum Bestrahlen geben',
  'questions.burn-and-bury.beesDead': 'Sind die Bienen tot?',
  'questions.burn-and-bury.beesDead.yes': 'Ja, nachgesehen',
  'questions.burn-and-bury.beesDead.no': 'Nein oder nicht sicher',
  'questions.burn-and-bury.hives': 'Zu verbrennende Beuten',
  'questions.burn-and-bury.length': 'Eine Beute, außen: Länge',
  'questions.burn-and-bury.length.hint': 'Gemessen, mit Boden und Deckel.',
  'questions.burn-and-bury.width': 'Eine Beute, außen: Breite',
  'questions.burn-and-bury.height': 'Eine Beute, außen: Höhe',
  'questions.burn-and-bury.pitWidth': 'Breite der Grube',
  'questions.burn-and-bury.pitWidth.hint':
    'Kein Wert veröffentlicht: wie Bagger und Boden es erlauben oder wie angeordnet.',
  'questions.burn-and-bury.stacking': 'Stapelhöhe in der Grube',
  'questions.burn-and-bury.stacking.hint': 'Kein Wert veröffentlicht.',
  'questions.burn-and-bury.remains': 'Höhe dessen, was übrig bleibt',
  'questions.burn-and-bury.remains.hint': 'Kein Wert veröffentlicht. Vor dem Verfüllen messen.',
  'questions.burn-and-bury.cover': 'Erde über den Resten',
  'questions.burn-and-bury.cover.hint':
    'Nach der örtlichen Regel. Die einzige veröffentlichte: Kalifornien verlangt mindestens 2 Fuß, 0,61 m.',
  'questions.burn-and-bury.fuel': 'Womit das Feuer genährt wird',
  'questions.burn-and-bury.fuel.hint': 'Niemals Benzin.',
  'questions.burn-and-bury.fuel.comb wax alone': 'Nur das Wachs der Waben',
  'questions.burn-and-bury.fuel.dry wood': 'Trockenes Holz',
  'questions.burn-and-bury.fuel.straw': 'Stroh',
  'questions.burn-and-bury.fuel.charcoal': 'Holzkohle',
  'questions.burn-and-bury.fuelPerHive': 'Brennstoff für eine Beute',
  'questions.burn-and-bury.fuelPerHive.hint': 'Kein Wert veröffentlicht: aus eigener Erfahrung.',
  'questions.burn-and-bury.atOnce': 'Beuten auf einem Feuer',
  'questions.burn-and-bury.hoursPerFire': 'Ein Feuer, bis nichts mehr glüht',
  'questions.burn-and-bury.hoursPerFire.hint': 'Kein Wert veröffentlicht: aus eigener Erfahrung.',
  'questions.burn-and-bury.others': 'Weitere Teile anderer Größe',
  'questions.burn-and-bury.others.hint':
    'Je Zeile eine Größe: Anzahl, dann Länge, Breite und Höhe in cm, etwa 6 50 40 24.',
  'questions.burn-and-bury.accepted': 'Ist Ausflammen hier anerkannt?',
  'questions.burn-and-bury.accepted.hint':
    'Nach Anordnung oder Recht dieses Ortes. Mancherorts ja, andernorts gilt es als nicht sicher genug.',
  'questions.burn-and-bury.accepted.yes': 'Ja, es ist anerkannt',
  'questions.burn-and-bury.accepted.no': 'Nein oder nicht sicher',
  'questions.burn-and-bury.cleanAndDry': 'Ist das Holz gründlich abgekratzt und trocken?',
  'questions.burn-and-bury.cleanAndDry.yes': 'Ja',
  'questions.burn-and-bury.cleanAndDry.no': 'Nein oder nicht sicher',
  'questions.burn-and-bury.cleaned': 'Vor dem Bad abgekratzt und gewaschen?',
  'questions.burn-and-bury.cleaned.yes': 'Ja',
  'questions.burn-and-bury.cleaned.no': 'Nein oder nicht sicher',
  'questions.burn-and-bury.freeOfHoney': 'Frei von Bienen und Honig, außen gewaschen, doppelt verpackt?',
  'questions.burn-and-bury.freeOfHoney.yes': 'Ja',
  'questions.burn-and-bury.freeOfHoney.no': 'Nein oder nicht sicher',
  'questions.burn-and-bury.item': 'Was getaucht wird',
  'questions.burn-and-bury.item.hint':
    'Rähmchen werden verbrannt, Hartfaserplatten verbrannt oder bestrahlt (Westaustralien 2022).',
  'questions.burn-and-bury.item.boxes': 'Zargen',
  'questions.burn-and-bury.item.wooden floors': 'Holzböden',
  'questions.burn-and-bury.item.wooden lids': 'Holzdeckel',
  'questions.burn-and-bury.boxes': 'Zargen oder Teile insgesamt',
  'questions.burn-and-bury.minutesPerBox': 'Zeit für eine Zarge',
  'questions.burn-and-bury.minutesPerBox.hint': 'Kein Wert veröffentlicht: aus eigener Erfahrung.',
  'questions.burn-and-bury.piecesPerDip': 'Teile je Tauchgang',
  'questions.burn-and-bury.celsius': 'Temperatur des Wachses, mit den Teilen darin',
  'questions.burn-and-bury.celsius.hint':
    'Unter 160 °C wirkt es nicht, über 175 °C kann der Dampf brennen (Westaustralien 2022).',
  'questions.burn-and-bury.dipMinutes': 'Dauer jedes Tauchgangs',
  'questions.burn-and-bury.dipMinutes.hint': 'Mindestens 10 Minuten (Westaustralien 2022).',
  'questions.burn-and-bury.vatLitres': 'Wachs, das den Kessel füllt',
  'questions.burn-and-bury.tankLength': 'Wanne innen: Länge',
  'questions.burn-and-bury.tankWidth': 'Wanne innen: Breite',
  'questions.burn-and-bury.liquidDepth': 'Tiefe der Flüssigkeit, mit den Teilen darin',
  'questions.burn-and-bury.displaced': 'Raum, den die Teile einnehmen',
  'questions.burn-and-bury.displaced.hint': '0 lässt einen Vorrat.',
  'questions.burn-and-bury.stockPercent': 'Stärke der Bleichlauge im Kanister, %',
  'questions.burn-and-bury.stockPercent.hint': 'Vom frischen Etikett: Bleichlauge wird beim Lagern schwächer.',
  'questions.burn-and-bury.wantedPercent': 'Stärke des Bades, %',
  'questions.burn-and-bury.wantedPercent.hint':
    'Die Anleitungen gehen auseinander: 0,5 für 20 Minuten (England und Wales), 1 für 20 Minuten (Polen), 5 und danach kochendes Wasser (Westaustralien, Metallböden). Die örtliche entscheidet.',
  'questions.burn-and-bury.bathMinutes': 'Dauer des Bades',
  'questions.burn-and-bury.bathMinutes.hint':
    'Nach örtlicher Anleitung. Für Natronlauge fand sich kein amtlicher Wert; Imker nennen 15 Minuten, kochend (übliche Praxis, ohne Quelle).',
  'questions.burn-and-bury.gramsPerLitre': 'Ätznatron, Gramm je Liter',
  'questions.burn-and-bury.gramsPerLitre.hint':
    'Kein amtlicher Wert gefunden. Imker nennen 12 (übliche Praxis, ohne Quelle).',
  'questions.burn-and-bury.boxesPerUnit': 'Zargen je verpacktem Packstück',
  'questions.burn-and-bury.boxKilograms': 'Gewicht einer Zarge, verpackt',
  'questions.burn-and-bury.boxKilograms.hint': 'Ein Packstück darf höchstens 25 kg wiegen (Westaustralien 2022).',
  'questions.burn-and-bury.unitHeight': 'Höhe eines Packstücks',
  'questions.burn-and-bury.unitsPerLayer': 'Packstücke je Lage einer Palette',
  'questions.burn-and-bury.leastDose': 'Verlangte Mindestdosis, kGy',
  'questions.burn-and-bury.leastDose.hint':
    'Nach dem Recht des Ortes: Die Angaben gehen auseinander, deshalb ist keine vorgegeben. Florida verlangt 20.',
  'questions.burn-and-bury.deliveredDose': 'Abgegebene Mindestdosis, kGy',
  'questions.burn-and-bury.deliveredDose.hint':
    'Aus der Bescheinigung des Betreibers, sobald sie da ist. Nie die bestellte Dosis.',
  'questions.burn-and-bury.says.pit':
    'Eine Grube von {length} m Länge, {width} m Breite und {depth} m Tiefe fasst {hives, plural, one {# Beute} other {# Beuten}} ({volume} m³): {soil} m³ Erde sind zu bewegen.',
  'questions.burn-and-bury.says.fire':
    '{kilograms} kg Brennstoff ({fuel}), {fires, plural, one {ein Feuer} other {# Feuer nacheinander}}, etwa {hours} Stunden, in denen jemand dabeibleibt.',
  'questions.burn-and-bury.says.fire-wax':
    'Kein Brennstoff außer den Waben, {fires, plural, one {ein Feuer} other {# Feuer nacheinander}}, etwa {hours} Stunden, in denen jemand dabeibleibt.',
  'questions.burn-and-bury.says.scorch':
    '{boxes, plural, one {# Zarge braucht} other {# Zargen brauchen}} etwa {minutes} Minuten Flamme.',
  'questions.burn-and-bury.says.dips':
    '{dips, plural, one {Ein Tauchgang} other {# Tauchgänge}} für {pieces, plural, one {# Teil} other {# Teile}}: zusammen {minutes} Minuten im Wachs, das Wechseln nicht gerechnet.',
  'questions.burn-and-bury.says.wax':
    'Die erste Füllung: {microcrystalline} l mikrokristallines Wachs und {paraffin} l festes Paraffinwachs.',
  'questions.burn-and-bury.says.heat':
    'Gemessen in Wachs von 150 °C lässt ein so langer Tauchgang eine Spore von 10 hoch {low} bis {high} übrig.',
  'questions.burn-and-bury.says.bleach':
    '{stock} l Bleichlauge und {water} l Wasser: {parts} Teile Wasser auf einen Teil Bleichlauge.',
  'questions.burn-and-bury.says.meets.none':
    'Stärke und Dauer erfüllen keine hier bekannte Anleitung. Die Behörde fragen.',
  'questions.burn-and-bury.says.meets.england':
    'Es erfüllt die Anleitung für England und Wales, für gereinigte Flächen; danach abspülen.',
  'questions.burn-and-bury.says.meets.poland': 'Es erfüllt die Anleitung für Polen.',
  'questions.burn-and-bury.says.meets.australia':
    'Es erreicht die Stärke der westaustralischen für Metallböden; die kommen danach über 10 Minuten in kochendes Wasser.',
  'questions.burn-and-bury.says.caustic':
    '{kilograms} kg Ätznatron in {litres} l kaltes Wasser ergeben {percent} %; {minutes} Minuten darin.',
  'questions.burn-and-bury.says.caustic-only-cleans':
    'Es reinigt. Es befreit Geräte nicht von Sporen und beweist nichts.',
  'questions.burn-and-bury.says.consignment':
    '{units, plural, one {Ein Packstück} other {# Packstücke}} zu höchstens {each} kg auf {pallets, plural, one {einer Palette} other {# Paletten}}, zusammen {kilograms} kg.',
  'questions.burn-and-bury.says.dose-waits':
    'Verlangt sind mindestens {asked} kGy. Ob sie erreicht sind, sagt die Bescheinigung.',
  'questions.burn-and-bury.says.dose-reached': 'Die abgegebenen {delivered} kGy erreichen die verlangten {asked}.',
  'questions.burn-and-bury.says.dose-missed':
    'Die abgegebenen {delivered} kGy erreichen die verlangten {asked} nicht: noch einmal behandeln oder die Behörde fragen.',
  'questions.burn-and-bury.says.dose':
    'Gemessen auf Glas lassen {dose} kGy eine Spore von 10 hoch {log} übrig; Honig und Dichte schirmen ab.',
  'questions.burn-and-bury.refuses.alive':
    'Solange Bienen leben, wird nichts verbrannt. Sie werden zuerst getötet, mit Mitteln, die die Behörde erlaubt.',
  'questions.burn-and-bury.refuses.pieces':
    'Die weiteren Teile sind nicht lesbar. Je Zeile eine Größe: Anzahl, Länge, Breite, Höhe, etwa 6 50 40 24.',
  'questions.burn-and-bury.refuses.does-not-fit':
    'Das größte Teil geht nicht in eine Grube dieser Breite, gestapelt bis zu dieser Höhe. Breiter graben oder höher stapeln.',
  'questions.burn-and-bury.refuses.not-accepted':
    'Wo Ausflammen nicht anerkannt ist, wird nicht ausgeflammt. Die Behörde fragen, was gilt.',
  'questions.burn-and-bury.refuses.wet':
    'Nichts Nasses oder Schmutziges kommt in heißes Wachs: Es kocht über. Erst abkratzen und trocknen.',
  'questions.burn-and-bury.refuses.dirty': 'Schmutz verbraucht die Bleichlauge. Erst abkratzen und waschen.',
  'questions.burn-and-bury.refuses.honey':
    'Mit Bienen oder Honig wird nichts weggegeben: Honig schirmt Sporen ab und läuft aus. Erst säubern und verpacken.',
  'questions.burn-and-bury.refuses.too-heavy':
    'Ein Packstück darf höchstens 25 kg wiegen. Weniger Zargen zusammenpacken.',
  'questions.burn-and-bury.refuses.displaced':
    'Die Teile nehmen mehr Raum ein, als die Wanne bis zu dieser Tiefe fasst. Die vier Maße ansehen.',
  'questions.burn-and-bury.refuses.too-strong':
    'Das Bad kann nicht stärker sein als die Bleichlauge im Kanister. Beide Stärken ansehen.',
  'questions.burn-and-bury.x': 'Breite der Grube',
  'questions.burn-and-bury.y': 'Länge der Grube',
  'questions.burn-and-bury.x.dip': 'Dauer jedes Tauchgangs',
  'questions.burn-and-bury.x.dose': 'Dosis, kGy',
  'questions.burn-and-bury.x.strength': 'Stärke des Bades, %',
  'questions.burn-and-bury.y.dip': 'Zehnerpotenzen getöteter Sporen, mindestens',
  'questions.burn-and-bury.y.dose': 'Zehnerpotenzen getöteter Sporen, auf Glas',
  'questions.burn-and-bury.y.strength': 'Bleichlauge für diese Wanne',
  'questions.burn-and-bury.takes.geometry':
    'Nur Geometrie: ganze Teile nach Außenmaßen, in Reihen und Lagen; schräge Wände und Aushub brauchen mehr Platz.',
  'questions.burn-and-bury.takes.chosen': 'Brennstoff und Zeit sind Ihre eigenen Werte, malgenommen.',
  'questions.burn-and-bury.takes.takes-all':
    'Die Grube fasst alles, was übrig ist, mit Honig und Asche, und die Erde deckt es zu.',
  'questions.burn-and-bury.takes.chosen-time': 'Die Zeit für eine Zarge ist der eigene Wert, vervielfacht.',
  'questions.burn-and-bury.takes.scorch': 'Kalifornien erkennt das Ausflammen von Zargen an; überall gilt das nicht.',
  'questions.burn-and-bury.takes.hot-wax':
    'Halb mikrokristallines, halb Paraffinwachs. Der Wert für Sporen wurde in Bienenwachs bei 150 °C gemessen; das Wachs hier ist heißer.',
  'questions.burn-and-bury.takes.not-dipped': 'Rähmchen und Hartfaserplatten werden nicht getaucht.',
  'questions.burn-and-bury.takes.bleach':
    'Gereinigte, glatte Flächen, ganz unter der Flüssigkeit. Holz saugt die Bleichlauge auf und bleibt zweifelhaft.',
  'questions.burn-and-bury.takes.guidances':
    'Stärken verschiedener Anleitungen stehen nebeneinander und werden nicht gemittelt.',
  'questions.burn-and-bury.takes.caustic': 'Stärke und Dauer sind eigene Werte: Ein amtlicher fand sich nicht.',
  'questions.burn-and-bury.takes.dose':
    'Es zählt die niedrigste Dosis in der Ladung. Je 0,2 kGy bleibt eine Spore von zehn übrig, gemessen auf Glas.',
  'questions.burn-and-bury.takes.pallet': 'Eine Palette trägt höchstens 1.000 kg und bleibt unter 2 m.',
  'questions.when-laid': 'Wann wurde diese Zelle bestiftet, wann schlüpft sie?',
  'questions.when-laid.about': 'Nach dem, was an einem Tag in einer Zelle zu sehen ist.',
  'questions.when-laid.caste': 'Was für eine Zelle?',
  'questions.when-laid.caste.worker': 'Arbeiterinnenzelle',
  'questions.when-laid.caste.drone': 'Drohnenzelle',
  'questions.when-laid.caste.queen': 'Weiselzelle',
  'questions.when-laid.stage': 'Was ist darin?',
  'questions.when-laid.stage.egg': 'Ein Stift',
  'questions.when-laid.stage.open larva': 'Eine Made, die Zelle offen',
  'questions.when-laid.stage.capped': 'Verdeckelt, nicht geöffnet',
  'questions.when-laid.stage.coiled larva': 'Eine Rundmade (Arbeiterin)',
  'questions.when-laid.stage.stretched larva': 'Eine Streckmade (Arbeiterin)',
  'questions.when-laid.stage.prepupa': 'Verdeckelt: Streckmade, noch keine Puppe (Arbeiterin)',
  'questions.when-laid.stage.pupa': 'Verdeckelt: eine Puppe (Arbeiterin)',
  'questions.when-laid.seenOn': 'Gesehen am',
  'questions.when-laid.says.laid': 'Bestiftet zwischen {from} und {to}.',
  'questions.when-laid.says.emerges': 'Sie schlüpft zwischen {from} und {to}.',
  'questions.when-laid.says.capped': 'Verdeckelt zwischen {from} und {to}.',
  'questions.when-laid.refuses.worker-only':
    'So viel ist nur von Arbeiterinnenzellen bekannt. Stift, offene Made oder verdeckelt wählen.',
  'questions.when-laid.x': 'Tage ab dem Tag der Beobachtung',
  'questions.when-laid.row.laid': 'Bestiftet',
  'questions.when-laid.row.hatches': 'Made schlüpft aus dem Ei',
  'questions.when-laid.row.capped': 'Verdeckelt',
  'questions.when-laid.row.emerges': 'Biene schlüpft',
  'questions.when-laid.takes.mean':
    'Mittlere Tage warm gehaltener Brut. Ausgekühlte braucht länger (aus der Erinnerung); eine späte Zelle kann etwas außerhalb liegen.',
  'questions.when-laid.takes.stage':
    'Ein Blick zeigt das Stadium, nicht die Stunde: Darum ist jeder Zeitpunkt eine Spanne, auf ganze Tage nach außen.',
  'questions.earliest-sign': 'Wann zeigt sich eine Ansteckung frühestens?',
  'questions.earliest-sign.about':
    'Amerikanische Faulbrut: ab wann eine Durchsicht diese Ansteckung überhaupt zeigen kann. Einen letzten Tag gibt es nicht.',
  'questions.earliest-sign.exposedOn': 'Tag, an dem Sporen hereingekommen sein können',
  'questions.earliest-sign.says.dead':
    'Die erste tote Brut zeigt sich nach einem Versuch frühestens zwischen {from} und {to}; eine Durchsicht davor kann diese Ansteckung nicht zeigen.',
  'questions.earliest-sign.says.published':
    'Eine andere veröffentlichte Angabe: Anzeichen etwa 12,5 Tage nach der Fütterung mit Sporen, am {from} oder {to}.',
  'questions.earliest-sign.says.rope': 'Was zuerst gestorben ist, kann bis {to} Fäden ziehen.',
  'questions.earliest-sign.says.scale': 'Der erste fertige Schorf ist frühestens zwischen {from} und {to} da.',
  'questions.earliest-sign.says.no-end':
    'Eine spätere Durchsicht ohne Befund beendet die Sache nicht: Sporen überdauern in Vorräten über Jahre.',
  'questions.earliest-sign.x': 'Tage nach der Ansteckung',
  'questions.earliest-sign.row.dead': 'Erste tote Brut',
  'questions.earliest-sign.row.published': 'Anzeichen, wie veröffentlicht',
  'questions.earliest-sign.row.all-dead': 'An dem Tag angesteckte Maden alle tot',
  'questions.earliest-sign.row.rope': 'Erste Reste ziehen Fäden bis',
  'questions.earliest-sign.row.scale': 'Erster fertiger Schorf',
  'questions.earliest-sign.takes.very-day':
    'Gerechnet, als wäre an genau diesem Tag eine genügend junge Made mit Sporen gefüttert worden.',
  'questions.earliest-sign.takes.no-end':
    'Jeder Tag hier ist ein frühester, zwischen zwei Enden; keiner ist ein letzter.',
  'questions.this-season': 'Kann dieser Fall noch in dieser Saison aufgehoben werden?',
  'questions.this-season.about':
    'Wann die Brut endet, und ob die verlangten Nachschauen noch Brut zum Beurteilen finden. Nur der Kalender.',
  'questions.this-season.countedFrom': 'Tag, ab dem das Recht zählt',
  'questions.this-season.countedFrom.hint': 'Etwa der Tag der Tötung oder der Behandlung.',
  'questions.this-season.firstLookAfterDays': 'Tage bis zur ersten Nachschau',
  'questions.this-season.firstLookAfterDays.hint': 'Nach dem Recht des Ortes. Nichts ist vorgegeben.',
  'questions.this-season.looks': 'Verlangte Nachschauen ohne Anzeichen',
  'questions.this-season.daysBetweenLooks': 'Tage von Nachschau zu Nachschau, mindestens',
  'questions.this-season.lastEggsOn': 'Letzter Tag mit frischen Stiften in dieser Saison',
  'questions.this-season.lastEggsOn.hint': 'Kein Wert veröffentlicht: nach diesem Volk, gesehen oder erwartet.',
  'questions.this-season.firstEggsOn': 'Erster Tag mit Stiften in der nächsten Saison, falls bekannt',
  'questions.this-season.says.yes':
    'Ja, nach dem Kalender: {looks, plural, one {Die Nachschau findet} other {Alle # Nachschauen finden}} in dieser Saison Brut; die letzte ist nicht vor dem {day}.',
  'questions.this-season.says.next':
    'Nicht in dieser Saison: Die letzte Nachschau ist nicht vor dem {day}, wenn wieder Brut da ist.',
  'questions.this-season.says.no':
    'Nicht in dieser Saison: Mindestens eine Nachschau wartet auf neue Brut, und dafür ist kein Tag angegeben.',
  'questions.this-season.says.brood': 'Die offene Arbeiterinnenbrut endet am {open}, die verdeckelte am {capped}.',
  'questions.this-season.says.waits':
    '{count, plural, one {# Nachschau wartet} other {# Nachschauen warten}} auf die Brut der nächsten Saison.',
  'questions.this-season.says.authority':
    'Wie viele Nachschauen, wann und in welchem Abstand, sagt das Recht; aufheben kann die Behörde, nicht der Kalender.',
  'questions.this-season.refuses.order':
    'Die ersten Stifte der nächsten Saison müssen nach den letzten dieser liegen. Beide Tage ansehen.',
  'questions.this-season.x': 'Tage nach dem Tag, ab dem das Recht zählt',
  'questions.this-season.row.open': 'Offene Brut',
  'questions.this-season.row.capped': 'Verdeckelte Brut',
  'questions.this-season.row.look': 'Nachschau {number}',
  'questions.this-season.takes.law':
    'Zahl und Zeiten der Nachschauen sind so, wie Sie sie nach dem Recht angegeben haben.',
  'questions.this-season.takes.brood':
    'Arbeiterinnenbrut wird 9 Tage nach dem Bestiften verdeckelt und schlüpft nach 21.',
  'questions.this-season.takes.stated':
    'Wann die Königin aufhört und wieder beginnt zu stiften, ist für keinen Ort veröffentlicht: Es gilt die Angabe.',
  'questions.colony-strength': 'Wie stark ist dieses Volk?',
  'questions.colony-strength.about':
    'Bienen nach besetzten Wabenseiten, Brut nach gefüllten. Jede Zahl zum Umrechnen wählen Sie selbst; ihr Rang steht dabei.',
  'questions.colony-strength.frame': 'Welche Rähmchen?',
  'questions.colony-strength.frame.hint':
    'Wabenfläche einer Seite. Veröffentlicht: Langstroth. Aus Listen gerechnet: British National, 14 x 12, Commercial, Dadant (britische Liste). Aus der Erinnerung: die übrigen.',
  'questions.colony-strength.frame.Langstroth deep': 'Langstroth, 871 cm²',
  'questions.colony-strength.frame.British National': 'British National, 625 cm²',
  'questions.colony-strength.frame.National 14 x 12': 'National 14 x 12, 910 cm²',
  'questions.colony-strength.frame.Commercial': 'Commercial, 800 cm²',
  'questions.colony-strength.frame.Dadant (British list)': 'Dadant (britische Liste), 966 cm²',
  'questions.colony-strength.frame.Dadant-Blatt': 'Dadant-Blatt, 1130 cm²',
  'questions.colony-strength.frame.Zander': 'Zander, 840 cm²',
  'questions.colony-strength.frame.Deutsch Normal': 'Deutsch Normal, 800 cm²',
  'questions.colony-strength.frame.measured': 'Selbst gemessen',
  'questions.colony-strength.sideArea': 'Wabenfläche einer Seite, cm²',
  'questions.colony-strength.covered': 'Mit Bienen besetzte Wabenseiten',
  'questions.colony-strength.covered.hint': 'Zusammengezählt: Eine halb besetzte Seite zählt 0,5. Früh, vor dem Flug.',
  'questions.colony-strength.beesPerArea': 'Bienen auf 1 dm², voll besetzt',
  'questions.colony-strength.beesPerArea.hint':
    'Erinnert: 125 bis 130 (Liebefelder Methode, aus der Erinnerung). Nichts ist vorgegeben.',
  'questions.colony-strength.error': 'Fehler beim Schätzen mit dem Auge',
  'questions.colony-strength.error.hint': 'Erinnert sind 15 % (aus der Erinnerung); mehr, wenn Bienen fliegen.',
  'questions.colony-strength.eggs': 'Mit Stiften gefüllte Wabenseiten',
  'questions.colony-strength.larvae': 'Mit offenen Maden gefüllte Wabenseiten',
  'questions.colony-strength.capped': 'Mit verdeckelter Brut gefüllte Wabenseiten',
  'questions.colony-strength.cellsPerArea': 'Zellen auf 1 cm² einer Seite',
  'questions.colony-strength.cellsPerArea.hint': 'Arbeiterinnenbau etwa 4, von 3,8 bis 4,4 (aus Zellweiten gerechnet).',
  'questions.colony-strength.says.bees':
    'Etwa {value} Bienen auf {covered} Wabenseiten, zwischen {low} und {high}; Flugbienen draußen nicht gezählt.',
  'questions.colony-strength.says.eggs': 'Etwa {value} Zellen mit Stiften, zwischen {low} und {high}.',
  'questions.colony-strength.says.larvae': 'Etwa {value} offene Maden, zwischen {low} und {high}.',
  'questions.colony-strength.says.capped': 'Etwa {value} verdeckelte Zellen, zwischen {low} und {high}.',
  'questions.colony-strength.says.laying':
    'So viel verdeckelte Brut kommt von etwa {rate} Eiern am Tag, bei gleichmäßiger Eilage.',
  'questions.colony-strength.says.balance.steady':
    'Stifte, Maden und verdeckelte Brut stehen etwa 1 zu 2 zu 4: gleichmäßige Eilage.',
  'questions.colony-strength.says.balance.capped-brood-missing':
    'Gemessen an den Maden ist wenig verdeckelte Brut da: Brut kann verloren sein, oder die Eilage wächst. Ein Hinweis, kein Befund.',
  'questions.colony-strength.says.balance.eggs-missing':
    'Gemessen an den Maden sind wenige Stifte da: Die Königin kann nachlassen oder fehlen, oder die Eilage endet. Ein Hinweis, kein Befund.',
  'questions.colony-strength.says.balance.growing-or-shrinking':
    'Die Stadien stehen nicht so, wie gleichmäßige Eilage sie lässt: Das Volk wächst oder schrumpft.',
  'questions.colony-strength.x': 'Anzahl',
  'questions.colony-strength.row.bees': 'Bienen auf den Waben',
  'questions.colony-strength.row.eggs': 'Stifte',
  'questions.colony-strength.row.larvae': 'Offene Maden',
  'questions.colony-strength.row.capped': 'Verdeckelte Zellen',
  'questions.colony-strength.takes.judged':
    'Flächen sind mit dem Auge geschätzt, die Bienen in Gedanken zusammengerückt.',
  'questions.colony-strength.takes.constants':
    'Andere Werte: 2.430 Bienen auf beiden Seiten einer voll besetzten Langstroth-Wabe (aus der Erinnerung); auf einer benutzten, nicht vollen Wabe 1.100 britisch und 1.400 Langstroth (veröffentlicht, 23 Völker).',
  'questions.colony-strength.takes.steady':
    'Eier am Tag sind verdeckelte Zellen durch 12 Tage; das Verhältnis gilt bei gleichmäßiger Eilage ohne Verluste, auf ein Viertel genau (übliche Praxis, ohne Quelle).',
} as const satisfies Record<keyof typeof reference, string>;
