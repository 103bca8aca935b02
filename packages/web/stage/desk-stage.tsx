import '../src/ui/tokens.css';
import '../src/ui/controls.css';
import type { Language } from '@combside/words/language';
import type { Session } from '../src/app/session.ts';
import District from '../src/district/district.tsx';
import { raise } from './raise.tsx';

/** Somebody new at every desk: answers given to one person are not shown to the next. Invented. */
function newOfficer(): Session {
  return {
    person: `01900000-0000-7000-8000-${crypto.randomUUID().slice(-12)}`,
    name: 'Wilda Harrowgate',
    role: 'office',
    districts: ['quillmoor'],
    pack: 'quillmoor',
  };
}

/**
 * What the office on the stage answers, by the path below `/api/` without its question: a value of the contract, or the
 * bytes of a photograph. What is not named is not there (404); `silent` is an office that cannot be reached, `slow` one
 * that has not answered yet, a number the status of all that it answers.
 */
export type Office = Readonly<Record<string, unknown>> | 'silent' | 'slow' | number;

/** Opens a screen of the desk before an office that answers from memory. @param path below `/district` */
export async function raiseDesk(path: string, language: Language, office: Office): Promise<void> {
  globalThis.fetch = asked(office);
  // The pages use no more of it than this.
  globalThis.EventSource = (office === 'silent' ? NoArrivals : Arrivals) as unknown as typeof EventSource;
  await raise('/district', path, <District session={newOfficer()} language={language} />, language);
}

const network = globalThis.fetch;

function asked(office: Office): typeof fetch {
  return (input, init) => {
    const address = input instanceof Request ? input.url : String(input);
    const path = /^[/]api[/]([^?]*)/.exec(address.replace(location.origin, ''))?.[1];
    if (path === undefined) return network(input, init);
    if (office === 'silent') return Promise.reject(new TypeError('the office cannot be reached'));
    if (office === 'slow') return new Promise(() => undefined);
    if (typeof office === 'number') return Promise.resolve(new Response('{}', { status: office }));
    const answer = office[path];
    if (answer === undefined) return Promise.resolve(new Response('{}', { status: 404 }));
    return Promise.resolve(new Response(answer instanceof Blob ? answer : JSON.stringify(answer)));
  };
}

/** A stream of arrivals that opens, and on which nothing comes. */
class Arrivals extends EventTarget {
  constructor(_address: string, told = 'open') {
    super();
    setTimeout(() => this.dispatchEvent(new Event(told)), 0);
  }

  close(): void {}
}

/** A stream that does not come about. */
class NoArrivals extends Arrivals {
  constructor(address: string) {
    super(address, 'error');
  }
}
