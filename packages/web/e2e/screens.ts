/**
 * Every screen whose accessibility is judged in a journey, because only a journey leads to it: half of the program, name,
 * language. Each is judged exactly once in a whole run (`journey.ts`, held by `checks/screens`), and not on the stage
 * besides (`../stage/screens.ts`); a theme of other colours is a screen of its own.
 */
export const screens = [
  'desk/import-done/en',
  'desk/keep-note/en',
  'desk/note-on-apiary/en',
  'desk/office-corrected/en',
  'desk/office-silent/en',
  'desk/office-visit/en',
  'phone/chance-so-far/en',
  'phone/corrected/de',
  'phone/corrected/en',
  'phone/new-version/en',
  'phone/note-on-visit/en',
  'phone/reasoning-known/en',
  'phone/reasoning-numbers/en',
  'phone/result-signed/en',
  'phone/roadside-kept/en',
  'phone/roadside-no-position/en',
  'phone/test-read-here/en',
] as const;

export type Screen = (typeof screens)[number];
