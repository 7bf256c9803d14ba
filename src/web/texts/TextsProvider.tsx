import { useEffect, useMemo, useState, type ReactNode } from 'react';
import { chosenLanguage, keepLanguage, languages, type Language } from './language.js';
import { TextsContext } from './textsContext.js';

/** Gives every page its words, and the page itself its language. */
export function TextsProvider({ children }: { children: ReactNode }) {
  const [language, setLanguage] = useState<Language>(chosenLanguage);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  const value = useMemo(
    () => ({
      language,
      texts: languages[language].texts,
      choose: (next: Language) => {
        keepLanguage(next);
        setLanguage(next);
      },
    }),
    [language],
  );
  return <TextsContext value={value}>{children}</TextsContext>;
}
