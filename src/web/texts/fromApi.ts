/**
 * For the element around a sentence of the API, which speaks English whatever the page speaks, so
 * that it is read aloud and hyphenated as English (WCAG 3.1.2).
 */
export const fromApi = { lang: 'en' } as const;
