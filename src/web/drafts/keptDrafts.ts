const prefix = 'reglow.draft.';

/** @returns what is kept under this name; nothing when it cannot be read */
export function keptDraft<Content>(place: string): Partial<Content> {
  const text = localStorage.getItem(prefix + place);
  if (text === null) return {};
  try {
    return JSON.parse(text) as Partial<Content>;
  } catch {
    return {};
  }
}

/** @param draft null forgets it. @returns whether there was room for it */
export function keepDraft(place: string, draft: object | null): boolean {
  try {
    if (draft === null) localStorage.removeItem(prefix + place);
    else localStorage.setItem(prefix + place, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

/** The names with a common beginning under which something is kept, without that beginning. */
export const draftPlaces = (beginning: string): string[] =>
  Object.keys(localStorage)
    .filter((key) => key.startsWith(prefix + beginning))
    .map((key) => key.slice((prefix + beginning).length))
    .sort();

/** Whether something was typed for this place and not sent yet. */
export const hasDraft = (place: string): boolean => Object.keys(keptDraft(place)).length > 0;
