/**
 * What the look comes to. None of them opens, refuses or closes a case: suspicion is the inspector's act, or a pack's
 * rule on a named sign or test.
 */
export type StateId =
  | 'suspicion-stands'
  | 'remains-suspect'
  | 'contaminated-not-clinical'
  | 'masked'
  | 'too-little-brood'
  | 'not-looked'
  | 'look-too-narrow'
  | 'nothing-seen'
  | 'signs-seen'
  | 'signs-unexplained';
