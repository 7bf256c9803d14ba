import { useRef, useState } from 'react';
import { keepDraft, keptDraft } from './keptDrafts.js';

export interface Draft<Content> {
  draft: Content;
  /** With a function, from what is there by then: for what comes back after a while. */
  change: (changes: Partial<Content> | ((now: Content) => Partial<Content>)) => void;
  /** Begins anew, once what was typed is kept elsewhere; all but what is handed in. */
  clear: (keeping?: Partial<Content>) => void;
  /** False when this device has no room for it: then a reload would lose it. */
  isKept: boolean;
}

/**
 * What is typed and not sent yet, kept on this device at every stroke.
 * @param place its name; a component that comes to show another place needs another `key`
 */
export function useDraft<Content extends object>(place: string, empty: Content): Draft<Content> {
  const [draft, setDraft] = useState<Content>(() => ({ ...empty, ...keptDraft<Content>(place) }));
  const [isKept, setIsKept] = useState(true);
  // Not from the rendering: two changes of one stroke both count.
  const latest = useRef(draft);
  const put = (next: Content) => {
    latest.current = next;
    setDraft(next);
    setIsKept(keepDraft(place, next));
  };
  return {
    draft,
    isKept,
    change: (changes) => {
      const now = latest.current;
      put({ ...now, ...(typeof changes === 'function' ? changes(now) : changes) });
    },
    clear: (keeping) => {
      put({ ...empty, ...keeping });
      if (!keeping) keepDraft(place, null);
    },
  };
}
