import { type FormEvent, useState } from 'react';
import { Button } from '../ui/button.tsx';
import { useWords } from '../ui/words-context.tsx';
import { PreferenceChoices } from './preference-choices.tsx';
import { type Session, signIn } from './session.ts';

const complaints = {
  wrong: 'front.sign-in.wrong',
  'too many tries': 'front.sign-in.too-many',
  'no network': 'front.sign-in.no-network',
  failed: 'front.sign-in.failed',
} as const;

/** The first screen on a device: who are you? */
export function SignIn({ onSignedIn }: { readonly onSignedIn: (session: Session) => void }) {
  const words = useWords();
  const [complaint, setComplaint] = useState<keyof typeof complaints | null>(null);
  const [busy, setBusy] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setBusy(true);
    setComplaint(null);
    const result = await signIn(String(form.get('email')), String(form.get('password')));
    setBusy(false);
    if (result.ok) onSignedIn(result.session);
    else setComplaint(result.reason);
  };

  return (
    <main className="front field stack">
      <h1>{words.say('always.program')}</h1>
      <form className="stack" onSubmit={(event) => void submit(event)}>
        <label className="stack close">
          {words.say('front.sign-in.email')}
          <input className="text-input" name="email" type="email" autoComplete="username" required />
        </label>
        <label className="stack close">
          {words.say('front.sign-in.password')}
          <input className="text-input" name="password" type="password" autoComplete="current-password" required />
        </label>
        {complaint && (
          <p className="caution" role="alert">
            {words.say(complaints[complaint])}
          </p>
        )}
        <Button look="wide act" type="submit" disabled={busy}>
          {words.say(busy ? 'front.sign-in.doing' : 'front.sign-in.do')}
        </Button>
      </form>
      <p className="quiet">{words.say('front.sign-in.once')}</p>
      <PreferenceChoices />
    </main>
  );
}
