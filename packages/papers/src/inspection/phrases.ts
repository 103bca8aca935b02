import type { ColonyRecord, InspectionRecord } from '@combside/casework/report/inspection-record';
import { saysSuspect } from '@combside/casework/result/results-by-gravity';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { WordPattern } from '@combside/words/rooms';
import type { Words } from '@combside/words/words';

/** The words an inspection paper is written with. */
export type PaperWords = Words<'papers' | 'casework' | 'signs'>;

/** Whether a suspicion stands in this colony. */
export function isSuspect(colony: ColonyRecord): boolean {
  return saysSuspect(colony.result);
}

/** What a corrected result says of the one before it; nothing on the first. */
export function replacesWords(words: PaperWords, record: InspectionRecord): string | null {
  const { number, replaces } = record.issue;
  if (replaces === null) return null;
  return words.say('papers.inspection.replaces', { number, when: words.dayAndTime(replaces, record.visit.timeZone) });
}

/** A text with its first letter large, to stand at the beginning of a line or cell. */
export function capital(text: string): string {
  const [first = '', ...rest] = text;
  return first.toUpperCase() + rest.join('');
}

type PaperRoom = 'papers' | 'casework' | 'signs';

/** A word the record carries, by the pattern of its id; said to be of a newer version when nobody here knows it. */
export function wordFor<const Pattern extends string>(
  words: PaperWords,
  pattern: WordPattern<PaperRoom, Pattern>,
  kept: string,
): string {
  return words.sayOne(pattern, kept) ?? words.say('papers.newer-word', { word: kept });
}

export function signName(words: PaperWords, sign: string): string {
  return wordFor(words, 'signs.sign.*.name', sign);
}

export function conditionName(words: PaperWords, condition: string): string {
  return wordFor(words, 'signs.condition.*.name', condition);
}

/** What was looked at, box by box, in words: "9 of 9 brood frames, both sides, bees shaken off". */
export function lookWords(words: PaperWords, colony: ColonyRecord): string {
  const { look } = colony;
  if (look === null) {
    return colony.whyNotOpened
      ? words.say('papers.look.not-opened', { why: colony.whyNotOpened })
      : capital(words.say('casework.result.not opened'));
  }
  const parts: string[] = [];
  if (look.depth === 'full' || look.depth === 'part') {
    const several = look.boxes.length > 1;
    for (const box of look.boxes) {
      const frames = [
        words.say('papers.look.frames', { seen: box.framesSeen, held: box.framesHeld }),
        ...(box.framesSeen > 0 ? [words.say(`casework.sides.${box.sides}`)] : []),
      ].join(', ');
      parts.push(several ? words.say('papers.look.in-box', { box: box.box, frames }) : frames);
    }
    if (look.beesShaken !== null) parts.push(words.say(look.beesShaken ? 'casework.shaken.yes' : 'casework.shaken.no'));
    if (colony.hiveState !== 'living' && look.hold) parts.push(words.say(`casework.hold.${look.hold}`));
  } else {
    parts.push(words.say(`casework.depth.${look.depth}`));
  }
  return capital(parts.join(look.boxes.length > 1 ? '; ' : ', '));
}

type MissedId = Extract<Parameters<PaperWords['say']>[0], `papers.missed.${string}`>;

/**
 * What this look could have missed, as one sentence without a number: no probability stands on a paper handed over.
 * Null when the colony was not opened: then the result says it.
 */
export function couldHaveMissed(colony: ColonyRecord): MissedId | null {
  const { look } = colony;
  if (look === null) return null;
  if (look.depth !== 'full' && look.depth !== 'part') return 'papers.missed.tops';
  const everyFrame = look.boxes.every((box) => box.framesSeen === box.framesHeld && box.sides === 'both');
  if (colony.hiveState !== 'living') {
    if (look.hold !== 'top bar toward the viewer') return 'papers.missed.scale';
    return everyFrame ? 'papers.missed.empty-full' : 'papers.missed.frames';
  }
  if (everyFrame) return look.beesShaken ? 'papers.missed.full' : 'papers.missed.bees-on';
  return look.beesShaken ? 'papers.missed.frames' : 'papers.missed.frames-and-bees';
}

type Place = Pick<ExaminationBody['signs'][number]['places'][number], 'box' | 'frame' | 'side'>;

export function placeWords(words: PaperWords, { box, frame, side }: Place): string {
  const sideWords = side === null ? '' : words.say(side === 'a' ? 'papers.signs.side.a' : 'papers.signs.side.b');
  if (frame !== null && side !== null) return words.say('papers.signs.place', { box, frame, side: sideWords });
  if (frame !== null) return words.say('papers.signs.place-frame', { box, frame });
  if (side !== null) return words.say('papers.signs.place-side', { box, side: sideWords });
  return box;
}

/** Where a sign was seen, with the cells opened and affected there. */
export function cellsWords(words: PaperWords, place: ExaminationBody['signs'][number]['places'][number]): string {
  const at = placeWords(words, place);
  const { cellsOpened: opened, cellsAffected: affected } = place;
  if (opened !== null && affected !== null)
    return words.say('papers.signs.affected-of', { place: at, affected, opened });
  if (affected !== null) return words.say('papers.signs.affected', { place: at, affected });
  if (opened !== null) return words.say('papers.signs.opened', { place: at, opened });
  return at;
}

/** What the keeper answered about medicine or comb changes. */
export function askedWords(words: PaperWords, asked: ExaminationBody['medicines']): string {
  if (!asked.asked || asked.answer === null) return words.say('casework.answer.not asked');
  const answer = words.say(`casework.answer.${asked.answer}`);
  const dated = asked.lastOn
    ? words.say('papers.detail.answer-last-on', { answer, day: words.day(asked.lastOn) })
    : answer;
  return asked.what ? words.say('papers.detail.answer-what', { answer: dated, what: asked.what }) : dated;
}

export function whenWords(words: PaperWords, visit: InspectionRecord['visit']): string {
  const day = words.dayOf(visit.startedAt, visit.timeZone);
  const from = words.clockTime(visit.startedAt, visit.timeZone);
  if (visit.endedAt === null) return words.say('papers.visit.from', { day, from });
  const sameDay = day === words.dayOf(visit.endedAt, visit.timeZone);
  const to = sameDay ? words.clockTime(visit.endedAt, visit.timeZone) : words.dayAndTime(visit.endedAt, visit.timeZone);
  return words.say('papers.visit.from-to', { day, from, to });
}

/** What a look at a colony came to, in words. */
export const resultWord = (colony: ColonyRecord, words: PaperWords): string =>
  words.say(`casework.result.${colony.result}`);
