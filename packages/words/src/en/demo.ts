/** What the command line says while it plays the main journey. Every number in it is put in from what really happened. */
export const demo = {
  'demo.title': 'One visit from hive to office, in the invented district of Quillmoor',
  'demo.step': '{number}. {what}',
  'demo.server': 'Office started on a database of its own at {address}',
  'demo.planted': '{entries} signed entries of two invented years stored; {accounts} accounts made',
  'demo.phone':
    'Phone of {name}: {fetched} entries fetched, {apiaries} apiaries on it, signature of the office checked',
  'demo.today': 'Today: {visits, plural, one {# visit} other {# visits}}; first {apiary} at {time}, reason: {reason}',
  'demo.signal-lost': 'The signal is gone. From here on the phone is alone.',
  'demo.started': 'Visit started: {registered} colonies registered, {counted} counted',
  'demo.warning': 'Warning: {text}',
  'demo.colony': 'Colony {label}: {result}',
  'demo.reasoning': 'Reasoning: {text}',
  'demo.order': 'In order: {conditions}',
  'demo.basis': 'Suspicion by {basis, select, inspector {the inspector} other {the rule in {article}}}',
  'demo.owed': 'Before the next colony: {text}',
  'demo.clean-down': 'Clean-down answered {where, select, exit {at the exit} other {after colony {where}}}',
  'demo.ended':
    'Visit ended: {opened} of {count} colonies opened, {open, plural, =0 {nothing left open} one {# thing left open} other {# things left open}}',
  'demo.paper': 'Written result: PDF of {bytes} bytes at {path}',
  'demo.fingerprint': 'Fingerprint of its content: {hash}',
  'demo.duty': 'Owed: {duty}, {owedBy}, {when} ({article})',
  'demo.sealed': '{entries} entries sealed on the phone, {waiting} waiting for a network',
  'demo.chain':
    'Chain of the phone checked, entry by entry: {faults, plural, =0 {no fault} one {# fault} other {# faults}}',
  'demo.signal-found': 'Network found: {sent} entries sent, {refused} refused, {waiting} waiting',
  'demo.office':
    '{name} in the office reads the visit: {examinations} examinations, {suspects} suspect, as on the phone',
  'demo.all-worked': 'All steps worked.',
  'demo.failed': 'This step did not work: {reason}',
} as const;
