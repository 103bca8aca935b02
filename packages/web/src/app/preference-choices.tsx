import { languages } from '@combside/words/language';
import { Choice } from '../ui/choice.tsx';
import { useWords } from '../ui/words-context.tsx';
import { setPreferences, themes, usePreferences } from './preferences.ts';

/** Language and light of this device. */
export function PreferenceChoices() {
  const words = useWords();
  const { language, theme } = usePreferences();
  return (
    <section className="stack" aria-label={words.say('front.settings')}>
      <Choice
        label={words.say('front.language')}
        options={languages.map((value) => ({ value, label: words.say(`always.language.${value}`) }))}
        chosen={language}
        onChoose={(value) => setPreferences({ language: value })}
      />
      <Choice
        label={words.say('front.theme')}
        options={themes.map((value) => ({ value, label: words.say(`front.theme.${value}`) }))}
        chosen={theme}
        onChoose={(value) => setPreferences({ theme: value })}
      />
    </section>
  );
}
