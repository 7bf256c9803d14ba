import type { Checklist } from './checklist.js';

/** A word or two that may be missing. @returns null when it says nothing. */
export const shortText = (
  check: Checklist,
  text: string | null | undefined,
  path: string[],
  longest = 200,
): string | null =>
  text === null || text === undefined || text.trim() === ''
    ? null
    : check.words(text, path, longest);
