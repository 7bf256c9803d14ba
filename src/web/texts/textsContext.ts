import { createContext, useContext } from 'react';
import type { Language, Spoken } from './language.js';
import type { Texts } from './texts.js';

export interface ChosenTexts extends Spoken {
  choose: (language: Language) => void;
}

export const TextsContext = createContext<ChosenTexts | null>(null);

/** The language, and the way to change it. */
export function useLanguage(): ChosenTexts {
  const chosen = useContext(TextsContext);
  if (!chosen) throw new Error('Texts are asked for outside of TextsProvider.');
  return chosen;
}

/** The words of the page in the person's language. */
export const useTexts = (): Texts => useLanguage().texts;
