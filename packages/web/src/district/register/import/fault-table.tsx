import type { LineFault } from '@combside/casework/register/import/table';
import { useWords } from '../../../ui/words-context.tsx';

/** What is wrong, in which line and column, what stands there, and what to do. */
export function FaultTable({ faults }: { readonly faults: readonly LineFault[] }) {
  const words = useWords();
  return (
    <div className="scrolls">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.say('register.import.faults.line')}</th>
            <th scope="col">{words.say('register.import.faults.column')}</th>
            <th scope="col">{words.say('register.import.faults.value')}</th>
            <th scope="col">{words.say('register.import.faults.what')}</th>
          </tr>
        </thead>
        <tbody>
          {faults.map((fault) => (
            <tr key={`${fault.line} ${fault.column} ${fault.id}`}>
              <td>{fault.line}</td>
              <td>{fault.column === null ? '–' : `${fault.column} ${fault.header}`}</td>
              <td className="any-length">{fault.value || '–'}</td>
              <td>{words.say(fault.id, fault.values)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
