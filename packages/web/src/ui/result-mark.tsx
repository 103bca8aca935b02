import { markOfResult } from '@combside/casework/result/result-mark';
import { drawStateMark } from '@combside/papers/drawings/state-mark';
import { Drawn } from './drawn.tsx';

interface ResultMarkProps {
  /** A word of a result, or how a colony stands at a visit; no result is drawn as "not opened". */
  readonly result: string | null;
  readonly size?: number;
}

/** The mark as a picture; its word always stands beside it, so it is hidden from a screen reader. */
export function ResultMark({ result, size = 22 }: ResultMarkProps) {
  return <Drawn drawing={drawStateMark(markOfResult(result))} width={size} name="" />;
}
