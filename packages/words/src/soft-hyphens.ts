/** Where long German words may part, at the seams of their parts. */
const seams = [
  'Änderungs|vorschlag',
  'Anzeige|pflichtig',
  'anzeige|pflichtig',
  'Arbeiterinnen|brut',
  'Arbeiterinnen|zellen',
  'auseinander|ziehen',
  'benach|richtigen',
  'beiseite|gelassen',
  'Betretungs|recht',
  'Beuten|boden',
  'Bienen|sach|verständige',
  'Drohnen|mütterchen',
  'fort|geschritten',
  'Geschlossen|heit',
  'Grundstücks|eigentümer',
  'Halbmond|syndrom',
  'Magermilch|pulver',
  'Nach|untersuchung',
  'Programm|version',
  'Sach|verständige',
  'Standard|eingabe',
  'Streichholz|probe',
  'Treff|sicherheit',
  'veröffent|lichte',
  'Wachsmotten|larven',
  'Wahrschein|lichkeit',
  'Waldbrand|gefahr',
  'Zell|deckel',
  'Zell|inhalt',
  'zurück|schnellte',
  'Zusammen|geführt',
  'zusammen|geführt',
  'Zusammen|gesackt',
  'zusammen|gesackt',
].map((word) => [word.replaceAll('|', ''), word.replaceAll('|', '\u00ad')] as const);

/**
 * A text with soft hyphens in its long words, for narrow controls on a screen: not every browser can part German words
 * by itself. Only for showing: what is written down or compared stays without.
 */
export function withSoftHyphens(text: string): string {
  return seams.reduce((parted, [word, seamed]) => parted.replaceAll(word, seamed), text);
}
