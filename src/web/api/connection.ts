import { useSyncExternalStore } from 'react';

let isConnected = true;
const listeners = new Set<() => void>();

/** Says whether changes reach this page. */
export function sayConnection(now: boolean): void {
  if (now === isConnected) return;
  isConnected = now;
  for (const listener of [...listeners]) listener();
}

/** Whether changes reach this page; false while the program does not answer. */
export const useConnected = (): boolean =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    () => isConnected,
  );
