import { de } from './de.js';
import { en } from './en.js';
import type { Texts } from './texts.js';

export type Language = 'en' | 'de';

/** The languages that the pages have, each under its own name. */
export const languages: Record<Language, { name: string; texts: Texts }> = {
  en: { name: 'English', texts: en },
  de: { name: 'Deutsch', texts: de },
};

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
