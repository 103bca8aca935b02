/** What stands on every screen, whichever room of the house it is in. */
export const always = {
  'always.program': 'Combside',
  'always.invented': 'Invented example',
  'always.language.en': 'English',
  'always.language.de': 'Deutsch',
  'always.back': 'Back',
  'always.back-to': 'Back to {place}',
  'always.close': 'Close',
  'always.undo': 'Undo',
  'always.more': 'More',
  'always.less': 'Less',
  'always.yes': 'Yes',
  'always.no': 'No',
  'always.not-asked': 'Not asked',
  'always.not-known': 'Not known',
  'always.none': 'None',
  'always.n-of-m': '{n} of {m}',
  'always.signed-in': 'Signed in: {name}',
  'always.saved.here': 'Saved here',
  'always.saved.not-yet': 'Not saved yet',
  'always.saved.office': 'At the office',
  'always.network.none': 'No network',
  'always.network.present': 'Network found',
  'always.apiary': '{count, plural, one {# apiary} other {# apiaries}}',
  'always.colony': '{count, plural, one {# colony} other {# colonies}}',
  'always.newer-version': 'Written by a newer version',
  'always.went-wrong': 'This did not work. What was saved before is still here.',
  'always.write.busy': 'Writing…',
  'always.write.written': 'Written. It is on its way to the office.',
  'always.write.sent': 'Written, and at the office.',
  'always.write.no-store':
    'This browser gives no store, or another window holds it. Close other windows of Combside and try again.',
  'always.write.failed.storage full':
    'Not written: the storage of this device is full. What you entered is still here. Make room, for example by sending photographs to the office, and try again.',
  'always.write.failed.store closed':
    'Not written: this window has lost its store. Note what you entered on this screen, then open Combside anew. What was saved before is still there.',
  'always.write.failed.no answer':
    'Not written: this needs the newest records of the office, and the office did not answer. What you entered is still here. Try again when there is a connection.',
  'always.write.failed.other':
    'Not written. What you entered is still here: try again. If it goes on, save a fault report.',
} as const;
