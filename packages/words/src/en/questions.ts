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
  'questions.keep.failed': 'The note could not be kept. The answer is still here.',
  'questions.keep.no-store': 'This desk cannot keep notes now: its store is not open.',
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
  'questions.limits.not-kept': 'They could not be kept. What you stated is still here.',
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
  'questions.do-two-agree.says.chance':
    'By chance alone they would agree on {expected}. Set right for how rare it is (PABAK): {pabak}.',
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

  'questions.burn-and-bury': 'What do I need to burn and bury?',
  'questions.burn-and-bury.about':
    'Permit, fire ban, ground water and local law decide. No figure for pit, fuel or time was published, so each is asked for.',
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
  'questions.burn-and-bury.says.pit':
    'A pit {length} m long, {width} m wide and {depth} m deep takes {hives, plural, one {# hive} other {# hives}} ({volume} m³): {soil} m³ of soil to move.',
  'questions.burn-and-bury.says.fire':
    '{kilograms} kg of fuel ({fuel}), {fires, plural, one {one fire} other {# fires one after the other}}, about {hours} hours with somebody beside it.',
  'questions.burn-and-bury.says.fire-wax':
    'No fuel but the combs, {fires, plural, one {one fire} other {# fires one after the other}}, about {hours} hours with somebody beside it.',
  'questions.burn-and-bury.refuses.alive':
    'Nothing is burned while bees live. They are killed first, by means the authority permits.',
  'questions.burn-and-bury.x': 'Width of the pit',
  'questions.burn-and-bury.y': 'Length of the pit',
  'questions.burn-and-bury.takes.geometry':
    'Only geometry: outer measures, stacked without gaps; sloping sides and a spoil heap need more room.',
  'questions.burn-and-bury.takes.chosen': 'Fuel and time are your own figures, multiplied.',
  'questions.burn-and-bury.takes.takes-all':
    'The pit takes all that is left, with honey and ash, and the soil covers it.',
} as const;
