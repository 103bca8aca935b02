import { allQuestions } from './all-questions.ts';
import type { Values } from './inputs-in-address.ts';

/** Works out the answers that would hold up the page. */
const scope = self as unknown as DedicatedWorkerGlobalScope;
scope.addEventListener('message', (event: MessageEvent<{ turn: number; question: string; values: Values }>) => {
  const { turn, question, values } = event.data;
  const asked = allQuestions.find((one) => one.id === question);
  if (asked) scope.postMessage({ turn, answer: asked.answer(values as never) });
});
