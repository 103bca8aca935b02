/** What `combside verify` and `combside export` say about a whole record. */
export const check = {
  'check.depth.entry': 'Checked: each body against its hash, each signature against its key.',
  'check.depth.chain':
    'Checked: each body and signature, and that every chain runs without gap or fork from a device the office vouches for.',
  'check.depth.copy':
    'Checked: each body and signature, every chain, and that nothing is missing before the heads the office signed at {at}.',
  'check.counted':
    '{entries, plural, one {# entry} other {# entries}} in {chains, plural, one {# chain} other {# chains}}; {refused} refused, {erased} with an erased body.',
  'check.holds': 'The record holds.',
  'check.fails': '{findings, plural, one {One thing does not hold:} other {# things do not hold:}}',
  'check.finding': 'device {device}, entry {seq}: {fault}',
  'check.of-the-whole': 'the whole: {fault}',
  'check.more': 'and {count} more',
  'check.key-of-its-own':
    'The key was taken from the file itself: this shows that the file agrees with itself, not whose it is. Give --key with the key the office told you.',
  'check.key': 'Key of the office: {key}',
  'check.exported':
    '{entries, plural, one {# entry} other {# entries}} written to {path}, {bytes} bytes, SHA-256 {hash}.',
} as const;
