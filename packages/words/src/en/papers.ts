/** What stands on papers handed over. Plain words for a keeper; nothing claimed that a look cannot show. */
export const papers = {
  'papers.page': 'Page {page} of {pages}',
  'papers.invented': 'Invented example. No real person, apiary or finding.',
  'papers.invented-short': 'Invented example',
  'papers.draft': 'Draft: the visit has not ended',
  'papers.newer-word': '{word} (written by a newer version)',

  'papers.inspection.title': 'Inspection record',
  'papers.inspection.replaces':
    'Result no. {number}, corrected. It replaces the result handed over on {when}: no longer use that one.',
  'papers.inspection.title-at': 'Inspection record: {apiary}, {day}',
  'papers.inspection.footer': 'Inspection record · {apiary} · {day} · content {hash}',
  'papers.inspection.what-it-says':
    'This paper says what was seen at this visit and how it was looked for. A look can miss a light infection, and infection without signs. It does not rule disease out.',

  'papers.summary.title': 'Result',
  'papers.summary.suspect': '{count, plural, one {# colony is suspect} other {# colonies are suspect}}: {colonies}.',
  'papers.summary.suspect-of': 'Suspected: {conditions}. A suspicion is not a confirmed case.',
  'papers.summary.nothing-seen':
    '{count, plural, one {Nothing seen with this look in # colony} other {Nothing seen with this look in # colonies}} of {all}.',
  'papers.summary.signs':
    '{count, plural, one {Signs seen, cause not settled, in # colony} other {Signs seen, cause not settled, in # colonies}}: {colonies}.',
  'papers.summary.masked':
    '{count, plural, one {No conclusion in # colony, because something else masks the brood} other {No conclusion in # colonies, because something else masks the brood}}: {colonies}.',
  'papers.summary.too-little':
    '{count, plural, one {Too little brood to judge in # colony} other {Too little brood to judge in # colonies}}: {colonies}.',
  'papers.summary.not-judged':
    '{count, plural, one {# colony was opened and not judged} other {# colonies were opened and not judged}}: {colonies}.',
  'papers.summary.not-opened':
    '{count, plural, one {# colony was not opened} other {# colonies were not opened}}: {colonies}.',
  'papers.summary.and-more': '{some} and {count} more',
  'papers.summary.no-colonies': 'No colony is recorded at this visit.',

  'papers.visit.title': 'Visit',
  'papers.visit.apiary': 'Apiary',
  'papers.visit.where': 'Where it stands',
  'papers.visit.position': '{latitude}, {longitude}, within {metres}',
  'papers.visit.keeper': 'Keeper',
  'papers.visit.keeper-unknown': 'Not known yet',
  'papers.visit.name-number': '{name}, no. {number}',
  'papers.visit.inspector': 'Inspector',
  'papers.visit.time': 'Start and end',
  'papers.visit.from-to': '{day}, {from} to {to}',
  'papers.visit.from': '{day}, from {from}',
  'papers.visit.reason': 'Why',
  'papers.visit.power': 'By what right',
  'papers.visit.present': 'Present',
  'papers.visit.nobody': 'Nobody besides the inspector',
  'papers.visit.name-role': '{name} ({role})',
  'papers.visit.temperature': 'Air temperature',
  'papers.visit.warnings': 'Warned of at the start',
  'papers.visit.warning': '{warning}. Answer: {answer}',
  'papers.visit.colonies': 'Colonies',
  'papers.visit.colonies-counted': '{count} counted on site, {opened} opened',
  'papers.visit.colonies-not-counted': '{opened} opened; the number on site was not counted',

  'papers.plan.title': 'The apiary',
  'papers.plan.caption': 'Hives as they stand, north up, in the order walked (dotted).',
  'papers.plan.in-words': 'Plan of the apiary. In walking order: {colonies}.',
  'papers.plan.colony': '{label}: {result}',

  'papers.glance.title': 'Colony by colony',
  'papers.glance.colony': 'Colony',
  'papers.glance.hive': 'Hive',
  'papers.glance.looked-at': 'What was looked at',
  'papers.glance.result': 'Result',

  'papers.look.frames': '{seen} of {held} brood frames',
  'papers.look.in-box': '{box}: {frames}',
  'papers.look.not-opened': 'Not opened. {why}',

  'papers.missed.title': 'What these looks could have missed',
  'papers.missed.colonies': '{count, plural, one {Colony {colonies}} other {Colonies {colonies}}}: {what}',
  'papers.missed.full':
    'Every brood frame was looked at. A few diseased cells among many, and infection that shows no sign yet, can still go unseen.',
  'papers.missed.frames':
    'Not every brood frame was looked at on both sides. Disease on a side not looked at was not seen.',
  'papers.missed.bees-on':
    'Bees were left on the combs. They hide cells, and a light infection is easily missed under them.',
  'papers.missed.frames-and-bees':
    'Not every brood frame was looked at on both sides, and bees were left on the combs. Disease not looked at, or hidden under bees, was not seen.',
  'papers.missed.tops': 'No brood was looked at. This look says nothing about the brood.',
  'papers.missed.scale':
    'The combs were not held so that the lower cell walls show. Dark scale lying there was not seen.',
  'papers.missed.empty-full':
    'All combs were looked at for scale. A single scale in old dark comb can still go unseen.',

  'papers.detail.title': 'What was found',
  'papers.detail.colony': 'Colony {label}: {result}',
  'papers.detail.suspected': 'Suspected',
  'papers.detail.looked-at': 'Looked at',
  'papers.detail.at': 'Opened at',
  'papers.detail.sealed-brood': 'Sealed brood',
  'papers.detail.comb-sides': '{count, plural, one {{text} comb side} other {{text} comb sides}}',
  'papers.detail.medicines': 'Medicine, says the keeper',
  'papers.detail.comb-changes': 'Combs changed, says the keeper',
  'papers.detail.answer-what': '{answer}: {what}',
  'papers.detail.answer-last-on': '{answer}, last on {day}',
  'papers.detail.remarks': 'Remarks',

  'papers.signs.title': 'Signs seen in colony {label}',
  'papers.signs.sign': 'Sign',
  'papers.signs.how-many': 'How many',
  'papers.signs.where': 'Where',
  'papers.signs.drawn': 'Drawing: {sign}',
  'papers.signs.place': '{box}, frame {frame}, side {side}',
  'papers.signs.place-frame': '{box}, frame {frame}',
  'papers.signs.place-side': '{box}, side {side}',
  'papers.signs.side.a': 'A',
  'papers.signs.side.b': 'B',
  'papers.signs.affected-of': '{place}: {affected} of {opened} cells opened',
  'papers.signs.affected': '{place}: {affected, plural, one {# cell} other {# cells}}',
  'papers.signs.opened': '{place}: {opened, plural, one {# cell opened} other {# cells opened}}',
  'papers.signs.not-seen-title': 'Looked for and not seen',
  'papers.signs.not-seen': '{count, plural, one {Colony {colonies}} other {Colonies {colonies}}}: {signs}.',
  'papers.signs.not-looked': 'A sign that stands nowhere on this paper was not looked for.',

  'papers.rope.title': 'Rope tests in colony {label}',
  'papers.rope.where': 'Where',
  'papers.rope.remains': 'Remains',
  'papers.rope.thread': 'Thread',
  'papers.rope.snaps': 'Snaps back',
  'papers.rope.colour': 'Colour',
  'papers.rope.stick': 'Stick',
  'papers.rope.none-drawn': 'no thread drawn',
  'papers.rope.yes': 'yes',
  'papers.rope.no': 'no',
  'papers.rope.not-said': 'not said',
  'papers.rope.drawn': 'Rope test: a thread of {length}',

  'papers.finds.seen': 'Also found',
  'papers.finds.not-seen': 'Looked for, not found',
  'papers.finds.amount': '{find} ({amount})',

  'papers.photographs.title': 'Photographs',
  'papers.photographs.of-colony': 'Photographs of colony {label}',
  'papers.photographs.taken': 'Taken',
  'papers.photographs.hash': 'SHA-256 of the original',
  'papers.photographs.no-caption': 'no caption',

  'papers.specimens.title': 'Specimens taken',
  'papers.specimens.id': 'Number',
  'papers.specimens.colony': 'Colony',
  'papers.specimens.what': 'What',
  'papers.specimens.taken': 'Taken',
  'papers.specimens.none': 'No specimen was taken.',

  'papers.remarks.title': 'Remarks',

  'papers.clean-down.title': 'Clean-down',
  'papers.clean-down.when': 'When',
  'papers.clean-down.after': 'after colony {label}',
  'papers.clean-down.exit': 'at the exit',
  'papers.clean-down.when-where': '{time}, {where}',
  'papers.clean-down.gloves': 'Gloves',
  'papers.clean-down.tool': 'Hive tool',
  'papers.clean-down.phone': 'Phone',
  'papers.clean-down.none': 'No clean-down is recorded.',
  'papers.clean-down.soda': 'Washing soda cleans. It does not kill foulbrood spores.',

  'papers.open.title': 'Still open',
  'papers.open.nothing': 'Nothing is open from this visit.',
  'papers.open.suspicion':
    '{count, plural, one {The suspicion in colony {colonies} is open until the authority confirms or lifts it.} other {The suspicions in colonies {colonies} are open until the authority confirms or lifts them.}}',
  'papers.open.laboratory':
    '{count, plural, one {The laboratory has one specimen to answer.} other {The laboratory has # specimens to answer.}}',

  'papers.next.title': 'What comes next',

  'papers.cautions.title': 'Cautions',
  'papers.cautions.stings':
    'Stings: whoever knows of a severe allergy does not work bees. Faint, breathless or unwell after a sting: walk out at once to where an ambulance can reach you, and call for help.',
  'papers.cautions.lifting':
    'Lifting: a full deep box weighs up to 36 kg. Lift with two people, and keep the way out free.',
  'papers.cautions.fire':
    'Fire: burn colonies or equipment only when ordered, in the way local law allows, with fire bans looked up, water at hand and somebody with you. Never light petrol.',
  'papers.cautions.caustics':
    'Caustic soda and bleach burn eyes and skin: goggles, strong waterproof gloves and boots, never mixed with one another, by people who are trained for it.',
  'papers.cautions.drugs':
    'Medicines for bees are used only as licensed where you are, and never to hide the signs of a notifiable disease.',
  'papers.cautions.law':
    'This paper gives advice. What you must do is said by the local law and by the notices of the authority.',

  'papers.signatures.title': 'Signatures',
  'papers.signatures.inspector': 'Inspector',
  'papers.signatures.receiver': 'Received by',
  'papers.signatures.name-at': '{name}, {at}',
  'papers.signatures.typed': 'The typed name stands for the signature.',
  'papers.signatures.drawn': 'Signature of {name}',
  'papers.signatures.missing': 'Not signed yet',
  'papers.signatures.how.paper shared': 'paper shared',
  'papers.signatures.how.signed on the screen': 'signed on the screen',
  'papers.signatures.how.read out': 'read out',
  'papers.signatures.how.left at the site': 'left at the site',
  'papers.signatures.how.refused': 'taking it was refused',

  'papers.proof.title': 'How to check this paper',
  'papers.proof.says':
    'It was made from entries that are signed and never changed. The office can show each of them; a correction is an entry of its own.',
  'papers.proof.content': 'Content (SHA-256)',
  'papers.proof.visit': 'Visit',
  'papers.proof.entries': 'Entries',
} as const;
