import { useMemo } from 'react';
import { useLanguage } from '../texts/textsContext.js';
import { formatsOf, type Formats } from './formats.js';

/** How numbers, days and money are written for this person. */
export function useFormats(): Formats {
  const { language } = useLanguage();
  return useMemo(() => formatsOf(localeFor(language)), [language]);
}

/** The browser's own locale when it speaks the language chosen (en-GB, de-CH), else the language. */
function localeFor(language: string): string {
  const own = navigator.languages.find((tag) => tag.toLowerCase().startsWith(language));
  return own !== undefined && isKnown(own) ? own : language;
}

/** Some systems hand out tags that are none, such as en-US@posix. */
function isKnown(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length > 0;
  } catch {
    return false;
  }
}
