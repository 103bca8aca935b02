/** The figures of the office, each as a question. */
export const questions = {
  'questions.all': 'Questions',
  'questions.choose': 'Choose a question on the left.',
  'questions.unknown': 'There is no question at this address. Choose one on the left.',
  'questions.inputs': 'What you state',
  'questions.cautions': 'Before anything else',
  'questions.takes': 'What this takes for granted',
  'questions.sources': 'Where this comes from',
  'questions.asks':
    'Still to be stated: {fields}. No figure that could stand in was published, or it is a fact of the place.',
  'questions.quoted': '“{text}”',
  'questions.left-out': 'The link held something this question does not take, so it was left out: {what}',
  'questions.slow': 'This one takes a moment, so it is worked out when you say so.',
  'questions.slow.work-out': 'Work it out',
  'questions.slow.working': 'Working it out…',
  'questions.slow.failed': 'It could not be worked out. Your inputs are still here.',
  'questions.slider': '{label}: slider',
  'questions.not-stated': 'not stated yet',
  'questions.range': 'From {from} to {to}.',
  'questions.range.whole': 'A whole number from {from} to {to}.',
  'questions.over': 'over {share}',
  'questions.under': 'under {share}',
  'questions.months': '{count, plural, one {# month} other {# months}}',
  'questions.unit.share': '%',
  'questions.unit.cm': 'cm',
  'questions.unit.m': 'm',
  'questions.unit.kg': 'kg',
  'questions.unit.l': 'l',
  'questions.unit.min': 'min',
  'questions.unit.°C': '°C',
  'questions.unit.hour': 'h',
  'questions.unit.month': 'months',
  'questions.plot-of': 'Plot for “{title}”: {x}; {y}. The numbers stand in the table beside it.',
  'questions.plot-failed': 'The plot could not be fetched. The numbers are in the table.',
  'questions.low': 'From',
  'questions.value': 'Value',
  'questions.high': 'To',
  'questions.none-enough': 'not even all',
  'questions.keep': 'Keep as a note',
  'questions.keep.which': 'On which apiary? Any part of its name, or of its keeper’s',
  'questions.keep.none': 'No apiary has a name like that.',
  'questions.keep.on': 'Keep on {name} ({keeper})',
  'questions.keep.on-case': 'Keep on the suspicion at {name}, visit of {day}',
  'questions.keep.case': '{name}, visit of {day}',
  'questions.keep.kept': 'Kept as a note on {name}. It is on its way to the office.',
  'questions.keep.at-office': 'Kept as a note on {name}, and at the office.',
  'questions.keep.open': 'Open {name}',
  'questions.keep.leave': 'Leave it',
  'questions.note.input': '{label}: {value}',
  'questions.note.no-link': 'The inputs were too long for a link; they stand above.',
  'questions.note.sources': 'Sources: {keys}',
  'questions.limits': 'Limits that laboratories stated',
  'questions.limits.none':
    'None written down yet. Type them as the laboratory states them; then they can be kept for every district.',
  'questions.limits.keep': 'Keep these limits for every district',
  'questions.limits.use': '{laboratory}: {method}, {material}, per {unit}, as stated on {day}',
  'questions.limits.from': 'Written in: {source}. Entered by {name}, {when}.',
  'questions.limits.corrected': 'Corrected by {name}, {when}: {reason}.',
  'questions.limits.this-desk': 'Kept on this desk only, by an earlier version of the program:',
  'questions.limits.share': 'Keep this one for every district',
  'questions.limits.why': 'What you state differs from what was written down for that day. Why is it wrong?',
  'questions.limits.correct': 'Correct what was written down',
  'questions.limits.failed': 'The office cannot be reached, so the limits kept there are not shown.',
  'questions.limits.on-its-way': 'Written. They are on their way to the office.',
  'questions.limits.at-office': 'Kept, and at the office: every district sees them.',
  'questions.takes.random':
    'Colonies are chosen as if by lot. If you open the suspicious ones first, you find more than this says.',
  'questions.takes.same-eye':
    'Every affected colony is found with the same chance, whatever its stage, and each look stands by itself.',
  'questions.takes.no-false-alarm': 'Whatever is found is confirmed, so no colony counts as affected by mistake.',
  'questions.refuses.coin':
    'Such a test tells no more than a coin: what it finds and what it lets be must add up to over 100 %.',

  'questions.how-many-to-open': 'How many colonies must I open?',
  'questions.how-many-to-open.about': 'So many that at least one affected colony is found, if that many are affected.',
  'questions.how-many-to-open.colonies': 'Colonies on the site',
  'questions.how-many-to-open.affected': 'Affected colonies you do not want to miss',
  'questions.how-many-to-open.affected.hint': 'As a share of all. You choose it: no level is prescribed here.',
  'questions.how-many-to-open.sensitivity': 'Chance that your look finds an affected colony',
  'questions.how-many-to-open.sensitivity.hint':
    'No published figure for an inspector’s eye. 100 % would mean that a look never misses.',
  'questions.how-many-to-open.confidence': 'How sure you want to be',
  'questions.how-many-to-open.says.open':
    'Open {open} of {colonies}: if {affected, plural, one {at least # is} other {at least # are}} affected, you then find one or more with {confidence} confidence.',
  'questions.how-many-to-open.says.all': 'Opening all of them would find one or more with a chance of {chance}.',
  'questions.how-many-to-open.says.not-enough':
    'Not even all {colonies} are enough for {confidence}: with {affected} affected, opening every one finds one or more with a chance of {chance}. Look a second time, or more closely.',
  'questions.how-many-to-open.x': 'Share of colonies affected',
  'questions.how-many-to-open.y': 'Colonies to open',
  'questions.how-many-to-open.takes.level': 'The number affected is rounded up to whole colonies, at least one.',

  'questions.finding-none': 'What did finding none tell me?',
  'questions.finding-none.about': 'Nothing was found. How many affected colonies could still be there?',
  'questions.finding-none.colonies': 'Colonies on the site',
  'questions.finding-none.opened': 'Colonies opened, nothing found',
  'questions.finding-none.sensitivity': 'Chance that your look finds an affected colony',
  'questions.finding-none.sensitivity.hint':
    'No published figure for an inspector’s eye. 100 % would mean that a look never misses.',
  'questions.finding-none.confidence': 'How sure you want to be',
  'questions.finding-none.says.up-to':
    '{left, plural, =0 {With {confidence} confidence even a single affected colony would have been found.} one {Up to # colony of {colonies} ({share}) may still be affected: only more than that would have shown with {confidence} confidence.} other {Up to # colonies of {colonies} ({share}) may still be affected: only more than that would have shown with {confidence} confidence.}}',
  'questions.finding-none.says.nothing':
    'It rules out nothing: even if all {colonies} were affected, opening {opened} would not have shown it with {confidence} confidence.',
  'questions.finding-none.says.one': 'A single affected colony would have been found with a chance of {chance}.',
  'questions.finding-none.refuses.more':
    'More were opened ({opened}) than there are ({colonies}). Look at both numbers.',
  'questions.finding-none.x': 'Colonies affected',
  'questions.finding-none.y': 'Chance of having found one or more',
  'questions.finding-none.takes.none-seen':
    'Nothing seen is not the same as nothing there; no number of looks makes it zero.',

  'questions.how-frequent': 'How common is it really?',
  'questions.how-frequent.about': 'So many positive of so many tested: what lies behind that?',
  'questions.how-frequent.positives': 'Positive',
  'questions.how-frequent.tested': 'Tested or opened',
  'questions.how-frequent.reading': 'What do you know of the test?',
  'questions.how-frequent.reading.counted': 'Nothing: as counted',
  'questions.how-frequent.reading.known': 'How often it is right, taken as exact',
  'questions.how-frequent.reading.estimated': 'How often it was right in a trial',
  'questions.how-frequent.sensitivity': 'Affected colonies it finds',
  'questions.how-frequent.sensitivity.hint': 'From the laboratory or a study. None is filled in.',
  'questions.how-frequent.specificity': 'Unaffected colonies it lets be',
  'questions.how-frequent.specificity.hint': 'Taken as exactly 100 %, one false alarm in a hundred is overlooked.',
  'questions.how-frequent.diseasedFound': 'Trial: affected ones it found',
  'questions.how-frequent.diseasedTested': 'Trial: affected ones tested',
  'questions.how-frequent.freeNegative': 'Trial: unaffected ones it let be',
  'questions.how-frequent.freeTested': 'Trial: unaffected ones tested',
  'questions.how-frequent.confidence': 'How sure you want to be',
  'questions.how-frequent.says.counted':
    '{positives} of {tested} are {estimate}; with {confidence} confidence it lies between {lower} and {upper}.',
  'questions.how-frequent.says.known':
    'With this test {positives} of {tested} mean about {estimate} really affected, between {lower} and {upper} with {confidence} confidence.',
  'questions.how-frequent.says.below-zero':
    'The test alone gives more false alarms than positives were counted, so the estimate stops at 0.',
  'questions.how-frequent.says.estimated':
    'With a test known only from that trial, {positives} of {tested} mean most likely about {estimate}; {confidence} of belief lies between {lower} and {upper}.',
  'questions.how-frequent.refuses.more':
    'More are positive ({positives}) than were tested ({tested}). Look at both numbers.',
  'questions.how-frequent.refuses.trial': 'In the trial more are right than were tested. Look at its four numbers.',
  'questions.how-frequent.x': 'Share of colonies',
  'questions.how-frequent.row.counted': 'As counted (Wilson)',
  'questions.how-frequent.row.exact': 'As counted (exact limits)',
  'questions.how-frequent.row.known': 'Corrected for the test',
  'questions.how-frequent.row.estimated': 'Corrected, test from the trial',
  'questions.how-frequent.takes.counted': 'The test is taken as always right. It is not.',
  'questions.how-frequent.takes.known':
    'How often the test is right is taken as known exactly and the same in every colony.',
  'questions.how-frequent.takes.estimated':
    'Before the survey every share from 0 to 100 % is held equally likely, and the trial’s colonies were like these.',

  'questions.free-since': 'Is the district free, and since when?',
  'questions.free-since.about':
    'Free here means: below the level your rounds were made to find. It is a probability, never a statement of law.',
  'questions.free-since.prior': 'Belief that it was free before the first round',
  'questions.free-since.prior.hint': '50 % says: we did not know.',
  'questions.free-since.introduction': 'Chance that disease came in, per round',
  'questions.free-since.introduction.hint': 'No published figure. For the same span of time as one round.',
  'questions.free-since.round': 'Chance that one round would have found it',
  'questions.free-since.round.hint': 'Of the whole round, if it had been there at that level. Not of one look.',
  'questions.free-since.rounds': 'Rounds made, nothing found',
  'questions.free-since.first': 'Day of the first round',
  'questions.free-since.apart': 'Time from round to round',
  'questions.free-since.aim': 'Probability aimed at',
  'questions.free-since.says.reached':
    'After {rounds, plural, one {# round} other {# rounds}} the probability is {freedom}; it has kept the {aim} aimed at since round {since}.',
  'questions.free-since.says.reached-on':
    'After {rounds, plural, one {# round} other {# rounds}} the probability is {freedom}; it has kept the {aim} aimed at since round {since}, on {day}.',
  'questions.free-since.says.not-yet':
    'Not yet: after {rounds, plural, one {# round} other {# rounds}} the probability is {freedom}, below the {aim} aimed at.',
  'questions.free-since.says.needed':
    'It takes {needed, plural, one {# round} other {# rounds}} without a finding, {more} more than were made.',
  'questions.free-since.says.never':
    'With these rounds it is never reached: what comes in outweighs what they find, and the probability settles at {plateau}.',
  'questions.free-since.x': 'Rounds made',
  'questions.free-since.y': 'Probability of being free',
  'questions.free-since.takes.level': 'Free means below the level the rounds were made to find, not none at all.',
  'questions.free-since.takes.negative': 'Every round found nothing. One confirmed finding ends the row.',
  'questions.free-since.takes.independent':
    'Each round stands by itself, has the same chance of finding, and what comes in comes evenly. A round left out counts as one that finds nothing.',

  'questions.do-two-agree': 'Do two inspectors agree?',
  'questions.do-two-agree.about': 'Two people, or two tests, judged the same colonies, neither knowing of the other.',
  'questions.do-two-agree.groups': 'What do you have?',
  'questions.do-two-agree.groups.one': 'One group of colonies: do they agree?',
  'questions.do-two-agree.groups.two': 'Two groups, one with much more disease: how good is each?',
  'questions.do-two-agree.both': 'Both said affected',
  'questions.do-two-agree.firstOnly': 'Only the first did',
  'questions.do-two-agree.secondOnly': 'Only the second did',
  'questions.do-two-agree.neither': 'Neither did',
  'questions.do-two-agree.both2': 'Second group: both said affected',
  'questions.do-two-agree.firstOnly2': 'Second group: only the first did',
  'questions.do-two-agree.secondOnly2': 'Second group: only the second did',
  'questions.do-two-agree.neither2': 'Second group: neither did',
  'questions.do-two-agree.says.kappa':
    'They agree on {agreed} of {all} ({observed}); beyond chance their agreement (kappa) is {kappa}, between {lower} and {upper}.',
  'questions.do-two-agree.says.kappa-alone':
    'They agree on {agreed} of {all} ({observed}); beyond chance their agreement (kappa) is {kappa}. Here no interval can be reckoned for kappa: see the second figure.',
  'questions.do-two-agree.says.chance':
    'By chance alone they would agree on {expected}. Set right for how rare it is (PABAK): {pabak}, between {lower} and {upper}.',
  'questions.do-two-agree.says.one-answer':
    'They agree on {agreed} of {all} ({observed}). Everything got the same answer, so agreement beyond chance cannot be told.',
  'questions.do-two-agree.says.two':
    'The first finds about {first} of affected colonies, the second {second}; of unaffected ones the first lets {firstRight} be, the second {secondRight}.',
  'questions.do-two-agree.refuses.empty': 'A group is empty. Count at least one colony in each.',
  'questions.do-two-agree.x': 'Agreement beyond chance',
  'questions.do-two-agree.x.share': 'Share of colonies',
  'questions.do-two-agree.row.kappa': 'Kappa',
  'questions.do-two-agree.row.pabak': 'PABAK',
  'questions.do-two-agree.row.first-finds': 'First finds affected',
  'questions.do-two-agree.row.second-finds': 'Second finds affected',
  'questions.do-two-agree.row.first-right': 'First lets others be',
  'questions.do-two-agree.row.second-right': 'Second lets others be',
  'questions.do-two-agree.row.group-one': 'Affected, first group',
  'questions.do-two-agree.row.group-two': 'Affected, second group',
  'questions.do-two-agree.takes.same':
    'Both judged the same colonies on the same day, each without knowing what the other said.',
  'questions.do-two-agree.takes.rare':
    'Kappa falls where nearly all colonies show nothing, even if the two hardly ever differ. No word such as “good” is put to it here.',
  'questions.do-two-agree.takes.same-eye': 'Each judges equally well in both groups.',
  'questions.do-two-agree.takes.independent':
    'When one is wrong, the other is no likelier to be wrong. Where both look for the same sign, this does not hold and both look too good.',
  'questions.do-two-agree.takes.differ':
    'Disease differs between the groups, and both are right more often than a coin. The bars are the mean and two standard deviations.',

  'questions.laboratory-number': 'What does this laboratory number mean?',
  'questions.laboratory-number.about':
    'Read by the limits of the laboratory that reported it. There are no others: none could be confirmed.',
  'questions.laboratory-number.report': 'The report says',
  'questions.laboratory-number.report.load': 'a load',
  'questions.laboratory-number.report.plates': 'colonies counted on plates',
  'questions.laboratory-number.report.positive': 'positive',
  'questions.laboratory-number.report.negative': 'negative',
  'questions.laboratory-number.load': 'Load reported',
  'questions.laboratory-number.lower': 'From, if the report gives it',
  'questions.laboratory-number.upper': 'To, if the report gives it',
  'questions.laboratory-number.plates': 'The plates',
  'questions.laboratory-number.plates.hint':
    'One a line: its dilution (1 for undiluted, 1:100 or 0.01), the millilitres spread on it, the colonies counted; “-” for too many to count.',
  'questions.laboratory-number.suspension': 'Suspension that held the whole specimen, ml',
  'questions.laboratory-number.amount': 'Specimen in it: grams, bees or millilitres',
  'questions.laboratory-number.parts': 'Specimens pooled into one, if so',
  'questions.laboratory-number.parts.hint': 'Such as samples of several hives, in equal parts.',
  'questions.laboratory-number.confidence': 'How sure the interval is to be',
  'questions.laboratory-number.unit': 'Colony-forming units per',
  'questions.laboratory-number.unit.g': 'gram',
  'questions.laboratory-number.unit.bee': 'bee',
  'questions.laboratory-number.unit.ml': 'millilitre',
  'questions.laboratory-number.laboratory': 'Laboratory',
  'questions.laboratory-number.method': 'Method, as the report names it',
  'questions.laboratory-number.material': 'Material, as the report names it',
  'questions.laboratory-number.statedOn': 'Its limits were stated on',
  'questions.laboratory-number.source': 'Where its limits are written',
  'questions.laboratory-number.source.hint': 'Name no person: everybody may read it.',
  'questions.laboratory-number.countLowest': 'Colonies on a plate it counts: from',
  'questions.laboratory-number.countLowest.hint':
    'Only if the laboratory states it. Without, every plate that was counted is used.',
  'questions.laboratory-number.countHighest': 'Colonies on a plate it counts: to',
  'questions.laboratory-number.classes': 'Its classes',
  'questions.laboratory-number.classes.hint':
    'One a line: the smallest load, then the laboratory’s own word. The first starts at 0.',
  'questions.laboratory-number.priorLow': 'Chance of disease before the test: from',
  'questions.laboratory-number.priorLow.hint': 'For a colony such as this one, here and now. No published figure.',
  'questions.laboratory-number.priorHigh': 'Chance of disease before the test: to',
  'questions.laboratory-number.sensitivityLow': 'Affected colonies the test finds: from',
  'questions.laboratory-number.sensitivityLow.hint': 'From the laboratory or a study. None is filled in.',
  'questions.laboratory-number.sensitivityHigh': 'Affected colonies the test finds: to',
  'questions.laboratory-number.specificityLow': 'Unaffected colonies it lets be: from',
  'questions.laboratory-number.specificityLow.hint': 'Exactly 100 % would mean that it never gives a false alarm.',
  'questions.laboratory-number.specificityHigh': 'Unaffected colonies it lets be: to',
  'questions.laboratory-number.says.no-limits':
    '{load} per {unit} in “{material}” is only a number: no limits of this laboratory are stated here, and there are no others to read it by.',
  'questions.laboratory-number.says.classed': '{load} per {unit} is “{name}” by the limits of {laboratory}.',
  'questions.laboratory-number.says.not-certain':
    '{load} per {unit} falls into no one class of {laboratory} for certain: its interval reaches into {names}.',
  'questions.laboratory-number.says.from': 'Limits stated by {laboratory} on {day}; written in: {source}.',
  'questions.laboratory-number.says.no-proof': 'It neither proves nor excludes disease in the colony.',
  'questions.laboratory-number.says.plates.counted':
    '{load} colony-forming units per {unit}, with {confidence} confidence between {lower} and {upper}: {colonies, plural, one {# colony} other {# colonies}} on {plates, plural, one {one plate} other {# plates}}.',
  'questions.laboratory-number.says.plates.below-counting-range':
    'About {load} colony-forming units per {unit}, between {lower} and {upper}: an estimate, since no plate reached the number from which the laboratory counts ({colonies, plural, one {# colony} other {# colonies}} on {plates, plural, one {one plate} other {# plates}}).',
  'questions.laboratory-number.says.plates.none-grown':
    'Nothing grew on {plates, plural, one {the plate} other {# plates}}: with {confidence} confidence there are at most {upper} colony-forming units per {unit}. That is not zero.',
  'questions.laboratory-number.says.plates.too-many-to-count':
    'Too many to count on every plate: at least {lower} colony-forming units per {unit}. Ask for a higher dilution.',
  'questions.laboratory-number.says.plates.too-many-unknown':
    'Too many to count on every plate, and the laboratory’s highest countable number is not stated: no figure follows. Ask for a higher dilution.',
  'questions.laboratory-number.says.plates.left-out':
    '{count, plural, one {# plate was} other {# plates were}} left out: outside what the laboratory counts.',
  'questions.laboratory-number.says.plates.limit':
    'One single colony on all plates together would mean {limit} per {unit}: less than that does not show.',
  'questions.laboratory-number.says.plates.pool':
    'In a pool of {parts}, one positive specimen alone must hold at least {least} per {unit} to show a single colony.',
  'questions.laboratory-number.says.plates.pool-one':
    'If all of it came from one of the {parts}, that one held about {most} per {unit}.',
  'questions.laboratory-number.says.plates.no-limits':
    'It is only a number: no limits of this laboratory are stated here, and there are no others to read it by.',
  'questions.laboratory-number.says.positive':
    'After a positive result the chance of disease is between {low} and {high}; before, it was {before} to {beforeHigh}.',
  'questions.laboratory-number.says.negative':
    'After a negative result the chance of disease is between {low} and {high}; before, it was {before} to {beforeHigh}.',
  'questions.laboratory-number.refuses.around': 'The interval must reach around the load. Look at the three numbers.',
  'questions.laboratory-number.refuses.plates':
    'The plates cannot be read. One a line: dilution (at most 1), millilitres, colonies (or “-”), such as 1:100 0.1 37.',
  'questions.laboratory-number.refuses.counting':
    'It counts “from” more than “to”. Look at both numbers of colonies on a plate.',
  'questions.laboratory-number.refuses.classes':
    'The classes cannot be read. One a line, a number and then a word; the first from 0, each next one higher.',
  'questions.laboratory-number.refuses.order': 'A “from” lies above its “to”. Look at the six numbers.',
  'questions.laboratory-number.refuses.impossible':
    'With these figures such a result could not have happened. Look at the ends at 0 and 100 %.',
  'questions.laboratory-number.x.g': 'Colony-forming units per gram',
  'questions.laboratory-number.x.bee': 'Colony-forming units per bee',
  'questions.laboratory-number.x.ml': 'Colony-forming units per millilitre',
  'questions.laboratory-number.x.chance': 'Chance of disease',
  'questions.laboratory-number.row.load': 'This report',
  'questions.laboratory-number.row.plates': 'These plates',
  'questions.laboratory-number.row.class': '“{name}”',
  'questions.laboratory-number.row.before': 'Before the test',
  'questions.laboratory-number.row.after': 'After the result',
  'questions.laboratory-number.takes.own-limits':
    'Only the limits of the reporting laboratory count, for its own method and material, as it stated them on that day.',
  'questions.laboratory-number.takes.plates':
    'Colonies fall on the plates by chance alone, and each grew from one unit. Plates within what the laboratory counts are weighed by the specimen they hold.',
  'questions.laboratory-number.takes.germinate':
    'Only part of the spores form colonies (often put below one in ten, from memory): this counts colonies, not spores.',
  'questions.laboratory-number.takes.pool': 'The specimens of a pool are equal parts, well mixed.',
  'questions.laboratory-number.takes.no-proof':
    'No single count marks disease: the signs in the colony decide, and the law.',
  'questions.laboratory-number.takes.no-conversion': 'Honey, bees and debris are never turned into one another.',
  'questions.laboratory-number.takes.bands':
    'Each figure may lie anywhere in its band; the answer is the widest that follows. It confirms no case.',

  'questions.burn-and-bury': 'What do I need to destroy or disinfect?',
  'questions.burn-and-bury.about':
    'Permit, fire ban, ground water and local law decide. Where no figure was published, it is asked for and never filled in.',
  'questions.burn-and-bury.way': 'What is to be done',
  'questions.burn-and-bury.way.burn': 'Burn and bury',
  'questions.burn-and-bury.way.scorch': 'Scorch boxes',
  'questions.burn-and-bury.way.hot wax': 'Dip in hot wax',
  'questions.burn-and-bury.way.hypochlorite': 'Bath with hypochlorite (bleach)',
  'questions.burn-and-bury.way.caustic': 'Bath with caustic soda',
  'questions.burn-and-bury.way.irradiate': 'Send for irradiation',
  'questions.burn-and-bury.beesDead': 'Are the bees dead?',
  'questions.burn-and-bury.beesDead.yes': 'Yes, looked at',
  'questions.burn-and-bury.beesDead.no': 'No, or not sure',
  'questions.burn-and-bury.hives': 'Hives to burn',
  'questions.burn-and-bury.length': 'One hive, outside: length',
  'questions.burn-and-bury.length.hint': 'Measured, floor and lid with it.',
  'questions.burn-and-bury.width': 'One hive, outside: width',
  'questions.burn-and-bury.height': 'One hive, outside: height',
  'questions.burn-and-bury.pitWidth': 'Width of the pit',
  'questions.burn-and-bury.pitWidth.hint': 'No published figure: as the digger and the ground allow, or as ordered.',
  'questions.burn-and-bury.stacking': 'How high you stack in the pit',
  'questions.burn-and-bury.stacking.hint': 'No published figure.',
  'questions.burn-and-bury.remains': 'What will be left, height',
  'questions.burn-and-bury.remains.hint': 'No published figure. Measure it before you fill in.',
  'questions.burn-and-bury.cover': 'Soil over what is left',
  'questions.burn-and-bury.cover.hint':
    'By the local rule. The one published: California asks for at least 2 feet, 0.61 m.',
  'questions.burn-and-bury.fuel': 'What feeds the fire',
  'questions.burn-and-bury.fuel.hint': 'Never petrol.',
  'questions.burn-and-bury.fuel.comb wax alone': 'The wax of the combs alone',
  'questions.burn-and-bury.fuel.dry wood': 'Dry wood',
  'questions.burn-and-bury.fuel.straw': 'Straw',
  'questions.burn-and-bury.fuel.charcoal': 'Charcoal',
  'questions.burn-and-bury.fuelPerHive': 'Fuel for one hive',
  'questions.burn-and-bury.fuelPerHive.hint': 'No published figure: from your own experience.',
  'questions.burn-and-bury.atOnce': 'Hives on one fire',
  'questions.burn-and-bury.hoursPerFire': 'Until nothing glows, one fire',
  'questions.burn-and-bury.hoursPerFire.hint': 'No published figure: from your own experience.',
  'questions.burn-and-bury.others': 'Further pieces of another size',
  'questions.burn-and-bury.others.hint':
    'One size a line: how many, then length, width and height in cm, such as 6 50 40 24.',
  'questions.burn-and-bury.accepted': 'Is scorching accepted here?',
  'questions.burn-and-bury.accepted.hint':
    'By the order or the law of this place. It is in some, in others it is not held effective enough.',
  'questions.burn-and-bury.accepted.yes': 'Yes, it is accepted',
  'questions.burn-and-bury.accepted.no': 'No, or not sure',
  'questions.burn-and-bury.cleanAndDry': 'Is the wood scraped clean and dry?',
  'questions.burn-and-bury.cleanAndDry.yes': 'Yes',
  'questions.burn-and-bury.cleanAndDry.no': 'No, or not sure',
  'questions.burn-and-bury.cleaned': 'Scraped and washed before the bath?',
  'questions.burn-and-bury.cleaned.yes': 'Yes',
  'questions.burn-and-bury.cleaned.no': 'No, or not sure',
  'questions.burn-and-bury.freeOfHoney': 'Free of bees and honey, washed outside, wrapped twice?',
  'questions.burn-and-bury.freeOfHoney.yes': 'Yes',
  'questions.burn-and-bury.freeOfHoney.no': 'No, or not sure',
  'questions.burn-and-bury.item': 'What is dipped',
  'questions.burn-and-bury.item.hint':
    'Frames are burned; boards of pressed fibre are burned or irradiated (Western Australia 2022).',
  'questions.burn-and-bury.item.boxes': 'Boxes',
  'questions.burn-and-bury.item.wooden floors': 'Wooden floors',
  'questions.burn-and-bury.item.wooden lids': 'Wooden lids',
  'questions.burn-and-bury.boxes': 'Boxes or pieces in all',
  'questions.burn-and-bury.minutesPerBox': 'Time for one box',
  'questions.burn-and-bury.minutesPerBox.hint': 'No published figure: from your own experience.',
  'questions.burn-and-bury.piecesPerDip': 'Pieces in one dip',
  'questions.burn-and-bury.celsius': 'Temperature of the wax, with the pieces in it',
  'questions.burn-and-bury.celsius.hint':
    'Below 160 °C it does not work, above 175 °C the vapour can burn (Western Australia 2022).',
  'questions.burn-and-bury.dipMinutes': 'Time of each dip',
  'questions.burn-and-bury.dipMinutes.hint': 'At least 10 minutes (Western Australia 2022).',
  'questions.burn-and-bury.vatLitres': 'Wax that fills the vat',
  'questions.burn-and-bury.tankLength': 'Tank inside: length',
  'questions.burn-and-bury.tankWidth': 'Tank inside: width',
  'questions.burn-and-bury.liquidDepth': 'Depth of the liquid, with the pieces in it',
  'questions.burn-and-bury.displaced': 'Room the pieces take up',
  'questions.burn-and-bury.displaced.hint': '0 leaves a reserve.',
  'questions.burn-and-bury.stockPercent': 'Strength of the bleach in the can, %',
  'questions.burn-and-bury.stockPercent.hint': 'From a fresh label: bleach grows weaker in store.',
  'questions.burn-and-bury.wantedPercent': 'Strength of the bath, %',
  'questions.burn-and-bury.wantedPercent.hint':
    'Guidances differ: 0.5 for 20 minutes (England and Wales), 1 for 20 minutes (Poland), 5 and then boiling water (Western Australia, metal floors). The local one decides.',
  'questions.burn-and-bury.bathMinutes': 'Time in the bath',
  'questions.burn-and-bury.bathMinutes.hint':
    'By the local guidance. For caustic soda no official figure was found; keepers cite 15 minutes, boiling (common practice, no source).',
  'questions.burn-and-bury.gramsPerLitre': 'Caustic soda, grams per litre',
  'questions.burn-and-bury.gramsPerLitre.hint':
    'No official figure was found. Keepers cite 12 (common practice, no source).',
  'questions.burn-and-bury.boxesPerUnit': 'Boxes wrapped into one unit',
  'questions.burn-and-bury.boxKilograms': 'Weight of one box, wrapped',
  'questions.burn-and-bury.boxKilograms.hint': 'A unit may weigh at most 25 kg (Western Australia 2022).',
  'questions.burn-and-bury.unitHeight': 'Height of one unit',
  'questions.burn-and-bury.unitsPerLayer': 'Units in one layer of a pallet',
  'questions.burn-and-bury.leastDose': 'Least dose asked for, kGy',
  'questions.burn-and-bury.leastDose.hint':
    'By the law of the place: guidances differ, so none is filled in. Florida asks for 20.',
  'questions.burn-and-bury.deliveredDose': 'Least dose delivered, kGy',
  'questions.burn-and-bury.deliveredDose.hint':
    'From the operator’s certificate, once it is there. Never the dose ordered.',
  'questions.burn-and-bury.says.pit':
    'A pit {length} m long, {width} m wide and {depth} m deep takes {hives, plural, one {# hive} other {# hives}} ({volume} m³): {soil} m³ of soil to move.',
  'questions.burn-and-bury.says.fire':
    '{kilograms} kg of fuel ({fuel}), {fires, plural, one {one fire} other {# fires one after the other}}, about {hours} hours with somebody beside it.',
  'questions.burn-and-bury.says.fire-wax':
    'No fuel but the combs, {fires, plural, one {one fire} other {# fires one after the other}}, about {hours} hours with somebody beside it.',
  'questions.burn-and-bury.says.scorch':
    '{boxes, plural, one {# box takes} other {# boxes take}} about {minutes} minutes of flame.',
  'questions.burn-and-bury.says.dips':
    '{dips, plural, one {One dip} other {# dips}} for {pieces, plural, one {# piece} other {# pieces}}: {minutes} minutes in the wax in all, changing over not counted.',
  'questions.burn-and-bury.says.wax':
    'The first filling: {microcrystalline} l of microcrystalline wax and {paraffin} l of solid paraffin wax.',
  'questions.burn-and-bury.says.heat':
    'Measured in wax at 150 °C, so long a dip leaves one spore in 10 to the power of {low} to {high}.',
  'questions.burn-and-bury.says.bleach':
    '{stock} l of bleach and {water} l of water: {parts} parts of water to one of bleach.',
  'questions.burn-and-bury.says.meets.none':
    'No published guidance known here is met by this strength and time. Ask the authority.',
  'questions.burn-and-bury.says.meets.england':
    'It meets the guidance for England and Wales, for cleaned surfaces; rinse afterwards.',
  'questions.burn-and-bury.says.meets.poland': 'It meets the guidance for Poland.',
  'questions.burn-and-bury.says.meets.australia':
    'It reaches the strength of Western Australia’s for metal floors; these then get boiling water for over 10 minutes.',
  'questions.burn-and-bury.says.caustic':
    '{kilograms} kg of caustic soda into {litres} l of cold water make {percent} %; {minutes} minutes in it.',
  'questions.burn-and-bury.says.caustic-only-cleans':
    'It cleans. It does not free equipment of spores and proves nothing.',
  'questions.burn-and-bury.says.consignment':
    '{units, plural, one {One wrapped unit} other {# wrapped units}} of up to {each} kg on {pallets, plural, one {one pallet} other {# pallets}}, {kilograms} kg in all.',
  'questions.burn-and-bury.says.dose-waits':
    'Asked for: at least {asked} kGy. Whether it was reached, the certificate says.',
  'questions.burn-and-bury.says.dose-reached': 'The {delivered} kGy delivered reach the {asked} asked for.',
  'questions.burn-and-bury.says.dose-missed':
    'The {delivered} kGy delivered do not reach the {asked} asked for: treat again, or ask the authority.',
  'questions.burn-and-bury.says.dose':
    'Measured on glass, {dose} kGy leave one spore in 10 to the power of {log}; honey and density shield them.',
  'questions.burn-and-bury.refuses.alive':
    'Nothing is burned while bees live. They are killed first, by means the authority permits.',
  'questions.burn-and-bury.refuses.pieces':
    'The further pieces cannot be read. One size a line: how many, length, width, height, such as 6 50 40 24.',
  'questions.burn-and-bury.refuses.does-not-fit':
    'The largest piece does not go into a pit of this width, stacked to this height. Dig wider or stack higher.',
  'questions.burn-and-bury.refuses.not-accepted':
    'Nothing is scorched where it is not accepted. Ask the authority what is.',
  'questions.burn-and-bury.refuses.wet':
    'Nothing wet or dirty goes into hot wax: it boils over. Scrape and dry it first.',
  'questions.burn-and-bury.refuses.dirty': 'Dirt uses the bleach up. Scrape and wash first.',
  'questions.burn-and-bury.refuses.honey':
    'Nothing is sent with bees or honey in it: honey shields spores and leaks. Clean and wrap first.',
  'questions.burn-and-bury.refuses.too-heavy': 'A wrapped unit may weigh at most 25 kg. Put fewer boxes into one.',
  'questions.burn-and-bury.refuses.displaced':
    'The pieces take up more than the tank holds to that depth. Look at the four measures.',
  'questions.burn-and-bury.refuses.too-strong':
    'The bath cannot be stronger than the bleach in the can. Look at both strengths.',
  'questions.burn-and-bury.x': 'Width of the pit',
  'questions.burn-and-bury.y': 'Length of the pit',
  'questions.burn-and-bury.x.dip': 'Time of each dip',
  'questions.burn-and-bury.x.dose': 'Dose, kGy',
  'questions.burn-and-bury.x.strength': 'Strength of the bath, %',
  'questions.burn-and-bury.y.dip': 'Powers of ten of spores killed, at least',
  'questions.burn-and-bury.y.dose': 'Powers of ten of spores killed, on glass',
  'questions.burn-and-bury.y.strength': 'Bleach for this tank',
  'questions.burn-and-bury.takes.geometry':
    'Only geometry: whole pieces by outer measures, in rows and layers; sloping sides and a spoil heap need more room.',
  'questions.burn-and-bury.takes.chosen': 'Fuel and time are your own figures, multiplied.',
  'questions.burn-and-bury.takes.takes-all':
    'The pit takes all that is left, with honey and ash, and the soil covers it.',
  'questions.burn-and-bury.takes.chosen-time': 'The time for one box is your own figure, multiplied.',
  'questions.burn-and-bury.takes.scorch': 'California accepts scorching of boxes; it is not accepted everywhere.',
  'questions.burn-and-bury.takes.hot-wax':
    'Half microcrystalline and half paraffin wax. The figure for spores was measured in beeswax at 150 °C; the wax here is hotter.',
  'questions.burn-and-bury.takes.not-dipped': 'Frames and boards of pressed fibre are not dipped.',
  'questions.burn-and-bury.takes.bleach':
    'Cleaned, smooth surfaces, all under the liquid. Wood soaks the bleach up and stays doubtful.',
  'questions.burn-and-bury.takes.guidances':
    'Strengths of different guidances stand side by side and are not averaged.',
  'questions.burn-and-bury.takes.caustic': 'Strength and time are your own figures: no official one was found.',
  'questions.burn-and-bury.takes.dose':
    'The lowest dose in the load counts. One spore in ten is left by each 0.2 kGy, measured on glass.',
  'questions.burn-and-bury.takes.pallet': 'A pallet carries at most 1,000 kg and stays under 2 m.',
  'questions.when-laid': 'When was this cell laid, when will it emerge?',
  'questions.when-laid.about': 'From what is seen in one cell on one day.',
  'questions.when-laid.caste': 'Whose cell is it?',
  'questions.when-laid.caste.worker': 'A worker’s',
  'questions.when-laid.caste.drone': 'A drone’s',
  'questions.when-laid.caste.queen': 'A queen’s',
  'questions.when-laid.stage': 'What is in it?',
  'questions.when-laid.stage.egg': 'An egg',
  'questions.when-laid.stage.open larva': 'A larva, the cell open',
  'questions.when-laid.stage.capped': 'It is capped, not looked into',
  'questions.when-laid.stage.coiled larva': 'A coiled larva (worker)',
  'questions.when-laid.stage.stretched larva': 'A larva stretched out (worker)',
  'questions.when-laid.stage.prepupa': 'Capped: a stretched larva, not yet a pupa (worker)',
  'questions.when-laid.stage.pupa': 'Capped: a pupa (worker)',
  'questions.when-laid.seenOn': 'Seen on',
  'questions.when-laid.says.laid': 'Laid between {from} and {to}.',
  'questions.when-laid.says.emerges': 'It emerges between {from} and {to}.',
  'questions.when-laid.says.capped': 'Capped between {from} and {to}.',
  'questions.when-laid.refuses.worker-only': 'So much is known of worker cells only. Choose egg, open larva or capped.',
  'questions.when-laid.x': 'Days from the day it was seen',
  'questions.when-laid.row.laid': 'Laid',
  'questions.when-laid.row.hatches': 'Hatches',
  'questions.when-laid.row.capped': 'Capped',
  'questions.when-laid.row.emerges': 'Emerges',
  'questions.when-laid.takes.mean':
    'Mean days of brood kept warm. Brood that cools takes longer (from memory), so a late cell may lie a little outside.',
  'questions.when-laid.takes.stage':
    'A look tells the stage, not the hour: so each event is a span, outward to whole days.',
  'questions.earliest-sign': 'When is the earliest sign after an exposure?',
  'questions.earliest-sign.about':
    'Of American foulbrood: from when on a look can show this exposure at all. There is no last day.',
  'questions.earliest-sign.exposedOn': 'Day on which spores may have come in',
  'questions.earliest-sign.says.dead':
    'The first dead brood shows between {from} and {to} at the earliest, by one trial; a look before cannot show this exposure.',
  'questions.earliest-sign.says.published':
    'Another published figure says that signs show about 12.5 days after spores are fed: {from} or {to}.',
  'questions.earliest-sign.says.rope': 'What died first may rope until {to}.',
  'questions.earliest-sign.says.scale': 'The first complete scale is there between {from} and {to} at the earliest.',
  'questions.earliest-sign.says.no-end':
    'A later look that shows nothing does not end the matter: spores wait in stores for seasons.',
  'questions.earliest-sign.x': 'Days after the exposure',
  'questions.earliest-sign.row.dead': 'First dead brood',
  'questions.earliest-sign.row.published': 'Signs, as published',
  'questions.earliest-sign.row.all-dead': 'Larvae infected that day all dead',
  'questions.earliest-sign.row.rope': 'First remains rope until',
  'questions.earliest-sign.row.scale': 'First complete scale',
  'questions.earliest-sign.takes.very-day': 'Counted as if a larva young enough were fed spores on that very day.',
  'questions.earliest-sign.takes.no-end': 'Every day here is a first one, between two ends; none is a last one.',
  'questions.this-season': 'Can this case be released this season?',
  'questions.this-season.about':
    'When brood ends, and whether the looks the law asks for still find brood to judge. The calendar only.',
  'questions.this-season.countedFrom': 'Day from which the law counts',
  'questions.this-season.countedFrom.hint': 'Such as the day of destruction or treatment.',
  'questions.this-season.firstLookAfterDays': 'Days until the first look',
  'questions.this-season.firstLookAfterDays.hint': 'By the law of the place. None is filled in.',
  'questions.this-season.looks': 'Looks without signs the law asks for',
  'questions.this-season.daysBetweenLooks': 'Days from look to look, at least',
  'questions.this-season.lastEggsOn': 'Last day with fresh eggs this season',
  'questions.this-season.lastEggsOn.hint': 'No published figure: from the colony at hand, as seen or expected.',
  'questions.this-season.firstEggsOn': 'First day with eggs next season, if known',
  'questions.this-season.says.yes':
    'Yes, by the calendar: {looks, plural, one {the look finds} other {all # looks find}} brood this season; the last is not before {day}.',
  'questions.this-season.says.next': 'Not this season: the last look is not before {day}, once there is brood again.',
  'questions.this-season.says.no':
    'Not this season: at least one look waits for brood to return, and no day was stated for that.',
  'questions.this-season.says.brood': 'Open worker brood ends on {open}, capped brood on {capped}.',
  'questions.this-season.says.waits':
    '{count, plural, one {# look waits} other {# looks wait}} for the brood of next season.',
  'questions.this-season.says.authority':
    'How many looks, when and how far apart is for the law to say; the authority releases, not the calendar.',
  'questions.this-season.refuses.order':
    'The first eggs of next season must come after the last of this one. Look at both days.',
  'questions.this-season.x': 'Days after the day the law counts from',
  'questions.this-season.row.open': 'Open brood',
  'questions.this-season.row.capped': 'Capped brood',
  'questions.this-season.row.look': 'Look {number}',
  'questions.this-season.takes.law': 'Number and times of the looks are as you stated them from the law.',
  'questions.this-season.takes.brood': 'Worker brood is capped 9 days after laying and emerges after 21.',
  'questions.this-season.takes.stated':
    'When laying ends and begins was never published for a place: it is as you stated it.',
  'questions.colony-strength': 'How strong is this colony?',
  'questions.colony-strength.about':
    'Bees by comb sides covered, brood by comb sides filled. Every constant is chosen by you and shown with its standing.',
  'questions.colony-strength.frame': 'Which frames?',
  'questions.colony-strength.frame.hint':
    'Comb area of one side. Published: Langstroth deep. By arithmetic from lists: British National, 14 x 12, Commercial, Dadant (British list). From memory: the others.',
  'questions.colony-strength.frame.Langstroth deep': 'Langstroth deep, 871 cm²',
  'questions.colony-strength.frame.British National': 'British National, 625 cm²',
  'questions.colony-strength.frame.National 14 x 12': 'National 14 x 12, 910 cm²',
  'questions.colony-strength.frame.Commercial': 'Commercial, 800 cm²',
  'questions.colony-strength.frame.Dadant (British list)': 'Dadant (British list), 966 cm²',
  'questions.colony-strength.frame.Dadant-Blatt': 'Dadant-Blatt, 1130 cm²',
  'questions.colony-strength.frame.Zander': 'Zander, 840 cm²',
  'questions.colony-strength.frame.Deutsch Normal': 'Deutsch Normal, 800 cm²',
  'questions.colony-strength.frame.measured': 'Measured by you',
  'questions.colony-strength.sideArea': 'Comb area of one side, cm²',
  'questions.colony-strength.covered': 'Comb sides covered with bees',
  'questions.colony-strength.covered.hint': 'Added up: a side half covered counts 0.5. Early, before they fly.',
  'questions.colony-strength.beesPerArea': 'Bees on 1 dm² fully covered',
  'questions.colony-strength.beesPerArea.hint':
    'Remembered: 125 to 130 (Liebefeld method, from memory). None is filled in.',
  'questions.colony-strength.error': 'Error of judging by eye',
  'questions.colony-strength.error.hint': '15 % is remembered (from memory); more when bees are flying.',
  'questions.colony-strength.eggs': 'Comb sides filled with eggs',
  'questions.colony-strength.larvae': 'Comb sides filled with open larvae',
  'questions.colony-strength.capped': 'Comb sides filled with capped brood',
  'questions.colony-strength.cellsPerArea': 'Cells on 1 cm² of one side',
  'questions.colony-strength.cellsPerArea.hint': 'Worker comb about 4, from 3.8 to 4.4 (arithmetic from cell widths).',
  'questions.colony-strength.says.bees':
    'About {value} bees on {covered} comb sides, between {low} and {high}; bees abroad are not counted.',
  'questions.colony-strength.says.eggs': 'About {value} cells with eggs, between {low} and {high}.',
  'questions.colony-strength.says.larvae': 'About {value} open larvae, between {low} and {high}.',
  'questions.colony-strength.says.capped': 'About {value} capped cells, between {low} and {high}.',
  'questions.colony-strength.says.laying':
    'So much capped brood comes from about {rate} eggs a day, with steady laying.',
  'questions.colony-strength.says.balance.steady':
    'Eggs, larvae and capped brood stand about 1 to 2 to 4: steady laying.',
  'questions.colony-strength.says.balance.capped-brood-missing':
    'Against its larvae there is little capped brood: brood may have been lost, or laying grows. A hint, not a finding.',
  'questions.colony-strength.says.balance.eggs-missing':
    'Against its larvae there are few eggs: the queen may fail or be gone, or laying ends. A hint, not a finding.',
  'questions.colony-strength.says.balance.growing-or-shrinking':
    'The stages do not stand as steady laying leaves them: the colony grows or shrinks.',
  'questions.colony-strength.x': 'Number',
  'questions.colony-strength.row.bees': 'Bees on the combs',
  'questions.colony-strength.row.eggs': 'Eggs',
  'questions.colony-strength.row.larvae': 'Open larvae',
  'questions.colony-strength.row.capped': 'Capped cells',
  'questions.colony-strength.takes.judged': 'Areas are judged by eye, the bees packed together in the mind.',
  'questions.colony-strength.takes.constants':
    'Other constants: 2,430 bees on both sides of a deep comb fully covered (from memory); on a comb in use, not full, 1,100 British and 1,400 Langstroth (published, 23 colonies).',
  'questions.colony-strength.takes.steady':
    'Eggs a day are capped cells over 12 days; the ratio holds for steady laying without losses, within a quarter (common practice, no source).',
} as const;
