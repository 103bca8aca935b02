import { type HandoverBody, handover } from '@combside/record/kinds/handover';
import type { VisitState } from '@combside/record/states';
import { type Act, done, refused } from '../act.ts';

/** What is said when the written result is handed over. */
export interface HandOver {
  readonly visit: VisitState;
  /** Null while nobody has said how. */
  readonly how: HandoverBody['how'] | null;
  readonly receiver: string;
  /** A drawn signature in a box of 300 by 100; empty when the typed name stands for it. */
  readonly signaturePath: string;
  readonly handedOverAt: string;
  /** SHA-256 of the content that was shown or printed. */
  readonly contentHash: string;
}

/**
 * Writes down that the result was handed over. A result signed on the screen, or whose taking was refused, needs the name
 * of whoever signed or refused.
 */
export function handOver(input: HandOver): Act {
  const visit = input.visit.visit.current?.body;
  if (!visit?.startedAt) return refused('casework.refused.visit-not-started');
  if (input.how === null) return refused('casework.refused.answer-missing', { question: 'how' });
  if (input.handedOverAt < visit.startedAt) return refused('casework.refused.time-runs-backward');
  const receiver = input.receiver.trim();
  if (receiver === '' && (input.how === 'signed on the screen' || input.how === 'refused')) {
    return refused('casework.refused.answer-missing', { question: 'receiver' });
  }
  const body: HandoverBody = {
    handedOverAt: input.handedOverAt,
    how: input.how,
    receiver,
    signaturePath: input.how === 'signed on the screen' ? input.signaturePath : '',
    contentHash: input.contentHash,
  };
  return done([{ kind: handover.kind, version: handover.version, about: input.visit.about, body, replaces: [] }]);
}
