import { type ColonyState, drawStateMark } from '@combside/papers/drawings/state-mark';
import { Drawn } from '../ui/drawn.tsx';

const marks: Readonly<Record<string, ColonyState>> = {
  suspect: 'suspect',
  'remains suspect': 'suspect',
  'signs seen': 'signs seen',
  'nothing seen with this look': 'nothing seen',
  'masked, no conclusion': 'masked',
  'too little brood to judge': 'too little brood',
};

/** The mark of the house for the word of a result; no result, and a word of a newer version, is "not opened". */
export function markOfResult(result: string | null): ColonyState {
  return marks[result ?? ''] ?? 'not opened';
}

/** The mark as a picture; its word always stands beside it. */
export function ResultMark({ result, size = 22 }: { readonly result: string | null; readonly size?: number }) {
  return <Drawn drawing={drawStateMark(markOfResult(result))} width={size} name="" />;
}
