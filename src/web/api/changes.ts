type Listener = () => void;

const listeners = new Set<Listener>();
const gatherMilliseconds = 120;
let waiting: ReturnType<typeof setTimeout> | undefined;

/** Tells every page that records have changed; several at once are told once. */
export function announceChange(): void {
  waiting ??= setTimeout(() => {
    waiting = undefined;
    for (const listener of [...listeners]) listener();
  }, gatherMilliseconds);
}

/** @returns the way to stop listening */
export function onChange(listener: Listener): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}
