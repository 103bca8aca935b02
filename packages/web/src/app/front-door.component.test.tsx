import '../ui/tokens.css';
import '../ui/controls.css';
import { languages } from '@combside/words/language';
import { afterEach, describe, expect, test } from 'vitest';
import { inspector } from '../../stage/inspector.ts';
import { desks, looksRight, phones } from '../../stage/looks.ts';
import { raise, strike } from '../../stage/raise.tsx';
import { SpeaksWords } from '../ui/words-context.tsx';
import { FrontDoor } from './front-door.tsx';
import { SignIn } from './sign-in.tsx';

const nothing = () => undefined;

afterEach(strike);

describe.each(languages)('at the front door in %s', (language) => {
  test.each([
    ['phone/sign-in', phones],
    ['desk/sign-in', desks],
  ] as const)('%s', async (_screen, windows) => {
    await raise(
      '/',
      '',
      <SpeaksWords language={language} rooms={['always', 'front']}>
        <SignIn onSignedIn={nothing} />
      </SpeaksWords>,
      language,
    );
    await expect.poll(() => document.querySelectorAll('input').length).toBe(2);
    await looksRight(language, windows);
  });

  test('phone/front-door', async () => {
    await raise(
      '/',
      '',
      <SpeaksWords language={language} rooms={['always', 'front']}>
        <FrontDoor session={inspector} onLeave={nothing} />
      </SpeaksWords>,
      language,
    );
    await expect.poll(() => document.querySelectorAll('.button.main').length).toBe(2);
    await looksRight(language, phones);
  });
});
