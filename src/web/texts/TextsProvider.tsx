import { useEffect, useMemo, useState, type ReactNode } from 'react';
import { keepLanguage, spoken, type Language, type Spoken } from './language.js';
import { TextsContext } from './textsContext.js';

/** Gives every page its words, and the page itself its language. */
export function TextsProvider({ first, children }: { first: Spoken; children: ReactNode }) {
  const [now, setNow] = useState(first);
  const { language } = now;
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  const value = useMemo(
    () => ({
      ...now,
      choose: (next: Language) => {
        // Without a connection the texts may not come: the page stays as it is.
        spoken(next).then(
          (other) => {
            keepLanguage(next);
            setNow(other);
          },
          () => undefined,
        );
      },
    }),
    [now],
  );
  return <TextsContext value={value}>{children}</TextsContext>;
}
