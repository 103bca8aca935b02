import type { WalkWord } from '@combside/casework/examine/walk';
import { type ColonyState, drawStateMark } from '@combside/papers/drawings/state-mark';
import { Drawn } from './drawn.tsx';

const marks: Record<WalkWord, ColonyState> = {
  'not opened': 'not opened',
  'being looked at': 'not opened',
  'nothing seen with this look': 'nothing seen',
  'signs seen': 'signs seen',
  suspect: 'suspect',
  'masked, no conclusion': 'masked',
  'too little brood to judge': 'too little brood',
  'not judged': 'not opened',
};

/** The mark of the house for how a colony stands at a visit. */
export function markOf(word: WalkWord): ColonyState {
  return marks[word];
}

/** The mark as a picture; its word always stands beside it, so it is hidden from a screen reader. */
export function StateMark({ word, size }: { readonly word: WalkWord; readonly size: number }) {
  return <Drawn drawing={drawStateMark(markOf(word))} width={size} name="" />;
}
