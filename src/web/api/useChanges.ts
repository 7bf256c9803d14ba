import { useEffect, useRef } from 'react';
import { onChange } from './changes.js';

/** Calls back when records of the collection have changed, in this window or in another. */
export function useChanges(callBack: () => void): void {
  const latest = useRef(callBack);
  useEffect(() => {
    latest.current = callBack;
  });
  useEffect(
    () =>
      onChange(() => {
        latest.current();
      }),
    [],
  );
}
