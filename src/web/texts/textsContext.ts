import { createContext, useContext } from 'react';
import { languages, type Language } from './language.js';
import type { Texts } from './texts.js';

export interface ChosenTexts {
  language: Language;
  texts: Texts;
  choose: (language: Language) => void;
}

export const TextsContext = createContext<ChosenTexts>({
  language: 'en',
  texts: languages.en.texts,
  choose: () => undefined,
});

/** The words of the page in the person's language. */
export const useTexts = (): Texts => useContext(TextsContext).texts;

/** The language, and the way to change it. */
export const useLanguage = (): ChosenTexts => useContext(TextsContext);
