import { unsettled } from '@combside/contract/unsettled';
import { Link } from 'wouter';
import { useWords } from '../../ui/words-context.tsx';
import { useDistrictName } from '../district-name.tsx';
import { Unanswered } from '../office/unanswered.tsx';
import { useAsked } from '../office/use-asked.ts';

const folders = { apiary: 'apiaries', keeper: 'keepers', colony: 'colonies' } as const;

/** Records that wait for somebody's word; each opens where it can be given. */
export function UnsettledList() {
  const words = useWords();
  const districtName = useDistrictName();
  const asked = useAsked(unsettled, '/api/register/unsettled?limit=200', () => true);
  const { answer, state } = asked;
  return (
    <>
      <h2>{words.say('register.settle')}</h2>
      <p className="quiet">{words.say('register.settle.intro')}</p>
      {state === 'asking' && !answer && <p className="quiet">{words.say('register.loading')}</p>}
      <Unanswered asked={asked} />
      {answer?.lines.length === 0 && <p>{words.say('register.settle.none')}</p>}
      <ul className="rows" aria-label={words.say('register.settle')}>
        {answer?.lines.map((line) => (
          <li key={line.id}>
            <Link className="office-line" href={`/register/${folders[line.type]}/${line.id}`}>
              <strong>{line.type === 'colony' ? words.say('register.colony', { label: line.name }) : line.name}</strong>
              <span className="quiet">
                {[
                  words.say(`register.type.${line.type}`),
                  line.district && words.say('register.district-of', { district: districtName(line.district) }),
                  line.contested && words.say('register.settle.contested'),
                  line.proposals > 0 && words.say('register.settle.proposals', { count: line.proposals }),
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
