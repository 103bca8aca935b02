import { Link } from 'wouter';
import { Button } from '../ui/button.tsx';
import { useWords } from '../ui/words-context.tsx';
import { PreferenceChoices } from './preference-choices.tsx';
import { type Session, signOut } from './session.ts';

/** Signed in: where do you work now? */
export function FrontDoor({ session, onLeave }: { readonly session: Session; readonly onLeave: () => void }) {
  const words = useWords();
  const report = async () => {
    const { saveFaultReport } = await import('./fault-report.ts');
    await saveFaultReport();
  };
  return (
    <main className="front field stack">
      <p className="quiet">{words.say('always.signed-in', { name: session.name })}</p>
      <h1>{words.say('front.where')}</h1>
      <Link className="button main act" href="/hive">
        {words.say('front.hive')}
      </Link>
      <p className="quiet">{words.say('front.hive.about')}</p>
      <Link className="button main" href="/district">
        {words.say('front.district')}
      </Link>
      <p className="quiet">{words.say('front.district.about')}</p>
      <PreferenceChoices />
      <Button look="plain" onClick={() => void report()}>
        {words.say('front.broken.report')}
      </Button>
      <Button look="plain" onClick={() => void signOut().then(onLeave)}>
        {words.say('front.sign-out')}
      </Button>
    </main>
  );
}
