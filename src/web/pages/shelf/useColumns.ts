import { useLayoutEffect, useState, type RefObject } from 'react';

/** How many cards fit side by side, and where on the page they begin. */
export function useColumns(
  place: RefObject<HTMLElement | null>,
  narrowestPixels: number,
  gapPixels: number,
): { columns: number; offset: number } {
  const [fit, setFit] = useState({ columns: 1, offset: 0 });
  useLayoutEffect(() => {
    const element = place.current;
    if (!element) return undefined;
    const measure = () => {
      const columns = Math.max(
        1,
        Math.floor((element.clientWidth + gapPixels) / (narrowestPixels + gapPixels)),
      );
      const offset = element.offsetTop;
      setFit((old) =>
        old.columns === columns && old.offset === offset ? old : { columns, offset },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => {
      observer.disconnect();
    };
  }, [place, narrowestPixels, gapPixels]);
  return fit;
}
