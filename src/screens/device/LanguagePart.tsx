/** The language of the page, each by its own name. Another one opens the page anew in it. */
import { say as phrase } from '../../core/questions/phrase.ts';
import { LANGUAGES, type Language } from '../../words/figures.ts';
import type { Say } from '../../words/words.ts';
import { useServices } from '../services.ts';

const NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch', es: 'Español' };

export function LanguagePart({ say }: { say: Say }) {
  const { language, speak } = useServices();
  return (
    <section>
      <label className="field">
        <span>{say(phrase('device.language'))}</span>
        <select
          value={language}
          onChange={({ target }) => {
            const chosen = LANGUAGES.find((each) => each === target.value);
            if (chosen) speak(chosen);
          }}
        >
          {LANGUAGES.map((each) => (
            <option key={each} value={each} lang={each}>
              {NAMES[each]}
            </option>
          ))}
        </select>
      </label>
    </section>
  );
}
