import type { Act } from '@combside/casework/act';
import { type Assessed, assessExamination } from '@combside/casework/assess/assess-examination';
import { examinationSoFar, type ReasoningLine, reasoningLine } from '@combside/casework/assess/line';
import { type CloseColony, closeColony } from '@combside/casework/examine/close-colony';
import type { Draft } from '@combside/casework/examine/draft';
import type { Pack } from '@combside/law/pack';
import type { ExaminationBody } from '@combside/record/kinds/examination';
import type { ColonyState } from '@combside/record/states';

/** What the page asks. The reasoning runs here, so that no tap ever waits for it. */
export type Question =
  | {
      readonly ask: 'line';
      readonly draft: Draft;
      readonly colony: ColonyState;
      readonly pack: Pack;
      readonly observedAt: string;
    }
  | {
      readonly ask: 'whole';
      readonly draft: Draft;
      readonly colony: ColonyState;
      readonly visit: string;
      readonly pack: Pack;
      readonly observedAt: string;
    }
  | { readonly ask: 'close'; readonly input: CloseColony };

export interface Answers {
  readonly line: ReasoningLine;
  readonly whole: Assessed;
  readonly close: Act<{ readonly examination: ExaminationBody; readonly assessed: Assessed }>;
}

export type Reply =
  | { readonly turn: number; readonly ok: true; readonly answer: Answers[Question['ask']] }
  | { readonly turn: number; readonly ok: false; readonly why: string };

function answer(question: Question): Answers[Question['ask']] {
  switch (question.ask) {
    case 'line':
      return reasoningLine(question.draft, { ...question, suspicionStands: false });
    case 'whole':
      return assessExamination({
        examination: examinationSoFar(question.draft, question.observedAt),
        colony: question.colony,
        visit: question.visit,
        pack: question.pack,
        suspectedByInspector: [],
      });
    case 'close':
      return closeColony(question.input);
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
