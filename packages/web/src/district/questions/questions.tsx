import './questions.css';
import type { Language } from '@combside/words/language';
import { Link } from 'wouter';
import { SpeaksWords, useWords } from '../../ui/words-context.tsx';
import { allQuestions } from './all-questions.ts';
import { QuestionPage } from './question-page.tsx';

interface QuestionsProps {
  readonly language: Language;
  /** Id of the question in the address; null for none. */
  readonly asked: string | null;
}

/** The figures of the office, each as a question. */
export default function Questions({ language, asked }: QuestionsProps) {
  return (
    <SpeaksWords language={language} rooms={['always', 'district', 'questions', 'disposal', 'casework']}>
      <Asked asked={asked} />
    </SpeaksWords>
  );
}

function Asked({ asked }: { readonly asked: string | null }) {
  const words = useWords();
  const question = allQuestions.find((one) => one.id === asked);
  return (
    <>
      <nav className={`office-list questions-list ${question ? 'chosen' : ''}`} aria-label={words.say('questions.all')}>
        <h2>{words.say('questions.all')}</h2>
        <ul className="rows">
          {allQuestions.map(({ id }) => (
            <li key={id}>
              <Link className="office-line" href={`/questions/${id}`} aria-current={id === asked ? 'page' : undefined}>
                <strong>{words.say(`questions.${id}`)}</strong>
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {question ? (
        <QuestionPage key={question.id} question={question} />
      ) : (
        <main className="office-page">
          <p className="quiet">{words.say(asked === null ? 'questions.choose' : 'questions.unknown')}</p>
        </main>
      )}
    </>
  );
}
