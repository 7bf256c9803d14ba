import { useEffect, useRef, type RefObject } from 'react';

/** Puts the keyboard on what has just come in place of what was sent; not when the page opens. */
export function useFocusOnce<Element extends HTMLElement>(
  isWanted: boolean,
): RefObject<Element | null> {
  const element = useRef<Element>(null);
  const wasWanted = useRef(isWanted);
  useEffect(() => {
    if (wasWanted.current) element.current?.focus();
  }, []);
  return element;
}
