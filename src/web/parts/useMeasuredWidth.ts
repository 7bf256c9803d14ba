import { useEffect, useRef, useState } from 'react';

/** The width of an element in whole pixels, as it is and becomes; a guess before it is there. */
export function useMeasuredWidth(guess: number) {
  const [width, setWidth] = useState(guess);
  const element = useRef<HTMLElement>(null);
  useEffect(() => {
    const watched = element.current;
    if (!watched) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      // Nothing is shown while a disclosure or a printed page hides it: the last width stays.
      if (entry && entry.contentRect.width > 0) setWidth(Math.round(entry.contentRect.width));
    });
    observer.observe(watched);
    return () => {
      observer.disconnect();
    };
  }, []);
  return { element, width };
}
