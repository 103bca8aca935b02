/** What is said about the reading of a comb photograph. */
export const comb = {
  'comb.verdict.read': 'Read',
  'comb.verdict.refused': 'Not read',
  // Why a picture was not read, and what to do.
  'comb.reason.not-a-picture':
    'This file is not a picture that can be read. Give a JPEG, PNG, WebP, AVIF, TIFF or GIF.',
  'comb.reason.damaged':
    'The file is damaged or incomplete. Copy it from the camera again, or take the photograph again.',
  'comb.reason.file-too-large':
    'The picture has more pixels than can be read here. Shrink it to 50 megapixels or fewer.',
  'comb.reason.picture-too-small':
    'The picture is too small. Use the photograph as the camera took it, not a thumbnail.',
  'comb.reason.no-comb':
    'No comb with visible cells was found. Hold the camera square to the comb, let the comb fill the picture, and take it again.',
  'comb.reason.cells-too-small':
    'The cells are too small to read. Go closer, or use the full-size photograph: each cell needs at least 8 pixels.',
  'comb.reason.out-of-focus': 'The picture is out of focus. Hold still, tap on the comb to focus, and take it again.',
  'comb.reason.too-dark':
    'The picture is too dark. Turn the comb towards the light, your shadow off it, and take it again.',
  'comb.reason.too-bright': 'The picture is too bright. Turn the comb out of the direct sun and take it again.',
  'comb.reason.under-bees': 'Too much of the comb is under bees. Shake the bees off and take it again.',
  'comb.reason.reader-failed':
    'The reading broke off three times. Read this photograph on the device that took it, or take it again.',
  // What a reading cannot say.
  'comb.reason.never-a-diagnosis':
    'A measurement, not a diagnosis. Cappings that do not stand out are no evidence that the brood is sound.',
  'comb.reason.scale-not-visible':
    'A photograph taken face-on cannot show scale: tilt the comb and look along the lower walls.',
  'comb.reason.contents-untested':
    'What open cells hold has been checked on three real photographs only, and was often wrong there: take it as a hint.',
  'comb.reason.contents-uncertain':
    'The cells are small in this picture: sealed and open can be told apart, what open cells hold is uncertain.',
  'comb.reason.unlike-learnt':
    'This comb looks unlike those the reader has learnt from, so it leaves most cells undecided: say yourself what they hold.',
  'comb.reason.eggs-not-visible': 'Eggs and the smallest larvae cannot be seen at this size.',
  'comb.reason.cappings-not-measured':
    'Cappings were not measured: that needs about 25 pixels for each cell. Take a closer picture of the patch in question.',
  'comb.reason.much-hidden': 'More than a third of the comb could not be read.',
  'comb.reason.few-cells': 'Fewer than 100 cells were found: the figures say little about the comb side.',
  'comb.class.sealed-worker-brood': 'Sealed worker brood',
  'comb.class.sealed-drone-brood': 'Sealed drone brood',
  'comb.class.sealed-honey': 'Sealed honey',
  'comb.class.open-empty': 'Open, empty',
  'comb.class.egg-or-larva': 'Egg or larva',
  'comb.class.nectar': 'Nectar',
  'comb.class.pollen': 'Pollen',
  'comb.class.hidden': 'Under a bee or hidden',
  'comb.class.not-decided': 'Not decided',
  'comb.cells': '{count, plural, one {# cell} other {# cells}}',
  'comb.pitch': '{pixels} pixels from cell to cell',
  'comb.brood-area':
    'Brood: {cells, plural, one {# cell} other {# cells}}, about {area} cm² (between {low} and {high})',
  'comb.solidness':
    'Solidness of sealed brood: {share} ({missed} missed beside {sealed} sealed; pollen, nectar and hidden cells are not counted)',
  'comb.solidness.too-few': 'Solidness: too few cells lie within sealed patches to say',
  'comb.stages':
    'Eggs {egg}, larvae {larva}, sealed {sealed}; steady laying shows about {steady} eggs and larvae for that many sealed',
  'comb.plane.corners-set': 'How the comb lay: by the corners of the frame as given',
  'comb.plane.corners-found': 'How the comb lay: by the corners of the frame, found at',
  'comb.plane.lattice': 'How the comb lay: by its cells, without corners of a frame',
  'comb.plane.tilt': 'tilted by about {degrees}° to the camera',
  'comb.plane.tilt-small': 'tilted by less than about {degrees}° to the camera',
  'comb.unread': 'Could not be read: {share}',
  'comb.second-look':
    '{count, plural, =0 {No capping stands out from its neighbours.} one {# capping stands out from its neighbours: look again.} other {# cappings stand out from their neighbours: look again.}}',
  'comb.second-look.brightness': 'darker than its neighbours',
  'comb.second-look.colour': 'another colour than its neighbours',
  'comb.second-look.sunken': 'looks sunken',
  'comb.second-look.perforation': 'looks perforated',
  'comb.second-look.at': 'at {x}, {y}',
  'comb.stage.looking': 'Looking at the picture',
  'comb.stage.lattice': 'Finding the cells',
  'comb.stage.cells': 'Reading the cells',
  'comb.stage.cappings': 'Measuring the cappings',
  'comb.stage.reading': 'Counting',
  'comb.stage.opening': 'Opening the photograph',
  // The screens on which a reading is looked at and corrected.
  'comb.screen.title': 'Comb of colony {label}',
  'comb.screen.photographs': 'Photographs',
  'comb.screen.photograph-taken': 'Photograph kept at {when}',
  'comb.screen.photograph-elsewhere':
    'The photograph is not on this device. It can be read where it was taken, or at the office.',
  'comb.screen.read': 'Read the comb',
  'comb.screen.go-on': 'Go on with the comb reading',
  'comb.screen.look-at': 'See the comb reading',
  'comb.screen.running': 'The comb is being read',
  'comb.screen.stop': 'Stop reading',
  'comb.screen.stopped': 'Stopped. Nothing was read, and the photograph stays with the examination.',
  'comb.screen.failed':
    'The reading broke off. The photograph is still here. Close other programs on this device and try again.',
  'comb.screen.not-read': 'This photograph was not read. It stays with the examination.',
  'comb.screen.back': 'Back to colony {label}',
  'comb.screen.draft-back': 'This reading was begun before. It is not kept yet; everything you said of it is here.',
  'comb.screen.keep': 'Keep with this examination',
  'comb.screen.kept': 'Kept, photographed {when}. Nobody has agreed to it yet, so it does not count in the reasoning.',
  'comb.screen.kept-accepted': 'Kept, photographed {when}. A person looked and agreed.',
  'comb.screen.correct': 'Write the correction',
  'comb.screen.corrected-because': 'Corrected {when}: {reason}',
  'comb.screen.newer':
    'This reading was written by a newer version of the program. It is kept, and cannot be shown here.',
  'comb.screen.picture':
    'Photograph of the comb, {count, plural, one {# cell} other {# cells}}. Arrow keys walk from cell to cell, digits 1 to 9 say what the cell holds, Page Down goes to the next capping to look at again.',
  'comb.screen.how': 'Tap a cell to see it large. Hold the picture to see it bare.',
  'comb.screen.how-keys':
    'Arrow keys walk from cell to cell, digits 1 to 9 say what it holds, Page Down goes to the next capping to look at again, Ctrl and Z take back.',
  'comb.screen.overlay': 'Show what was read',
  'comb.screen.lens': 'One cell, magnified',
  'comb.screen.lens.back': 'Back to the whole comb',
  'comb.screen.step.left': 'Cell to the left',
  'comb.screen.step.right': 'Cell to the right',
  'comb.screen.step.up': 'Cell above',
  'comb.screen.step.down': 'Cell below',
  'comb.screen.cell.ask': 'What does this cell hold?',
  'comb.screen.cell.as-read': 'as the machine read it',
  'comb.screen.cell.read': 'Cell {cell} of {count}: {what}. Read by the machine, which gives it {share}.',
  'comb.screen.cell.agreed': 'Cell {cell} of {count}: {what}. You looked and agree with the machine.',
  'comb.screen.cell.corrected': 'Cell {cell} of {count}: {what}, by your look. The machine read: {read}.',
  'comb.screen.undo': 'Take back the last word on a cell',
  // The corners of the comb, set by a person.
  'comb.screen.photograph-not-opened': 'The photograph could not be opened. It is kept; open this page again.',
  'comb.screen.reading-before': 'Back to the reading as it was',
  'comb.screen.corners': 'Corners of the comb',
  'comb.screen.corners.set': 'Set the comb’s corners',
  'comb.screen.corners.when':
    'If the comb fills only part of the picture, set its corners: then only that part is read.',
  'comb.screen.corners.found':
    'The rings stand where the frame was found. Drag one that is not right, or tap where it belongs.',
  'comb.screen.corners.how':
    'Drag each ring to a corner of the comb, or tap there. Only what lies between the rings is read.',
  'comb.screen.corners.how-keys': 'Arrow keys move this corner, with Shift in larger steps.',
  'comb.screen.corners.crossed':
    'The lines between the rings cross or bend inwards. Move the rings until the lines go once around the comb.',
  'comb.screen.corners.too-small': 'This part is too small to be read. Move the rings further apart.',
  'comb.screen.corners.read': 'Read this part',
  'comb.screen.corners.whole': 'Read the whole picture',
  'comb.screen.corners.back': 'Back without reading',
  'comb.screen.corners.count': 'You set corners: only the part between them is read.',
  'comb.screen.corners.were-set': 'Only the part between the corners that were set was read.',
  'comb.screen.corners.ask':
    '{count, plural, =0 {You agreed to the reading as it stands.} one {You spoke of one cell in this reading. What you said goes along if that cell is found again at its place; if it is not, as outside the corners, your word on it is gone.} other {You spoke of # cells in this reading. What you said goes along for each cell that is found again at its place; for the others, such as those outside the corners, it is gone.}} Look at the new reading and agree to it afresh.',
  'comb.screen.corners.go-on': 'Read afresh',
  'comb.screen.corners.leave': 'Leave the reading as it is',
  'comb.screen.corners.carried':
    '{of, plural, one {{along, plural, =0 {The cell you spoke of was not found again: your word on it is gone.} other {Your word on one cell went along to this reading.}}} other {Of your words on # cells, {along} went along to this reading.}}',
  'comb.screen.corner.top-left': 'Top left corner',
  'comb.screen.corner.top-right': 'Top right corner',
  'comb.screen.corner.bottom-right': 'Bottom right corner',
  'comb.screen.corner.bottom-left': 'Bottom left corner',
  'comb.screen.corner.at': '{across} from the left edge, {down} from the top edge',
  'comb.screen.corner.in-hand': '{corner}: {where}',
  'comb.screen.corner.step.left': '{corner}: a step to the left',
  'comb.screen.corner.step.right': '{corner}: a step to the right',
  'comb.screen.corner.step.up': '{corner}: a step up',
  'comb.screen.corner.step.down': '{corner}: a step down',
  'comb.screen.second-look': 'Cappings to look at again',
  'comb.screen.second-look.one': '{place}: {why}',
  'comb.screen.second-look.next': 'Next capping to look at again',
  'comb.screen.figures': 'What the cells amount to',
  'comb.screen.key': 'Cells of each kind, with their hatching',
  'comb.screen.solidness': 'Solidness of sealed brood: {share} ({missed} missed beside {sealed} sealed)',
  'comb.screen.solidness.how': 'How solidness is counted',
  'comb.screen.solidness.method':
    'A sealed patch is where sealed brood lies on all sides: each place within two steps has at least two sealed cells close by, and no broader band of open cells is near. Within patches, open cells without stores are missed; pollen, nectar, sealed honey, hidden and undecided cells are left out. Solidness is sealed over sealed and missed. A band of young brood only two cells wide is taken for gaps. A method of this program: no published one was found.',
  'comb.screen.agreement.limits': 'Whoever touches only wrong cells makes this small: it is no accuracy.',
  'comb.screen.set-aside':
    '{count, plural, one {# correction} other {# corrections}} of a newer version of the program cannot be read here.',
  'comb.screen.limits': 'What else this reading cannot say ({count})',
  'comb.screen.place': 'Which comb side is this?',
  'comb.screen.evidence': 'Do you stand by this reading?',
  'comb.screen.evidence.what':
    'Only a reading that a person looked at and agreed to counts in the reasoning, as brood pattern and amount of brood seen.',
  'comb.screen.agree': 'I looked and agree',
  'comb.screen.photograph-not-held': 'The photograph is not at the office yet, or did not come. The figures are here.',
  'comb.screen.kept-by': 'Kept by {name}.',
  'comb.screen.corrected-by': 'Corrected by {name}, {when}: {reason}',
  'comb.screen.why': 'Why is it corrected?',
  'comb.screen.place.box': 'Box',
  'comb.screen.place.frame': 'Frame',
  'comb.screen.place.side': 'Side',
  'comb.screen.place.unknown': 'not known',
  'comb.screen.compare': 'The same comb side at other visits',
  'comb.screen.compare.with': 'Set beside it',
  'comb.screen.compare.nothing': 'nothing',
  'comb.screen.compare.change': 'Change',
  'comb.screen.compare.brood': 'Brood, cm²',
  'comb.screen.compare.solidness': 'Solidness of sealed brood',
  'comb.screen.compare.unread': 'Could not be read',
  'comb.screen.compare.too-few': 'too few cells in sealed patches',
  'comb.screen.compare.not-said': 'not told',
  'comb.screen.compare.more': 'more: {difference} (between {low} and {high})',
  'comb.screen.compare.less': 'less: {difference} (between {low} and {high})',
  'comb.screen.compare.within-error': 'no change beyond the error (between {low} and {high})',
  'comb.screen.compare.limits':
    'Combs are moved between visits: that it is the same comb, and not only the same place, no photograph says. Classes are shares of the cells that could be decided.',
  'comb.corrected': '{count, plural, one {# cell corrected by hand} other {# cells corrected by hand}}',
  'comb.agreement': 'You and the machine agreed on {share} of the cells you looked at',
  // Two readings of one comb side, set against each other.
  'comb.compare.other-place': 'These are not the same side of the same comb: no change can be told.',
  'comb.compare.place-not-known':
    'Frame or side was not entered, so nobody can tell whether this is the same comb side. No change is stated.',
  'comb.compare.other-reader':
    'The two were read by different versions of the program. Read the older photograph again to compare them.',
  'comb.compare.much-unread': 'More than half of a comb side could not be read: no change is stated.',
  'comb.compare.unreadable': 'One of the readings was written by a newer version of the program. Update to see it.',
  'comb.compare.other-extent': 'The photographs show different parts of the side, so the areas are not compared.',
  'comb.compare.some-unread': 'More than three tenths of a comb side could not be read: the figures are uncertain.',
  'comb.compare.few-cells': 'Fewer than 100 cells were found: the figures say little.',
  'comb.compare.not-accepted': 'One of the readings has not been accepted by anybody.',
  'comb.compare.more': 'more',
  'comb.compare.less': 'less',
  'comb.compare.within-error': 'no change beyond the error',
  'comb.command.usage':
    'combside read PHOTOGRAPH or FOLDER [--json] [--language en|de] [--corners x,y,x,y,x,y,x,y | --region "x,y x,y x,y ..."]',
  'comb.command.progress': '{number} of {count}: {file}',
  'comb.command.stopped': 'Stopped after {done} of {count}. What is written above is whole.',
  'comb.table.file': 'photograph',
  'comb.table.verdict': 'verdict',
  'comb.table.pitch': 'px a cell',
  'comb.table.cells': 'cells',
  'comb.table.brood': 'brood',
  'comb.table.solidness': 'solidness',
  'comb.table.unread': 'not read',
  'comb.table.second-look': 'look again',
  'comb.command.missing': 'There is no file or folder "{path}".',
  'comb.command.empty-folder': 'The folder "{path}" holds no pictures.',
  'comb.command.bad-region':
    'The region "{text}" is not three or more corners written as x,y with spaces between them.',
  'comb.command.bad-corners':
    'The corners "{text}" are not eight numbers x,y,x,y,x,y,x,y that go round the opening of the frame, corner by corner.',
  'comb.command.corners-or-region': 'Give the corners of the frame or a region, not both.',
  'comb.command.bad-option': 'The option "{option}" is not known.',
} as const;
