/** Names of signs, conditions and checks, and the sentences of the reasoning. Ids are spoken by science. */
export const signs = {
  'signs.group.outside-and-opening': 'Outside and on opening',
  'signs.group.pattern': 'Pattern',
  'signs.group.cappings': 'Cappings',
  'signs.group.contents': 'Contents',
  'signs.group.lower-wall': 'Lower wall',
  'signs.group.hive-floor': 'Hive floor',

  'signs.sign.odour.glue.name': 'Smell of glue or rot',
  'signs.sign.odour.sour.name': 'Sour smell',
  'signs.sign.odour.any.name': 'Bad smell of another kind',
  'signs.sign.few_adults.name': 'Too few bees to cover the brood',
  'signs.sign.mites.name': 'Many mites, crippled wings',
  'signs.sign.pattern.compact.name': 'Compact brood, domed cappings',
  'signs.sign.pattern.spotty.name': 'Spotty brood',
  'signs.sign.age.all_together.name': 'Open and sealed brood dead together',
  'signs.sign.cap.sunken.name': 'Sunken cappings',
  'signs.sign.cap.dark_greasy.name': 'Dark, greasy cappings',
  'signs.sign.cap.perforated.name': 'Holes in cappings',
  'signs.sign.cap.flattened.name': 'Flat cappings',
  'signs.sign.cap.late_unemerged.name': 'Single capped cells left behind',
  'signs.sign.cap.line_open.name': 'Live pupae uncapped in a line',
  'signs.sign.cap.domed.name': 'Drone domes on worker cells',
  'signs.sign.col.pearl.name': 'Pearly white, plump brood',
  'signs.sign.col.offwhite_yellow.name': 'Dull white to yellow brood',
  'signs.sign.col.coffee.name': 'Coffee-brown remains',
  'signs.sign.col.grey_black_shiny.name': 'Grey to black, shiny brood',
  'signs.sign.age.coiled.name': 'Dead while coiled, cell open',
  'signs.sign.age.twisted.name': 'Twisted or displaced larva',
  'signs.sign.age.prepupa.name': 'Dead stretched on the lower wall',
  'signs.sign.age.pupa.name': 'Dead pupa',
  'signs.sign.post.head_up.name': 'Head raised and darker',
  'signs.sign.post.melted.name': 'Slumped, segments gone',
  'signs.sign.con.tracheae.name': 'Breathing tubes show as pale lines',
  'signs.sign.con.watery.name': 'Watery or pasty, breaks off short',
  'signs.sign.con.ropy.name': 'Draws an even thread of 10 mm or more',
  'signs.sign.con.sac.name': 'Comes out whole as a sac',
  'signs.sign.con.fluff.name': 'White, cotton-like growth',
  'signs.sign.con.mummy_loose.name': 'Chalky mummies, loose',
  'signs.sign.con.mummy_stone.name': 'Stone-hard mummies with powder',
  'signs.sign.con.dry_unfed.name': 'Dry larvae without food',
  'signs.sign.tongue.name': 'Fine thread across the cell (pupal tongue)',
  'signs.sign.eggs.multi.name': 'Several eggs in a cell',
  'signs.sign.moth.name': 'Silk tunnels, moth larvae',
  'signs.sign.scale.hard_lower.name': 'Dark scale stuck to the lower wall',
  'signs.sign.scale.rubbery.name': 'Rubbery scale that lifts out',
  'signs.sign.scale.mouth.name': 'Dried remains curled at the mouth',
  'signs.sign.scale.gondola.name': 'Boat-shaped scale, loose',
  'signs.sign.floor.mummies.name': 'Mummies on the floor or at the entrance',

  'signs.condition.american-foulbrood.name': 'American foulbrood',
  'signs.condition.american-foulbrood.early.name': 'American foulbrood, early',
  'signs.condition.american-foulbrood.advanced.name': 'American foulbrood, advanced',
  'signs.condition.european-foulbrood.name': 'European foulbrood',
  'signs.condition.chalkbrood.name': 'Chalkbrood',
  'signs.condition.sacbrood.name': 'Sacbrood',
  'signs.condition.varroa-damage.name': 'Varroa damage to brood',
  'signs.condition.chilled-or-starved.name': 'Chilled or starved brood',
  'signs.condition.stonebrood.name': 'Stonebrood',
  'signs.condition.queen-failure.name': 'Failing queen or laying workers',
  'signs.condition.bald-brood.name': 'Bald brood or wax moth',
  'signs.condition.half-moon.name': 'Half-moon disorder',

  'signs.check.open-cells.name': 'Open suspicious cells',
  'signs.check.open-cells.how':
    'Scrape off the cap with the corner of the hive tool and look at colour and shape. Choose sunken, holed or discoloured caps and capped cells among much younger brood. Ten or more, not one.',
  'signs.check.rope-test.name': 'Rope test, three cells',
  'signs.check.rope-test.how':
    'Choose coffee-brown, slumped remains. Stir with a dry, rough stick and draw it out slowly. Measure the thread in millimetres and see whether it snaps back. A new stick for each cell; leave it in the hive or burn it in the smoker.',
  'signs.check.scale-search.name': 'Search the lower walls for scale',
  'signs.check.scale-search.how':
    'Bees off. Hold the frame by the top bar with the top bar toward you, light over your shoulder, and look down into the cells at about 35 degrees. Scale has the colour of old comb.',
  'signs.check.every-frame-shaken.name': 'Look at every brood frame, bees shaken off',
  'signs.check.every-frame-shaken.how':
    'Lift each brood frame a little and jerk it down inside the box, so that the bees drop onto the floor. Look at both sides row by row, and put the frames back in their order.',
  'signs.check.look-into-open-cells.name': 'Look into open cells',
  'signs.check.look-into-open-cells.how':
    'Look at young larvae in open cells: coiled or twisted, yellow, with pale breathing tubes.',
  'signs.check.search-tongue.name': 'Look for a pupal tongue',
  'signs.check.search-tongue.how':
    'In cells with remains look for a fine thread from the remains across the cell. Finding none says almost nothing.',
  'signs.check.look-for-mites.name': 'Look for mites',
  'signs.check.look-for-mites.how': 'Look at bees and pupae for mites, crippled wings and chewed pupae.',
  'signs.check.look-at-eggs.name': 'Look at the eggs',
  'signs.check.look-at-eggs.how': 'Sun over the shoulder: how many eggs in a cell, and where in it they stand.',
  'signs.check.search-floor.name': 'Look at the hive floor and the entrance',
  'signs.check.search-floor.how': 'Look for white, grey or black mummies on the floor and before the entrance.',
  'signs.check.holst-milk.name': 'Milk test',
  'signs.check.holst-milk.how':
    'One scale or smear in 3 to 4 ml of skim-milk powder in water (1 %), kept at 37 °C: it turns transparent within 10 to 20 minutes where American foulbrood is likely. Not wholly reliable.',
  'signs.check.lateral-flow-afb.name': 'Pen-side kit, American foulbrood',
  'signs.check.lateral-flow-afb.how':
    'One larva with signs into the buffer, shake 20 seconds, two drops, keep level, read when the control line shows. Write down batch and expiry.',
  'signs.check.lamp-afb.name': 'LAMP at the hive, American foulbrood',
  'signs.check.lamp-afb.how': 'As the kit says, with one larva that shows the signs. Write down batch and expiry.',
  'signs.check.lateral-flow-efb.name': 'Pen-side kit, European foulbrood',
  'signs.check.lateral-flow-efb.how':
    'One larva with signs into the buffer, shake 20 seconds, two drops, keep level, read when the control line shows. Write down batch and expiry.',
  'signs.check.microscopy-brood-afb.name': 'Microscopy of brood, American foulbrood',
  'signs.check.microscopy-brood-afb.how':
    'Send larvae or pupae that show the signs, or one larva smeared thin on a slide and dried.',
  'signs.check.culture-brood-afb.name': 'Culture of brood, American foulbrood',
  'signs.check.culture-brood-afb.how':
    'Send comb with as much dead brood as possible and no honey, in paper, never in plastic.',
  'signs.check.pcr-brood-afb.name': 'PCR of brood, American foulbrood',
  'signs.check.pcr-brood-afb.how': 'Send larvae or pupae that show the signs, or the stick used in the cell.',
  'signs.check.culture-bees-afb.name': 'Culture of bees, American foulbrood',
  'signs.check.culture-bees-afb.how':
    'Send more than 100 bees from the brood frames. Positive means spores, not yet disease. No alcohol unless the laboratory agrees.',
  'signs.check.culture-honey-afb.name': 'Culture of honey, American foulbrood',
  'signs.check.culture-honey-afb.how': 'Send honey from the brood nest, sealed, as much as the laboratory asks for.',
  'signs.check.culture-debris-afb.name': 'Culture of hive debris, American foulbrood',
  'signs.check.culture-debris-afb.how': 'Only when neither bees nor brood-nest honey can be had.',
  'signs.check.microscopy-brood-efb.name': 'Microscopy of brood, European foulbrood',
  'signs.check.microscopy-brood-efb.how': 'Send single larvae that show the signs.',
  'signs.check.qpcr-bees-efb.name': 'qPCR of bees, European foulbrood',
  'signs.check.qpcr-bees-efb.how': 'Send about 100 bees from the brood nest, chilled or frozen.',
  'signs.check.pcr-bees-efb.name': 'PCR of bees, European foulbrood',
  'signs.check.pcr-bees-efb.how': 'Send about 100 bees from the brood nest, chilled or frozen.',
  'signs.check.pcr-honey-efb.name': 'PCR of honey, European foulbrood',
  'signs.check.pcr-honey-efb.how': 'Send honey from the brood nest, sealed, as much as the laboratory asks for.',
  'signs.check.pcr-debris-efb.name': 'PCR of hive debris, European foulbrood',
  'signs.check.pcr-debris-efb.how': 'Send debris from the hive floor, as much as the laboratory asks for.',

  'signs.rope-test-made': 'Rope test',
  'signs.pattern-measured': 'Brood pattern, measured from a photograph',
  'signs.reason.measured.for':
    '{what}: {solid} % solid, give or take {error} ({sides, plural, one {one comb side} other {# comb sides}}): speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} for {condition}.',
  'signs.reason.measured.against':
    '{what}: {solid} % solid, give or take {error} ({sides, plural, one {one comb side} other {# comb sides}}): speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} against {condition}.',
  'signs.reason.measured.neither':
    '{what}: {solid} % solid, give or take {error} ({sides, plural, one {one comb side} other {# comb sides}}): {strength, select, nothing {changes next to nothing for {condition}} other {changes little for {condition}}}.',
  'signs.reason.seen.for':
    '{what}, seen: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} for {condition}.',
  'signs.reason.seen.against':
    '{what}, seen: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} against {condition}.',
  'signs.reason.seen.neither':
    '{what}, seen: {strength, select, nothing {changes next to nothing for {condition}} other {changes little for {condition}}}.',
  'signs.reason.not-seen.for':
    '{what}, looked for and not seen: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} for {condition}.',
  'signs.reason.not-seen.against':
    '{what}, looked for and not seen: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} against {condition}.',
  'signs.reason.not-seen.neither':
    '{what}, looked for and not seen: {strength, select, nothing {changes next to nothing for {condition}} other {changes little for {condition}}}.',
  'signs.reason.positive.for':
    '{what}, positive: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} for {condition}.',
  'signs.reason.positive.against':
    '{what}, positive: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} against {condition}.',
  'signs.reason.positive.neither':
    '{what}, positive: {strength, select, nothing {changes next to nothing for {condition}} other {changes little for {condition}}}.',
  'signs.reason.negative.for':
    '{what}, negative: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} for {condition}.',
  'signs.reason.negative.against':
    '{what}, negative: speaks {strength, select, weak {a little} fair {plainly} strong {strongly} other {}} against {condition}.',
  'signs.reason.negative.neither':
    '{what}, negative: {strength, select, nothing {changes next to nothing for {condition}} other {changes little for {condition}}}.',

  'signs.silent.not-asked-in-this-hive': '{what}: not counted, since a dead hive or stored combs do not show it.',
  'signs.silent.masked': '{what}, not seen: not counted, since a medicine or new combs may hide it.',
  'signs.silent.view-hides-it': '{what}, not seen: not counted, since this look could not show it.',
  'signs.silent.pattern-counted-once': '{what}: the pattern is counted once, as spotty or not.',
  'signs.silent.odour-counted-once': '{what}: the smell is counted once, by its kind.',
  'signs.silent.bees-uncap-diseased-brood': '{what}, not seen: not counted, since bees uncap diseased brood.',
  'signs.silent.scale-does-not-rope': '{what}, no thread: not counted, since dried scale does not draw a thread.',
  'signs.silent.tissue-does-not-rope':
    '{what}, no thread: not counted, since remains too fresh or part dry may not draw one.',
  'signs.silent.poor-stick': '{what}, no thread: not counted, since a smooth or wet stick does not hold.',
  'signs.silent.does-not-snap-back': '{what}: not counted as positive, since the thread did not snap back.',
  'signs.silent.rope-test-says-it': '{what}: counted once, by the rope test.',
  'signs.silent.kit-expired': '{what}: not counted, since the kit was past its last day of use.',
  'signs.silent.test-failed': '{what}: not counted, since the test failed.',
  'signs.silent.photograph-beside-the-eye':
    '{what}: not counted, since what was said of the pattern at the combs counts.',
  'signs.silent.photograph-masked': '{what}: not counted, since a medicine or new combs may hide gaps.',
  'signs.silent.photograph-without-look': '{what}: not counted, since no comb was lifted at this look.',
  'signs.silent.test-counted-once': '{what}: repeats on one colony count once.',

  'signs.state-name.suspicion-stands': 'suspect',
  'signs.state-name.remains-suspect': 'remains suspect',
  'signs.state-name.contaminated-not-clinical': 'contaminated, not clinical',
  'signs.state-name.masked': 'masked, no conclusion',
  'signs.state-name.too-little-brood': 'too little brood to judge',
  'signs.state-name.not-looked': 'combs not looked at',
  'signs.state-name.look-too-narrow': 'look too narrow to judge the colony',
  'signs.state-name.nothing-seen': 'nothing seen with this look',
  'signs.state-name.signs-seen': 'signs seen',
  'signs.state-name.signs-unexplained': 'signs seen, unexplained',

  'signs.state.suspicion-stands': 'Suspicion stands.',
  'signs.state.remains-suspect':
    'Remains suspect: signs that went away do not lift a suspicion. Colonies lose their signs for a time.',
  'signs.state.contaminated-not-clinical':
    'Contaminated, not clinical: spores were found and no sign was seen. That is not the disease; look again.',
  'signs.state.masked': 'Masked, no conclusion: a medicine or new combs may hide the signs.',
  'signs.state.too-little-brood': 'Too little brood to judge.',
  'signs.state.not-looked': 'The combs were not looked at.',
  'signs.state.look-too-narrow': 'Nothing seen, and the look was too narrow to judge the colony.',
  'signs.state.nothing-seen': 'Nothing seen with this look.',
  'signs.state.signs-seen': 'Signs seen. At the head of the list: {condition}.',
  'signs.state.signs-unexplained': 'Signs seen that none of the named conditions explains well.',

  'signs.line.suspicion': 'Suspicion stands. First: {step}',
  'signs.line.condition-and-check': '{condition} stands first. Next: {check}',
  'signs.line.condition': '{condition} stands first.',
  'signs.line.state-and-check': 'So far: {state}. Next: {check}',
  'signs.line.state': 'So far: {state}.',

  'signs.likelihood.almost-sure': 'almost sure',
  'signs.likelihood.likely': 'likely',
  'signs.likelihood.possible': 'possible',
  'signs.likelihood.cannot-be-left-aside': 'not to be left aside',
  'signs.likelihood.nothing-points-to-it': 'nothing points to it',

  'signs.first.close-the-hive': 'Close the hive.',
  'signs.first.move-nothing': 'Move nothing: no bees, combs, honey or equipment.',
  'signs.first.take-a-specimen': 'Take a specimen.',
  'signs.first.clean-down': 'Clean down before the next colony: gloves, tool, phone.',
  'signs.first.notify': 'Notify as the local law asks.',

  'signs.not-possible.done': '{check}: done.',
  'signs.not-possible.no-living-brood': '{check}: there is no living brood.',
  'signs.not-possible.no-moist-remains': '{check}: needs moist, brown remains.',
  'signs.not-possible.no-remains': '{check}: needs remains or scale.',
  'signs.not-possible.no-sealed-brood': '{check}: there is no sealed brood.',
  'signs.not-possible.no-bees': '{check}: there are no living bees.',
  'signs.not-possible.kit-not-at-hand': '{check}: the kit is not at hand.',
  'signs.not-possible.too-far-dried': '{check}: the remains are too far dried.',

  'signs.missed.one-in':
    'A colony with {cells, plural, one {# diseased cell} other {# diseased cells}} would have shown nothing to this look in about {percent} of 100 cases.',
  'signs.missed.everything':
    'This look would have missed a colony with {cells, plural, one {# diseased cell} other {# diseased cells}}.',
  'signs.missed.too-little-brood': 'Too little brood to judge: seeing nothing means nothing here.',

  'signs.limit.no-combs-seen': 'No combs were looked at',
  'signs.limit.not-every-frame': 'Not every brood frame was looked at',
  'signs.limit.frames-not-said': 'How many frames were looked at was not said',
  'signs.limit.one-side-only': 'One side of the frames only',
  'signs.limit.bees-left-on': 'Bees were left on',
  'signs.limit.shaking-not-said': 'Whether bees were shaken off was not said',
  'signs.limit.poor-light': 'The light was weak',
  'signs.limit.light-not-said': 'The light was not said',
  'signs.limit.top-bar-away': 'Held so that scale cannot show',
  'signs.limit.hold-not-said': 'How the frame was held was not said',
  'signs.limit.no-cells-opened': 'No capped cells were opened',
  'signs.limit.cells-left-unopened': 'Suspicious cells were left unopened',
  'signs.limit.little-sealed-brood': 'Little sealed brood',
  'signs.limit.sealed-brood-not-said': 'The amount of sealed brood was not said',

  'signs.onset.at-least':
    'If it is American foulbrood, the first infection lies at least {days, plural, one {# day} other {# days}} back. How much longer is open.',
  'signs.onset.often-months':
    'If it is American foulbrood, the first infection lies at least {days, plural, one {# day} other {# days}} back, and by common practice so much scale means months. How much longer is open.',

  'signs.caution.respirator':
    'Stonebrood can harm people: lungs, eyes and wounds. Respirator and eye protection before going on.',
  'signs.caution.do-not-shake': 'Do not shake the combs.',
  'signs.caution.never-certain-from-a-look':
    'A look never proves that a colony is without disease, nor that it is sick.',

  'signs.advice.second-cell': 'Look for {from} or {to} more such cells elsewhere in the hive.',
  'signs.advice.laboratory-sample': 'Take a specimen for the laboratory.',
  'signs.advice.laboratory-to-separate': '{one} and {other} look alike here. Ask the laboratory to tell them apart.',
  'signs.advice.repeat-with-rough-dry-stick': 'Repeat the rope test with a rough, dry stick.',
  'signs.advice.recheck-short-thread':
    'A short thread is no positive. Try other cells; otherwise take a specimen, or mark the colony and look again over {months, plural, one {# month} other {# months}} or longer.',
  'signs.advice.treat-mites-and-look-again':
    'Have the mites treated, wait {days, plural, one {# day} other {# days}} and look again: mite damage can hide foulbrood.',
  'signs.advice.keep-opening-cells':
    'Opened so far: {opened} of {suspicious} suspicious cells. Those not opened are not answered by the others.',
  'signs.advice.question-stays-open':
    '{condition} explains what was seen, and foulbrood is still not excluded. Look again in {days, plural, one {# day} other {# days}}.',
  'signs.advice.look-again-after-masking':
    'Look again in {days, plural, one {# day} other {# days}}, when nothing hides the signs any more.',
  'signs.advice.look-at-every-frame':
    'Look at every brood frame on both sides with the bees shaken off, in good light.',
  'signs.advice.look-again-contaminated': 'Spores without signs: look again at the brood, and at the colonies around.',
  'signs.advice.specimen-though-signs-gone': 'Take a specimen although the signs have gone.',

  'signs.prior.assumed': 'Assumed beforehand, expert band',
  'signs.prior.district-count': 'Colonies suspect or confirmed among those looked at in the district',
  'signs.prior.earlier-case-at-apiary': 'Earlier case at this apiary',
  'signs.prior.contact-of-case': 'Contact of a case, found by tracing',
  'signs.prior.honey-positive': 'Spores found in honey or bees of this operation',
  'signs.prior.earlier-suspicion': 'Suspicion from an earlier look',
  'signs.prior.changed-by-hand': 'Changed by the inspector: {reason}',

  'signs.expert-band': 'expert band',
  'signs.no-published-figure': 'no published figure',
} as const;
