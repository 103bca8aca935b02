import type { Act } from '@combside/casework/act';
import type { Assessed } from '@combside/casework/assess/assess-examination';
import { withWhatWasSaid } from '@combside/casework/assess/circumstances';
import { examinationSoFar, type ReasoningLine, reasoningLine } from '@combside/casework/assess/line';
import { type ReasoningInput, type WholeReasoning, wholeReasoning } from '@combside/casework/assess/whole-reasoning';
import type { ExaminationDraft } from '@combside/casework/draft/examination-draft';
import { type CloseColony, closeColony } from '@combside/casework/examine/close-colony';
import { type CorrectExamination, correctExamination } from '@combside/casework/examine/correct-examination';
import type { Pack } from '@combside/law/pack';
import type { CircumstancesKnown } from '@combside/record/kinds/assessment';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';

interface OfDraft {
  readonly draft: ExaminationDraft;
  readonly colony: ColonyState;
  readonly pack: Pack;
  readonly observedAt: string;
  readonly known: CircumstancesKnown | null;
}

/** What the page asks. The reasoning runs here, so that no tap ever waits for it. */
export type Question =
  | ({ readonly ask: 'line'; readonly visit: string } & OfDraft)
  | ({ readonly ask: 'whole'; readonly visit: string } & OfDraft)
  | ({ readonly ask: 'examined' } & ReasoningInput)
  | { readonly ask: 'close'; readonly input: CloseColony }
  | { readonly ask: 'correct'; readonly input: CorrectExamination };

export interface Answers {
  readonly line: ReasoningLine;
  readonly whole: WholeReasoning;
  readonly examined: WholeReasoning;
  readonly close: Act<{ readonly examination: ExaminationBody; readonly assessed: Assessed }>;
  readonly correct: Act<{ readonly examination: ExaminationBody; readonly assessed: Assessed }>;
}

export type Reply =
  | { readonly turn: number; readonly ok: true; readonly answer: Answers[Question['ask']] }
  | { readonly turn: number; readonly ok: false; readonly why: string };

function answer(question: Question): Answers[Question['ask']] {
  switch (question.ask) {
    case 'line':
      return reasoningLine(question.draft, { ...question, suspicionStands: false });
    case 'whole':
      return wholeReasoning({
        examination: { ...examinationSoFar(question.draft, question.observedAt), visit: question.visit },
        entry: null,
        colony: question.colony,
        pack: question.pack,
        known: withWhatWasSaid(question.known, question.draft),
        priorChanges: question.draft.priorChanges,
        suspectedByInspector: [],
        now: question.observedAt,
      });
    case 'examined':
      return wholeReasoning(question);
    case 'close':
      return closeColony(question.input);
    case 'correct':
      return correctExamination(question.input);
  }
}

addEventListener('message', ({ data }: MessageEvent<{ turn: number; question: Question }>) => {
  const { turn, question } = data;
  try {
    postMessage({ turn, ok: true, answer: answer(question) } satisfies Reply);
  } catch (error) {
    postMessage({ turn, ok: false, why: error instanceof Error ? error.message : 'failed' } satisfies Reply);
  }
});
