import type { Texts } from './texts.js';

export type Language = 'en' | 'de';

/** The languages that the pages have, each under its own name; its texts come when it is chosen. */
export const languages: Record<Language, { name: string; load: () => Promise<Texts> }> = {
  en: { name: 'English', load: async () => (await import('./en.js')).en },
  de: { name: 'Deutsch', load: async () => (await import('./de.js')).de },
};

/** A language with its texts at hand. */
export interface Spoken {
  language: Language;
  texts: Texts;
}

export const spoken = async (language: Language): Promise<Spoken> => ({
  language,
  texts: await languages[language].load(),
});

const place = 'reglow.language';

/** The language chosen here before; else the browser's; else English. */
export function chosenLanguage(): Language {
  const wanted = [localStorage.getItem(place), ...navigator.languages];
  for (const tag of wanted) {
    const language = tag?.slice(0, 2).toLowerCase();
    if (language === 'en' || language === 'de') return language;
  }
  return 'en';
}

export const keepLanguage = (language: Language): void => {
  localStorage.setItem(place, language);
};
